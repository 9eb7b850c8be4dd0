package lethality

import (
	"math"
	"strconv"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
)

// Held is the Biot number of a surface that takes the temperature of the medium at once.
const Held Number = math.MaxInt64

// Transient is a body at one temperature that meets a medium of another. Biot is h·length/k, from 0.001 to a million,
// or Held. Temperatures are shares of the difference left: (T − medium)/(start − medium).
type Transient struct {
	Shape Shape
	Biot  Number
}

func (b Transient) check() error {
	if err := shapes.Check(b.Shape); err != nil {
		return err
	}
	if b.Biot == Held {
		return nil
	}
	return b.Biot.check("Biot number", One/1_000, 1_000_000*One)
}

func (b Transient) biot() float64 {
	if b.Biot == Held {
		return math.Inf(1)
	}
	return b.Biot.float()
}

// Eigenvalues returns the first n roots of the shape's condition at the surface, rounded to 1e-12 from a float64 that
// is right to its last digits: ζ tan ζ = Bi for the slab, ζ J1 = Bi J0 for the cylinder, 1 − ζ cot ζ = Bi for the
// sphere. n must be 1 to 1,000 and the Biot number 0.001 to 1e6 or Held; otherwise a RangeError.
func (b Transient) Eigenvalues(n int) ([]Number, error) {
	if err := b.check(); err != nil {
		return nil, err
	}
	if n < 1 || n > 1_000 {
		return nil, units.RangeError{What: "number of eigenvalues", Got: strconv.Itoa(n), Low: "1", High: "1000"}
	}
	roots := make([]Number, n)
	for i := range roots {
		root, err := numberOf(b.Shape.root(b.biot(), i+1))
		if err != nil {
			return nil, err
		}
		roots[i] = root
	}
	return roots, nil
}

// OneTerm returns the first eigenvalue and its coefficient, the ζ1 and C1 of textbook tables, to the nearest 1e-12.
// One term alone is good to about 1 % from a Fourier number of 0.2 up. Ranges as for Eigenvalues.
func (b Transient) OneTerm() (zeta, c Number, err error) {
	roots, err := b.Eigenvalues(1)
	if err != nil {
		return 0, 0, err
	}
	c, err = numberOf(b.Shape.coefficient(b.Shape.root(b.biot(), 1)))
	return roots[0], c, err
}

// At returns the share of the difference left at a place, 0 at the centre to One at the surface, after a Fourier
// number α t/length²: the whole series, to the nearest 1e-12. The Fourier number must be 0.0001 or more; otherwise,
// or outside the ranges of Eigenvalues, a RangeError.
func (b Transient) At(fourier Number, place units.Ratio) (units.Ratio, error) {
	if err := units.Check("place", place, 0, units.One); err != nil {
		return 0, err
	}
	x := units.Float(place, units.One)
	return b.sum(fourier, func(z float64) float64 { return b.Shape.profile(z, x) })
}

// Mean returns the share of the difference left on average over the body; the heat taken up is One less that, as a
// share of the final. Ranges and rounding as for At.
func (b Transient) Mean(fourier Number) (units.Ratio, error) {
	return b.sum(fourier, b.Shape.mean)
}

func (b Transient) sum(fourier Number, weight func(float64) float64) (units.Ratio, error) {
	if err := b.check(); err != nil {
		return 0, err
	}
	if err := fourier.check("Fourier number", One/10_000, 1_000_000*One); err != nil {
		return 0, err
	}
	fo, biot, sum := fourier.float(), b.biot(), 0.
	for n := 1; ; n++ {
		z := b.Shape.root(biot, n)
		decay := portable.Exp(-float64(z * z * fo))
		if decay < 1e-17 {
			break
		}
		sum += float64(b.Shape.coefficient(z) * decay * weight(z))
	}
	return units.OfFloat(sum, units.One)
}

// coefficient is C of a root.
func (s Shape) coefficient(z float64) float64 {
	switch s {
	case Slab:
		return 4 * portable.Sin(z) / (float64(2*z) + portable.Sin(2*z))
	case Sphere:
		sin, cos := portable.Sincos(z)
		return 4 * (sin - float64(z*cos)) / (float64(2*z) - portable.Sin(2*z))
	}
	j0, j1 := portable.Bessel(z)
	return 2 / z * j1 / (float64(j0*j0) + float64(j1*j1))
}

// profile is the shape of a mode at a place x from the centre, 1 being the surface.
func (s Shape) profile(z, x float64) float64 {
	switch s {
	case Slab:
		return portable.Cos(z * x)
	case Sphere:
		if x == 0 {
			return 1
		}
		return portable.Sin(z*x) / float64(z*x)
	}
	return portable.J0(z * x)
}

// mean is the mode's average over the body.
func (s Shape) mean(z float64) float64 {
	switch s {
	case Slab:
		return portable.Sin(z) / z
	case Sphere:
		sin, cos := portable.Sincos(z)
		return 3 * (sin - float64(z*cos)) / float64(z*z*z)
	}
	return 2 * portable.J1(z) / z
}
