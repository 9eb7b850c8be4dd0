package coldchain

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Limit is one published limit: Allowed is the most time, all periods together, that the inside of the fish
// may be warmer than Over (or at it, where OrAt is set), up to and including UpTo. Limits are comparable.
type Limit struct {
	Rule    Rule
	Hazard  Hazard // table A-2 only
	Over    units.Temperature
	OrAt    bool // the first band of a hazard holds its own lower edge
	UpTo    units.Temperature
	Allowed time.Duration

	PrintedLow  units.Temperature // the edges as they are printed; the gap below belongs to this band
	PrintedHigh units.Temperature // not set where it is printed as "above"

	EverAbove  units.Temperature // where set, the limit is for fish that was ever above this …
	NeverAbove units.Temperature // … and never above this
	HotAir     units.Temperature // where set, the limit is for fish in air above this

	// Limits of a rule with one number hold together; where a rule has several numbers, one is enough.
	Alternative int
	// AureusOnly is printed for fish in which only Staphylococcus aureus matters. It is named, not used.
	AureusOnly time.Duration

	Note     string
	Citation cite.Citation
}

// MarshalJSON writes the limit as an app shows it.
func (l Limit) MarshalJSON() ([]byte, error) { return wire.Marshal(l) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (l *Limit) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, l) }

// Limits returns the limits of a rule in printed order, none for a Rule that is not set or not known. The
// slice is the caller's own.
func Limits(rule Rule) []Limit {
	var all []Limit
	for i := range countedLimits {
		if countedLimits[i].Rule == rule {
			all = append(all, countedLimits[i].Limit)
		}
	}
	return all
}

// FindLimit returns the band of table A-2 that a temperature falls in. Exactly on a printed upper edge is
// still in the lower band. Outside the table, which begins where the hazard does and ends at 135 °F
// included, it is a units.RangeError: the table states no limit there, which below it is not the same as safe. A hazard
// that is not set is a units.UnsetError, one that is not known a units.UnknownError.
func FindLimit(hazard Hazard, t units.Temperature) (Limit, error) {
	if err := hazardNames.Check(hazard); err != nil {
		return Limit{}, err
	}
	bands := a2Of(hazard)
	low, high := bands[0].Over, bands[len(bands)-1].UpTo
	if !t.AtLeast(low) || t.Above(high) {
		return Limit{}, units.CheckTemperature("temperature in the bands of "+hazard.String(), t, low, high)
	}
	for _, band := range bands {
		if !t.Above(band.UpTo) {
			return band.Limit, nil
		}
	}
	return bands[len(bands)-1].Limit, nil
}
