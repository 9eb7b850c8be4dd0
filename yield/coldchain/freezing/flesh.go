package freezing

import (
	"math"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Flesh is what fish is made of, by mass, and how it freezes. The shares must be 0 or more and make up 95 to 105 %,
// which is evened out to the whole, as composition tables seldom add up.
type Flesh struct {
	Water        units.Ratio `wire:"required"`
	Protein      units.Ratio `wire:"required"`
	Fat          units.Ratio `wire:"required"`
	Carbohydrate units.Ratio
	Ash          units.Ratio
	// FreezesAt is where the first ice forms, -5 to -0.1 °C: about -1 °C for white fish by the FAO, 28 °F (-2.2 °C) in
	// ASHRAE's table.
	FreezesAt units.Temperature `wire:"required"`
	// Bound is the water that never freezes, as a share of the whole; left out, 0.4 of the protein.
	Bound units.Stated[units.Ratio]
	// Law is how the ice grows with the cold; not stated, it is IdealIce.
	Law IceLaw
}

// MarshalJSON writes the flesh in the words that UnmarshalJSON reads.
func (f Flesh) MarshalJSON() ([]byte, error) { return wire.Marshal(f) }

// UnmarshalJSON reads the flesh strictly.
func (f *Flesh) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, f) }

// Thermal are the thermal properties of fish at one temperature. Heat runs through its parts neither all side by side
// nor all one behind the other: the true conductivity and diffusivity lie between those bounds. Neither SpecificHeat
// nor the diffusivity has the heat of the ice in it that comes and goes while fish freezes: Flesh.Heat has. With Ice,
// the Citation is that of the law of ice.
type Thermal struct {
	Ice                             units.Ratio // of the whole
	Density                         units.Density
	SpecificHeat                    units.SpecificHeat
	ConductivityLow                 units.Conductivity // parts one behind the other
	ConductivityMiddle              units.Conductivity // geometric mean of the parts
	ConductivityHigh                units.Conductivity // parts side by side
	DiffusivityLow, DiffusivityHigh units.Diffusivity
	Citation                        cite.Citation
}

const (
	bindingProtein = 0.4    // share of the protein's weight in water that never freezes
	fusion         = 335e3  // J/kg; sources have 333.2 to 335, the largest makes freezing longest
	tchigeovA      = 1.105  // of the second law
	tchigeovB      = 0.7138 // of the second law
)

var (
	fleshCitation = cite.Citation{
		Source: cite.ChoiOkos1986, Where: "appendix of Ibarz and Barbosa-Canovas", Basis: cite.Computed,
	}
	iceCitation = cite.Citation{
		Source: cite.ASHRAERefrigeration2006, Where: "ch. 9, bound water, as coded", Basis: cite.Quoted,
	}

	tchigeovCitation = cite.Citation{
		Source: cite.Tchigeov1979, Where: "share of frozen water, equation 5 of an ASHRAE chapter, as coded", Basis: cite.Quoted,
	}
)

// MarshalJSON writes the properties as an app shows it.
func (t Thermal) MarshalJSON() ([]byte, error) { return wire.Marshal(t) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (t *Thermal) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, t) }

// blend is Flesh with its shares made whole, in plain numbers.
type blend struct {
	water, protein, fat, carbohydrate, ash float64
	freezesAt                              float64
	freezable                              float64
	law                                    IceLaw
}

// whole checks the flesh and makes its shares add up.
func (f Flesh) whole() (blend, error) {
	var sum units.Ratio
	for _, part := range [...]struct {
		name  string
		share units.Ratio
	}{{"water", f.Water}, {"protein", f.Protein}, {"fat", f.Fat}, {"carbohydrate", f.Carbohydrate}, {"ash", f.Ash}} {
		if err := units.Check(part.name, part.share, 0, 105*units.Percent); err != nil {
			return blend{}, err
		}
		sum += part.share
	}
	if err := units.Check("sum of the composition", sum, 95*units.Percent, 105*units.Percent); err != nil {
		return blend{}, err
	}
	if err := units.CheckTemperature("freezing point", f.FreezesAt, units.Celsius(-5), units.Celsius(-0.1)); err != nil {
		return blend{}, err
	}
	if err := iceLaws.CheckIfSet(f.Law); err != nil {
		return blend{}, err
	}
	b := blend{
		water: units.Float(f.Water, sum), protein: units.Float(f.Protein, sum), fat: units.Float(f.Fat, sum),
		carbohydrate: units.Float(f.Carbohydrate, sum), ash: units.Float(f.Ash, sum),
		freezesAt: f.FreezesAt.Celsius(), law: f.Law,
	}
	bound := bindingProtein * b.protein
	if f.Bound.Given {
		if err := units.Check("bound water", f.Bound.Value, 0, f.Water); err != nil {
			return blend{}, err
		}
		bound = units.Float(f.Bound.Value, sum)
	}
	b.freezable = math.Max(b.water-bound, 0)
	return b, nil
}

// ice is the share of ice at a temperature, °C.
func (b blend) ice(t float64) float64 {
	if t >= b.freezesAt {
		return 0
	}
	if b.law == TchigeovIce {
		ice := tchigeovA * b.water / (1 + tchigeovB/portable.Log(b.freezesAt-t+1))
		return math.Min(ice, b.freezable)
	}
	return b.freezable * (1 - b.freezesAt/t)
}

func checkFlesh(t units.Temperature) error {
	return units.CheckTemperature("temperature of the flesh", t, units.Celsius(-40), units.Celsius(150))
}

// IceAt returns how much of the whole is ice at a temperature from -40 to 150 °C, to the nearest 1e-12; 0 from the
// freezing point up. A composition or temperature out of range is a units.RangeError. The laws are from memory: for
// lean fish they give 73 and 77 % of the water at -5 °C where the FAO prints 70, and 50 and 58 % at -2.2 °C where it
// prints 55.
func (f Flesh) IceAt(t units.Temperature) (units.Ratio, error) {
	if err := checkFlesh(t); err != nil {
		return 0, err
	}
	b, err := f.whole()
	if err != nil {
		return 0, err
	}
	return units.OfFloat(b.ice(t.Celsius()), units.One)
}
