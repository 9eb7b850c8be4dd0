package main

import (
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units/cite"
)

// verdict is that of any part: the three packages have the same words in the same order, and the later goes before the earlier.
type verdict = process.Verdict

// result is a recipe judged.
type result struct {
	title, about string
	verdict      verdict
	steps        []step
	cautions     []cite.Caution
}

// step is one part judged. A part that the recipe does not have has no verdict. Refusal says what is not published.
type step struct {
	name     string
	verdict  verdict
	note     string
	governs  []figure
	computed []figure // explains, and decides nothing by itself
	refusal  string
	findings []finding
}

// figure is what governs a step, and where it is from.
type figure struct {
	what, text string
	citation   cite.Citation
}

// finding is one of any of the packages: the same fields, and the line that it says of itself.
type finding struct {
	line                          string
	what, kind                    string
	stated, published, difference string
	citation                      cite.Citation
	known                         cite.Caution
}

func (s *step) govern(what, text string, c cite.Citation) {
	s.governs = append(s.governs, figure{what: what, text: text, citation: c})
}

// lack is a part that another part makes necessary and that is not there.
func (s *step) lack(what, why, published string, c cite.Citation) {
	s.verdict = max(s.verdict, process.CannotTell)
	s.findings = append(s.findings, finding{line: what + ": not stated, " + why, what: what, kind: process.NotStated.String(), published: published, citation: c})
}

func (r *result) add(s step, cautions []cite.Caution) {
	r.steps = append(r.steps, s)
	r.verdict = max(r.verdict, s.verdict)
	r.cautions = append(r.cautions, cautions...)
}
