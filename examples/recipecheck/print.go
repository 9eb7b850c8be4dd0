package main

import (
	"strings"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units/verdict"
)

// print is the verdict, why, what to do, and the published figures behind it.
func (j judged) print(p *sheet.Sheet) {
	p.Verdict(j.Verdict, j.Title)
	p.Do("%s", meaning(j.Verdict))
	p.Line("%s", j.About)
	parts := j.parts()
	for _, part := range parts {
		p.Line("%s", part.headline())
		if part.refusal != "" {
			p.Line("Why: %s", part.refusal)
		}
		if len(part.report.Findings) > 0 {
			p.Findings(verdict.Report{Findings: part.report.Findings}, nil, nil)
		}
		for _, f := range part.report.Findings {
			if mark := p.From(f.Known.Citation); mark != "" {
				p.Line("    %s: the figure that was stated is known from%s", f.What, mark)
			}
		}
	}
	p.Heading("What governs")
	for _, part := range parts {
		var figures []string
		for _, g := range part.governs {
			figures = append(figures, g.what+": "+g.figure.Text(p.System)+p.From(g.citation))
		}
		if len(figures) > 0 {
			p.Line("%s: %s", part.name, strings.Join(figures, "; "))
		}
	}
	p.Warn(j.Cautions...)
	p.Close()
}

// headline is the outcome of a part.
func (p part) headline() string {
	if p.absent {
		return p.name + ": absent, and nothing of it is judged"
	}
	text := p.name + ": " + p.report.Verdict.String()
	if p.of != "" {
		text += ": " + p.of
	}
	return text
}

// meaning is what to do with a verdict.
func meaning(v verdict.Verdict) string {
	switch v {
	case verdict.Met:
		return "Keep to it as it is written. Every figure that is judged is stated and agrees with what is " +
			"published. It is no proof of what is in a jar or in a fish."
	case verdict.More:
		return "Take the published figures. Nothing falls short, but something is more than published, which is not " +
			"better."
	case verdict.CannotTell:
		return "Find out what is missing. Something that decides is not known; until it is, do not make it."
	case verdict.Differs:
		return "Look at the figure that is another one than published. Do not make it by that figure."
	case verdict.NotMet:
		return "Put the published figures in the place of those that fall short, and do not make it as it is " +
			"written. More of one never makes up for less of another."
	}
	return "Take a published process as it is printed, or freeze the fish. None is published for this one: do not " +
		"make it."
}
