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

// The picture, in pixels: margins around the plot.
const (
	width, height            = 1000, 620
	left, right, top, bottom = 76, 28, 150, 84
)

// The lines of the picture; a probe takes the next of its colours.
const (
	planned  = `stroke="#c8a070" stroke-width="2" stroke-dasharray="6 4"`
	recorded = `stroke="#c06000" stroke-width="1.5"`
	ceiling  = `stroke="#2090c0" stroke-width="2" stroke-dasharray="2 3"`
	likely   = `stroke="#808080" stroke-width="1.5"`
	expected = `fill="#b0b0b0" fill-opacity="0.35"`
	limit    = `stroke="#c02020" stroke-width="1.5"`
	shade    = `fill="#30a05c" fill-opacity="0.30"`
	grid     = `stroke="#e4e4e4"`
	frame    = `stroke="#444"`
	small    = `font-size="11" fill="#666"`
)

var probeColours = [...]string{"#0050b0", "#902080", "#207030", "#a04000", "#006070", "#604000", "#5030c0", "#303030"}

// plot maps times and temperatures to pixels.
type plot struct {
	*chart.Picture
	p    *page
	end  time.Duration // right end of the time axis
	axis scale
}

func (c *plot) x(at time.Duration) float64 {
	return left + (width-left-right)*at.Minutes()/c.end.Minutes()
}

func (c *plot) y(t units.Temperature) float64 { return c.level(c.p.degrees(t)) }

func (c *plot) level(degrees float64) float64 {
	return height - bottom - float64((height-top-bottom)*(degrees-c.axis.low))/(c.axis.high-c.axis.low)
}

func (c *plot) points(s series.Series[units.Temperature]) []chart.Point {
	var all []chart.Point
	for _, r := range s.Readings() {
		all = append(all, chart.Point{X: c.x(r.At), Y: c.y(r.Value)})
	}
	return all
}

// draw is the day against the clock: the air, what a wet surface can reach, the core expected and recorded, the limit and the longest hold.
func (s study) draw(p *page) string {
	c := &plot{Picture: chart.New(width, height), p: p, end: (s.ends() + time.Hour - 1).Truncate(time.Hour), axis: s.scale(p)}
	c.Text(left, 26, "start", `font-size="17"`, fmt.Sprintf("Hot smoker, and the fish in it: %s", s.place))
	s.axes(c)
	s.drawStages(c)
	s.drawHold(c)
	low, high := c.points(s.low), c.points(s.high)
	for i := len(high) - 1; i >= 0; i-- {
		low = append(low, high[i])
	}
	c.Area(expected, low)
	c.Curve(likely, c.points(s.likely))
	c.Curve(planned, s.steps(c, func(i int) units.Temperature { return s.schedule.Stages[i].Air }))
	c.Curve(ceiling, s.steps(c, func(i int) units.Temperature { return s.wetBulbs[i] }))
	if s.air.Len() > 0 {
		c.Curve(recorded, c.points(s.air))
	}
	for i, probe := range s.cores {
		c.Curve(probeStyle(i), c.points(probe.Series))
	}
	s.legend(c)
	c.Text(left, height-22, "start", small, "Expected: a model of a slab, to plan with. Only probes in the cores tell, and the coldest decides.")
	c.Text(left, height-7, "start", small, s.about)
	return c.String()
}

func probeStyle(i int) string { return `stroke="` + probeColours[i] + `" stroke-width="2.5"` }

// steps is a value of each stage of the smoking, level through the stage; the cooling is left to the record where it has a wet surface.
func (s study) steps(c *plot, of func(stage int) units.Temperature) []chart.Point {
	var all []chart.Point
	began := time.Duration(0)
	for i, stage := range s.schedule.Stages {
		if stage.Kind == smoke.Cool {
			break
		}
		y := c.y(of(i))
		all = append(all, chart.Point{X: c.x(began), Y: y}, chart.Point{X: c.x(began + stage.For), Y: y})
		began += stage.For
	}
	return all
}

// drawStages parts the stages by lines and names them above the plot, on two levels so that short ones have room.
func (s study) drawStages(c *plot) {
	began := time.Duration(0)
	for i, stage := range s.schedule.Stages {
		x := c.x(began)
		c.Line(x, top-8, x, height-bottom, `stroke="#bbb"`)
		c.Text(x+4, top-8+float64(12*(i%2))-8, "start", `font-size="12" fill="#666"`, stage.Kind.String())
		began += stage.For
	}
}

// drawHold shades the longest hold of all probes and draws the limit.
func (s study) drawHold(c *plot) {
	h := s.strict
	y := c.y(h.Limit.AtLeast)
	c.Line(left, y, width-right, y, limit)
	if h.Held == 0 {
		return
	}
	from, to := c.x(h.Began), c.x(h.Began+h.Held)
	c.Rect(from, top, math.Max(1, to-from), height-bottom-top, shade)
}

func (s study) axes(c *plot) {
	hours := int(c.end / time.Hour)
	for h := 0; h <= hours; h++ {
		x := c.x(time.Duration(h) * time.Hour)
		c.Line(x, top, x, height-bottom, grid)
		if hours <= 14 || h%(1+hours/14) == 0 {
			c.Text(x, height-bottom+18, "middle", "", s.clock(time.Duration(h) * time.Hour)[:5])
		}
	}
	step := 10.
	if c.axis.high-c.axis.low > 120 {
		step = 20
	}
	for t := step * math.Ceil(c.axis.low/step); t <= c.axis.high; t += step {
		c.Line(left, c.level(t), width-right, c.level(t), grid)
		c.Text(left-8, c.level(t)+4, "end", "", fmt.Sprintf("%.0f", t))
	}
	c.Line(left, top, left, height-bottom, frame)
	c.Line(left, height-bottom, width-right, height-bottom, frame)
	c.Text((left+width-right)/2, height-bottom+38, "middle", "", "clock time, hours and minutes")
	c.Turned(24, float64(top+height-bottom)/2, -90, "", "temperature, "+c.p.Scale().String())
}

// legend names the lines in columns above the plot.
func (s study) legend(c *plot) {
	type key struct{ style, words string }
	keys := []key{{planned, "air, planned"}, {ceiling, "wet bulb: the most a wet surface reaches"}, {"", "core expected, range and likely"}}
	if s.air.Len() > 0 {
		keys = append(keys, key{recorded, "air, recorded"})
	}
	for i, probe := range s.cores {
		keys = append(keys, key{probeStyle(i), letters[i:i+1] + " " + short(probe.Name)})
	}
	keys = append(keys, key{limit, fmt.Sprintf("%s for %s, %s", s.strict.Limit.ID, held(s.strict.Limit.Hold), c.p.limit(s.strict.Limit.AtLeast))}, key{shade, fmt.Sprintf("longest hold together, %s: %s", held(s.strict.Held), s.strict.Verdict)})
	for i, k := range keys {
		x, y := float64(left+(width-left-right)/3*(i%3)), float64(48+18*(i/3))
		switch k.style {
		case "":
			c.Rect(x, y-7, 30, 12, expected)
			c.Line(x, y-1, x+30, y-1, likely)
		case shade:
			c.Rect(x, y-7, 30, 12, shade)
		default:
			c.Line(x, y-1, x+30, y-1, k.style)
		}
		c.Text(x+38, y+4, "start", `font-size="12"`, k.words)
	}
}

// short is a name that fits into a column of the legend.
func short(name string) string {
	const most = 36
	if r := []rune(name); len(r) > most {
		return string(r[:most-1]) + "…"
	}
	return name
}
