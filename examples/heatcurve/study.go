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
	s.schedule, err = process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: j.jar, Gauge: j.gauge, Altitude: j.altitude})
	if err != nil {
		return s, err
	}
	steam, err := steamAt(j.altitude, s.schedule.Pressure, 0)
	if err != nil {
		return s, err
	}
	// The food's properties halfway in time are near those of 80 °C.
	if s.food, err = j.fish.At(units.Celsius(80)); err != nil {
		return s, err
	}
	s.pack = lethality.Cylinder{
		Radius: j.radius, Height: j.height, Diffusivity: (s.food.DiffusivityLow + s.food.DiffusivityHigh) / 2, Film: lethality.HeldSurface,
	}
	s.run = lethality.Run{Start: j.start, Steam: steam, End: j.end, ComeUp: j.comeUp, Hold: s.schedule.Process, Cooling: j.cooling}
	if s.base, err = s.pack.Follow(s.run, lethality.F0()); err != nil {
		return s, err
	}
	if s.band, err = s.pack.FollowBand(s.food.DiffusivityLow, s.food.DiffusivityHigh, s.run, lethality.F0()); err != nil {
		return s, err
	}
	return s, s.change()
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

// change works out what each change would do.
func (s *study) change() error {
	type edit struct {
		name string
		do   func(*lethality.Cylinder, *lethality.Run) error
	}
	steam := func(up units.Length, less units.Pressure, trapped units.Ratio) func(*lethality.Cylinder, *lethality.Run) error {
		return func(_ *lethality.Cylinder, r *lethality.Run) (err error) {
			r.Steam, err = steamAt(s.jar.altitude+up, s.schedule.Pressure-less, trapped)
			return err
		}
	}
	edits := []edit{
		{"steam 1 °C hotter", func(_ *lethality.Cylinder, r *lethality.Run) error { r.Steam = r.Steam.Add(units.Kelvins); return nil }},
		{"1,000 ft higher, same gauge", steam(1_000*units.Foot, 0, 0)},
		{"gauge reads 1 psi too high", steam(0, units.PSI, 0)},
		{"5 % air left in the canner", steam(0, 0, 5*units.Percent)},
		{"20 % air left in the canner", steam(0, 0, 20*units.Percent)},
		{"cooled five times as fast", func(_ *lethality.Cylinder, r *lethality.Run) error { r.Cooling *= 5; return nil }},
		{"packed cold, at 2 °C", func(_ *lethality.Cylinder, r *lethality.Run) error { r.Start = units.Celsius(2); return nil }},
		{"jar 20 mm taller", func(c *lethality.Cylinder, _ *lethality.Run) error { c.Height += 20 * units.Millimetre; return nil }},
		{"jar 20 mm wider", func(c *lethality.Cylinder, _ *lethality.Run) error { c.Radius += 10 * units.Millimetre; return nil }},
	}
	for _, e := range edits {
		pack, run := s.pack, s.run
		if err := e.do(&pack, &run); err != nil {
			return fmt.Errorf("%s: %w", e.name, err)
		}
		result, err := pack.Follow(run, lethality.F0())
		if err != nil {
			return fmt.Errorf("%s: %w", e.name, err)
		}
		s.changes = append(s.changes, change{e.name, run.Steam, result})
	}
	return nil
}
