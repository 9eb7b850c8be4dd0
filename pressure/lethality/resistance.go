package lethality

import (
	"math"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Resistance is how long something withstood heat, as printed: the D at a temperature and z, either of them a range
// in some documents. A zero field was not printed. Strain, medium and recovery move D by more than any rounding:
// these rows are to learn from.
type Resistance struct {
	Organism, Medium string
	Temperature      units.Temperature
	D, DHigh         time.Duration
	Z, ZHigh         units.TemperatureChange
	Note             string
	Citation         cite.Citation
}

type printedResistance struct {
	organism, medium string
	celsius          float64
	d, dHigh         float64 // minutes
	z, zHigh         float64 // kelvins
	note             string
	citation         cite.Citation
}

// Resistances returns every printed D and z, in a fresh slice: canning spores first, then non-proteolytic botulinum,
// Listeria and Salmonella. Those of 12-D arguments are 0.21 min (read) and 0.204 and 0.25 min (recalled) at 121.1 °C;
// D measured in buffer at 104 to 116 °C leads to 0.33 min and more at 121.1 °C.
func Resistances() []Resistance {
	all := make([]Resistance, len(resistances))
	for i, r := range resistances {
		all[i] = Resistance{
			Organism: r.organism, Medium: r.medium, D: inMinutes(r.d), DHigh: inMinutes(r.dHigh),
			Z: inKelvins(r.z), ZHigh: inKelvins(r.zHigh), Note: r.note, Citation: r.citation,
		}
		if r.celsius != 0 {
			all[i].Temperature = units.Celsius(r.celsius)
		}
	}
	return all
}

// inMinutes and inKelvins take a printed decimal to the nearest nanosecond and quantum; the printed figures are whole
// in both.
func inMinutes(x float64) time.Duration {
	d, _ := duration("printed time", math.Round(x*float64(time.Minute)))
	return d
}

func inKelvins(x float64) units.TemperatureChange {
	z, _ := units.OfFloat(x, units.Kelvins)
	return z
}
