package brine

import "example.org/lakelarder/units/cite"

// Caution is a warning that belongs to a result: show it with the figures. Citation says where a figure in the
// text is from, or that the warning is practice.
type Caution struct {
	Text     string
	Citation cite.Citation
}

// String is the text and, in parentheses, its citation.
func (c Caution) String() string { return c.Text + " (" + c.Citation.String() + ")" }
