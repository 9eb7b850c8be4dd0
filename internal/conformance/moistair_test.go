package conformance

import (
	"time"

	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
)

var moistairExempt = map[string]string{"Source": sources, "Film.Cautions": sources, "Air.IsSet": build, "Film.Check": faults}

// airs are states of air from frost to a hot smoker.
func airs(r *results) []any {
	places := these(units.Atmosphere, 86_300*units.Pascal)
	all := r.sweep("ByRelativeHumidity", moistair.ByRelativeHumidity, degrees(-150, 950, 100), stepped(3, 99, 24, units.Percent), places)
	all = append(all, r.sweep("ByHumidityRatio", moistair.ByHumidityRatio, degrees(250, 1_550, 130), stepped(1, 20, 6, units.PerMille), places)...)
	all = append(all, r.sweep("ByDewPoint", moistair.ByDewPoint, degrees(200, 900, 70), degrees(-80, 190, 45), places)...)
	all = append(all, r.sweep("ByWetBulb", moistair.ByWetBulb, degrees(250, 450, 25), degrees(150, 240, 30), places)...)
	all = append(all, r.sweep("ByEnthalpy", moistair.ByEnthalpy, degrees(250, 400, 30), stepped(30, 70, 13, units.KilojoulePerKilogram), places)...)
	return append(all, r.sweep("ByVolume", moistair.ByVolume, degrees(250, 400, 30), stepped(880, 920, 13, units.Litre), places)...)
}

func moistairGrid(r *results) {
	all := airs(r)
	r.sweep("Air.DryBulb", moistair.Air.DryBulb, some(all, 9))
	r.sweep("Air.Pressure", moistair.Air.Pressure, some(all, 9))
	r.sweep("Air.HumidityRatio", moistair.Air.HumidityRatio, some(all, 9))
	r.sweep("Air.RelativeHumidity", moistair.Air.RelativeHumidity, all)
	r.sweep("Air.DewPoint", moistair.Air.DewPoint, all)
	r.sweep("Air.WetBulb", moistair.Air.WetBulb, all)
	r.sweep("Air.WetSurface", moistair.Air.WetSurface, some(all, 2), these(98*units.Percent))
	r.sweep("Air.Enthalpy", moistair.Air.Enthalpy, all)
	r.sweep("Air.Volume", moistair.Air.Volume, all)
	r.sweep("Air.Density", moistair.Air.Density, all)
	r.sweep("Air.Heated", moistair.Air.Heated, some(all, 7), these(tenths(1_070)))
	films := r.sweep("FilmAlong", moistair.FilmAlong, some(all, 15), stepped(2, 80, 26, units.MetrePerSecond/10))
	films = append(some(films, 9), r.sweep("SmokerFilm", moistair.SmokerFilm)...)
	drying := r.sweep("Evaporate", moistair.Evaporate, some(all, 13), films, these(97*units.Percent))
	drying = some(drying, 5)
	r.sweep("Evaporation.Lost", moistair.Evaporation.Lost, drying, these(800*units.SquareCentimetre), stepped(10, 130, 60, time.Minute))
	r.sweep("Evaporation.TimeTo", moistair.Evaporation.TimeTo, drying, these(40*units.Gram), these(900*units.SquareCentimetre))
}
