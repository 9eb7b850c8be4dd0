package growth

import (
	"math"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// listeriaZero is T0 of the square root conversion, °C, inferred from the printed rates.
const listeriaZero = -1.18

var (
	squareRootCitation = cite.Citation{
		Source: cite.ListeriaRiskAssessment2003, Where: "square-root conversion with T0 = -1.18 C",
		Basis: cite.Computed,
	}
	rateTableCitation = cite.Citation{
		Source: cite.ListeriaRiskAssessment2003, Where: "appendix 8, table 1", Basis: cite.Read,
	}
)

// ListeriaRate converts a rate of growth of Listeria, in log10 a day, seen at one temperature to another:
// it is proportional to (T + 1.18)², T in °C, and zero at and below -1.18 °C. The rate must not be below
// zero, from lie above -1.18 °C and both at or below 25 °C: otherwise a units.RangeError. It gives 14 of 15
// published rates of smoked fish at 5 °C to their last digit or nearly, one of fresh catfish 3 % too high.
// Source: FDA and FSIS risk assessment 2003; the -1.18 °C is inferred from its table.
func ListeriaRate(rate units.Ratio, from, to units.Temperature) (Rate, error) {
	if err := units.Check("rate of growth a day", rate, 0, math.MaxInt64); err != nil {
		return Rate{}, err
	}
	low, high := units.Celsius(listeriaZero).Add(1), units.Celsius(growthHigh)
	if err := units.CheckTemperature("temperature of a rate of growth", from, low, high); err != nil {
		return Rate{}, err
	}
	if err := checkGrowth(to); err != nil {
		return Rate{}, err
	}
	root := math.Max(0, to.Celsius()-listeriaZero) / (from.Celsius() - listeriaZero)
	perDay := units.Float(rate, units.One) * (root * root)
	return rateOf(perDay*(math.Ln10/24), squareRootCitation,
		zeroInferred)
}

var zeroInferred = cite.Caution{
	ID:       "growth.zero-inferred",
	Text:     "The temperature without growth, -1.18 °C (29.9 °F), is inferred from the printed rates.",
	Citation: rateTableCitation,
}
