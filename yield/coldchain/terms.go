package coldchain

import (
	"slices"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Terms is what a record is held against. Only MaxGap must be stated; all else, not stated, is the
// strictest choice, but for HotAir: say so where it was hot. Stays stand in the order of time and do not overlap.
type Terms struct {
	// MaxGap is the longest time between two readings that the straight line between them is trusted
	// for: a second or more. A gap longer than 2 h is not a pass all the same, unless a cold stay covers it.
	MaxGap time.Duration `wire:"required"`
	// Product chooses the rules where Rules does not.
	Product Product
	// Rules are the rules to judge by; none means all that fit the product.
	Rules []Rule
	// Hazards are the hazards of table A-2 to judge by; none means all.
	Hazards []Hazard
	// Reading is how the bands of table A-2 add up; not stated, it is SumOfFractions.
	Reading Reading
	// HotAir says that the air around the fish was above 90 °F: then the kitchen allows one hour.
	HotAir bool

	// Use is what the fish is for, and Later the verdict of the step that it relies on: the rule for the core, the run of
	// the canner. While Later is not given, the answer names it as a condition; where it is no pass, every limit governs.
	Use   Use
	Later units.Stated[verdict.Verdict]
	// Water is where the fish is from.
	Water Water
	// Probe is what the record is of.
	Probe Probe
	// Thickness is the least of the piece around the probe, which says how fast its core can change; not stated, half an
	// inch. Step is the coarsest that the probe shows, which says how long it may stand still.
	Thickness units.Stated[units.Length]
	Step      units.TemperatureChange
	// Stays are where the fish lay, and Air is a record of the air or the surface around it.
	Stays []Stay
	Air   []series.Reading[units.Temperature]
	// Undisturbed says that somebody vouches for the time between two readings up to MaxGap, however long.
	Undisturbed bool
}

// MarshalJSON writes the terms in the words that UnmarshalJSON reads.
func (t Terms) MarshalJSON() ([]byte, error) { return wire.Marshal(t) }

// UnmarshalJSON reads terms strictly; maxGap must be there.
func (t *Terms) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, t) }

// filled are the terms with the reading that they are judged by.
func (t Terms) filled() Terms {
	if t.Reading == 0 {
		t.Reading = SumOfFractions
	}
	t.Rules, t.Hazards = slices.Clone(t.Rules), slices.Clone(t.Hazards)
	t.Stays, t.Air = slices.Clone(t.Stays), slices.Clone(t.Air)
	return t
}

func (t Terms) check() error {
	if err := chain.CheckGap(t.MaxGap); err != nil {
		return err
	}
	if err := products.CheckIfSet(t.Product); err != nil {
		return err
	}
	if err := readings.CheckIfSet(t.Reading); err != nil {
		return err
	}
	for _, r := range t.Rules {
		if err := ruleNames.Check(r); err != nil {
			return err
		}
	}
	for _, h := range t.Hazards {
		if err := hazardNames.Check(h); err != nil {
			return err
		}
	}
	return t.checkFish()
}

// The sizes of fish and of the steps of a probe.
const (
	thinnest    = 3 * units.Millimetre
	thickest    = 60 * units.Centimetre
	finestStep  = units.CelsiusDegrees / 1000
	coarsestOne = 2 * units.CelsiusDegrees
)

// checkFish refuses what is stated of the fish, its probe and its places.
func (t Terms) checkFish() error {
	for _, err := range [...]error{
		uses.CheckIfSet(t.Use), waters.CheckIfSet(t.Water), probes.CheckIfSet(t.Probe),
		units.CheckUnit("thickness", t.Thickness.Value, thinnest/3), units.CheckUnit("step of the probe", t.Step, finestStep),
		units.Check("step of the probe", t.Step, 0, coarsestOne),
	} {
		if err != nil {
			return err
		}
	}
	if t.Thickness.Given {
		if err := units.Check("thickness", t.Thickness.Value, thinnest, thickest); err != nil {
			return err
		}
	}
	after := time.Duration(0)
	for _, s := range t.Stays {
		if err := s.check(after); err != nil {
			return err
		}
		after = s.When.To
	}
	return t.checkAir()
}

// checkAir refuses air that no place of fish has, and readings out of order.
func (t Terms) checkAir() error {
	before := time.Duration(-1)
	for i, r := range t.Air {
		switch {
		case r.At < 0:
			return series.ReadingError{Index: i, At: r.At, Err: series.ErrNegative}
		case r.At <= before:
			return series.ReadingError{Index: i, At: r.At, Err: series.ErrBackward}
		}
		if err := units.CheckTemperature("air around the fish", r.Value, units.Celsius(-60), units.Celsius(150)); err != nil {
			return err
		}
		before = r.At
	}
	return nil
}

// rules are the rules chosen, or those that fit the product.
func (t Terms) rules() []Rule {
	if len(t.Rules) > 0 {
		return t.Rules
	}
	switch t.Product {
	case RawFish:
		return []Rule{TableA2, RawReadyToEat, KitchenTwoHours}
	case CookedFish:
		return []Rule{TableA2, CookedReadyToEat, KitchenTwoHours}
	}
	return []Rule{TableA2, RawReadyToEat, CookedReadyToEat, KitchenTwoHours}
}

func (t Terms) hazards() []Hazard {
	if len(t.Hazards) > 0 {
		return t.Hazards
	}
	return Hazards()
}
