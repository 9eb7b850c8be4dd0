package moistair

import (
	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/internal/root"
)

const (
	zeroCelsius = 273.15
	icePoint    = 0.01     // °C; at and below it the saturation pressure is that over ice, as ASHRAE has it
	waterToAir  = 0.621945 // ratio of the molar masses of water and dry air
	coldest     = -100.    // °C, where equation 5 begins
)

// logSaturation returns the logarithm of the saturation pressure in Pa at t °C and its slope per kelvin.
func logSaturation(t float64) (ln, slope float64) {
	k := t + zeroCelsius
	c := overWater // eq. 6
	if t <= icePoint {
		c = overIce // eq. 5
	}
	p := c.power
	square := float64(k * k)
	low, high := p[0]+float64(p[1]*k), p[2]+float64(p[3]*k)+float64(p[4]*square)
	ln = c.inverse/k + float64(c.log*portable.Log(k)) + low + float64(high*square)
	slope = -c.inverse/square + c.log/k + p[1] + float64(k*(float64(2*p[2])+float64(3*p[3]*k)+float64(4*p[4]*square)))
	return ln, slope
}

// lnAtZero and slopeAtZero are those at 0 °C, where each wet surface begins.
var lnAtZero, slopeAtZero = logSaturation(0)

// saturation returns the saturation pressure in Pa at t °C.
func saturation(t float64) float64 {
	ln, _ := logSaturation(t)
	return portable.Exp(ln)
}

// saturationAt returns the temperature in °C at which the saturation pressure is p Pa, of at least that at -100 °C, and no higher than
// high: Newton's steps on the logarithm, kept inside a shrinking bracket.
func saturationAt(p, high float64) float64 {
	return root.Of(coldest, high, (coldest+high)/2, saturationLess{portable.Log(p)})
}

// saturationLess is the logarithm of the saturation pressure less that of a pressure.
type saturationLess struct{ log float64 }

func (c saturationLess) At(t float64) (value, slope float64) {
	ln, slope := logSaturation(t)
	return ln - c.log, slope
}
