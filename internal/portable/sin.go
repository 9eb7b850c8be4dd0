package portable

import (
	"math"
	"math/bits"
)

// Sin returns the sine of x in radians, within 0.78 ulp for every x. Special values: NaN for ±Inf and NaN; a zero is
// returned as it is.
func Sin(x float64) float64 {
	if x == 0 {
		return x
	}
	quarter, r, low := turned(x)
	if quarter%2 == 0 {
		return signed(sine(r, low), quarter)
	}
	return signed(cosine(r, low), quarter)
}

// Cos returns the cosine of x in radians, within 0.78 ulp for every x. Special values: NaN for ±Inf and NaN.
func Cos(x float64) float64 {
	quarter, r, low := turned(x)
	if quarter%2 == 0 {
		return signed(cosine(r, low), quarter)
	}
	return signed(sine(r, low), quarter+1)
}

// Sincos returns Sin(x) and Cos(x).
func Sincos(x float64) (sin, cos float64) {
	if x == 0 {
		return x, 1
	}
	quarter, r, low := turned(x)
	sin, cos = sine(r, low), cosine(r, low)
	if quarter%2 != 0 {
		sin, cos = cos, sin
	}
	return signed(sin, quarter), signed(cos, quarter+quarter%2)
}

// signed is x, with its sign changed in the second half of a turn.
func signed(x float64, quarter uint64) float64 {
	return math.Float64frombits(math.Float64bits(x) ^ quarter&2<<62)
}

// turned takes whole quarter turns off x, so that at most an eighth is left, in two words.
func turned(x float64) (quarter uint64, r, low float64) {
	switch size := math.Abs(x); {
	case size <= math.Pi/4:
		return 0, x, 0
	case !(size < 1<<20):
		return turnedFar(x)
	}
	n := float64(x*(2/math.Pi)) + whole
	k := n - whole
	a := x - float64(k*quarterHigh)
	b := float64(k * quarterMiddle)
	r = a - b
	if math.Abs(r) < 1./4096 {
		return turnedFar(x) // so near a whole number of quarters that three words do not hold enough digits
	}
	low = ((a - r) - b) - float64(k*quarterLow)
	total := r + low
	return math.Float64bits(n), total, (r - total) + low
}

// turnedFar does the same for any x above an eighth of a turn: x is a whole number times a power of 2, so of the
// digits of 2/π only those matter that do not make whole turns of it, and 192 of those are enough for any float64.
func turnedFar(x float64) (quarter uint64, r, low float64) {
	size := math.Float64bits(x) &^ (1 << 63)
	if size >= infinity {
		return 0, math.NaN(), 0
	}
	from := size>>52 - 1013 // the first digit that counts, after the leading zeros of the table
	digit := func(i uint64) uint64 {
		at, by := from/64+i, from%64
		return quarterTurns[at]<<by | quarterTurns[at+1]>>(64-by)
	}
	m := size&mantissa | 1<<52
	// the product with 192 digits, cut off above: two digits of quarters and 190 of a fraction
	carry, w2 := bits.Mul64(m, digit(2))
	up, w1 := bits.Mul64(m, digit(1))
	w1, over := bits.Add64(w1, carry, 0)
	w0 := m*digit(0) + up + over
	quarter = w0 >> 62
	w0, w1, w2 = w0<<2|w1>>62, w1<<2|w2>>62, w2<<2
	negative := w0>>63 == 1
	if negative { // more than half: one quarter more, and back
		quarter++
		w0, w1, w2 = ^w0, ^w1, ^w2
	}
	r, low = quarters(w0, w1, w2)
	if negative {
		r, low = -r, -low
	}
	if x < 0 {
		return -quarter, -r, -low
	}
	return quarter, r, low
}

// quarters is a fraction of a quarter turn of 192 digits in radians, in two words.
func quarters(w0, w1, w2 uint64) (r, low float64) {
	scale := 1. / (1 << 53)
	if w0 == 0 {
		w0, w1, w2, scale = w1, w2, 0, scale/(1<<32)/(1<<32)
	}
	zeros := uint64(bits.LeadingZeros64(w0))
	w0, w1 = w0<<zeros|w1>>(64-zeros), w1<<zeros|w2>>(64-zeros)
	scale *= math.Float64frombits((1023 - zeros) << 52)
	high := float64(float64(w0>>11) * scale)
	rest := float64(float64((w0<<53|w1>>11)>>11) * scale * (1. / (1 << 53)))
	r, low = times(high, math.Pi/2)
	low += float64(high*halfPiLow) + float64(rest*(math.Pi/2))
	total := r + low
	return total, (r - total) + low
}

// sine is the power series up to an eighth of a turn.
func sine(r, low float64) float64 {
	z := float64(r * r)
	zz := float64(z * z)
	a := -1./6 + float64(z*(1./120))
	b := -1./5040 + float64(z*(1./362880))
	c := -1./39916800 + float64(z*(1./6227020800-float64(z*(1./1307674368000-float64(z*(1./355687428096000))))))
	series := a + float64(zz*(b+float64(zz*c)))
	return r + (float64(float64(r*z)*series) + float64(low*(1-float64(z/2))))
}

// cosine is the power series up to an eighth of a turn.
func cosine(r, low float64) float64 {
	z := float64(r * r)
	zz := float64(z * z)
	a := 1./24 - float64(z*(1./720))
	b := 1./40320 - float64(z*(1./3628800))
	c := 1./479001600 - float64(z*(1./87178291200-float64(z*(1./20922789888000))))
	series := a + float64(zz*(b+float64(zz*c)))
	half := float64(z / 2)
	top := 1 - half
	return top + (((1 - top) - half) + (float64(zz*series) - float64(r*low)))
}
