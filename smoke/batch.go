package smoke

import (
	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
)

// Batch is the fish of one smoking: as the heat sees its thickest fillet, and as the drying sees all of it.
type Batch struct {
	Slab          Slab
	Mass          units.Mass
	Area          units.Area  // wet surface of all of it
	Water         units.Ratio // share of the mass
	WaterActivity units.Ratio // of the surface: 1 unsalted, about 0.98 at a water phase salt of 3.5 %
}

func (b Batch) check() error {
	if err := b.Slab.check(); err != nil {
		return err
	}
	if err := units.Check("mass of the batch", b.Mass, units.Gram, units.Tonne); err != nil {
		return err
	}
	if err := units.Check("area of the batch", b.Area, units.SquareCentimetre, 1000*units.SquareMetre); err != nil {
		return err
	}
	if err := units.Check("water in the batch", b.Water, 30*units.Percent, 90*units.Percent); err != nil {
		return err
	}
	return units.Check("water activity", b.WaterActivity, moistair.Driest, units.One)
}

// drying is the water of a batch and how much of it is gone, in kg, in the least film, the likely one and the greatest.
type drying struct {
	water float64
	gone  [3]float64
}

func (b Batch) drying() *drying {
	return &drying{water: units.Float(b.Mass, units.Kilogram) * units.Float(b.Water, units.One)}
}

// through takes the batch through a stage: at the constant rate while it is wet, then at a first-order rate: the slowest of the published dryings
// of trout, the mean or the fastest, but never faster than the air dries a wet surface.
func (d *drying) through(air moistair.Air, film moistair.Film, b Batch, stage Stage) error {
	humidity, err := air.RelativeHumidity()
	if err != nil || humidity >= b.WaterActivity {
		return err
	}
	e, err := moistair.Evaporate(air, film, b.WaterActivity)
	if err != nil {
		return err
	}
	slow, fast := fallingRates[0].perHour(), fallingRates[len(fallingRates)-1].perHour()
	inside := [...]float64{slow, (slow + fast) / 2, fast}
	wet, rest := stage.wet().Hours(), (stage.For - stage.wet()).Hours()
	for i, perMetreHour := range [...]units.Mass{e.PerMetreHour.Low, e.PerMetreHour.Likely, e.PerMetreHour.High} {
		perHour := units.Float(perMetreHour, units.Kilogram) * units.Float(b.Area, units.SquareMetre)
		d.gone[i] += float64(perHour * wet)
		left := d.water - d.gone[i]
		if left <= 0 {
			return units.RangeError{
				What: "time with a wet surface", Got: stage.wet().String(), High: "until the water of the batch is gone: it cannot stay wet so long; say when it is dry",
			}
		}
		d.gone[i] += float64(left * -portable.Expm1(-min(inside[i], perHour/left)*rest))
	}
	return nil
}

// masses are the loss and what is left, to the milligram.
func (d *drying) masses(batch units.Mass) (loss, final units.Range[units.Mass]) {
	var m [3]units.Mass
	for i, kilograms := range d.gone {
		m[i], _ = units.OfFloat(kilograms, units.Kilogram) // below the batch's own mass
		m[i] = units.RoundTo(m[i], units.Milligram)
	}
	return units.Range[units.Mass]{Low: m[0], Likely: m[1], High: m[2]}, units.Range[units.Mass]{Low: batch - m[2], Likely: batch - m[1], High: batch - m[0]}
}
