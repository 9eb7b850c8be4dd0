package main

import (
	"fmt"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// study is one jar through the published process, and through it with one thing changed at a time.
type study struct {
	jar      jar
	schedule process.Schedule
	pack     lethality.Cylinder
	run      lethality.Run
	food     lethality.Properties
	base     lethality.Result
	band     lethality.Band
	changes  []change
	film     units.FilmCoefficient // of steam and glass, the likely one
}

// change is one thing that was otherwise.
type change struct {
	name   string
	steam  units.Temperature
	result lethality.Result
}

func (j jar) study() (study, error) {
	s := study{jar: j}
	var err error
	s.schedule, err = process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: j.Jar,
		Gauge: j.Gauge, Altitude: j.Altitude})
	if err != nil {
		return s, err
	}
	steam, err := steamAt(j.Altitude.Value, s.schedule.Pressure, 0)
	if err != nil {
		return s, err
	}
	// The food's properties halfway in time are near those of 80 °C.
	if s.food, err = j.Fish.lethal().At(units.Celsius(80)); err != nil {
		return s, err
	}
	likely, slow, quick, err := j.cylinders(s.food)
	if err != nil {
		return s, err
	}
	s.pack, s.film = likely, likely.Film
	s.run = lethality.Run{Start: j.Start, Steam: steam, End: j.End, ComeUp: j.ComeUp, Hold: s.schedule.Process,
		Cooling: j.CoolingPerMinute}
	if s.base, err = s.pack.Follow(s.run, lethality.F0()); err != nil {
		return s, err
	}
	if s.band, err = lethality.FollowBetween(slow, quick, s.run, lethality.F0()); err != nil {
		return s, err
	}
	return s, s.change()
}

// cylinders are the jar as it likely is, and the slowest and the quickest that it may be: the diffusivity of the
// fish, and the film of the steam with the glass behind it.
func (j jar) cylinders(food lethality.Properties) (likely, slow, quick lethality.Cylinder, err error) {
	of := func(diffusivity units.Diffusivity, film units.FilmCoefficient,
		conductivity units.Conductivity) lethality.Cylinder {
		through, fault := lethality.Through(film, j.Glass.Thickness, j.Glass.Conductivity)
		if fault != nil && err == nil {
			err = fault
		}
		return lethality.Cylinder{Radius: j.Radius, Height: j.Height, Diffusivity: diffusivity, Film: through,
			Conductivity: conductivity}
	}
	likely = of((food.DiffusivityLow+food.DiffusivityHigh)/2, j.Film.Likely, food.ConductivityMiddle)
	slow = of(food.DiffusivityLow, j.Film.Low, food.ConductivityHigh)
	quick = of(food.DiffusivityHigh, j.Film.High, food.ConductivityLow)
	return likely, slow, quick, err
}

// steamAt is the temperature under a gauge at an altitude, with a share of air left in the canner.
func steamAt(altitude units.Length, gauge units.Pressure, trapped units.Ratio) (units.Temperature, error) {
	air, err := pressure.AirAt(altitude)
	if err != nil {
		return units.Temperature{}, err
	}
	total, err := air.Absolute(gauge)
	if err != nil {
		return units.Temperature{}, err
	}
	part, err := pressure.SteamPart(total, trapped)
	if err != nil {
		return units.Temperature{}, err
	}
	return pressure.SteamTemperature(part)
}

// trialRun is a jar and its run.
type trialRun struct {
	pack lethality.Cylinder
	run  lethality.Run
}

// edit is one thing done otherwise.
type edit struct {
	name string
	do   func(*trialRun)
}

// edits are the changes that leave the steam as it is, but for one degree.
var edits = []edit{
	{"no glass, no film", func(t *trialRun) { t.pack.Film = lethality.HeldSurface }},
	{"steam hotter by one degree Celsius", func(t *trialRun) { t.run.Steam = t.run.Steam.Add(units.Kelvins) }},
	{"cooled five times as fast", func(t *trialRun) { t.run.Cooling *= 5 }},
	{"packed as cold as a refrigerator", func(t *trialRun) { t.run.Start = units.Celsius(2) }},
	{"jar taller by a fifth", func(t *trialRun) { t.pack.Height += t.pack.Height / 5 }},
	{"jar wider by a fourth", func(t *trialRun) { t.pack.Radius += t.pack.Radius / 4 }},
}

// change works out what each change would do: those of the air and the gauge, and the edits.
func (s *study) change() error {
	all := edits
	for _, air := range []struct {
		name    string
		up      units.Length
		less    units.Pressure
		trapped units.Ratio
	}{
		{"a thousand feet higher, same gauge", 1_000 * units.Foot, 0, 0},
		{"gauge reads a pound too high", 0, units.PSI, 0},
		{"5 % air left in the canner", 0, 0, 5 * units.Percent},
		{"20 % air left in the canner", 0, 0, 20 * units.Percent},
	} {
		steam, err := steamAt(s.jar.Altitude.Value+air.up, s.schedule.Pressure-air.less, air.trapped)
		if err != nil {
			return fmt.Errorf("%s: %w", air.name, err)
		}
		all = append(all[:len(all):len(all)], edit{air.name, func(t *trialRun) { t.run.Steam = steam }})
	}
	for _, e := range all {
		t := trialRun{s.pack, s.run}
		e.do(&t)
		result, err := t.pack.Follow(t.run, lethality.F0())
		if err != nil {
			return fmt.Errorf("%s: %w", e.name, err)
		}
		s.changes = append(s.changes, change{e.name, t.run.Steam, result})
	}
	return nil
}
