package coldchain

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Terms is what a record is held against. Only MaxGap must be stated; all else, not stated, is the
// strictest choice, but for HotAir: say so where it was hot.
type Terms struct {
	// MaxGap is the longest time between two readings that the straight line between them is trusted
	// for. It must be above zero.
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
