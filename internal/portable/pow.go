package portable

import "math"

// Pow returns x to the power of y, within 0.55 ulp. Special values are those of math.Pow: 1 for x = 1 and for y = 0
// whatever the other is, NaN for a negative x and a y that is not whole, and the limits at 0 and Inf with the sign of
// an odd y.
func Pow(x, y float64) float64 {
	switch {
	case y == 0 || x == 1:
		return 1
	case x != x || y != y:
		return math.NaN()
	case x == 0 || math.IsInf(x, 0):
		return powOfEdge(x, y)
	case math.IsInf(y, 0):
		return powToInfinity(math.Abs(x), y)
	}
	sign := 1.
	if x < 0 {
		if y != math.Trunc(y) {
			return math.NaN()
		}
		if odd(y) {
			sign = -1
		}
		x = -x
	}
	high, low := logTwo(x)
	switch estimate := float64(y * high); {
	case estimate > overflow+1:
		return math.Copysign(math.Inf(1), sign)
	case estimate < vanished-1:
		return math.Copysign(0, sign)
	case math.Abs(y) < 1e-20:
		return sign // the logarithm of a float64 is below 746
	}
	product, rest := times(y, high)
	return sign * expSum(product, rest+float64(y*low))
}

// odd: a whole number that is odd; from 2^53 up all are even.
func odd(y float64) bool {
	half := math.Abs(y) / 2
	return half < 1<<52 && half != math.Trunc(half)
}

// powOfEdge is the power of a zero or an infinity.
func powOfEdge(x, y float64) float64 {
	size := 0.
	if (x == 0) == (y < 0) {
		size = math.Inf(1)
	}
	if y == math.Trunc(y) && odd(y) {
		return math.Copysign(size, x)
	}
	return size
}

func powToInfinity(x, y float64) float64 {
	switch {
	case x == 1:
		return 1
	case (x > 1) == (y > 0):
		return math.Inf(1)
	}
	return 0
}
