// Package sheet prints what every example prints alike: headings, cautions each once, and at the end where
// the figures are from, numbered, with a word where a figure was not read.
package sheet

import (
	"fmt"
	"io"
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Sheet writes to W and collects cautions and citations until Close. US chooses the units of whoever embeds it.
type Sheet struct {
	W  io.Writer
	US bool

	cited  []cite.Citation
	warned []string
}

// Heading starts a section.
func (s *Sheet) Heading(text string) {
	s.Line("\n%s\n%s", strings.ToUpper(text), strings.Repeat("-", len(text)))
}

// Line prints one line.
func (s *Sheet) Line(format string, a ...any) { fmt.Fprintf(s.W, format+"\n", a...) }

// Scale is that of the temperatures printed.
func (s *Sheet) Scale() units.Scale {
	if s.US {
		return units.FahrenheitScale
	}
	return units.CelsiusScale
}

// Temperature prints to the tenth.
func (s *Sheet) Temperature(t units.Temperature) string { return t.Text(s.Scale(), 1) }

// Change prints a difference of temperatures to so many places.
func (s *Sheet) Change(c units.TemperatureChange, places int32) string {
	if s.US {
		return units.Text(c, units.FahrenheitDegrees, places)
	}
	return units.Text(c, units.Kelvins, places)
}

// From is the mark of a citation: its number in the list at the end, and a word where it was not read.
func (s *Sheet) From(c cite.Citation) string {
	n := 0
	for i, known := range s.cited {
		if known == c {
			n = i + 1
		}
	}
	if n == 0 {
		s.cited = append(s.cited, c)
		n = len(s.cited)
	}
	if c.Basis == cite.Read {
		return fmt.Sprintf("[%d]", n)
	}
	return fmt.Sprintf("[%d %s]", n, c.Basis)
}

// FromEach is the marks of several citations.
func (s *Sheet) FromEach(all []cite.Citation) string {
	marks := make([]string, len(all))
	for i, c := range all {
		marks[i] = s.From(c)
	}
	return strings.Join(marks, " ")
}

// Warn keeps cautions for the end, each once.
func (s *Sheet) Warn(all ...cite.Caution) {
	for _, c := range all {
		text := c.Text
		if !c.Citation.IsZero() {
			text += " " + s.From(c.Citation)
		}
		known := false
		for _, w := range s.warned {
			known = known || w == text
		}
		if !known {
			s.warned = append(s.warned, text)
		}
	}
}

// Close prints the cautions and the list of citations.
func (s *Sheet) Close() {
	s.Heading("Cautions")
	for _, text := range s.warned {
		s.Line("- %s", text)
	}
	s.Heading("Where the figures are from")
	for i, c := range s.cited {
		s.Line("[%d] %s", i+1, c)
	}
}
