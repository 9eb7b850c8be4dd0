package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield"
	"example.org/lakelarder/yield/coldchain"
)

// The longest pause between two readings across which a straight line is believed.
const (
	coreGap   = 10 * time.Minute
	coolerGap = 30 * time.Minute
)

// printVerdicts judges the three records and says what is left to eat by them.
func (s season) printVerdicts(p *page, schedule process.Schedule, jars int64, fillets yield.Estimate) error {
	cold, err := s.printCooler(p)
	if err != nil {
		return err
	}
	hot, err := s.printCore(p)
	if err != nil {
		return err
	}
	canned, err := s.printCanner(p, schedule)
	if err != nil {
		return err
	}
	return s.printFood(p, jars, fillets, cold, hot, canned)
}

// printCore judges the smoker's record by the rule that the households chose, and by the others. It
// reports whether the chosen rule was met.
func (s season) printCore(p *page) (met bool, err error) {
	p.Heading("Was the smoked fish hot enough?")
	var probes []series.Series[units.Temperature]
	for _, c := range s.core {
		hottest, _ := c.Series.Max()
		p.Line("%-16s %3d readings over %s, at most %s", c.Name, c.Series.Len(), hours(c.Series.Span()), p.Temperature(hottest.Value))
		probes = append(probes, c.Series)
	}
	limits := append([]smoke.CoreLimit{s.coreLimit}, smoke.CoreLimits()...)
	for i, limit := range limits {
		if i > 0 && limit.ID == s.coreLimit.ID {
			continue
		}
		hold, err := smoke.CheckHold(limit, coreGap, probes...)
		if err != nil {
			return false, err
		}
		if i == 0 {
			met = hold.Verdict == smoke.Met
			p.Line("VERDICT by the rule chosen, %s for %s (%s) %s: %s", p.Temperature(limit.AtLeast), minutes(limit.Hold), limit.ID, p.From(limit.Citation), hold.Verdict)
			p.Line("  coldest probe at or above it for %s without a break; owed %s", minutes(hold.Held), minutes(hold.Owed))
			for _, f := range hold.Findings {
				p.Line("  %s", f)
			}
			p.Warn(hold.Cautions()...)
			p.Line("the other published rules:")
			continue
		}
		use := "commercial"
		if limit.Home {
			use = "home"
		}
		p.Line("  %-14s %s for %s, %-10s %-8s %s", limit.ID, p.Temperature(limit.AtLeast), minutes(limit.Hold), use, hold.Verdict, p.From(limit.Citation))
	}
	return met, nil
}

// printCooler judges the record from the dock to the kitchen by every published limit for raw fish, and
// reports whether it kept within all of them.
func (s season) printCooler(p *page) (within bool, err error) {
	p.Heading("Was the catch cold enough?")
	report, err := coldchain.Audit(s.cooler, coldchain.Terms{MaxGap: coolerGap, Product: coldchain.RawFish})
	if err != nil {
		return false, err
	}
	p.Line("VERDICT: %s, over %s; warmest %s after %s", report.Verdict, hours(report.Span), p.Temperature(report.Highest.Value), hours(report.Highest.At))
	for _, h := range report.Hours {
		p.Line("  above %-9s %-11s %s", p.Temperature(h.Above), hours(h.Time), p.From(h.Citation))
	}
	p.Line("what each rule allows, and how much of it is used:")
	for _, f := range report.Findings {
		name := f.Rule.String()
		if f.Hazard != 0 {
			name += ", " + f.Hazard.String()
		}
		p.Line("  %-70s %-9s %6s %s", name, f.Verdict, units.Text(f.Used, units.Percent, 0), p.FromEach(f.Citations()))
	}
	for _, text := range report.Next {
		p.Line("now: %s", text)
	}
	p.Warn(report.Cautions...)
	return report.Verdict == coldchain.Within, nil
}

// printFood says what is left to eat when all is in jars and smoked. Fish that no record vouches for is
// not counted.
func (s season) printFood(p *page, jars int64, fillets yield.Estimate, cold, hot, canned bool) error {
	p.Heading("What is left to eat")
	if !cold {
		p.Line("Nothing is counted: the record does not show that the catch was cold enough. See what to do now, above.")
		return nil
	}
	var together units.Mass
	if canned {
		packed, err := units.Times(s.packPerJar, jars)
		if err != nil {
			return err
		}
		eaten, err := yield.Servings(packed, s.year.jars.Served, s.serving)
		if err != nil {
			return fmt.Errorf("year.jars.served: %w", err)
		}
		together = eaten.Drained
		p.Line("canned   %d jars packed with %s of raw fish, %s of it eaten: %s, if every load meets its process", jars, p.mass(packed), s.year.jars.Served, p.mass(together))
	} else {
		p.Line("canned   not counted: the recorded run does not show that the process was met. See what to do now, above")
	}
	if hot {
		low, err := s.printSmoked(p, fillets)
		if err != nil {
			return err
		}
		together += low
	} else {
		p.Line("smoked   not counted: the record does not show that the core was hot enough for long enough")
	}
	p.Line("together, by the lower figures, about %s: %d servings of %s, %d for each of %d people",
		p.mass(together), together/s.serving, p.mass(s.serving), int64(together/s.serving)/int64(s.people), s.people)
	return nil
}

// printSmoked returns the least that the smoker leaves.
func (s season) printSmoked(p *page, fillets yield.Estimate) (units.Mass, error) {
	lost := cite.Citation{Where: "the households' own weighings before and after the smoker", Basis: cite.Practice}
	low, err := yield.AfterLoss(fillets.Low, s.lossHigh)
	if err != nil {
		return 0, err
	}
	high, err := yield.AfterLoss(fillets.High, s.lossLow)
	if err != nil {
		return 0, err
	}
	p.Line("smoked   %s to %s, after a loss of %s to %s %s, if it was cooled at once\n         to %s or below: no record here shows that", p.mass(low), p.mass(high), s.lossLow, s.lossHigh, p.From(lost),
		p.Temperature(units.Fahrenheit(38)))
	return low, nil
}
