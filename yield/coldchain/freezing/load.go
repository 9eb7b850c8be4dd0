package freezing

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// LoadRule is one published figure on filling a home freezer: so much for a cubic foot of its room, within a time or,
// where that is zero, in all. Comparable.
type LoadRule struct {
	For          string
	PerCubicFoot units.Mass
	Within       time.Duration
	Named        bool // a figure for other foods, shown and not used
	Note         string
	Citation     cite.Citation
}

// MarshalJSON writes the rule as an app shows it.
func (r LoadRule) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *LoadRule) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// LoadRules returns the published figures, the one for fish first; the slice is the caller's own.
func LoadRules() []LoadRule {
	return append([]LoadRule(nil), freezerTable[:]...)
}

// Load is a catch to be frozen at home.
type Load struct {
	Room  units.Volume `wire:"required"` // usable, of the freezer
	Held  units.Mass   // frozen food that is in it already
	Catch units.Mass   `wire:"required"` // to be frozen, as packed
}

// Loads is what a plan comes to. PerDay is by the figure for fish and rounded down, Days counts loads a day apart and
// the last may be smaller; PerDayOther is what a freezer takes of vegetables, by name only. Holds is all that it holds,
// Over what is too much for it, zero when all fits. Before a large load it is to be set to Setting, Ahead of it.
type Loads struct {
	PerDay, PerDayOther units.Mass
	Days                int
	Holds, Over         units.Mass
	Setting             units.Temperature
	Ahead               time.Duration
	Cautions            []cite.Caution
}

// MarshalJSON writes the load in the words that UnmarshalJSON reads.
func (l Load) MarshalJSON() ([]byte, error) { return wire.Marshal(l) }

// UnmarshalJSON reads the load strictly.
func (l *Load) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, l) }

// MarshalJSON writes the loads as an app shows it.
func (l Loads) MarshalJSON() ([]byte, error) { return wire.Marshal(l) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (l *Loads) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, l) }

// Plan returns in how many daily loads a catch is frozen, by 2 lb (0.9 kg) to the cubic foot (28.3 L) in 24 hours, and
// whether it fits at 35 lb to the cubic foot. Room must be 1 L to 5 m³, the catch 1 g or more, Held nothing or that,
// each at most 10 t: otherwise a units.RangeError. Loads round down and days up. Published by extension services and
// freezer manuals.
func Plan(p Load) (Loads, error) {
	for _, err := range [...]error{
		units.Check("room of the freezer", p.Room, units.Litre, 5000*units.Litre),
		units.Check("catch", p.Catch, leastMass, 10_000*units.Kilogram),
		units.CheckUnit("food in the freezer", p.Held, leastMass),
		units.Check("food in the freezer", p.Held, 0, 10_000*units.Kilogram),
	} {
		if err != nil {
			return Loads{}, err
		}
	}
	d := Loads{
		PerDay: fishLoad.of(p.Room), PerDayOther: otherLoad.of(p.Room), Holds: holding.of(p.Room),
		Setting: units.Fahrenheit(freezerSetting), Ahead: freezerAhead,
	}
	d.Days = int((p.Catch-1)/d.PerDay) + 1
	d.Over = max(p.Held+p.Catch-d.Holds, 0)
	d.Cautions = d.cautionsOf()
	return d, nil
}

// leastMass is the least that is frozen at home; less is taken for a number whose unit was left out.
const leastMass = units.Gram

// of is the rule's mass for a room, rounded down.
func (r LoadRule) of(room units.Volume) units.Mass {
	mass, _ := units.ProrateDown(r.PerCubicFoot, room, units.CubicFoot) // a room of 5 m³ at most
	return mass
}

func (d Loads) cautionsOf() []cite.Caution {
	all := append(make([]cite.Caution, 0, 5), slowAtOnce, setBefore)
	if d.Days > 1 {
		all = append(all, waitsInIce)
	}
	if d.Over > 0 {
		all = append(all, doesNotFit)
	}
	return append(all, rawCountsFromLast)
}

var (
	slowAtOnce = cite.Caution{
		ID: "freezing.slow-at-once",
		Text: "More at once freezes slowly and warms what is frozen already: spread the packs out, " +
			"against the cold walls.",
		Citation: fishLoad.Citation,
	}
	setBefore = cite.Caution{
		ID:       "freezing.set-before",
		Text:     "Set the freezer to -10 °F (-23.3 °C) 24 h before a large load.",
		Citation: freezerSet,
	}
	waitsInIce = cite.Caution{
		ID: "freezing.waits-in-ice", Deciding: true,
		Text: "What waits for its day stays in ice and its time counts: freeze only fish that can wait, " +
			"and can or smoke the rest.",
	}
	doesNotFit = cite.Caution{
		ID: "freezing.does-not-fit", Deciding: true,
		Text:     "It does not all fit: air must pass between the packs.",
		Citation: holding.Citation,
	}
	rawCountsFromLast = cite.Caution{
		ID: "freezing.raw-counts-from-last",
		Text: "For fish eaten raw the hours against parasites count from the last load, " +
			"at the warmest the freezer got.",
		Citation: eatenRawFrozen,
	}
)
