// Package sheet prints what every example prints alike: the verdict first, then why and what to do, every caution once
// with the deciding ones first, and one line that says how many sources there are. It wraps at Width columns.
package sheet

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// Width is the most columns of a line.
const Width = 100

// Sheet writes to W and collects cautions and citations until Close. Every quantity is printed in the System; Sources
// lists the sources at the end.
type Sheet struct {
	W       io.Writer
	System  units.System
	Sources bool

	cited   []cite.Citation
	warned  []cite.Caution
	printed bool // the cautions
}

// Verdict prints the first line: the verdict in capitals and, behind it, of what; empty for no more.
func (s *Sheet) Verdict(v verdict.Verdict, of string) {
	text := "VERDICT: " + strings.ToUpper(v.String())
	if of != "" {
		text += ": " + of
	}
	s.Line("%s", text)
}

// Heading starts a section.
func (s *Sheet) Heading(text string) { s.Line("\n%s", strings.ToUpper(text)) }

// Line prints one line, wrapped with two spaces before what follows. Spaces before it stand before every part.
func (s *Sheet) Line(format string, a ...any) {
	for _, line := range strings.Split(fmt.Sprintf(format, a...), "\n") {
		indent := len(line) - len(strings.TrimLeft(line, " "))
		fmt.Fprint(s.W, Wrap(line, indent+2))
	}
}

// Item prints one thing of a list.
func (s *Sheet) Item(format string, a ...any) {
	fmt.Fprint(s.W, Wrap("- "+fmt.Sprintf(format, a...), 2))
}

// Wrap breaks a line at spaces so that no part has more than Width columns, what follows the first part behind an
// indent. A word that is longer stays whole.
func Wrap(line string, indent int) string {
	var b strings.Builder
	letters := []rune(line)
	for first := true; ; first = false {
		if !first {
			b.WriteString(strings.Repeat(" ", indent))
		}
		room := Width
		if !first {
			room -= indent
		}
		cut := breakAt(letters, room, first)
		b.WriteString(strings.TrimRight(string(letters[:cut]), " ") + "\n")
		letters = []rune(strings.TrimLeft(string(letters[cut:]), " "))
		if len(letters) == 0 {
			return b.String()
		}
	}
}

// breakAt is where a line is broken: behind the last word that has room, or the first word.
func breakAt(letters []rune, room int, first bool) int {
	if len(letters) <= room {
		return len(letters)
	}
	start := 0
	for first && start < len(letters) && letters[start] == ' ' {
		start++
	}
	for at := room; at > start; at-- {
		if letters[at] == ' ' {
			return at
		}
	}
	for at := max(room, start); at < len(letters); at++ {
		if letters[at] == ' ' {
			return at
		}
	}
	return len(letters)
}

// Text prints a quantity in the system of a sheet, to the nearest digit.
func Text[T units.Measure](s *Sheet, v T) string {
	return units.AmountOf(v).Text(s.System, units.Nearest)
}

// Down prints a quantity rounded down: what is available, or held.
func Down[T units.Measure](s *Sheet, v T) string { return units.AmountOf(v).Text(s.System, units.Down) }

// Up prints a quantity rounded up: what is required, or owed.
func Up[T units.Measure](s *Sheet, v T) string { return units.AmountOf(v).Text(s.System, units.Up) }

// Do prints one thing to do, below the verdict and why it is so.
func (s *Sheet) Do(format string, a ...any) {
	fmt.Fprint(s.W, Wrap("Do: "+fmt.Sprintf(format, a...), 2))
}

// Findings prints why a report says what it says, worst first, right below the verdict. When says on another clock
// when a finding was; nil leaves the minutes of the record. Done is what to do about a rule's findings, empty for
// nothing; nil for none at all.
func (s *Sheet) Findings(r verdict.Report, when func(series.Stretch) string, done func(verdict.Rule) string) {
	if len(r.Findings) == 0 {
		s.Line("Why: nothing was found against it.")
	}
	for _, f := range r.Findings {
		text := f.Text(s.System)
		if when != nil && f.When.Given {
			text += " (" + when(f.When.Value) + ")"
		}
		if f.Verdict.Passes() {
			text += "; a remark"
		} else {
			text += "; " + f.Verdict.String()
		}
		s.Line("Why: %s%s", text, s.From(f.Citation))
		if done == nil {
			continue
		}
		if do := done(f.Rule); do != "" {
			s.Line("    %s", do)
		}
	}
	s.Warn(r.Cautions...)
}

// From is the mark of a citation, with the space before it: its number in the list of sources, and a word where it was
// not read; empty for none.
func (s *Sheet) From(c cite.Citation) string {
	if c.IsZero() {
		return ""
	}
	n := slices.Index(s.cited, c)
	if n < 0 {
		n = len(s.cited)
		s.cited = append(s.cited, c)
	}
	if c.Basis == cite.Read {
		return fmt.Sprintf(" [%d]", n+1)
	}
	return fmt.Sprintf(" [%d %s]", n+1, c.Basis)
}

// FromEach is the marks of several citations.
func (s *Sheet) FromEach(all []cite.Citation) string {
	var marks string
	for _, c := range all {
		marks += s.From(c)
	}
	return marks
}

// Warn keeps cautions for the end, each once by its ID and text.
func (s *Sheet) Warn(all ...cite.Caution) {
	for _, c := range all {
		same := func(seen cite.Caution) bool { return seen.ID == c.ID && seen.Text == c.Text }
		if !slices.ContainsFunc(s.warned, same) {
			s.warned = append(s.warned, c)
		}
	}
}

// Close prints the cautions, unless they are, and the line of the sources, or their list.
func (s *Sheet) Close() {
	s.Cautions()
	s.closeSources()
}

// Cautions prints the cautions that Warn was given, the deciding ones first. What comes after them is detail.
func (s *Sheet) Cautions() {
	if s.printed {
		return
	}
	s.printed = true
	if len(s.warned) > 0 {
		s.Heading("Cautions")
	}
	for _, deciding := range []bool{true, false} {
		for _, c := range s.warned {
			if c.Deciding == deciding {
				id := ""
				if c.ID != "" {
					id = fmt.Sprintf(" (%s)", c.ID)
				}
				s.Item("%s%s%s", c.Text, id, s.From(c.Citation))
			}
		}
	}
}

func (s *Sheet) closeSources() {
	if len(s.cited) == 0 {
		return
	}
	documents := map[cite.Source]bool{}
	for _, c := range s.cited {
		if c.Source != 0 { // practice and computation may have no document
			documents[c.Source] = true
		}
	}
	if !s.Sources {
		s.Line("\nSources: %s, %s in all; -sources lists them.", counted(len(documents), "document"),
			counted(len(s.cited), "place"))
		return
	}
	s.Heading("Sources")
	for i, c := range s.cited {
		s.Line("[%d] %s", i+1, c)
	}
}

func counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
