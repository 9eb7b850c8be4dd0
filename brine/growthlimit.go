package brine

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// GrowthLimit is one printed row of the limits within which an organism grows, everything else being at its best. A
// figure that is not printed is zero, a temperature not set. MostSalt is the table's own and not the equivalent of
// LeastActivity.
type GrowthLimit struct {
	Organism         string
	LeastActivity    units.Ratio
	LeastPH, MostPH  units.PH
	MostSalt         units.Ratio // in the water phase
	Coldest, Warmest units.Temperature
	Oxygen           string // "anaerobe" …
	Citation         cite.Citation
}

// GrowthLimits returns every printed row, the FDA's table first, then the older page of the USDA's research service,
// which differs in places: where they do, the stricter row is the one to go by. The slice is the caller's own.
func GrowthLimits() []GrowthLimit { return append([]GrowthLimit(nil), growthLimits[:]...) }

// Barrier is what holds an organism back by itself. The zero Barrier is not stated.
type Barrier uint8

// The barriers.
const (
	BySalt Barrier = iota + 1
	ByActivity
	ByPH
	ByCold
	ByHeat
)

var barriers = word.List[Barrier]{What: "barrier", Words: []string{"salt", "water activity", "pH", "cold", "heat"}}

// ParseBarrier reads "salt", "water activity", "pH", "cold" or "heat"; anything else is a units.UnknownError.
func ParseBarrier(s string) (Barrier, error) { return barriers.Parse(s) }

// String is the barrier in words: "water activity".
func (b Barrier) String() string { return barriers.Of(b) }

// MarshalText is String as bytes, empty when the barrier is not set; an unknown one is a units.UnknownError.
func (b Barrier) MarshalText() ([]byte, error) { return barriers.Marshal(b) }

// UnmarshalText is ParseBarrier, and the empty text is a barrier that is not set.
func (b *Barrier) UnmarshalText(text []byte) error { return barriers.Unmarshal(text, b) }

// Conditions are what is known of a product; what is not known stays zero and holds nothing back. WaterPhaseSalt and
// Activity are separate figures of one thing: state what was measured.
type Conditions struct {
	WaterPhaseSalt units.Ratio
	Activity       units.Ratio
	PH             units.PH
	Temperature    units.Temperature // the warmest it gets
}

// MarshalJSON writes the conditions in the words that UnmarshalJSON reads.
func (c Conditions) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads conditions strictly.
func (c *Conditions) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// Growth is one row against a product. By holds the barriers that stop it, each by itself; none means that it can
// grow. That it cannot grow does not mean that it dies or that toxin already there goes away.
type Growth struct {
	Limit GrowthLimit
	By    []Barrier
}

// MarshalJSON writes the row as an app shows it.
func (g Growth) MarshalJSON() ([]byte, error) { return wire.Marshal(g) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (g *Growth) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, g) }

// Holds returns every row of GrowthLimits against the conditions, in the same order. A figure exactly at a limit
// holds nothing back, and weak barriers are never added up. Shares of 0 to 1, pH 0 to 14: otherwise a RangeError. Go
// by the strictest row of an organism: the two tables do not agree. With no barrier but cold, time and temperature
// abuse decide.
func (c Conditions) Holds() ([]Growth, error) {
	if err := units.Check("water phase salt", c.WaterPhaseSalt, 0, units.One); err != nil {
		return nil, err
	}
	if err := units.Check("water activity", c.Activity, 0, units.One); err != nil {
		return nil, err
	}
	if err := units.Check("pH", c.PH, 0, 14*units.PHUnit); err != nil {
		return nil, err
	}
	all := make([]Growth, 0, len(growthLimits))
	for _, l := range growthLimits {
		all = append(all, Growth{Limit: l, By: c.barriers(l)})
	}
	return all, nil
}

func (c Conditions) barriers(l GrowthLimit) []Barrier {
	var by []Barrier
	for _, b := range []struct {
		barrier Barrier
		stops   bool
	}{
		{BySalt, l.MostSalt > 0 && c.WaterPhaseSalt > l.MostSalt},
		{ByActivity, c.Activity > 0 && c.Activity < l.LeastActivity},
		{ByPH, c.PH > 0 && (c.PH < l.LeastPH || l.MostPH > 0 && c.PH > l.MostPH)},
		{ByCold, c.Temperature.Below(l.Coldest)},
		{ByHeat, c.Temperature.Above(l.Warmest)},
	} {
		if b.stops {
			by = append(by, b.barrier)
		}
	}
	return by
}

// String is the organism and what holds it back: "Listeria monocytogenes: can grow".
func (g Growth) String() string {
	s := g.Limit.Organism + ": "
	if len(g.By) == 0 {
		return s + "can grow"
	}
	s += "held back by "
	for i, b := range g.By {
		if i > 0 {
			s += ", "
		}
		s += b.String()
	}
	return s
}
