package main

import (
	"sort"
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/keeping"
	"example.org/lakelarder/yield/coldchain/spoilage"
)

func (v verdicts) print(p *page) {
	p.Line("%s", v.place)
	p.Line("%s", v.about)
	for _, j := range v.fish {
		j.printVerdict(p)
		j.printLanding(p)
		j.printStages(p)
		j.printBudgets(p)
		j.printNext(p)
		j.printAge(p)
	}
	v.printIce(p)
	p.Close()
}

func (j judged) printVerdict(p *page) {
	p.Heading(j.name)
	r := j.report
	p.Line("VERDICT: %s", strings.ToUpper(r.Verdict.String()))
	for _, f := range r.Findings {
		if f.Verdict == coldchain.Exceeded {
			p.Line("  %s: ran out after %s %s", name(f), left(f.ExceededAt), p.FromEach(f.Citations()))
		}
	}
	for _, text := range r.Next {
		p.Line("now: %s", text)
	}
	p.Warn(r.Cautions...)
}

// printLanding is what came before the ice. Rules for other fish are left out.
func (j judged) printLanding(p *page) {
	p.Line("from the hook to the ice: %v", j.landed.Verdict)
	for _, l := range j.landed.Lines {
		if !l.Rule.Yardstick {
			p.Line("  %-11s %v: %s %s", l.Verdict, l.Rule.Demand, l.Rule.Printed, p.From(l.Rule.Citation))
		}
	}
	p.Warn(j.landed.Cautions...)
}

func (j judged) printStages(p *page) {
	p.Line("\n   from           to              coldest   warmest")
	for i, s := range j.stages {
		coldest, warmest := "not", "recorded"
		if s.coldest.IsSet() {
			coldest, warmest = p.Temperature(s.coldest), p.Temperature(s.warmest)
		}
		p.Line("%d  %-14s %-14s %8s  %8s  %s", i+1, left(s.at), left(s.until), coldest, warmest, s.what)
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
		p.Line("above %-8s %s in all%s %s", p.Temperature(h.Above), hours(h.Time), since, p.From(h.Citation))
	}
}

// printStore says by how much a storage was too warm, and what the hazards lose by it that lose the most.
func printStore(p *page, s keeping.StoreReport) {
	p.Line("the %v brought the fish to %s:", s.Storage, p.Temperature(s.At))
	for _, l := range s.Lines {
		if !l.Met {
			p.Line("  %s too warm for %s, %s %s", p.Change(l.TooWarm, 1), l.Limit.For, p.Temperature(l.Limit.AtMost), p.From(l.Limit.Citation))
		}
	}
	for _, c := range s.Costs {
		if c.AtLimit > 0 && c.Concern == keeping.Safety {
			p.Line("  %s: %.0f h allowed in place of %.0f h %s", c.What, c.Here.Hours(), c.AtLimit.Hours(), p.From(c.Citation))
		}
	}
	p.Warn(s.Cautions...)
}

// printBudgets has a bar for the whole allowance of each rule.
func (j judged) printBudgets(p *page) {
	p.Line("\nwhat was used of each allowance (twenty marks are all of it)")
	for _, f := range j.report.Findings {
		p.Line("%s %6s  %-11s %s %s", bar(f.Used), units.Text(f.Used, units.Percent, 0), f.Verdict, name(f), p.FromEach(f.Citations()))
	}
}

// name is the rule of a finding, and the hazard where it has one.
func name(f coldchain.Finding) string { return rule(f.Rule, f.Hazard) }

func rule(r coldchain.Rule, h coldchain.Hazard) string {
	if h == 0 {
		return r.String()
	}
	return r.String() + ", " + h.String()
}

// printNext is what is left of the allowances if the fish stays as warm as it was at the last reading, the first to run out first.
func (j judged) printNext(p *page) {
	last, _ := j.record.Last()
	p.Line("\nif it stays at %s from now on", p.Temperature(last.Value))
	if j.report.Verdict == coldchain.Exceeded {
		p.Line("  what is exceeded stays so, however cold it gets")
		return
	}
	if j.report.Verdict == coldchain.CannotTell {
		p.Line("  what is not recorded may have used some or all of this already")
	}
	var running []coldchain.Forecast
	for _, f := range j.next {
		if f.Runs {
			running = append(running, f)
		}
	}
	if len(running) == 0 {
		p.Line("  no allowance is used at that temperature")
	}
	sort.SliceStable(running, func(a, b int) bool { return running[a].Left < running[b].Left })
	for _, f := range running[:min(len(running), 4)] {
		p.Line("  %-11s left of %s", left(f.Left), rule(f.Rule, f.Hazard))
	}
}

// printAge is smell and taste, and the envelope of the toxin beside it: neither is a verdict.
func (j judged) printAge(p *page) {
	p.Line("\nhow far it has aged, which is quality and never safety")
	p.Line("  worth %s on melting ice %s", aged(j.aged.Used), p.From(j.aged.Citation))
	if j.report.Verdict != coldchain.Within {
		p.Line("  whatever is left of that, the verdict above stands")
	}
	for _, l := range j.left {
		p.Line("  of %s printed for %s: %s left on ice %s", span(l.Life.Low, l.Life.High), lifeName(l.Life), span(l.Low, l.High), p.From(l.Life.Citation))
		p.Warn(l.Cautions...)
	}
	p.Line("  of the shortest time to botulinum toxin in food without air: %s used %s", units.Text(units.CeilTo(j.toxin.Share, units.PerMille), units.Percent, 1), p.From(j.toxin.Citation))
	p.Warn(j.aged.Cautions...)
	p.Warn(j.toxin.Cautions...)
}

func lifeName(l spoilage.Life) string {
	if l.Waters != "" {
		return l.Fish + " of " + l.Waters + " waters"
	}
	return l.Fish
}

func (v verdicts) printIce(p *page) {
	t := v.trip
	p.Heading("Ice for the next trip")
	p.Line("%s of fish from %s to %s, then %s in the box in air of %s", p.mass(t.Fish), p.Temperature(t.From), p.Temperature(t.To), left(t.For), p.Temperature(t.Outside))
	p.Line("  to chill the fish    %s", p.mass(v.ice.Chill))
	p.Line("  to hold the box      %s, as it melted ice when it was tried %s", p.mass(v.ice.Hold), p.From(t.Box.Citation))
	p.Line("  to have some left    %s, %s of that", p.mass(v.ice.Spare), t.Spare)
	p.Line("  together             %s", p.mass(v.ice.Total))
	p.Warn(v.ice.Cautions...)
}
