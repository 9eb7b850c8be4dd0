package moistair

import (
	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Film is how well the air gives its heat to a surface, as a range: for a home smoker it is not known better than that.
// Extrapolated says that it comes from an equation used outside the range it was printed for. Films are comparable.
type Film struct {
	Coefficient  units.Range[units.FilmCoefficient]
	Extrapolated bool
	Citation     cite.Citation
}

// The slowest and the fastest air of FilmAlong.
const (
	slowestAir = units.MetrePerSecond / 10
	fastestAir = 10 * units.MetrePerSecond
)

// FilmAlong returns the film of air that runs along a flat surface at a speed of 0.1 to 10 m/s; anything else is a
// units.RangeError, an Air that is not stated a units.UnsetError. Likely is h = 0.0204 G^0.8, G in kg/(m² h) of moist air, rounded to the quantum; Low and High lie a quarter
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
	likely, err := units.OfFloat(filmFactor*portable.Pow(g, filmPower), units.WattPerSquareMetreKelvin)
	if err != nil {
		return Film{}, err
	}
	t := air.dryBulb.Celsius()
	f := Film{Extrapolated: t < filmColdest || t > filmHottest || g < filmLeast || g > filmMost || v < filmSlowest || v > filmFastest}
	margin := likely / 4
	if f.Extrapolated {
		margin = likely / 2
	}
	f.Coefficient = units.Range[units.FilmCoefficient]{Low: likely - margin, Likely: likely, High: likely + margin}
	f.Citation = cite.Citation{Source: cite.DryingCourseText, Where: "h = 0.0204 G^0.8", Basis: cite.Computed}
	return f, nil
}

// SmokerFilm returns the film of a home smoker with natural draught when its air speed is not known: 10 to 30 W/(m² K), likely 20.
// Common practice in such estimates, without a source.
func SmokerFilm() Film {
	return Film{
		Coefficient: units.Range[units.FilmCoefficient]{
			Low: 10 * units.WattPerSquareMetreKelvin, Likely: 20 * units.WattPerSquareMetreKelvin, High: 30 * units.WattPerSquareMetreKelvin,
		},
		Citation: cite.Citation{Where: "film coefficient assumed for slow smoker air", Basis: cite.Practice},
	}
}

// Cautions returns what must be shown beside a figure that rests on the film. It is never empty; the slice is the caller's own.
func (f Film) Cautions() []cite.Caution {
	all := []cite.Caution{{
		ID:   "moistair.film-estimate",
		Text: "The film coefficient is an estimate. Take the range, not its middle, and believe the scale and the probe.", Citation: f.Citation,
	}}
	if f.Extrapolated {
		all = append(all, cite.Caution{
			ID:       "moistair.film-extrapolated",
			Text:     "The film coefficient is extrapolated: its equation was printed for air of 45 to 150 °C at 0.61 to 7.6 m/s.",
			Citation: cite.Citation{Source: cite.Geankoplis, Where: "equation 9.6-9", Basis: cite.Recalled},
		})
	}
	return all
}

// Check returns a units.UnsetError for a film that is not stated, and a units.RangeError for one that is not in order or
// not of air: its coefficients must rise from Low to High, within 1 to 500 W/(m² K).
func (f Film) Check() error {
	const least, most = units.WattPerSquareMetreKelvin, 500 * units.WattPerSquareMetreKelvin
	h := f.Coefficient
	if h == (units.Range[units.FilmCoefficient]{}) {
		return units.UnsetError{What: "film coefficient"}
	}
	if err := units.Check("least film coefficient", h.Low, least, h.Likely); err != nil {
		return err
	}
	if err := units.Check("likely film coefficient", h.Likely, h.Low, h.High); err != nil {
		return err
	}
	return units.Check("greatest film coefficient", h.High, h.Likely, most)
}

// The equation of FilmAlong (Geankoplis, equation 9.6-9) and the range it was printed for.
const (
	filmFactor, filmPower    = 0.0204, 0.8
	filmColdest, filmHottest = 45, 150      // °C
	filmLeast, filmMost      = 2450, 29_300 // kg/(m² h)
	filmSlowest, filmFastest = 0.61, 7.6    // m/s
)
