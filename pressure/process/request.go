package process

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Request is what a process is looked up by. All of it must be stated: an altitude of 0 ft is sea level, and an altitude
// that is not stated is refused.
type Request struct {
	Product  Product                    `wire:"required"`
	Pack     Pack                       `wire:"required"`
	Jar      Jar                        `wire:"required"`
	Gauge    Gauge                      `wire:"required"`
	Altitude units.Stated[units.Length] `wire:"required"` // of the stove that the canner stands on
}

// MarshalJSON writes the request in the words that UnmarshalJSON reads.
func (r Request) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads a request strictly: every part, in the words of its type, nothing else.
func (r *Request) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// String is the request in one line: "raw fish in pint jars, dial gauge, at 4,350 ft".
func (r Request) String() string {
	s := load(r.Product, r.Pack, r.Jar) + ", " + gaugeWords(r.Gauge)
	if !r.Altitude.Given {
		return s + ", altitude not stated"
	}
	return s + ", at " + height(r.Altitude.Value)
}

// load is what stands in the canner, in words.
func load(product Product, pack Pack, jar Jar) string {
	s := productWords(product)
	if pack == RawPack || pack == Precooked {
		s = pack.String() + " " + s
	}
	switch {
	case jar == 0:
		return s + " in jars of a size that is not stated"
	case !jars.Known(jar):
		return s + " in " + jar.String()
	}
	return s + " in " + jar.String() + " jars"
}

func productWords(p Product) string {
	if p == 0 {
		return "a product that is not stated"
	}
	if !products.Known(p) {
		return "an unknown " + p.String()
	}
	return p.String()
}

func gaugeWords(g Gauge) string {
	switch {
	case g == 0:
		return "a gauge that is not stated"
	case !gauges.Known(g):
		return g.String()
	}
	return g.String() + " gauge"
}
