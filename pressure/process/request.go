package process

import "example.org/lakelarder/units"

// Request is what a process is looked up by. All of it must be set; an Altitude of zero is sea level.
type Request struct {
	Product  Product
	Pack     Pack
	Jar      Jar
	Gauge    Gauge
	Altitude units.Length // of the kitchen, not of the water
}

// String is the request in one line: "raw fish in pint jars, dial gauge, at 4,350 ft".
func (r Request) String() string {
	return load(r.Product, r.Pack, r.Jar) + ", " + gaugeWords(r.Gauge) + ", at " + height(r.Altitude)
}

// load is what stands in the canner, in words.
func load(product Product, pack Pack, jar Jar) string {
	s := product.String()
	if pack == RawPack || pack == Precooked {
		s = pack.String() + " " + s
	}
	if !jarNames.Known(uint8(jar)) {
		return s + " in " + jar.String()
	}
	return s + " in " + jar.String() + " jars"
}

func gaugeWords(g Gauge) string {
	if !gaugeNames.Known(uint8(g)) {
		return g.String()
	}
	return g.String() + " gauge"
}
