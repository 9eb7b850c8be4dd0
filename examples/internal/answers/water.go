package answers

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/ice"
)

func waterSection() Section {
	const landing, trip = "From the hook to the ice", "Ice for the next trip"
	return Section{
		Name: "water", Title: "On the water", About: "What a recorded catch used of every published allowance, and the ice for the next one.",
		Fields: []Field{
			{Name: "maxGap", Label: "longest gap", Help: "between readings across which a straight line is believed, such as 30 min"},
			{Name: "gutted", Label: "gutted after", Group: landing, Help: "the catch, such as 20 min; empty: not known"},
			{Name: "iced", Label: "iced after", Group: landing, Help: "death, such as 20 min; empty: not known"},
			{Name: "medium", Label: "medium", Group: landing, Help: "how cold the ice or slush was, such as 32 °F"},
			{Name: "warmest", Label: "warmest", Group: landing, Help: "air or water that the fish lay in before, such as 71 °F"},
			{Name: "fish", Label: "fish", Group: trip, Help: "to be caught, such as 68 lb"},
			{Name: "from", Label: "as caught", Group: trip, Help: "the temperature of the fish, such as 62 °F"},
			{Name: "to", Label: "to have", Group: trip, Help: "such as 33 °F"},
			{Name: "outside", Label: "outside", Group: trip, Help: "air around the box, such as 78 °F"},
			{Name: "for", Label: "to last", Group: trip, Help: "such as 12 h"},
			{Name: "spare", Label: "spare", Group: trip, Help: "to be left over, of what melts, such as 25 %"},
			{Name: "before", Label: "ice put in", Group: trip, Help: "when the box was tried, such as 10 lb"},
			{Name: "after", Label: "ice left", Group: trip, Help: "drained, such as 7 lb 5 oz"},
			{Name: "tried", Label: "air then", Group: trip, Help: "around the box, such as 70 °F"},
			{Name: "stood", Label: "it stood", Group: trip, Help: "such as 24 h"},
		},
		Drops: []Drop{{Name: "log", Label: "Record of the fish", Help: "a CSV file of a probe in the warmest part inside the fish", Sample: "coho.csv"}},
		Example: map[string]string{
			"maxGap": "30 min", "gutted": "130 min", "iced": "130 min", "medium": "32 °F", "warmest": "78 °F", "fish": "68 lb", "from": "62 °F", "to": "33 °F",
			"outside": "78 °F", "for": "12 h", "spare": "25 %", "before": "10 lb", "after": "7 lb 5 oz", "tried": "70 °F", "stood": "24 h",
		},
	}
}

// caught is what a record used of the allowances, the landing before it, and the ice for the next trip.
func caught(w *writer) {
	var reports []verdict.Report
	if log, ok := record[units.Temperature](w, "log"); ok {
		if r, ok := w.exposed(log.Series); ok {
			reports = append(reports, r)
		}
	}
	if w.stated("From the hook to the ice") {
		if r, ok := w.landed(); ok {
			reports = append(reports, r)
		}
	}
	if w.stated("Ice for the next trip") {
		w.ice()
	}
	if len(reports) > 0 {
		w.Verdict = verdict.Join(reports...).Verdict.String()
		w.Headline = "from the hook to the table, as far as it is recorded or stated"
	}
}

// exposed holds the record against every published allowance for raw fish.
func (w *writer) exposed(s series.Series[units.Temperature]) (verdict.Report, bool) {
	report, err := coldchain.Audit(s, coldchain.Terms{MaxGap: typed[time.Duration](w, "maxGap").Value, Product: coldchain.RawFish})
	if err != nil {
		w.refuse(err, "maxGap")
		return verdict.Report{}, false
	}
	w.block("The record of the fish: " + report.Verdict.String())
	w.why(report.Report)
	for _, step := range report.Next {
		w.do(step.Text(w.request.System))
	}
	var most coldchain.Allowance
	for i, a := range report.Allowances {
		if i == 0 || a.Used > most.Used {
			most = a
		}
	}
	w.figure("least is left of", allowanceName(most)+": "+up(w, most.Used)+" used", most.Citations()...)
	w.figure("warmest", text(w, report.Highest.Value)+" after "+units.Lasting(report.Highest.At))
	w.figure("not recorded", up(w, report.Unknown))
	w.block("What is used of each allowance")
	for _, a := range report.Allowances {
		w.figure(allowanceName(a), units.Text(units.CeilTo(a.Used, units.Percent), units.Percent, 0)+", "+a.Verdict.String(), a.Citations()...)
	}
	w.drawExposure(s, report)
	return report.Report, true
}

func allowanceName(a coldchain.Allowance) string {
	if a.Hazard == 0 {
		return a.Rule.String()
	}
	return a.Rule.String() + ", " + a.Hazard.String()
}

func (w *writer) drawExposure(s series.Series[units.Temperature], r coldchain.Report) {
	points, unit := curveOf(s, w.request.System)
	c := framed("The fish, by its record", "The recorded temperature inside the fish and, dashed, the temperatures above which time counts. Verdict: "+r.Verdict.String()+".", points)
	c.Frame("minutes of the record", unit, nil, nil)
	for _, h := range r.Hours {
		level := chartLevel(points, h.Above, w.request.System)
		if level[0].Y > c.Y.Low && level[0].Y < c.Y.High {
			over(c, dashed, level)
		}
	}
	over(c, solid, points)
	c.Key(c.Key(334, solid, "as recorded"), dashed, "above these, time counts")
	w.Picture = c.String()
}

// landed is what was done before the ice.
func (w *writer) landed() (verdict.Report, bool) {
	l := coldchain.Landing{
		ForCanning: true, Gutted: typed[time.Duration](w, "gutted"), Iced: typed[time.Duration](w, "iced"),
		Medium: typed[units.Temperature](w, "medium").Value, Warmest: typed[units.Temperature](w, "warmest").Value,
	}
	if len(w.Faults) > 0 {
		return verdict.Report{}, false
	}
	report, err := coldchain.CheckLanding(l)
	if err != nil {
		w.refuse(err, "gutted")
		return verdict.Report{}, false
	}
	w.block("From the hook to the ice: " + report.Verdict.String())
	w.why(report.Report)
	return report.Report, true
}

// ice is how much to load.
func (w *writer) ice() {
	trip := ice.Trip{
		Fish: typed[units.Mass](w, "fish").Value, From: typed[units.Temperature](w, "from").Value, To: typed[units.Temperature](w, "to").Value,
		Outside: typed[units.Temperature](w, "outside").Value, For: typed[time.Duration](w, "for").Value, Spare: typed[units.Ratio](w, "spare").Value,
	}
	before, after := typed[units.Mass](w, "before"), typed[units.Mass](w, "after")
	tried, stood := typed[units.Temperature](w, "tried"), typed[time.Duration](w, "stood")
	if len(w.Faults) > 0 {
		return
	}
	if before.Given || after.Given || tried.Given || stood.Given {
		box, err := ice.MeltTest(before.Value, after.Value, tried.Value, stood.Value)
		if err != nil {
			w.refuse(err, "before")
			return
		}
		trip.Box = box
	}
	load, err := ice.Plan(trip)
	if err != nil {
		w.refuse(err, "fish")
		return
	}
	w.block("Ice for the next trip")
	w.figure("load", iceText(w, load.Total), trip.Box.Citation)
	w.figure("to chill the fish", iceText(w, load.Chill))
	w.figure("to hold the box", iceText(w, load.Hold), trip.Box.Citation)
	w.figure("to have some left", iceText(w, load.Spare))
	if load.Rough {
		w.line("The box was not tried: holding is by the rule of thumb.")
	}
	w.warn(load.Cautions...)
}

// iceText rounds ice up to what a kitchen scale shows.
func iceText(w *writer, m units.Mass) string {
	if w.request.System == units.Metric {
		return up(w, units.CeilTo(m, 10*units.Gram))
	}
	return up(w, units.CeilTo(m, units.Ounce))
}
