package main

import (
	"fmt"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield"
)

var (
	balance   = cite.Citation{Where: "mass balance: water, salt, protein, fat and ash only move", Basis: cite.Computed}
	uncertain = cite.Caution{
		Text:     "worked out from one row of a table and from scales, not measured: it decides nothing. Keep smoked fish at or below 38 °F, or frozen, whatever the figures say",
		Citation: cite.Citation{Where: "a computed salt content is an estimate", Basis: cite.Practice},
	}
	// What makes the water phase salt come out too high: all of it on the side that could hurt.
	flattered = cite.Caution{
		Text:     "the water phase salt can be lower than printed: salt rubbed on is not salt taken up, salt that drips off is counted as kept, and the thickest part of a fillet holds less than its mean",
		Citation: uncertain.Citation,
	}
)

func (w walk) print(s *page) {
	s.Line("%s", w.Title)
	s.Line("%s", w.Note)
	w.printRaw(s)
	w.printSteps(s)
	w.printByHand(s)
	w.printWhere(s)
	w.printTarget(s)
	if w.analysed() {
		w.printTied(s)
	}
	w.printServing(s)
	s.Warn(uncertain, flattered)
	s.Close()
}

func (w walk) printRaw(s *page) {
	p := w.row.Proximate
	s.Heading("The raw fillet")
	s.Line("%s, %s: %s %s", w.Fillet.Name, s.mass(w.Fillet.Mass), w.row.Name, s.From(w.row.Citation))
	s.Line("printed: water %s, protein %s, fat %s, ash %s, together %s: a residual of %s", percent(p.Water, 2), percent(p.Protein, 2), percent(p.Fat, 2), percent(p.Ash, 2),
		percent(units.One-p.Residual(), 2), percent(p.Residual(), 2))
	s.Line("each divided by %s; sodium %s counted as salt, ×2.54212, and taken out of the ash:", percent(units.One-p.Residual(), 2), percent(w.row.Sodium.Value, 3))
	s.columns("")
	s.parts(w.Fillet.Name, w.raw)
	s.Warn(w.row.Cautions...)
}

func (w walk) printSteps(s *page) {
	s.Heading("Step by step")
	s.columns("")
	s.parts("raw", w.raw)
	for _, st := range w.stages {
		s.parts(st.name, st.after)
	}
	s.Line("")
	s.Line("%-22s %12s %12s %12s %12s", "", "moisture", "salt in all", "water phase", "of raw")
	w.shares(s, "raw", w.raw)
	for _, st := range w.stages {
		w.shares(s, st.name, st.after)
	}
	s.Line("each figure is rounded by itself; salt/(salt + water) is the water phase salt; steps multiply, losses never add %s", s.From(balance))
}

func (w walk) shares(s *page, name string, m yield.Makeup) {
	moisture, _ := m.Moisture()
	wps, _ := m.WaterPhaseSalt()
	s.Line("%-22s %12s %12s %12s %12s", name, percent(moisture, 3), percent(ratio(m.Salt, total(m)), 3), saltiness(wps, 3), percent(ratio(total(m), total(w.raw)), 3))
}

// ratio is part/whole of masses that were checked when they were worked out.
func ratio(part, whole units.Mass) units.Ratio {
	r, _ := units.RatioOf(part, whole)
	return r
}

func (w walk) printByHand(s *page) {
	s.Heading("By hand")
	for _, st := range w.stages {
		x := st.exchange
		s.Line("%s: %s + %s salt − %s = %s lost, of it %s protein and %s fat; the rest is water", st.name, s.mass(total(st.before)), s.mass(x.Gained.Salt),
			s.mass(total(st.after)), s.mass(total(x.Lost)), s.mass(x.Lost.Protein), s.mass(x.Lost.Fat))
		s.Line("  water %s − %s = %s", s.mass(st.before.Water), s.mass(x.Lost.Water), s.mass(st.after.Water))
		wps, _ := st.after.WaterPhaseSalt()
		s.Line("  water phase salt %s/(%s + %s) = %s", s.mass(st.after.Salt), s.mass(st.after.Salt), s.mass(st.after.Water), saltiness(wps, 3))
	}
}

func (w walk) printWhere(s *page) {
	s.Heading("Where every gram went")
	s.columns("")
	s.parts("raw", w.raw)
	s.parts("+ taken up", w.gained)
	s.parts("− smoked fillet", w.final)
	s.parts("− gone", w.lost)
	with, _ := w.raw.Plus(w.gained)
	out, _ := w.final.Plus(w.lost)
	s.Line("left over: %v, to the last sixteenth of a nanogram", total(with)-total(out))
}

func (w walk) printTarget(s *page) {
	limit := brine.DefaultSaltLimit()
	after, _ := w.raw.After(w.target)
	wps, _ := w.final.WaterPhaseSalt()
	s.Heading("What the target takes")
	s.Line("%v moisture and %v water phase salt: take up %s of salt (%s of raw), lose %s of water, to %s (%s of raw)", w.Target.Moisture, w.Target.WaterPhaseSalt,
		s.mass(w.target.Gained.Salt), percent(ratio(w.target.Gained.Salt, total(w.raw)), 4), s.mass(w.target.Lost.Water), s.mass(total(after)), percent(ratio(total(after), total(w.raw)), 2))
	if w.Target.WaterPhaseSalt < limit.Least {
		s.Line("that TARGET is below the limit, %s %s", percent(limit.Least, 1), s.From(limit.Citation))
	}
	s.Line("this fillet: %s; the strictest published least water phase salt is %s %s", saltiness(wps, 2), percent(limit.Least, 1), s.From(limit.Citation))
	if wps < limit.Least {
		s.Line("BELOW that limit: it is not cured for keeping; eat it fresh or freeze it")
	} else {
		s.Line("by this estimate not below that limit; only a laboratory can say so")
	}
}

func (w walk) printTied(s *page) {
	t := w.tied
	scales := ratio(total(w.final), total(w.raw))
	s.Heading("What an analysis says of the yield")
	s.Line("of the finished fillet: water %s, protein %s, fat %s, ash %s", percent(w.Laboratory.Water, 1), percent(w.Laboratory.Protein, 1), percent(w.Laboratory.Fat, 1), percent(w.Laboratory.Ash, 1))
	s.Line("yield by protein %s, by dry matter %s, by fat %s, by the scales %s %s", percent(t.Protein, 1), percent(t.DryMatter, 1), percent(t.Fat, 1), percent(scales, 1), s.From(t.Citation))
	s.Line("largest above smallest: %s; salt taken up counts as dry matter and lowers that one, drip raises the others", percent(t.Difference, 1))
	s.Warn(t.Cautions...)
}

func (w walk) printServing(s *page) {
	e := w.eaten
	s.Heading("What a serving holds")
	s.Line("%s of the smoked fillet: %s, protein %s, fat %s, salt %s", s.mass(w.Serving), units.Text(e.energy, units.Kilocalorie, 0), units.Text(e.part.Protein, units.Gram, 1), units.Text(e.part.Fat, units.Gram, 1),
		units.Text(e.part.Salt, units.Gram, 2))
	s.Line("energy by the %s, the set for this food; sugar of the cure is not counted", e.factors)
	if e.omega3 > 0 {
		samples := "whose number of samples is not known"
		if w.row.OmegaSamples > 0 {
			samples = fmt.Sprintf("of %d samples", w.row.OmegaSamples)
		}
		s.Line("EPA and DHA %s, if they stay with the fat, by a row %s", units.Text(e.omega3, units.Gram, 2), samples)
	}
	s.Line("servings in the fillet: %v", units.In(units.FloorTo(ratio(total(w.final), w.Serving), units.One/10), units.One, 1))
}
