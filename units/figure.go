package units

// Figure is a figure as it is stated or published: exactly so much, at least, at most, between, or in words. It is
// comparable. Where a figure is printed in two scales, rounded in each, LowAlso and HighAlso keep the second reading.
// The zero Figure is not stated.
type Figure struct {
	Low, High         Amount
	LowAlso, HighAlso Amount // the same bounds as printed in the other scale
	LowOpen, HighOpen bool   // the bound itself is outside: "more than", "below"
	Note              string // words behind the figure, or in place of one
}

// Exactly returns the figure that is v.
func Exactly[T Measure](v T) Figure { a := AmountOf(v); return Figure{Low: a, High: a} }

// AtLeast returns the figure that is v or more.
func AtLeast[T Measure](v T) Figure { return Figure{Low: AmountOf(v)} }

// MoreThan returns the figure that is above v.
func MoreThan[T Measure](v T) Figure { return Figure{Low: AmountOf(v), LowOpen: true} }

// AtMost returns the figure that is v or less.
func AtMost[T Measure](v T) Figure { return Figure{High: AmountOf(v)} }

// LessThan returns the figure that is below v.
func LessThan[T Measure](v T) Figure { return Figure{High: AmountOf(v), HighOpen: true} }

// Between returns the figure from low to high, both included.
func Between[T Measure](low, high T) Figure { return Figure{Low: AmountOf(low), High: AmountOf(high)} }

// InWords returns the figure that is no number: "one method".
func InWords(words string) Figure { return Figure{Note: words} }

// Also returns f with the second reading of a pair that is printed in two scales: 180 °F and 82.2 °C.
func (f Figure) Also(other Figure) Figure {
	f.LowAlso, f.HighAlso = other.Low, other.High
	return f
}

// With returns f with words behind it.
func (f Figure) With(note string) Figure {
	f.Note = note
	return f
}

// IsStated reports whether f holds a figure or words.
func (f Figure) IsStated() bool { return f != Figure{} }

// IsExact reports whether f is one amount.
func (f Figure) IsExact() bool { return f.Low.IsStated() && f.Low == f.High }

// Admits reports whether an amount is within f by either printed reading; false when it does not measure the same
// thing, or f has no bound.
func (f Figure) Admits(a Amount) bool {
	return f.admits(f.Low, f.High, a) || f.admits(f.LowAlso, f.HighAlso, a)
}

func (f Figure) admits(low, high, a Amount) bool {
	if !low.IsStated() && !high.IsStated() {
		return false
	}
	if low.IsStated() {
		if c, ok := a.Compare(low); !ok || c < 0 || c == 0 && f.LowOpen {
			return false
		}
	}
	if high.IsStated() {
		if c, ok := a.Compare(high); !ok || c > 0 || c == 0 && f.HighOpen {
			return false
		}
	}
	return true
}

// Text prints f in a system of units: "at least 100 min", "at most 38 °F". A lower bound is rounded up and an upper one
// down, so that keeping to the text keeps to the figure; a figure printed in two scales is shown as it is printed.
func (f Figure) Text(s System) string { return f.text(s, Nearest, 0) }

// text is Text with exact figures rounded to a side and with more digits.
func (f Figure) text(s System, exact Rounding, more int) string {
	var words string
	switch low, high := f.Low.IsStated(), f.High.IsStated(); {
	case f.IsExact():
		words = paired(f.Low, f.LowAlso, s, exact, more)
	case low && high:
		words = paired(f.Low, f.LowAlso, s, Up, more) + " to " + paired(f.High, f.HighAlso, s, Down, more)
	case low:
		words = opened(f.LowOpen, "more than ", "at least ") + paired(f.Low, f.LowAlso, s, Up, more)
	case high:
		words = opened(f.HighOpen, "below ", "at most ") + paired(f.High, f.HighAlso, s, Down, more)
	}
	if words != "" && f.Note != "" {
		words += " "
	}
	return words + f.Note
}

func opened(open bool, yes, no string) string {
	if open {
		return yes
	}
	return no
}

// paired prints an amount, or both readings of a printed pair, each as printed.
func paired(a, also Amount, s System, r Rounding, more int) string {
	if !also.IsStated() || a.of != ofTemperature {
		return a.text(s, r, more)
	}
	us, metric := a, also
	if a.isMetricReading() {
		us, metric = also, a
	}
	switch s {
	case US:
		return us.text(US, r, more)
	case Metric:
		return metric.text(Metric, r, more)
	}
	return us.text(US, r, more) + " (" + metric.text(Metric, r, more) + ")"
}

// isMetricReading reports whether a temperature is whole in tenths of a degree Celsius and not in those of Fahrenheit.
func (a Amount) isMetricReading() bool {
	tenth := func(s Scale) bool { return (a.quanta-s.origin())%(s.degree()/10) == 0 }
	return tenth(CelsiusScale) && !tenth(FahrenheitScale)
}

// Apart prints a stated figure beside a wanted one, each rounded away from the other's bound and with as many digits as
// it takes for two different figures to look different.
func Apart(stated, wanted Figure, s System) (statedText, wantedText string) {
	side := Nearest
	if stated.IsExact() {
		side = stated.side(wanted)
	}
	for more := 0; ; more++ {
		statedText, wantedText = stated.text(s, side, more), wanted.text(s, Nearest, more)
		if more == mostMore || stated == wanted || !sameDigits(stated, wanted, s, side, more) {
			return statedText, wantedText
		}
	}
}

// side is to which side a stated figure is rounded: below a lower bound it never rounds up to it, above an upper one
// never down.
func (f Figure) side(wanted Figure) Rounding {
	if c, ok := f.Low.Compare(wanted.Low); ok && c < 0 {
		return Down
	}
	if c, ok := f.Low.Compare(wanted.High); ok && c > 0 {
		return Up
	}
	return Nearest
}

// sameDigits reports whether the stated figure looks like a bound that it is not.
func sameDigits(stated, wanted Figure, s System, side Rounding, more int) bool {
	same := func(bound, also Amount, r Rounding) bool {
		return bound.IsStated() && bound != stated.Low && bound.of == stated.Low.of &&
			paired(bound, also, s, r, more) == paired(stated.Low, stated.LowAlso, s, side, more)
	}
	low, high := Up, Down
	if wanted.IsExact() {
		low, high = Nearest, Nearest
	}
	return same(wanted.Low, wanted.LowAlso, low) || same(wanted.High, wanted.HighAlso, high)
}
