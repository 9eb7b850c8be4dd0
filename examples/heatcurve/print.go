package main

import (
	"time"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// print writes the process, the curve, its lethality and the table of changes.
func (s study) print(p *page) error {
	p.Line("%s, %s", s.jar.place, p.altitude(s.jar.altitude))
	p.Line("%s", s.jar.about)
	p.Heading("The process")
	p.Line("Published for raw fish in %s jars, %s gauge, %s %s: %s psi for %s.", s.schedule.Jar, s.schedule.Gauge, s.schedule.Band,
		p.From(s.schedule.Citation), units.In(s.schedule.Pressure, units.PSI, 0), minutes(s.schedule.Process))
	p.Line("In standard air that is steam at %s %s. The rest is arithmetic on a solid cylinder and explains the process; none of it shortens one.",
		p.Temperature(s.run.Steam), p.From(pressure.SteamSource()))
	p.Line("Diffusivity of the fish %s to %s mm²/s %s; the curve takes the middle.",
		squares(s.food.DiffusivityLow), squares(s.food.DiffusivityHigh), p.From(s.food.Citation))
	if err := s.printCurve(p); err != nil {
		return err
	}
	s.printLethality(p)
	s.printChanges(p)
	if err := s.printFormula(p); err != nil {
		return err
	}
	p.Warn(s.base.Cautions...)
	p.Warn(s.schedule.Cautions()...)
	p.Close()
	return nil
}

func squares(d units.Diffusivity) string {
	return units.In(d, units.SquareMillimetrePerSecond, 3).StringFixed(3)
}

// sample is the steam, the centre and F0 so far at one time.
type sample struct {
	at            time.Duration
	steam, centre units.Temperature
	f             time.Duration
}

// samples are taken at even steps until the centre has cooled too far to count, and at steam off.
func (s study) samples(step time.Duration) ([]sample, error) {
	running, err := lethality.Start(s.base.Reference)
	if err != nil {
		return nil, err
	}
	var out []sample
	last, _ := s.base.Medium.Last()
	next := time.Duration(0)
	for i := 0; i < s.base.Centre.Len(); i++ {
		reading, _ := s.base.Centre.At(i)
		if running, err = running.Next(reading); err != nil {
			return nil, err
		}
		if reading.At < next || reading.At > last.At {
			continue
		}
		steam, err := s.base.Medium.ValueAt(reading.At)
		if err != nil {
			return nil, err
		}
		out = append(out, sample{reading.At, steam, reading.Value, running.F().F})
		next += step
		if reading.At > s.base.Peak.At && reading.Value.Below(units.Celsius(75)) {
			break
		}
	}
	return out, nil
}

func (s study) printCurve(p *page) error {
	p.Heading("The middle of the jar")
	rows, err := s.samples(15 * time.Minute)
	if err != nil {
		return err
	}
	p.Line("%8s  %9s  %9s  %8s", "min", "steam", "centre", "F0, min")
	for _, r := range rows {
		p.Line("%8.0f  %9s  %9s  %8.2f", r.at.Minutes(), p.Temperature(r.steam), p.Temperature(r.centre), r.f.Minutes())
	}
	p.Line("The centre is at %s when the heat goes off after %s and goes on rising for %s, to %s.", p.Temperature(s.base.AtSteamOff),
		minutes(s.base.SteamOff), minutes(s.base.Peak.At-s.base.SteamOff), p.Temperature(s.base.Peak.Value))
	return nil
}

func (s study) printLethality(p *page) {
	p.Heading("Lethality there")
	f := s.base.F
	p.Line("F0 (%s) %.2f min in all %s:", s.base.Reference, f.Total.Minutes(), p.From(s.base.Citation))
	for _, part := range []struct {
		name string
		f    time.Duration
	}{{"come-up", f.ComeUp}, {"hold", f.Hold}, {"cooling", f.Cooling}} {
		p.Line("  %-8s %6.2f min  %3.0f %%", part.name, part.f.Minutes(), 100*part.f.Minutes()/f.Total.Minutes())
	}
	p.Line("Since the diffusivity is known no better, F0 lies anywhere from %.1f to %.1f min.", s.band.Low.F.Total.Minutes(), s.band.High.F.Total.Minutes())
	for _, r := range lethality.Resistances()[:3] {
		twelve, err := lethality.Target(r.D, lethality.Logs(12*lethality.One))
		if err != nil {
			continue
		}
		p.Line("12-D by D %.3f min is %.2f min %s.", r.D.Minutes(), twelve.Time.Minutes(), p.From(r.Citation))
	}
	p.Line("A published process holds more than that on purpose: jars are not even solids, and canners and cooks are not exact.")
}

func (s study) printChanges(p *page) {
	p.Heading("What would change it")
	p.Line("%-30s  %9s  %14s  %8s  %6s  %10s", "", "steam", "at steam off", "F0, min", "", "in cooling")
	row := func(name string, steam units.Temperature, r lethality.Result) {
		p.Line("%-30s  %9s  %14s  %8.2f  %+4.0f %%  %8.0f %%", name, p.Temperature(steam), p.Temperature(r.AtSteamOff), r.F.Total.Minutes(),
			100*(r.F.Total.Minutes()/s.base.F.Total.Minutes()-1), 100*r.F.Cooling.Minutes()/r.F.Total.Minutes())
	}
	row("as published", s.run.Steam, s.base)
	for _, c := range s.changes {
		row(c.name, c.steam, c.result)
	}
	p.Line("Air is taken as evenly mixed with the steam; in a real canner it lies in pockets that are colder still.")
	p.Line("A longer or hotter run in this table is no permit for a shorter one, and a change that costs little here may cost much in a real jar.")
}

// printFormula sets Ball's formula beside the exact answer, one assumption after another.
func (s study) printFormula(p *page) error {
	factors, err := s.pack.Factors(lethality.Point{})
	if err != nil {
		return err
	}
	formula := lethality.Formula{Medium: s.run.Steam, Start: s.run.Start, Fh: factors.Fh, Jch: factors.Jch, ComeUp: s.run.ComeUp}
	answer, err := formula.Lethality(s.run.Hold)
	p.Heading("The formula method beside it")
	p.Line("fh %.1f min, lag %s from the shape.", factors.Fh.Minutes(), units.In(units.Ratio(factors.Jch), units.One, 2))
	if err != nil {
		p.Line("The printed table has no answer here: %s", err)
		return nil
	}
	at := s.run
	at.Cooling, at.End = 100*units.Kelvins, at.Steam.Add(-100*units.Kelvins)
	quick, err := s.pack.Follow(at, lethality.F0Fahrenheit())
	if err != nil {
		return err
	}
	own, err := lethality.Divide(s.base.Centre, lethality.F0Fahrenheit(), series.Stretch{From: s.run.ComeUp, To: s.base.SteamOff})
	if err != nil {
		return err
	}
	p.Line("F against 250 °F: by the formula %.2f min (its table takes a lag of 1.41 in the cooling) %s,", answer.F.Minutes(), p.From(answer.Citations[0]))
	p.Line("exact with water at once as the formula assumes %.2f min, exact as this canner cools %.2f min.", quick.F.Total.Minutes(), own.Total.Minutes())
	return nil
}
