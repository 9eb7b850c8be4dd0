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

// String is the request in one line: "raw fish in pint jars, dial gauge, 4,350 ft".
func (r Request) String() string {
	return load(r.Product, r.Pack, r.Jar) + ", " + r.Gauge.String() + " gauge, " + r.Altitude.String() + " altitude"
}

// load is what stands in the canner, in words.
func load(product Product, pack Pack, jar Jar) string {
	s := product.String()
	if pack != AsSmoked {
		s = pack.String() + " " + s
	}
	return s + " in " + jar.String() + " jars"
}
