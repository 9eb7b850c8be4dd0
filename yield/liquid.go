package yield

import (
	"strings"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Liquid is the free liquid of a can, by difference of the whole contents and the drained solids. Proximate, Sodium,
// EPA and DHA are shares of the liquid; Lost is what pouring it off takes, as shares of what is in the can.
type Liquid struct {
	Mass      units.Mass
	Drained   units.Ratio // share of the can that the solids are
	Proximate Proximate
	Sodium    units.Stated[units.Ratio]
	EPA       units.Stated[units.Ratio]
	DHA       units.Stated[units.Ratio]
	Lost      PouredOff
	Citation  cite.Citation
	Cautions  []cite.Caution
}

// MarshalJSON writes the liquid as an object of its fields.
func (l Liquid) MarshalJSON() ([]byte, error) { return wire.Marshal(l) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (l *Liquid) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, l) }

// PouredOff is what leaves with the liquid, each as a share of what the whole can holds. Omega3 is EPA and DHA
// together.
type PouredOff struct {
	Protein units.Ratio
	Sodium  units.Stated[units.Ratio]
	Omega3  units.Stated[units.Ratio]
}

var byDifference = cite.Citation{Where: "liquid = (whole contents − drained solids) by mass of each component", Basis: cite.Computed}

// SplitLiquid returns the liquid of a can from the composition and the mass of its whole contents and of its drained
// solids: content of the liquid = (total − f·drained)/(1 − f), f the drained share. Rounded to the nearest 1e-12. A
// content that comes out below zero is given as zero and a caution names it: the data can do no better. The rows' own
// cautions stay. The cans behind the published rows are commercial, with salt added; a home jar was not weighed. The
// solids must be more than nothing and less than the can, and no content above 100 %; otherwise a RangeError.
func SplitLiquid(whole, drained Composition, can, solids units.Mass) (Liquid, error) {
	if err := units.Check("mass of the can's contents", can, units.Gram, units.Tonne); err != nil {
		return Liquid{}, err
	}
	if err := units.Check("mass of the drained solids", solids, 1, can-1); err != nil {
		return Liquid{}, err
	}
	l := Liquid{Mass: can - solids, Citation: byDifference}
	l.Cautions = append(append(l.Cautions, whole.Cautions...), drained.Cautions...)
	var err error
	if l.Drained, err = units.RatioOf(solids, can); err != nil {
		return Liquid{}, err
	}
	d := difference{can: can, solids: solids}
	l.Proximate = Proximate{
		Water:   d.content("water", whole.Proximate.Water, drained.Proximate.Water),
		Protein: d.content("protein", whole.Proximate.Protein, drained.Proximate.Protein),
		Fat:     d.content("fat", whole.Proximate.Fat, drained.Proximate.Fat),
		Ash:     d.content("ash", whole.Proximate.Ash, drained.Proximate.Ash),
	}
	l.Sodium = d.stated("sodium", whole.Sodium, drained.Sodium)
	l.EPA = d.stated("EPA", whole.EPA, drained.EPA)
	l.DHA = d.stated("DHA", whole.DHA, drained.DHA)
	l.Lost.Protein = d.poured(whole.Proximate.Protein, drained.Proximate.Protein)
	if l.Sodium.Given && whole.Sodium.Value > 0 {
		l.Lost.Sodium = units.State(d.poured(whole.Sodium.Value, drained.Sodium.Value))
	}
	if l.EPA.Given && l.DHA.Given && whole.EPA.Value+whole.DHA.Value > 0 {
		l.Lost.Omega3 = units.State(d.poured(whole.EPA.Value+whole.DHA.Value, drained.EPA.Value+drained.DHA.Value))
	}
	if d.err != nil {
		return Liquid{}, d.err
	}
	if len(d.below) > 0 {
		l.Cautions = append(l.Cautions, cite.Caution{
			ID:       "yield.less-than-nothing",
			Text:     "By difference these come out below zero and are given as zero: " + strings.Join(d.below, ", ") + ".",
			Citation: byDifference,
		})
	}
	return l, nil
}

// difference works out contents of what was poured off, and keeps the first fault and the contents below zero.
type difference struct {
	can, solids units.Mass
	below       []string
	err         error
}

func (d *difference) content(name string, whole, drained units.Ratio) units.Ratio {
	in, left := d.masses(name, whole, drained)
	if d.err != nil {
		return 0
	}
	if in < left {
		d.below = append(d.below, name)
		return 0
	}
	content, err := units.RatioOf(in-left, d.can-d.solids)
	d.keep(err)
	d.keep(units.Check("content of "+name+" in the liquid", content, 0, units.One))
	return content
}

func (d *difference) stated(name string, whole, drained units.Stated[units.Ratio]) units.Stated[units.Ratio] {
	if !whole.Given || !drained.Given {
		return units.Stated[units.Ratio]{}
	}
	return units.State(d.content(name, whole.Value, drained.Value))
}

// poured is the share of a component that leaves with the liquid; zero where by difference less than nothing does.
func (d *difference) poured(whole, drained units.Ratio) units.Ratio {
	in, left := d.masses("a component", whole, drained)
	if d.err != nil || in <= left {
		return 0
	}
	share, err := units.RatioOf(in-left, in)
	d.keep(err)
	return share
}

func (d *difference) masses(name string, whole, drained units.Ratio) (in, left units.Mass) {
	d.keep(units.Check("content of "+name+" in the can", whole, 0, units.One))
	d.keep(units.Check("content of "+name+" in the solids", drained, 0, units.One))
	if d.err != nil {
		return 0, 0
	}
	in, err := whole.Of(d.can)
	d.keep(err)
	left, err = drained.Of(d.solids)
	d.keep(err)
	return in, left
}

func (d *difference) keep(err error) {
	if d.err == nil {
		d.err = err
	}
}
