package main

import (
	"fmt"

	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/units"
)

// draw is the steam and the centre against time, and below them the growing F0.
func (s study) draw(rows []sample, system units.System) string {
	title := fmt.Sprintf("The middle of a %s jar: F0 %s", s.schedule.Jar, minutes(s.base.F.Total))
	c := chart.New(title, "Above, the steam around the jar and the middle of the fish; below, the F0 that the middle has so far. A line marks when the heat goes off. "+
		"Arithmetic on an even solid; none of it shortens a published process.", 560)
	c.Text(10, 20, "start", chart.Bold, title)
	c.Text(10, 36, "start", chart.Note, fmt.Sprintf("%s for %s", scaled(s.schedule.Pressure, system),
		units.Lasting(s.schedule.Process)))
	var steam, centre, f []chart.Point
	last := rows[len(rows)-1]
	x := chart.Axis{Low: 0, High: last.at.Minutes()}
	ends := chart.Fitted(chart.Degrees(s.run.Start, system), chart.Degrees(s.run.Steam, system))
	above := &chart.Plot{Picture: c, Left: 38, Top: 62, Right: chart.Width - 20, Bottom: 280, X: x, Y: ends}
	below := &chart.Plot{Picture: c, Left: 38, Top: 340, Right: chart.Width - 20, Bottom: 450, X: x,
		Y: chart.Fitted(0, last.f.Minutes())}
	above.Frame("minutes from the start of heating", "temperature, "+chart.Scale(system), nil, nil)
	below.Frame("minutes from the start of heating", "F0 so far, minutes", nil, nil)
	for _, r := range rows {
		m := r.at.Minutes()
		steam = append(steam, above.At(m, chart.Degrees(r.steam, system)))
		centre = append(centre, above.At(m, chart.Degrees(r.centre, system)))
		f = append(f, below.At(m, r.f.Minutes()))
	}
	for _, plot := range []*chart.Plot{above, below} {
		off := plot.AtX(s.base.SteamOff.Minutes())
		plot.Line(off, plot.Top, off, plot.Bottom, chart.Limit)
		plot.Text(off+4, plot.Bottom-8, "start", chart.Halo, "heat off")
	}
	above.Curve(chart.Second, steam)
	above.Curve(chart.Strong, centre)
	below.Curve(chart.Strong, f)
	y := below.Key(496, chart.Second, "steam")
	y = below.Key(y, chart.Strong, "middle of the jar, and its F0")
	c.Text(38, y+6, "start", chart.Small, "Arithmetic on an even solid. None of it shortens a published process.")
	return c.String()
}

func scaled(p units.Pressure, system units.System) string {
	return units.AmountOf(p).Text(system, units.Up)
}
