package yield

import (
	"math"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Makeup is what a piece of fish is made of, in mass. Salt is sodium counted as salt, the fish's own included;
// Ash is the minerals besides it. None may be negative. Mass only moves: between a Makeup, what an Exchange
// takes out and what it brings in, every quantum is in exactly one place.
type Makeup struct {
	Water   units.Mass
	Salt    units.Mass
	Protein units.Mass
	Fat     units.Mass
	Ash     units.Mass
}

// MarshalJSON writes the components, without those that are nothing.
func (m Makeup) MarshalJSON() ([]byte, error) { return wire.Marshal(m) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (m *Makeup) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, m) }

// Total returns the mass of the whole piece, exact. A negative component, or a total past the range of Mass,
// is a RangeError.
func (m Makeup) Total() (units.Mass, error) {
	if m.Water|m.Salt|m.Protein|m.Fat|m.Ash < 0 {
		return 0, m.negative()
	}
	var total uint64
	for _, part := range [...]units.Mass{m.Water, m.Salt, m.Protein, m.Fat, m.Ash} {
		if total += uint64(part); total > math.MaxInt64 {
			return 0, units.RangeError{
				What: "mass of water, salt, protein, fat and ash together",
				Got:  m.text(), High: units.Mass(math.MaxInt64).String(),
			}
		}
	}
	return units.Mass(total), nil
}

// negative names the first component that is below zero.
func (m Makeup) negative() error {
	for _, c := range []struct {
		name string
		mass units.Mass
	}{{"water", m.Water}, {"salt", m.Salt}, {"protein", m.Protein}, {"fat", m.Fat}, {"ash", m.Ash}} {
		if c.mass < 0 {
			return units.RangeError{What: c.name, Got: c.mass.String(), Low: units.Mass(0).String()}
		}
	}
	return nil
}

// Plus returns the two together, component by component, exact. A negative component on either side, or a
// total past the range of Mass, is a RangeError.
func (m Makeup) Plus(more Makeup) (Makeup, error) {
	a, err := m.Total()
	if err != nil {
		return Makeup{}, err
	}
	b, err := more.Total()
	if err != nil {
		return Makeup{}, err
	}
	if a > math.MaxInt64-b {
		return Makeup{}, units.RangeError{
			What: "mass of both together",
			Got:  a.String() + " and " + b.String(), High: units.Mass(math.MaxInt64).String(),
		}
	}
	return Makeup{m.Water + more.Water, m.Salt + more.Salt, m.Protein + more.Protein, m.Fat + more.Fat, m.Ash + more.Ash}, nil
}

// Less returns what is left when a part is taken out, exact: Less and then Plus of the same part gives m back.
// A part with a negative component, or with more of one than there is, is a RangeError that names it.
func (m Makeup) Less(part Makeup) (Makeup, error) {
	if _, err := m.Total(); err != nil {
		return Makeup{}, err
	}
	if _, err := part.Total(); err != nil {
		return Makeup{}, err
	}
	left := Makeup{m.Water - part.Water, m.Salt - part.Salt, m.Protein - part.Protein, m.Fat - part.Fat, m.Ash - part.Ash}
	for _, c := range [...]struct {
		name        string
		taken, held units.Mass
	}{
		{"water", part.Water, m.Water}, {"salt", part.Salt, m.Salt}, {"protein", part.Protein, m.Protein},
		{"fat", part.Fat, m.Fat}, {"ash", part.Ash, m.Ash},
	} {
		if c.taken > c.held {
			return Makeup{}, units.RangeError{What: c.name + " taken out", Got: c.taken.String(), High: c.held.String()}
		}
	}
	return left, nil
}

// text is all components in one line.
func (m Makeup) text() string {
	return "water " + m.Water.String() + ", salt " + m.Salt.String() + ", protein " + m.Protein.String() + ", fat " + m.Fat.String() + ", ash " + m.Ash.String()
}

// Moisture returns the share of water in the whole, rounded to the nearest 1e-12. A Makeup of nothing, or one that
// Total refuses, is a RangeError.
func (m Makeup) Moisture() (units.Ratio, error) {
	total, err := m.Total()
	if err != nil {
		return 0, err
	}
	return units.RatioOf(m.Water, total)
}

// WaterPhaseSalt returns salt/(salt + water), rounded down to 1e-12 so that it never reaches a limit it is short of:
// what the salt of the fish is in its water, as salt limits of smoked fish ask for it. Worked out and not measured:
// without a laboratory it decides nothing. A Makeup with neither salt nor water, or one that Total refuses, is a
// RangeError.
func (m Makeup) WaterPhaseSalt() (units.Ratio, error) {
	if _, err := m.Total(); err != nil {
		return 0, err
	}
	if m.Salt+m.Water == 0 {
		return 0, units.RangeError{
			What: "salt and water together",
			Got:  units.Mass(0).String(), Low: units.Mass(0).String(), LowExclusive: true,
		}
	}
	return units.ProrateDown(units.One, m.Salt, m.Salt+m.Water)
}
