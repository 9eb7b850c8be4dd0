package growth

import (
	"math"
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// The model of raw salmon: mu = (salmonScale (T - salmonZero)^salmonPower)² an hour, T in °C, and a lag of
// e^salmonLag mu^salmonLagPower hours. The power within the square makes it T^1.5.
const (
	salmonScale    = 0.0581
	salmonZero     = 1.3
	salmonPower    = 0.75
	salmonLag      = 0.84
	salmonLagPower = -1.11
)

var rawSalmonCitation = cite.Citation{
	Source: cite.Jia2020, Where: "growth rate and lag equations", Basis: cite.Computed,
}

// RawSalmonRate is the growth of Listeria on raw salmon. Lag is the time before it begins, rounded down
// to the nanosecond; it is not given where nothing grows by the model, nor past 292 years.
type RawSalmonRate struct {
	Rate
	Lag units.Stated[time.Duration]
}

// MarshalJSON writes the rate as an app shows it.
func (r RawSalmonRate) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *RawSalmonRate) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// ListeriaInRawSalmon returns the growth of Listeria on raw salmon at a temperature. At and below 1.3 °C
// the model has none, though Listeria is known to grow down to 31.3 °F (-0.4 °C), and the result says so. A
// temperature that is not set or above 25 °C is a units.RangeError. Source: Jia et al. 2020, coefficients
// read in a transcription.
func ListeriaInRawSalmon(t units.Temperature) (RawSalmonRate, error) {
	if err := checkGrowth(t); err != nil {
		return RawSalmonRate{}, err
	}
	mu := 0.0
	if above := t.Celsius() - salmonZero; above > 0 {
		root := salmonScale * portable.Pow(above, salmonPower)
		mu = root * root
	}
	g, err := rateOf(mu, rawSalmonCitation, lagIsModel)
	if err != nil {
		return RawSalmonRate{}, err
	}
	r := RawSalmonRate{Rate: g}
	if lag := portable.Exp(salmonLag) * portable.Pow(mu, salmonLagPower) * float64(time.Hour); lag < math.MaxInt64 {
		r.Lag = units.State(time.Duration(lag))
	}
	return r, nil
}

var lagIsModel = cite.Caution{
	ID:       "growth.lag-is-a-model",
	Text:     "The lag is a model's, and a real fish need not keep to it: count growth from the start.",
	Citation: rawSalmonCitation,
}
