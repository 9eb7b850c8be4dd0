package main

import (
	"fmt"
	"math"
	"strings"
	"time"

	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/units"
)

// The picture, in pixels: the temperatures above, what is used of the tightest allowance below.
const (
	width, height       = 980, 738
	leftEdge, rightEdge = 84, 232
	top, middle         = 96, 420
	upper, bottom       = 476, 650
)

var (
	colors = [...]string{"#c03028", "#0060a8", "#30803c", "#8040a0"}
	// drawn are the temperatures that limits begin at, and whose they are.
	drawn = [...]struct {
		fahrenheit float64
		what       string
	}{{38, "smokehouse rules"}, {40, "kitchen: 2 h above"}, {50, "raw fish: 5 h above"}, {70, "raw fish: 2 h above"}}
)

// axes maps hours and temperatures to pixels.
type axes struct {
	hours     float64 // right end
	low, high float64 // in the scale of the page
	used      float64 // top of the lower panel, in allowances
}

func (a axes) x(at time.Duration) float64 {
	return leftEdge + (width-leftEdge-rightEdge)*at.Hours()/a.hours
}

func (a axes) y(t float64) float64 { return middle - (middle-top)*(t-a.low)/(a.high-a.low) }

func (a axes) share(used float64) float64 {
	return bottom - (bottom-upper)*math.Min(used, a.used)/a.used
}

// draw is the record of every fish over the temperatures at which limits begin, and below it how much of its tightest allowance is used.
func (v verdicts) draw(p *page) string {
	a := axes{low: -2, high: 26, used: 2}
	step := 4.
	if p.US {
		a.low, a.high, step = 28, 80, 10
	}
	for _, f := range v.fish {
		last, _ := f.record.Last()
		a.hours = math.Max(a.hours, 6*math.Ceil(last.At.Hours()/6))
		a.high = math.Max(a.high, step*math.Ceil(in(f.report.Highest.Value, p)/step))
	}
	c := chart.New(width, height)
	c.Text(leftEdge, 26, "start", `font-size="17"`, "From the boat to the jar: the inside of the fish, "+v.place)
	a.grid(c, p, step)
	for i, f := range v.fish {
		f.curves(c, a, p, i)
	}
	c.Text(leftEdge, height-10, "start", `font-size="11" fill="#666"`, v.about)
	c.Text(leftEdge, height-26, "start", `font-size="11" fill="#666"`, "Limits count the warmest part inside the fish and all time since the catch together. Follow local codes where they are stricter.")
	return c.String()
}

// in is a temperature in the scale of the page.
func in(t units.Temperature, p *page) float64 {
	x, _ := t.In(p.Scale(), 3).Float64()
	return x
}

func (a axes) grid(c *chart.Picture, p *page, step float64) {
	const thin, frame = `stroke="#e4e4e4"`, `stroke="#444"`
	for h := 0.; h <= a.hours; h += a.every() {
		x := a.x(time.Duration(h * float64(time.Hour)))
		c.Line(x, top, x, middle, thin)
		c.Line(x, upper, x, bottom, thin)
		c.Text(x, bottom+18, "middle", "", fmt.Sprintf("%.0f", h))
	}
	for t := step*math.Ceil(a.low/step) + 0; t <= a.high; t += step { // + 0 makes of a zero below nothing one above
		c.Line(leftEdge, a.y(t), width-rightEdge, a.y(t), thin)
		c.Text(leftEdge-8, a.y(t)+4, "end", "", fmt.Sprintf("%.0f", t))
	}
	for _, l := range drawn {
		t := units.Fahrenheit(l.fahrenheit)
		y := a.y(in(t, p))
		c.Line(leftEdge, y, width-rightEdge, y, `stroke="#a06000" stroke-dasharray="6 4"`)
		shift := 4.
		if l.fahrenheit == 38 { // close below the next
			shift = 12
		}
		c.Text(width-rightEdge+8, y+shift, "start", `fill="#a06000" font-size="12"`, p.Temperature(t)+"  "+l.what)
	}
	for used := 0.; used <= a.used; used += 0.5 {
		c.Line(leftEdge, a.share(used), width-rightEdge, a.share(used), thin)
		c.Text(leftEdge-8, a.share(used)+4, "end", "", fmt.Sprintf("%.0f %%", used*100))
	}
	c.Line(leftEdge, a.share(1), width-rightEdge, a.share(1), `stroke="#a06000" stroke-width="2"`)
	c.Text(width-rightEdge+8, a.share(1)+4, "start", `fill="#a06000" font-size="12"`, "all that is allowed")
	c.Text(width-rightEdge+8, a.share(a.used)+4, "start", `fill="#666" font-size="12"`, "or more")
	for _, y := range [...]float64{middle, bottom} {
		c.Line(leftEdge, y, width-rightEdge, y, frame)
	}
	c.Line(leftEdge, top, leftEdge, middle, frame)
	c.Line(leftEdge, upper, leftEdge, bottom, frame)
	c.Turned(16, (top+middle)/2, -90, "", "inside the fish, "+p.Scale().String())
	c.Turned(16, (upper+bottom)/2, -90, "", "allowance used")
	c.Text(leftEdge, upper-10, "start", `fill="#444"`, "share used of the allowance that had least left")
	c.Text((leftEdge+width-rightEdge)/2, bottom+40, "middle", "", "hours since the record began")
}

// every is the hours from one line of the grid to the next.
func (a axes) every() float64 {
	for _, step := range []float64{1, 2, 3, 6, 12} {
		if a.hours/step <= 12 {
			return step
		}
	}
	return 24 * math.Ceil(a.hours/24/12)
}

// curves draws one fish, with its events as numbers on the curve and its name and verdict at the place of its legend.
func (j judged) curves(c *chart.Picture, a axes, p *page, nth int) {
	color, key := colors[nth%len(colors)], float64(leftEdge+190*nth)
	style := `stroke="` + color + `" stroke-width="2"`
	var warm, used []chart.Point
	gap, before := j.report.Terms.MaxGap, time.Duration(0)
	for i, r := range j.record.Readings() {
		if i > 0 && r.At-before > gap { // what is not recorded is not drawn
			c.Curve(style, warm)
			warm = nil
		}
		before = r.At
		warm = append(warm, chart.Point{X: a.x(r.At), Y: a.y(math.Max(in(r.Value, p), a.low))})
	}
	for _, s := range j.used {
		used = append(used, chart.Point{X: a.x(s.at), Y: a.share(units.Float(s.used, units.One))})
	}
	c.Curve(style, warm)
	c.Curve(style, used)
	for i, s := range j.stages {
		value, err := j.record.ValueAt(s.at)
		if err != nil || !recorded(j.record, s.at, gap) {
			continue // an event in a gap has no place on the curve
		}
		x, y := a.x(s.at), a.y(math.Max(in(value, p), a.low))
		c.Line(x, y-5, x, y+5, style)
		c.Text(x+4, y-8+float64(24*(nth%2)), "start", `font-size="11" fill="`+color+`"`, fmt.Sprint(i+1))
	}
	c.Line(key, 56, key+34, 56, style)
	c.Text(key+42, 60, "start", "", j.name+": "+strings.ToLower(j.report.Verdict.String()))
	c.Text(key+42, 76, "start", `font-size="11" fill="#666"`, fmt.Sprintf("events 1 to %d as printed", len(j.stages)))
}
