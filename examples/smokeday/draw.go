package main

import (
	"fmt"
	"math"
	"time"

	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// The styles of the picture, told apart without colours.
const (
	planned  = `stroke="#999" stroke-width="1.2" stroke-dasharray="8 3"`
	recorded = `stroke="#777" stroke-width="1"`
	ceiling  = `stroke="#000" stroke-width="1.2" stroke-dasharray="1 3"`
	likely   = `stroke="#555" stroke-width="1"`
	expected = `fill="#ddd"`
	hold     = `fill="#aaa"`
)

// draw is the day against the clock: the air, what a wet surface can reach, the core expected and recorded, the limit
// and the longest hold.
func (s study) draw(system units.System) string {
	title := "Hot smoker, and the fish in it"
	keys := 7 + len(s.cores)
	if s.air.Len() > 0 {
		keys++
	}
	c := &chart.Plot{Picture: chart.New(title,
		"The air planned and recorded, the wet bulb, the core expected as a band and recorded for each probe, the limit as a dashed line, the longest hold as a dark band. "+
			"Verdict: "+s.all.Verdict.String()+".", 366+15*keys), Left: 38, Top: 80, Right: chart.Width - 20, Bottom: 300}
	end := (s.ends() + time.Hour - 1).Truncate(time.Hour)
	c.X, c.Y = chart.Axis{Low: 0, High: end.Hours()}, s.span(system)
	c.Text(10, 20, "start", chart.Bold, title)
	c.Text(10, 36, "start", chart.Note, s.Place)
	c.Text(10, 51, "start", chart.Note, "Verdict: "+s.all.Verdict.String())
	s.drawExpected(c, system)
	s.drawStages(c)
	c.Frame("clock time, hours and minutes", "temperature, "+chart.Scale(system), hoursOf(end.Hours()),
		func(h float64) string {
			return s.clock(time.Duration(h * float64(time.Hour)))[:5]
		})
	y := c.AtY(chart.Degrees(s.strict.Limit.AtLeast, system))
	c.Line(c.Left, y, c.Right, y, chart.Limit)
	c.Curve(likely, points(c, s.likely, system))
	c.Curve(planned, s.steps(c, system, func(i int) units.Temperature { return s.schedule.Stages[i].Air }))
	c.Curve(ceiling, s.steps(c, system, func(i int) units.Temperature { return s.wetBulbs[i] }))
	if s.air.Len() > 0 {
		c.Curve(recorded, points(c, s.air, system))
	}
	for i, probe := range s.cores {
		c.Curve(probeStyle(i), points(c, probe.Series, system))
	}
	s.legend(c)
	return c.String()
}

func probeStyle(i int) string {
	return fmt.Sprintf(`stroke="#000" stroke-width="%.1f" stroke-dasharray="%s"`, 2.2-0.2*float64(i%4),
		[]string{"none", "6 2", "3 2", "10 3 2 3"}[i%4])
}

// span is the upright axis, from the lowest to the highest temperature of the picture.
func (s study) span(system units.System) chart.Axis {
	values := []float64{chart.Degrees(s.strict.Limit.AtLeast, system)}
	for i, stage := range s.schedule.Stages {
		values = append(values, chart.Degrees(stage.Air, system))
		if s.wetBulbs[i].IsSet() {
			values = append(values, chart.Degrees(s.wetBulbs[i], system))
		}
	}
	curves := []series.Series[units.Temperature]{s.low, s.likely, s.high, s.air}
	for _, c := range s.cores {
		curves = append(curves, c.Series)
	}
	for _, c := range curves {
		if c.Len() == 0 {
			continue
		}
		least, _ := c.Min()
		most, _ := c.Max()
		values = append(values, chart.Degrees(least.Value, system), chart.Degrees(most.Value, system))
	}
	return chart.Fitted(values...)
}

func points(c *chart.Plot, s series.Series[units.Temperature], system units.System) []chart.Point {
	var all []chart.Point
	for _, r := range s.Readings() {
		all = append(all, c.At(r.At.Hours(), chart.Degrees(r.Value, system)))
	}
	return all
}

// drawExpected is the band of the core expected, and the longest hold of all probes.
func (s study) drawExpected(c *chart.Plot, system units.System) {
	low, high := points(c, s.low, system), points(c, s.high, system)
	for i := len(high) - 1; i >= 0; i-- {
		low = append(low, high[i])
	}
	c.Area(expected, low)
	if h := s.strict; h.Held > 0 {
		from, to := c.AtX(h.Began.Hours()), c.AtX((h.Began + h.Held).Hours())
		c.Rect(from, c.Top, math.Max(1, to-from), c.Bottom-c.Top, hold)
	}
}

// steps is a value of each stage of the smoking, level through the stage; the cooling is left to the record where it
// has a wet surface.
func (s study) steps(c *chart.Plot, system units.System, of func(stage int) units.Temperature) []chart.Point {
	var all []chart.Point
	began := time.Duration(0)
	for i, stage := range s.schedule.Stages {
		if stage.Kind == smoke.Cool {
			break
		}
		degrees := chart.Degrees(of(i), system)
		all = append(all, c.At(began.Hours(), degrees), c.At((began+stage.For).Hours(), degrees))
		began += stage.For
	}
	return all
}

// drawStages parts the stages by lines and names them above the plot, on two levels so that short ones have room.
func (s study) drawStages(c *chart.Plot) {
	began := time.Duration(0)
	for i, stage := range s.schedule.Stages {
		x := c.AtX(began.Hours())
		c.Line(x, c.Top, x, c.Bottom, chart.Thin)
		c.Text(x+3, c.Top+10+float64(11*(i%2)), "start", chart.Halo, stage.Kind.String())
		began += stage.For
	}
}

// hoursOf are whole hours, few enough to be read.
func hoursOf(hours float64) []float64 {
	step := 1.0
	for hours/step > 7 {
		step++
	}
	var all []float64
	for h := 0.0; h <= hours; h += step {
		all = append(all, h)
	}
	return all
}

// legend names the lines below the plot.
func (s study) legend(c *chart.Plot) {
	y := c.Key(346, planned, "air, planned")
	if s.air.Len() > 0 {
		y = c.Key(y, recorded, "air, recorded")
	}
	y = c.Key(y, ceiling, "wet bulb: the most a wet surface reaches")
	for i, probe := range s.cores {
		y = c.Key(y, probeStyle(i), letters[i:i+1]+" "+probe.Name)
	}
	y = c.Key(y, chart.Limit, fmt.Sprintf("%s: at least this for %s", s.strict.Limit.ID,
		units.Lasting(s.strict.Limit.Hold)))
	y = c.Patch(y, hold, fmt.Sprintf("longest hold together, %s: %s", held(s.strict.Held), s.strict.Verdict))
	y = c.Patch(y, expected, "core expected, range and likely")
	c.Text(c.Left, y+2, "start", chart.Small, "Expected: a model of a slab, to plan with. Only probes in the cores tell.")
}
