package answers

import (
	"time"

	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// scaled is a quantity on the scale of a picture, and its name.
func scaled(v any, system units.System) (float64, string) {
	switch v := v.(type) {
	case units.Pressure:
		if system == units.Metric {
			return units.Float(v, units.Kilopascal), "kPa on the gauge"
		}
		return units.Float(v, units.PSI), "psi on the gauge"
	case units.Temperature:
		return chart.Degrees(v, system), chart.Scale(system)
	}
	return 0, ""
}

// curveOf is a record in minutes and on the scale of the picture.
func curveOf[T series.Value](s series.Series[T], system units.System) (points []chart.Point, unit string) {
	for _, r := range s.Readings() {
		y, name := scaled(r.Value, system)
		points, unit = append(points, chart.Point{X: r.At.Minutes(), Y: y}), name
	}
	return points, unit
}

// framed is a picture of curves over minutes: the frame, and everything that is drawn in it fits.
func framed(title, description string, curves ...[]chart.Point) *chart.Plot {
	c := &chart.Plot{Picture: chart.New(title, description, 380), Left: 40, Top: 44, Right: chart.Width - 16, Bottom: 290}
	values, most := []float64{}, 1.0
	for _, points := range curves {
		for _, q := range points {
			values, most = append(values, q.Y), max(most, q.X)
		}
	}
	c.X, c.Y = chart.Axis{Low: 0, High: most}, chart.Fitted(values...)
	c.Text(10, 20, "start", chart.Bold, title)
	return c
}

// over draws a curve where its values stand.
func over(c *chart.Plot, style string, points []chart.Point) {
	var line []chart.Point
	for _, q := range points {
		line = append(line, c.At(q.X, q.Y))
	}
	c.Curve(style, line)
}

func shade(c *chart.Plot, s series.Stretch, style string) {
	c.Rect(c.AtX(s.From.Minutes()), c.Top, max(1, c.AtX(s.To.Minutes())-c.AtX(s.From.Minutes())), c.Bottom-c.Top, style)
}

// drawRun is the record of a run, what is required, the stretch that counts and the sags.
func (w *writer) drawRun(r canner.Report, points []chart.Point, unit string) {
	var need float64
	if p, ok := units.As[units.Pressure](r.Required); ok {
		need, _ = scaled(p, w.request.System)
	} else if t, ok := units.As[units.Temperature](r.Required); ok {
		need, _ = scaled(t, w.request.System)
	}
	title := units.Lasting(r.Held.Length().Truncate(time.Second)) + " held of " + units.Lasting(r.Process)
	end := points[len(points)-1].X
	required := []chart.Point{{X: 0, Y: need}, {X: end, Y: need}}
	c := framed(title, "The recorded curve, a dashed line at what is required, the stretch that counts in light grey, sags in dark grey. Verdict: "+
		r.Verdict.String()+".", points, required)
	shade(c, r.Held, chart.Shade)
	for _, f := range r.Findings {
		if f.When.Given && f.Rule == canner.RuleSag {
			shade(c, f.When.Value, chart.Dark)
		}
	}
	c.Frame("minutes of the record", unit, nil, nil)
	over(c, chart.Limit, required)
	over(c, chart.Strong, points)
	y := c.Key(334, chart.Strong, "as recorded")
	y = c.Key(y, chart.Limit, "required: "+r.Required.Text(w.request.System, units.Up))
	c.Patch(y, chart.Shade, "the stretch that counts, and in dark grey what sagged")
	w.Picture = c.String()
}

// The styles of a curve and of a limit.
const (
	solid  = chart.Strong
	dashed = chart.Limit
)

// chartLevel is a limit, drawn as far as a curve goes.
func chartLevel(points []chart.Point, t units.Temperature, system units.System) []chart.Point {
	y := chart.Degrees(t, system)
	return []chart.Point{{X: 0, Y: y}, {X: points[len(points)-1].X, Y: y}}
}

// stretchOf is the hold of a run: from the full steam to the heat going off.
func stretchOf(r lethality.Result) series.Stretch {
	full, _ := r.Medium.Max()
	return series.Stretch{From: full.At, To: r.SteamOff}
}
