package main

import (
	"fmt"
	"io"
	"strings"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/pressure/process"
)

// page prints what the sheet of every example prints, and this one's steps.
type page struct{ sheet.Sheet }

func (r result) print(w io.Writer) {
	p := &page{sheet.Sheet{W: w}}
	p.Line("%s", r.title)
	p.Line("%s", r.about)
	for i, s := range r.steps {
		p.step(i+1, s)
	}
	p.Heading("The recipe")
	p.Line("VERDICT: %s", strings.ToUpper(r.verdict.String()))
	for _, s := range r.steps {
		p.Line("%-20s %s", s.name, s.outcome())
	}
	p.Line("%s", meaning(r.verdict))
	p.Warn(r.cautions...)
	p.Close()
}

func (p *page) step(n int, s step) {
	p.Heading(fmt.Sprintf("%d. %s", n, s.name))
	if s.verdict == 0 {
		p.Line("Absent: the recipe does not have this part, and nothing of it is judged.")
		return
	}
	p.Line("%s", strings.ToUpper(s.verdict.String()))
	if s.refusal != "" {
		p.Line("%s.", s.refusal)
	}
	if s.note != "" {
		p.Line("%s", s.note)
	}
	for _, g := range s.governs {
		p.Line("  governs: %s: %s %s", g.what, g.text, p.From(g.citation))
	}
	for _, c := range s.computed {
		p.Line("  computed: %s: %s %s", c.what, c.text, p.From(c.citation))
	}
	for _, f := range s.findings {
		p.Line("- %s%s", f.line, p.mark(f))
	}
	if len(s.findings) == 0 && s.refusal == "" {
		p.Line("Nothing was found against it.")
	}
}

// mark is where a finding's figures are from: the published one, and the stated one when it is known from elsewhere.
func (p *page) mark(f finding) (text string) {
	if !f.citation.IsZero() {
		text += " " + p.From(f.citation)
	}
	if f.known.Text == "" {
		return text
	}
	text += "; known"
	if !strings.Contains(f.line, f.known.Text) {
		text += ": " + f.known.Text
	}
	return text + " " + p.From(f.known.Citation)
}

func (s step) outcome() string {
	if s.verdict == 0 {
		return "absent"
	}
	return s.verdict.String()
}

// meaning is what to do with a verdict.
func meaning(v verdict) string {
	switch v {
	case process.Meets:
		return "Every figure that is judged is stated and agrees with what is published. It is no proof of what is in a jar or in a fish."
	case process.Exceeds:
		return "Nothing falls short. Something is more than published, which is not better."
	case process.CannotTell:
		return "Something that decides is not known. Until it is, do not make it."
	case process.Differs:
		return "A figure is another one than published. Do not make it by that figure."
	case process.FallsShort:
		return "Do not make it: put the published figures in the place of those that fall short. More of one never makes up for less of another."
	case process.NotPublished:
		return "Nobody has published a process for it. Do not make it: take a published one as it is printed, or freeze the fish."
	}
	return ""
}
