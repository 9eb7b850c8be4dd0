package main

import (
	"fmt"
	"io"
	"strings"

	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/ice"
)

// byHand is the way to the shares of the allowances that decide, band by band, and to the ice.
func (v verdicts) byHand(w io.Writer, system units.System) error {
	p := byhand.New(w, "the time in each band as a share of what it allows, and the ice")
	for i, j := range v.fish {
		j.crossingByHand(p, i, system)
		governs, fullest := tightest(j.report), fullestBands(j.report)
		for n, a := range j.report.Allowances {
			if a.ID == governs.ID || a.ID == fullest || a.Verdict == verdict.NotMet && a.Spared == 0 {
				j.sumByHand(p, a, system, fmt.Sprintf("%d_%d", i+1, n+1))
			}
		}
	}
	v.iceByHand(p)
	return p.Close()
}

// fullestBands is the hazard of table A-2 of which most was used, whether it decides or not.
func fullestBands(r coldchain.Report) verdict.Rule {
	var most coldchain.Allowance
	for _, a := range r.Allowances {
		if a.Rule == coldchain.TableA2 && (most.ID == "" || a.Used > most.Used) {
			most = a
		}
	}
	return most.ID
}

// crossingByHand shows how the time above a limit begins or ends between two readings.
func (j judged) crossingByHand(p *byhand.Page, nth int, system units.System) {
	floor := units.Fahrenheit(40)
	readings := j.record.Readings()
	for i := 1; i < len(readings); i++ {
		a, b := readings[i-1], readings[i]
		if a.Value.Above(floor) == b.Value.Above(floor) || b.At-a.At > j.report.Terms.MaxGap {
			continue
		}
		p.Step("When " + j.name + " first passes " + scaleText(floor, system) +
			": a straight line between two readings; times in a band end and begin so")
		degrees := func(t units.Temperature) string {
			if system == units.Metric {
				return t.In(units.CelsiusScale, 6).String()
			}
			return t.In(units.FahrenheitScale, 3).String()
		}
		p.Let("L", degrees(floor), chart.Scale(system), "a limit of the kitchen rule and of table A-2")
		p.Crossing(fmt.Sprintf("x%d", nth+1), "L", byhand.Digits(a.At.Minutes(), 6), byhand.Digits(b.At.Minutes(), 6),
			degrees(a.Value), degrees(b.Value), "min", chart.Scale(system))
		return
	}
}

// sumByHand adds up the bands of one allowance.
func (j judged) sumByHand(p *byhand.Page, a coldchain.Allowance, system units.System, nth string) {
	p.Step(j.name+": "+name(a)+", "+a.Verdict.String(), a.Citations()...)
	if a.Spared != 0 {
		p.Note("It is shown and does not decide: %s.", a.Spared)
	}
	if len(j.report.Terms.Stays) > 0 {
		p.Note("Where the core warms, time counts at the warmest of what lies around it, as stated.")
	}
	var shares []string
	single := 0
	for i, l := range a.Lines {
		if l.Limit.Over == l.Limit.UpTo && l.Limit.Over.IsSet() {
			single++ // a row of one temperature holds by itself
			continue
		}
		t, limit, share := fmt.Sprintf("t%s_%d", nth, i+1), fmt.Sprintf("A%s_%d", nth, i+1), fmt.Sprintf("s%s_%d",
			nth, i+1)
		p.Let(t, byhand.Digits(l.Used.Hours(), 7), "h", "recorded "+bandText(l.Limit, system))
		p.Let(limit, byhand.Digits(l.Limit.Allowed.Hours(), 4), "h", "allowed there")
		p.Work(share, t+" / "+limit, "", 6)
		shares = append(shares, share)
	}
	if len(shares) == 0 {
		p.Note("No band of it was reached.")
		return
	}
	used := "u" + nth
	if a.Rule == coldchain.TableA2 {
		p.Work(used, strings.Join(shares, " + "), "(1 is all that is allowed)", 5)
	} else if len(shares) == 1 {
		p.Work(used, shares[0]+" × 1", "(1 is all that is allowed)", 5)
	} else {
		p.Note("Limits of one number hold together, and of several numbers one is enough: the fullest of each, and of those the least full, is what was used.")
		return
	}
	p.Meets(used, units.Float(a.Used, units.One), 1e-4, "the share that the library finds")
}

func bandText(l coldchain.Limit, system units.System) string {
	text := "above " + units.AmountOf(l.Over).Text(system, units.Nearest)
	if l.UpTo.IsSet() {
		text += ", up to " + units.AmountOf(l.UpTo).Text(system, units.Nearest)
	}
	return text
}

func (v verdicts) iceByHand(p *byhand.Page) {
	t := v.trip
	celsius := func(x units.Temperature) string { return x.In(units.CelsiusScale, 4).String() }
	kilograms := func(m units.Mass) string { return units.In(m, units.Kilogram, 5).String() }
	constant := ice.Constants()[0]
	p.Step("Ice to chill the fish: Mi = k Mf (ts − tc), the largest of the constants in circulation", constant.Citation)
	p.Let("k", units.In(constant.PerDegree, units.One, 8).String(), "kg of ice for a kg of fish and a °C",
		constant.Name)
	p.Let("Mf", kilograms(t.Fish), "kg", "fish")
	p.Let("ts", celsius(t.From), "°C", "as caught")
	p.Let("tc", celsius(t.To), "°C", "aimed at")
	p.Work("Mi", "k × Mf × (ts − tc)", "kg", 5)
	p.Meets("Mi", units.Float(v.ice.Chill, units.Kilogram), 3e-4,
		"the ice to chill, which the library rounds up to the gram")
	p.Step("How fast the box melts ice: K = (before − after) / (outside × time)", t.Box.Citation)
	p.Let("m1", kilograms(v.Ice.Test.Before), "kg", "put in")
	p.Let("m2", kilograms(v.Ice.Test.After), "kg", "left")
	p.Let("to", celsius(v.Ice.Test.Outside), "°C", "air around the box")
	p.Let("h1", byhand.Digits(v.Ice.Test.For.Hours(), 5), "h", "length of the test")
	p.Work("K", "(m1 − m2) / (to × h1)", "kg/(°C h)", 6)
	p.Step("Ice to hold the box: K × outside × time", t.Box.Citation)
	p.Let("t2", celsius(t.Outside), "°C", "air around the box on the trip")
	p.Let("h2", byhand.Digits(t.For.Hours(), 5), "h", "length of the trip")
	p.Work("Mh", "K × t2 × h2", "kg", 5)
	p.Meets("Mh", units.Float(v.ice.Hold, units.Kilogram), 2e-3,
		"the ice to hold, which the library rounds up to the gram")
	p.Step("Together")
	p.Let("r", units.In(t.Spare, units.One, 4).String(), "", "share to be left over")
	p.Work("Ms", "r × (Mi + Mh)", "kg", 5)
	p.Work("M", "Mi + Mh + Ms", "kg", 5)
	p.Meets("M", units.Float(v.ice.Total, units.Kilogram), 6e-4,
		"the ice of the trip, each part which the library rounds up to the gram")
}
