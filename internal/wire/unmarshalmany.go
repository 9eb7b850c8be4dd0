package wire

import (
	"reflect"
	"strings"
)

func (d *decoder) list(v reflect.Value, p *plan) error {
	v.Set(reflect.MakeSlice(p.of, 0, 0))
	return d.elements(func(i int) error {
		v.Grow(1)
		v.SetLen(i + 1)
		return d.value(v.Index(i), p.elem)
	})
}

func (d *decoder) array(v reflect.Value, p *plan) error {
	at, read := d.at, 0
	err := d.elements(func(i int) error {
		if i >= v.Len() {
			return wrong(d.at, "one too many: expected a list of %d", v.Len())
		}
		read++
		return d.value(v.Index(i), p.elem)
	})
	if err == nil && read < v.Len() {
		return wrong(at, "expected a list of %d, not of %d", v.Len(), read)
	}
	return err
}

func (d *decoder) dict(v reflect.Value, p *plan) error {
	v.Set(reflect.MakeMap(p.of))
	return d.members(func(name string, at int) error {
		key := reflect.New(p.of.Key()).Elem()
		if err := textInto(key, p.key, name, at); err != nil {
			return err
		}
		if v.MapIndex(key).IsValid() {
			return wrong(at, "this field stands twice")
		}
		value := reflect.New(p.of.Elem()).Elem()
		if err := d.value(value, p.elem); err != nil {
			return err
		}
		v.SetMapIndex(key, value)
		return nil
	})
}

func (d *decoder) object(v reflect.Value, p *plan) error {
	d.peek()
	start, last := d.at, -1
	seen := make([]bool, len(p.fields))
	err := d.members(func(name string, at int) error {
		last = p.find(name, last+1)
		switch {
		case last < 0:
			return wrong(at, "unknown field; expected %s", p.known())
		case seen[last]:
			return wrong(at, "this field stands twice")
		}
		seen[last] = true
		f := &p.fields[last]
		d.peek()
		at = d.at
		if err := d.value(v.FieldByIndex(f.index), f.plan); err != nil {
			return err
		}
		if f.required && !given(v.FieldByIndex(f.index), f.plan) {
			return wrong(at, "it is required and empty")
		}
		return nil
	})
	if err != nil {
		return err
	}
	for i, f := range p.fields {
		if f.required && !seen[i] {
			return under(wrong(start, "it is required and missing"), f.name)
		}
	}
	return nil
}

// find is the place of a field, looked for from the expected one on; -1 where there is none.
func (p *plan) find(name string, expected int) int {
	for i := range p.fields {
		if at := (expected + i) % len(p.fields); p.fields[at].name == name {
			return at
		}
	}
	return -1
}

// known lists the fields of an object.
func (p *plan) known() string {
	names := make([]string, len(p.fields))
	for i, f := range p.fields {
		names[i] = f.name
	}
	if len(names) == 0 {
		return "none"
	}
	return strings.Join(names, ", ")
}
