package main

import (
	"fmt"
	"io"
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// sheet prints the table in metric or US units and collects where its figures are from.
type sheet struct {
	w      io.Writer
	us     bool
	cited  []cite.Citation
	warned []string
}

func (s *sheet) heading(text string) {
	fmt.Fprintf(s.w, "\n%s\n%s\n", strings.ToUpper(text), strings.Repeat("-", len(text)))
}

func (s *sheet) line(format string, a ...any) { fmt.Fprintf(s.w, format+"\n", a...) }

// from is the mark of a citation: its number in the list at the end, and a word where it was not read.
func (s *sheet) from(c cite.Citation) string {
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

// warn keeps a caution for the end, each once.
func (s *sheet) warn(text string, c cite.Citation) {
	if !c.IsZero() {
		text += " " + s.from(c)
	}
	for _, known := range s.warned {
		if known == text {
			return
		}
	}
	s.warned = append(s.warned, text)
}

// mass is for a kitchen scale: 0.1 g, or hundredths of an ounce; a pound and more of fish goes in pounds and ounces.
func (s *sheet) mass(m units.Mass) string {
	switch {
	case s.us && m < units.Pound:
		return units.Text(m, units.Ounce, 2)
	case s.us:
		return units.Kitchen(m, 4, units.Pound, units.Ounce)
	case m < units.Kilogram:
		return units.Text(m, units.Gram, 1)
	}
	return units.Text(m, units.Kilogram, 3)
}

func (s *sheet) length(l units.Length) string {
	if s.us {
		return units.Kitchen(l, 8, units.Inch)
	}
	return units.Text(l, units.Millimetre, 0)
}

func (s *sheet) volume(v units.Volume) string {
	if s.us {
		return units.Kitchen(v, 4, units.Quart, units.Cup, units.Tablespoon, units.Teaspoon)
	}
	return units.Text(v, units.Millilitre, 0)
}

func (s *sheet) close() {
	s.heading("Cautions")
	for _, text := range s.warned {
		s.line("- %s", text)
	}
	s.heading("Where the figures are from")
	for i, c := range s.cited {
		s.line("[%d] %s", i+1, c)
	}
}
