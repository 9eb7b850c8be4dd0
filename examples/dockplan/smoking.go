package main

import (
	"fmt"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
)

// smoke works the smoking through; with no fish for it there is none.
func (k *kitchen) smoke() (err error) {
	s := k.Smoker
	if s.Fish == 0 {
		return nil
	}
	if k.salting, err = brine.FindSaltingTime(s.Thick, s.Fatness); err != nil {
		return fmt.Errorf("smoker.thick and fatness: %w", err)
	}
	one, err := k.filets.of.Of(k.Mass)
	if err != nil {
		return err
	}
	if k.cure, err = brine.BuryCure(one, s.Water, s.Excess, brine.Mix{Salt: 1}); err != nil {
		return fmt.Errorf("smoker.excess: %w", err)
	}
	around, err := pressure.AirAt(k.Altitude.Value)
	if err != nil {
		return fmt.Errorf("altitude: %w", err)
	}
	outside, err := moistair.ByRelativeHumidity(s.Outside, s.Humidity, around.Pressure())
	if err != nil {
		return fmt.Errorf("smoker.outside: %w", err)
	}
	k.smoking = smoke.Schedule{
		Batch: smoke.Batch{
			Slab: smoke.FilletSlab(s.Thin, s.Thick, s.Faces, s.Start),
			Mass: one * units.Mass(s.Batch), Area: s.Area * units.Area(s.Batch), Water: s.Water, WaterActivity: s.Activity,
		},
		Stages: s.Stages, Outside: outside, Film: moistair.SmokerFilm(), Limit: smoke.DefaultCoreLimit(),
	}
	if k.smoked, err = k.smoking.Plan(); err != nil {
		return fmt.Errorf("smoker.stages: %w", err)
	}
	if !k.smoked.Fits {
		return fmt.Errorf("smoker.stages: the slowest fillet is not through its hold of %s "+
			"when the cooking ends: expected a hotter or a longer cook",
			units.Lasting(k.smoking.Limit.Hold))
	}
	return k.stages(outside)
}

// stages checks that the smoking is the one that is planned here, and finds the pellicle and the cooling.
func (k *kitchen) stages(outside moistair.Air) (err error) {
	all := k.Smoker.Stages
	if len(all) != 3 || all[0].Kind != smoke.Dry || all[1].Kind != smoke.Smoke || all[2].Kind != smoke.Cook {
		return fmt.Errorf("smoker.stages: expected three: dry, smoke and cook")
	}
	air, err := outside.Heated(all[0].Air)
	if err != nil {
		return fmt.Errorf("smoker.stages: %w", err)
	}
	b := k.smoking.Batch
	if k.tacky, err = smoke.DryPellicle(b.Mass, b.Area, air, k.smoking.Film, b.WaterActivity); err != nil {
		return fmt.Errorf("smoker: %w", err)
	}
	k.cooling = smoke.DefaultCoolingRule()
	return nil
}
