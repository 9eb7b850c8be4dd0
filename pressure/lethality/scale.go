package lethality

import (
	"math"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// scale is a Reference in plain numbers.
type scale struct {
	ref        int64
	perQuantum float64 // ln(10)/z
}

func (r Reference) scale() scale {
	return scale{quanta(r.Temperature), math.Ln10 / float64(r.Z)}
}

func (s scale) exponent(q int64) float64 { return float64(q-s.ref) * s.perQuantum }

func (s scale) rate(q int64) float64 { return math.Exp(s.exponent(q)) }

// over is the integral of the rate along a straight line of dt from one temperature to another:
// dt (L2 − L1)/ln(L2/L1), written dt L1 (eˣ − 1)/x with x = ln(L2/L1) so that it holds for level lines too.
func (s scale) over(dt float64, from, to int64) float64 {
	return dt * s.rate(from) * growth(float64(to-from)*s.perQuantum)
}

// flat is how far taylor is exact to the last digit.
const flat = 0.06

// growth is (eˣ − 1)/x.
func growth(x float64) float64 {
	if x > flat || x < -flat {
		return math.Expm1(x) / x
	}
	return taylor(x)
}

// taylor is growth to x⁷, small enough for the compiler to put in place.
func taylor(x float64) float64 {
	xx := x * x
	return 1 + float64(x*(1./2)) + float64(xx*((1./6+float64(x*(1./24)))+float64(xx*((1./120+float64(x*(1./720)))+float64(xx*(1./5040+float64(x*(1./40320))))))))
}

// fresh is how often the rate is taken afresh: between, it is carried from one reading to the next by the growth that gives the
// integral as well, which saves the exponential, and an error of a unit in the last place a reading.
const fresh = 32

// tooHot is the error of a reading beyond the model.
func tooHot(i int, r series.Reading[units.Temperature]) error {
	return series.ReadingError{Index: i, At: r.At, Err: units.RangeError{What: "temperature", Got: r.Value.String(), High: hottest.String()}}
}
