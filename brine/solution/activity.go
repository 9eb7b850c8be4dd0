package solution

import (
	"math"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// waterMolality: ln aw = −2 × 0.01801528 m φ, kilograms of water a mole, two ions a salt.
const waterMolality = 2 * 0.01801528

// Hamer and Wu 1972, sodium chloride at 25 °C.
const (
	hamerA    = 0.5108
	hamerB    = 1.4495
	hamerBeta = 0.020442
	hamerC    = 0.0057927
	hamerD    = -0.00028860
)

var activityCitation = cite.Citation{
	Source: cite.HamerWu1972, Where: "sodium chloride at 25 °C", Basis: cite.Quoted,
}

// Activity returns the water activity of salt in water at 25 °C. Share is salt/(salt + water), such as a water
// phase salt, 0 % to Saturation: otherwise a RangeError or a SaturatedError. Rounded up to 1e-12, the safe side;
// within 0.0002 of the table of Robinson and Stokes and 0.0012 of other equations. It is that of pure brine: the
// own solutes of fish lower it a little more, which is no reason for less salt. At 5 °C a saturated brine is at
// 0.757 and not 0.753.
func Activity(share units.Ratio) (units.Ratio, error) {
	if err := CheckShare(saltByMass, share); err != nil {
		return 0, err
	}
	return units.OfFloat(math.Ceil(activity(molality(units.Float(share, units.One)))*1e12)/1e12, units.One)
}

// ActivityCitation returns where Activity and its inverse are from. The coefficients were seen as quoted in a program;
// the equation of Pitzer and Mayorga, whose coefficients were read, gives the same activity within 0.0007.
func ActivityCitation() cite.Citation { return activityCitation }

// ShareAt returns the least share of salt, salt/(salt + water), that brings water to an activity at 25 °C, rounded
// up to 1e-12. The activity must be that of a saturated brine, 0.7534, to 1: otherwise a RangeError. Published
// limits of salt and of activity are not equivalents of each other: Listeria has 0.92 and 10 %, and 0.92 is 11.9 %
// of salt.
func ShareAt(wanted units.Ratio) (units.Ratio, error) {
	least, err := Activity(saturation)
	if err != nil {
		return 0, err
	}
	if err := units.Check("water activity", wanted, least, units.One); err != nil {
		return 0, err
	}
	low, high := units.Ratio(-1), saturation // activity(low) is above wanted, activity(high) is not
	for high-low > 1 {
		middle := low + (high-low)/2
		if got, err := Activity(middle); err != nil {
			return 0, err
		} else if got > wanted {
			low = middle
		} else {
			high = middle
		}
	}
	return high, nil
}

// molality in mol/kg of water: m = 1000 x/(M (1 − x)).
func molality(x float64) float64 { return 1000 * x / (58.4428 * (1 - x)) }

func activity(m float64) float64 { return portable.Exp(-waterMolality * m * osmotic(m)) }

// osmotic is Hamer and Wu's osmotic coefficient φ at m mol/kg:
//
//	φ = 1 − ln 10 [A/(B³ m) (X − 2 ln X − 1/X) − β m/2 − (2/3) C m² − (3/4) D m³],  X = 1 + B √m
func osmotic(m float64) float64 {
	if m < 1e-9 {
		return 1 // the limit; the bracket loses its digits before that
	}
	x := 1 + float64(hamerB*math.Sqrt(m))
	debye := float64(hamerA / (hamerB * hamerB * hamerB * m) * (x - float64(2*portable.Log(x)) - 1/x))
	rest := float64(hamerBeta*m*0.5) + float64(float64(hamerC*m*m)*2/3) + float64(hamerD*m*m*m*3*0.25)
	return 1 - float64(math.Ln10*(debye-rest))
}
