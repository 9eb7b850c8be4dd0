package ice

import (
	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units/cite"
)

// conductionTerms are the terms of the series that are carried. From leastFourier on those left out are below 1e-11.
const (
	conductionTerms = 12
	leastFourier    = 0.02
)

var conduction = cite.Citation{
	Source: cite.Cengel, Where: "slab and cylinder with convection, the series", Basis: cite.Computed,
}

// conductionSeries is the middle of a slab or cylinder of one temperature put into a medium: away = Σ C exp(-ζ² Fo).
type conductionSeries struct {
	zeta, c [conductionTerms]float64
}

// newConduction finds the first roots of ζ tan ζ = Bi for a slab and of ζ J1(ζ) = Bi J0(ζ) for a cylinder, written
// without poles, and their amplitudes. Roots lie about π apart, so steps of a half cannot pass over two.
func newConduction(shape Shape, biot float64) conductionSeries {
	var s conductionSeries
	at := func(z float64) float64 { return float64(z*portable.Sin(z)) - float64(biot*portable.Cos(z)) }
	amplitude := func(z float64) float64 { return 4 * portable.Sin(z) / (float64(2*z) + portable.Sin(2*z)) }
	if shape == Cylinder {
		at = func(z float64) float64 { return float64(z*portable.J1(z)) - float64(biot*portable.J0(z)) }
		amplitude = func(z float64) float64 {
			j0, j1 := portable.J0(z), portable.J1(z)
			return 2 * j1 / (z * (float64(j0*j0) + float64(j1*j1)))
		}
	}
	const step = 0.5
	low, before := 0.0, at(0)
	for n := 0; n < conductionTerms; low += step {
		after := at(low + step)
		if (before < 0) != (after < 0) {
			s.zeta[n] = bisected(low, low+step, before < 0, at)
			s.c[n] = amplitude(s.zeta[n])
			n++
		}
		before = after
	}
	return s
}

// bisected is where a function changes its sign between low and high; below says that it is negative at low.
func bisected(low, high float64, below bool, at func(float64) float64) float64 {
	for middle := float64((low + high) * 0.5); middle > low && middle < high; middle = float64((low + high) * 0.5) {
		if (at(middle) < 0) == below {
			low = middle
		} else {
			high = middle
		}
	}
	return high
}

// middle is how far the middle still is from the medium, as a share of the start, at a Fourier number of leastFourier
// or more.
func (s conductionSeries) middle(fourier float64) float64 {
	sum := 0.
	for n := conductionTerms - 1; n >= 0; n-- {
		sum += float64(s.c[n] * portable.Exp(-s.zeta[n]*s.zeta[n]*fourier))
	}
	return sum
}

// fourier is the Fourier number at which the middle is a share away, on the long side; at least leastFourier.
func (s conductionSeries) fourier(away float64) float64 {
	if s.middle(leastFourier) <= away {
		return leastFourier
	}
	high := 2 * leastFourier
	for s.middle(high) > away {
		high *= 2
	}
	return bisected(float64(high*0.5), high, false, func(fourier float64) float64 { return s.middle(fourier) - away })
}
