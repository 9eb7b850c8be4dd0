package yield

import (
	"example.org/lakelarder/units"
)

// Proximate is a proximate analysis, shares of the food as printed: a laboratory's or a table's. The four are measured
// apart and need not add up to 100 %.
type Proximate struct {
	Water   units.Ratio
	Protein units.Ratio
	Fat     units.Ratio
	Ash     units.Ratio
}

// Residual returns what the analysis leaves to 100 %, negative where it adds up to more: raw rows of the open data close
// between 97 and 103 %. Exact. What it is made of, nobody knows: mostly errors of measurement.
func (p Proximate) Residual() units.Ratio {
	return units.One - p.Water - p.Protein - p.Fat - p.Ash
}

// Makeup returns a piece of this mass with this analysis and this share of sodium, all divided by the sum of the four shares
// so that they add up; sodium is counted as salt and taken out of the ash. Components round down and the water takes
// what is left, a few 1/16 ng: the safe side for salt. Each share must lie in 0 to 100 %, the sum in 90 to 110 %, the
// sodium must fit into the ash as salt and the mass not be negative; otherwise a RangeError.
func (p Proximate) Makeup(mass units.Mass, sodium units.Ratio) (Makeup, error) {
	if mass < 0 {
		return Makeup{}, units.RangeError{What: "mass", Got: mass.String(), Low: units.Mass(0).String()}
	}
	if err := p.check(); err != nil {
		return Makeup{}, err
	}
	salt, err := saltFromSodium(sodium)
	if err != nil {
		return Makeup{}, err
	}
	if salt > p.Ash {
		return Makeup{}, units.RangeError{What: "sodium counted as salt", Got: salt.String(), Low: "0 %", High: p.Ash.String() + ", the ash that it is part of"}
	}
	sum := units.One - p.Residual()
	m := Makeup{Salt: normalised(mass, salt, sum), Protein: normalised(mass, p.Protein, sum), Fat: normalised(mass, p.Fat, sum)}
	m.Ash = normalised(mass, p.Ash, sum) - m.Salt
	m.Water = mass - m.Salt - m.Protein - m.Fat - m.Ash
	return m, nil
}

// normalised is the mass of a component; a share of the sum never leaves the range.
func normalised(mass units.Mass, share, sum units.Ratio) units.Mass {
	part, _ := scaled(mass, share, sum)
	return part
}

func (p Proximate) check() error {
	for _, c := range [...]struct {
		name  string
		share units.Ratio
	}{{"water", p.Water}, {"protein", p.Protein}, {"fat", p.Fat}, {"ash", p.Ash}} {
		if c.share < 0 || c.share > units.One {
			return units.Check("share of "+c.name, c.share, 0, units.One)
		}
	}
	return units.Check("water, protein, fat and ash together", units.One-p.Residual(), 90*units.Percent, 110*units.Percent)
}

// Molar masses per mole of sodium; their quotient is 2.54212.
const (
	molarNaCl units.Mass = 58_442_800 // ×1e-6 g/mol
	molarNa   units.Mass = 22_989_770
)

// saltFromSodium is the share of salt that would hold this share of sodium. It counts all sodium as salt: the flesh's own
// sodium, in part not chloride, too.
func saltFromSodium(sodium units.Ratio) (units.Ratio, error) {
	if err := units.Check("share of sodium", sodium, 0, units.One/3); err != nil {
		return 0, err
	}
	return units.Prorate(sodium, molarNaCl, molarNa)
}
