package units

import (
	"math/bits"
	"strings"
	"unicode/utf8"
)

// unit is one unit of a dimension: num/den quanta, its printed symbol first among its names.
type unit struct {
	num, den int64
	names    []string
}

// dimension is what the text form of one type needs to know.
type dimension struct {
	name     string // "length", as errors say it
	compound bool   // "1 lb 6 oz" makes sense
	units    []unit // those that errors suggest come first
	short    []form // how String prints: the first that is exact and fits, else the last
	shortest bool   // of the forms that are exact, the one with the fewest digits
}

// form is one way String may print: in this unit with at most places decimals.
type form struct {
	size   int64
	places int
	symbol string
	atMost int64 // used only while |q| is below this; 0 is no bound

	atLeast int64 // used only from this |q| on
}

// parse reads one count and unit, or, where the dimension allows, several in falling order.
func (d dimension) parse(s string) (int64, error) {
	i := skipSpace(s, 0)
	neg, size := sign(s[i:])
	i += size
	var total, last int64
	for part := 0; ; part++ {
		n, used, reason := scan(s[i:])
		if reason != "" {
			return 0, d.fail(s, reason)
		}
		i = skipSpace(s, i+used)
		end := d.unitEnd(s, i)
		u, ok := d.find(trimSpace(s[i:end]))
		if !ok {
			return 0, d.fail(s, d.unknown(trimSpace(s[i:end])))
		}
		if part > 0 && u.num >= last {
			return 0, d.fail(s, "the parts must go from larger to smaller units")
		}
		v, ok := n.of(u)
		if !ok || int64(v)+total < total {
			return 0, d.overflow(neg, s)
		}
		total, last, i = total+int64(v), u.num, skipSpace(s, end)
		if i == len(s) {
			break
		}
	}
	if neg {
		total = -total
	}
	return total, nil
}

// unitEnd returns where the unit name that starts at i ends: at the next digit where compounds
// make sense, else at the end of the text.
func (d dimension) unitEnd(s string, i int) int {
	if !d.compound {
		return len(s)
	}
	for j := i; j < len(s); j++ {
		if c := s[j]; c >= '0' && c <= '9' {
			return j
		} else if c >= 0x80 {
			if _, _, size := vulgar(s[j:]); size > 0 {
				return j
			}
		}
	}
	return len(s)
}

func (d dimension) find(name string) (unit, bool) {
	for i := range d.units {
		for _, known := range d.units[i].names {
			if known == name {
				return d.units[i], true
			}
		}
	}
	return unit{}, false
}

// unknown says which unit was not understood and which would be.
func (d dimension) unknown(name string) string {
	var b strings.Builder
	if name == "" {
		b.WriteString("the unit is missing; expected one of ")
	} else {
		b.WriteString("unknown unit \"" + name + "\"; expected one of ")
	}
	for i := range d.units {
		if i > 0 {
			b.WriteString(", ")
		}
		b.WriteString(d.units[i].names[0])
	}
	return b.String()
}

func (d dimension) fail(s, reason string) error {
	return ParseError{Quantity: d.name, Text: s, Reason: reason}
}

func (d dimension) overflow(neg bool, got string) error {
	low, high := d.format(-maxQuanta), d.format(maxQuanta)
	return RangeError{What: d.name, Got: strings.TrimSpace(got), Low: low, High: high}
}

const maxQuanta = 1<<63 - 1

// unmarshal is parse for text forms: it sets v only when the text was understood.
func (d dimension) unmarshal(text []byte, v *int64) error {
	q, err := d.parse(string(text))
	if err == nil {
		*v = q
	}
	return err
}

// format prints q so that parse gives q back.
func (d dimension) format(q int64) string {
	last := d.short[len(d.short)-1]
	var best []byte
	var symbol string
	for _, f := range d.short {
		if !f.fits(q) {
			continue
		}
		digits, exact := appendDecimal(nil, q, f.size, f.places)
		if !exact || best != nil && significant(digits) >= significant(best) {
			continue
		}
		best, symbol = digits, f.symbol
		if !d.shortest {
			break
		}
	}
	if best == nil {
		best, _ = appendDecimal(nil, q, last.size, last.places)
		symbol = last.symbol
	}
	return joined(best, symbol)
}

// fits reports whether a form is for values of this size.
func (f form) fits(q int64) bool {
	m, _ := magnitude(q)
	return m >= uint64(f.atLeast) && (f.atMost == 0 || m < uint64(f.atMost))
}

// significant is how many digits are left without the zeros around them.
func significant(digits []byte) int {
	return len(strings.Trim(strings.Replace(string(digits), ".", "", 1), "-0"))
}

func joined(digits []byte, symbol string) string {
	if symbol == "" {
		return string(digits)
	}
	return string(append(append(digits, ' '), symbol...))
}

// appendDecimal appends q/size with at most places decimals, rounded half away from zero and
// without trailing zeros, and reports whether that is exact.
func appendDecimal(dst []byte, q, size int64, places int) ([]byte, bool) {
	m, neg := magnitude(q)
	whole, rest := m/uint64(size), m%uint64(size)
	hi, lo := bits.Mul64(rest, powersOfTen[places])
	frac, left := bits.Div64(hi, lo, uint64(size))
	if left >= uint64(size)-left {
		frac++
	}
	if frac == powersOfTen[places] {
		whole, frac = whole+1, 0
	}
	if neg && (whole != 0 || frac != 0) {
		dst = append(dst, '-')
	}
	dst = append(dst, utoa(whole)...)
	if frac != 0 {
		digits := utoa(frac)
		dst = append(append(dst, '.'), strings.Repeat("0", places-len(digits))...)
		dst = append(dst, strings.TrimRight(digits, "0")...)
	}
	return dst, left == 0
}

func text[Q Quantity](q Q) string { return dimensionOf[Q]().format(int64(q)) }

// sign reads a leading plus or minus, plain or typographic.
func sign(s string) (neg bool, size int) {
	switch {
	case strings.HasPrefix(s, "-"):
		return true, 1
	case strings.HasPrefix(s, "+"):
		return false, 1
	case strings.HasPrefix(s, "−"):
		return true, len("−")
	}
	return false, 0
}

func trimSpace(s string) string {
	for s != "" && (s[len(s)-1] == ' ' || s[len(s)-1] == '\t') {
		s = s[:len(s)-1]
	}
	if s == "" || s[len(s)-1] < utf8.RuneSelf {
		return s
	}
	for _, space := range []string{"\u00a0", "\u202f", "\u2009"} {
		s = strings.TrimSuffix(s, space)
	}
	return s
}
