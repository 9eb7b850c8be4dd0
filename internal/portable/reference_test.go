package portable

import (
	"math"
	"math/big"
)

// The references: power series in numbers of many binary digits, with nothing in common with the code but the
// definitions.

const precision = 320

func number(x float64) *big.Float { return new(big.Float).SetPrec(precision).SetFloat64(x) }

func zero(prec uint) *big.Float { return new(big.Float).SetPrec(prec) }

func add(a, b *big.Float) *big.Float { return zero(a.Prec()).Add(a, b) }
func sub(a, b *big.Float) *big.Float { return zero(a.Prec()).Sub(a, b) }
func mul(a, b *big.Float) *big.Float { return zero(a.Prec()).Mul(a, b) }
func quo(a, b *big.Float) *big.Float { return zero(a.Prec()).Quo(a, b) }
func whatIs(n int64, prec uint) *big.Float {
	return zero(prec).SetInt64(n)
}

// below reports whether a term no longer counts beside a sum.
func below(term, sum *big.Float) bool {
	return term.Sign() == 0 || sum.Sign() != 0 && term.MantExp(nil) < sum.MantExp(nil)-int(sum.Prec())-4
}

// refExp halves x until it is small, adds up the series, and squares.
func refExp(x *big.Float) *big.Float {
	prec := x.Prec() + 64
	halvings := max(0, x.MantExp(nil)+16)
	r := zero(prec).SetMantExp(zero(prec).Set(x), -halvings)
	sum, term := whatIs(1, prec), whatIs(1, prec)
	for k := int64(1); ; k++ {
		term = quo(mul(term, r), whatIs(k, prec))
		if below(term, sum) {
			break
		}
		sum = add(sum, term)
	}
	for i := 0; i < halvings; i++ {
		sum = mul(sum, sum)
	}
	return zero(x.Prec()).Set(sum)
}

// artanh is t + t³/3 + t⁵/5 …
func artanh(t *big.Float) *big.Float {
	sum, power, tt := zero(t.Prec()).Set(t), zero(t.Prec()).Set(t), mul(t, t)
	for k := int64(3); ; k += 2 {
		power = mul(power, tt)
		term := quo(power, whatIs(k, t.Prec()))
		if below(term, sum) {
			return sum
		}
		sum = add(sum, term)
	}
}

func refLn2(prec uint) *big.Float {
	third := artanh(quo(whatIs(1, prec+64), whatIs(3, prec+64)))
	return zero(prec).Mul(third, whatIs(2, prec))
}

// refLog takes the powers of two off.
func refLog(x *big.Float) *big.Float {
	prec := x.Prec() + 64
	m := zero(prec)
	k := zero(prec).Set(x).MantExp(m)
	if m.Cmp(zero(prec).SetFloat64(0.7)) < 0 {
		m, k = mul(m, whatIs(2, prec)), k-1
	}
	one := whatIs(1, prec)
	sum := mul(whatIs(2, prec), artanh(quo(sub(m, one), add(m, one))))
	return zero(x.Prec()).Add(sum, mul(whatIs(int64(k), prec), refLn2(prec)))
}

// refPi is Machin's formula.
func refPi(prec uint) *big.Float {
	arctan := func(n int64) *big.Float {
		p := prec + 64
		power := quo(whatIs(1, p), whatIs(n, p))
		sum, nn := zero(p).Set(power), whatIs(-n*n, p)
		for k := int64(3); ; k += 2 {
			power = quo(power, nn)
			term := quo(power, whatIs(k, p))
			if below(term, sum) {
				return sum
			}
			sum = add(sum, term)
		}
	}
	sum := sub(mul(whatIs(16, prec+64), arctan(5)), mul(whatIs(4, prec+64), arctan(239)))
	return zero(prec).Set(sum)
}

// refSincos takes whole quarter turns off, with as many digits of π as that takes.
func refSincos(x *big.Float) (sin, cos *big.Float) {
	prec := x.Prec() + uint(max(0, x.MantExp(nil))) + 128
	quarter := quo(refPi(prec), whatIs(2, prec))
	turns := quo(zero(prec).Set(x), quarter)
	half := zero(prec).SetFloat64(0.5)
	if x.Sign() < 0 {
		half.Neg(half)
	}
	n, _ := add(turns, half).Int(nil)
	r := sub(zero(prec).Set(x), mul(zero(prec).SetInt(n), quarter))
	series := func(term *big.Float, k int64) *big.Float {
		sum, rr := zero(prec).Set(term), mul(r, r)
		for ; ; k += 2 {
			term = quo(mul(term, rr), whatIs(-(k+1)*(k+2), prec))
			if below(term, sum) {
				return sum
			}
			sum = add(sum, term)
		}
	}
	s, c := series(r, 1), series(whatIs(1, prec), 0)
	switch new(big.Int).And(n, big.NewInt(3)).Int64() {
	case 1:
		s, c = c, s.Neg(s)
	case 2:
		s, c = s.Neg(s), c.Neg(c)
	case 3:
		s, c = c.Neg(c), s
	}
	return zero(x.Prec()).Set(s), zero(x.Prec()).Set(c)
}

// refBessel is the power series of J of order 0 or 1 (Abramowitz and Stegun 9.1.10), with digits for what cancels.
func refBessel(order int64, x *big.Float) *big.Float {
	f, _ := x.Float64()
	prec := x.Prec() + 64 + uint(3*math.Abs(f))
	half := quo(zero(prec).Set(x), whatIs(2, prec))
	term, square := whatIs(1, prec), mul(half, half)
	if order == 1 {
		term = half
	}
	sum := zero(prec).Set(term)
	for k := int64(1); ; k++ {
		term = quo(mul(term, square), whatIs(-k*(k+order), prec))
		if below(term, whatIs(1, prec)) {
			return zero(x.Prec()).Set(sum)
		}
		sum = add(sum, term)
	}
}

// refErfc is 1 less the series of erf (7.1.6, all terms of one sign), with digits for what cancels.
func refErfc(x *big.Float) *big.Float {
	f, _ := x.Float64()
	prec := x.Prec() + 64 + uint(4*f*f)
	z := zero(prec).Set(x)
	zz := mul(z, z)
	sum, term := zero(prec).Set(z), zero(prec).Set(z)
	for k := int64(1); ; k++ {
		term = quo(mul(term, mul(zz, whatIs(2, prec))), whatIs(2*k+1, prec))
		if below(term, sum) {
			break
		}
		sum = add(sum, term)
	}
	root := zero(prec).Sqrt(refPi(prec))
	erf := quo(mul(mul(sum, whatIs(2, prec)), refExp(zz.Neg(zz))), root)
	return zero(x.Prec()).Sub(whatIs(1, prec), erf)
}

// ulps is how far a result is from the reference, in units of the last place of a float64 of that size.
func ulps(got float64, want *big.Float) float64 {
	unit := math.Ldexp(1, max(-1074, want.MantExp(nil)-53))
	off := sub(number(got), zero(precision).Set(want))
	f, _ := quo(off, number(unit)).Float64()
	return math.Abs(f)
}
