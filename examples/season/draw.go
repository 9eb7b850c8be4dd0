package main

import (
	"fmt"

	"example.org/lakelarder/examples/internal/chart"
	larder "example.org/lakelarder/yield/season"
)

// The picture, in pixels: margins around the plot.
const (
	width, height            = 920, 460
	left, right, top, bottom = 64, 24, 84, 70
)

// draw is the stock of every week before eating: preserved fish below, fresh ones on them, the limit as a line.
func (s season) draw(plan larder.Plan) string {
	pic := chart.New(width, height)
	tall := max(plan.Peak.All, plan.Limits.All, 1)
	step := stepFor(tall)
	tall = (tall + step) / step * step
	wide := float64(width-left-right) / float64(len(plan.Weeks))
	x := func(week int) float64 { return left + float64(wide*float64(week)) }
	y := func(fish int) float64 { return height - bottom - float64(fish*(height-top-bottom))/float64(tall) }
	text := func(x, y float64, anchor, words string) { pic.Text(x, y, anchor, "", words) }
	bar := func(x1, y1, w, h float64, fill string) { pic.Rect(x1, y1, w, h, `fill="`+fill+`"`) }
	for n := 0; n <= tall; n += step {
		pic.Line(left, y(n), width-right, y(n), `stroke="#ddd"`)
		text(left-8, y(n)+4, "end", fmt.Sprint(n))
	}
	short := shortWeeks(plan)
	gap := wide * 0.12
	for week, w := range plan.Weeks {
		bar(x(week)+gap, y(w.Held.Preserved), wide-2*gap, y(0)-y(w.Held.Preserved), "#0060a8")
		bar(x(week)+gap, y(w.Held.All), wide-2*gap, y(w.Held.Preserved)-y(w.Held.All), "#30a05c")
		if short[week] {
			bar(x(week)+gap, y(0)-10, wide-2*gap, 10, "#c02020")
		}
		if week%4 == 0 {
			text(x(week)+wide/2, height-bottom+18, "middle", fmt.Sprint(week))
		}
	}
	for _, limit := range []struct {
		fish        int
		what, color string
	}{{plan.Limits.All, "fish held", "#c06000"}, {plan.Limits.Preserved, "preserved fish", "#0060a8"}} {
		if limit.fish > 0 {
			pic.Line(left, y(limit.fish), width-right, y(limit.fish), `stroke="`+limit.color+`" stroke-width="2" stroke-dasharray="7 4"`)
			text(width-right, y(limit.fish)-6, "end", fmt.Sprintf("limit of %s put in: %d", limit.what, limit.fish))
		}
	}
	pic.Line(left, y(0), width-right, y(0), `stroke="#444"`)
	pic.Line(left, top, left, y(0), `stroke="#444"`)
	pic.Text(left, 26, "start", `font-size="17"`, "Fish held each week before eating, "+s.place)
	for i, key := range []struct{ fill, words string }{{"#0060a8", "preserved"}, {"#30a05c", "fresh"}, {"#c02020", "short week"}} {
		at := float64(left + 130*i)
		bar(at, 48, 14, 14, key.fill)
		text(at+20, 60, "start", key.words)
	}
	text(float64(left+width-right)/2, height-bottom+38, "middle", "week; 0 is "+s.year.first)
	pic.Turned(22, (top+height-bottom)/2, -90, "", "fish")
	pic.Text(left, height-8, "start", `font-size="11" fill="#666"`, "The limits are what was put in: the local rules decide. A fish eaten in part counts whole.")
	return pic.String()
}

// stepFor is 1, 2 or 5 times a power of ten such that an axis has some five to ten of them.
func stepFor(n int) int {
	step := 1
	for i := 0; n/step > 10; i++ {
		step = step / [3]int{1, 2, 5}[i%3] * [3]int{2, 5, 10}[i%3]
	}
	return step
}
