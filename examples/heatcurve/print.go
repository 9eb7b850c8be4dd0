package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// print writes the lethality first, what it was worked out from and what would change it; the curve, its parts and the
// formula method come after the cautions.
func (s study) print(p *sheet.Sheet, rows []sample, b beside) {
	f := s.base.F
	p.Line("RESULT: F0 at the middle is %s, anywhere from %s to %s", minutes(f.Total), minutes(s.band.Low.F.Total),
		minutes(s.band.High.F.Total))
	p.Line("Why: the middle reaches %s, %s after the heat is off; F0 counts against %s%s. The range is that of the fish's diffusivity and of the film of the steam on the glass.",
		sheet.Text(p, s.base.Peak.Value), lasting(s.base.Peak.At-s.base.SteamOff), reference(p,
			s.base.Reference), p.From(s.base.Citation))
	p.Line("Do: can by the published process, %s at %s%s. This explains it, decides nothing and shortens nothing.",
		units.Lasting(s.schedule.Process), sheet.Up(p, s.schedule.Pressure), p.From(s.schedule.Citation))
	s.printInputs(p)
	s.printChanges(p)
	p.Warn(s.base.Cautions...)
	p.Warn(b.answer.Cautions...)
	p.Warn(s.schedule.Cautions()...)
	p.Cautions()
	s.printCurve(p, rows)
	s.printLethality(p)
	b.print(p)
	p.Close()
}

// minutes prints an F as its field does: in minutes and hundredths, cut.
func minutes(d time.Duration) string {
	return fmt.Sprintf("%.2f min", (d.Truncate(time.Minute / 100)).Minutes())
}

// lasting prints a time to the minute.
func lasting(d time.Duration) string { return units.Lasting(d.Round(time.Minute)) }

func reference(p *sheet.Sheet, r lethality.Reference) string {
	return sheet.Text(p, r.Temperature) + ", z " + sheet.Text(p, r.Z)
}

func (s study) printInputs(p *sheet.Sheet) {
	j := s.jar
	p.Heading("What it was worked out from")
	p.Line("%s, %s. %s", j.Place, sheet.Text(p, j.Altitude.Value), j.About)
	p.Item("Process: raw fish in %s jars, %s gauge%s; in standard air that is steam at %s%s", s.schedule.Jar,
		s.schedule.Gauge,
		p.From(s.schedule.Citation), sheet.Text(p, s.run.Steam), p.From(pressure.SteamSource()))
	p.Item("Jar: fish of radius %s and height %s, glass of %s and %s, film of the steam %s", sheet.Text(p, j.Radius),
		sheet.Text(p, j.Height),
		sheet.Text(p, j.Glass.Thickness), sheet.Text(p, j.Glass.Conductivity), j.Film.Text(p.System))
	p.Item("Fish: water %s, protein %s, fat %s, ash %s; by that a diffusivity of %s to %s and a conductivity of %s to %s%s",
		j.Fish.Water, j.Fish.Protein, j.Fish.Fat, j.Fish.Ash, squares(s.food.DiffusivityLow), squares(s.food.DiffusivityHigh),
		conducts(s.food.ConductivityLow), conducts(s.food.ConductivityHigh), p.From(s.food.Citation))
	p.Item("Run: from %s to the steam in %s, held %s, then cooler by %s a minute to %s", sheet.Text(p, j.Start),
		units.Lasting(j.ComeUp),
		units.Lasting(s.schedule.Process), sheet.Text(p, j.CoolingPerMinute), sheet.Text(p, j.End))
}

// squares is a diffusivity to the digits that are known; it has one unit everywhere.
func squares(d units.Diffusivity) string { return units.Text(d, units.SquareMillimetrePerSecond, 4) }

func conducts(k units.Conductivity) string { return units.Text(k, units.WattPerMetreKelvin, 4) }

func (s study) printChanges(p *sheet.Sheet) {
	p.Heading("What would change it")
	p.Line("%-36s %19s %19s %10s", "", "steam", "at steam off", "F0")
	row := func(name string, steam units.Temperature, r lethality.Result) {
		p.Line("%-36s %19s %19s %10s %+4.0f %%", name, sheet.Text(p, steam), sheet.Text(p, r.AtSteamOff),
			minutes(r.F.Total),
			100*(r.F.Total.Minutes()/s.base.F.Total.Minutes()-1))
	}
	row("as published", s.run.Steam, s.base)
	for _, c := range s.changes {
		row(c.name, c.steam, c.result)
	}
	p.Line("Air is taken as evenly mixed with the steam; in a real canner it lies in pockets that are colder still. A longer or hotter run here is no permit for a shorter one, and a change that costs little here may cost much in a real jar.")
}

// sample is the steam, the centre and F0 so far at one time.
type sample struct {
	at            time.Duration
	steam, centre units.Temperature
	f             time.Duration
}

// samples are taken every minute until the centre has cooled too far to count.
func (s study) samples() ([]sample, error) {
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
		next += time.Minute
		if reading.At > s.base.Peak.At && reading.Value.Below(units.Celsius(75)) {
			break
		}
	}
	return out, nil
}

func (s study) printCurve(p *sheet.Sheet, rows []sample) {
	p.Heading("Details: the middle of the jar")
	p.Line("%8s %20s %20s %12s", "minute", "steam", "centre", "F0 so far")
	for i := 0; i < len(rows); i += 15 {
		r := rows[i]
		p.Line("%8.0f %20s %20s %12s", r.at.Minutes(), sheet.Text(p, r.steam), sheet.Text(p, r.centre), minutes(r.f))
	}
	p.Line("The centre is at %s when the heat goes off after %s and goes on rising for %s, to %s.", sheet.Text(p,
		s.base.AtSteamOff),
		lasting(s.base.SteamOff), lasting(s.base.Peak.At-s.base.SteamOff), sheet.Text(p, s.base.Peak.Value))
}

func (s study) printLethality(p *sheet.Sheet) {
	p.Heading("Details: lethality there")
	f := s.base.F
	for _, part := range []struct {
		name string
		f    time.Duration
	}{{"come-up", f.ComeUp}, {"hold", f.Hold}, {"cooling", f.Cooling}, {"together", f.Total}} {
		p.Line("%-10s %10s  %3.0f %%", part.name, minutes(part.f), 100*part.f.Minutes()/f.Total.Minutes())
	}
	for _, r := range lethality.Resistances()[:3] {
		twelve, err := lethality.Target(r.D, lethality.Logs(12*lethality.One))
		if err != nil {
			continue
		}
		p.Item("12-D by D %.3f min is %s%s", r.D.Minutes(), minutes(twelve.Time), p.From(r.Citation))
		p.Warn(twelve.Cautions...)
	}
	p.Line("A published process holds more than that on purpose: jars are not even solids, and canners and cooks are not exact.")
}

// beside is Ball's formula beside the exact answer, one assumption after another.
type beside struct {
	factors    lethality.Factors
	answer     lethality.Answer
	none       error // why the printed table has no answer
	quick, own time.Duration
}

func (s study) formula() (b beside, err error) {
	if b.factors, err = s.pack.Factors(lethality.Point{}); err != nil {
		return b, err
	}
	formula := lethality.Formula{Medium: s.run.Steam, Start: s.run.Start, Fh: b.factors.Fh, Jch: b.factors.Jch,
		ComeUp: s.run.ComeUp}
	if b.answer, b.none = formula.Lethality(s.run.Hold); b.none != nil {
		return b, nil
	}
	at := s.run
	at.Cooling, at.End = 100*units.Kelvins, at.Steam.Add(-100*units.Kelvins)
	quick, err := s.pack.Follow(at, lethality.F0Fahrenheit())
	if err != nil {
		return b, err
	}
	own, err := lethality.Divide(s.base.Centre, lethality.F0Fahrenheit(), series.Stretch{From: s.run.ComeUp,
		To: s.base.SteamOff})
	b.quick, b.own = quick.F.Total, own.Total
	return b, err
}

func (b beside) print(p *sheet.Sheet) {
	p.Heading("Details: the formula method beside it")
	p.Line("fh %.1f min, lag %s from the shape.", b.factors.Fh.Minutes(), units.In(units.Ratio(b.factors.Jch),
		units.One, 2))
	if b.none != nil {
		p.Line("The printed table has no answer here: %s", b.none)
		return
	}
	p.Line("F against %s: by the formula %s (its table takes 1.41 as the lag of the cooling)%s, exact with water at once as the formula assumes %s, exact as this canner cools %s.",
		reference(p, lethality.F0Fahrenheit()), minutes(b.answer.F), p.FromEach(b.answer.Citations[:1]), minutes(b.quick), minutes(b.own))
}
