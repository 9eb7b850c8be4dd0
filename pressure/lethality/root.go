package lethality

import (
	"math"

	"example.org/lakelarder/internal/portable"
)

// root returns eigenvalue n of a shape, counted from 1, for a Biot number (+Inf: the surface is held), to a unit or
// two in the last place: Newton's steps, kept in a bracket that holds this root alone.
func (s Shape) root(biot float64, n int) float64 {
	k := float64(n)
	if math.IsInf(biot, 1) {
		switch s {
		case Slab:
			return (k - 0.5) * math.Pi
		case Sphere:
			return k * math.Pi
		}
		return besselZero(n)
	}
	low, high := s.bracket(n)
	z := s.guess(biot, n)
	if !(z > low && z < high) {
		z = (low + high) / 2
	}
	sign := 1.
	if n%2 == 0 {
		sign = -1
	}
	for i := 0; i < 100; i++ {
		f, slope := s.condition(biot, z)
		f, slope = sign*f, sign*slope
		if f < 0 {
			low = z
		} else {
			high = z
		}
		if step := f / slope; math.Abs(step) <= 4e-16*z {
			return z - step
		}
		next := z - f/slope
		if !(next > low && next < high) {
			next = (low + high) / 2
		}
		z = next
	}
	return z
}

// bracket holds root n alone. The zeros of J0 and J1 lie a quarter of π below and above the multiples of π, so those
// part the roots of the cylinder as they do the sphere's.
func (s Shape) bracket(n int) (low, high float64) {
	low, high = float64(float64(n-1)*math.Pi), float64(float64(n)*math.Pi)
	if s == Slab {
		high -= math.Pi / 2
	}
	return low, high
}

// condition is the function whose roots are the eigenvalues, and its slope, positive at odd roots.
func (s Shape) condition(biot, z float64) (f, slope float64) {
	switch s {
	case Slab: // ζ tan ζ = Bi
		sin, cos := portable.Sincos(z)
		return float64(z*sin) - float64(biot*cos), float64(z*cos) + float64((1+biot)*sin)
	case Sphere: // 1 − ζ cot ζ = Bi
		sin, cos := portable.Sincos(z)
		return float64((1-biot)*sin) - float64(z*cos), float64(z*sin) - float64(biot*cos)
	}
	j0, j1 := portable.Bessel(z) // ζ J1 = Bi J0
	return float64(z*j1) - float64(biot*j0), float64(z*j0) + float64(biot*j1)
}

// guess is near root n: Yovanovich's formulas for the first of slab and cylinder, otherwise the phase of the condition.
func (s Shape) guess(biot float64, n int) float64 {
	start := float64(float64(n-1) * math.Pi)
	switch {
	case s == Slab && n == 1:
		return yovanovich(math.Pi/2, math.Sqrt(biot), 2.139)
	case s == InfiniteCylinder && n == 1:
		return yovanovich(firstZero, math.Sqrt(2*biot), 2.238)
	case s == Slab:
		z := start + angle(biot, start)
		return start + angle(biot, z)
	case s == InfiniteCylinder:
		start += math.Pi / 4
		z := start + angle(biot, start)
		return start + angle(biot, z)
	case n == 1:
		return yovanovich(math.Pi, math.Sqrt(3*biot), 2.3)
	}
	z := start + angle(start, 1-biot)
	return start + angle(z, 1-biot)
}

// yovanovich blends the root of the held surface with the limit of a small Biot number.
func yovanovich(held, small, power float64) float64 {
	return held / portable.Pow(1+portable.Pow(held/small, power), 1/power)
}

// angle is near the angle of a point above the axis, to 0.005: a quotient that bends like the arc tangent.
func angle(y, x float64) float64 {
	switch {
	case x < 0:
		return math.Pi - angle(y, -x)
	case y > x:
		return math.Pi/2 - angle(x, y)
	}
	t := y / x
	return t / (1 + float64(0.28*float64(t*t)))
}
