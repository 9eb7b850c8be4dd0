package process

// Missing is the part of a request for which nothing is published. The zero Missing is none.
type Missing uint8

// The parts of a request, in the order in which the tables are read.
const (
	MissingProduct Missing = iota + 1
	MissingPack
	MissingJar
	MissingGauge
	MissingAltitude
)

var missingNames = names{what: "missing", words: []string{"nothing", "product", "pack", "jar", "gauge", "altitude"}}

// String is the part in one word: "jar".
func (m Missing) String() string { return missingNames.word(uint8(m)) }

// NotPublishedError says that nobody has published a process for the request. The numbers may all be
// fine: it never wraps a units.RangeError. Missing is the first part of the request, in the order product,
// pack, jar, gauge, altitude, that the tables do not have; Stated is what they do have there, in words.
// It offers no other row: the nearest jar or the next band is not an answer.
type NotPublishedError struct {
	Request Request
	Missing Missing
	Stated  string
}

// Error says what no process is published for and what the tables cover.
func (e NotPublishedError) Error() string {
	return "no process is published for " + e.refused() + "; " + e.Stated
}

// refused is the request up to the part that is missing.
func (e NotPublishedError) refused() string {
	r := e.Request
	switch e.Missing {
	case MissingProduct:
		return r.Product.String()
	case MissingPack:
		return r.Product.String() + " packed " + r.Pack.String()
	case MissingJar:
		return load(r.Product, r.Pack, r.Jar)
	case MissingGauge:
		return load(r.Product, r.Pack, r.Jar) + " on " + r.Gauge.String() + " gauge"
	}
	return r.String()
}
