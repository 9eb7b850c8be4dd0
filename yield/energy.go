package yield

import (
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
)

// EnergyFactors is a set of factors from grams of protein and fat to energy. The composition data uses two, and no
// single one gives all of its energies. The zero value is not stated.
type EnergyFactors uint8

// The sets, in kilocalories per gram of protein and of fat.
const (
	FishFactors    EnergyFactors = iota + 1 // 4.27 and 9.02, most rows of fish
	GeneralFactors                          // 4 and 9
)

var energyFactors = word.List[EnergyFactors]{
	What: "energy factors", Words: []string{"fish factors 4.27 and 9.02", "general factors 4 and 9"},
}

// ParseEnergyFactors reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseEnergyFactors(s string) (EnergyFactors, error) { return energyFactors.Parse(s) }

// String is the set in words: "fish factors 4.27 and 9.02".
func (f EnergyFactors) String() string { return energyFactors.Of(f) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (f EnergyFactors) MarshalText() ([]byte, error) { return energyFactors.Marshal(f) }

// UnmarshalText is ParseEnergyFactors, and the empty text is a set that is not set.
func (f *EnergyFactors) UnmarshalText(text []byte) error { return energyFactors.Unmarshal(text, f) }

// Energy returns the energy of this much protein and fat. Fish has no carbohydrate to speak of, sugar from a cure does:
// it is not counted. Rounded to the nearest 1e-8 J. Neither mass may be negative; otherwise a RangeError. A set that is
// not stated is a units.UnsetError.
func (f EnergyFactors) Energy(protein, fat units.Mass) (units.Energy, error) {
	if err := energyFactors.Check(f); err != nil {
		return 0, err
	}
	perProtein, perFat := 4*units.Kilocalorie, 9*units.Kilocalorie
	if f == FishFactors {
		perProtein, perFat = 427*units.Kilocalorie/100, 902*units.Kilocalorie/100
	}
	if err := (Makeup{Protein: protein, Fat: fat}).negative(); err != nil {
		return 0, err
	}
	ofProtein, err := units.Prorate(perProtein, protein, units.Gram)
	if err != nil {
		return 0, err
	}
	ofFat, err := units.Prorate(perFat, fat, units.Gram)
	if err != nil {
		return 0, err
	}
	return units.Sum(ofProtein, ofFat)
}

// energyLimit is how far the printed whole kilocalories may lie from a set's energy: half of one, and the rounding of
// the printed protein and fat.
const energyLimit = 51 * units.Kilocalorie / 100

// Factors returns the set of factors that gives the printed energy of the food within 0.51 kcal in 100 g, the nearer
// where both do, and no set where neither does. It is the set to use for what is made of that food.
func (c Composition) Factors() EnergyFactors {
	var found EnergyFactors
	nearest := energyLimit + 1
	for _, set := range [...]EnergyFactors{FishFactors, GeneralFactors} {
		protein, _ := c.Proximate.Protein.Of(100 * units.Gram)
		fat, _ := c.Proximate.Fat.Of(100 * units.Gram)
		energy, err := set.Energy(protein, fat)
		if err != nil {
			continue
		}
		if off := max(energy-c.Energy, c.Energy-energy); off < nearest {
			found, nearest = set, off
		}
	}
	return found
}
