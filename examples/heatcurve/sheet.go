package main

import (
	"fmt"
	"io"
	"strings"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// sheet prints in metric or US units and collects where its figures are from.
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

// warn keeps a caution for the end.
func (s *sheet) warn(text string, c cite.Citation) {
	if !c.IsZero() {
		text += " " + s.from(c)
	}
	s.warned = append(s.warned, text)
}

func (s *sheet) scale() units.Scale {
	if s.us {
		return units.FahrenheitScale
	}
	return units.CelsiusScale
}

func (s *sheet) temperature(t units.Temperature) string { return t.Text(s.scale(), 1) }

func (s *sheet) altitude(l units.Length) string {
	if s.us {
		return units.Text(l, units.Foot, 0)
	}
	return units.Text(l, units.Metre, 0)
}

func minutes(d time.Duration) string { return fmt.Sprintf("%.0f min", d.Minutes()) }

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
