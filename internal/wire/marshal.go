package wire

import (
	"bytes"
	"encoding"
	"encoding/json"
	"reflect"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"

	"example.org/lakelarder/units"
)

// Marshal returns v as compact JSON in the form of this package. V's own MarshalJSON is not asked, so that it can be
// this call; those of what v holds are. What has no form, would be lost, or could not be read back is a
// units.FieldError that names the path.
func Marshal(v any) ([]byte, error) {
	value := reflect.ValueOf(v)
	for value.Kind() == reflect.Pointer && !value.IsNil() {
		value = value.Elem()
	}
	if !value.IsValid() || value.Kind() == reflect.Pointer {
		return nil, units.FieldError{Err: problem("nothing to write: the value is nil")}
	}
	e := encoder{plans: plans{}}
	if err := e.value(value, e.plans.root(value.Type()), 0); err != nil {
		return nil, written(err)
	}
	if len(e.out) > longest {
		return nil, units.FieldError{Err: problem("more than 64 MiB of JSON")}
	}
	return e.out, nil
}

// Indent returns JSON with one field or element a line, indented by two spaces. Data that is not JSON is an error.
func Indent(data []byte) ([]byte, error) {
	var out bytes.Buffer
	if err := json.Indent(&out, data, "", "  "); err != nil {
		return nil, units.FieldError{Err: err}
	}
	return out.Bytes(), nil
}

type encoder struct {
	plans plans
	out   []byte
}

func (e *encoder) value(v reflect.Value, p *plan, depth int) error {
	switch {
	case p.writes:
		return e.own(v, depth)
	case p.form == list || p.form == array || p.form == dict || p.form == object:
		if depth++; depth > deepest {
			return wrong(0, "nested more than %d deep", deepest)
		}
	}
	switch p.form {
	case none:
		return wrong(0, "%s", p.lack)
	case pointer:
		if v.IsNil() {
			return wrong(0, "it is nil, and a list or map has no place for nothing")
		}
		return e.value(v.Elem(), p.elem, depth)
	case stated:
		return e.stated(v, p, depth)
	case list, array:
		return e.list(v, p, depth)
	case dict:
		return e.dict(v, p, depth)
	case object:
		return e.object(v, p, depth)
	}
	return e.scalar(v, p)
}

func (e *encoder) scalar(v reflect.Value, p *plan) error {
	switch p.form {
	case boolean:
		e.out = strconv.AppendBool(e.out, v.Bool())
		return nil
	case count:
		e.out = strconv.AppendInt(e.out, v.Int(), 10)
		return nil
	case natural:
		e.out = strconv.AppendUint(e.out, v.Uint(), 10)
		return nil
	}
	s, err := textOf(v, p)
	switch {
	case err != nil:
		return &fault{err: err}
	case s == "" && p.form == text && !v.IsZero():
		return wrong(0, "%s is set and has no text", p.of)
	}
	e.out = appendPhrase(e.out, s)
	return nil
}

// textOf is the text of a value that is written as text.
func textOf(v reflect.Value, p *plan) (string, error) {
	s := ""
	switch p.form {
	case phrase:
		s = v.String()
	case lasting:
		s = units.Lasting(time.Duration(v.Int()))
	case moment:
		return momentText(v.Interface().(time.Time))
	default:
		writer, ok := asked(v, textWriter).(encoding.TextMarshaler)
		if !ok {
			return "", problem(p.of.String() + " can be read from text and not written: it has no MarshalText")
		}
		out, err := writer.MarshalText()
		if err != nil {
			return "", err
		}
		s = string(out)
	}
	if !utf8.ValidString(s) {
		return "", problem(quoted(s) + " is no UTF-8")
	}
	return s, nil
}

func momentText(t time.Time) (string, error) {
	if _, offset := t.Zone(); offset%60 != 0 {
		return "", problem("the offset of " + t.String() + " has seconds, which RFC 3339 cannot write")
	}
	out, err := t.MarshalText()
	return string(out), err
}

// asked is a value, or the pointer to it where that has the method.
func asked(v reflect.Value, method reflect.Type) any {
	switch {
	case v.Type().Implements(method):
		return v.Interface()
	case v.CanAddr():
		return v.Addr().Interface()
	}
	copied := reflect.New(v.Type())
	copied.Elem().Set(v)
	return copied.Interface()
}

// own lets a type write itself, and checks what it wrote.
func (e *encoder) own(v reflect.Value, depth int) error {
	out, err := asked(v, jsonWriter).(json.Marshaler).MarshalJSON()
	if err != nil {
		return from(err, nil, 0)
	}
	check := &reader{data: out, depth: depth}
	if err = check.skip(); err == nil {
		err = check.end()
	}
	if err != nil {
		why := strings.TrimPrefix(err.Error(), ": ")
		return wrong(0, "MarshalJSON of %s writes what cannot be read: %s", v.Type(), why)
	}
	compact := bytes.NewBuffer(e.out)
	err = json.Compact(compact, out)
	e.out = compact.Bytes()
	return err
}

func (e *encoder) stated(v reflect.Value, p *plan, depth int) error {
	value := v.Field(0)
	switch {
	case !v.Field(1).Bool():
		return wrong(0, "it is not stated, and a list or map has no place for nothing")
	case !given(value, p.elem):
		return wrong(0, "it counts as stated and is empty")
	}
	return e.value(value, p.elem, depth)
}

// given reports whether a value is something: no empty text, and nothing that says of itself that it is not set.
func given(v reflect.Value, p *plan) bool {
	switch p.form {
	case phrase:
		return strings.TrimSpace(v.String()) != ""
	case text:
		if s, err := textOf(v, p); err == nil && strings.TrimSpace(s) == "" {
			return false
		}
		set, ok := v.Interface().(interface{ IsSet() bool })
		return !ok || set.IsSet()
	}
	return true
}
