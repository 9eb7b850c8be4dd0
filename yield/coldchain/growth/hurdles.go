package growth

import (
	"math"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
)

// The model of Listeria in ready-to-eat fish: mu at 25 °C without hurdles, and the limit at which each
// stops growth.
const (
	seafoodRate      = 0.419 // 1/h
	seafoodZero      = -2.83 // °C
	seafoodReference = 25    // °C
	activityLimit    = 0.923
	acidityLimit     = 4.97 // pH
	phenolLimit      = 32   // ppm, as the next two
	nitriteLimit     = 350
	dioxideLimit     = 3140

	activityConstant = 0.999489
	activityLinear   = -0.005179 // per percent of water phase salt
	activitySquare   = -0.0001272
)

// acid is an acid of the water phase: its molar mass, its pKa and the undissociated mmol/L that stop growth.
type acid struct{ molar, pKa, limit float64 }

var (
	acetic    = acid{60.05, 4.76, 10.3}
	benzoic   = acid{122.12, 4.19, 0.349}
	citric    = acid{192.13, 3.13, 2.119}
	diacetate = acid{119.1, 4.76, 4.8}
	lactic    = acid{90.08, 3.86, 3.79}
	sorbic    = acid{112.1, 4.76, 1.896}
)

// hurdles are the shares of the rate that each hurdle leaves, 1 where there is none and 0 at its limit.
type hurdles struct {
	temperature float64 // its square root
	activity    float64
	acidity     float64
	phenol      float64
	nitrite     float64 // its square root
	dioxide     float64
	lactic      float64
	lacticRoot  float64 // as the interaction has it
	acids       float64 // all but lactic
}

func (s Seafood) hurdles() hurdles {
	left := func(amount units.Ratio, limit float64) float64 {
		return rest(units.Float(amount, units.PartsPerMillion) / limit)
	}
	of := func(amount units.Ratio, a acid) float64 { return s.undissociated(amount, a) / a.limit }
	pH := float64(s.PH) / float64(units.PHUnit)
	return hurdles{
		temperature: math.Max(0, (s.Temperature.Celsius()-seafoodZero)/(seafoodReference-seafoodZero)),
		activity:    math.Max(0, (units.Float(s.WaterActivity, units.One)-activityLimit)/(1-activityLimit)),
		acidity:     rest(portable.Exp10(acidityLimit - pH)),
		phenol:      left(s.Phenol, phenolLimit),
		nitrite:     left(s.Nitrite, nitriteLimit),
		dioxide:     left(s.CarbonDioxide, dioxideLimit),
		lactic:      rest(of(s.Lactic, lactic)),
		lacticRoot:  rest(math.Sqrt(of(s.Lactic, lactic))),
		acids: rest(math.Sqrt(of(s.Diacetate, diacetate))) * rest(math.Sqrt(of(s.Acetic, acetic))) *
			rest(of(s.Benzoic, benzoic)) * rest(of(s.Citric, citric)) * rest(of(s.Sorbic, sorbic)),
	}
}

// rest is 1 - x, and zero at and past the limit.
func rest(x float64) float64 { return math.Max(0, 1-float64(x)) }

// rate is mu without interaction, 1/h.
func (h hurdles) rate() float64 {
	return seafoodRate * h.temperature * h.temperature * h.activity * h.acidity * h.phenol * h.nitrite * h.nitrite *
		h.dioxide * h.lactic * h.acids
}

// interaction is psi = sum of phi_i/(2 product of (1 - phi_j), j not i), with phi the square of one less
// the root of each share, and xi.
func (h hurdles) interaction() (psi, xi float64) {
	phi := []float64{
		h.temperature, math.Sqrt(h.activity), math.Sqrt(h.acidity), math.Sqrt(h.phenol), h.nitrite,
		math.Sqrt(h.dioxide), h.lacticRoot * h.acids,
	}
	all := 1.0
	for i, root := range phi {
		phi[i] = float64((1 - root) * (1 - root))
		all *= 1 - phi[i]
	}
	for _, p := range phi {
		psi += p * (1 - p) / (2 * all)
	}
	switch {
	case psi <= 0.5:
		return psi, 1
	case psi < 1:
		return psi, 2 * (1 - psi)
	}
	return psi, 0
}
