package yield

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Weight is a published mean round weight of a species.
type Weight struct {
	Species  Species
	Mean     units.Mass
	Citation cite.Citation
	Cautions []cite.Caution
}

// MarshalJSON writes the weight as an object of its fields.
func (w Weight) MarshalJSON() ([]byte, error) { return wire.Marshal(w) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (w *Weight) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, w) }

var oceanCatch = from(cite.NPAFCYearbook, "table 26, US catch, Alaska 1997", cite.Read)

// The mean weights printed in the table, in kilograms.
var weightTable = [...]struct {
	species Species
	mean    units.Mass
}{
	{Sockeye, 27 * units.Kilogram / 10},
	{Pink, 17 * units.Kilogram / 10},
	{Chum, 39 * units.Kilogram / 10},
	{Coho, 34 * units.Kilogram / 10},
	{Chinook, 82 * units.Kilogram / 10},
}

// MeanWeight returns the published mean round weight of a Pacific salmon caught in the ocean. Fish of a
// lake weigh other than that, as its caution says: prefer the mean of the caller's own catch. Any other
// species is a NotPublishedError.
func MeanWeight(species Species) (Weight, error) {
	var stated []string
	for _, r := range weightTable {
		if r.species == species {
			return Weight{
				Species: species, Mean: r.mean, Citation: oceanCatch,
				Cautions: []cite.Caution{oceanMean(oceanCatch)},
			}, nil
		}
		stated = append(stated, r.species.String())
	}
	return Weight{}, NotPublishedError{Species: species, Missing: MissingWeight, Stated: stated}
}
