package units

// Range is an estimate of a quantity: the least, the likely and the greatest that it may be. It is comparable. The zero
// Range is not stated, except where zero is a value, as in a Range of times.
type Range[T Measure] struct {
	Low, Likely, High T
}

// RangeOf returns the range with these three values. They must rise: low ≤ likely ≤ high; otherwise a RangeError named
// after what.
func RangeOf[T Measure](what string, low, likely, high T) (Range[T], error) {
	r := Range[T]{low, likely, high}
	a, b, c := AmountOf(low), AmountOf(likely), AmountOf(high)
	if below, ok := b.Compare(a); !ok || below < 0 {
		return Range[T]{}, RangeError{What: "likely " + what, Got: worded(b), Low: worded(a)}
	}
	if below, ok := c.Compare(b); !ok || below < 0 {
		return Range[T]{}, RangeError{What: "greatest " + what, Got: worded(c), Low: worded(b)}
	}
	return r, nil
}

// worded is an amount as an error shows it.
func worded(a Amount) string {
	if !a.IsStated() {
		return "not set"
	}
	return a.String()
}

// Holds reports whether v lies within r, both ends included; false when v is not set.
func (r Range[T]) Holds(v T) bool { return r.Figure().Admits(AmountOf(v)) }

// Figure returns the range as a figure, from its least to its greatest.
func (r Range[T]) Figure() Figure { return Between(r.Low, r.High) }

// Text prints the range in a system of units: "1 h to 2 h, likely 90 min"; one value where all three are the same. The
// least is rounded down and the greatest up, so that what is printed holds the range.
func (r Range[T]) Text(s System) string {
	low := AmountOf(r.Low).Text(s, Down)
	high := AmountOf(r.High).Text(s, Up)
	likely := AmountOf(r.Likely).Text(s, Nearest)
	if low == high {
		return low
	}
	return low + " to " + high + ", likely " + likely
}

// String is Text in both systems of units.
func (r Range[T]) String() string { return r.Text(Both) }
