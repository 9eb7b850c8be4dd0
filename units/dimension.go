package units

import (
	"math/bits"
	"strings"

	"github.com/shopspring/decimal"
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
	short    []form // how String prints: the first that is exact and large enough, else the last
}

// form is one way String may print: in this unit with at most places decimals.
type form struct {
	size   int64
	places int
	symbol string
	atMost int64 // used only while |q| is below this; 0 is no bound
}

// parse reads one count and unit, or, where the dimension allows, several in falling order.
func (d *dimension) parse(s string) (int64, error) {
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
func (d *dimension) unitEnd(s string, i int) int {
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

func (d *dimension) find(name string) (unit, bool) {
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
func (d *dimension) unknown(name string) string {
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

func (d *dimension) fail(s, reason string) error {
	return ParseError{Quantity: d.name, Text: s, Reason: reason}
}

func (d *dimension) overflow(neg bool, got string) error {
	low, high := d.format(-maxQuanta), d.format(maxQuanta)
	return RangeError{What: d.name, Got: strings.TrimSpace(got), Low: low, High: high}
}

const maxQuanta = 1<<63 - 1

// unmarshal is parse for text forms: it sets v only when the text was understood.
func (d *dimension) unmarshal(text []byte, v *int64) error {
	q, err := d.parse(string(text))
	if err == nil {
		*v = q
	}
	return err
}

// format prints q so that parse gives q back.
func (d *dimension) format(q int64) string {
	last := d.short[len(d.short)-1]
	for _, f := range d.short {
		if f.atMost != 0 && (q >= f.atMost || q <= -f.atMost) {
			continue
		}
		if digits, exact := appendDecimal(nil, q, f.size, f.places); exact {
			return joined(digits, f.symbol)
		}
	}
	digits, _ := appendDecimal(nil, q, last.size, last.places)
	return joined(digits, last.symbol)
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

// Text prints q in the given unit with a fixed number of decimals and grouped thousands, such as
// "2,000 ft" for Text(609_600*Millimetre, Foot, 0), rounded ties away from zero. Unit must be one
// of the type's unit constants; any other prints q as String does.
func Text[Q Quantity](q, unit Q, places int32) string {
	d := dimensionOf[Q]()
	symbol, ok := d.symbol(int64(unit))
	if !ok {
		return d.format(int64(q))
	}
	return joined([]byte(grouped(In(q, unit, places), places)), symbol)
}

// Kitchen prints q as it is said over a bowl: whole numbers of the larger units and the rest as a
// fraction of the last, "1 lb 6 oz" for Kitchen(m, 4, Pound, Ounce). It rounds to the nearest
// 1/denominator of the last unit, ties away from zero; parsing gives that rounded value back.
// Units must be unit constants in falling order, each a whole number of the last, and the last a
// multiple of denominator quanta; otherwise it prints q as String does.
func Kitchen[Q Quantity](q Q, denominator int64, units ...Q) string {
	d := dimensionOf[Q]()
	if len(units) == 0 || denominator < 1 || int64(units[len(units)-1])%denominator != 0 {
		return d.format(int64(q))
	}
	last := units[len(units)-1]
	step := last / Q(denominator)
	rest := RoundTo(q, step)
	var b strings.Builder
	if rest < 0 {
		b.WriteByte('-')
		rest = -rest
	}
	for i, u := range units {
		symbol, ok := d.symbol(int64(u))
		if !ok || u%last != 0 || i > 0 && u >= units[i-1] {
			return d.format(int64(q))
		}
		var count string
		if u == last {
			count = mixed(int64(rest/step), denominator)
		} else {
			count = itoa(int64(rest / u))
			rest %= u
		}
		if count != "0" || u == last && b.Len() <= 1 && !strings.ContainsAny(b.String(), "0123456789") {
			if b.Len() > 1 {
				b.WriteByte(' ')
			}
			b.WriteString(count + " " + symbol)
		}
	}
	return b.String()
}

// mixed prints steps/denominator as "3 1/2", "1/2" or "3", in lowest terms.
func mixed(steps, denominator int64) string {
	whole, num := steps/denominator, steps%denominator
	if num == 0 {
		return itoa(whole)
	}
	a, b := num, denominator
	for b != 0 {
		a, b = b, a%b
	}
	part := itoa(num/a) + "/" + itoa(denominator/a)
	if whole == 0 {
		return part
	}
	return itoa(whole) + " " + part
}

func (d *dimension) symbol(quanta int64) (string, bool) {
	for i := range d.units {
		if u := &d.units[i]; (u.num+u.den/2)/u.den == quanta {
			return u.names[0], true
		}
	}
	return "", false
}

// grouped prints x with commas between thousands.
func grouped(x decimal.Decimal, places int32) string {
	s := x.StringFixed(places)
	start := 0
	if s[0] == '-' {
		start = 1
	}
	end := strings.IndexByte(s, '.')
	if end < 0 {
		end = len(s)
	}
	for i := end - 3; i > start; i -= 3 {
		s = s[:i] + "," + s[i:]
	}
	return s
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
	for _, space := range []string{"\u00a0", "\u202f", "\u2009"} {
		s = strings.TrimSuffix(s, space)
	}
	return s
}
