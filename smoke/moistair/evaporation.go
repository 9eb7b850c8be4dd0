package moistair

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Evaporation is the constant-rate drying of a wet surface: the temperature at which the surface settles and what a square metre
// loses in an hour, over the range of the film.
type Evaporation struct {
	Surface       units.Temperature
	PerMetreHour  units.Range[units.Mass] // from each square metre in each hour
	Film          Film
	WaterActivity units.Ratio
	Citation      cite.Citation
}

// Driest is the water activity of saturated brine, rounded down: no surface wet with it is below.
const Driest = 75 * units.Percent

// Evaporate returns how a wet surface dries in air: heat reaches it by the film alone, and all of it evaporates water, as
// on a wet bulb. The water activity is that of the surface, 0.75 to 1: 1 for water, about 0.98 at 3.5 % salt in it; below 1
// the surface is warmer than the wet bulb and dries more slowly. The air must be drier than the surface (relative humidity
// below the activity): otherwise, as for a Film out of order, a units.RangeError; an Air that is not stated is a
// units.UnsetError. Rounded to the nearest nanogram.
// Source: constant-rate period, N = h (t - ts)/λ(ts), with the latent heat of the ASHRAE wet bulb.
func Evaporate(air Air, film Film, activity units.Ratio) (Evaporation, error) {
	if err := checkWet(air, activity); err != nil {
		return Evaporation{}, err
	}
	if err := film.Check(); err != nil {
		return Evaporation{}, err
	}
	e := Evaporation{Film: film, WaterActivity: activity, Citation: cite.Citation{Source: cite.DryingCourseText, Where: "constant-rate period", Basis: cite.Computed}}
	s := air.wetSurface(units.Float(activity, units.One))
	e.Surface = units.Celsius(s)
	perWatt := (air.dryBulb.Celsius() - s) / latentHeat(s) * 3.6 // kg/(m² h) for each W/(m² K)
	for i, h := range [...]units.FilmCoefficient{film.Coefficient.Low, film.Coefficient.Likely, film.Coefficient.High} {
		m, err := units.OfFloat(perWatt*units.Float(h, units.WattPerSquareMetreKelvin), units.Kilogram)
		if err != nil {
			return Evaporation{}, err
		}
		*[...]*units.Mass{&e.PerMetreHour.Low, &e.PerMetreHour.Likely, &e.PerMetreHour.High}[i] = units.RoundTo(m, units.Nanogram)
	}
	return e, nil
}

// checkWet refuses a surface that does not dry in the air.
func checkWet(air Air, activity units.Ratio) error {
	humidity, err := air.RelativeHumidity()
	if err != nil {
		return err
	}
	if err := units.Check("water activity", activity, Driest, units.One); err != nil {
		return err
	}
	if humidity >= activity {
		return units.RangeError{What: "relative humidity", Got: humidity.String(),
			High: "below the water activity of the surface, " + activity.String() + ": wetter air dries nothing"}
	}
	return nil
}

// check refuses a drying that Evaporate does not return: a hand-built one comes as any input does.
func (e Evaporation) check() error {
	rate := e.PerMetreHour
	if rate == (units.Range[units.Mass]{}) && !e.Surface.IsSet() {
		return units.UnsetError{What: "evaporation"}
	}
	if err := units.Check("least loss of a square metre in an hour", rate.Low, 0, rate.Likely); err != nil {
		return err
	}
	return units.Check("greatest loss of a square metre in an hour", rate.High, rate.Likely, units.Tonne)
}

// Lost returns the mass that an area loses in a time while all of it stays wet. An area or a time below zero, a loss
// past the range of Mass, or rates that are below zero, out of order or above a tonne are a units.RangeError, an
// Evaporation that is not set a units.UnsetError.
func (e Evaporation) Lost(area units.Area, during time.Duration) (units.Range[units.Mass], error) {
	if err := e.check(); err != nil {
		return units.Range[units.Mass]{}, err
	}
	if err := units.Check("area", area, 0, 1000*units.SquareMetre); err != nil {
		return units.Range[units.Mass]{}, err
	}
	if err := units.CheckDuration("drying time", during, 0, LongestDrying); err != nil {
		return units.Range[units.Mass]{}, err
	}
	rate, times := e.PerMetreHour, units.Float(area, units.SquareMetre)*during.Hours()
	var m units.Range[units.Mass]
	for i, perMetreHour := range [...]units.Mass{rate.Low, rate.Likely, rate.High} {
		lost, err := units.OfFloat(units.Float(perMetreHour, units.Kilogram)*times, units.Kilogram)
		if err != nil {
			return units.Range[units.Mass]{}, err
		}
		*[...]*units.Mass{&m.Low, &m.Likely, &m.High}[i] = lost
	}
	return m, nil
}

// TimeTo returns how long an area, while all of it stays wet, takes to lose a mass; Low belongs to the greatest film. An area
// or a loss of zero or less, or a time beyond thirty days, is a units.RangeError; the rates as for Lost.
func (e Evaporation) TimeTo(loss units.Mass, area units.Area) (units.Range[time.Duration], error) {
	if err := e.check(); err != nil {
		return units.Range[time.Duration]{}, err
	}
	if err := units.Check("loss", loss, units.Nanogram, units.Tonne); err != nil {
		return units.Range[time.Duration]{}, err
	}
	if err := units.Check("area", area, units.SquareMillimetre, 1000*units.SquareMetre); err != nil {
		return units.Range[time.Duration]{}, err
	}
	slowest := timeTo(loss, e.PerMetreHour.Low, area)
	if !(slowest <= LongestDrying.Hours()) {
		return units.Range[time.Duration]{}, units.RangeError{What: "drying time", Got: "more than that", High: LongestDrying.String()}
	}
	return units.Range[time.Duration]{Low: hours(timeTo(loss, e.PerMetreHour.High, area)), Likely: hours(timeTo(loss, e.PerMetreHour.Likely, area)), High: hours(slowest)}, nil
}

// LongestDrying is thirty days, far beyond any drying in a smoker.
const LongestDrying = 30 * 24 * time.Hour

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
