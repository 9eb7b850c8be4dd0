package lethality

import (
	"math"

	"example.org/lakelarder/internal/portable"
)

// firstZero is the first zero of J0.
const firstZero = 2.404825557695773

// besselZero is zero n of J0, counted from 1: McMahon's series (Abramowitz and Stegun 9.5.12) and two steps of Newton.
func besselZero(n int) float64 {
	if n == 1 {
		return firstZero
	}
	b := float64((float64(n) - 0.25) * math.Pi)
	e := 1 / float64(8*b)
	ee := e * e
	z := b + float64(e*(1-float64(ee*(124./3-float64(ee*(120928./15))))))
	for i := 0; i < 2; i++ {
		j0, j1 := portable.Bessel(z)
		z += j0 / j1 // J0' = −J1
	}
	return z
}

// scaledI returns e⁻ˣ I0(x) and e⁻ˣ I1(x) for x ≥ 0: the power series (9.6.10), whose terms are all positive, and
// from 30 up the asymptotic one (9.7.1).
func scaledI(x float64) (i0, i1 float64) {
	if x >= 30 {
		root := math.Sqrt(2 * math.Pi * x)
		return asymptotic(x, 0) / root, asymptotic(x, 4) / root
	}
	quarter := float64(x * x / 4)
	term0, term1 := 1., x/2
	for k := 1.; ; k++ {
		i0, i1 = i0+term0, i1+term1
		if term0 <= 1e-17*i0 && term1 <= 1e-17*i1 {
			break
		}
		term0 *= quarter / float64(k*k)
		term1 *= quarter / float64(k*(k+1))
	}
	scale := portable.Exp(-x)
	return i0 * scale, i1 * scale
}

// asymptotic is the bracket of 9.7.1, mu = 4ν².
func asymptotic(x, mu float64) float64 {
	sum, term := 1., 1.
	for k := 1.; k < 30 && math.Abs(term) > 1e-17; k++ {
		odd := float64(2*k) - 1
		term = float64(term * (-(mu - float64(odd*odd)) / float64(8*k*x)))
		sum += term
	}
	return sum
}
