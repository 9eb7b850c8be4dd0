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
	larder "example.org/lakelarder/yield/season"
)

// print writes the whole plan, from the catch to what is left to eat and the year, whose plan it returns.
func (s season) print(p *page) (larder.Plan, error) {
	var none larder.Plan
	p.Line("%s, %s", s.place, p.length(s.altitude))
	p.Line("%s", s.about)
	smoker, jars := divide(s)
	s.printCatch(p, smoker, jars)
	packed, err := s.printStages(p, "For the jars", jars, yield.CanningReady)
	if err != nil {
		return none, err
	}
	fillets, err := s.printStages(p, "For the smoker", smoker, yield.SkinOnFillet)
	if err != nil {
		return none, err
	}
	jarCount := s.printJars(p, packed.Likely)
	schedule, err := s.printSchedule(p, jarCount)
	if err != nil {
		return none, err
	}
	if err := s.printCure(p, fillets.Likely); err != nil {
		return none, err
	}
	if err := s.printVerdicts(p, schedule, jarCount, fillets); err != nil {
		return none, err
	}
	held, err := s.printYear(p, schedule, packed.Likely, fillets.Likely)
	if err != nil {
		return none, err
	}
	p.Close()
	return held, nil
}

func (s season) printCatch(p *page, smoker, jars []batch) {
	p.Heading("The catch")
	var total units.Mass
	for _, f := range s.fish {
		total += f.mass
	}
	p.Line("%d fish, %s whole, for %d households (%d people)", len(s.fish), p.mass(total), s.households, s.people)
	for _, way := range []struct {
		name    string
		batches []batch
	}{{"smoker", smoker}, {"jars", jars}} {
		for _, b := range way.batches {
			p.Line("  to the %-6s  %2d %-14s %s", way.name, b.count, b.species, p.mass(b.whole))
		}
	}
}

// printStages leads every batch to a stage and returns what they make together.
func (s season) printStages(p *page, title string, batches []batch, to yield.Stage) (yield.Estimate, error) {
	p.Heading(title)
	var all yield.Estimate
	for _, b := range batches {
		o, from, err := s.chain(b, to)
		if err != nil {
			return all, err
		}
		practice := cite.Citation{Where: from + " for " + b.species.String() + ", " + to.String(), Basis: cite.Practice}
		p.Line("%s, by %s %s", b.species, from, p.From(practice))
		p.Line("  %-16s %s", "whole", p.mass(o.Whole))
		for _, step := range o.Steps {
			p.Line("  %-16s %-12s (%s goes to %s)", step.Step.Name, p.mass(step.Kept), p.mass(step.Left), step.Step.Rest)
		}
		all.Low, all.Likely, all.High = all.Low+o.Kept.Low, all.Likely+o.Kept.Likely, all.High+o.Kept.High
	}
	p.Line("together %s %s; weigh your own and plan again with that", p.mass(all.Likely), to)
	return all, nil
}

// printJars returns how many jars are packed full; what does not fill one is none.
func (s season) printJars(p *page, packed units.Mass) int64 {
	p.Heading("Jars")
	full := int64(packed / s.packPerJar)
	rest := packed % s.packPerJar
	p.Line("%d %s jars of %s each", full, s.jar, p.mass(s.packPerJar))
	jars := full
	if rest > 0 {
		share := units.Float(rest, s.packPerJar)
		p.Line("and %s over, %.0f %% of a jar: add it to the smoker's batch or freeze it, for a jar is packed full", p.mass(rest), 100*share)
	}
	load := int64(s.jarsPerLoad)
	loads := (jars + load - 1) / load
	p.Line("%d canner loads of up to %d; the last has %d", loads, load, jars-(loads-1)*load)
	return jars
}

func (s season) printSchedule(p *page, jars int64) (process.Schedule, error) {
	p.Heading("The canner")
	found, err := process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: s.jar, Gauge: s.gauge, Altitude: s.altitude})
	if err != nil {
		return found, err
	}
	p.Line("Published process for raw fish in %s jars, %s gauge, %s %s:", found.Jar, found.Gauge, found.Band, p.From(found.Citation))
	p.Line("  vent      %s of steady steam %s", minutes(found.Vent), p.From(found.VentCitation))
	p.Line("  pressure  %s, never less", p.pressure(found.Pressure))
	p.Line("  time      %s without a break, from when the pressure stands", minutes(found.Process))
	p.Line("  headspace %s %s", p.length(found.Headspace), p.From(found.HeadspaceCitation))
	if found.Unverified() {
		p.Line("  Part of this was not seen in print: check it before canning.")
	}
	air, err := pressure.AirAt(s.altitude)
	if err != nil {
		return found, err
	}
	margin, err := found.Margin(air)
	if err != nil {
		return found, err
	}
	p.Line("What the setting gives here: steam at %s, %s against %s %s. It explains the setting and changes nothing.",
		p.Temperature(margin.Steam), p.Change(margin.Above, 1), p.Temperature(margin.Reference), p.From(margin.Citation))
	loads := (jars + int64(s.jarsPerLoad) - 1) / int64(s.jarsPerLoad)
	p.Line("At pressure alone the %d loads take %s.", loads, hours(time.Duration(loads)*found.Process))
	p.Warn(found.Cautions()...)
	return found, nil
}

// dose rounds up to what a kitchen scale shows.
func dose(p *page, m units.Mass) units.Mass {
	if p.US {
		return units.CeilTo(m, units.Ounce/4)
	}
	return units.CeilTo(m, units.Gram)
}

func hours(d time.Duration) string {
	return fmt.Sprintf("%d h %02d min", d/time.Hour, d%time.Hour/time.Minute)
}

func (s season) printCure(p *page, fillets units.Mass) error {
	p.Heading("The cure")
	cure, err := brine.DryCure(fillets, s.saltToFish, s.mix)
	if err != nil {
		return err
	}
	p.Line("for %s of fillets, %s salt to fish by weight:", p.mass(cure.Fillet), cure.Ratio)
	p.Line("  salt   %s", p.mass(dose(p, cure.Salt)))
	p.Line("  sugar  %s", p.mass(dose(p, cure.Sugar)))
	volumes, err := cure.Volumes(s.salt, s.sugar)
	if err != nil {
		return err
	}
	p.Line("without a scale: %s of %s %s and %s of %s %s",
		p.volume(units.CeilTo(volumes.Salt, units.Teaspoon/4)), s.salt.Name, p.From(s.salt.Citation),
		p.volume(units.CeilTo(volumes.Sugar, units.Teaspoon/4)), s.sugar.Name, p.From(s.sugar.Citation))
	p.Warn(volumes.Cautions...)
	return nil
}
