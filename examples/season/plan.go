package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield"
)

// print writes the whole plan, from the catch to what is left to eat.
func (s season) print(p *sheet) error {
	p.line("%s, %s", s.place, p.length(s.altitude))
	p.line("%s", s.about)
	smoker, jars := divide(s)
	s.printCatch(p, smoker, jars)
	packed, err := s.printStages(p, "For the jars", jars, yield.CanningReady)
	if err != nil {
		return err
	}
	fillets, err := s.printStages(p, "For the smoker", smoker, yield.SkinOnFillet)
	if err != nil {
		return err
	}
	jarCount := s.printJars(p, packed.Likely)
	if err := s.printSchedule(p, jarCount); err != nil {
		return err
	}
	if err := s.printCure(p, fillets.Likely); err != nil {
		return err
	}
	cold, err := s.printCooler(p)
	if err != nil {
		return err
	}
	hot, err := s.printCore(p)
	if err != nil {
		return err
	}
	if err := s.printFood(p, jarCount, fillets, cold, hot); err != nil {
		return err
	}
	p.close()
	return nil
}

func (s season) printCatch(p *sheet, smoker, jars []batch) {
	p.heading("The catch")
	var total units.Mass
	for _, f := range s.fish {
		total += f.mass
	}
	p.line("%d fish, %s whole, for %d households (%d people)", len(s.fish), p.mass(total), s.households, s.people)
	for _, way := range []struct {
		name    string
		batches []batch
	}{{"smoker", smoker}, {"jars", jars}} {
		for _, b := range way.batches {
			p.line("  to the %-6s  %2d %-14s %s", way.name, b.count, b.species, p.mass(b.whole))
		}
	}
}

// printStages leads every batch to a stage and returns what they make together.
func (s season) printStages(p *sheet, title string, batches []batch, to yield.Stage) (yield.Estimate, error) {
	p.heading(title)
	var all yield.Estimate
	for _, b := range batches {
		o, from, err := s.chain(b, to)
		if err != nil {
			return all, err
		}
		practice := cite.Citation{Where: from + " for " + b.species.String() + ", " + to.String(), Basis: cite.Practice}
		p.line("%s, by %s %s", b.species, from, p.from(practice))
		p.line("  %-16s %s", "whole", p.mass(o.Whole))
		for _, step := range o.Steps {
			p.line("  %-16s %-12s (%s goes to %s)", step.Step.Name, p.mass(step.Kept), p.mass(step.Left), step.Step.Rest)
		}
		all.Low, all.Likely, all.High = all.Low+o.Kept.Low, all.Likely+o.Kept.Likely, all.High+o.Kept.High
	}
	p.line("together %s %s; weigh your own and plan again with that", p.mass(all.Likely), to)
	return all, nil
}

// printJars returns how many jars there are, the last one partly full.
func (s season) printJars(p *sheet, packed units.Mass) int64 {
	p.heading("Jars")
	full := int64(packed / s.packPerJar)
	rest := packed % s.packPerJar
	p.line("%d %s jars of %s each", full, s.jar, p.mass(s.packPerJar))
	jars := full
	if rest > 0 {
		share := units.Float(rest, s.packPerJar)
		p.line("and %s over, %.0f %% of a jar: add it to the smoker's batch or freeze it, for a jar is packed full", p.mass(rest), 100*share)
	}
	load := int64(s.jarsPerLoad)
	loads := (jars + load - 1) / load
	p.line("%d canner loads of up to %d; the last has %d", loads, load, jars-(loads-1)*load)
	return jars
}

func (s season) printSchedule(p *sheet, jars int64) error {
	p.heading("The canner")
	found, err := process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: s.jar, Gauge: s.gauge, Altitude: s.altitude})
	if err != nil {
		return err
	}
	p.line("Published process for raw fish in %s jars, %s gauge, %s %s:", found.Jar, found.Gauge, found.Band, p.from(found.Citation))
	p.line("  vent      %s of steady steam %s", minutes(found.Vent), p.from(found.VentCitation))
	p.line("  pressure  %s, never less", p.pressure(found.Pressure))
	p.line("  time      %s without a break, from when the pressure stands", minutes(found.Process))
	p.line("  headspace %s %s", p.length(found.Headspace), p.from(found.HeadspaceCitation))
	if found.Unverified() {
		p.line("  Part of this was not seen in print: check it before canning.")
	}
	air, err := pressure.AirAt(s.altitude)
	if err != nil {
		return err
	}
	margin, err := found.Margin(air)
	if err != nil {
		return err
	}
	p.line("What the setting gives here: steam at %s, %s against %s %s. It explains the setting and changes nothing.",
		p.temperature(margin.Steam), p.change(margin.Above), p.temperature(margin.Reference), p.from(margin.Citation))
	loads := (jars + int64(s.jarsPerLoad) - 1) / int64(s.jarsPerLoad)
	p.line("At pressure alone the %d loads take %s.", loads, hours(time.Duration(loads)*found.Process))
	for _, c := range found.Cautions() {
		p.warn(c.Text, c.Citation)
	}
	return nil
}

func hours(d time.Duration) string {
	return fmt.Sprintf("%d h %02d min", d/time.Hour, d%time.Hour/time.Minute)
}

func (s season) printCure(p *sheet, fillets units.Mass) error {
	p.heading("The cure")
	cure, err := brine.DryCure(fillets, s.saltToFish, s.mix)
	if err != nil {
		return err
	}
	p.line("for %s of fillets, %s salt to fish by weight:", p.mass(cure.Fillet), cure.Ratio)
	scale := units.Gram
	if p.us {
		scale = units.Ounce / 4
	}
	p.line("  salt   %s", p.mass(units.CeilTo(cure.Salt, scale)))
	p.line("  sugar  %s", p.mass(units.CeilTo(cure.Sugar, scale)))
	volumes, err := cure.Volumes(s.salt, s.sugar)
	if err != nil {
		return err
	}
	p.line("without a scale: %s of %s %s and %s of %s %s",
		p.volume(units.CeilTo(volumes.Salt, units.Teaspoon/4)), s.salt.Name, p.from(s.salt.Citation),
		p.volume(units.CeilTo(volumes.Sugar, units.Teaspoon/4)), s.sugar.Name, p.from(s.sugar.Citation))
	for _, c := range volumes.Cautions {
		p.warn(c.Text, c.Citation)
	}
	return nil
}
