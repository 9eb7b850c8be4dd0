package growth

import (
	"math"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Seafood is ready-to-eat fish as the model of its Listeria sees it. Temperature, WaterActivity (0.8 to 1)
// and PH (4 to 8) must be given; what is left at zero else is not in it, which lets Listeria grow faster.
// All are parts per million: Phenol and Nitrite of the fish, CarbonDioxide as dissolved, the acids in all,
// dissociated or not, of the water phase.
type Seafood struct {
	Temperature   units.Temperature `wire:"required"`
	WaterActivity units.Ratio       `wire:"required"`
	PH            units.PH          `wire:"required"`
	Phenol        units.Ratio
	Nitrite       units.Ratio
	CarbonDioxide units.Ratio
	Acetic        units.Ratio
	Benzoic       units.Ratio
	Citric        units.Ratio
	Diacetate     units.Ratio
	Lactic        units.Ratio
	Sorbic        units.Ratio
}

// SeafoodRate is the growth of Listeria in Seafood. The Rate itself leaves out how the hurdles work on
// each other, which makes it the faster and safer one; WithInteraction has it. Psi measures the interaction
// and Xi is the share of the rate that it leaves, all up to a Psi of 0.5 and nothing from 1. Where nothing
// grows both are zero.
type SeafoodRate struct {
	Rate
	WithInteraction Rate
	Psi             units.Ratio
	Xi              units.Ratio
}

var seafoodCitation = cite.Citation{
	Source: cite.MejlholmDalgaard2009, Where: "growth rate equation", Basis: cite.Computed,
}

// MarshalJSON writes the fish in the words that UnmarshalJSON reads.
func (s Seafood) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads the fish strictly.
func (s *Seafood) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// MarshalJSON writes the rate as an app shows it.
func (r SeafoodRate) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *SeafoodRate) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// ListeriaInSeafood returns the growth of Listeria in lightly preserved fish, cold-smoked for one. It is
// zero where any hurdle stands at its limit: at -2.83 °C, a water activity of 0.923, pH 4.97, 32 ppm of
// phenol. A temperature above 25 °C, an activity or pH out of its range, or an amount below zero or above
// the whole is a units.RangeError. The equations were read in a transcription whose two formulas for lactic
// acid do not agree; the published output tests the growth and not the interaction. Source: Mejlholm and
// Dalgaard 2009.
func ListeriaInSeafood(s Seafood) (SeafoodRate, error) {
	if err := s.check(); err != nil {
		return SeafoodRate{}, err
	}
	var r SeafoodRate
	var err error
	hurdles := s.hurdles()
	mu := hurdles.rate()
	if r.Rate, err = rateOf(mu, seafoodCitation); err != nil {
		return SeafoodRate{}, err
	}
	psi, xi := 0.0, 0.0
	if mu > 0 {
		psi, xi = hurdles.interaction()
	}
	r.Psi, r.Xi = ratio(psi), ratio(xi)
	r.WithInteraction, err = rateOf(mu*xi, seafoodCitation, interactionNotProven)
	return r, err
}

// SeafoodActivity returns the water activity that the model gives a water phase salt: 0.980 for 3.5 %. Salt
// must lie in 0 to 26 %: otherwise a units.RangeError. Source: Mejlholm and Dalgaard 2009, in a transcription.
func SeafoodActivity(waterPhaseSalt units.Ratio) (units.Ratio, error) {
	if err := units.Check("water phase salt", waterPhaseSalt, 0, 26*units.Percent); err != nil {
		return 0, err
	}
	p := units.Float(waterPhaseSalt, units.Percent)
	return units.OfFloat(activityConstant+float64(activityLinear*p)+float64(activitySquare*p*p), units.One)
}

func (s Seafood) check() error {
	if err := checkGrowth(s.Temperature); err != nil {
		return err
	}
	if err := units.Check("water activity", s.WaterActivity, 800*units.PerMille, units.One); err != nil {
		return err
	}
	if err := units.Check("pH", s.PH, 4*units.PHUnit, 8*units.PHUnit); err != nil {
		return err
	}
	for _, part := range []struct {
		what   string
		amount units.Ratio
	}{
		{"phenol", s.Phenol}, {"nitrite", s.Nitrite}, {"carbon dioxide", s.CarbonDioxide}, {"acetic acid", s.Acetic},
		{"benzoic acid", s.Benzoic}, {"citric acid", s.Citric}, {"diacetate", s.Diacetate}, {"lactic acid", s.Lactic},
		{"sorbic acid", s.Sorbic},
	} {
		if err := units.Check(part.what, part.amount, 0, units.One); err != nil {
			return err
		}
	}
	return nil
}

// undissociated is the part of an acid that is not dissociated, in mmol/L: ppm/M/(1 + 10^(pH - pKa)).
func (s Seafood) undissociated(amount units.Ratio, a acid) float64 {
	pH := float64(s.PH) / float64(units.PHUnit)
	return units.Float(amount, units.PartsPerMillion) / a.molar / (1 + portable.Exp10(pH-a.pKa))
}

// ratio rounds to the nearest 1e-12; past the range of a Ratio, 9 million, it is the largest one.
func ratio(share float64) units.Ratio {
	r, err := units.OfFloat(share, units.One)
	if err != nil {
		return math.MaxInt64
	}
	return r
}

var interactionNotProven = cite.Caution{
	ID: "growth.interaction-not-proven",
	Text: "The interaction is not proven by published output, and its lactic acid differs from that of the rate: " +
		"do not lean on a rate that it lowers.",
	Citation: seafoodCitation,
}
