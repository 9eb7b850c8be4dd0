package process

import "example.org/lakelarder/internal/word"

// Gauge is the kind of gauge that tells the pressure in the canner. The two have tables of their own. The
// zero Gauge is not set.
type Gauge uint8

// The kinds of gauge.
const (
	// Dial reads any pressure; its error must be known. The canner does not vent during the process.
	Dial Gauge = iota + 1
	// Weighted holds the pressure stamped on the weight, 5, 10 or 15 lb, and nothing between.
	Weighted
)

var gauges = word.List[Gauge]{What: "gauge", Words: []string{"dial", "weighted"}}

// ParseGauge reads "dial" or "weighted", in capitals or not; anything else is a units.ParseError.
func ParseGauge(s string) (Gauge, error) {
	return gauges.Parse(s)
}

// String is the word that ParseGauge reads; "not stated" when it is not set.
func (g Gauge) String() string { return gauges.Of(g) }

// MarshalText is String as bytes, empty when the gauge is not set; an unknown one is an error.
func (g Gauge) MarshalText() ([]byte, error) { return gauges.Marshal(g) }

// UnmarshalText is ParseGauge, and the empty text is a gauge that is not set.
func (g *Gauge) UnmarshalText(text []byte) error { return gauges.Unmarshal(text, g) }
