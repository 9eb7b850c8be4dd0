package growth

import (
	"math"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Rate is how fast Listeria grows once it does: PerHour in natural logarithms an hour, as models state
// it, PerDay the same in log10 a day, 24/ln 10 times as much. Both are rounded to 1e-12. It explains why a
// limit is short and never makes it longer: limits are those of coldchain.Audit.
type Rate struct {
	PerHour  units.Ratio `wire:"always"`
	PerDay   units.Ratio `wire:"always"`
	Citation cite.Citation
	Cautions []cite.Caution
}

// MarshalJSON writes the rate as an app shows it.
func (g Rate) MarshalJSON() ([]byte, error) { return wire.Marshal(g) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (g *Rate) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, g) }

// Over returns the log10 by which the bacteria increase in a time at this rate, with no time lost before they
// begin: 3 is a thousandfold. It is rounded up to 1e-12. A time below zero, or an increase past 9 million, is a
// units.RangeError.
func (g Rate) Over(d time.Duration) (units.Ratio, error) {
	if err := units.CheckDuration("time of growth", d, 0, math.MaxInt64); err != nil {
		return 0, err
	}
	return units.OfFloat(math.Ceil(float64(g.PerDay)*(float64(d)/float64(chain.Day))), units.Ratio(1))
}

// growthHigh is where these models end, °C: their square roots hold on the cool side of the best
// temperature only.
const growthHigh = 25

var growthLimits = cite.Citation{
	Source: cite.FDAHazardsGuide2020, Where: "Appendix 4, table A-1, p. 420", Basis: cite.Read,
}

var (
	modelOnly = cite.Caution{
		ID: "growth.model-only", Deciding: true,
		Text: "This is a model: it explains why the limits are short and never makes them longer.",
	}
	growsOn = cite.Caution{
		ID: "growth.grows-on",
		Text: "No growth by a model is not no growth: Listeria is known to grow down to 31.3 °F (-0.4 °C), " +
			"water activity 0.92 and pH 4.4.",
		Citation: growthLimits,
	}
)

// rateOf is the Rate of mu in natural logarithms an hour.
func rateOf(perHour float64, citation cite.Citation, cautions ...cite.Caution) (Rate, error) {
	g := Rate{Citation: citation}
	var err error
	if g.PerHour, err = units.OfFloat(perHour, units.One); err != nil {
		return Rate{}, err
	}
	if g.PerDay, err = units.OfFloat(perHour*(24/math.Ln10), units.One); err != nil {
		return Rate{}, err
	}
	g.Cautions = append(append(make([]cite.Caution, 0, 3), modelOnly, growsOn), cautions...)
	return g, nil
}

// checkGrowth refuses a temperature that is not set or warmer than the models know.
func checkGrowth(t units.Temperature) error {
	switch high := units.Celsius(growthHigh); {
	case !t.IsSet():
		return units.UnsetError{What: "temperature of a growth model"}
	case t.Above(high):
		return units.RangeError{What: "temperature of a growth model", Got: t.String(), High: high.String()}
	}
	return nil
}
