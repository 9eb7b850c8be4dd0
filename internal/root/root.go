package root

import "math"

// closeEnough is a hundredth of a quantum of temperature in kelvins.
const closeEnough = 1e-9

// nearEnough is the last step where a function runs nearly straight: what it leaves is its square times half the
// curvature by the slope.
const nearEnough = 1e-5

// Rising is a function that rises with x, and its slope.
type Rising interface {
	At(x float64) (value, slope float64)
}

// Of returns where a rising function is zero between low and high, from a first guess x between them: Newton's steps, and
// a halving where one would leave the bracket, which only shrinks. It ends when a step or the bracket is below 1e-9.
func Of[F Rising](low, high, x float64, f F) float64 { return of(low, high, x, closeEnough, f) }

// OfStraight is Of for a function whose curvature is at most a tenth of its slope: a Newton's step below 1e-5 is its
// last, which leaves less than 1e-11.
func OfStraight[F Rising](low, high, x float64, f F) float64 { return of(low, high, x, nearEnough, f) }

func of[F Rising](low, high, x, last float64, f F) float64 {
	for high-low > closeEnough {
		value, slope := f.At(x)
		switch {
		case value == 0:
			return x
		case value < 0:
			low = x
		default:
			high = x
		}
		next, enough := x-value/slope, last
		if !(next > low && next < high) {
			next, enough = (low+high)/2, closeEnough
		}
		if math.Abs(next-x) < enough {
			return next
		}
		x = next
	}
	return x
}
