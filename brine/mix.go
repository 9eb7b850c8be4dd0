package brine

import (
	"strconv"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Mix is the salt and sugar of a dry cure in parts by mass. Only the proportion counts: Mix{Salt: 1, Sugar: 2} and
// Mix{Salt: 50, Sugar: 100} are one mix. Weights become a mix by MixOf, cups by MixOfVolumes. Others are spices and
// the like; nitrite is refused.
type Mix struct {
	Salt   int64 `wire:"required"`
	Sugar  int64
	Others []Part
}

// Part is a named ingredient of a mix that is neither salt nor sugar, in parts by mass.
type Part struct {
	Name  string `wire:"required"`
	Parts int64  `wire:"required"`
}

// MarshalJSON writes the mix in the words that UnmarshalJSON reads: {"salt": 1, "sugar": 2}.
func (m Mix) MarshalJSON() ([]byte, error) { return wire.Marshal(m) }

// UnmarshalJSON reads a mix strictly: whole parts, and a name that is no field is refused.
func (m *Mix) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, m) }

// String is the mix in words: "1 part of salt to 2 of sugar".
func (m Mix) String() string {
	s := partsOf(m.Salt) + " of salt"
	if m.Sugar != 0 {
		s += " to " + strconv.FormatInt(m.Sugar, 10) + " of sugar"
	}
	for _, other := range m.Others {
		s += ", " + strconv.FormatInt(other.Parts, 10) + " of " + other.Name
	}
	return s
}

// MixOf returns the mix of so much salt and so much sugar by weight, in lowest terms: 50 g and 125 g are 2 parts to
// 5. Salt must be above 0 and sugar not negative, and no more than 20 times the salt: otherwise a RangeError.
// Exact.
func MixOf(salt, sugar units.Mass) (Mix, error) {
	if salt <= 0 {
		return Mix{}, aboveZero("salt of the mix", salt)
	}
	if sugar < 0 {
		return Mix{}, units.RangeError{What: "sugar of the mix", Got: sugar.String(), Low: "0 g"}
	}
	common, rest := salt, sugar
	for rest != 0 {
		common, rest = rest, common%rest
	}
	m := Mix{Salt: int64(salt / common), Sugar: int64(sugar / common)}
	return m, m.check()
}

// sweetest is the most of anything to one of salt: the sweetest recipe in circulation has some thirteen of sugar.
// mostOthers bounds the list. Practice, no source.
const (
	sweetest   = 20
	mostOthers = 16
)

// check refuses a mix without salt, and one that has more than 20 times the salt of anything.
func (m Mix) check() error {
	switch {
	case m.Salt == 0:
		return units.UnsetError{What: "salt of the mix"}
	case m.Salt < 0:
		return units.RangeError{What: "salt of the mix", Got: partsOf(m.Salt), Low: "1 part"}
	case len(m.Others) > mostOthers:
		return units.RangeError{What: "number of other ingredients", Got: strconv.Itoa(len(m.Others)), Low: "0",
			High: strconv.Itoa(mostOthers)}
	}
	if err := m.checkPart("sugar", m.Sugar); err != nil {
		return err
	}
	for _, other := range m.Others {
		switch {
		case other.Name == "":
			return units.UnsetError{What: "name of another ingredient of the mix"}
		case isNitrite(other.Name):
			return NitriteError{Name: other.Name}
		}
		if err := m.checkPart(other.Name, other.Parts); err != nil {
			return err
		}
	}
	return nil
}

// checkPart refuses parts below zero and more than 20 times the salt: "sugar 41 parts to 1 of salt".
func (m Mix) checkPart(what string, parts int64) error {
	if parts >= 0 && (parts-1)/sweetest < m.Salt { // the second without overflow
		return nil
	}
	toSalt := m.Salt
	if parts%m.Salt == 0 {
		parts, toSalt = parts/m.Salt, 1
	}
	return units.RangeError{What: what, Got: partsOf(parts) + " to " + strconv.FormatInt(toSalt, 10) + " of salt",
		Low: "0", High: partsOf(sweetest) + " to 1 of salt"}
}

func partsOf(n int64) string {
	if n == 1 {
		return "1 part"
	}
	return strconv.FormatInt(n, 10) + " parts"
}
