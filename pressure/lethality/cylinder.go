package lethality

import (
	"math"
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Cylinder is a jar as a solid that only conducts heat. Height is the whole height of the pack. Film is what lets the
// heat in, of the steam or the glass wall or both in series, and the Conductivity of the pack belongs to it;
// HeldSurface has to be stated by name. A real jar holds liquid and head space: this is a picture of it.
type Cylinder struct {
	Radius, Height units.Length
	Diffusivity    units.Diffusivity
	Film           units.FilmCoefficient
	Conductivity   units.Conductivity
}

// HeldSurface is the film of a surface that takes the temperature of the medium at once, as in textbooks. No jar has
// it: glass and film slow the heat down, and a run worked out without them reads high and says so.
const HeldSurface units.FilmCoefficient = math.MaxInt64

// Point is a place in a cylinder, by its distances from the axis and from the middle of the height; the zero Point is
// the centre, the place that a jar which conducts heats last.
type Point struct {
	FromAxis, FromMiddle units.Length
}

func (c Cylinder) check(at Point) error {
	if err := units.Check("radius", c.Radius, 5*units.Millimetre, 200*units.Millimetre); err != nil {
		return err
	}
	if err := units.Check("height", c.Height, c.Radius/2, 20*c.Radius); err != nil {
		return err
	}
	if err := units.Check("diffusivity", c.Diffusivity, units.SquareMillimetrePerSecond/100, 10*units.SquareMillimetrePerSecond); err != nil {
		return err
	}
	if err := units.Check("distance from the axis", at.FromAxis, 0, c.Radius); err != nil {
		return err
	}
	if err := units.Check("distance from the middle", at.FromMiddle, -c.Height/2, c.Height/2); err != nil {
		return err
	}
	if c.Film == HeldSurface {
		return nil
	}
	if c.Film == 0 {
		return units.UnsetError{What: "film coefficient of the cylinder"}
	}
	if err := units.Check("film coefficient", c.Film, units.WattPerSquareMetreKelvin, 1_000_000*units.WattPerSquareMetreKelvin); err != nil {
		return err
	}
	return units.Check("conductivity", c.Conductivity, units.WattPerMetreKelvin/100, 10*units.WattPerMetreKelvin)
}

// cautions are those of whatever is worked out for the cylinder.
func (c Cylinder) cautions() []cite.Caution {
	if c.Film != HeldSurface {
		return explainsSolid()
	}
	return explainsSolid(surfaceHeld)
}

// solid is a Cylinder and a place in it in plain SI numbers.
type solid struct {
	alpha, radius, half float64
	biotR, biotZ        float64
	r, z                float64 // the place, as shares of radius and half height
}

func (c Cylinder) solid(at Point) solid {
	s := solid{
		alpha:  units.Float(c.Diffusivity, units.SquareMetrePerSecond),
		radius: units.Float(c.Radius, units.Metre), half: units.Float(c.Height, units.Metre) / 2,
		biotR: math.Inf(1), biotZ: math.Inf(1),
	}
	s.r = units.Float(at.FromAxis, units.Metre) / s.radius
	s.z = units.Float(at.FromMiddle, units.Metre) / s.half
	if c.Film != HeldSurface {
		overK := units.Float(c.Film, units.WattPerSquareMetreKelvin) / units.Float(c.Conductivity, units.WattPerMetreKelvin)
		s.biotR, s.biotZ = overK*s.radius, overK*s.half
	}
	return s
}

// Factors describe the straight part of a heating or cooling curve in the half-logarithmic plot of the formula
// method.
type Factors struct {
	Fh  time.Duration // for the temperature difference to fall to a tenth
	Jch Number        // lag of heating from one uniform temperature
	Jcc Number        // lag of cooling of a pack that has come to the temperature of the medium throughout

	Cautions []cite.Caution
}

// Factors returns fh, jch and jcc of a place from the geometry: fh = ln 10/(α(ζr²/R² + ζz²/l²)), rounded up, and both
// lags the product of the first coefficients. With a held surface that is 0.398/((1/a² + 0.427/b²)α), a the radius
// and b the half height (Olson and Jackson 1942, recalled), and 2.04 at the centre, not the 1.41 that printed g
// tables assume. Ranges: radius 5 to 200 mm, height half to twenty radii, diffusivity 0.01 to 10 mm²/s; otherwise a
// RangeError.
func (c Cylinder) Factors(at Point) (Factors, error) {
	if err := c.check(at); err != nil {
		return Factors{}, err
	}
	s := c.solid(at)
	zr, zz := InfiniteCylinder.root(s.biotR, 1), Slab.root(s.biotZ, 1)
	fh, err := ceiled("fh", math.Ln10/s.decay(zr, zz)*float64(time.Second))
	if err != nil {
		return Factors{}, err
	}
	j, err := numberOf(s.radial(zr) * s.axial(zz))
	return Factors{Fh: fh, Jch: j, Jcc: j, Cautions: c.cautions()}, err
}

// decay is λ of a mode, in 1/s.
func (s solid) decay(zr, zz float64) float64 {
	a, b := zr/s.radius, zz/s.half
	return float64(s.alpha * (float64(a*a) + float64(b*b)))
}

func (s solid) radial(zr float64) float64 {
	return float64(InfiniteCylinder.coefficient(zr) * InfiniteCylinder.profile(zr, s.r))
}

func (s solid) axial(zz float64) float64 {
	return float64(Slab.coefficient(zz) * Slab.profile(zz, s.z))
}

// lag is how far, in seconds, the place runs behind a medium that has risen steadily for ever: the solution of α∇²u =
// −1. The axial solution, less a series of modified Bessel functions that meets the condition on the side; with a
// held surface at the centre l²/2α − Σ (2(−1)ⁿ/vₙ³)(l²/α)/I0(vₙR/l).
func (s solid) lag() float64 {
	base := s.half * s.half / s.alpha
	sum := float64(base * (1 - float64(s.z*s.z)) / 2)
	if !math.IsInf(s.biotZ, 1) {
		sum += base / s.biotZ
	}
	for n := 1; n <= 400; n++ {
		v := Slab.root(s.biotZ, n)
		side := v * s.radius / s.half
		i0, i1 := scaledI(side)
		if !math.IsInf(s.biotR, 1) {
			i0 += float64(side * i1 / s.biotR)
		}
		here, _ := scaledI(side * s.r)
		share := here / i0 * portable.Exp(-side*(1-s.r))
		sum -= float64(s.axial(v) * base / float64(v*v) * share)
		if share*base/float64(v*v*v) < 1e-17*base {
			break
		}
	}
	return sum
}
