package main

import (
	"strings"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units/verdict"
)

// print is the verdict, why, what to do, and the published figures behind it.
func (j judged) print(p *sheet.Sheet) {
	p.Verdict(j.Verdict, j.Title)
	p.Line("%s", meaning(j.Verdict))
	p.Line("%s", j.About)
	p.Heading("Why")
	parts := j.parts()
	for _, part := range parts {
		p.Line("%s", part.headline())
		if part.refusal != "" {
			p.Item("%s", part.refusal)
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
		return "Every figure that is judged is stated and agrees with what is published. It is no proof of what is in a jar or in a fish."
	case verdict.More:
		return "Nothing falls short. Something is more than published, which is not better."
	case verdict.CannotTell:
		return "Something that decides is not known. Until it is, do not make it."
	case verdict.Differs:
		return "A figure is another one than published. Do not make it by that figure."
	case verdict.NotMet:
		return "Do not make it: put the published figures in the place of those that fall short. More of one never makes up for less of another."
	}
	return "No process is published for it. Do not make it: take a published one as it is printed, or freeze the fish."
}
