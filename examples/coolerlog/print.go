package main

import (
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain"
)

func (v verdicts) print(p *page) {
	p.Line("%s", v.place)
	p.Line("%s", v.about)
	for _, j := range v.fish {
		j.printVerdict(p)
		j.printStages(p)
		j.printBudgets(p)
	}
	p.Close()
}

func (j judged) printVerdict(p *page) {
	p.Heading(j.name)
	r := j.report
	p.Line("VERDICT: %s", strings.ToUpper(r.Verdict.String()))
	for _, f := range r.Findings {
		if f.Verdict == coldchain.Exceeded {
			p.Line("  %s: ran out after %s", name(f), left(f.ExceededAt))
		}
	}
	for _, text := range r.Next {
		p.Line("now: %s", text)
	}
	p.Warn(r.Cautions...)
}

func (j judged) printStages(p *page) {
	p.Line("\n   from           to              coldest   warmest")
	for i, s := range j.stages {
		p.Line("%d  %-14s %-14s %8s  %8s  %s", i+1, left(s.at), left(s.until), p.temperature(s.coldest), p.temperature(s.warmest), s.what)
	}
	for _, h := range j.report.Hours {
		since := ""
		if h.Ever {
			since = ", first after " + left(h.First)
		}
		p.Line("above %-8s %s in all%s %s", p.temperature(h.Above), hours(h.Time), since, p.From(h.Citation))
	}
}

// printBudgets has a bar for the whole allowance of each rule.
func (j judged) printBudgets(p *page) {
	p.Line("\nwhat was used of each allowance (twenty marks are all of it)")
	for _, f := range j.report.Findings {
		var from cite.Citation
		if len(f.Lines) > 0 {
			from = f.Lines[0].Limit.Citation
		}
		p.Line("%s %6s  %-11s %s %s", bar(f.Used), units.Text(f.Used, units.Percent, 0), f.Verdict, name(f), p.From(from))
	}
}

// name is the rule of a finding, and the hazard where it has one.
func name(f coldchain.Finding) string {
	if f.Hazard == 0 {
		return f.Rule.String()
	}
	return f.Rule.String() + ", " + f.Hazard.String()
}
