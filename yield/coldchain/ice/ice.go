package ice

import (
	"math"
	"math/big"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Constant is how much ice chills fish: PerDegree is kilograms of ice for a kilogram of fish and a degree Celsius.
// Three are in circulation and lie 14 % apart, because they take fish to hold 0.8 or 0.9 kcal/(kg °C) or more. Name
// says which it is.
type Constant struct {
	Name      string
	PerDegree units.Ratio
	Citation  cite.Citation
}

// Need is an amount of ice, rounded up to the gram, and never less than what was computed.
type Need struct {
	Mass     units.Mass
	Citation cite.Citation
	Cautions []cite.Caution
}

// MarshalJSON writes the amount as an app shows it.
func (n Need) MarshalJSON() ([]byte, error) { return wire.Marshal(n) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (n *Need) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, n) }

// Constants returns the three constants in circulation, the largest first: that one is the default. The slice is the
// caller's own.
func Constants() []Constant { return append([]Constant(nil), iceConstants[:]...) }

// The fish and the ice of ConstantOf, and the fish that ToChill chills.
const (
	leastFishHeat = 2 * units.KilojoulePerKilogramKelvin // dried, fat
	mostFishHeat  = 4_200 * units.JoulePerKilogramKelvin // water
	leastIceHeat  = 250 * units.KilojoulePerKilogram     // half water already
	mostIceHeat   = 340 * units.KilojoulePerKilogram     // dry fresh ice
	warmestFish   = 40
)

// ConstantOf returns the constant of a fish of a specific heat c in ice of a latent heat L: c/L, rounded up to 1e-12.
// The heats must be 2 to 4.2 kJ/(kg K) and 250 to 340 kJ/kg: otherwise a units.RangeError. Both may be in joules or
// kilocalories, each in its own unit of package units. Source: Mi = Mf c (ts - tc)/L, FAO Fisheries Technical Paper
// 331, chapter 3.
func ConstantOf(c units.SpecificHeat, latent units.SpecificEnergy) (Constant, error) {
	if err := units.Check("specific heat of fish", c, leastFishHeat, mostFishHeat); err != nil {
		return Constant{}, err
	}
	if err := units.Check("latent heat of ice", latent, leastIceHeat, mostIceHeat); err != nil {
		return Constant{}, err
	}
	// Both count in millionths of a joule.
	per, err := upTo[units.Ratio](1, []int64{int64(units.One), int64(c)}, []int64{int64(latent)})
	return Constant{"specific heat over latent heat", per, chillingCitation}, err
}

// ToChill returns the ice that melts while it takes fish from one temperature to another, and no more: nothing for the
// box, the way or the ice that must be left at the end. The zero Constant is the largest of Constants, which are for
// fresh ice. The fish must weigh 1 g to 10 t, or nothing; from must lie in 0 to 40 °C and to between 0 °C and from:
// otherwise a units.RangeError, as for a constant outside 0.5 to 2 %. Rounded up to the gram. Source: FAO Fisheries
// Technical Paper 331, chapter 3, equations 4 and 5.
func ToChill(fish units.Mass, from, to units.Temperature, constant Constant) (Need, error) {
	if constant == (Constant{}) {
		constant = iceConstants[0]
	}
	const least, most = units.Percent / 2, 2 * units.Percent
	if err := units.Check("ice for each kilogram and degree", constant.PerDegree, least, most); err != nil {
		return Need{}, err
	}
	if err := checkFishMass(fish); err != nil {
		return Need{}, err
	}
	if err := units.CheckTemperature("fish before", from, units.Celsius(0), units.Celsius(warmestFish)); err != nil {
		return Need{}, err
	}
	if err := units.CheckTemperature("fish after", to, units.Celsius(0), from); err != nil {
		return Need{}, err
	}
	change, err := from.Sub(to)
	if err != nil {
		return Need{}, err
	}
	mass, err := upTo(units.Gram,
		[]int64{int64(fish), int64(constant.PerDegree), int64(change)},
		[]int64{int64(units.One), int64(units.CelsiusDegrees)})
	return Need{mass, constant.Citation, []cite.Caution{iceMelted, iceByTouch}}, err
}

const mostFish = 10 * units.Tonne

func checkFishMass(fish units.Mass) error { return checkMass("fish", fish, mostFish) }

// leastMass is the least that a scale for fish or ice shows; less is taken for a number whose unit was left out.
const leastMass = units.Gram

// checkMass refuses a mass below zero, above most, or so small that its unit was left out.
func checkMass(what string, m, most units.Mass) error {
	if err := units.CheckUnit(what, m, leastMass); err != nil {
		return err
	}
	return units.Check(what, m, 0, most)
}

var (
	iceMelted = cite.Caution{
		ID: "ice.melted-only",
		Text: "This is the ice that melts in chilling the fish: what the box lets in, what drains and what must be left at " +
			"the end come on top.",
		Citation: chillingCitation,
	}
	iceByTouch = cite.Caution{
		ID: "ice.touch",
		Text: "Ice chills only the fish that it touches: bed, layer and cover it, let the meltwater drain, " +
			"and measure the thickest fish.",
		Citation: cite.Citation{Where: "icing a box of fish", Basis: cite.Practice},
	}
)

// upTo is the product of the numerators over that of the denominators, rounded up to a multiple of step: exact until it
// is rounded. The factors must not be negative and no denominator zero. A result past the range is a units.RangeError.
func upTo[Q units.Quantity](step Q, numerators, denominators []int64) (Q, error) {
	high, low := big.NewInt(1), big.NewInt(int64(step))
	for _, n := range numerators {
		high.Mul(high, big.NewInt(n))
	}
	for _, n := range denominators {
		low.Mul(low, big.NewInt(n))
	}
	high.Add(high, low).Sub(high, big.NewInt(1)).Quo(high, low).Mul(high, big.NewInt(int64(step)))
	if !high.IsInt64() {
		return 0, units.RangeError{
			What: "amount of ice", Got: "too large", High: units.Text(units.Mass(math.MaxInt64), units.Tonne, 0),
		}
	}
	return Q(high.Int64()), nil
}
