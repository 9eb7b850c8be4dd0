package wire

import (
	"reflect"
	"sort"
)

func (e *encoder) list(v reflect.Value, p *plan, depth int) error {
	e.out = append(e.out, '[')
	for i, n := 0, v.Len(); i < n; i++ {
		if i > 0 {
			e.out = append(e.out, ',')
		}
		if err := e.value(v.Index(i), p.elem, depth); err != nil {
			return under(err, indexed(i))
		}
	}
	e.out = append(e.out, ']')
	return nil
}

func (e *encoder) dict(v reflect.Value, p *plan, depth int) error {
	type entry struct {
		key   string
		value reflect.Value
	}
	entries := make([]entry, 0, v.Len())
	for pairs := v.MapRange(); pairs.Next(); {
		key, err := textOf(pairs.Key(), p.key)
		if err != nil {
			return &fault{err: err}
		}
		entries = append(entries, entry{key, pairs.Value()})
	}
	sort.Slice(entries, func(i, j int) bool { return entries[i].key < entries[j].key })
	e.out = append(e.out, '{')
	for i, next := range entries {
		if i > 0 {
			e.out = append(e.out, ',')
			if next.key == entries[i-1].key {
				return wrong(0, "two keys are written %s", quoted(next.key))
			}
		}
		e.out = append(appendPhrase(e.out, next.key), ':')
		if err := e.value(next.value, p.elem, depth); err != nil {
			return under(err, named(next.key))
		}
	}
	e.out = append(e.out, '}')
	return nil
}

func (e *encoder) object(v reflect.Value, p *plan, depth int) error {
	e.out = append(e.out, '{')
	start := len(e.out)
	for i := range p.fields {
		f := &p.fields[i]
		value := v.FieldByIndex(f.index)
		if f.leavesOut(value) {
			continue
		}
		if len(e.out) > start {
			e.out = append(e.out, ',')
		}
		e.out = append(appendPhrase(e.out, f.name), ':')
		if f.required && !value.IsZero() && !given(value, f.plan) {
			return under(wrong(0, "it is required and blank"), f.name)
		}
		if err := e.value(value, f.plan, depth); err != nil {
			return under(err, f.name)
		}
	}
	e.out = append(e.out, '}')
	return nil
}

// leavesOut reports whether a value is not written: a zero, but for the one that a tag keeps. What is not stated and
// holds a value goes on, to be refused, and so does a field that has no form.
func (f *field) leavesOut(v reflect.Value) bool {
	switch {
	case !v.IsZero() || f.plan.form == none && !f.plan.writes:
		return false
	case f.plan.form == stated || f.plan.form == list || f.plan.form == dict || f.plan.form == pointer:
		return true
	case f.always:
		return false
	}
	return !f.required || f.plan.form == object || f.plan.writes || !given(v, f.plan)
}
