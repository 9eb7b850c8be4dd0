package lethality

import (
	"example.org/lakelarder/units"
)

// Through returns the film coefficient of a film and a wall of a thickness, one behind the other: 1/(1/h + d/k),
// rounded down. It is what a Cylinder wants for the steam or water outside a jar and its glass. The film must be 1 to
// 1,000,000 W/(m² K), the wall 0.1 to 20 mm, its conductivity 0.01 to 500 W/(m K); otherwise a RangeError.
func Through(film units.FilmCoefficient, wall units.Length, conductivity units.Conductivity) (units.FilmCoefficient, error) {
	if err := units.Check("film coefficient", film, units.WattPerSquareMetreKelvin, 1_000_000*units.WattPerSquareMetreKelvin); err != nil {
		return 0, err
	}
	if err := units.Check("thickness of the wall", wall, units.Millimetre/10, 20*units.Millimetre); err != nil {
		return 0, err
	}
	if err := units.Check("conductivity of the wall", conductivity, units.WattPerMetreKelvin/100, 500*units.WattPerMetreKelvin); err != nil {
		return 0, err
	}
	h := units.Float(film, units.WattPerSquareMetreKelvin)
	resistance := 1/h + units.Float(wall, units.Metre)/units.Float(conductivity, units.WattPerMetreKelvin)
	out, err := units.OfFloat(1/resistance, units.WattPerSquareMetreKelvin)
	if err != nil {
		return 0, err
	}
	return out - 1, nil // the nearest quantum, and one less
}

// FollowBetween returns Follow for a cylinder that heats slowly and for one that heats quickly: what is not known of
// a pack, its glass and its film as a band. Nothing says that the first is the slower one but the caller. Ranges as
// for Follow.
func FollowBetween(slow, quick Cylinder, run Run, r Reference) (Band, error) {
	var band Band
	var err error
	if band.Low, err = slow.Follow(run, r); err != nil {
		return Band{}, err
	}
	band.High, err = quick.Follow(run, r)
	return band, err
}
