package answers

import (
	"errors"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// writer collects an answer.
type writer struct {
	Answer
	request Request
	section Section
	warned  []cite.Caution
}

// empty reports whether a section of fields has nothing in any of them, nor a file.
func (w *writer) empty() bool {
	for _, text := range w.request.Values {
		if text != "" {
			return false
		}
	}
	return len(w.request.Files) == 0 && w.section.Example != nil
}

// confirmed keeps back everything while a value of a link decides that nobody has confirmed.
func (w *writer) confirmed() bool {
	if !w.request.FromLink {
		return true
	}
	for _, f := range w.section.Fields {
		if value := w.request.Values[f.Name]; f.Confirm && value != "" {
			w.Confirm = append(w.Confirm, f.Label+": "+value)
		}
	}
	if len(w.Confirm) == 0 {
		return true
	}
	w.Headline = "These came with the link. Nothing is shown until you say that they are those of your kitchen."
	return false
}

// wrong keeps what is wrong with a field.
func (w *writer) wrong(field string, err error) {
	fault := Fault{Field: field, Text: err.Error()}
	var unread units.ParseError
	if errors.As(err, &unread) {
		fault.Choices = unread.Choices
	}
	w.Faults = append(w.Faults, fault)
}

// block starts a part of the answer.
func (w *writer) block(heading string) { w.Blocks = append(w.Blocks, Block{Heading: heading}) }

func (w *writer) add(l Line, from []cite.Citation) {
	for _, c := range from {
		if !c.IsZero() {
			l.From = append(l.From, c.String())
		}
	}
	if len(w.Blocks) == 0 {
		w.block("")
	}
	last := &w.Blocks[len(w.Blocks)-1]
	last.Lines = append(last.Lines, l)
}

// figure adds a figure under its name.
func (w *writer) figure(name, text string, from ...cite.Citation) {
	w.add(Line{Kind: "figure", Name: name, Text: text}, from)
}

// line adds a sentence.
func (w *writer) line(text string, from ...cite.Citation) { w.add(Line{Text: text}, from) }

// do adds a thing to do.
func (w *writer) do(text string, from ...cite.Citation) { w.add(Line{Kind: "do", Text: text}, from) }

// judge adds the verdict of a report, why, and its cautions.
func (w *writer) judge(r verdict.Report, of string) {
	w.Verdict, w.Headline = r.Verdict.String(), of
	w.why(r)
}

// why adds the findings of a report and its cautions.
func (w *writer) why(r verdict.Report) {
	if len(r.Findings) == 0 && r.Verdict.Passes() {
		w.line("Nothing was found against it.")
	}
	for _, f := range r.Findings {
		text := f.Text(w.request.System)
		if f.Verdict.Passes() {
			text += "; a remark"
		} else {
			text += "; " + f.Verdict.String()
		}
		w.add(Line{Kind: "why", Text: text}, []cite.Citation{f.Citation})
		if f.Known.Text != "" {
			w.line(f.Known.Text, f.Known.Citation)
		}
	}
	w.warn(r.Cautions...)
}

// warn keeps cautions for the end, each once.
func (w *writer) warn(all ...cite.Caution) {
	for _, c := range all {
		seen := false
		for _, before := range w.warned {
			seen = seen || before.ID == c.ID && before.Text == c.Text
		}
		if !seen {
			w.warned = append(w.warned, c)
		}
	}
}

// finish writes the cautions, the deciding ones first.
func (w *writer) finish() {
	for _, deciding := range []bool{true, false} {
		for _, c := range w.warned {
			if c.Deciding != deciding {
				continue
			}
			shown := Caution{ID: string(c.ID), Text: c.Text, Deciding: deciding}
			if !c.Citation.IsZero() {
				shown.From = []string{c.Citation.String()}
			}
			w.Cautions = append(w.Cautions, shown)
		}
	}
}
