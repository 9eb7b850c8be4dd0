package moistair

import (
	"math"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/internal/root"
	"example.org/lakelarder/units"
)

// wetSurface returns the temperature in °C at which a wet surface of a water activity settles in the air, which must not hold more than that
// activity of saturation: for pure water, activity 1, the wet bulb.
//
// ASHRAE's wet-bulb equations, with the activity in front of the saturation pressure, are solved in the form
// ln aw + ln pws(s) = ln(P A/(A + 0.621945 λ)), where A is the heat that the air gives up and λ the latent heat: both sides
// run nearly straight, so few steps are needed. Below 0 °C the surface is ice. Between the two branches, near freezing, both equations may hold: then
// the surface is taken as water at the warmer solution, which keeps the answer rising with humidity.
func (a Air) wetSurface(activity float64) float64 {
	b := balance{t: a.dryBulb.Celsius(), w: units.Float(a.humidity, units.One), log: portable.Log(activity / pascals(a.pressure))}
	low, high := coldest, b.t
	if b.t > 0 {
		if value, slope := b.At(0); value <= 0 {
			guess := -value / slope // both sides run nearly straight from here,
			guess += float64(float64(guess*guess) * bend)
			if !(guess < high) {
				guess = high / 2
			}
			return root.OfStraight(0, high, guess, b)
		}
		high = 0
	}
	b.ice = true
	return root.Of(low, high, (low+high)/2, b)
}

// bend is how much a wet bulb above 0 °C lies beyond the straight line from there, in its square: 0.008 to 0.009 /K from
// dry air to wet, from 5 to 150 °C. It is a first guess, no more.
const bend = 0.0088

// balance is the heat balance of a wet surface in air, over water (eq. 33) or ice (eq. 35).
type balance struct {
	t, w, log float64 // °C, kg/kg, logarithm of the activity to the pressure in Pa
	ice       bool
}

func (b balance) At(s float64) (value, slope float64) {
	latentAtZero, latentSlope, vapourSlope := 2501., -2.326, 4.186
	if b.ice {
		latentAtZero, latentSlope, vapourSlope = 2830, -0.24, 2.1
	}
	latent := latentAtZero + float64(latentSlope*s)
	heatSlope := -1.006 - float64(vapourSlope*b.w)
	heat := float64(1.006*(b.t-s)) + float64(b.w*(latentAtZero+float64(1.86*b.t)-float64(vapourSlope*s)))
	if heat <= 0 { // dry air at the dry bulb: any surface is warmer than it can be
		return math.Inf(1), 1
	}
	ln, lnSlope := lnAtZero, slopeAtZero
	if s != 0 {
		ln, lnSlope = logSaturation(s)
	}
	both := heat + float64(waterToAir*latent)
	value = b.log + ln - portable.Log(heat/both)
	slope = lnSlope - heatSlope/heat + (heatSlope+float64(waterToAir*latentSlope))/both
	return value, slope
}
