package main

import (
	"fmt"
	"io"
	"strings"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// sheet prints in metric or US units and collects where the figures are from.
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

// warn keeps cautions for the end, each once.
func (s *sheet) warn(all []cite.Caution) {
	for _, c := range all {
		text := c.Text
		if !c.Citation.IsZero() {
			text += " " + s.from(c.Citation)
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

func (s *sheet) length(l units.Length) string {
	switch {
	case s.us && l < 10*units.Foot:
		return units.Kitchen(l, 16, units.Inch)
	case s.us:
		return units.Text(l, units.Foot, 0)
	case l < units.Metre:
		return units.Text(l, units.Millimetre, 0)
	}
	return units.Text(l, units.Metre, 0)
}

func (s *sheet) mass(m units.Mass) string {
	if s.us {
		return units.Text(m, units.Ounce, 1)
	}
	return units.Text(m, units.Gram, 0)
}

func (s *sheet) pressure(p units.Pressure) string {
	if s.us {
		return units.Text(p, units.PSI, 1)
	}
	return units.Text(p, units.PSI, 1) + " (" + units.Text(p, units.Kilopascal, 0) + ")"
}

// hours prints a duration in hours and whole minutes, cut: what is held is never rounded up.
func hours(d time.Duration) string {
	if d < time.Hour {
		return fmt.Sprintf("%d min", d/time.Minute)
	}
	return fmt.Sprintf("%d h %02d min", d/time.Hour, d%time.Hour/time.Minute)
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
