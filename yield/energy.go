package yield

import (
	"example.org/lakelarder/units"
)

// EnergyFactors is a set of factors from grams of protein and fat to energy. The composition data uses two, and no single
// one gives all of its energies. The zero value is no set.
type EnergyFactors uint8

// The sets, in kilocalories per gram of protein and of fat.
const (
	FishFactors    EnergyFactors = iota + 1 // 4.27 and 9.02, most rows of fish
	GeneralFactors                          // 4 and 9
)

// String is the set in words: "fish factors 4.27 and 9.02", "general factors 4 and 9", "no factors".
func (f EnergyFactors) String() string {
	switch f {
	case FishFactors:
		return "fish factors 4.27 and 9.02"
	case GeneralFactors:
		return "general factors 4 and 9"
	}
	return "no factors"
}

// Energy returns the energy of this much protein and fat. Fish has no carbohydrate to speak of, sugar from a cure does:
// it is not counted. Rounded to the nearest 1e-8 J. Neither mass may be negative, and the set must be one of the
// two; otherwise a RangeError.
func (f EnergyFactors) Energy(protein, fat units.Mass) (units.Energy, error) {
	perProtein, perFat := 4*units.Kilocalorie, 9*units.Kilocalorie
	switch f {
	case FishFactors:
		perProtein, perFat = 427*units.Kilocalorie/100, 902*units.Kilocalorie/100
	case GeneralFactors:
	default:
		return 0, units.RangeError{What: "energy factors", Got: f.String(), Low: FishFactors.String(), High: GeneralFactors.String()}
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

// energyLimit is how far the printed whole kilocalories may lie from a set's energy: half of one, and the rounding of the
// printed protein and fat.
const energyLimit = 51 * units.Kilocalorie / 100

// Factors returns the set of factors that gives the printed energy of the food within 0.51 kcal in 100 g, the nearer where both
// do, and no set where neither does. It is the set to use for what is made of that food.
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
