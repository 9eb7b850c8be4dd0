package smoke

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// DryingLoss is the water a fillet must lose for its salt to come to a water phase salt. Mass is zero and Reached set when it is there
// already. BeyondPublished says that Share passes 28.8 % of the fillet, the greatest loss of smoked trout read in print: salt it more instead.
type DryingLoss struct {
	Mass            units.Mass
	Share           units.Ratio // of the fillet as it enters the smoker
	Reached         bool
	BeyondPublished bool
	Cautions        []cite.Caution
}

// MarshalJSON writes the loss as an app shows it.
func (d DryingLoss) MarshalJSON() ([]byte, error) { return wire.Marshal(d) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (d *DryingLoss) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, d) }

// The greatest loss of smoked trout that was read in print, steamed with liquid smoke after four hours of drying, and the strength of saturated brine at 60 °F.
const (
	mostPublishedLoss = 288 * units.PerMille
	saturatedBrine    = 26_395 * units.Percent / 1_000
)

// LossForWaterPhaseSalt returns what a fillet with so much salt and water must lose to reach a water phase salt, salt/(salt + water):
// water - salt (1 - p)/p, rounded up to the microgram. Salt, water and the rest stay in the fillet. The fillet must be at least its
// salt and water together, each above zero, and the target above 0 and at most that of saturated brine, 26.395 %: otherwise a
// units.RangeError. A computed salt is an estimate until it is measured in the loin.
func LossForWaterPhaseSalt(fillet, salt, water units.Mass, target units.Ratio) (DryingLoss, error) {
	if err := units.Check("fillet", fillet, units.Milligram, units.Tonne); err != nil {
		return DryingLoss{}, err
	}
	if err := units.Check("salt", salt, units.Milligram, fillet); err != nil {
		return DryingLoss{}, err
	}
	if err := units.Check("water", water, units.Milligram, fillet-salt); err != nil {
		return DryingLoss{}, err
	}
	if err := units.Check("target water phase salt", target, units.PartsPerMillion, saturatedBrine); err != nil {
		return DryingLoss{}, err
	}
	d := DryingLoss{Cautions: []cite.Caution{measureSalt}}
	stays, err := units.Prorate(salt, units.One-target, target)
	if err != nil {
		return DryingLoss{}, err
	}
	if stays >= water {
		d.Reached = true
		return d, nil
	}
	d.Mass = units.CeilTo(water-stays, units.Microgram)
	if d.Share, err = units.RatioOf(d.Mass, fillet); err != nil {
		return DryingLoss{}, err
	}
	if d.Share > mostPublishedLoss {
		d.BeyondPublished = true
		d.Cautions = append(d.Cautions, cite.Caution{
			ID:       "smoke.loss-beyond-print",
			Text:     "The greatest loss of smoked trout in print is 28.8 %. Drying cannot be counted on for more: the fish needs more salt.",
			Citation: publishedLoss,
		})
	}
	return d, nil
}

var (
	publishedLoss = cite.Citation{Source: cite.Dimitriadou2008, Where: "abstract", Basis: cite.Read}
	measureSalt   = cite.Caution{
		ID:       "smoke.measure-salt",
		Text:     "Water phase salt is measured in the loin muscle, the last place to take salt; a computed one decides nothing.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.8(2)", Basis: cite.Read},
	}
)
