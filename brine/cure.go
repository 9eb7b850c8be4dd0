package brine

import (
	"strconv"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Mix is the salt and sugar of a dry cure in parts by mass. Only the proportion counts: Mix{Salt: 1, Sugar: 2} and
// Mix{Salt: 50 * units.Gram, Sugar: 100 * units.Gram} are one mix. A mix told in cups goes through
// Ingredient.MassOf or VolumeMix first. Others are spices and the like; nitrite is refused.
type Mix struct {
	Salt, Sugar units.Mass
	Others      []Part
}

// Part is a named ingredient of a mix that is neither salt nor sugar.
type Part struct {
	Name string
	Mass units.Mass
}

// Cure is the dry cure for one weight of fish. Total is Salt + Sugar and the Others to the quantum.
type Cure struct {
	Fillet   units.Mass
	Ratio    units.Ratio // salt to fish by mass
	Salt     units.Mass
	Sugar    units.Mass
	Others   []Part
	Total    units.Mass
	Cautions []cite.Caution
}

// What a cure is asked for at most, to catch slips of units: one to one by mass buries the fish, and the sweetest
// recipe in circulation has some thirteen of sugar to one of salt. All practice, no source.
const (
	largestFillet = 100 * units.Kilogram
	largestRatio  = units.One
	sweetest      = 20
	mostOthers    = 16
)

// DryCure returns the salt and sugar for a weight of fish: salt is the fillet times salt, a mass of salt to a mass
// of raw fish such as 30*units.PerMille; sugar follows by the mix. Fillet must be above 0, to 100 kg; salt above
// 0 %, to 100 %; the mix needs salt, and no more than 20 of sugar to 1 of salt: otherwise a RangeError. Both are
// rounded to the quantum, 1/16 ng; on a scale round salt up. It is a plan, never a proof of the salt in the flesh.
//
// Published doses: 30 g per kg (Foods 2020, 9:1048), 1:4 (trade book), 1:3 (Michigan State University Extension
// 1997). Nothing tested was found between the first two.
func DryCure(fillet units.Mass, salt units.Ratio, mix Mix) (Cure, error) {
	if err := checkCure(fillet, salt, mix); err != nil {
		return Cure{}, err
	}
	c := Cure{Fillet: fillet, Ratio: salt}
	var err error
	if c.Salt, err = units.Prorate(fillet, salt, units.One); err != nil {
		return Cure{}, err
	}
	if c.Sugar, err = units.Prorate(c.Salt, mix.Sugar, mix.Salt); err != nil {
		return Cure{}, err
	}
	c.Total = c.Salt + c.Sugar // below 100 kg × 21, and 16 others of 2,000 kg: far inside the range
	for _, other := range mix.Others {
		part := Part{Name: other.Name}
		if part.Mass, err = units.Prorate(c.Salt, other.Mass, mix.Salt); err != nil {
			return Cure{}, err
		}
		c.Others = append(c.Others, part)
		c.Total += part.Mass
	}
	c.Cautions = cureCautions(salt, c.Sugar)
	return c, nil
}

func checkCure(fillet units.Mass, salt units.Ratio, mix Mix) error {
	switch {
	case fillet <= 0 || fillet > largestFillet:
		return units.RangeError{What: "fillet", Got: fillet.String(), Low: "more than 0 g", High: largestFillet.String()}
	case salt <= 0 || salt > largestRatio:
		return units.RangeError{What: "salt to fish", Got: salt.String(), Low: "more than 0 %", High: largestRatio.String()}
	case mix.Salt <= 0:
		return units.RangeError{What: "parts of salt", Got: mix.Salt.String(), Low: "more than 0"}
	case mix.Sugar < 0:
		return units.RangeError{What: "parts of sugar", Got: mix.Sugar.String(), Low: "0"}
	case (mix.Sugar-1)/sweetest >= mix.Salt: // more than 20 times, without overflow
		return units.RangeError{What: "parts of sugar", Got: mix.Sugar.String(), Low: "0", High: "20 times the salt, " + mix.Salt.String()}
	case len(mix.Others) > mostOthers:
		return units.RangeError{What: "other ingredients", Got: strconv.Itoa(len(mix.Others)), Low: "0", High: strconv.Itoa(mostOthers)}
	}
	return mix.checkOthers()
}

func (m Mix) checkOthers() error {
	for _, other := range m.Others {
		switch {
		case isNitrite(other.Name):
			return NitriteError{Name: other.Name}
		case other.Name == "":
			return units.RangeError{What: "name of another ingredient", Got: "none", Low: "a name"}
		case other.Mass < 0:
			return units.RangeError{What: "parts of " + other.Name, Got: other.Mass.String(), Low: "0"}
		case (other.Mass-1)/sweetest >= m.Salt:
			return units.RangeError{What: "parts of " + other.Name, Got: other.Mass.String(), Low: "0", High: "20 times the salt, " + m.Salt.String()}
		}
	}
	return nil
}
