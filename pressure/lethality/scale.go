package lethality

import (
	"math"

	"example.org/lakelarder/internal/portable"
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

func (s scale) exponent(q int64) float64 { return float64(float64(q-s.ref) * s.perQuantum) }

func (s scale) rate(q int64) float64 { return portable.Exp(s.exponent(q)) }

// over is the integral of the rate along a straight line of dt from one temperature to another:
// dt (L2 − L1)/ln(L2/L1), written dt L1 (eˣ − 1)/x with x = ln(L2/L1) so that it holds for level lines too.
func (s scale) over(dt float64, from, to int64) float64 {
	return dt * s.rate(from) * growth(float64(to-from)*s.perQuantum)
}

// flat is how far taylor is exact to the last digit.
const flat = 1. / 32

// growth is (eˣ − 1)/x.
func growth(x float64) float64 {
	if x > flat || x < -flat {
		return portable.Expm1(x) / x
	}
	return taylor(x)
}

// taylor is growth to x⁷, small enough for the compiler to put in place.
func taylor(x float64) float64 {
	xx := x * x
	return 1 + float64(x*(1./2)) + float64(xx*((1./6+float64(x*(1./24)))+float64(xx*((1./120+float64(x*(1./720)))+float64(xx*(1./5040+float64(x*(1./40320))))))))
}

// walk is an integral on its way along a record, reading by reading.
type walk struct {
	at, q int64
	rate  float64 // at the last reading
	sum   float64 // nanoseconds
}

// fresh is how often the rate is taken afresh where the temperature runs level: between, it is carried from one
// reading to the next by the growth that gives the integral as well, which saves the exponential. A steep line takes
// it afresh at once: what is carried through a fall to nothing has lost its digits, and a rise would make much of
// what is left.
const fresh = 32

// to goes on to reading i.
func (w walk) to(s scale, i int, at, q int64) walk {
	x, dt := float64(q-w.q)*s.perQuantum, float64(at-w.at)
	w.at, w.q = at, q
	if x > flat || x < -flat || i%fresh == 0 {
		w.sum, w.rate = s.afresh(x, dt, w.sum, w.rate, q)
		return w
	}
	g := taylor(x)
	w.sum += float64(dt * w.rate * g)
	w.rate = float64(w.rate * (1 + float64(x*g)))
	return w
}

// afresh is the sum after a line and the rate at its end, of which the rate carried so far knows nothing: along a
// steep line dt (L2 − L1)/ln(L2/L1).
func (s scale) afresh(x, dt, sum, rate float64, to int64) (float64, float64) {
	next := s.rate(to)
	if x > flat || x < -flat {
		return sum + float64(dt*((next-rate)/x)), next
	}
	return sum + float64(dt*rate*taylor(x)), next
}

// tooHot is the error of a reading beyond the model.
func tooHot(i int, r series.Reading[units.Temperature]) error {
	return series.ReadingError{Index: i, At: r.At, Err: units.RangeError{
		What: "temperature", Got: r.Value.String(), High: hottest.String()},
	}
}
