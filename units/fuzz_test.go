package units_test

import (
	"testing"

	"example.org/lakelarder/units"
)

// seeds are texts of every shape that the parsers know, and some that they refuse.
var seeds = []string{
	"2,000 ft", "3 1/2 in", "½ cup", "1 lb 6 oz", "121.1 °C", "-18C", "11 psi", "29.92 inHg", "3.5 %", "1.4e-7 m²/s", "pH 6.2",
	"20 W/(m² K)", "5'3\"", "−12 m", "1e40 m", "9,223,372,036.854775807 m", "0.1 km/h", "", "1/0 in", "3.", "not set", "71480.000000000000001 kPa",
}

// identity is parse-print-parse: whatever is read prints to a text that reads as the same value.
func identity[T comparable](f *testing.F, parse func(string) (T, error), format func(T) string) {
	for _, s := range seeds {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		v, err := parse(s)
		if err != nil {
			var zero T
			if v != zero {
				t.Fatalf("%q: value %v beside error %v", s, v, err)
			}
			return
		}
		back, err := parse(format(v))
		if err != nil || back != v {
			t.Fatalf("%q reads as %v, prints as %q, reads back as %v, %v", s, v, format(v), back, err)
		}
	})
}

func FuzzParseLength(f *testing.F) { identity(f, units.ParseLength, units.Length.String) }
func FuzzParseArea(f *testing.F)   { identity(f, units.ParseArea, units.Area.String) }
func FuzzParseMass(f *testing.F)   { identity(f, units.ParseMass, units.Mass.String) }
func FuzzParseVolume(f *testing.F) { identity(f, units.ParseVolume, units.Volume.String) }
func FuzzParsePressure(f *testing.F) {
	identity(f, units.ParsePressure, units.Pressure.String)
}
func FuzzParseTemperature(f *testing.F) {
	identity(f, units.ParseTemperature, units.Temperature.String)
}
func FuzzParseTemperatureChange(f *testing.F) {
	identity(f, units.ParseTemperatureChange, units.TemperatureChange.String)
}
func FuzzParseRatio(f *testing.F)   { identity(f, units.ParseRatio, units.Ratio.String) }
func FuzzParseDensity(f *testing.F) { identity(f, units.ParseDensity, units.Density.String) }
func FuzzParseSpeed(f *testing.F)   { identity(f, units.ParseSpeed, units.Speed.String) }
func FuzzParseDiffusivity(f *testing.F) {
	identity(f, units.ParseDiffusivity, units.Diffusivity.String)
}
func FuzzParseConductivity(f *testing.F) {
	identity(f, units.ParseConductivity, units.Conductivity.String)
}
func FuzzParseFilmCoefficient(f *testing.F) {
	identity(f, units.ParseFilmCoefficient, units.FilmCoefficient.String)
}
func FuzzParseSpecificHeat(f *testing.F) {
	identity(f, units.ParseSpecificHeat, units.SpecificHeat.String)
}
func FuzzParseEnergy(f *testing.F) { identity(f, units.ParseEnergy, units.Energy.String) }
func FuzzParseSpecificEnergy(f *testing.F) {
	identity(f, units.ParseSpecificEnergy, units.SpecificEnergy.String)
}
func FuzzParsePH(f *testing.F) { identity(f, units.ParsePH, units.PH.String) }

// FuzzKitchen: what Kitchen prints reads back as the value rounded to its fraction.
func FuzzKitchen(f *testing.F) {
	f.Add(int64(9_979_032_140_000), int64(4))
	f.Add(int64(-1), int64(16))
	f.Add(int64(1<<62), int64(1))
	f.Fuzz(func(t *testing.T, q, denominator int64) {
		const quarter = units.Ounce / 4
		m := units.Mass(q)
		text := units.Kitchen(m, 4, units.Pound, units.Ounce)
		back, err := units.ParseMass(text)
		if err != nil || back != units.RoundTo(m, quarter) {
			t.Fatalf("%v prints as %q, reads back as %v, %v", m, text, back, err)
		}
		v := units.Volume(q)
		text = units.Kitchen(v, denominator, units.Gallon, units.Cup, units.Tablespoon, units.Teaspoon)
		if _, err := units.ParseVolume(text); err != nil && denominator < 10_000 {
			t.Fatalf("%v prints as %q: %v", v, text, err)
		}
	})
}

// FuzzProrate: dividing by the whole again gives the value back where the product was exact, and
// a part never exceeds the whole's share.
func FuzzProrate(f *testing.F) {
	f.Add(int64(30), int64(7), int64(9))
	f.Add(int64(-1<<62), int64(1<<61), int64(1<<62+1))
	f.Fuzz(func(t *testing.T, q, part, whole int64) {
		got, err := units.Prorate(units.Mass(q), units.Volume(part), units.Volume(whole))
		if err != nil {
			return
		}
		mirrored, err := units.Prorate(units.Mass(part), units.Volume(q), units.Volume(whole))
		if err != nil || mirrored != got {
			t.Fatalf("%d·%d/%d: %v one way, %v the other, %v", q, part, whole, got, mirrored, err)
		}
		if same, err := units.Prorate(units.Mass(q), units.Volume(whole), units.Volume(whole)); err == nil && same != units.Mass(q) {
			t.Fatalf("%d·%d/%d is not itself: %v", q, whole, whole, same)
		}
	})
}
