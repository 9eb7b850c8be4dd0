package units

import "strings"

// UnitError says that a quantity is so small that a bare number was meant for it: 4350 is 4,350 nanometres. It is a range
// error too.
type UnitError struct {
	What  string // the quantity, in words: "altitude"
	Got   string // the bare number and, in parentheses, what it means
	Least string // the smallest size that is believed
}

// Error asks for the unit.
func (e UnitError) Error() string {
	return e.What + " " + e.Got + ": was the unit left out? Expected 0 or at least " + e.Least
}

// Is reports whether target is ErrRange.
func (e UnitError) Is(target error) bool { return target == ErrRange }

// CheckUnit returns a UnitError naming what when got is not zero and smaller in size than least, the least that anybody
// measures: an untyped constant given for a quantity is a count of quanta, and no range check sees that.
func CheckUnit[Q Quantity](what string, got, least Q) error {
	if got == 0 || got >= least || got <= -least {
		return nil
	}
	return UnitError{What: what, Got: itoa(int64(got)) + " (" + text(got) + ")", Least: plainest(least)}
}

// plainest is the text with the fewest digits, in whichever unit it has it, that is read as q: a thousandth of a psi and not
// 0.006894757293168 kPa.
func plainest[Q Quantity](q Q) string {
	d := dimensionOf[Q]()
	best := d.format(int64(q))
	for i := range d.units {
		u := &d.units[i]
		if u.den != 1 {
			continue
		}
		digits, _ := appendDecimal(nil, int64(q), u.num, 3)
		short := joined(digits, u.names[0])
		number, _, _ := strings.Cut(best, " ")
		if back, err := d.parse(short); err == nil && back == int64(q) && significant(digits)+3 < significant([]byte(number)) {
			best = short
		}
	}
	return best
}
