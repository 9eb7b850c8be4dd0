package root

import "math"

// closeEnough is a hundredth of a quantum of temperature in kelvins.
const closeEnough = 1e-9

// Rising is a function that rises with x, and its slope.
type Rising interface {
	At(x float64) (value, slope float64)
}

// Of returns where a rising function is zero between low and high, from a first guess x between them: Newton's steps, and
// a halving where one would leave the bracket, which only shrinks. It ends when a step or the bracket is below 1e-9.
func Of[F Rising](low, high, x float64, f F) float64 {
	for high-low > closeEnough {
		value, slope := f.At(x)
		if value < 0 {
			low = x
		} else {
			high = x
		}
		next := x - value/slope
		if !(next > low && next < high) {
			next = (low + high) / 2
		}
		if math.Abs(next-x) < closeEnough {
			return next
		}
		x = next
	}
	return x
}
