package coldchain

import (
	"time"

	"example.org/lakelarder/units"
)

// Terms is what a record is held against. Only MaxGap must be stated; all else, left alone, is the
// strictest choice, but for HotAir: say so where it was hot.
type Terms struct {
	// MaxGap is the longest time between two readings that the straight line between them is trusted
	// for. It must be above zero.
	MaxGap time.Duration
	// Product chooses the rules where Rules does not.
	Product Product
	// Rules are the rules to judge by; none means all that fit the product.
	Rules []Rule
	// Hazards are the hazards of table A-2 to judge by; none means all.
	Hazards []Hazard
	// Reading is how the bands of table A-2 add up.
	Reading Reading
	// HotAir says that the air around the fish was above 90 °F: then the kitchen allows one hour.
	HotAir bool
}

// Product is what the fish is. The zero Product is a fish nobody described: the rules for raw and for
// cooked fish both hold.
type Product uint8

// The products.
const (
	AnyFish Product = iota
	RawFish
	// CookedFish was cooked, hot smoking included: its record begins when the cooking ends.
	CookedFish
)

// String is the product in words.
func (p Product) String() string {
	switch p {
	case AnyFish:
		return "any fish"
	case RawFish:
		return "raw fish"
	case CookedFish:
		return "cooked fish"
	}
	return "unknown product"
}

// Reading is how the time in several bands of table A-2 adds up; the guide does not say. From the
// strictest: what passes one passes those after it.
type Reading uint8

// The readings.
const (
	// SumOfFractions adds the time in each band as a share of its limit; the sum may reach 100 %. The rows
	// of exactly 50 °F (S. aureus, V. cholerae) hold by themselves and are not added.
	SumOfFractions Reading = iota
	// Nested holds the time at or above the floor of a band against the band's limit.
	Nested
	// EachBand holds the time in a band against its limit and forgets the other bands. It alone may
	// call a record better after warming, because time moves on to a band with a limit of its own.
	EachBand
)

// String is the reading in words.
func (r Reading) String() string {
	switch r {
	case SumOfFractions:
		return "sum of fractions"
	case Nested:
		return "nested"
	case EachBand:
		return "each band"
	}
	return "unknown reading"
}

func (t Terms) check() error {
	switch {
	case t.MaxGap <= 0:
		return units.RangeError{What: "longest gap trusted", Got: t.MaxGap.String(), Low: "more than 0s"}
	case t.Product > CookedFish:
		return units.RangeError{What: "product", Got: t.Product.String(), Low: AnyFish.String(), High: CookedFish.String()}
	case t.Reading > EachBand:
		return units.RangeError{What: "reading of table A-2", Got: t.Reading.String(), Low: SumOfFractions.String(), High: EachBand.String()}
	}
	for _, r := range t.Rules {
		if r == 0 || r > KitchenTwoHours {
			return units.RangeError{What: "rule", Got: r.String(), Low: TableA2.String(), High: KitchenTwoHours.String()}
		}
	}
	for _, h := range t.Hazards {
		if h == 0 || h > Yersinia {
			return units.RangeError{What: "hazard", Got: h.String(), Low: BacillusCereus.String(), High: Yersinia.String()}
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
