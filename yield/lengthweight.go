package yield

import (
	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

var oceanLengths = cite.Citation{Source: cite.SalmonSizeDecline2020, Where: "analysis code, W = a L^b", Basis: cite.Read}

// lengthWeightTable has the coefficients as printed: mass in kilograms = a·L^b, L in millimetres.
var lengthWeightTable = [...]struct {
	species Species
	a, b    float64
}{
	{Chinook, 1.773218e-9, 3.295027},
	{Coho, 6.45953e-9, 3.141252},
	{Sockeye, 1.007088e-8, 3.079836},
	{Chum, 6.302654e-9, 3.137442},
}

// The lengths that are answered. The source states no range.
const (
	shortestFish = 100 * units.Millimetre
	longestFish  = 1500 * units.Millimetre
)

// WeightAtLength returns the published round weight of a Pacific salmon of a length, W = a·L^b, as the weight of a
// mean fish: one fish differs. The source does not state which length; by custom (from memory) it is mid-eye to fork,
// shorter than the whole fish, so a total length gives too much. Ocean fish. Lengths of 100 mm to 1.5 m, otherwise a
// RangeError; rounded to the nearest gram. Other species than chinook, coho, sockeye and chum are a
// NotPublishedError.
func WeightAtLength(species Species, length units.Length) (Weight, error) {
	if err := units.Check("length of the fish", length, shortestFish, longestFish); err != nil {
		return Weight{}, err
	}
	var stated []string
	for _, r := range lengthWeightTable {
		if r.species != species {
			stated = append(stated, r.species.String())
			continue
		}
		kilograms := float64(r.a * portable.Pow(units.Float(length, units.Millimetre), r.b))
		mass, err := units.OfFloat(kilograms, units.Kilogram)
		if err != nil {
			return Weight{}, err
		}
		return Weight{
			Species: species, Mean: units.RoundTo(mass, units.Gram), Citation: oceanLengths,
			Cautions: []cite.Caution{
				{
					ID:       "yield.which-length",
					Text:     "The source does not say which length it means. A total length gives too much.",
					Citation: oceanLengths,
				},
				oceanMean(oceanLengths),
			},
		}, nil
	}
	return Weight{}, NotPublishedError{Species: species, Missing: MissingLengthWeight, Stated: stated}
}
