package series

import (
	"errors"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.org/lakelarder/units"
)

// header is the first row: which column holds what, in which unit.
type header struct {
	line     int
	headings []heading
}

// heading is one cell of it: "core (°C)" has the name core and the unit °C.
type heading struct {
	index      int
	name, unit string
	kind       kind
}

// kind is what a column holds, as errors say it; "" when its unit is not understood.
type kind string

const (
	unknown     kind = ""
	elapsed     kind = "time"
	clockTime   kind = "clock time"
	temperature kind = "temperature"
	pressure    kind = "pressure"
	mass        kind = "mass"
	ratio       kind = "ratio"
)

func kindOf[T Value]() kind {
	var v T
	switch any(v).(type) {
	case units.Temperature:
		return temperature
	case units.Pressure:
		return pressure
	case units.Mass:
		return mass
	}
	return ratio
}

func (k kind) isTime() bool { return k == elapsed || k == clockTime }

func newHeading(index int, cell string) heading {
	h := heading{index: index, name: strings.TrimSpace(cell)}
	open := strings.LastIndexAny(h.name, "([")
	if open >= 0 && (h.name[open] == '(' && strings.HasSuffix(h.name, ")") || h.name[open] == '[' &&
		strings.HasSuffix(h.name, "]")) {
		h.unit = strings.TrimSpace(h.name[open+1 : len(h.name)-1])
		h.name = strings.TrimSpace(h.name[:open])
	}
	switch unit := strings.ToLower(h.unit); {
	case unit == "" && strings.EqualFold(h.name, "clock"), unit == "clock", strings.Contains(unit, "hh:mm"):
		h.kind = clockTime
	case timeUnits[unit] != 0:
		h.kind = elapsed
	default:
		h.kind = kindOfUnit(h.unit)
	}
	return h
}

func kindOfUnit(unit string) kind {
	switch {
	case checkUnit[units.Temperature](unit) == nil:
		return temperature
	case checkUnit[units.Pressure](unit) == nil:
		return pressure
	case checkUnit[units.Mass](unit) == nil:
		return mass
	case checkUnit[units.Ratio](unit) == nil:
		return ratio
	}
	return unknown
}

// checkUnit returns what T's own parser says against the unit. A unit has no digit but at its end:
// "½ psi" and "lb 6 oz" are amounts.
func checkUnit[T Value](unit string) error {
	if unit == "" {
		return wrap(ErrUnit, "the heading names no unit; write it in brackets, as in core (°C)")
	}
	if len(unit) > longestNumber {
		return wrap(ErrUnit, "not a unit")
	}
	_, size := utf8.DecodeLastRuneInString(unit)
	if strings.IndexFunc(unit[:len(unit)-size], unicode.IsNumber) >= 0 {
		return wrap(ErrUnit, "not a unit")
	}
	_, err := parse[T]("1 " + unit)
	var fault units.ParseError
	if errors.As(err, &fault) {
		return wrap(ErrUnit, fault.Reason)
	}
	return err
}

// clock returns the one time column.
func (h header) clock() (heading, error) {
	var found []heading
	for _, c := range h.headings {
		if c.kind.isTime() {
			found = append(found, c)
		}
	}
	switch len(found) {
	case 1:
		return found[0], nil
	case 0:
		const hint = "expected a time column such as time (s), time (min), time (h), time (hh:mm) or clock"
		for _, c := range h.headings {
			if strings.EqualFold(c.name, "time") || strings.EqualFold(c.name, "elapsed") {
				return heading{}, h.fault(c, wrap(ErrUnit, hint))
			}
		}
		return heading{}, LineError{Line: h.line, Err: wrap(ErrHeader, hint)}
	}
	return heading{}, h.fault(found[1], wrap(ErrHeader, "a second time column beside "+found[0].name))
}

// one returns the column of that name, or the only one of the kind when the name is empty.
func (h header) one(name string, want kind) ([]heading, error) {
	if name == "" {
		found, err := h.all(want)
		if len(found) > 1 {
			return nil, h.fault(found[1], wrap(ErrHeader, "a second column of "+string(want)+" beside "+found[0].name+"; ask for one by name"))
		}
		if err == nil && want == pressure {
			err = h.reference(found, false)
		}
		return found, err
	}
	var found []heading
	var other *heading
	for i, c := range h.headings {
		switch {
		case c.name == name && c.kind == want:
			found = append(found, c)
		case c.name == name && other == nil:
			other = &h.headings[i]
		}
	}
	switch {
	case len(found) == 0 && other != nil:
		return nil, h.fault(*other, other.not(want))
	case len(found) == 0:
		return nil, LineError{Line: h.line, Column: name, Err: wrap(ErrHeader, "no column of that name")}
	case len(found) > 1:
		return nil, h.fault(found[1], wrap(ErrHeader, "two columns of that name"))
	}
	if want == pressure {
		if err := h.reference(found, true); err != nil {
			return nil, err
		}
	}
	return found, nil
}

// all returns the columns of a kind, one or more, if every heading is understood.
func (h header) all(want kind) (found []heading, err error) {
	names := map[string]bool{}
	var other *heading
	for i, c := range h.headings {
		switch {
		case c.kind == want && c.name == "":
			return nil, h.fault(c, wrap(ErrHeader, "the column has no name"))
		case c.kind == want && names[c.name]:
			return nil, h.fault(c, wrap(ErrHeader, "two columns of that name"))
		case c.kind == want:
			names[c.name] = true
			found = append(found, c)
		case c.kind == unknown:
			return nil, h.fault(c, c.not(want))
		case !c.kind.isTime() && other == nil:
			other = &h.headings[i]
		}
	}
	switch {
	case len(found) > 0:
		return found, nil
	case other != nil:
		return nil, h.fault(*other, other.not(want))
	}
	return nil, LineError{Line: h.line, Err: wrap(ErrHeader, "no column of "+string(want))}
}

// not says why a column cannot be read as the kind wanted.
func (c heading) not(want kind) error {
	if c.kind != unknown {
		return wrap(ErrUnit, "a "+string(c.kind)+" where a "+string(want)+" is wanted")
	}
	switch want {
	case temperature:
		return checkUnit[units.Temperature](c.unit)
	case pressure:
		return checkUnit[units.Pressure](c.unit)
	case mass:
		return checkUnit[units.Mass](c.unit)
	}
	return checkUnit[units.Ratio](c.unit)
}

func (h header) fault(c heading, err error) error {
	return LineError{Line: h.line, Column: short(c.name), Text: short(c.unit), Err: err}
}
