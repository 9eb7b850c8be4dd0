package units

import (
	"math"

	"github.com/shopspring/decimal"
)

// Temperature is a point on the thermodynamic scale, a whole number of 1/9,000,000 kelvin above
// absolute zero: Celsius and Fahrenheit readings to 0.000001 are both exact in it, so
// Fahrenheit(212) == Celsius(100). The zero value means "not set" and meets no limit in either
// direction; anything at or below absolute zero, above 5e11 K, NaN or infinite becomes it. Compare
// with == or the methods.
type Temperature struct{ quanta int64 }

// maxTemperature leaves room for the origin of every scale.
const maxTemperature = 1 << 62

// Celsius returns x °C rounded to the nearest quantum; unset for NaN, infinities and anything at
// or below absolute zero.
func Celsius(x float64) Temperature { return fromFloat(x, CelsiusScale) }

// Fahrenheit returns x °F rounded to the nearest quantum; unset for NaN, infinities and anything
// at or below absolute zero.
func Fahrenheit(x float64) Temperature { return fromFloat(x, FahrenheitScale) }

// Kelvin returns x K rounded to the nearest quantum; unset for NaN, infinities and anything at or
// below absolute zero.
func Kelvin(x float64) Temperature { return fromFloat(x, KelvinScale) }

func fromFloat(x float64, s Scale) Temperature {
	v := math.Round(float64(x * float64(s.degree())))
	if !(v > -maxTemperature && v < maxTemperature) { // also refuses NaN
		return Temperature{}
	}
	return FromAbsoluteZero(TemperatureChange(int64(v) + s.origin()))
}

// FromAbsoluteZero returns the temperature that lies the given change above absolute zero; unset
// for a change of zero or less, or beyond 5e11 K.
func FromAbsoluteZero(c TemperatureChange) Temperature {
	if c <= 0 || c > maxTemperature {
		return Temperature{}
	}
	return Temperature{int64(c)}
}

// TemperatureOf returns n degrees of a scale, rounded once to the nearest quantum, ties away from
// zero. At or below absolute zero, or past the range, is a RangeError.
func TemperatureOf(n decimal.Decimal, s Scale) (Temperature, error) {
	c, err := Of(n, TemperatureChange(s.degree()))
	if err != nil {
		return Temperature{}, err
	}
	t := FromAbsoluteZero(c + TemperatureChange(s.origin())) // a sum that wraps is negative, so unset
	if !t.IsSet() {
		return Temperature{}, tooFar(n.String() + " " + s.String())
	}
	return t, nil
}

func tooFar(got string) error {
	return RangeError{What: "temperature", Got: got, Low: "-273.15 °C", High: "5e11 °C", LowExclusive: true}
}

// IsSet reports whether t is a temperature at all.
func (t Temperature) IsSet() bool { return t.quanta > 0 }

// Equal reports t == u, two unset temperatures included; go-cmp compares by it.
func (t Temperature) Equal(u Temperature) bool { return t == u }

// AtLeast reports t ≥ u; false when either is not set.
func (t Temperature) AtLeast(u Temperature) bool {
	return u.quanta > 0 && t.quanta >= u.quanta
}

// Above reports t > u; false when either is not set.
func (t Temperature) Above(u Temperature) bool { return u.quanta > 0 && t.quanta > u.quanta }

// Below reports t < u; false when either is not set.
func (t Temperature) Below(u Temperature) bool { return t.quanta > 0 && t.quanta < u.quanta }

// Sub returns t − u, exact. When either is not set it is an UnsetError.
func (t Temperature) Sub(u Temperature) (TemperatureChange, error) {
	if !t.IsSet() || !u.IsSet() {
		return 0, UnsetError{What: "temperature"}
	}
	return TemperatureChange(t.quanta - u.quanta), nil
}

// Add returns t + c, exact; unset when t is, or when the sum is at or below absolute zero or past
// the range.
func (t Temperature) Add(c TemperatureChange) Temperature {
	if !t.IsSet() || c > maxTemperature {
		return Temperature{}
	}
	return FromAbsoluteZero(TemperatureChange(t.quanta) + c)
}

// AboveAbsoluteZero returns t as a change from absolute zero, exact; zero when t is not set.
func (t Temperature) AboveAbsoluteZero() TemperatureChange { return TemperatureChange(t.quanta) }

// Celsius returns t in °C to within one unit in the last place; NaN when not set.
func (t Temperature) Celsius() float64 { return t.float(CelsiusScale) }

// Fahrenheit returns t in °F to within one unit in the last place; NaN when not set.
func (t Temperature) Fahrenheit() float64 { return t.float(FahrenheitScale) }

// Kelvin returns t in K to within one unit in the last place; NaN when not set.
func (t Temperature) Kelvin() float64 { return t.float(KelvinScale) }

func (t Temperature) float(s Scale) float64 {
	if !t.IsSet() {
		return math.NaN()
	}
	return float64(t.quanta-s.origin()) / float64(s.degree())
}

// In returns t on a scale to the given decimal places, ties away from zero; zero when not set. Places beyond 40, or
// below -40, count as those.
func (t Temperature) In(s Scale, places int32) decimal.Decimal {
	if !t.IsSet() {
		return decimal.Zero
	}
	return decimal.NewFromInt(t.quanta-s.origin()).DivRound(decimal.NewFromInt(s.degree()), max(-mostPlaces, min(mostPlaces, places)))
}

// Text prints t on a scale with a fixed number of decimals, "121.1 °C"; "not set" when it is not.
func (t Temperature) Text(s Scale, places int32) string {
	if !t.IsSet() {
		return notSet
	}
	return grouped(t.In(s, places), places) + " " + s.String()
}

const notSet = "not set"

// String prints t so that ParseTemperature gives it back to the quantum: in °C where six decimals
// are exact, else in °F where they are, else in °C to seven; "not set" when it is not.
func (t Temperature) String() string { return t.inOneOf(CelsiusScale, FahrenheitScale) }

// inOneOf prints t in the first of two scales in which six decimals are exact, else in °C to seven.
func (t Temperature) inOneOf(scales ...Scale) string {
	if !t.IsSet() {
		return notSet
	}
	for _, s := range scales {
		if digits, exact := appendDecimal(nil, t.quanta-s.origin(), s.degree(), 6); exact {
			return joined(digits, s.String())
		}
	}
	digits, _ := appendDecimal(nil, t.quanta-CelsiusScale.origin(), CelsiusScale.degree(), 7)
	return joined(digits, CelsiusScale.String())
}

// exactIn reports whether six decimals of a scale hold t.
func (t Temperature) exactIn(s Scale) bool {
	_, exact := appendDecimal(nil, t.quanta-s.origin(), s.degree(), 6)
	return exact
}

// ParseTemperature reads "121.1 °C", "-18C", "240 °F" or "388.15 K", rounded once to the nearest
// quantum, and "not set" as the zero value. Text without a scale, or not understood, is a
// ParseError; at or below absolute zero a RangeError.
func ParseTemperature(s string) (Temperature, error) {
	if s == notSet {
		return Temperature{}, nil
	}
	if len(s) > maxText {
		return Temperature{}, tooLong("temperature", s, maxText)
	}
	i := skipSpace(s, 0)
	neg, size := sign(s[i:])
	i += size
	n, used, reason := scan(s[i:])
	if reason != "" {
		return Temperature{}, ParseError{Quantity: "temperature", Text: s, Reason: reason}
	}
	scale, reason := readScale(trimSpace(s[skipSpace(s, i+used):]))
	if reason != "" {
		return Temperature{}, ParseError{Quantity: "temperature", Text: s, Reason: reason}
	}
	m, ok := n.of(&unit{num: scale.degree(), den: 1})
	if !ok || m > maxTemperature {
		return Temperature{}, tooFar(clip(s))
	}
	v, _ := signed(m, neg)
	t := FromAbsoluteZero(TemperatureChange(v + scale.origin()))
	if !t.IsSet() {
		return Temperature{}, tooFar(clip(s))
	}
	return t, nil
}

// MarshalText is String as bytes, "not set" for the zero value; it never fails.
func (t Temperature) MarshalText() ([]byte, error) { return []byte(t.String()), nil }

// UnmarshalText is ParseTemperature; on an error the value stays as it was.
func (t *Temperature) UnmarshalText(text []byte) error {
	v, err := ParseTemperature(string(text))
	if err == nil {
		*t = v
	}
	return err
}
