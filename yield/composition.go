package yield

import (
	"fmt"
	"math"
	"strings"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Composition is one row of the open composition data of the USDA, as printed: the four of the Proximate do not add
// up to 100 %. Energy is that of 100 g. Sodium, EPA and DHA are shares of the food, left out where the row has none.
// Samples is the number behind the water and OmegaSamples that behind the EPA; zero means that none is stated.
// Citation names the release.
type Composition struct {
	Number       int
	Name         string
	Proximate    Proximate
	Energy       units.Energy
	Sodium       units.Stated[units.Ratio]
	EPA          units.Stated[units.Ratio]
	DHA          units.Stated[units.Ratio]
	Samples      int
	OmegaSamples int
	Citation     cite.Citation
	Cautions     []cite.Caution
}

// MarshalJSON writes the row as an object of its fields.
func (c Composition) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (c *Composition) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// CompositionError says what the composition data does not hold: the food under this number in this release or, where
// Lacks is set, one of its figures. Releases are those that do list the number. No other food and no other release
// stands in.
type CompositionError struct {
	Number   int
	Release  cite.Source
	Lacks    string
	Releases []cite.Source
}

// Error says what was not found and where the number is listed.
func (e CompositionError) Error() string {
	if e.Lacks != "" {
		return fmt.Sprintf("food %d has no %s in %v", e.Number, e.Lacks, e.Release)
	}
	listed := make([]string, len(e.Releases))
	for i, r := range e.Releases {
		listed[i] = r.Key()
	}
	where := "it is not listed here at all"
	if len(listed) > 0 {
		where = "it is listed from " + strings.Join(listed, ", ")
	}
	return fmt.Sprintf("food %d is not listed here from %v; %s", e.Number, e.Release, where)
}

// Is reports whether target is ErrNotPublished.
func (e CompositionError) Is(target error) bool { return target == ErrNotPublished }

// Compositions returns every row of the composition data, in the order of the table: raw, canned, smoked, dried and
// cooked salmon, trout and other lake fish. The slice is the caller's own.
func Compositions() []Composition {
	all := make([]Composition, len(compositionTable))
	for i := range compositionTable {
		all[i] = compositionTable[i].composition()
	}
	return all
}

// FindComposition returns the row of a food number in one release, cite.USDASR26 or cite.USDASR28. Only the two
// sockeye rows that differ between them are listed from both. Anything else is a CompositionError.
func FindComposition(number int, release cite.Source) (Composition, error) {
	missing := CompositionError{Number: number, Release: release}
	for i := range compositionTable {
		switch r := compositionTable[i]; {
		case r.number != number:
		case r.release == release:
			return r.composition(), nil
		default:
			missing.Releases = append(missing.Releases, r.release)
		}
	}
	return Composition{}, missing
}

// Makeup returns a piece of this mass with the composition of the food, normalised as Proximate.Makeup does it; the
// food keeps the residual. A food without sodium is a CompositionError. Sodium that does not fit into the ash as
// salt, as in the row of lox, is a RangeError: that row contradicts itself.
func (c Composition) Makeup(mass units.Mass) (Makeup, error) {
	if !c.Sodium.Given {
		return Makeup{}, CompositionError{Number: c.Number, Release: c.Citation.Source, Lacks: "sodium"}
	}
	return c.Proximate.Makeup(mass, c.Sodium.Value)
}

// compositionRow is one printed row, per 100 g.
type compositionRow struct {
	number                   int
	release                  cite.Source
	name                     string
	water, protein, fat, ash float64 // g
	energy                   int64   // kcal
	sodium                   float64 // mg
	epa, dha                 float64 // g
	samples, omegaSamples    int
}

// composition is the row as a caller sees it.
func (r compositionRow) composition() Composition {
	f := Composition{
		Number: r.number, Name: r.name,
		Proximate: Proximate{Water: pct(r.water), Protein: pct(r.protein), Fat: pct(r.fat), Ash: pct(r.ash)},
		Energy:    units.Energy(r.energy) * units.Kilocalorie,
		Sodium:    printedShare(r.sodium, units.Percent/1000), EPA: printedShare(r.epa, units.Percent), DHA: printedShare(r.dha, units.Percent),
		Samples: r.samples, OmegaSamples: r.omegaSamples,
		Citation: cite.Citation{Source: r.release, Where: fmt.Sprintf("NDB %05d", r.number), Basis: cite.Read},
	}
	f.Cautions = r.cautions(f.Citation)
	return f
}

// cautions are what must be known of the row.
func (r compositionRow) cautions(from cite.Citation) []cite.Caution {
	var all []cite.Caution
	for _, c := range calculated {
		if c.cooked == r.number {
			all = append(all, cite.Caution{
				ID: "yield.calculated-row",
				Text: "This row was calculated from the row of the raw fish and not measured. " +
					"It says nothing of losses in cooking.",
				Citation: oneRatio(r.release, c.raw),
			})
		}
	}
	switch {
	case r.samples == 0:
		all = append(all, cite.Caution{
			ID: "yield.samples-not-stated", Text: "No number of samples is known for this row.", Citation: from,
		})
	case r.samples < few:
		all = append(all, cite.Caution{
			ID: "yield.few-samples", Text: "This row rests on fewer than four samples.", Citation: from,
		})
	}
	if r.omegaSamples > 0 && r.omegaSamples < few {
		all = append(all, cite.Caution{
			ID: "yield.few-omega-samples", Text: "EPA and DHA rest on fewer than four samples.", Citation: from,
		})
	}
	return all
}

// calculated are the cooked rows whose protein, fat and dry matter stand to those of the raw row in one ratio.
var calculated = [...]struct{ cooked, raw int }{
	{15082, 15081}, {15086, 15085}, {15204, 15064}, {15209, 15076}, {15211, 15079}, {15212, 15083}, {15219, 15114}, {15223, 15130}, {15241, 15240},
}

// oneRatio is how it shows that a row was calculated from a raw one.
func oneRatio(release cite.Source, raw int) cite.Citation {
	where := fmt.Sprintf("NDB %05d: protein, fat and dry matter of both rows in one ratio", raw)
	return cite.Citation{Source: release, Where: where, Basis: cite.Computed}
}

// few samples earn a caution.
const few = 4

// printedShare is a figure in its unit of 100 g of the food, left out where the row has none.
func printedShare(x float64, unit units.Ratio) units.Stated[units.Ratio] {
	if x == none {
		return units.Stated[units.Ratio]{}
	}
	return units.State(units.Ratio(math.Round(float64(x * float64(unit)))))
}
