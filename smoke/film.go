package smoke

import (
	"math"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Film is how well the air gives its heat to a surface, as a range: nobody knows it for a home smoker to better than that.
// Extrapolated says that it comes from an equation used outside the range it was printed for.
type Film struct {
	Low, Likely, High units.FilmCoefficient
	Extrapolated      bool
	Citation          cite.Citation
}

// The slowest and the fastest air of FilmAlong.
const (
	slowestAir = units.MetrePerSecond / 10
	fastestAir = 10 * units.MetrePerSecond
)

// FilmAlong returns the film of air that runs along a flat surface at a speed of 0.1 to 10 m/s; anything else, and an Air that is not
// set, is a units.RangeError. Likely is h = 0.0204 G^0.8, G in kg/(m² h) of moist air, rounded to the quantum; Low and High lie a quarter
// to either side within the range in print (45 to 150 °C, 0.61 to 7.6 m/s, G 2,450 to 29,300) and half beyond it, where
// Extrapolated is set: a smoker's slow air and any cold air are there. Those margins are practice. Source: course text on drying; its
// range is from memory of Geankoplis, equation 9.6-9.
func FilmAlong(air Air, speed units.Speed) (Film, error) {
	if err := units.Check("air speed", speed, slowestAir, fastestAir); err != nil {
		return Film{}, err
	}
	density, err := air.Density()
	if err != nil {
		return Film{}, err
	}
	v := units.Float(speed, units.MetrePerSecond)
	g := v * units.Float(density, units.KilogramPerCubicMetre) * 3600
	likely, err := units.OfFloat(filmFactor*math.Pow(g, filmPower), units.WattPerSquareMetreKelvin)
	if err != nil {
		return Film{}, err
	}
	t := air.dryBulb.Celsius()
	f := Film{Likely: likely, Extrapolated: t < filmColdest || t > filmHottest || g < filmLeast || g > filmMost || v < filmSlowest || v > filmFastest}
	margin := likely / 4
	if f.Extrapolated {
		margin = likely / 2
	}
	f.Low, f.High = likely-margin, likely+margin
	f.Citation = cite.Citation{Source: cite.DryingCourseText, Where: "h = 0.0204 G^0.8", Basis: cite.Computed}
	return f, nil
}

// SmokerFilm returns the film of a home smoker with natural draught when its air speed is not known: 10 to 30 W/(m² K), likely 20.
// Common practice in such estimates, without a source.
func SmokerFilm() Film {
	return Film{
		Low: 10 * units.WattPerSquareMetreKelvin, Likely: 20 * units.WattPerSquareMetreKelvin, High: 30 * units.WattPerSquareMetreKelvin,
		Citation: cite.Citation{Where: "film coefficient assumed for slow smoker air", Basis: cite.Practice},
	}
}

// Cautions returns what must be shown beside a figure that rests on the film. It is never empty; the slice is the caller's own.
func (f Film) Cautions() []cite.Caution {
	all := []cite.Caution{{Text: "the film coefficient is an estimate: take the range, not its middle, and believe the scale and the probe", Citation: f.Citation}}
	if f.Extrapolated {
		all = append(all, cite.Caution{
			Text:     "the film coefficient is extrapolated: the equation was printed for air of 45 to 150 °C at 0.61 to 7.6 m/s",
			Citation: cite.Citation{Source: cite.Geankoplis, Where: "equation 9.6-9", Basis: cite.Recalled},
		})
	}
	return all
}

// check refuses a film that is not in order or not of air.
func (f Film) check() error {
	const least, most = units.WattPerSquareMetreKelvin, 500 * units.WattPerSquareMetreKelvin
	if err := units.Check("least film coefficient", f.Low, least, f.Likely); err != nil {
		return err
	}
	if err := units.Check("likely film coefficient", f.Likely, f.Low, f.High); err != nil {
		return err
	}
	return units.Check("greatest film coefficient", f.High, f.Likely, most)
}

// The equation of FilmAlong (Geankoplis, equation 9.6-9) and the range it was printed for.
const (
	filmFactor, filmPower    = 0.0204, 0.8
	filmColdest, filmHottest = 45, 150      // °C
	filmLeast, filmMost      = 2450, 29_300 // kg/(m² h)
	filmSlowest, filmFastest = 0.61, 7.6    // m/s
)
