package yield

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// TieYield is the yield of a process, final for raw mass, as three tie substances tell it. Difference is how far the
// largest lies above the smallest, as a share of it; past 5 % the cautions say that they do not agree.
type TieYield struct {
	Protein    units.Ratio
	DryMatter  units.Ratio
	Fat        units.Ratio
	Difference units.Ratio
	Citation   cite.Citation
	Cautions   []cite.Caution
}

// MarshalJSON writes the three estimates and how far they lie apart.
func (y TieYield) MarshalJSON() ([]byte, error) { return wire.Marshal(y) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (y *TieYield) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, y) }

// tieLimit is the difference past which the estimates are said to disagree.
const tieLimit = 5 * units.Percent

var (
	tieMethod = cite.Citation{Where: "tie substance: yield = raw content/final content of what is not lost", Basis: cite.Computed}
	tieJudged = cite.Citation{Where: "agreement of the estimates within about 5 %", Basis: cite.Practice}
)

// TieSubstance returns the yield of a process from the analyses of the raw fish and of the product: what is not lost
// is enriched as the mass falls, so yield = content raw/content final, by protein, by dry matter and by fat. Not
// normalised, rounded to the nearest 1e-12. Salt taken up raises the dry matter and drip lowers the others, and
// analyses of different lots disagree: all three are given. Protein and fat of zero and water of 100 % are a
// RangeError, as is an analysis that does not add up to 90 to 110 %.
func TieSubstance(raw, product Proximate) (TieYield, error) {
	for _, p := range [...]Proximate{raw, product} {
		if err := p.check(); err != nil {
			return TieYield{}, err
		}
		if err := units.Check("protein", p.Protein, 1, units.One); err != nil {
			return TieYield{}, err
		}
		if err := units.Check("fat", p.Fat, 1, units.One); err != nil {
			return TieYield{}, err
		}
		if err := units.Check("water", p.Water, 0, units.One-1); err != nil {
			return TieYield{}, err
		}
	}
	y := TieYield{Citation: tieMethod}
	for _, e := range []struct {
		estimate   *units.Ratio
		raw, final units.Ratio
	}{
		{&y.Protein, raw.Protein, product.Protein},
		{&y.DryMatter, units.One - raw.Water, units.One - product.Water},
		{&y.Fat, raw.Fat, product.Fat},
	} {
		var err error
		if *e.estimate, err = units.RatioOf(e.raw, e.final); err != nil {
			return TieYield{}, err
		}
		if *e.estimate == 0 {
			return TieYield{}, units.RangeError{
				What: "yield by a tie substance", Got: units.Ratio(0).String(), Low: units.Ratio(1).String(),
			}
		}
	}
	smallest, largest := min(y.Protein, y.DryMatter, y.Fat), max(y.Protein, y.DryMatter, y.Fat)
	ratio, err := units.RatioOf(largest, smallest)
	if err != nil {
		return TieYield{}, err
	}
	y.Difference = ratio - units.One
	if y.Difference > tieLimit {
		y.Cautions = append(y.Cautions, cite.Caution{
			ID: "yield.ties-differ",
			Text: "The three estimates differ by more than 5 %. The analyses are not of the same lot, " +
				"or something besides water was lost or gained.",
			Citation: tieJudged,
		})
	}
	if largest > units.One {
		y.Cautions = append(y.Cautions, cite.Caution{
			ID: "yield.tie-above-all",
			Text: "An estimate is above 100 %. The piece grew heavier by water or salt that it took up, " +
				"or that substance was lost after all.",
			Citation: tieMethod,
		})
	}
	return y, nil
}
