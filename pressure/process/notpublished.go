package process

import (
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
)

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

var missingNames = word.List{What: "missing", Words: []string{"nothing", "product", "pack", "jar", "gauge", "altitude"}}

// String is the part in one word: "jar".
func (m Missing) String() string { return missingNames.Of(uint8(m)) }

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
		return r.Product.String() + " in a pack given as " + r.Pack.String()
	case MissingJar:
		return load(r.Product, r.Pack, r.Jar)
	case MissingGauge:
		return load(r.Product, r.Pack, r.Jar) + " with " + gaugeWords(r.Gauge)
	}
	return r.String()
}

// part is one part of a request against the rows: what is asked for, what a row has, and how a refusal
// begins to say what there is.
type part struct {
	missing Missing
	asked   uint8
	names   word.List
	of      func(*row) uint8
	stated  string
}

func parts(r Request) [4]part {
	return [...]part{
		{MissingProduct, uint8(r.Product), productNames, func(l *row) uint8 { return uint8(l.product) }, "there are tables for "},
		{MissingPack, uint8(r.Pack), packNames, func(l *row) uint8 { return uint8(l.pack) }, "its tables are for packs: "},
		{MissingJar, uint8(r.Jar), jarNames, func(l *row) uint8 { return uint8(l.jar) }, "its tables are for jars: "},
		{MissingGauge, uint8(r.Gauge), gaugeNames, func(l *row) uint8 { return uint8(l.gauge) }, "its tables are for gauges: "},
	}
}

// narrow returns the rows for a request, or the part of it that no row has. With partly, a part that is not set
// matches every row.
func narrow(r Request, partly bool) ([]*row, *NotPublishedError) {
	var rows []*row
	for _, table := range tables {
		for i := range table {
			rows = append(rows, &table[i])
		}
	}
	for _, p := range parts(r) {
		if partly && p.asked == 0 {
			continue
		}
		var kept []*row
		for _, line := range rows {
			if p.of(line) == p.asked {
				kept = append(kept, line)
			}
		}
		if len(kept) == 0 {
			return nil, &NotPublishedError{Request: r, Missing: p.missing, Stated: p.stated + p.words(rows)}
		}
		rows = kept
	}
	return rows, nil
}

// words are the words that the rows have for the part, each once and in its own order.
func (p part) words(rows []*row) string {
	var words []string
	for v := uint8(1); p.names.Known(v); v++ {
		for _, line := range rows {
			if p.of(line) == v {
				words = append(words, p.names.Of(v))
				break
			}
		}
	}
	return word.Series(words, "and")
}

// noBand is the refusal of an altitude that no band of the row holds.
func noBand(r Request) NotPublishedError {
	e := NotPublishedError{Request: r, Missing: MissingAltitude}
	switch {
	case r.Altitude < 0:
		e.Stated = "the tables start at 0 ft"
	case r.Gauge == Dial:
		e.Stated = "the dial-gauge tables end at " + height(lastDial)
	default:
		e.Stated = "nothing is looked up above " + height(Ceiling)
	}
	return e
}

// lastDial is where the dial-gauge tables end.
const lastDial = 8_000 * units.Foot
