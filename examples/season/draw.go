package main

import (
	"fmt"

	"example.org/lakelarder/examples/internal/chart"
)

// draw is the stock of every week before eating: preserved fish below, fresh ones on them, the limits as lines, and
// whether the year can be held.
func (w worked) draw() string {
	plan := w.plan
	outcome := "feasible"
	if !plan.Feasible() {
		outcome = fmt.Sprintf("infeasible, %s", count(len(plan.Short), "short week"))
	}
	title := "Fish held each week: " + outcome
	c := &chart.Plot{Picture: chart.New(title,
		"The stock before eating: preserved fish in dark grey, fresh fish on them in light grey, the limits as "+
			"lines; short weeks are marked below. "+
			plan.String()+".", 440), Left: 34, Top: 62, Right: chart.Width - 10, Bottom: 290}
	c.X = chart.Axis{Low: 0, High: float64(len(plan.Weeks))}
	c.Y = chart.Fitted(0, float64(max(plan.Peak.All, plan.Limits.All, plan.Limits.Preserved, 1)))
	c.Text(10, 20, "start", chart.Bold, title)
	c.Text(10, 36, "start", chart.Note, fmt.Sprintf("%d fish kept, at most %d held; records: %s", plan.Fish(),
		plan.Peak.All, w.Verdict))
	c.Frame("week; 0 is "+w.Year.First, "fish", nil, nil)
	short := w.shortWeeks()
	for week, one := range plan.Weeks {
		x, wide := c.AtX(float64(week)), (c.Right-c.Left)/float64(len(plan.Weeks))*0.85
		preserved, all := c.AtY(float64(one.Held.Preserved)), c.AtY(float64(one.Held.All))
		c.Rect(x, preserved, wide, c.Bottom-preserved, chart.Dark)
		c.Rect(x, all, wide, preserved-all, chart.Shade)
		if short[week] {
			c.Rect(x, c.Bottom-6, wide, 6, `fill="#000"`)
		}
	}
	y := c.Patch(336, chart.Dark, "preserved")
	y = c.Patch(y, chart.Shade, "fresh")
	for _, limit := range []struct {
		fish        int
		what, style string
	}{{plan.Limits.All, "fish held", chart.Limit}, {plan.Limits.Preserved, "preserved fish", chart.Second}} {
		if limit.fish > 0 {
			c.Line(c.Left, c.AtY(float64(limit.fish)), c.Right, c.AtY(float64(limit.fish)), limit.style)
			y = c.Key(y, limit.style, fmt.Sprintf("limit of %s as stated: %d", limit.what, limit.fish))
		}
	}
	if len(plan.Short) > 0 {
		y = c.Patch(y, `fill="#000"`, "short week")
	}
	c.Text(10, y+8, "start", chart.Small, "The local rules decide. A fish eaten in part counts whole.")
	return c.String()
}
