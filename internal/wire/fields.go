package wire

import (
	"reflect"
	"unicode"
)

// addFields adds the fields of a struct to a plan, those of embedded structs in their place.
func (ps plans) addFields(p *plan, t reflect.Type, within []int) {
	for i := 0; i < t.NumField() && p.form == object; i++ {
		f := t.Field(i)
		tag := f.Tag.Get("wire")
		index := append(append([]int{}, within...), i)
		switch {
		case tag == "-":
		case f.Anonymous && (f.IsExported() || f.Type.Kind() == reflect.Struct):
			ps.flatten(p, f, index)
		case !f.IsExported():
			if tag != "" {
				p.refuse("field " + f.Name + " has a tag and is not exported")
			}
		case tag == "partial":
			p.add(field{name: lowerCamel(f.Name), index: index, plan: ps.partial(f.Type)})
			if p.form == object && p.fields[len(p.fields)-1].plan.form != object {
				p.refuse("field " + f.Name + " is partial and no struct of fields")
			}
		case tag != "" && tag != "always" && tag != "required":
			p.refuse("field " + f.Name + ` has the tag "` + tag + `"; expected always, required, partial or -`)
		default:
			p.add(field{name: lowerCamel(f.Name), index: index, plan: ps.get(f.Type),
				always: tag == "always", required: tag == "required"})
		}
	}
}

func (p *plan) add(f field) {
	for _, other := range p.fields {
		if other.name == f.name {
			p.refuse("two fields are called " + f.name)
			return
		}
	}
	p.fields = append(p.fields, f)
}

// flatten takes in the fields of an embedded struct, unless something of it would be lost.
func (ps plans) flatten(p *plan, f reflect.StructField, index []int) {
	before, hidden := len(p.fields), 0
	for i := 0; f.Type.Kind() == reflect.Struct && i < f.Type.NumField(); i++ {
		if inner := f.Type.Field(i); !inner.IsExported() && !inner.Anonymous {
			hidden++
		}
	}
	switch {
	case f.Type.Kind() != reflect.Struct || f.Type == moments || isStated(f.Type),
		has(f.Type, textWriter) || has(f.Type, textReader):
		p.refuse("it embeds " + f.Type.String() + ", which is no struct of fields: give the field a name")
	case f.Tag.Get("wire") != "":
		p.refuse("embedded field " + f.Name + ` can have no tag but "-"`)
	case hidden > 0 && (has(f.Type, jsonWriter) || has(f.Type, jsonReader)):
		p.refuse("it embeds " + f.Type.String() + ", whose own form may say more than its exported fields: " +
			"give the field a name")
	default:
		ps.addFields(p, f.Type, index)
		if p.form == object && len(p.fields) == before && f.Type.NumField() > 0 {
			p.refuse("it embeds " + f.Type.String() + ", none of whose fields is written: give the field a name")
		}
	}
}

// lowerCamel is the name of a member: the capitals that a Go name begins with become small, but for the one that begins
// the next word. ID is id, IDs ids, MaxGap maxGap, F0 f0, PHLow phLow.
func lowerCamel(name string) string {
	letters := []rune(name)
	capitals := 0
	for capitals < len(letters) && unicode.IsUpper(letters[capitals]) {
		capitals++
	}
	rest := letters[capitals:]
	plural := len(rest) == 1 && rest[0] == 's'
	if capitals > 1 && len(rest) > 0 && unicode.IsLower(rest[0]) && !plural {
		capitals--
	}
	for i := 0; i < capitals; i++ {
		letters[i] = unicode.ToLower(letters[i])
	}
	return string(letters)
}
