package units

import (
	"strings"

	"github.com/shopspring/decimal"
)

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
	if len(units) == 0 || denominator < 1 || units[len(units)-1] < 1 || int64(units[len(units)-1])%denominator != 0 {
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
	s := x.StringFixed(max(-mostPlaces, min(mostPlaces, places)))
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
