package yield

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Proximate is a proximate analysis, shares of the food as printed: a laboratory's or a table's. The four are measured
// apart and need not add up to 100 %.
type Proximate struct {
	Water   units.Ratio `wire:"required"`
	Protein units.Ratio `wire:"required"`
	Fat     units.Ratio `wire:"required"`
	Ash     units.Ratio `wire:"required"`
}

// MarshalJSON writes the four shares.
func (p Proximate) MarshalJSON() ([]byte, error) { return wire.Marshal(p) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else, one of the four missing too, is a
// units.FieldError.
func (p *Proximate) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, p) }

// Residual returns what the analysis leaves to 100 %, negative where it adds up to more: raw rows of the open data
// close between 97 and 103 %. Exact. What it is made of, nobody knows: mostly errors of measurement.
func (p Proximate) Residual() units.Ratio {
	return units.One - p.Water - p.Protein - p.Fat - p.Ash
}

// Makeup returns a piece of this mass with this analysis and this share of sodium, all divided by the sum of the four
// shares so that they add up; sodium is counted as salt and taken out of the ash. Components round down and the water
// takes what is left, a few 1/16 ng: the safe side for salt. Each share must lie in 0 to 100 %, the sum in 90 to 110
// %, the sodium must fit into the ash as salt and the mass not be negative; otherwise a RangeError.
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
		return Makeup{}, units.RangeError{
			What: "sodium counted as salt in the ash", Got: salt.String(), Low: "0 %", High: p.Ash.String(),
		}
	}
	sum := units.One - p.Residual()
	var m Makeup
	for _, c := range [...]struct {
		share units.Ratio
		into  *units.Mass
	}{{salt, &m.Salt}, {p.Protein, &m.Protein}, {p.Fat, &m.Fat}, {p.Ash, &m.Ash}} {
		if *c.into, err = units.ProrateDown(mass, c.share, sum); err != nil {
			return Makeup{}, err
		}
	}
	m.Ash -= m.Salt
	m.Water = mass - m.Salt - m.Protein - m.Fat - m.Ash
	return m, nil
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

// saltFromSodium is the share of salt that would hold this share of sodium. It counts all sodium as salt: the flesh's
// own sodium, in part not chloride, too.
func saltFromSodium(sodium units.Ratio) (units.Ratio, error) {
	if err := units.Check("share of sodium", sodium, 0, units.One/3); err != nil {
		return 0, err
	}
	return units.Prorate(sodium, molarNaCl, molarNa)
}
