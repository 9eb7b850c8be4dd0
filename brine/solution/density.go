package solution

import (
	"math"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Where the density table holds.
var (
	coldest = units.Celsius(0)
	warmest = units.Celsius(25)
)

// sixty is the temperature that salometers, hydrometers and the brine tables are made for.
var sixty = units.Fahrenheit(60)

// Density returns the density of salt in water. Share is salt/(salt + water) by mass, 0 % to Saturation, the
// temperature 0 to 25 °C: otherwise a SaturatedError or a RangeError. Cubic in strength and in temperature through
// the table of the International Critical Tables, closed at 0 % with pure water; within 0.00005 g/mL between its
// rows and 0.0001 g/mL of other measurements. The scales of strength all go through it.
func Density(share units.Ratio, temperature units.Temperature) (units.Density, error) {
	x, t, err := plain(share, temperature)
	if err != nil {
		return 0, err
	}
	return units.OfFloat(density(x, t), units.GramPerMillilitre)
}

// DensityCitation returns where Density is from. The table is known from memory; its column at 20 °C agrees with the
// CRC Handbook, 102nd ed., to the four decimals printed there.
func DensityCitation() cite.Citation { return densityCitation }

// saltByMass is what a share is called in errors.
const saltByMass = "salt by mass of brine"

// plain is the door: share and temperature as plain numbers, percent and °C.
func plain(share units.Ratio, temperature units.Temperature) (x, t float64, err error) {
	if err := CheckShare(saltByMass, share); err != nil {
		return 0, 0, err
	}
	if err := units.CheckTemperature("brine temperature", temperature, coldest, warmest); err != nil {
		return 0, 0, err
	}
	return units.Float(share, units.Percent), temperature.Celsius(), nil
}

// density is in g/mL at x percent and t °C.
func density(x, t float64) float64 {
	first := 0
	for first+4 < len(densityStrengths) && x >= densityStrengths[first+2] {
		first++
	}
	var at [4]float64
	for i := range at {
		at[i] = cubic(densityTemperatures[:], densities[first+i][:], t)
	}
	return cubic(densityStrengths[first:first+4], at[:], x)
}

// cubic is Lagrange's cubic through four points.
func cubic(xs, ys []float64, x float64) float64 {
	sum := 0.0
	for i := 0; i < 4; i++ {
		term := ys[i]
		for j := 0; j < 4; j++ {
			if j != i {
				term *= (x - xs[j]) / (xs[i] - xs[j])
			}
		}
		sum += term
	}
	return sum
}

// strengthWhere returns the share, in percent, at which a figure that rises with strength reaches a value; ok is
// false when it does not between 0 % and saturation.
func strengthWhere(figure func(x float64) float64, value float64) (x float64, ok bool) {
	low, high := 0.0, mostPercent
	const slack = 1e-12 // of the figure: what its own rounding can add
	if !(value >= figure(low)*(1-slack)) || !(value <= figure(high)*(1+slack)) {
		return 0, false
	}
	for i := 0; i < 60; i++ {
		middle := low + float64((high-low)/2)
		if figure(middle) < value {
			low = middle
		} else {
			high = middle
		}
	}
	return math.Min(math.Max(high, 0), mostPercent), true
}
