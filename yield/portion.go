package yield

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Portion is what a mass of a food holds, by one row of the composition data: printed contents, not normalised.
// Sodium, EPA and DHA are left out where the row has none. Samples and OmegaSamples say on how little the figures
// rest.
type Portion struct {
	Mass         units.Mass
	Energy       units.Energy
	Protein      units.Mass
	Fat          units.Mass
	Sodium       units.Stated[units.Mass]
	EPA          units.Stated[units.Mass]
	DHA          units.Stated[units.Mass]
	Samples      int
	OmegaSamples int
	Citation     cite.Citation
	Cautions     []cite.Caution
}

// MarshalJSON writes the portion as an object of its fields.
func (p Portion) MarshalJSON() ([]byte, error) { return wire.Marshal(p) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (p *Portion) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, p) }

// Portion returns what a mass of the food holds, each figure rounded to its nearest quantum. The energy is the
// printed one, whichever factors it was made with. The mass must not be negative and no larger than a tonne;
// otherwise a RangeError.
func (c Composition) Portion(mass units.Mass) (Portion, error) {
	if err := units.Check("mass of a portion", mass, 0, units.Tonne); err != nil {
		return Portion{}, err
	}
	p := Portion{Mass: mass, Samples: c.Samples, OmegaSamples: c.OmegaSamples, Citation: c.Citation}
	p.Cautions = append(p.Cautions, c.Cautions...)
	var err error
	if p.Energy, err = units.Prorate(c.Energy, mass, 100*units.Gram); err != nil {
		return Portion{}, err
	}
	if p.Protein, err = c.Proximate.Protein.Of(mass); err != nil {
		return Portion{}, err
	}
	if p.Fat, err = c.Proximate.Fat.Of(mass); err != nil {
		return Portion{}, err
	}
	for _, n := range []struct {
		of   units.Stated[units.Ratio]
		into *units.Stated[units.Mass]
		none cite.Caution
	}{{c.Sodium, &p.Sodium, noSodium}, {c.EPA, &p.EPA, noEPA}, {c.DHA, &p.DHA, noDHA}} {
		if !n.of.Given {
			n.none.Citation = c.Citation
			p.Cautions = append(p.Cautions, n.none)
			continue
		}
		m, err := n.of.Value.Of(mass)
		if err != nil {
			return Portion{}, err
		}
		*n.into = units.State(m)
	}
	return p, nil
}

// What a row does not have.
var (
	noSodium = cite.Caution{ID: "yield.no-sodium", Text: "The row has no sodium."}
	noEPA    = cite.Caution{ID: "yield.no-epa", Text: "The row has no EPA."}
	noDHA    = cite.Caution{ID: "yield.no-dha", Text: "The row has no DHA."}
)

// JarServings is what is eaten from one jar. Drained + Liquid is the pack to the quantum. Servings rounds down.
type JarServings struct {
	Drained  units.Mass
	Liquid   units.Mass
	Servings units.Ratio
}

// Servings returns the drained mass of a jar packed with this much raw fish, the liquid that it gives off, and the
// servings in it. A sealed jar loses nothing: only the split changes. Drained is the share of the pack, by published
// cans 0.77 (pink) to 0.81 (sockeye); home jars were not weighed. Drained and Servings round down. The pack must not
// be negative, the share in 0 to 100 % and the serving at least 1 g; otherwise a RangeError.
func Servings(pack units.Mass, drained units.Ratio, serving units.Mass) (JarServings, error) {
	solids, liquid, err := Split(pack, drained)
	if err != nil {
		return JarServings{}, err
	}
	if serving < units.Gram {
		return JarServings{}, units.RangeError{What: "serving", Got: serving.String(), Low: units.Gram.String()}
	}
	servings, err := units.ProrateDown(units.One, solids, serving)
	if err != nil {
		return JarServings{}, err
	}
	return JarServings{Drained: solids, Liquid: liquid, Servings: servings}, nil
}
