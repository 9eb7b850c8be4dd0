package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Masses is an estimate of a mass as a range.
type Masses struct{ Low, Likely, High units.Mass }

// Times is an estimate of a time as a range: Low is the soonest.
type Times struct{ Low, Likely, High time.Duration }

// Evaporation is the constant-rate drying of a wet surface: the temperature at which the surface settles and what a square metre
// loses in an hour, over the range of the film.
type Evaporation struct {
	Surface       units.Temperature
	PerMetreHour  Masses // from each square metre in each hour
	Film          Film
	WaterActivity units.Ratio
	Citation      cite.Citation
}

// driest is the water activity of saturated brine, rounded down: no wet fish is below it.
const driest = 75 * units.Percent

// Evaporate returns how a wet surface dries in air: heat reaches it by the film alone, and all of it evaporates water, as
// on a wet bulb. The water activity is that of the surface, 0.75 to 1: 1 for unsalted fish, about 0.98 at a water phase salt of 3.5 %;
// below 1 the surface is warmer than the wet bulb and dries more slowly. The air must be drier than the surface (relative humidity
// below the activity): otherwise, as for an Air that is not set or a Film out of order, a units.RangeError. Rounded to the nearest nanogram.
// Source: constant-rate period, N = h (t - ts)/λ(ts), with the latent heat of the ASHRAE wet bulb.
func Evaporate(air Air, film Film, activity units.Ratio) (Evaporation, error) {
	humidity, err := air.RelativeHumidity()
	if err != nil {
		return Evaporation{}, err
	}
	if err := units.Check("water activity", activity, driest, units.One); err != nil {
		return Evaporation{}, err
	}
	if humidity >= activity {
		return Evaporation{}, units.RangeError{What: "relative humidity", Got: humidity.String(), High: "below the water activity of the surface, " + activity.String() + ": wetter air dries nothing"}
	}
	if err := film.check(); err != nil {
		return Evaporation{}, err
	}
	e := Evaporation{Film: film, WaterActivity: activity, Citation: cite.Citation{Source: cite.DryingCourseText, Where: "constant-rate period", Basis: cite.Computed}}
	s := air.wetSurface(units.Float(activity, units.One))
	e.Surface = units.Celsius(s)
	perWatt := (air.dryBulb.Celsius() - s) / latentHeat(s) * 3.6 // kg/(m² h) for each W/(m² K)
	for i, h := range [...]units.FilmCoefficient{film.Low, film.Likely, film.High} {
		m, err := units.OfFloat(perWatt*units.Float(h, units.WattPerSquareMetreKelvin), units.Kilogram)
		if err != nil {
			return Evaporation{}, err
		}
		*[...]*units.Mass{&e.PerMetreHour.Low, &e.PerMetreHour.Likely, &e.PerMetreHour.High}[i] = units.RoundTo(m, units.Nanogram)
	}
	return e, nil
}

// Lost returns the mass that an area loses in a time while all of it stays wet. An area or a time below zero, or a loss
// past the range of Mass, is a units.RangeError.
func (e Evaporation) Lost(area units.Area, during time.Duration) (Masses, error) {
	if err := units.Check("area", area, 0, 1000*units.SquareMetre); err != nil {
		return Masses{}, err
	}
	if err := units.CheckDuration("drying time", during, 0, longestDrying); err != nil {
		return Masses{}, err
	}
	rate, times := e.PerMetreHour, units.Float(area, units.SquareMetre)*during.Hours()
	var m Masses
	for i, perMetreHour := range [...]units.Mass{rate.Low, rate.Likely, rate.High} {
		lost, err := units.OfFloat(units.Float(perMetreHour, units.Kilogram)*times, units.Kilogram)
		if err != nil {
			return Masses{}, err
		}
		*[...]*units.Mass{&m.Low, &m.Likely, &m.High}[i] = lost
	}
	return m, nil
}

// TimeTo returns how long an area, while all of it stays wet, takes to lose a mass; Low belongs to the greatest film. An area
// or a loss of zero or less, or a time beyond thirty days, is a units.RangeError.
func (e Evaporation) TimeTo(loss units.Mass, area units.Area) (Times, error) {
	if err := units.Check("loss", loss, units.Nanogram, units.Tonne); err != nil {
		return Times{}, err
	}
	if err := units.Check("area", area, units.SquareMillimetre, 1000*units.SquareMetre); err != nil {
		return Times{}, err
	}
	slowest := timeTo(loss, e.PerMetreHour.Low, area)
	if !(slowest <= longestDrying.Hours()) {
		return Times{}, units.RangeError{What: "drying time", Got: "more than that", High: longestDrying.String()}
	}
	return Times{Low: hours(timeTo(loss, e.PerMetreHour.High, area)), Likely: hours(timeTo(loss, e.PerMetreHour.Likely, area)), High: hours(slowest)}, nil
}

// longestDrying is thirty days, far beyond any drying of fish in a smoker.
const longestDrying = 30 * 24 * time.Hour

// latentHeat is that of the wet-bulb equations in kJ/kg, of water or below 0 °C of ice.
func latentHeat(s float64) float64 {
	if s < 0 {
		return 2830 - float64(0.24*s)
	}
	return 2501 - float64(2.326*s)
}

func timeTo(loss, perMetreHour units.Mass, area units.Area) float64 {
	return units.Float(loss, units.Kilogram) / (units.Float(perMetreHour, units.Kilogram) * units.Float(area, units.SquareMetre))
}

// hours rounds to the nearest millisecond.
func hours(h float64) time.Duration {
	return time.Duration(h * float64(time.Hour)).Round(time.Millisecond)
}
