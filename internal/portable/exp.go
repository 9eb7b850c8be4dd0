package portable

import "math"

// whole added to a number below 2^51 leaves the nearest whole number in the low bits of the sum.
const whole = 3 << 51

const (
	steps    = 128                // entries of the table in an octave
	stepBits = 7                  // their logarithm
	overflow = 709.782712893384   // the greatest x whose exponential is finite
	vanished = -745.1332191019412 // the least x whose exponential is not 0
	lowest   = -600.              // above it, and
	highest  = 709.               // below it every part of an exponential is a normal number
)

// Exp returns e to the power of x, within 0.51 ulp, 0.75 where the result is subnormal. Special values: +Inf, 0 and
// NaN for +Inf, -Inf and NaN.
func Exp(x float64) float64 {
	if !(x > lowest && x < highest) {
		return expEdge(x, 0)
	}
	n := float64(x*stepsPerE) + whole
	k := n - whole
	return power(math.Float64bits(n), (x-float64(k*stepHigh))-float64(k*stepLow))
}

// Exp10 returns 10 to the power of x, within 0.51 ulp, 0.75 where the result is subnormal; up to 1e22 a whole power
// is exact. Special values as for Exp.
func Exp10(x float64) float64 {
	if !(x > -260 && x < 307) {
		return exp10Edge(x)
	}
	n := float64(x*stepsPerTen) + whole
	k := n - whole
	r := (x - float64(k*tenHigh)) - float64(k*tenLow)
	return power(math.Float64bits(n), float64(r*math.Ln10))
}

// power is 2^(n/128) e^r, n in the low bits and r at most half a step: 2^(j/128) from the table in two words, its
// exponent moved, and a short series, of which the first term left out is below 1e-18.
func power(n uint64, r float64) float64 {
	entry := expTable[n%steps]
	scale := math.Float64frombits(entry.scale + n>>stepBits<<52)
	rr := float64(r * r)
	series := 0.5 + float64(r*(1./6)) + float64(rr*(1./24+float64(r*(1./120))))
	return scale + float64(scale*(entry.tail+float64(rr*series)+r))
}

// expSum is e^(x+low), low at most a few ulp of x.
func expSum(x, low float64) float64 {
	if !(x > lowest && x < highest) {
		return expEdge(x, low)
	}
	n := float64(x*stepsPerE) + whole
	k := n - whole
	return power(math.Float64bits(n), (x-float64(k*stepHigh))-(float64(k*stepLow)-low))
}

// expEdge is expSum where the result is near the ends of float64 or x is no number: the exponent is moved in two
// steps, of which the second rounds.
func expEdge(x, low float64) float64 {
	switch {
	case x != x:
		return x
	case x > overflow+1:
		return math.Inf(1)
	case x < vanished-1:
		return 0
	}
	n := float64(x*stepsPerE) + whole
	k := n - whole
	r := (x - float64(k*stepHigh)) - (float64(k*stepLow) - low)
	return moved(math.Float64bits(n), r, x)
}

func exp10Edge(x float64) float64 {
	switch {
	case x != x:
		return x
	case x > 309:
		return math.Inf(1)
	case x < -324:
		return 0
	}
	n := float64(x*stepsPerTen) + whole
	k := n - whole
	r := (x - float64(k*tenHigh)) - float64(k*tenLow)
	return moved(math.Float64bits(n), float64(r*math.Ln10), x)
}

// moved is power at 2^128 nearer to 1, and the rest.
func moved(n uint64, r, x float64) float64 {
	const far = 128
	if x > 0 {
		return power(n-far*steps, r) * (1 << far)
	}
	return power(n+far*steps, r) * (1. / (1 << far))
}

// Expm1 returns e to the power of x, less 1, within 0.58 ulp also where x is small. Special values: +Inf, -1 and NaN
// for +Inf, -Inf and NaN; a zero is returned as it is.
func Expm1(x float64) float64 {
	switch {
	case x == 0:
		return x
	case x > -1./16 && x < 1./16:
		return expm1Series(x)
	case !(x > -40 && x < 40):
		return expEdge(x, 0) - 1
	}
	n := float64(x*stepsPerE) + whole
	k := n - whole
	r := (x - float64(k*stepHigh)) - float64(k*stepLow)
	entry := expTable[math.Float64bits(n)%steps]
	scale := math.Float64frombits(entry.scale + math.Float64bits(n)>>stepBits<<52)
	rr := float64(r * r)
	series := 0.5 + float64(r*(1./6)) + float64(rr*(1./24+float64(r*(1./120))))
	low := float64(scale * (entry.tail + float64(rr*series) + r))
	if scale >= 2 { // then 1 is the smaller of the two
		sum := scale - 1
		return sum + (low + ((scale - sum) - 1))
	}
	sum := scale - 1
	return sum + (low + (scale - (sum + 1)))
}

// expm1Series is the power series below 1/16.
func expm1Series(x float64) float64 {
	xx := float64(x * x)
	a := 1./2 + float64(x*(1./6))
	b := 1./24 + float64(x*(1./120))
	c := 1./720 + float64(x*(1./5040))
	d := 1./40320 + float64(x*(1./362880+float64(x*(1./3628800))))
	return x + float64(xx*(a+float64(xx*(b+float64(xx*(c+float64(xx*d)))))))
}
