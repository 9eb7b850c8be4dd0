package main

import (
	"time"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
)

func (d dried) print(p *sheet.Sheet) {
	tacky, stop := d.pellicle.Tacky, d.pellicle.Stop
	p.Line("RESULT: the wet surface stays at %s in air of %s%s; tacky after %s, smoke on it by %s",
		sheet.Text(p, d.drying.Surface), sheet.Text(p, d.Dryer),
		p.From(moistair.Source()), span(tacky), span(stop))
	p.Do("Judge the skin by the finger: the times are a range over a film of air that is not known better.")
	p.Line("%s. %s", d.Title, d.About)
	p.Heading("The air")
	rows := [][]string{{"", "dry bulb", "relative", "water to dry air", "dew point", "wet bulb"}}
	for _, a := range []struct {
		name string
		air  moistair.Air
	}{{"outside", d.air}, {"in the dryer", d.heated}, {"at sea level", d.low}} {
		rows = append(rows, state(p, a.name, a.air))
	}
	p.Table(rows...)
	p.Line("The dryer is at %s; at sea level the same outside air, heated as far, has the last line. In thin "+
		"air a wet surface stays cooler.", sheet.Text(p, d.Altitude.Value))
	p.Heading("How it dries")
	p.Line("From %s of fillet in %s: %s to %s of water, likely %s%s", area(p, d.Area), units.Lasting(d.During),
		sheet.Text(p, d.lost.Low), sheet.Text(p, d.lost.High),
		sheet.Text(p, d.lost.Likely), p.From(d.drying.Citation))
	share, _ := units.RatioOf(d.lost.Likely, d.Fillet)
	p.Line("That is likely %s of a fillet of %s; a pellicle costs 0.5 %% to 3 %%.", sheet.Text(p, share),
		sheet.Text(p, d.Fillet))
	p.Line("Unsalted trout in hot air, as published, once the skin is dry; salted and fatter fish is slower:")
	rows = [][]string{{"air", "water from", "to", "in", ""}}
	for _, f := range smoke.FallingRates() {
		rows = append(rows, []string{sheet.Text(p, f.Air), sheet.Text(p, f.Initial), sheet.Text(p, f.Final),
			units.Lasting(f.Time), p.From(f.Citation)})
	}
	p.Table(rows...)
	p.Warn(d.pellicle.Cautions...)
	p.Close()
}

// area is in the squares that a ruler measures.
func area(p *sheet.Sheet, a units.Area) string {
	us, metric := units.Text(a, units.SquareInch, 1), units.Text(a, units.SquareCentimetre, 0)
	switch p.System {
	case units.US:
		return us
	case units.Metric:
		return metric
	}
	return us + " (" + metric + ")"
}

// state is an air in one row.
func state(p *sheet.Sheet, name string, a moistair.Air) []string {
	relative, _ := a.RelativeHumidity() // an air that was made has all of these, but for air without water
	wet, _ := a.WetBulb()
	dew := "none"
	if d, err := a.DewPoint(); err == nil {
		dew = sheet.Text(p, d)
	}
	return []string{name, sheet.Text(p, a.DryBulb()), sheet.Text(p, relative), sheet.Text(p, a.HumidityRatio()), dew,
		sheet.Text(p, wet)}
}

// span is a range of times to the minute, its ends away from each other.
func span(r units.Range[time.Duration]) string {
	return units.Lasting(r.Low.Truncate(time.Minute)) + " to " + units.Lasting((r.High +
		time.Minute - 1).Truncate(time.Minute))
}
