package units

import (
	"encoding"
	"errors"
	"time"
)

// Typed is what somebody typed, as it was understood: the value, and its text in plain figures and in the units that
// were typed, to be shown and confirmed. The Parse function of the type reads the text as the same value.
type Typed[T Typable] struct {
	Value T
	Text  string
}

// Typable is what a person types into a form: a quantity, a temperature, a time or a proportion of parts.
type Typable interface {
	Quantity | Temperature | time.Duration | Parts
}

// maxTyped bounds what a person may type; words take more room than figures.
const maxTyped = 160

// ReadTyped reads what a cook types, which the strict Parse functions refuse: "7 lbs. 4 oz.", "2½ C", "350 degrees F",
// "4’ 6”", "one and a half cups", "3,5 per cent", "1½ hrs", "one to four". What says one thing in any case, spelling,
// dash or quotation mark is understood; what may say two ("1,500 g", "30 gr", "2 T", "8 oz" of a volume, "1:40" of a
// time, a number without a unit) is a ParseError with the choices. A value past the range is a RangeError. No range of
// two values is read.
func ReadTyped[T Typable](s string) (Typed[T], error) {
	k := kitchenOf[T]()
	if len(s) > maxTyped {
		return Typed[T]{}, tooLong(k.name, s, maxTyped)
	}
	text, refused := k.understand(plain(s))
	if refused != nil {
		e := ParseError{Quantity: k.name, Text: s, Reason: refused.reason}
		for _, choice := range k.choices(refused, 2) {
			if v, err := parseTyped[T](choice); err == nil {
				e.Choices = append(e.Choices, confirmed(v, choice))
			}
		}
		return Typed[T]{}, e
	}
	v, err := parseTyped[T](text)
	if fault := (ParseError{}); errors.As(err, &fault) {
		fault.Text = s
		return Typed[T]{}, fault
	} else if err != nil {
		return Typed[T]{}, err
	}
	return Typed[T]{Value: v, Text: confirmed(v, text)}, nil
}

// confirmed is the text to show: the strict one, but a time as it lasts, for 1.40 h is 1 h 24 min.
func confirmed[T Typable](v T, text string) string {
	if d, ok := any(v).(time.Duration); ok {
		return Lasting(d)
	}
	return text
}

// parseTyped is the strict Parse function of T.
func parseTyped[T Typable](text string) (v T, err error) {
	switch p := any(&v).(type) {
	case *time.Duration:
		*p, err = ParseLasting(text)
	case encoding.TextUnmarshaler:
		err = p.UnmarshalText([]byte(text))
	}
	return v, err
}

// kitchenOf returns what the door for typed text knows about T.
func kitchenOf[T Typable]() kitchen {
	var v T
	switch any(v).(type) {
	case Length:
		return lengthsTyped
	case Area:
		return areasTyped
	case Mass:
		return massesTyped
	case Volume:
		return volumesTyped
	case Pressure:
		return pressuresTyped
	case Temperature:
		return temperaturesTyped
	case TemperatureChange:
		return changesTyped
	case Ratio:
		return ratiosTyped
	case PH:
		return phsTyped
	case Energy:
		return energiesTyped
	case Density:
		return densitiesTyped
	case Speed:
		return speedsTyped
	case time.Duration:
		return timesTyped
	case Parts:
		return partsTyped
	}
	return strictOnly(any(v))
}

// strictOnly serves the quantities that are not said over a bowl: their strict units in any case.
func strictOnly(v any) kitchen {
	d := diffusivities
	switch v.(type) {
	case Conductivity:
		d = conductivities
	case FilmCoefficient:
		d = filmCoefficients
	case SpecificHeat:
		d = specificHeats
	case SpecificEnergy:
		d = specificEnergies
	}
	return kitchen{name: d.name, strict: d}
}
