package main

import (
	"fmt"
	"io"

	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
)

// byHand is the air outside, the heated air, the wet surface and the times of the pellicle.
func (d dried) byHand(out io.Writer) error {
	p := byhand.New(out, d.Title)
	p.Air(d.Altitude.Value, d.air.Pressure())
	p.Step("Outside: saturation over water, equation 6, and the humidity ratio, equation 20", moistair.Source())
	p.Let("t0", celsius(d.air.DryBulb()), "°C", "dry bulb")
	saturation(p, "ps0", "t0")
	p.Let("φ", units.In(d.Outside.Humidity, units.Percent, 6).String(), "%", "relative humidity")
	p.Work("pw", "ps0 × φ / 100", "Pa of vapour", 7)
	p.Work("W", "0.621945 × pw / (pa − pw)", "kg of water to 1 kg of dry air; heating does not change it", 6)
	p.Meets("W", units.Float(d.air.HumidityRatio(), units.One), 2e-6, "the water to dry air above")
	p.Step("In the dryer: relative humidity, equation 22", moistair.Source())
	p.Let("t", celsius(d.heated.DryBulb()), "°C", "dry bulb")
	saturation(p, "ps", "t")
	p.Work("φ1", "100 × pw / ps", "%", 5)
	relative, err := d.heated.RelativeHumidity()
	if err != nil {
		return err
	}
	p.Meets("φ1", units.Float(relative, units.Percent), 2e-5, "the relative humidity above")
	d.surfaceByHand(p)
	d.timesByHand(p)
	return p.Close()
}

func celsius(t units.Temperature) string { return t.In(units.CelsiusScale, 6).String() }

// saturation is the pressure of vapour over water, ASHRAE equation 6.
func saturation(p *byhand.Page, symbol, t string) {
	p.Work("T", t+" + 273.15", "K", 9)
	p.Work(symbol,
		"exp(-5800.2206 / T + 1.3914993 − 0.048640239 × T + 4.1764768e-5 × T^2 − 1.4452093e-8 × T^3 + 6.5459673 × "+
			"ln(T))", "Pa", 7)
}

// surfaceByHand puts the found temperature of the surface into the heat balance, which it must meet.
func (d dried) surfaceByHand(p *byhand.Page) {
	if d.drying.Surface.Celsius() < 0 {
		p.Note("The surface is below freezing; its balance is over ice, equation 35, and is not worked out here.")
		return
	}
	p.Step("The wet surface: the temperature at which its heat balance holds, equation 33, found by trial",
		moistair.Source())
	p.Let("ts", celsius(d.drying.Surface), "°C", "the surface, to be tried")
	saturation(p, "pss", "ts")
	p.Let("aw", units.In(d.Activity, units.Percent, 6).String(), "%", "water activity of the surface")
	p.Work("Ws", "0.621945 × aw / 100 × pss / (pa − aw / 100 × pss)", "kg to 1 kg at the surface", 7)
	p.Work("Wt", "((2501 − 2.326 × ts) × Ws − 1.006 × (t − ts)) / (2501 + 1.86 × t − 4.186 × ts)",
		"kg to 1 kg of the air around it", 5)
	p.Meets("Wt", units.Float(d.heated.HumidityRatio(), units.One), 2e-5, "the air's own: the surface is right")
}

func (d dried) timesByHand(p *byhand.Page) {
	if d.drying.Surface.Celsius() < 0 {
		return
	}
	p.Step("Drying of the wet surface: N = h (t − ts) / λ", d.drying.Citation)
	p.Let("A", units.In(d.Area, units.SquareMetre, 8).String(), "m²", "open to the air")
	p.Grams("M", d.Fillet, "fillet")
	p.Work("λ", "2501 − 2.326 × ts", "kJ/kg", 7)
	for _, film := range []struct {
		name                string
		h                   units.FilmCoefficient
		rate                units.Mass
		tackyAfter, stopped float64
	}{
		{"weakest", d.film.Coefficient.Low, d.drying.PerMetreHour.Low, d.pellicle.Tacky.High.Minutes(),
			d.pellicle.Stop.High.Minutes()},
		{"strongest", d.film.Coefficient.High, d.drying.PerMetreHour.High, d.pellicle.Tacky.Low.Minutes(),
			d.pellicle.Stop.Low.Minutes()},
	} {
		p.Let("h", units.In(film.h, units.WattPerSquareMetreKelvin, 6).String(), "W/(m² K)",
			fmt.Sprintf("the %s film", film.name))
		p.Work("N", "h × (t − ts) × 3600 / λ", "g from 1 m² in 1 h", 6)
		p.Meets("N", units.Float(film.rate, units.Gram), 1e-5, "the rate that the library finds")
		p.Work("tacky", "0.005 × M / (N × A) × 60", "min until 0.5 % is lost", 4)
		p.Meets("tacky", film.tackyAfter, 2e-4, "the time until it is tacky")
		p.Work("stop", "0.03 × M / (N × A) × 60", "min until 3 % is lost", 4)
		p.Meets("stop", film.stopped, 2e-4, "the time by which smoke is on it")
	}
}
