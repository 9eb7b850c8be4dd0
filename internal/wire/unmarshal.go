package wire

import (
	"bytes"
	"encoding"
	"encoding/json"
	"fmt"
	"reflect"
	"strconv"
	"strings"
	"time"

	"example.org/lakelarder/units"
)

// Unmarshal reads JSON in the form of this package into what into points to. Into's own UnmarshalJSON is not asked, so
// that it can be this call; those of what it holds are. Everything that into held is replaced; on an error it stays as
// it was. Every error is a units.FieldError that names the path, the line and the column.
func Unmarshal(data []byte, into any) error {
	target := reflect.ValueOf(into)
	switch {
	case target.Kind() != reflect.Pointer || target.IsNil():
		return units.FieldError{Err: problem("expected a pointer to read into")}
	case len(data) > longest:
		return units.FieldError{Line: 1, Column: 1, Err: problem("more than 64 MiB of JSON")}
	}
	target = target.Elem()
	d := decoder{reader: reader{data: data}, plans: plans{}}
	fresh := reflect.New(target.Type()).Elem()
	err := d.value(fresh, d.plans.root(target.Type()))
	if err == nil {
		err = d.end()
	}
	if err != nil {
		return read(err, data)
	}
	target.Set(fresh)
	return nil
}

type decoder struct {
	reader
	plans plans
}

func (d *decoder) value(v reflect.Value, p *plan) error {
	switch {
	case d.peek() == 'n' && bytes.HasPrefix(d.data[d.at:], []byte("null")):
		return wrong(d.at, "null says nothing: leave it out")
	case p.reads:
		return d.own(v)
	}
	switch p.form {
	case none:
		return wrong(d.at, "%s", p.lack)
	case boolean:
		b, err := d.boolean()
		v.SetBool(b)
		return err
	case count, natural:
		return d.count(v, p)
	case pointer:
		v.Set(reflect.New(p.of.Elem()))
		return d.value(v.Elem(), p.elem)
	case stated:
		return d.stated(v, p)
	case list:
		return d.list(v, p)
	case array:
		return d.array(v, p)
	case dict:
		return d.dict(v, p)
	case object:
		return d.object(v, p)
	}
	return d.text(v, p)
}

// own lets a type read itself.
func (d *decoder) own(v reflect.Value) error {
	start := d.at
	if err := d.skip(); err != nil {
		return err
	}
	if err := v.Addr().Interface().(json.Unmarshaler).UnmarshalJSON(d.data[start:d.at]); err != nil {
		return from(err, d.data, start)
	}
	return nil
}

func (d *decoder) text(v reflect.Value, p *plan) error {
	if d.peek() != '"' {
		return d.noText(p)
	}
	at := d.at
	s, err := d.phrase()
	if err != nil {
		return err
	}
	return textInto(v, p, s, at)
}

func textInto(v reflect.Value, p *plan, s string, at int) error {
	var err error
	switch p.form {
	case phrase:
		v.SetString(s)
	case lasting:
		var t time.Duration
		t, err = units.ParseLasting(s)
		v.SetInt(int64(t))
	case moment:
		var t time.Time
		err = t.UnmarshalText([]byte(s))
		if _, offset := t.Zone(); offset != 0 { // the same on every machine, wherever that stands
			t = t.In(time.FixedZone("", offset))
		} else {
			t = t.UTC()
		}
		v.Set(reflect.ValueOf(t))
	default:
		reader, ok := v.Addr().Interface().(encoding.TextUnmarshaler)
		if !ok {
			return wrong(at, "%s can be written as text and not read: it has no UnmarshalText", p.of)
		}
		err = reader.UnmarshalText([]byte(s))
	}
	if err != nil {
		return &fault{at: at, err: err}
	}
	return nil
}

// noText is the error where text is meant and something else stands: it says what the text should be.
func (d *decoder) noText(p *plan) error {
	err := d.wanted(textMeant(p.of)).(*fault)
	literal, bad := d.fork().number()
	if bad != nil || p.form != text || p.of.PkgPath() == unitsPath {
		return err
	}
	if cause, ok := textInto(reflect.New(p.of).Elem(), p, string(literal), d.at).(*fault); ok {
		err.err = fmt.Errorf("%w: %w", err.err, cause.err)
	}
	return err
}

func textMeant(t reflect.Type) string {
	sample := ""
	switch t {
	case reflect.TypeOf(units.Length(0)):
		sample = "2000 ft"
	case reflect.TypeOf(units.Mass(0)):
		sample = "1 lb 6 oz"
	case reflect.TypeOf(units.Volume(0)):
		sample = "1/2 cup"
	case reflect.TypeOf(units.Pressure(0)):
		sample = "11 psi"
	case reflect.TypeOf(units.Temperature{}):
		sample = "121.1 °C"
	case reflect.TypeOf(units.Ratio(0)):
		sample = "3.5 %"
	case durations:
		sample = "100 min"
	}
	switch {
	case sample != "":
		return `text with a unit, such as "` + sample + `"`
	case t.PkgPath() == unitsPath && t.Name() != "PH":
		return "text with a unit, in quotes"
	}
	return "text in quotes"
}

func (d *decoder) count(v reflect.Value, p *plan) error {
	at := d.at
	if c := d.data[at:]; len(c) == 0 || c[0] != '-' && (c[0] < '0' || c[0] > '9') {
		return d.wanted("a number")
	}
	literal, err := d.number()
	if err != nil {
		return err
	}
	if strings.ContainsAny(string(literal), ".eE") {
		return wrong(at, "%s is no count: expected a whole number without a point or an exponent", quoted(string(literal)))
	}
	bits := p.of.Bits()
	limits := units.RangeError{What: "count", Got: shortened(string(literal))}
	if p.form == count {
		n, err := strconv.ParseInt(string(literal), 10, bits)
		v.SetInt(n)
		limits.Low, limits.High = strconv.FormatInt(-1<<(bits-1), 10), strconv.FormatInt(1<<(bits-1)-1, 10)
		if err != nil {
			return &fault{at: at, err: limits}
		}
		return nil
	}
	n, err := strconv.ParseUint(string(literal), 10, bits)
	v.SetUint(n)
	limits.Low, limits.High = "0", strconv.FormatUint(1<<bits-1, 10)
	if err != nil {
		return &fault{at: at, err: limits}
	}
	return nil
}

func (d *decoder) stated(v reflect.Value, p *plan) error {
	at := d.at
	if err := d.value(v.Field(0), p.elem); err != nil {
		return err
	}
	if !given(v.Field(0), p.elem) {
		return wrong(at, "it is empty, which is not stated: leave it out or give it")
	}
	v.Field(1).SetBool(true)
	return nil
}
