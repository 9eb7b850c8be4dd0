package verdict

import (
	"slices"

	"example.org/lakelarder/units/cite"
)

// Report is a judgement: the verdict, why, and what must be shown beside it. Every judge's result embeds one. Findings
// come with the worst first, and what is equally bad in the order of its time and of its rules. Cautions come with the
// deciding ones first; the slices are the caller's own. The zero Report cannot tell.
type Report struct {
	Verdict  Verdict `wire:"always"`
	Findings []Finding
	Cautions []cite.Caution
}

// Of returns the report of findings: the verdict is the worst of theirs, Met for none. It sorts both slices and keeps
// them.
func Of(findings []Finding, cautions []cite.Caution) Report {
	slices.SortStableFunc(findings, order)
	if !slices.IsSortedFunc(cautions, decidingFirst) {
		slices.SortStableFunc(cautions, decidingFirst)
	}
	r := Report{Verdict: Met, Findings: findings, Cautions: cautions}
	if len(findings) > 0 {
		r.Verdict = findings[0].Verdict
	}
	return r
}

// order puts the worse finding first, then the earlier one; what has no time comes before what has one.
func order(a, b Finding) int {
	switch {
	case a.Verdict != b.Verdict:
		return int(b.Verdict) - int(a.Verdict)
	case a.When.Value.From < b.When.Value.From:
		return -1
	case a.When.Value.From > b.When.Value.From:
		return 1
	}
	return 0
}

func decidingFirst(a, b cite.Caution) int {
	switch {
	case a.Deciding == b.Deciding:
		return 0
	case a.Deciding:
		return -1
	}
	return 1
}

// Join returns one report of several: the worst verdict, every finding, and each caution once, by its ID. Without a
// report it cannot tell.
func Join(reports ...Report) Report {
	if len(reports) == 0 {
		return Report{}
	}
	var findings []Finding
	var cautions []cite.Caution
	worst := Met
	for _, r := range reports {
		worst = Worst(worst, r.Verdict)
		findings = append(findings, r.Findings...)
		for _, c := range r.Cautions {
			if !slices.ContainsFunc(cautions, func(seen cite.Caution) bool { return seen.ID == c.ID && seen.Text == c.Text }) {
				cautions = append(cautions, c)
			}
		}
	}
	joined := Of(findings, cautions)
	joined.Verdict = worst
	return joined
}

// Judgement returns the report itself, so that any result that embeds one can be shown by one function.
func (r Report) Judgement() Report { return r }

// Citations returns where the figures of the report are from, each once: those of the findings, then those of the
// cautions.
func (r Report) Citations() []cite.Citation {
	var all []cite.Citation
	add := func(c cite.Citation) {
		if !c.IsZero() && !slices.Contains(all, c) {
			all = append(all, c)
		}
	}
	for _, f := range r.Findings {
		add(f.Citation)
		add(f.Known.Citation)
	}
	for _, c := range r.Cautions {
		add(c.Citation)
	}
	return all
}
