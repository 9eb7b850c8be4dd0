package wire

import (
	"encoding"
	"encoding/json"
	"reflect"
	"strings"
	"time"

	"example.org/lakelarder/units"
)

// form is how a type is written.
type form uint8

const (
	none form = iota // not at all
	text
	lasting
	moment
	boolean
	count
	natural
	phrase
	list
	array
	dict
	pointer
	object
	stated
)

// plan is how one type is written and read.
type plan struct {
	of            reflect.Type
	form          form
	lack          string // why not, where form is none
	writes, reads bool   // has a JSON form of its own
	elem, key     *plan  // of a list, array, map, pointer or Stated
	fields        []field
}

// field is one member of an object.
type field struct {
	name             string
	index            []int
	plan             *plan
	always, required bool
}

// plans are the plans of one call, by type.
type plans map[reflect.Type]*plan

var (
	jsonWriter = reflect.TypeOf((*json.Marshaler)(nil)).Elem()
	jsonReader = reflect.TypeOf((*json.Unmarshaler)(nil)).Elem()
	textWriter = reflect.TypeOf((*encoding.TextMarshaler)(nil)).Elem()
	textReader = reflect.TypeOf((*encoding.TextUnmarshaler)(nil)).Elem()
	durations  = reflect.TypeOf(time.Duration(0))
	moments    = reflect.TypeOf(time.Time{})
	unitsPath  = reflect.TypeOf(units.Length(0)).PkgPath()
)

// get is the plan of a nested type.
func (ps plans) get(t reflect.Type) *plan {
	if p, ok := ps[t]; ok {
		return p
	}
	p := &plan{of: t}
	ps[t] = p // before it is filled: a type may hold itself
	if t.Kind() != reflect.Pointer && t != moments {
		p.writes, p.reads = owns(t, jsonWriter), owns(t, jsonReader)
	}
	ps.fill(p)
	return p
}

// root is the plan of the type that a call is about: its own JSON form is the caller.
func (ps plans) root(t reflect.Type) *plan {
	p := &plan{of: t}
	ps.fill(p)
	return p
}

// partial is the plan of a nested input of which not everything need be there: what was asked, as far as it was asked.
func (ps plans) partial(t reflect.Type) *plan {
	p := ps.root(t)
	for i := range p.fields {
		p.fields[i].required = false
	}
	return p
}

func (ps plans) fill(p *plan) {
	t := p.of
	switch {
	case t == durations:
		p.form = lasting
	case t == moments:
		p.form = moment
	case isStated(t):
		p.form, p.elem = stated, ps.get(t.Field(0).Type)
	case t.Kind() == reflect.Pointer:
		p.form, p.elem = pointer, ps.get(t.Elem())
		if t.Elem().Kind() == reflect.Pointer {
			p.refuse("a pointer to a pointer has no form")
		}
	case t.Kind() != reflect.Interface && (has(t, textWriter) || has(t, textReader)):
		p.form = text
		if lender := embeds(t, textWriter, textReader); lender != "" {
			p.refuse("it embeds " + lender + ", whose text form would stand for the whole: give the field a name")
		}
	default:
		ps.fillKind(p)
	}
}

func (ps plans) fillKind(p *plan) {
	t := p.of
	switch t.Kind() {
	case reflect.Bool:
		p.form = boolean
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64:
		p.number(count)
	case reflect.Uint, reflect.Uint8, reflect.Uint16, reflect.Uint32, reflect.Uint64:
		p.number(natural)
	case reflect.String:
		p.form = phrase
	case reflect.Slice:
		p.form, p.elem = list, ps.get(t.Elem())
	case reflect.Array:
		p.form, p.elem = array, ps.get(t.Elem())
	case reflect.Map:
		p.form, p.key, p.elem = dict, ps.get(t.Key()), ps.get(t.Elem())
		if p.key.form != text && p.key.form != phrase {
			p.refuse("a map needs keys that are text")
		}
	case reflect.Struct:
		p.form = object
		ps.addFields(p, t, nil)
		if p.form == object && len(p.fields) == 0 && t.NumField() > 0 {
			p.refuse("none of its fields is written, and what it holds would be lost")
		}
	default:
		p.refuse("a " + t.Kind().String() + " has no form")
	}
}

// number takes a whole number of a predeclared type as a count; one of a defined type is a word or a quantity that
// lacks its text.
func (p *plan) number(f form) {
	p.form = f
	if p.of.PkgPath() != "" {
		p.refuse("a whole number of a type of its own needs a text form")
	}
}

func (p *plan) refuse(why string) { p.form, p.lack = none, p.of.String()+": "+why }

// isStated recognizes units.Stated of any type.
func isStated(t reflect.Type) bool {
	return t.Kind() == reflect.Struct && t.PkgPath() == unitsPath && strings.HasPrefix(t.Name(), "Stated[")
}

// has reports whether a type or the pointer to it has a method.
func has(t, method reflect.Type) bool {
	return t.Implements(method) || t.Kind() != reflect.Pointer && reflect.PointerTo(t).Implements(method)
}

// owns reports whether a type has a method that no embedded field can have lent.
func owns(t, method reflect.Type) bool {
	return t.Kind() != reflect.Interface && has(t, method) && embeds(t, method) == ""
}

// embeds names an embedded field with one of the methods, or is empty.
func embeds(t reflect.Type, methods ...reflect.Type) string {
	for i := 0; t.Kind() == reflect.Struct && i < t.NumField(); i++ {
		for _, method := range methods {
			if f := t.Field(i); f.Anonymous && has(f.Type, method) {
				return f.Type.String()
			}
		}
	}
	return ""
}
