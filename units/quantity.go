package units

import (
	"math"
	"math/big"

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
	m, ok := roundUp(scaleByTen(r, n.Exponent()))
	v, fits := signed(m, r.Sign() < 0)
	if !ok || !fits {
		return 0, overflow[Q](n.Sign() < 0, n.String())
	}
	return Q(v), nil
}

// OfFloat returns x units rounded to the nearest quantum, ties away from zero. NaN, an infinity
// or a result past the type's range is a RangeError.
func OfFloat[Q Quantity](x float64, unit Q) (Q, error) {
	v := math.Round(float64(x * float64(unit)))
	if !(v >= -maxFloat && v < maxFloat) { // also refuses NaN
		return 0, overflow[Q](x < 0, ftoa(x))
	}
	return Q(v), nil
}

// maxFloat is 2^63: the first float64 past int64.
const maxFloat = 1 << 63

// mostPlaces is more decimal places than any quantity has digits in any unit; each place costs time and memory.
const mostPlaces = 40

// In returns how many units q is, rounded to the given decimal places, ties away from zero.
// Unit must be positive; a zero unit gives zero. Places beyond 40, or below -40, count as those.
func In[Q Quantity](q, unit Q, places int32) decimal.Decimal {
	if unit == 0 {
		return decimal.Zero
	}
	return decimal.NewFromInt(int64(q)).DivRound(decimal.NewFromInt(int64(unit)), max(-mostPlaces, min(mostPlaces, places)))
}

// Float returns how many units q is, to within one unit in the last place of a float64.
func Float[Q Quantity](q, unit Q) float64 { return float64(q) / float64(unit) }

// RatioOf returns part/whole, rounded to the nearest 1e-12, ties away from zero. A zero whole is
// a RangeError, as is a ratio past ±9.2 million.
func RatioOf[Q Quantity](part, whole Q) (Ratio, error) { return Prorate(One, part, whole) }

// Times returns q counted n times; a result past the range is a RangeError.
func Times[Q Quantity](q Q, n int64) (Q, error) {
	a, neg1 := magnitude(int64(q))
	b, neg2 := magnitude(n)
	m, ok := mulDiv(a, b, 1)
	v, fits := signed(m, neg1 != neg2)
	if !ok || !fits {
		return 0, overflow[Q](neg1 != neg2, text(q)+" × "+itoa(n))
	}
	return Q(v), nil
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

// roundUp returns the magnitude of r rounded to the nearest integer, half up, and whether that is at most 2^63.
func roundUp(r *big.Rat) (uint64, bool) {
	num := new(big.Int).Abs(r.Num())
	num.Lsh(num, 1).Add(num, r.Denom())
	num.Quo(num, new(big.Int).Lsh(r.Denom(), 1))
	return num.Uint64(), num.IsUint64() && num.Uint64() <= 1<<63
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
