// Package answers is what a page or a form shows: for each section its fields, and from what was typed into them and
// dropped beside them the text of the answer, line by line, each with its sources. It reads no file and no clock and knows
// no screen, so that the page in a browser and a native program say the same.
package answers

import "example.org/lakelarder/units"

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
