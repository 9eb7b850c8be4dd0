package portable

import "math"

// J0 returns the Bessel function of the first kind and order 0. See Bessel.
func J0(x float64) float64 {
	j0, _ := Bessel(x)
	return j0
}

// J1 returns the Bessel function of the first kind and order 1. See Bessel.
func J1(x float64) float64 {
	_, j1 := Bessel(x)
	return j1
}

const (
	besselTerms = 20                  // of the series around a zero
	besselFar   = 8 * math.Pi         // from here on Hankel's series
	perHalfPi   = 2 / math.Pi         // the zeros of the two functions lie half a π apart, by turns
	quarterRoot = 0.7978845608028654  // √(2/π)
	hankelTerms = 10                  // of each of its two parts
	halfRoot    = 0.70710678118654752 // √½
)

// Bessel returns J0(x) and J1(x), which share most of their work: within 2.9 ulp up to 8π, near their zeros too;
// beyond within 2.8 last places of √(2/πx), the height of their waves. Special values: 0 for ±Inf, NaN for NaN; J0 is
// even and J1 odd.
func Bessel(x float64) (j0, j1 float64) {
	size := math.Abs(x)
	switch {
	case size < math.Pi/2:
		return besselNear(x)
	case size > math.MaxFloat64:
		return 0, 0
	case !(size < besselFar):
		j0, j1 = besselHankel(size)
	default:
		j0, j1 = besselPieced(size, int(size*perHalfPi)-1)
	}
	if x < 0 {
		j1 = -j1
	}
	return j0, j1
}

// besselPiece is J0 around a zero of J0 or J1, by its power series.
type besselPiece struct {
	zero, low float64 // the zero in two words
	series    [besselTerms]float64
}

// besselPieced is J0 and J1, its slope turned round, at a distance h from a zero; even and odd powers side by side.
func besselPieced(x float64, piece int) (j0, j1 float64) {
	h := (x - besselTable[piece].zero) - besselTable[piece].low
	hh := float64(h * h)
	var even, odd, evenSlope, oddSlope float64
	for i := besselTerms - 2; i > 0; i -= 2 {
		a, b := besselTable[piece].series[i], besselTable[piece].series[i+1]
		even, odd = float64(even*hh)+a, float64(odd*hh)+b
		evenSlope, oddSlope = float64(evenSlope*hh)+float64(float64(i+1)*b), float64(oddSlope*hh)+float64(float64(i)*a)
	}
	level, slope := besselTable[piece].series[0], besselTable[piece].series[1]
	j0 = level + float64(h*(slope+float64(h*(even+float64(h*odd)))))
	j1 = slope + float64(h*(oddSlope+float64(h*evenSlope)))
	return j0, -j1
}

// besselNear is the power series around 0.
func besselNear(x float64) (j0, j1 float64) {
	z := float64(x * x)
	for i := len(j0Series) - 1; i > 0; i-- {
		j0, j1 = float64(z*(j0+j0Series[i])), float64(z*(j1+j1Series[i]))
	}
	half := float64(x / 2)
	return 1 + j0, half + float64(half*j1)
}

// besselHankel is the series for great x: √(2/πx) (P cos(x − φ) − Q sin(x − φ)), φ being π/4 and 3π/4 (Abramowitz and
// Stegun 9.2.5 to 9.2.10).
func besselHankel(x float64) (j0, j1 float64) {
	sin, cos := Sincos(x)
	sum, difference := sin+cos, sin-cos
	y := 1 / x
	yy := float64(y * y)
	var p0, q0, p1, q1 float64
	for i := hankelTerms - 1; i >= 0; i-- {
		t := hankelTable[i]
		p0, q0 = float64(p0*yy)+t.p0, float64(q0*yy)+t.q0
		p1, q1 = float64(p1*yy)+t.p1, float64(q1*yy)+t.q1
	}
	height := float64(quarterRoot * halfRoot / math.Sqrt(x))
	q0, q1 = float64(q0*y), float64(q1*y)
	j0 = float64(p0*sum) - float64(q0*difference)
	j1 = float64(p1*difference) + float64(q1*sum)
	return float64(height * j0), float64(height * j1)
}
