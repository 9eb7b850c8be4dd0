package main

import (
	"fmt"
	"math"
	"time"

	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/units"
)

// The picture, in pixels: margins around the plot.
const (
	width, height            = 860, 540
	left, right, top, bottom = 80, 80, 84, 64
)

// plot maps values to pixels.
type plot struct {
	*chart.Picture
	minutes       float64 // right end of the time axis
	low, high     float64 // temperature axis
	lethality     float64 // top of the F0 axis
	timeStep      float64
	temperatureUp float64
}

func (c *plot) x(minutes float64) float64 {
	return left + (width-left-right)*minutes/c.minutes
}

func (c *plot) y(share float64) float64 { return height - bottom - float64((height-top-bottom)*share) }

func (c *plot) level(t float64) float64 { return c.y((t - c.low) / (c.high - c.low)) }

// draw is the steam, the centre and the growing F0 against time.
func (s study) draw(p *page) (string, error) {
	rows, err := s.samples(time.Minute)
	if err != nil {
		return "", err
	}
	in := func(i int) (steam, centre float64) {
		steam, _ = rows[i].steam.In(p.Scale(), 3).Float64()
		centre, _ = rows[i].centre.In(p.Scale(), 3).Float64()
		return steam, centre
	}
	c := &plot{Picture: chart.New(width, height), minutes: 30 * math.Ceil(rows[len(rows)-1].at.Minutes()/30), low: 0, high: 130, temperatureUp: 20, timeStep: 30}
	if p.US {
		c.low, c.high, c.temperatureUp = 20, 260, 40
	}
	step := niceStep(rows[len(rows)-1].f.Minutes() / 5)
	c.lethality = step * math.Ceil(rows[len(rows)-1].f.Minutes()*1.05/step)
	c.Text(left, 26, "start", `font-size="17"`, fmt.Sprintf("The middle of a %s jar at %s, %s psi for %s", s.schedule.Jar, p.altitude(s.jar.altitude), psi(s), minutes(s.schedule.Process)))
	c.axes(p.Scale().String(), step)
	off := c.x(s.base.SteamOff.Minutes())
	c.Line(off, top, off, height-bottom, `stroke="#888" stroke-dasharray="2 4"`)
	c.Text(off+6, height-bottom-10, "start", `fill="#666"`, "heat off")
	var steam, centre, f []chart.Point
	for i, r := range rows {
		a, b := in(i)
		x := c.x(r.at.Minutes())
		steam = append(steam, chart.Point{X: x, Y: c.level(a)})
		centre = append(centre, chart.Point{X: x, Y: c.level(b)})
		f = append(f, chart.Point{X: x, Y: c.y(r.f.Minutes() / c.lethality)})
	}
	for i, curve := range []struct {
		points      []chart.Point
		style, name string
	}{
		{steam, `stroke="#c06000" stroke-width="2"`, "steam"},
		{centre, `stroke="#0060a8" stroke-width="2.5"`, "centre of the jar"},
		{f, `stroke="#30803c" stroke-width="2.5" stroke-dasharray="7 4"`, "F0 so far (right axis)"},
	} {
		c.Curve(curve.style, curve.points)
		at := float64(left + 210*i)
		c.Line(at, 56, at+34, 56, curve.style)
		c.Text(at+42, 60, "start", "", curve.name)
	}
	c.Text(left, height-8, "start", `font-size="11" fill="#666"`, "Arithmetic on an even solid, to learn from. None of it shortens a published process.")
	return c.String(), nil
}

func psi(s study) string { return units.In(s.schedule.Pressure, units.PSI, 0).String() }

func (c *plot) axes(degree string, step float64) {
	const grid, frame = `stroke="#ddd"`, `stroke="#444"`
	for m := 0.; m <= c.minutes; m += c.timeStep {
		c.Line(c.x(m), top, c.x(m), height-bottom, grid)
		c.Text(c.x(m), height-bottom+18, "middle", "", fmt.Sprintf("%.0f", m))
	}
	for t := c.low; t <= c.high; t += c.temperatureUp {
		c.Line(left, c.level(t), width-right, c.level(t), grid)
		c.Text(left-8, c.level(t)+4, "end", "", fmt.Sprintf("%.0f", t))
	}
	for f := 0.; f <= c.lethality+step/2; f += step {
		y := c.y(f / c.lethality)
		c.Line(width-right, y, width-right+5, y, frame)
		c.Text(width-right+9, y+4, "start", `fill="#30803c"`, fmt.Sprintf("%g", f))
	}
	c.Line(left, top, left, height-bottom, frame)
	c.Line(width-right, top, width-right, height-bottom, frame)
	c.Line(left, height-bottom, width-right, height-bottom, frame)
	c.Text((left+width-right)/2, height-bottom+38, "middle", "", "minutes from the start of heating")
	middle := float64(top+height-bottom) / 2
	c.Turned(24, middle, -90, "", "temperature, "+degree)
	c.Turned(width-22, middle, 90, `fill="#30803c"`, "F0, minutes at 121.1 °C")
}

// niceStep is the 1, 2 or 5 times a power of ten that is not below x.
func niceStep(x float64) float64 {
	unit := math.Pow(10, math.Floor(math.Log10(math.Max(x, 1e-6))))
	for _, k := range []float64{1, 2, 5, 10} {
		if k*unit >= x {
			return k * unit
		}
	}
	return 10 * unit
}
