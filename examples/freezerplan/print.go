package main

import (
	"time"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/freezing"
	"example.org/lakelarder/yield/coldchain/parasites"
)

func (d planned) print(p *sheet.Sheet) {
	p.Verdict(d.raw.Verdict, "fish to be eaten raw, "+sheet.Text(p, d.Stored)+" in a freezer of "+sheet.Text(p,
		d.Freezer))
	p.Findings(d.raw.Report, nil, nil)
	for _, step := range d.raw.Next {
		p.Do("%s", step.Text(p.System))
	}
	p.Line("%s. %s", d.Title, d.About)
	p.Heading("How long")
	p.Line("In crushed ice, %s thick from %s to %s in the middle: %s to %s%s; plan with the longer.",
		sheet.Text(p, d.Thickness), sheet.Text(p, d.Caught), sheet.Text(p, d.Chilled),
		minutes(d.chill.Low), minutes(d.chill.High), p.From(d.chill.Citation))
	p.Line("In the freezer, until the middle is at %s: %s to %s%s; plan with the longer.", sheet.Text(p, d.Core),
		minutes(d.through.Low.Time), minutes(d.through.High.Time),
		p.From(d.through.High.Citation))
	p.Heading("How much a day")
	p.Line("%s into a freezer of %s: at most %s a day%s, so %d daily loads; set it to %s, %s ahead.",
		sheet.Text(p, d.Load.Catch), room(p, d.Load.Room), sheet.Down(p, d.loads.PerDay),
		p.From(fishRule().Citation), d.loads.Days, sheet.Text(p, d.loads.Setting), sheet.Text(p, d.loads.Ahead))
	fits := "all of it fits"
	if d.loads.Over > 0 {
		fits = sheet.Up(p, d.loads.Over) + " is TOO MUCH"
	}
	p.Line("It holds %s in all, and %s are in it: %s.", sheet.Down(p, d.loads.Holds), sheet.Text(p, d.Load.Held), fits)
	p.Heading("Every rule against parasites")
	for _, line := range d.raw.Lines {
		text := ""
		if would := line.Would(p.System); would != "" {
			text = "; to meet it: " + would
		}
		p.Line("%s (%s): %s%s%s", line.Rule.Name, standing(line.Rule), line.Verdict, text, p.From(line.Rule.Citation))
	}
	p.Warn(d.raw.Cautions...)
	p.Warn(d.loads.Cautions...)
	p.Warn(d.chill.Cautions...)
	p.Warn(d.through.High.Cautions...)
	p.Close()
}

// fishRule is the published figure on the daily load of fish.
func fishRule() freezing.LoadRule {
	for _, r := range freezing.LoadRules() {
		if r.Within > 0 && !r.Named {
			return r
		}
	}
	return freezing.LoadRule{}
}

func standing(r parasites.Rule) string { return r.Standing.String() }

// room is the room of a freezer as it is sold.
func room(p *sheet.Sheet, v units.Volume) string {
	us, metric := units.Text(v, units.CubicFoot, 1), units.Text(v, units.Litre, 0)
	switch p.System {
	case units.US:
		return us
	case units.Metric:
		return metric
	}
	return us + " (" + metric + ")"
}

// minutes rounds up: nothing is cold sooner than it says.
func minutes(d time.Duration) string {
	return units.Lasting((d + time.Minute - 1).Truncate(time.Minute))
}
