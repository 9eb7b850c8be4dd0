package main

import (
	"fmt"
	"sort"
	"strings"
	"time"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/keeping"
	"example.org/lakelarder/yield/coldchain/spoilage"
)

// print writes one screen first: the verdict of all, and of each fish why and what to do. The details come after the
// cautions.
func (v verdicts) print(p *sheet.Sheet) {
	var each []string
	for _, j := range v.fish {
		each = append(each, j.name+" "+j.all.Verdict.String())
	}
	p.Verdict(v.together().Verdict, strings.Join(each, ", "))
	for _, j := range v.fish {
		j.printVerdict(p)
	}
	v.printIce(p)
	p.Line("%s. %s", v.Place, v.About)
	v.warn(p)
	p.Cautions()
	for _, j := range v.fish {
		p.Heading("Details: " + j.name)
		j.printLanding(p)
		j.printStages(p)
		j.printBudgets(p)
		j.printNext(p)
		j.printAge(p)
	}
	p.Close()
}

// warn hands over every caution before the first is printed.
func (v verdicts) warn(p *sheet.Sheet) {
	for _, j := range v.fish {
		p.Warn(j.report.Cautions...)
		p.Warn(j.landed.Cautions...)
		for _, s := range j.stages {
			if s.store != nil {
				p.Warn(s.store.Cautions...)
			}
		}
		for _, l := range j.left {
			p.Warn(l.Cautions...)
		}
		p.Warn(j.aged.Cautions...)
		p.Warn(j.toxin.Cautions...)
	}
	p.Warn(v.ice.Cautions...)
}

func (j judged) printVerdict(p *sheet.Sheet) {
	p.Heading(j.name + ": " + j.all.Verdict.String())
	p.Findings(j.all, elapsed, nil)
	for _, step := range j.report.Next {
		p.Do("%s", step.Text(p.System))
	}
	most := tightest(j.report)
	p.Line("Least left of %s: %s used%s. Fish: %s", name(most), units.AmountOf(most.Used).Text(p.System, units.Up),
		p.FromEach(most.Citations()), j.read)
}

// elapsed is a stretch of the record in hours and minutes.
func elapsed(s series.Stretch) string {
	if s.From == s.To {
		return "after " + left(s.From)
	}
	return left(s.From) + " to " + left(s.To)
}

// printLanding is what came before the ice. Rules for other fish are left out.
func (j judged) printLanding(p *sheet.Sheet) {
	p.Line("From the hook to the ice: %v", j.landed.Verdict)
	for _, l := range j.landed.Lines {
		if !l.Rule.Yardstick {
			p.Item("%s, %v: %s%s", l.Verdict, l.Rule.Demand, l.Rule.Printed, p.From(l.Rule.Citation))
		}
	}
}

func (j judged) printStages(p *sheet.Sheet) {
	p.Line("From one event to the next, the coldest and the warmest:")
	for i, s := range j.stages {
		reach := "not recorded"
		if s.coldest.IsSet() {
			reach = sheet.Text(p, s.coldest) + " to " + sheet.Text(p, s.warmest)
		}
		p.Line("%d  %12s to %-12s %s: %s", i+1, left(s.At), left(s.until), s.What, reach)
	}
	for _, s := range j.stages {
		if s.store != nil {
			printStore(p, *s.store)
		}
	}
	for _, h := range j.report.Hours {
		since := ""
		if h.Ever {
			since = ", first after " + left(h.First)
		}
		p.Line("Above %s: %s in all%s%s", sheet.Text(p, h.Above), hours(h.Time), since, p.From(h.Citation))
	}
}

// printStore says by how much a storage was too warm, and what the hazards lose by it that lose the most.
func printStore(p *sheet.Sheet, s keeping.StoreReport) {
	p.Line("The %v brought the fish to %s: %s", s.Storage, sheet.Text(p, s.At), s.Verdict)
	for _, l := range s.Lines {
		if !l.Verdict.Passes() {
			p.Item("%s too warm for %s, %s%s", sheet.Up(p, l.TooWarm), l.Limit.For, sheet.Down(p, l.Limit.AtMost),
				p.From(l.Limit.Citation))
		}
	}
	for _, c := range s.Costs {
		if c.AtLimit > 0 && c.Concern == keeping.Safety {
			p.Item("%s: %s allowed in place of %s%s", c.What, sheet.Down(p, c.Here), sheet.Down(p, c.AtLimit),
				p.From(c.Citation))
		}
	}
}

// printBudgets has a bar for the whole allowance of each rule.
func (j judged) printBudgets(p *sheet.Sheet) {
	p.Line("What was used of each allowance; twenty marks are all of it:")
	for _, a := range j.report.Allowances {
		spared := ""
		if a.Spared != 0 {
			spared = "; spared, for " + a.Spared.String()
		}
		p.Line("%s %8s  %s: %s%s%s", bar(a.Used), units.Text(units.CeilTo(a.Used, units.Percent), units.Percent, 0),
			a.Verdict, name(a), spared, p.FromEach(a.Citations()))
	}
}

// printNext is what is left of the allowances if the fish stays as warm as it was at the last reading, the first to
// run out first.
func (j judged) printNext(p *sheet.Sheet) {
	last, _ := j.record.Last()
	p.Line("If it stays at %s from now on:", sheet.Text(p, last.Value))
	if j.report.Verdict == verdict.NotMet {
		p.Item("what is exceeded stays so, however cold it gets")
		return
	}
	if j.report.Verdict == verdict.CannotTell {
		p.Item("what is not recorded may have used some or all of this already")
	}
	var running []coldchain.Forecast
	for _, f := range j.next {
		if f.Runs && f.Spared == 0 {
			running = append(running, f)
		}
	}
	if len(running) == 0 {
		p.Item("no allowance is used at that temperature")
	}
	sort.SliceStable(running, func(a, b int) bool { return running[a].Left < running[b].Left })
	for _, f := range running[:min(len(running), 4)] {
		p.Item("%s left of %s", left(f.Left), rule(f.Rule, f.Hazard))
	}
}

// printAge is smell and taste, and the envelope of the toxin beside it: neither is a verdict.
func (j judged) printAge(p *sheet.Sheet) {
	p.Line("How far it has aged, which is quality and never safety: %s on melting ice%s", aged(j.aged.Used),
		p.From(j.aged.Citation))
	if !j.report.Verdict.Passes() {
		p.Item("whatever is left of that, the verdict above stands")
	}
	for _, l := range j.left {
		p.Item("of %s printed for %s: %s left on ice%s", span(l.Life.Low, l.Life.High), lifeName(l.Life), span(l.Low,
			l.High), p.From(l.Life.Citation))
	}
	p.Item("of the shortest time to botulinum toxin in food without air: %s used%s",
		units.AmountOf(units.CeilTo(j.toxin.Share, units.PerMille)).Text(p.System, units.Up), p.From(j.toxin.Citation))
}

func lifeName(l spoilage.Life) string {
	if l.Waters != "" {
		return l.Fish + " of " + l.Waters + " waters"
	}
	return l.Fish
}

func (v verdicts) printIce(p *sheet.Sheet) {
	t := v.trip
	p.Heading("Ice for the next trip")
	p.Line("Load %s. For %s of fish from %s to %s, then %s in the box in air of %s: %s to chill the fish, %s to hold the box as it melted ice when it was tried%s, %s (%s of that) to have some left",
		sheet.Up(p, v.ice.Total), sheet.Text(p, t.Fish), sheet.Text(p, t.From), sheet.Text(p,
			t.To), units.Lasting(t.For), sheet.Text(p, t.Outside),
		sheet.Up(p, v.ice.Chill), sheet.Up(p, v.ice.Hold), p.From(t.Box.Citation), sheet.Up(p, v.ice.Spare), t.Spare)
}

// hours prints a duration in hours and whole minutes, rounded up: what a limit counts is never hidden.
func hours(d time.Duration) string { return left((d + time.Minute - 1) / time.Minute * time.Minute) }

// left prints what remains, cut to whole minutes.
func left(d time.Duration) string {
	return fmt.Sprintf("%d h %02d min", d/time.Hour, d%time.Hour/time.Minute)
}

const tenth = 24 * time.Hour / 10 // of a day

// aged is a time in days and tenths, rounded up: a fish is no younger than it says.
func aged(d time.Duration) string { return days(d + tenth - 1) }

// days is a time in days and tenths, cut: there is no more left than it says.
func days(d time.Duration) string {
	sign := ""
	if d < 0 {
		sign, d = "-", -d+tenth-1
	}
	return fmt.Sprintf("%s%d.%d days", sign, d/tenth/10, d/tenth%10)
}

// span is one time or two.
func span(low, high time.Duration) string {
	if low == high {
		return days(low)
	}
	return days(low) + " to " + days(high)
}

// bar is a share of an allowance as marks, twenty for all of it; what goes past it is cut and marked.
func bar(used units.Ratio) string {
	const whole = 20
	marks := int((used + units.One/whole - 1) / (units.One / whole))
	if marks > whole {
		return strings.Repeat("#", whole) + ">"
	}
	return strings.Repeat("#", marks) + strings.Repeat(".", whole-marks) + " "
}
