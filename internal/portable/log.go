package portable

import "math"

const (
	mantissa  = 1<<52 - 1
	logOrigin = 0x3fe6000000000000 // 0.6875, where the octave of the table begins; 1 lies between two intervals
	infinity  = 0x7ff0000000000000
	lowHalf   = 1<<27 - 1 // the part of a mantissa that a product of two numbers without it does not need to round
)

// Log returns the natural logarithm, within 0.51 ulp. Special values: -Inf for 0, NaN below it and for NaN, +Inf for
// +Inf.
func Log(x float64) float64 {
	bits := math.Float64bits(x)
	if bits-1<<52 >= infinity-1<<52 {
		return logEdge(x)
	}
	shifted := bits - logOrigin
	k := float64(int64(shifted) >> 52)
	entry := logTable[shifted>>45%steps]
	a, b := parted(bits-shifted&^mantissa, entry.inverse)
	r := a + b
	high := float64(k*ln2High) + entry.high
	sum := high + r
	low := (high - sum) + r
	rest := float64(k*ln2Low) + (entry.low + ((a - r) + b))
	return sum + (low + (rest - float64(float64(r*r)*log1Series(r))))
}

// parted is z·inverse − 1 in two words without rounding: the upper half of z's digits and the lower, an inverse has
// few digits.
func parted(z uint64, inverse float64) (a, b float64) {
	upper := math.Float64frombits(z &^ lowHalf)
	return float64(upper*inverse) - 1, float64((math.Float64frombits(z) - upper) * inverse)
}

// log1Series is (r − ln(1 + r))/r², for r up to 1/128.
func log1Series(r float64) float64 {
	rr := float64(r * r)
	a := 1./2 - float64(r*(1./3))
	b := 1./4 - float64(r*(1./5))
	c := 1./6 - float64(r*(1./7))
	d := 1./8 - float64(r*(1./9))
	return a + float64(rr*(b+float64(rr*(c+float64(rr*d)))))
}

func logEdge(x float64) float64 {
	switch {
	case x == 0:
		return math.Inf(-1)
	case x < 0:
		return math.NaN()
	case x != x || x > math.MaxFloat64:
		return x
	}
	high, low := logTwo(x)
	return high + low
}

// logTwo is the logarithm of a finite x above 0 in two words, to 2^-66 of its value.
func logTwo(x float64) (high, low float64) {
	bits, k := math.Float64bits(x), 0.
	if bits < 1<<52 {
		bits, k = math.Float64bits(x*(1<<52)), -52
	}
	shifted := bits - logOrigin
	k += float64(int64(shifted) >> 52)
	entry := logTable[shifted>>45%steps]
	a, b := parted(bits-shifted&^mantissa, entry.inverse)
	r := a + b
	rest := (a - r) + b
	whole := float64(k*ln2High) + entry.high
	sum := whole + r
	low = (whole - sum) + r
	// r²/2 without rounding: the upper half of r's digits squared, and what is left
	upper := math.Float64frombits(math.Float64bits(r) &^ lowHalf)
	half := float64(float64(upper*upper) / 2)
	high = sum - half
	low += (sum - high) - half
	low -= float64((r - upper) * (r + upper) / 2)
	low += float64(k*ln2Low) + (entry.low + (rest - float64(rest*r)))
	low += float64(float64(r*r) * float64(r*log2Series(r)))
	total := high + low
	return total, (high - total) + low
}

// log2Series is (ln(1 + r) − r + r²/2)/r³, for r up to 1/128.
func log2Series(r float64) float64 {
	rr := float64(r * r)
	b := 1./3 - float64(r*(1./4))
	c := 1./5 - float64(r*(1./6))
	d := 1./7 - float64(r*(1./8-float64(r*(1./9))))
	return b + float64(rr*(c+float64(rr*d)))
}

// Log10 returns the logarithm to base 10, within 0.501 ulp; of a power of ten it is the whole number. Special values
// as for Log.
func Log10(x float64) float64 {
	if !(x > 0 && x <= math.MaxFloat64) {
		return logEdge(x)
	}
	high, low := logTwo(x)
	product, rest := times(high, perTenHigh)
	return product + (rest + (float64(high*perTenLow) + float64(low*perTenHigh)))
}

// Log1p returns the natural logarithm of 1 + x, within 0.51 ulp also where x is small. Special values: -Inf for -1,
// NaN below it and for NaN, +Inf for +Inf; a zero is returned as it is.
func Log1p(x float64) float64 {
	if x == 0 {
		return x
	}
	if x > -1./256 && x < 1./128 {
		return x - float64(float64(x*x)*log1Series(x))
	}
	u := 1 + x
	bits := math.Float64bits(u)
	if !(u > 0 && u < 1<<60) {
		return Log(u)
	}
	lost := x - (u - 1) // what 1 + x was rounded by
	if x > 1 {
		lost = 1 - (u - x)
	}
	shifted := bits - logOrigin
	exponent := shifted &^ mantissa
	k := float64(int64(shifted) >> 52)
	entry := logTable[shifted>>45%steps]
	a, b := parted(bits-exponent, entry.inverse)
	b += float64(lost * entry.inverse * math.Float64frombits(1023<<52-exponent))
	r := a + b
	high := float64(k*ln2High) + entry.high
	sum := high + r
	low := (high - sum) + r
	rest := float64(k*ln2Low) + (entry.low + ((a - r) + b))
	return sum + (low + (rest - float64(float64(r*r)*log1Series(r))))
}

// times is a product in two words: rounded, and what was rounded off. Neither may be near the ends of float64.
func times(x, y float64) (product, rest float64) {
	product = float64(x * y)
	xh := math.Float64frombits(math.Float64bits(x) &^ lowHalf)
	yh := math.Float64frombits(math.Float64bits(y) &^ lowHalf)
	xl, yl := x-xh, y-yh
	rest = float64(xh*yh) - product
	rest += float64(xh*yl) + float64(xl*yh)
	return product, rest + float64(xl*yl)
}
