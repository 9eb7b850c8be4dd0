package units_test

import (
	"errors"
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

func FuzzParseLasting(f *testing.F) { identity(f, units.ParseLasting, units.Lasting) }
func FuzzParseParts(f *testing.F)   { identity(f, units.ParseParts, units.Parts.String) }

// cooked are texts as people type them.
var cooked = []string{
	"7 lbs. 4 oz.", "2 c", "350 degrees F", "–18 °C", "4’ 6”", "3.5 per cent", "one to four", "1:4", "1 hr. 40 mins.", "1½ h",
	"an hour and a half", "1,500 kg",
	"0,500", "30 gr", "2 T", "8 oz", "1:40", "1:40:00", "1'200 mm", "3 -1/2 in", "half a cup", "twenty-five minutes",
	"pH of 4,6", "11/2 cups", "1 ft3 3 in3", "5-6 lb",
	"29,92 in. Hg", "two thirds of a cup and 1 tbsp", "1 1 1 1 1 1", "a a a", "1,500 gr 1,500 gr",
}

// understood is type-confirm-parse: whatever is read is confirmed by a text that the strict door reads as the same
// value, and so is every choice.
func understood[T interface {
	units.Typable
	comparable
}](f *testing.F, parse func(string) (T, error)) {
	for _, s := range append(cooked, seeds...) {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		typed, err := units.ReadTyped[T](s)
		if err == nil {
			back, err := parse(typed.Text)
			if err != nil || back != typed.Value {
				t.Fatalf("%q reads as %v, confirmed as %q, reads back as %v, %v", s, typed.Value, typed.Text, back, err)
			}
			again, err := units.ReadTyped[T](typed.Text)
			if err != nil && typed.Text != "1 m" || err == nil && again.Value != typed.Value {
				t.Fatalf("%q is confirmed as %q, which is typed as %v, %v", s, typed.Text, again, err)
			}
			return
		}
		if typed != (units.Typed[T]{}) || len(err.Error()) > 2000 {
			t.Fatalf("%q: %v beside error %v", s, typed, err)
		}
		var fault units.ParseError
		if errors.As(err, &fault) {
			for _, choice := range fault.Choices {
				if _, err := parse(choice); err != nil {
					t.Fatalf("%q: choice %q: %v", s, choice, err)
				}
			}
		}
	})
}

func FuzzTypedMass(f *testing.F)        { understood(f, units.ParseMass) }
func FuzzTypedLength(f *testing.F)      { understood(f, units.ParseLength) }
func FuzzTypedVolume(f *testing.F)      { understood(f, units.ParseVolume) }
func FuzzTypedPressure(f *testing.F)    { understood(f, units.ParsePressure) }
func FuzzTypedTemperature(f *testing.F) { understood(f, units.ParseTemperature) }
func FuzzTypedChange(f *testing.F)      { understood(f, units.ParseTemperatureChange) }
func FuzzTypedRatio(f *testing.F)       { understood(f, units.ParseRatio) }
func FuzzTypedTime(f *testing.F)        { understood(f, units.ParseLasting) }
func FuzzTypedParts(f *testing.F)       { understood(f, units.ParseParts) }
func FuzzTypedPH(f *testing.F)          { understood(f, units.ParsePH) }
func FuzzTypedArea(f *testing.F)        { understood(f, units.ParseArea) }
func FuzzTypedEnergy(f *testing.F)      { understood(f, units.ParseEnergy) }
func FuzzTypedSpeed(f *testing.F)       { understood(f, units.ParseSpeed) }
func FuzzTypedDensity(f *testing.F)     { understood(f, units.ParseDensity) }
func FuzzTypedConductivity(f *testing.F) {
	understood(f, units.ParseConductivity)
}

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
