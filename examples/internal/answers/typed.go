package answers

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"example.org/lakelarder/units"
)

// typed reads a field as people type it; what stands there is shown as it was understood. An empty field is not stated.
func typed[T units.Typable](w *writer, field string) units.Stated[T] {
	text := strings.TrimSpace(w.request.Values[field])
	if text == "" {
		return units.Stated[T]{}
	}
	read, err := units.ReadTyped[T](text)
	if err != nil {
		w.wrong(field, err)
		return units.Stated[T]{}
	}
	if w.Understood == nil {
		w.Understood = map[string]string{}
	}
	w.Understood[field] = read.Text
	return units.State(read.Value)
}

// word reads a field that holds one of a list of words; an empty one is not stated.
func word[T any](w *writer, field string, parse func(string) (T, error)) T {
	var none T
	text := strings.TrimSpace(w.request.Values[field])
	if text == "" {
		return none
	}
	value, err := parse(text)
	if err != nil {
		w.wrong(field, err)
		return none
	}
	return value
}

// whole reads a field that holds a whole number; an empty one is not stated.
func whole(w *writer, field string) units.Stated[int] {
	text := strings.TrimSpace(w.request.Values[field])
	if text == "" {
		return units.Stated[int]{}
	}
	n, err := strconv.Atoi(text)
	if err != nil {
		w.wrong(field, units.ParseError{Quantity: "whole number", Text: text, Reason: "expected digits only, such as 18"})
		return units.Stated[int]{}
	}
	return units.State(n)
}

// required says of fields that nothing stands in that they must be stated.
func (w *writer) required(fields ...string) {
	for _, f := range w.section.Fields {
		for _, name := range fields {
			if f.Name == name && strings.TrimSpace(w.request.Values[name]) == "" {
				w.wrong(name, units.UnsetError{What: f.Label})
			}
		}
	}
}

// refuse puts an error of the library beside the field that it speaks of, or else beside the one given.
func (w *writer) refuse(err error, otherwise string) {
	what := ""
	var unset units.UnsetError
	var past units.RangeError
	var bare units.UnitError
	switch {
	case errors.As(err, &unset):
		what = unset.What
	case errors.As(err, &past):
		what = past.What
	case errors.As(err, &bare):
		what = bare.What
	}
	field := otherwise
	for _, f := range w.section.Fields {
		if strings.EqualFold(f.Name, what) || strings.EqualFold(f.Label, what) {
			field = f.Name
		}
	}
	w.wrong(field, err)
}

// text prints a quantity in the system of the request, to the nearest digit.
func text[T units.Measure](w *writer, v T) string {
	return units.AmountOf(v).Text(w.request.System, units.Nearest)
}

// down prints a quantity rounded down: what is available, or held.
func down[T units.Measure](w *writer, v T) string {
	return units.AmountOf(v).Text(w.request.System, units.Down)
}

// up prints a quantity rounded up: what is required, or owed.
func up[T units.Measure](w *writer, v T) string {
	return units.AmountOf(v).Text(w.request.System, units.Up)
}

func counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
