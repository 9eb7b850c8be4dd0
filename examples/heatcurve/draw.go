package main

import (
	"fmt"
	"html"
	"math"
	"strings"
	"time"

	"example.org/lakelarder/units"
)

// The picture, in pixels: margins around the plot.
const (
	width, height            = 860, 540
	left, right, top, bottom = 80, 80, 84, 64
)

// chart maps values to pixels.
type chart struct {
	b             strings.Builder
	minutes       float64 // right end of the time axis
	low, high     float64 // temperature axis
	lethality     float64 // top of the F0 axis
	timeStep      float64
	temperatureUp float64
}

func (c *chart) x(minutes float64) float64 {
	return left + (width-left-right)*minutes/c.minutes
}

func (c *chart) y(share float64) float64 { return height - bottom - float64((height-top-bottom)*share) }

func (c *chart) level(t float64) float64 { return c.y((t - c.low) / (c.high - c.low)) }

func (c *chart) text(x, y float64, anchor, style, words string) {
	fmt.Fprintf(&c.b, `<text x="%.1f" y="%.1f" text-anchor="%s" %s>%s</text>`+"\n", x, y, anchor, style, html.EscapeString(words))
}

func (c *chart) line(x1, y1, x2, y2 float64, style string) {
	fmt.Fprintf(&c.b, `<line x1="%.1f" y1="%.1f" x2="%.1f" y2="%.1f" %s/>`+"\n", x1, y1, x2, y2, style)
}

// draw is the steam, the centre and the growing F0 against time.
func (s study) draw(p *page) (string, error) {
	rows, err := s.samples(time.Minute)
	if err != nil {
		return "", err
	}
	in := func(i int) (steam, centre float64) {
		steam, _ = rows[i].steam.In(p.scale(), 3).Float64()
		centre, _ = rows[i].centre.In(p.scale(), 3).Float64()
		return steam, centre
	}
	c := &chart{minutes: 30 * math.Ceil(rows[len(rows)-1].at.Minutes()/30), low: 0, high: 130, temperatureUp: 20, timeStep: 30}
	if p.US {
		c.low, c.high, c.temperatureUp = 20, 260, 40
	}
	step := niceStep(rows[len(rows)-1].f.Minutes() / 5)
	c.lethality = step * math.Ceil(rows[len(rows)-1].f.Minutes()*1.05/step)
	fmt.Fprintf(&c.b, `<svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%d" viewBox="0 0 %d %d" font-family="sans-serif" font-size="13">`+"\n", width, height, width, height)
	fmt.Fprintf(&c.b, `<rect width="%d" height="%d" fill="white"/>`+"\n", width, height)
	c.text(left, 26, "start", `font-size="17"`, fmt.Sprintf("The middle of a %s jar at %s, %s psi for %s", s.schedule.Jar, p.altitude(s.jar.altitude), psi(s), minutes(s.schedule.Process)))
	c.axes(p.scale().String(), step)
	off := c.x(s.base.SteamOff.Minutes())
	c.line(off, top, off, height-bottom, `stroke="#888" stroke-dasharray="2 4"`)
	c.text(off+6, height-bottom-10, "start", `fill="#666"`, "heat off")
	var steam, centre, f []string
	for i, r := range rows {
		a, b := in(i)
		x := c.x(r.at.Minutes())
		steam = append(steam, fmt.Sprintf("%.1f,%.1f", x, c.level(a)))
		centre = append(centre, fmt.Sprintf("%.1f,%.1f", x, c.level(b)))
		f = append(f, fmt.Sprintf("%.1f,%.1f", x, c.y(r.f.Minutes()/c.lethality)))
	}
	for i, curve := range []struct {
		points      []string
		style, name string
	}{
		{steam, `stroke="#c06000" stroke-width="2"`, "steam"},
		{centre, `stroke="#0060a8" stroke-width="2.5"`, "centre of the jar"},
		{f, `stroke="#30803c" stroke-width="2.5" stroke-dasharray="7 4"`, "F0 so far (right axis)"},
	} {
		fmt.Fprintf(&c.b, `<polyline fill="none" %s points="%s"/>`+"\n", curve.style, strings.Join(curve.points, " "))
		at := float64(left + 210*i)
		c.line(at, 56, at+34, 56, curve.style)
		c.text(at+42, 60, "start", "", curve.name)
	}
	c.text(left, height-8, "start", `font-size="11" fill="#666"`, "Arithmetic on an even solid, to learn from. None of it shortens a published process.")
	c.b.WriteString("</svg>\n")
	return c.b.String(), nil
}

func psi(s study) string { return units.In(s.schedule.Pressure, units.PSI, 0).String() }

func (c *chart) axes(degree string, step float64) {
	const grid, frame = `stroke="#ddd"`, `stroke="#444"`
	for m := 0.; m <= c.minutes; m += c.timeStep {
		c.line(c.x(m), top, c.x(m), height-bottom, grid)
		c.text(c.x(m), height-bottom+18, "middle", "", fmt.Sprintf("%.0f", m))
	}
	for t := c.low; t <= c.high; t += c.temperatureUp {
		c.line(left, c.level(t), width-right, c.level(t), grid)
		c.text(left-8, c.level(t)+4, "end", "", fmt.Sprintf("%.0f", t))
	}
	for f := 0.; f <= c.lethality+step/2; f += step {
		y := c.y(f / c.lethality)
		c.line(width-right, y, width-right+5, y, frame)
		c.text(width-right+9, y+4, "start", `fill="#30803c"`, fmt.Sprintf("%g", f))
	}
	c.line(left, top, left, height-bottom, frame)
	c.line(width-right, top, width-right, height-bottom, frame)
	c.line(left, height-bottom, width-right, height-bottom, frame)
	c.text((left+width-right)/2, height-bottom+38, "middle", "", "minutes from the start of heating")
	middle := float64(top+height-bottom) / 2
	fmt.Fprintf(&c.b, `<text transform="translate(24 %.1f) rotate(-90)" text-anchor="middle">temperature, %s</text>`+"\n", middle, html.EscapeString(degree))
	fmt.Fprintf(&c.b, `<text transform="translate(%d %.1f) rotate(90)" text-anchor="middle" fill="#30803c">F0, minutes at 121.1 °C</text>`+"\n", width-22, middle)
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
