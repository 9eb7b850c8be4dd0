package process

import (
	"errors"

	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units/verdict"
)

// ErrNotPublished is what errors.Is finds in every NotPublishedError.
var ErrNotPublished = errors.New("no process is published")

// Missing is the part of a request for which nothing is published. The zero Missing is not stated.
type Missing uint8

// The parts of a request, in the order in which the tables are read.
const (
	MissingProduct Missing = iota + 1
	MissingPack
	MissingJar
	MissingGauge
	MissingAltitude
)

var missings = word.List[Missing]{What: "part of a request", Words: []string{"product", "pack", "jar", "gauge", "altitude"}}

// ParseMissing reads the word that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseMissing(s string) (Missing, error) { return missings.Parse(s) }

// String is the part in one word: "jar".
func (m Missing) String() string { return missings.Of(m) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (m Missing) MarshalText() ([]byte, error) { return missings.Marshal(m) }

// UnmarshalText is ParseMissing, and the empty text is one that is not set.
func (m *Missing) UnmarshalText(text []byte) error { return missings.Unmarshal(text, m) }

// rule is the rule of a finding about the part.
func (m Missing) rule() verdict.Rule {
	return [...]verdict.Rule{MissingProduct: RuleProduct, MissingPack: RulePack, MissingJar: RuleJar, MissingGauge: RuleGauge,
		MissingAltitude: RuleAltitude}[m]
}

// NotPublishedError says that no process is published for the request. The numbers may all be fine: it never wraps a
// units.RangeError. Missing is the first part of the request, in the order product, pack, jar, gauge, altitude, that the
// tables do not have; Stated is what they do have there, in words. It offers no other row: the nearest jar or the next
// band is not an answer.
type NotPublishedError struct {
	Request Request `wire:"partial"`
	Missing Missing
	Stated  string
}

// Error says what no process is published for and what the tables cover.
func (e NotPublishedError) Error() string {
	return "no process is published for " + e.refused() + "; " + e.Stated
}

// Is reports whether target is ErrNotPublished.
func (e NotPublishedError) Is(target error) bool { return target == ErrNotPublished }

// refused is the request up to the part that is missing.
func (e NotPublishedError) refused() string {
	r := e.Request
	switch e.Missing {
	case MissingProduct:
		return productWords(r.Product)
	case MissingPack:
		return productWords(r.Product) + " in the pack " + r.Pack.String()
	case MissingJar:
		return load(r.Product, r.Pack, r.Jar)
	case MissingGauge:
		return load(r.Product, r.Pack, r.Jar) + " with " + gaugeWords(r.Gauge)
	}
	return r.String()
}

// asked is what the request has for the part, as a number; zero is not stated.
func (m Missing) asked(r Request) uint8 {
	switch m {
	case MissingProduct:
		return uint8(r.Product)
	case MissingPack:
		return uint8(r.Pack)
	case MissingJar:
		return uint8(r.Jar)
	}
	return uint8(r.Gauge)
}

// of is what a row has for the part.
func (m Missing) of(l *row) uint8 {
	return m.asked(Request{Product: l.product, Pack: l.pack, Jar: l.jar, Gauge: l.gauge})
}

// words are the words of the part, and how a refusal begins to say what there is.
func (m Missing) words() (names []string, stated string) {
	switch m {
	case MissingProduct:
		return products.Words, "there are tables for "
	case MissingPack:
		return packs.Words, "its tables are for packs: "
	case MissingJar:
		return jars.Words, "its tables are for jars: "
	}
	return gauges.Words, "its tables are for gauges: "
}

// narrow appends the rows for a request to rows, or returns the part of it that no row has. With partly, a part that is
// not set matches every row.
func narrow(rows []*row, r Request, partly bool) ([]*row, *NotPublishedError) {
	for _, table := range tables {
		for i := range table {
			rows = append(rows, &table[i])
		}
	}
	for m := MissingProduct; m <= MissingGauge; m++ {
		asked := m.asked(r)
		if partly && asked == 0 {
			continue
		}
		kept := 0
		for i, line := range rows {
			if m.of(line) == asked { // the others go behind, for the refusal
				rows[kept], rows[i] = rows[i], rows[kept]
				kept++
			}
		}
		if kept == 0 {
			return nil, &NotPublishedError{Request: r, Missing: m, Stated: m.stated(rows)}
		}
		rows = rows[:kept]
	}
	return rows, nil
}

// stated says what the rows have for the part, each word once and in its own order.
func (m Missing) stated(rows []*row) string {
	names, begin := m.words()
	var words []string
	for i, name := range names {
		for _, line := range rows {
			if int(m.of(line)) == i+1 {
				words = append(words, name)
				break
			}
		}
	}
	return begin + word.Series(words, "and")
}
