package main

import (
	"fmt"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield"
)

var (
	balance   = cite.Citation{Where: "mass balance: water, salt, protein, fat and ash only move", Basis: cite.Computed}
	uncertain = cite.Caution{
		ID: "massbalance.not-measured", Deciding: true,
		Text: "These figures are worked out from one row of a table and from scales. They decide nothing: keep " +
			"smoked fish at or below 38 °F (3.3 °C), or frozen.",
		Citation: cite.Citation{Where: "a computed salt content is an estimate", Basis: cite.Practice},
	}
	// What makes the water phase salt come out too high: all of it on the side that could hurt.
	flattered = cite.Caution{
		ID: "massbalance.may-be-lower", Deciding: true,
		Text: "The water phase salt can be lower than shown. Salt rubbed on is not salt taken up, salt that drips " +
			"off is counted as kept, " +
			"and the thickest part holds less than the mean.",
		Citation: uncertain.Citation,
	}
)

// print is the answer, then the fillet in columns.
func (w walk) print(s *sheet.Sheet) {
	limit := brine.DefaultSaltLimit()
	wps, _ := w.final.WaterPhaseSalt()
	s.Line("RESULT: %s water phase salt by estimate, and %s of the raw weight left", sheet.Down(s, wps),
		sheet.Text(s, ratio(total(w.final), total(w.raw))))
	if wps < limit.Least {
		s.Do("Eat it fresh or freeze it. It is BELOW the strictest published limit, %s%s, and not cured for keeping.",
			sheet.Up(s, limit.Least), s.From(limit.Citation))
	} else {
		s.Do("Have the water phase salt measured. By this estimate it is not below the strictest published limit, "+
			"%s%s; only a laboratory can say so.",
			sheet.Up(s, limit.Least), s.From(limit.Citation))
	}
	s.Line("%s. %s", w.Title, w.About)
	w.printTarget(s, limit)
	if w.Laboratory != nil {
		w.printTied(s)
	}
	w.printServing(s)
	s.Warn(uncertain, flattered)
	s.Warn(w.row.Cautions...)
	s.Warn(w.tied.Cautions...)
	s.Cautions()
	w.printSteps(s)
	s.Close()
}

func (w walk) printTarget(s *sheet.Sheet, limit brine.SaltLimit) {
	after, _ := w.raw.After(w.target)
	s.Heading("What the target takes")
	s.Line("%s moisture and %s water phase salt: take up %s of salt (%s of raw), lose %s of water, to %s (%s of raw)%s",
		sheet.Text(s, w.Target.Moisture),
		sheet.Text(s, w.Target.WaterPhaseSalt), sheet.Up(s, w.target.Gained.Salt),
		sheet.Up(s, ratio(w.target.Gained.Salt, total(w.raw))),
		sheet.Text(s, w.target.Lost.Water), sheet.Text(s, total(after)),
		sheet.Text(s, ratio(total(after), total(w.raw))), s.From(balance))
	if w.Target.WaterPhaseSalt < limit.Least {
		s.Line("That TARGET is below the limit, %s.", sheet.Up(s, limit.Least))
	}
}

func (w walk) printTied(s *sheet.Sheet) {
	t, l := w.tied, w.Laboratory
	s.Heading("What an analysis says of the yield")
	s.Line("Of the finished fillet: water %s, protein %s, fat %s, ash %s", sheet.Text(s, l.Water),
		sheet.Text(s, l.Protein), sheet.Text(s, l.Fat), sheet.Text(s, l.Ash))
	s.Line("Yield by protein %s, by dry matter %s, by fat %s, by the scales %s%s", sheet.Text(s, t.Protein),
		sheet.Text(s, t.DryMatter), sheet.Text(s, t.Fat),
		sheet.Text(s, ratio(total(w.final), total(w.raw))), s.From(t.Citation))
	s.Line("Largest above smallest: %s. Salt taken up counts as dry matter and lowers that one, drip raises the others.", sheet.Text(s, t.Difference))
}

func (w walk) printServing(s *sheet.Sheet) {
	e := w.eaten
	s.Heading("What a serving holds")
	s.Line("%s of the smoked fillet: %s, protein %s, fat %s, salt %s; %s servings in the fillet",
		sheet.Text(s, w.Serving), units.Text(e.energy, units.Kilocalorie, 0), sheet.Text(s, e.part.Protein),
		sheet.Text(s, e.part.Fat), sheet.Up(s, e.part.Salt), units.In(units.FloorTo(ratio(total(w.final), w.Serving),
			units.One/10), units.One, 1))
	s.Line("Energy by the %s, the set for this food; sugar of the cure is not counted.", e.factors)
	if e.omega3 > 0 {
		samples := "whose number of samples is not known"
		if w.row.OmegaSamples > 0 {
			samples = fmt.Sprintf("of %d samples", w.row.OmegaSamples)
		}
		s.Line("EPA and DHA %s, if they stay with the fat, by a row %s%s", sheet.Text(s, e.omega3), samples,
			s.From(w.row.Citation))
	}
}

// printSteps is the detail: the raw fillet, every step, and where every gram went; in one system of units a table.
func (w walk) printSteps(s *sheet.Sheet) {
	p := w.row.Proximate
	s.Heading("Step by step")
	s.Line("Raw: %s, %s%s. Printed: water %s, protein %s, fat %s, ash %s, a residual of %s; sodium %v counted as salt.",
		sheet.Text(s, w.Fillet.Mass), w.row.Name,
		s.From(w.row.Citation), sheet.Text(s, p.Water), sheet.Text(s, p.Protein), sheet.Text(s, p.Fat), sheet.Text(s,
			p.Ash), sheet.Text(s, p.Residual()), w.row.Sodium.Value)
	for _, system := range []units.System{units.US, units.Metric} {
		if s.System == units.Both || s.System == system {
			w.columns(&sheet.Sheet{W: s.W, System: system})
		}
	}
	rows := [][]string{{w.Fillet.Name, "moisture", "salt in all", "water phase", "of raw"}, w.shares(s, "raw", w.raw)}
	for _, st := range w.stages {
		rows = append(rows, w.shares(s, st.name, st.after))
	}
	s.Table(rows...)
	s.Line("Each figure is rounded by itself; steps multiply, losses never add.")
	with, _ := w.raw.Plus(w.gained)
	out, _ := w.final.Plus(w.lost)
	left := "nothing"
	if over := total(with) - total(out); over != 0 {
		left = sheet.Text(s, over)
	}
	s.Line("Raw and taken up, less the smoked fillet and what is gone: %s left over, to the last sixteenth of a "+
		"nanogram.", left)
}

// columns is the five components after every step, and where they went.
func (w walk) columns(s *sheet.Sheet) {
	rows := [][]string{{w.Fillet.Name, "water", "salt", "protein", "fat", "ash", "in all"}, parts(s, "raw", w.raw)}
	for _, st := range w.stages {
		rows = append(rows, parts(s, st.name, st.after))
	}
	s.Table(append(rows, parts(s, "taken up", w.gained), parts(s, "gone", w.lost))...)
}

func parts(s *sheet.Sheet, name string, m yield.Makeup) []string {
	row := []string{name}
	for _, part := range []units.Mass{m.Water, m.Salt, m.Protein, m.Fat, m.Ash, total(m)} {
		row = append(row, sheet.Text(s, part))
	}
	return row
}

func (w walk) shares(s *sheet.Sheet, name string, m yield.Makeup) []string {
	moisture, _ := m.Moisture()
	wps, _ := m.WaterPhaseSalt()
	return []string{name, sheet.Text(s, moisture), sheet.Text(s, ratio(m.Salt, total(m))), sheet.Down(s, wps),
		sheet.Text(s, ratio(total(m), total(w.raw)))}
}

// ratio is part/whole of masses that were checked when they were worked out.
func ratio(part, whole units.Mass) units.Ratio {
	r, _ := units.RatioOf(part, whole)
	return r
}

// total is of a makeup that was checked when it was worked out.
func total(m yield.Makeup) units.Mass {
	t, _ := m.Total()
	return t
}
