package chart

import (
	"math"
	"strconv"
	"strings"

	"example.org/lakelarder/units"
)

// Degrees is a temperature on the scale of a picture: one of Celsius for metric, else Fahrenheit.
func Degrees(t units.Temperature, s units.System) float64 {
	if s == units.Metric {
		return t.Celsius()
	}
	return t.Fahrenheit()
}

// Scale is the name of that scale.
func Scale(s units.System) string {
	if s == units.Metric {
		return "°C"
	}
	return "°F"
}

// Plot is a frame in a picture, and the two scales that map values to its pixels.
type Plot struct {
	*Picture
	Left, Top, Right, Bottom float64 // edges, in pixels
	X, Y                     Axis
}

// Axis is a scale from Low to High.
type Axis struct{ Low, High float64 }

// Fitted is the axis from the lowest of some values to the highest, widened to whole steps.
func Fitted(values ...float64) Axis {
	a := Axis{Low: math.Inf(1), High: math.Inf(-1)}
	for _, v := range values {
		a.Low, a.High = math.Min(a.Low, v), math.Max(a.High, v)
	}
	if a.Low == a.High {
		a.High++
	}
	step := a.step(5)
	return Axis{math.Floor(a.Low/step) * step, math.Ceil(a.High/step) * step}
}

// step is the handy distance of ticks, at most so many and one.
func (a Axis) step(most int) float64 {
	raw := (a.High - a.Low) / float64(most)
	size := math.Pow(10, math.Floor(math.Log10(raw)))
	for _, n := range []float64{1, 2, 5} {
		if raw <= n*size*(1+1e-9) {
			return n * size
		}
	}
	return 10 * size
}

// Ticks are handy values along the axis, at most so many and one.
func (a Axis) Ticks(most int) []float64 {
	step := a.step(most)
	var all []float64
	for n := math.Ceil(a.Low/step - 1e-9); n*step <= a.High+step*1e-9; n++ {
		all = append(all, n*step)
	}
	return all
}

// At is where a pair of values stands.
func (c *Plot) At(x, y float64) Point { return Point{c.AtX(x), c.AtY(y)} }

// AtX is where a value of the axis that lies stands.
func (c *Plot) AtX(x float64) float64 {
	return c.Left + float64((c.Right-c.Left)*(x-c.X.Low))/(c.X.High-c.X.Low)
}

// AtY is where a value of the upright axis stands.
func (c *Plot) AtY(y float64) float64 {
	return c.Bottom - float64((c.Bottom-c.Top)*(y-c.Y.Low))/(c.Y.High-c.Y.Low)
}

// Frame draws the frame, the grid, the ticks and what the axes are; the ticks of the axis that lies are those given,
// named by name, or handy ones where there are none.
func (c *Plot) Frame(x, y string, ticks []float64, name func(float64) string) {
	if ticks == nil {
		ticks = c.X.Ticks(6)
	}
	if name == nil {
		name = Number
	}
	for _, v := range ticks {
		at := c.AtX(v)
		c.Line(at, c.Top, at, c.Bottom, Grid)
		c.Text(at, c.Bottom+13, "middle", Small, name(v))
	}
	for _, v := range c.Y.Ticks(6) {
		at := c.AtY(v)
		c.Line(c.Left, at, c.Right, at, Grid)
		c.Text(c.Left-4, at+3.5, "end", Small, Number(v))
	}
	for _, edge := range [][4]float64{{c.Left, c.Bottom, c.Right, c.Bottom}, {c.Left, c.Top, c.Left, c.Bottom}} {
		c.Line(edge[0], edge[1], edge[2], edge[3], Thin)
	}
	c.Text((c.Left+c.Right)/2, c.Bottom+27, "middle", Small, x)
	c.Text(c.Left, c.Top-6, "start", Small, y)
}

// Number prints a tick.
func Number(v float64) string {
	return strings.Replace(strconv.FormatFloat(math.Round(v*1e6)/1e6+0, 'f', -1, 64), "-", "−",
		1) // + 0 makes of a zero below nothing one above
}

// Key draws what a line means, one below the other from y on, and returns the next y.
func (c *Plot) Key(y float64, style, words string) float64 {
	c.Line(c.Left, y-4, c.Left+26, y-4, style)
	c.Text(c.Left+32, y, "start", Note, words)
	return y + 15
}

// Patch draws what a shade means, as Key does a line.
func (c *Plot) Patch(y float64, style, words string) float64 {
	c.Rect(c.Left, y-9, 26, 10, style)
	c.Text(c.Left+32, y, "start", Note, words)
	return y + 15
}
