package smoke

import (
	"math"
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Pasteurisation sets a record of the core beside what is published against Listeria monocytogenes in moist food, and explains; it never decides. No
// verdict is made of it: see its cautions.
type Pasteurisation struct {
	Equivalent time.Duration // at Reference, of the coldest probe
	SixLog     time.Duration // at Reference, published for a reduction of a million times in moist food
	Reference  units.Temperature
	Citation   cite.Citation
	Cautions   []cite.Caution
}

// MarshalJSON writes the explanation as an app shows it.
func (p Pasteurisation) MarshalJSON() ([]byte, error) { return wire.Marshal(p) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (p *Pasteurisation) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, p) }

// The reference of the published table: 2 min at 70 °C, ten times faster for each 7.5 K.
const (
	sixLog         = 2 * time.Minute
	referenceC     = 70
	decimalKelvins = 7.5
)

// Pasteurise returns how long at 70 °C the records of the core come to, for the probe where that is least: the integral of 10^((T - 70 °C)/7.5 K)
// over straight lines, exact on them and rounded down to the millisecond. The records must be as for AuditHold: otherwise a ProbeError. A straight line across a
// gap is believed. Source: FDA Hazards guide, Appendix 4, table A-3, p. 422; 70 °C for 2 min also in New Zealand MPI 2016/05.
func Pasteurise(cores ...series.Series[units.Temperature]) (Pasteurisation, error) {
	if _, err := (Record{Cores: cores}).checkCores(); err != nil {
		return Pasteurisation{}, err
	}
	p := Pasteurisation{SixLog: sixLog, Reference: units.Celsius(referenceC), Citation: listeriaCitation, Cautions: listeriaCautions()}
	for i, core := range cores {
		seconds := 0.
		a, _ := core.First()
		for j := 1; j < core.Len(); j++ {
			b, _ := core.At(j)
			seconds += float64((b.At - a.At).Seconds() * meanRate(a.Value.Celsius(), b.Value.Celsius()))
			a = b
		}
		if !(seconds < 1e9) {
			return Pasteurisation{}, ProbeError{Probe: i, At: a.At, Err: units.RangeError{What: "record", Got: "more than thirty years' worth of 70 °C"}}
		}
		equivalent := time.Duration(seconds*1000) * time.Millisecond
		if i == 0 || equivalent < p.Equivalent {
			p.Equivalent = equivalent
		}
	}
	return p, nil
}

// rate is the speed of killing at t °C to that at 70 °C.
func rate(t float64) float64 { return portable.Exp(math.Ln10 * (t - referenceC) / decimalKelvins) }

// meanRate is the mean of rate over a straight line from a to b: (L2 - L1)/ln(L2/L1).
func meanRate(a, b float64) float64 {
	x := math.Ln10 * (b - a) / decimalKelvins
	if math.Abs(x) < 1e-6 {
		return rate(a) * (1 + float64(x/2))
	}
	return rate(a) * portable.Expm1(x) / x
}

var listeriaCitation = readIn(cite.FDAHazardsGuide2020, "Appendix 4, table A-3, p. 422")

func listeriaCautions() []cite.Caution {
	return []cite.Caution{
		{
			ID: "smoke.listeria-surface", Deciding: true,
			Text: "This explains and proves nothing. The dry surface shields Listeria, which lived on salmon steaks at cores up to 82.8 °C " +
				"without smoke and up to 80.0 °C with smoke in the second half only.",
			Citation: cite.Citation{Source: cite.Poysky1997, Where: "abstract", Basis: cite.Read},
		},
		{
			ID: "smoke.spores-survive", Deciding: true,
			Text:     "It says nothing of spores: Clostridium botulinum survives all of these temperatures in dry smoke.",
			Citation: cite.Citation{Source: cite.Lindstrom2003, Where: "abstract", Basis: cite.Read},
		},
		{ID: "smoke.listeria-moist", Text: "The published table holds for moist heat in the food.", Citation: listeriaCitation},
	}
}
