package units

import (
	"math"
	"math/big"
	"math/bits"

	"github.com/shopspring/decimal"
)

// Quantity is any of the package's integer quantities: everything but Temperature, which is a
// point on a scale and has constructors of its own.
type Quantity interface {
	Length | Area | Mass | Volume | Pressure | TemperatureChange | Ratio |
		Density | Speed | Diffusivity | Conductivity | FilmCoefficient |
		SpecificHeat | Energy | SpecificEnergy | PH
}

// Of returns n units, such as Of(decimal.RequireFromString("0.25"), PSI), rounded once to the
// nearest quantum, ties away from zero. A result past the type's range is a RangeError.
func Of[Q Quantity](n decimal.Decimal, unit Q) (Q, error) {
	// An exponent beyond these leaves the range, or falls below half a quantum, whatever the digits.
	digits := int64(n.NumDigits()) + int64(n.Exponent())
	switch {
	case n.IsZero() || unit == 0 || digits < -19:
		return 0, nil
	case digits > 19:
		return 0, overflow[Q](n.Sign() < 0, "a number of the order of 1e"+itoa(digits-1))
	}
	r := new(big.Rat).SetInt(new(big.Int).Mul(n.Coefficient(), big.NewInt(int64(unit))))
	v, ok := roundRat(scaleByTen(r, n.Exponent()))
	if !ok {
		return 0, overflow[Q](n.Sign() < 0, n.String())
	}
	return Q(v), nil
}

// OfFloat returns x units rounded to the nearest quantum, ties away from zero. NaN, an infinity
// or a result past the type's range is a RangeError.
func OfFloat[Q Quantity](x float64, unit Q) (Q, error) {
	v := math.Round(float64(x * float64(unit)))
	if !(v > -maxFloat && v < maxFloat) { // also refuses NaN
		return 0, overflow[Q](x < 0, ftoa(x))
	}
	return Q(v), nil
}

// maxFloat is 2^63: the first float64 past int64.
const maxFloat = 1 << 63

// In returns how many units q is, rounded to the given decimal places, ties away from zero.
// Unit must be positive; a zero unit gives zero.
func In[Q Quantity](q, unit Q, places int32) decimal.Decimal {
	if unit == 0 {
		return decimal.Zero
	}
	return decimal.NewFromInt(int64(q)).DivRound(decimal.NewFromInt(int64(unit)), places)
}

// Float returns how many units q is, to within one unit in the last place of a float64.
func Float[Q Quantity](q, unit Q) float64 { return float64(q) / float64(unit) }

// Prorate returns q·part/whole through a 128-bit product, rounded once to the nearest quantum,
// ties away from zero. It is how two run-time quantities are multiplied: 30 g of salt per 1 kg
// of fillet for this fillet is Prorate(30*Gram, fillet, Kilogram). A zero whole or a result past
// the range is a RangeError.
func Prorate[Q, R Quantity](q Q, part, whole R) (Q, error) {
	if whole == 0 {
		return 0, RangeError{What: "whole of a proportion", Got: "0", Low: "a quantum"}
	}
	num, neg1 := magnitude(int64(q))
	mul, neg2 := magnitude(int64(part))
	den, neg3 := magnitude(int64(whole))
	neg := neg1 != neg2 != neg3
	v, ok := mulDiv(num, mul, den)
	if !ok {
		return 0, overflow[Q](neg, text(q)+" × "+text(part)+" / "+text(whole))
	}
	return Q(withSign(v, neg)), nil
}

// RatioOf returns part/whole, rounded to the nearest 1e-12, ties away from zero. A zero whole is
// a RangeError, as is a ratio past ±9.2 million.
func RatioOf[Q Quantity](part, whole Q) (Ratio, error) { return Prorate(One, part, whole) }

// Times returns q counted n times; a result past the range is a RangeError.
func Times[Q Quantity](q Q, n int64) (Q, error) {
	a, neg1 := magnitude(int64(q))
	b, neg2 := magnitude(n)
	v, ok := mulDiv(a, b, 1)
	if !ok {
		return 0, overflow[Q](neg1 != neg2, text(q)+" × "+itoa(n))
	}
	return Q(withSign(v, neg1 != neg2)), nil
}

// Sum returns the total of qs, zero for none; a total past the range is a RangeError.
func Sum[Q Quantity](qs ...Q) (Q, error) {
	var total int64
	for _, q := range qs {
		next := total + int64(q)
		if (next > total) != (q > 0) {
			return 0, overflow[Q](q < 0, text(Q(total))+" + "+text(q))
		}
		total = next
	}
	return Q(total), nil
}

// RoundTo returns q rounded to the nearest multiple of step, ties away from zero. A step of zero
// or less leaves q as it is.
func RoundTo[Q Quantity](q, step Q) Q {
	if step <= 0 {
		return q
	}
	low := FloorTo(q, step)
	if rest := q - low; rest > step-rest || (rest == step-rest && q > 0) {
		return CeilTo(q, step)
	}
	return low
}

// FloorTo returns the largest multiple of step not above q, the cautious way to state what is
// available. A step of zero or less, or a multiple past the range, leaves q as it is.
func FloorTo[Q Quantity](q, step Q) Q {
	if step <= 0 {
		return q
	}
	rest := q % step
	if rest < 0 {
		rest += step
	}
	if low := q - rest; low <= q {
		return low
	}
	return q
}

// CeilTo returns the smallest multiple of step not below q, the cautious way to state what is
// required. A step of zero or less, or a multiple past the range, leaves q as it is.
func CeilTo[Q Quantity](q, step Q) Q {
	low := FloorTo(q, step)
	if low == q {
		return q
	}
	if high := low + step; high > q {
		return high
	}
	return q
}

func magnitude(v int64) (uint64, bool) {
	if v < 0 {
		return uint64(-v), true // the most negative value maps onto 2^63, its magnitude
	}
	return uint64(v), false
}

func withSign(v uint64, neg bool) int64 {
	if neg {
		return -int64(v)
	}
	return int64(v)
}

// mulDiv returns a·b/den rounded half up, and false when it passes int64.
func mulDiv(a, b, den uint64) (uint64, bool) {
	hi, lo := bits.Mul64(a, b)
	if hi >= den {
		return 0, false
	}
	v, rest := bits.Div64(hi, lo, den)
	if v > math.MaxInt64 {
		return 0, false
	}
	if rest >= den-rest {
		v++
	}
	return v, v <= math.MaxInt64
}

// roundRat returns r rounded to the nearest integer, ties away from zero, and whether it fits.
func roundRat(r *big.Rat) (int64, bool) {
	num := new(big.Int).Abs(r.Num())
	num.Lsh(num, 1).Add(num, r.Denom())
	num.Quo(num, new(big.Int).Lsh(r.Denom(), 1))
	if !num.IsInt64() {
		return 0, false
	}
	return withSign(num.Uint64(), r.Sign() < 0), true
}

func scaleByTen(r *big.Rat, exponent int32) *big.Rat {
	n := int64(exponent)
	if n < 0 {
		n = -n
	}
	power := new(big.Rat).SetInt(new(big.Int).Exp(big.NewInt(10), big.NewInt(n), nil))
	if exponent < 0 {
		return r.Quo(r, power)
	}
	return r.Mul(r, power)
}
