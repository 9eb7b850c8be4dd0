package moistair

// saturationCurve holds the coefficients of ln p = inverse/T + log·ln T + Σ power·Tⁿ, p in Pa, T in K.
type saturationCurve struct {
	inverse, log float64
	power        [5]float64
}

// ASHRAE Handbook of Fundamentals 2017, chapter 1, equations 5 and 6.
var (
	overIce = saturationCurve{
		inverse: -5674.5359, log: 4.1635019,
		power: [5]float64{6.3925247, -0.009677843, 6.2215701e-7, 2.0747825e-9, -9.484024e-13},
	}
	overWater = saturationCurve{
		inverse: -5800.2206, log: 6.5459673,
		power: [5]float64{1.3914993, -0.048640239, 4.1764768e-5, -1.4452093e-8, 0},
	}
)
