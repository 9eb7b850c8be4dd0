package form

import (
	"encoding"
	"encoding/json"
	"fmt"
	"os"
	"reflect"
	"strings"
	"time"
	"unicode"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/internal/wire"
)

// Field is one field of a form: its path in the file, what kind of value it holds, what it is, and an example value.
type Field struct{ Path, Kind, Help, Example string }

// String is the field in two lines.
func (f Field) String() string {
	text := sheet.Wrap(fmt.Sprintf("  %-26s %s, such as %s", f.Path, f.Kind, f.Example), 31)
	if f.Help != "" {
		text += sheet.Wrap(fmt.Sprintf("  %-26s   %s", "", f.Help), 31)
	}
	return text
}

// Fields lists the fields of a form. Examples are the values of the demo; where that has none, the tag example:"…".
func Fields(demo string, form any) ([]Field, error) {
	data, err := os.ReadFile(demo)
	if err != nil {
		return nil, err
	}
	var values any
	if err := json.Unmarshal(data, &values); err != nil {
		return nil, fmt.Errorf("%s: %w", demo, err)
	}
	if err := examplesRead("", reflect.TypeOf(form)); err != nil {
		return nil, err
	}
	return fieldsOf("", reflect.TypeOf(form), values), nil
}

// examplesRead refuses an example of a tag that its field would not take.
func examplesRead(path string, of reflect.Type) error {
	for i := 0; i < of.NumField(); i++ {
		f := of.Field(i)
		name := join(path, memberName(f.Name))
		if example := f.Tag.Get("example"); example != "" {
			if err := wire.Unmarshal([]byte(example), reflect.New(inner(f.Type)).Interface()); err != nil {
				return fmt.Errorf("%s: the example: %w", name, err)
			}
			continue
		}
		nested := inner(f.Type)
		if nested.Kind() == reflect.Slice {
			nested = inner(nested.Elem())
		}
		if nested.Kind() == reflect.Struct && !nested.Implements(textual) && f.IsExported() {
			if err := examplesRead(name, nested); err != nil {
				return err
			}
		}
	}
	return nil
}

var (
	textual = reflect.TypeOf((*encoding.TextMarshaler)(nil)).Elem()
	lasting = reflect.TypeOf(time.Duration(0))
)

func fieldsOf(path string, of reflect.Type, demo any) []Field {
	var all []Field
	for i := 0; i < of.NumField(); i++ {
		f := of.Field(i)
		if f.Anonymous && f.Type.Kind() == reflect.Struct { // lends its fields
			all = append(all, fieldsOf(path, f.Type, demo)...)
			continue
		}
		if !f.IsExported() || f.Tag.Get("wire") == "-" {
			continue
		}
		object, _ := demo.(map[string]any)
		name := memberName(f.Name)
		all = append(all, fieldOf(join(path, name), f.Type, f.Tag, object[name])...)
	}
	return all
}

func fieldOf(path string, of reflect.Type, tag reflect.StructTag, demo any) []Field {
	of = inner(of)
	leaf := Field{Path: path, Kind: kindOf(of), Help: tag.Get("help"), Example: tag.Get("example")}
	switch {
	case of.Implements(textual) || of == lasting:
	case of.Kind() == reflect.Struct && leaf.Example == "":
		return fieldsOf(path, of, demo)
	case leaf.Example == "" && isList(of) && inner(of.Elem()).Kind() == reflect.Struct && !inner(of.Elem()).Implements(textual):
		return fieldsOf(path+"[]", inner(of.Elem()), merged(demo))
	}
	if text := shown(demo); text != "" {
		leaf.Example = text
	}
	if leaf.Example == "" {
		leaf.Example = exampleOf(of)
	}
	return []Field{leaf}
}

func isList(of reflect.Type) bool { return of.Kind() == reflect.Slice || of.Kind() == reflect.Array }

// merged is one object of all in a list: of each field the first value.
func merged(demo any) map[string]any {
	one := map[string]any{}
	list, _ := demo.([]any)
	for _, element := range list {
		object, _ := element.(map[string]any)
		for name, value := range object {
			if _, known := one[name]; !known {
				one[name] = value
			}
		}
	}
	return one
}

// inner is what a Stated or a pointer holds.
func inner(of reflect.Type) reflect.Type {
	if of.Kind() == reflect.Pointer {
		return inner(of.Elem())
	}
	if strings.HasPrefix(of.Name(), "Stated[") {
		value, _ := of.FieldByName("Value")
		return inner(value.Type)
	}
	return of
}

// kindOf is a type in a word or two: "length", "time", "number".
func kindOf(of reflect.Type) string {
	switch {
	case of == lasting:
		return "time"
	case isList(of):
		return "list of " + kindOf(inner(of.Elem()))
	case of.Kind() == reflect.Bool:
		return "true or false"
	case of.Name() == "string":
		return "text"
	case of.Name() == "int":
		return "whole number"
	}
	var words strings.Builder
	var before rune
	for i, letter := range of.Name() {
		if i > 0 && unicode.IsUpper(letter) && !unicode.IsUpper(before) {
			words.WriteByte(' ')
		}
		before = letter
		words.WriteRune(unicode.ToLower(letter))
	}
	return words.String()
}

func shown(demo any) string {
	if demo == nil {
		return ""
	}
	text, err := json.Marshal(demo)
	if err != nil || string(text) == `""` {
		return ""
	}
	return string(text)
}

func join(path, name string) string {
	if path == "" {
		return name
	}
	return path + "." + name
}

// memberName is a Go name as the file has it: the capitals that it begins with small, but for one that begins a word.
func memberName(name string) string {
	letters := []rune(name)
	capitals := 0
	for capitals < len(letters) && unicode.IsUpper(letters[capitals]) {
		capitals++
	}
	if rest := letters[capitals:]; capitals > 1 && len(rest) > 0 && unicode.IsLower(rest[0]) && string(rest) != "s" {
		capitals--
	}
	for i := 0; i < capitals; i++ {
		letters[i] = unicode.ToLower(letters[i])
	}
	return string(letters)
}
