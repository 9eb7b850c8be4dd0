package main

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
)

// given parses a text that may be left out, and is then the zero value.
func given[T any](r *form.Fields, name, text string, parse func(string) (T, error)) (none T) {
	if text == "" {
		return none
	}
	return form.Field(r, name, text, parse)
}

// stated is given for a figure, of which zero is one.
func stated[T comparable](r *form.Fields, name, text string, parse func(string) (T, error)) units.Stated[T] {
	if text == "" {
		return units.Stated[T]{}
	}
	return units.State(form.Field(r, name, text, parse))
}

// among reads one of some words, which are listed in the order of their values.
func among[T any](words string, values ...T) func(string) (T, error) {
	return func(text string) (none T, err error) {
		for i, word := range strings.Split(words, ", ") {
			if strings.EqualFold(strings.TrimSpace(text), word) {
				return values[i], nil
			}
		}
		return none, fmt.Errorf("cannot read %q: expected one of %s", text, words)
	}
}

// parseTime reads "100 min", "1 h 40 min" or "36 hours".
func parseTime(text string) (time.Duration, error) {
	d, err := time.ParseDuration(strings.NewReplacer("minutes", "m", "minute", "m", "min", "m", "hours", "h", "hour", "h", " ", "").Replace(text))
	if err != nil {
		return 0, fmt.Errorf("cannot read %q as a time: expected one like 1 h 40 min", text)
	}
	return d, nil
}

// parseDays reads "14 days".
func parseDays(text string) (int, error) {
	number, unit, _ := strings.Cut(strings.TrimSpace(text), " ")
	n, err := strconv.Atoi(number)
	if err != nil || unit != "days" && unit != "day" {
		return 0, fmt.Errorf("cannot read %q as whole days: expected them like 14 days", text)
	}
	return n, nil
}

// parseRule finds a core rule for the home by its name. One of the trade goes with measured salt and recorded cold, one from memory with a look
// into the print: no recipe passes by them.
func parseRule(id string) (smoke.CoreLimit, error) {
	rule, err := smoke.FindCoreLimit(id)
	if err == nil && (!rule.Home || rule.Citation.Unverified()) {
		err = fmt.Errorf("%s is not a home rule that was read in print: expected one such as HOT-160-PNW, or none for the strictest", id)
	}
	return rule, err
}

// parseSalt finds a salt by name. One without a published weight is no fault of the recipe's file: it has no weight, and the check says so.
func parseSalt(name string) (brine.Ingredient, error) {
	salt, err := brine.FindIngredient(name)
	if errors.As(err, &brine.NoWeightError{}) {
		return brine.Ingredient{}, nil
	}
	return salt, err
}
