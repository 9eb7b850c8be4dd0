// Package answers is what a page or a form shows: for each section its fields, and from what was typed into them and
// dropped beside them the text of the answer, line by line, each with its sources. It reads no file and no clock and knows
// no screen, so that the page in a browser and a native program say the same.
package answers

import (
	"errors"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// Request is what was asked: the section, what stands in its fields, the files dropped there, and the system of units of
// the answer. FromLink says that the values came with an address and nobody has confirmed them.
type Request struct {
	Section  string            `json:"section"`
	System   units.System      `json:"system"`
	Values   map[string]string `json:"values"`
	Files    map[string]File   `json:"files"`
	FromLink bool              `json:"fromLink"`
	Tables   []Table           `json:"-"` // for the section of the tables
}

// Answer is what is shown. Either Faults, Asks or Confirm say what is still in the way, or Verdict and Blocks are the answer;
// a judgement may stand beside what is missing for another.
type Answer struct {
	Verdict    string            `json:"verdict,omitempty"` // in one word or two, of a judgement
	Headline   string            `json:"headline,omitempty"`
	Confirm    []string          `json:"confirm,omitempty"` // values of a link to be confirmed first
	Faults     []Fault           `json:"faults,omitempty"`
	Understood map[string]string `json:"understood,omitempty"` // what was typed, by field, as it was understood
	Asks       []Ask             `json:"asks,omitempty"`
	Blocks     []Block           `json:"blocks,omitempty"`
	Cautions   []Caution         `json:"cautions,omitempty"`
	Picture    string            `json:"picture,omitempty"` // SVG
}

// Fault is what is wrong with a field, in the library's own sentence.
type Fault struct {
	Field   string   `json:"field"`
	Text    string   `json:"text"`
	Choices []string `json:"choices,omitempty"` // what may have been meant
}

// Ask is a question about a dropped file: choices to answer with, or any text where there are none. The answer to Reading
// is a confirmation.
type Ask struct {
	File    string   `json:"file"`
	Ask     string   `json:"ask"`
	Text    string   `json:"text"`
	Choices []Choice `json:"choices,omitempty"`
}

// Choice is one answer and what it means.
type Choice struct {
	Answer string `json:"answer"`
	Means  string `json:"means"`
}

// Block is a part of the answer under its heading.
type Block struct {
	Heading string     `json:"heading,omitempty"`
	Lines   []Line     `json:"lines,omitempty"`
	Head    []string   `json:"head,omitempty"` // of Rows
	Rows    [][]string `json:"rows,omitempty"`
	Links   []string   `json:"links,omitempty"` // of Rows, each its address
}

// Line is one sentence or figure and where it is from.
type Line struct {
	Kind string   `json:"kind,omitempty"` // figure, why, do or nothing
	Name string   `json:"name,omitempty"` // what a figure is
	Text string   `json:"text"`
	From []string `json:"from,omitempty"`
}

// Caution is one caution; the deciding ones come first.
type Caution struct {
	ID       string   `json:"id"`
	Text     string   `json:"text"`
	Deciding bool     `json:"deciding,omitempty"`
	From     []string `json:"from,omitempty"`
}

// Lines is the whole answer as text, one element a line, in the order in which a page shows it.
func (a Answer) Lines() []string {
	all := []string{}
	add := func(parts ...string) {
		for _, text := range parts {
			if text != "" {
				all = append(all, text)
			}
		}
	}
	add(a.Verdict, a.Headline)
	add(a.Confirm...)
	for _, q := range a.Asks {
		add(q.Text)
	}
	for _, b := range a.Blocks {
		add(b.Heading)
		for _, l := range b.Lines {
			add(l.Name, l.Text)
		}
		add(b.Head...)
		for _, row := range b.Rows {
			add(row...)
		}
	}
	for _, c := range a.Cautions {
		add(c.Text)
	}
	return all
}

// Of is the answer to a request. A section that does not exist is a fault without a field.
func Of(r Request) Answer {
	for _, p := range parts() {
		if p.name != r.Section {
			continue
		}
		w := &writer{request: r, section: p.section()}
		switch {
		case w.empty():
			w.Headline = "Nothing is stated yet. Type or choose what is known; what is missing is said beside its field."
		case w.confirmed():
			p.answer(w)
		}
		w.finish()
		return w.Answer
	}
	return Answer{Faults: []Fault{{Text: units.UnknownError{What: "section", Got: r.Section}.Error()}}}
}

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
