package units

import (
	"math"
	"math/bits"
)

// Prorate returns q·part/whole through a 128-bit product, rounded once to the nearest quantum,
// ties away from zero. It is how two run-time quantities are multiplied: 30 g of salt per 1 kg
// of fillet for this fillet is Prorate(30*Gram, fillet, Kilogram). A zero whole or a result past
// the range is a RangeError.
func Prorate[Q, R Quantity](q Q, part, whole R) (Q, error) {
	if whole == 0 {
		return 0, noWhole()
	}
	num, mul, den, neg := magnitudes(int64(q), int64(part), int64(whole))
	m, ok := mulDiv(num, mul, den)
	v, fits := signed(m, neg)
	if !ok || !fits {
		return 0, tooMuch(neg, q, part, whole)
	}
	return Q(v), nil
}

// ProrateDown is Prorate rounded to the largest quantum not above q·part/whole (a negative result goes away from zero),
// the cautious way to state what is available. Any q and part; a zero whole or a result past the range is a RangeError.
// Exact through 128 bits.
func ProrateDown[Q, R Quantity](q Q, part, whole R) (Q, error) {
	if q >= 0 && part >= 0 && whole > 0 { // as nearly always, and quicker
		if hi, lo := bits.Mul64(uint64(q), uint64(part)); hi < uint64(whole) {
			if v, _ := bits.Div64(hi, lo, uint64(whole)); v <= math.MaxInt64 {
				return Q(v), nil
			}
		}
	}
	return prorateTo(q, part, whole, true)
}

// ProrateUp is Prorate rounded to the smallest quantum not below q·part/whole (a negative result goes towards zero),
// the cautious way to state what is required. Any q and part; a zero whole or a result past the range is a RangeError.
// Exact through 128 bits.
func ProrateUp[Q, R Quantity](q Q, part, whole R) (Q, error) {
	return prorateTo(q, part, whole, false)
}

// prorateTo rounds away from zero where that is the wanted side.
func prorateTo[Q, R Quantity](q Q, part, whole R, down bool) (Q, error) {
	if whole == 0 {
		return 0, noWhole()
	}
	num, mul, den, neg := magnitudes(int64(q), int64(part), int64(whole))
	m, rest, ok := quotient(num, mul, den)
	if rest > 0 && neg == down {
		m++
	}
	v, fits := signed(m, neg)
	if !ok || !fits {
		return 0, tooMuch(neg, q, part, whole)
	}
	return Q(v), nil
}

func noWhole() error {
	return RangeError{What: "whole of a proportion", Got: "0", Low: "a quantum"}
}

func tooMuch[Q, R Quantity](neg bool, q Q, part, whole R) error {
	return overflow[Q](neg, text(q)+" × "+text(part)+" / "+text(whole))
}

func magnitudes(q, part, whole int64) (num, mul, den uint64, neg bool) {
	num, neg1 := magnitude(q)
	mul, neg2 := magnitude(part)
	den, neg3 := magnitude(whole)
	return num, mul, den, neg1 != neg2 != neg3
}

func magnitude(v int64) (uint64, bool) {
	if v < 0 {
		return uint64(-v), true // the most negative value maps onto 2^63, its magnitude
	}
	return uint64(v), false
}

// signed gives a magnitude its sign, and false when the result passes int64.
func signed(m uint64, neg bool) (int64, bool) {
	if neg {
		return -int64(m), m <= 1<<63 // -2^63 is its own negative
	}
	return int64(m), m <= math.MaxInt64
}

// mulDiv returns a·b/den rounded half up, and false when it passes 2^63.
func mulDiv(a, b, den uint64) (uint64, bool) {
	v, rest, ok := quotient(a, b, den)
	if rest >= den-rest {
		v++
	}
	return v, ok && v <= 1<<63
}

// quotient returns a·b/den rounded down and what is left over, and false when it passes 2^63.
func quotient(a, b, den uint64) (v, rest uint64, ok bool) {
	hi, lo := bits.Mul64(a, b)
	if hi >= den {
		return 0, 0, false
	}
	v, rest = bits.Div64(hi, lo, den)
	return v, rest, v <= 1<<63
}
