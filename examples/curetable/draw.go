package main

import (
	"fmt"
	"math"
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/units"
)

// profile is the uptake at a depth below the open face of a slab, as a share of that of its surface:
//
//	1 − (4/π) Σ (−1)ⁿ exp(−(2n+1)² π² Fo/4) cos((2n+1) π x/2)/(2n+1)
//
// x is from the skin, 0, to the open face, 1. It is summed until nothing is left at Fo of 1e-4 and more.
func profile(fourier, x float64) float64 {
	sum, sign := 0.0, 1.0
	for n := 1.0; n < 400; n += 2 {
		wave := math.Exp(-n*n*math.Pi*math.Pi*fourier/4) * math.Cos(n*math.Pi*x/2) / n
		term := sign * wave
		sum, sign = sum+term, -sign
	}
	rest := 4 / math.Pi * sum
	return min(1, max(0, 1-rest))
}

// fourier is the number of a slab with one open face.
func fourier(d units.Diffusivity, t time.Duration, thickness units.Length) float64 {
	h := units.Float(thickness, units.Metre)
	return units.Float(d, units.SquareMetrePerSecond) * t.Seconds() / (h * h)
}

// share is the water phase salt where the uptake is so much of the surface's.
func share(uptake float64) float64 {
	saturated, _ := solution.Saturation()
	r := units.Float(saturated, units.One)
	salt := uptake * r / (1 - r)
	return 100 * salt / (1 + salt)
}

// needed is the water phase salt, in per cent, that the limit asks for before smoking, on average.
func (r row) needed() float64 {
	salt, water := units.Float(r.required, units.Gram), units.Float(r.curing.Water-r.curing.Drip, units.Gram)
	return 100 * salt / (salt + water)
}

// draw is the salt in the thickest fillet, by depth, after each quarter of its time.
func (p plan) draw(system units.System) (string, error) {
	r := p.thickest()
	unit, name := units.Inch, "in"
	if system == units.Metric {
		unit, name = units.Millimetre, "mm"
	}
	depth := units.Float(r.Thickness, unit)
	title := fmt.Sprintf("Salt in %s, %s thick", r.Name, units.AmountOf(r.Thickness).Text(system, units.Nearest))
	c := &chart.Plot{Picture: chart.New(title,
		"Water phase salt from the flesh side, left, to the skin, right, after each quarter of the time in salt, "+
			"at the likely diffusivity. The dashed line is what the limit asks for on average before smoking.", 420),
		Left: 38, Top: 52, Right: chart.Width - 10, Bottom: 290, X: chart.Axis{Low: 0, High: depth},
		Y: chart.Axis{Low: 0, High: 30}}
	c.Text(10, 20, "start", chart.Bold, title)
	c.Frame("depth below the flesh side, "+name+" (skin at the right)", "% water phase salt, likely", nil, nil)
	y := 336.0
	styles := []string{chart.Thin + ` stroke-dasharray="2 3"`, chart.Thin, chart.Second, chart.Strong}
	for quarter, style := range styles {
		t := p.Cure.Time * time.Duration(quarter+1) / 4
		average, err := r.slab().Uptake(brine.FleshDiffusivity().Likely, t)
		if err != nil {
			return "", err
		}
		words := fmt.Sprintf("after %s: %.1f %% on average, %.1f %% at the skin", units.Lasting(t),
			share(units.Float(average, units.One)),
			share(profile(fourier(brine.FleshDiffusivity().Likely, t, r.Thickness), 0)))
		if share(units.Float(average, units.One)) > units.Float(r.end.Cured, units.Percent) {
			y = c.Key(y, style, "after "+units.Lasting(t)+": all of the salt is in, and evens out")
			continue
		}
		c.Curve(style, r.curve(c, t, depth))
		y = c.Key(y, style, words)
	}
	c.Line(c.Left, c.AtY(r.needed()), c.Right, c.AtY(r.needed()), chart.Limit)
	c.Key(y, chart.Limit, fmt.Sprintf("%.1f %% on average before smoking ends at %s after", r.needed(),
		brine.DefaultSaltLimit().Least))
	return c.String(), nil
}

func (r row) curve(c *chart.Plot, t time.Duration, depth float64) []chart.Point {
	var points []chart.Point
	for i := 0; i <= 100; i++ {
		below := float64(i) / 100
		points = append(points, c.At(below*depth, share(profile(fourier(brine.FleshDiffusivity().Likely, t,
			r.Thickness), 1-below))))
	}
	return points
}
