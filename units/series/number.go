package series

import (
	"encoding"
	"math"
	"math/bits"
	"strings"

	"example.org/lakelarder/units"
)

// longestNumber bounds what a cell may ask of the parsers.
const longestNumber = 40

// scale turns the numbers of a column into quanta of T: exactly as T's own parser would, mostly without it.
type scale[T Value] struct {
	unit  string // what T's parser reads after the number
	one   int64  // quanta of one, 0 where it is no whole number or the column counts parts of a unit
	zero  int64  // quanta of nought
	parts string // "0.001" where one count is a thousandth of the unit
	above bool   // quanta end above zero
}

// newScale reads a unit as a Format states it: "°C", "psi", "0.001 °C" for thousandths, "mH2O".
func newScale[T Value](stated string) (scale[T], error) {
	share, unit := partsOf(stated)
	per := share
	if known, ok := spelt(kindOf[T](), unit); ok {
		unit = known
	}
	if kindOf[T]() == pressure && unit == waterMetre {
		if share != "1" {
			return scale[T]{}, wrap(ErrUnit, "expected mH2O without a number before it")
		}
		per, share, unit = metreOfWater, metreOfWater, "kPa"
	}
	if err := checkUnit[T](unit); err != nil {
		return scale[T]{}, err
	}
	s := scale[T]{unit: unit, parts: per}
	first, err := parse[T]("1 " + unit)
	if err != nil {
		return scale[T]{}, err
	}
	second, err := parse[T]("2 " + unit)
	if err != nil {
		return scale[T]{}, err
	}
	a, _ := quantaOf(first)
	b, _ := quantaOf(second)
	s.zero, s.above = a-(b-a), kindOf[T]() == temperature
	s.one = s.whole(share)
	if s.one == 0 && share != "1" {
		return scale[T]{}, wrap(ErrUnit, "a part of a unit is one of 0.1, 0.01 and 0.001")
	}
	return s, nil
}

// whole returns the quanta of one count where every count is a whole number of them, else 0.
func (s scale[T]) whole(parts string) int64 {
	one, err := parse[T](parts + " " + s.unit)
	if err != nil {
		return 0
	}
	q, ok := quantaOf(one)
	thousand, err := parse[T](shifted(parts) + " " + s.unit)
	k, known := quantaOf(thousand)
	if !ok || err != nil || !known || (q-s.zero) > math.MaxInt64/1000 || (q-s.zero)*1000 != k-s.zero {
		return 0
	}
	return q - s.zero
}

// shifted moves a decimal point three places to the right.
func shifted(parts string) string {
	whole, after, _ := strings.Cut(parts, ".")
	after += "000"
	return whole + after[:3] + "." + after[3:] + "0"
}

// read returns the quanta of a number written with a decimal point.
func (s scale[T]) read(cell string) (int64, error) {
	if s.one != 0 {
		if q, ok := s.fast(cell); ok {
			return q, nil
		}
	}
	if !isNumber(cell) {
		v, err := parse[T](cell)
		if _, set := quantaOf(v); err == nil && set { // "not set" is no number
			return 0, wrap(ErrUnit, "the heading gives the unit; write the bare number")
		}
		return 0, notANumber(cell)
	}
	if s.parts != "1" {
		return 0, units.RangeError{What: string(kindOf[T]()), Got: cell + " × " + s.parts + " " + s.unit,
			High: "18 digits, within the range of the type"}
	}
	v, err := parse[T](cell + " " + s.unit)
	if err != nil {
		return 0, err
	}
	q, ok := quantaOf(v)
	if !ok {
		return 0, ErrUnset
	}
	return q, nil
}

// fast reads up to 18 digits; false leaves the cell, its faults too, to T's parser.
func (s scale[T]) fast(cell string) (int64, bool) {
	m, places, negative, ok := digits(cell)
	if !ok {
		return 0, false
	}
	hi, lo := bits.Mul64(m, uint64(s.one))
	power := powers[places]
	if hi >= power {
		return 0, false
	}
	n, rest := bits.Div64(hi, lo, power)
	if rest >= power-rest {
		n++ // half a quantum rounds away from zero, as in every parser
	}
	if n > 1<<61 {
		return 0, false
	}
	q := int64(n)
	if negative {
		q = -q
	}
	q += s.zero
	return q, !s.above || q > 0
}

var powers = [19]uint64{1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
	1e16, 1e17, 1e18}

// digits takes a plain decimal apart: its digits as one number, how many of them follow the point, its sign.
func digits(cell string) (m uint64, places int, negative, ok bool) {
	i := 0
	if cell != "" && (cell[0] == '-' || cell[0] == '+') {
		negative = cell[0] == '-'
		i++
	}
	point, start := -1, i
	for ; i < len(cell); i++ {
		c := cell[i]
		switch {
		case c >= '0' && c <= '9':
			m = m*10 + uint64(c-'0')
		case c == '.' && point < 0:
			point = i
		default:
			return 0, 0, false, false
		}
	}
	count := len(cell) - start
	if point >= 0 {
		places = len(cell) - point - 1
		count--
	}
	return m, places, negative, count > 0 && count <= 18
}

func parse[T Value](text string) (v T, err error) {
	err = any(&v).(encoding.TextUnmarshaler).UnmarshalText([]byte(text))
	return v, err
}

// isNumber reports a plain decimal: a sign or none, digits, at most one point.
func isNumber(cell string) bool {
	digits, points := 0, 0
	for i := 0; i < len(cell); i++ {
		switch c := cell[i]; {
		case c >= '0' && c <= '9':
			digits++
		case c == '.':
			points++
		case i > 0 || c != '-' && c != '+':
			return false
		}
	}
	return digits > 0 && points <= 1 && len(cell) <= longestNumber
}

func notANumber(cell string) error {
	if strings.Contains(cell, ",") {
		return wrap(ErrNotANumber, "a decimal mark is a point, and thousands are not grouped")
	}
	return wrap(ErrNotANumber, "expected a plain decimal such as 121.1")
}
