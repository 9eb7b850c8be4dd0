package portable

import "math"

const (
	erfcTerms   = 18 // of the series around a middle
	erfcPieces  = 19 // halves from 0.5 up to erfcFar
	erfcFar     = 10
	perRootPi   = 0.56418958354775628 // 1/√π
	erfcLargest = 27.3                // beyond, the result is 0
)

// Erfc returns the complementary error function, 1 − erf(x), within 2.7 ulp. Special values: 0, 2 and NaN for +Inf,
// -Inf and NaN.
func Erfc(x float64) float64 {
	switch size := math.Abs(x); {
	case size < 0.5:
		return erfcNear(x)
	case x < 0:
		return 2 - erfcTail(size)
	case size >= 0.5:
		return erfcTail(size)
	}
	return x
}

// erfcNear is 1 less the power series of erf.
func erfcNear(x float64) float64 {
	z, sum := float64(x*x), 0.
	for i := len(erfSeries) - 1; i > 0; i-- {
		sum = float64(z * (sum + erfSeries[i]))
	}
	lead := float64(2 * perRootPi * x)
	return 1 - (lead + float64(x*sum))
}

// erfcTail is exp(−x²) times a function that falls smoothly: by its power series around the middle of the half in
// which x lies, and for great x by the asymptotic one (Abramowitz and Stegun 7.1.23).
func erfcTail(x float64) float64 {
	if x > erfcLargest {
		return 0
	}
	smooth := 0.
	if x < erfcFar {
		piece := int(2*x) - 1
		h := x - (float64(math.Floor(2*x)/2) + 0.25)
		for i := erfcTerms - 1; i > 0; i-- {
			smooth = float64(h * (smooth + erfcTable[piece][i]))
		}
		smooth += erfcTable[piece][0]
	} else {
		y := 1 / float64(2*float64(x*x))
		for i := len(erfcFalling) - 1; i > 0; i-- {
			smooth = float64(y * (smooth + erfcFalling[i]))
		}
		smooth = float64((1 + smooth) * perRootPi / x)
	}
	square, rest := times(x, x)
	return float64(expSum(-square, -rest) * smooth)
}
