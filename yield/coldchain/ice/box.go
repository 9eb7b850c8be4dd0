package ice

import (
	"math"
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// MeltRate is how fast ice melts in a box: PerHour for each degree Celsius that the air outside is above 0 °C.
type MeltRate struct {
	PerHour  units.Mass
	Citation cite.Citation
}

// Layer is one layer of a wall.
type Layer struct {
	Thickness    units.Length
	Conductivity units.Conductivity
}

// The walls, weather and times that the rules here are used for.
const (
	longestHold   = 30 * 24 * time.Hour
	hottestBoxAir = 60
	largestBox    = 50 * units.SquareMetre
	leastFilm     = units.WattPerSquareMetreKelvin / 100
	mostFilm      = 10_000 * units.WattPerSquareMetreKelvin
)

// Wall returns the U of a wall of layers between an outer and an inner film, 1/U = 1/outer + Σ thickness/conductivity +
// 1/inner, rounded up, and where that is from. Films must be 0.01 to 10,000 W/(m² K), thicknesses 0.1 mm to 1 m,
// conductivities 0.001 to 500 W/(m K): otherwise a units.RangeError. No layers is a bare surface. Lids, drains and
// seams let in more than this; MeltTest measures it. Source: FAO Fisheries Technical Paper 436, section 7.1, equation
// 2, its form from memory.
func Wall(outer, inner units.FilmCoefficient, layers ...Layer) (units.FilmCoefficient, cite.Citation, error) {
	resistance := 0.
	for _, film := range [...]units.FilmCoefficient{outer, inner} {
		if err := units.Check("film coefficient", film, leastFilm, mostFilm); err != nil {
			return 0, cite.Citation{}, err
		}
		resistance += 1 / units.Float(film, units.WattPerSquareMetreKelvin)
	}
	for _, l := range layers {
		if err := units.Check("thickness of a layer", l.Thickness, units.Millimetre/10, units.Metre); err != nil {
			return 0, cite.Citation{}, err
		}
		const least, most = units.WattPerMetreKelvin / 1000, 500 * units.WattPerMetreKelvin
		if err := units.Check("conductivity of a layer", l.Conductivity, least, most); err != nil {
			return 0, cite.Citation{}, err
		}
		resistance += units.Float(l.Thickness, units.Metre) / units.Float(l.Conductivity, units.WattPerMetreKelvin)
	}
	const step = float64(units.WattPerSquareMetreKelvin)
	return units.FilmCoefficient(math.Ceil(step / resistance)), wallCitation, nil
}

// MeltRateOf returns how fast a box melts ice by its wall: K1 = U A/L, rounded up to the quantum. U must be 0.01 to
// 10,000 W/(m² K) (figures in kcal/(m² h °C) times KilocaloriePerSquareMetreHour), the surface 1 cm² to 50 m², the
// latent heat 250 to 340 kJ/kg: otherwise a units.RangeError. Source: FAO Fisheries Technical Paper 436, section 7.1,
// equation 1.
func MeltRateOf(u units.FilmCoefficient, surface units.Area, latent units.SpecificEnergy) (MeltRate, error) {
	if err := units.Check("U of the box", u, leastFilm, mostFilm); err != nil {
		return MeltRate{}, err
	}
	if err := units.Check("surface of the box", surface, units.SquareCentimetre, largestBox); err != nil {
		return MeltRate{}, err
	}
	if err := units.Check("latent heat of ice", latent, leastIceHeat, mostIceHeat); err != nil {
		return MeltRate{}, err
	}
	const secondsInHour = 3600
	per, err := upTo[units.Mass](1,
		[]int64{int64(u), int64(surface), secondsInHour, int64(units.Kilogram), int64(units.JoulePerKilogram)},
		[]int64{int64(units.WattPerSquareMetreKelvin), int64(units.SquareMetre), int64(latent)})
	return MeltRate{per, meltingCitation}, err
}

// MeltTest returns how fast a box melts ice by weighing it: K = (before - after)/(outside × time), rounded up to the
// quantum. Outside is the mean of the air around the box, 1 to 60 °C, the time 1 h to 30 days, before at most 10 t and
// after 1 g to that, for where no ice is left it is not known when the last of it melted: otherwise a units.RangeError.
// So is less melted than in 15 cm of the best foam all around the ice: it was colder than 0 °C, or the air was. Weigh the
// ice with its meltwater drained, as it will be used. Source: FAO ice meltage test, from memory.
func MeltTest(before, after units.Mass, outside units.Temperature, d time.Duration) (MeltRate, error) {
	if err := checkMass("ice before", before, mostFish); err != nil {
		return MeltRate{}, err
	}
	if err := units.Check("ice after", after, units.Gram, before); err != nil {
		return MeltRate{}, err
	}
	if err := units.CheckTemperature("air outside", outside, units.Celsius(1), units.Celsius(hottestBoxAir)); err != nil {
		return MeltRate{}, err
	}
	if err := units.CheckDuration("time of the test", d, time.Hour, longestHold); err != nil {
		return MeltRate{}, err
	}
	least, err := leastMelted(after, outside, d)
	if err != nil {
		return MeltRate{}, err
	}
	if before-after < least {
		return MeltRate{}, units.RangeError{
			What: "ice melted in air of " + outside.String() + " in " + units.Lasting(d), Got: units.Text(before-after, units.Gram, 1),
			Low: units.Text(least, units.Gram, 1),
		}
	}
	per, err := upTo[units.Mass](1,
		[]int64{int64(before - after), int64(time.Hour), int64(units.CelsiusDegrees)}, []int64{int64(d), overZero(outside)})
	return MeltRate{per, meltTestCitation}, err
}

// leastMelted is what melts of a ball of ice, the least surface that it can have, in 15 cm of foam of 0.02 W/(m K) without a
// lid or a drain: no box keeps ice better.
func leastMelted(ice units.Mass, outside units.Temperature, d time.Duration) (units.Mass, error) {
	const foam, density, latent = 0.02 / 0.15, 917., 334e3 // W/(m² K), kg/m³, J/kg
	surface := portable.Pow(36*math.Pi, 1./3) * portable.Pow(units.Float(ice, units.Kilogram)/density, 2./3)
	return units.OfFloat(foam*surface*outside.Celsius()*d.Seconds()/latent, units.Kilogram)
}

// Hold returns the ice that melts in the box while it stands in air of a temperature for a time, rounded up to the
// gram. The air must be -40 to 60 °C, the time 0 to 30 days and the rate above zero: otherwise a units.RangeError. In
// air at or below 0 °C nothing melts. Sun on the box counts as hotter air.
func (m MeltRate) Hold(outside units.Temperature, d time.Duration) (Need, error) {
	if err := units.Check("ice melted in an hour and degree", m.PerHour, 1, mostFish); err != nil {
		return Need{}, err
	}
	if err := checkHold(outside, d); err != nil {
		return Need{}, err
	}
	mass, err := upTo(units.Gram,
		[]int64{int64(m.PerHour), overZero(outside), int64(d)}, []int64{int64(units.CelsiusDegrees), int64(time.Hour)})
	return Need{mass, m.Citation, []cite.Caution{boxShut}}, err
}

// RoughHold returns the ice to keep chilled fish by a rule of thumb: 0.015 kg for each kilogram of fish, degree Celsius
// outside and day. It knows nothing of the box and lies far above what a well insulated one melts. The fish must weigh
// 0 to 10 t; air and time as for MeltRate.Hold. Rounded up to the gram. Source: Icelandic guidance on handling fish.
func RoughHold(fish units.Mass, outside units.Temperature, d time.Duration) (Need, error) {
	if err := checkFishMass(fish); err != nil {
		return Need{}, err
	}
	if err := checkHold(outside, d); err != nil {
		return Need{}, err
	}
	mass, err := upTo(units.Gram, []int64{int64(fish), int64(keepingPerDegree), overZero(outside), int64(d)},
		[]int64{int64(units.One), int64(units.CelsiusDegrees), int64(24 * time.Hour)})
	return Need{mass, keepingCitation, []cite.Caution{roughKeeping, boxShut}}, err
}

func checkHold(outside units.Temperature, d time.Duration) error {
	coldest, hottest := units.Celsius(-40), units.Celsius(hottestBoxAir)
	if err := units.CheckTemperature("air outside", outside, coldest, hottest); err != nil {
		return err
	}
	return units.CheckDuration("time in the box", d, 0, longestHold)
}

// overZero is how far a temperature lies above 0 °C, in quanta; zero below it.
func overZero(t units.Temperature) int64 {
	return max(int64(t.AboveAbsoluteZero()-units.Celsius(0).AboveAbsoluteZero()), 0)
}

var (
	roughKeeping = cite.Caution{
		ID: "ice.rough-rule", Deciding: true,
		Text:     "A rough rule that knows nothing of the box: weigh the ice of your own box once.",
		Citation: keepingCitation,
	}
	boxShut = cite.Caution{
		ID: "ice.box-shut",
		Text: "For a shut box in the shade: every opening, sun and warm fish added later melt more. " +
			"The fish stays chilled only while ice is left.",
		Citation: cite.Citation{Where: "keeping a box of ice", Basis: cite.Practice},
	}
)
