package units_test

import (
	"fmt"
	"math/big"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

// kind ties the generic doors of one type together, so that one test serves every unit.
type kind struct {
	parse  func(string) (int64, error)
	format func(int64) string
	of     func(n decimal.Decimal, unit int64) (int64, error)
	in     func(q, unit int64, places int32) decimal.Decimal
}

func kindOf[Q units.Quantity](parse func(string) (Q, error), format func(Q) string) kind {
	return kind{
		parse:  func(s string) (int64, error) { q, err := parse(s); return int64(q), err },
		format: func(q int64) string { return format(Q(q)) },
		of: func(n decimal.Decimal, unit int64) (int64, error) {
			q, err := units.Of(n, Q(unit))
			return int64(q), err
		},
		in: func(q, unit int64, places int32) decimal.Decimal { return units.In(Q(q), Q(unit), places) },
	}
}

var kinds = map[string]kind{
	"length":             kindOf(units.ParseLength, units.Length.String),
	"area":               kindOf(units.ParseArea, units.Area.String),
	"mass":               kindOf(units.ParseMass, units.Mass.String),
	"volume":             kindOf(units.ParseVolume, units.Volume.String),
	"pressure":           kindOf(units.ParsePressure, units.Pressure.String),
	"temperature change": kindOf(units.ParseTemperatureChange, units.TemperatureChange.String),
	"ratio":              kindOf(units.ParseRatio, units.Ratio.String),
	"density":            kindOf(units.ParseDensity, units.Density.String),
	"speed":              kindOf(units.ParseSpeed, units.Speed.String),
	"diffusivity":        kindOf(units.ParseDiffusivity, units.Diffusivity.String),
	"conductivity":       kindOf(units.ParseConductivity, units.Conductivity.String),
	"film coefficient":   kindOf(units.ParseFilmCoefficient, units.FilmCoefficient.String),
	"specific heat":      kindOf(units.ParseSpecificHeat, units.SpecificHeat.String),
	"energy":             kindOf(units.ParseEnergy, units.Energy.String),
	"specific energy":    kindOf(units.ParseSpecificEnergy, units.SpecificEnergy.String),
	"pH":                 kindOf(units.ParsePH, units.PH.String),
}

// named are the constants under the symbols of testdata/units/units.csv.
var named = map[string]struct {
	kind  string
	quota int64
}{
	"in": {"length", int64(units.Inch)}, "ft": {"length", int64(units.Foot)}, "yd": {"length", int64(units.Yard)},
	"lb": {"mass", int64(units.Pound)}, "oz": {"mass", int64(units.Ounce)}, "grain": {"mass", int64(units.Grain)},
	"label oz": {"mass", int64(units.LabelOunce)},
	"psi":      {"pressure", int64(units.PSI)}, "atm": {"pressure", int64(units.Atmosphere)}, "torr": {"pressure", int64(units.Torr)},
	"mmHg": {"pressure", int64(units.MillimetreOfMercury)}, "inHg": {"pressure", int64(units.InchOfMercury)},
	"in³": {"volume", int64(units.CubicInch)}, "ft³": {"volume", int64(units.CubicFoot)}, "gal": {"volume", int64(units.Gallon)}, "qt": {"volume", int64(units.Quart)},
	"pt": {"volume", int64(units.Pint)}, "cup": {"volume", int64(units.Cup)}, "fl oz": {"volume", int64(units.FluidOunce)},
	"tbsp": {"volume", int64(units.Tablespoon)}, "tsp": {"volume", int64(units.Teaspoon)},
	"imp gal": {"volume", int64(units.ImperialGallon)}, "imp qt": {"volume", int64(units.ImperialQuart)},
	"imp pt": {"volume", int64(units.ImperialPint)}, "imp fl oz": {"volume", int64(units.ImperialFluidOunce)},
	"metric cup": {"volume", int64(units.MetricCup)}, "metric tbsp": {"volume", int64(units.MetricTablespoon)},
	"metric tsp": {"volume", int64(units.MetricTeaspoon)}, "label cup": {"volume", int64(units.LabelCup)},
	"label tbsp": {"volume", int64(units.LabelTablespoon)}, "label tsp": {"volume", int64(units.LabelTeaspoon)},
	"label fl oz": {"volume", int64(units.LabelFluidOunce)},
	"Btu":         {"energy", int64(units.BTU)}, "Btu/lb": {"specific energy", int64(units.BTUPerPound)},
}

// metric are the units that the table's ratios refer to.
var metric = map[string]int64{
	"m": int64(units.Metre), "kg": int64(units.Kilogram), "g": int64(units.Gram), "Pa": int64(units.Pascal),
	"m³": 1000 * int64(units.Litre), "L": int64(units.Litre), "mL": int64(units.Millilitre),
	"J": int64(units.Joule), "J/kg": int64(units.JoulePerKilogram),
}

// TestUnitsTable holds every unit against its printed definition (NIST SP 811, Handbook 44, 21 CFR
// 101.9): the constant, the parsed symbol and the metric route give one value, as equality.
func TestUnitsTable(t *testing.T) {
	seen := map[string]bool{}
	printed.Table(t, "units/units.csv").Each(t, func(t *testing.T, r printed.Row) {
		if r.Text("symbol") == "" {
			return // gravity and pound-force: see TestPSIFromItsDefinition
		}
		c, ok := named[r.Text("symbol")]
		require.True(t, ok, "%s: no constant for %s", r, r.Text("symbol"))
		seen[r.Text("symbol")] = true
		base, ok := metric[r.Text("in_unit")]
		require.True(t, ok, "%s: no metric unit %s", r, r.Text("in_unit"))
		ratio, ok := new(big.Rat).SetString(r.Text("exact_ratio"))
		require.True(t, ok, "%s", r)
		want := ratio.Mul(ratio, new(big.Rat).SetInt64(base))
		if r.Text("whole_quanta") == "yes" {
			require.True(t, want.IsInt(), "%s: %s quanta", r, want)
			require.Equal(t, want.Num().Int64(), c.quota, "%s: constant", r)
		} else {
			off := new(big.Rat).Sub(want, new(big.Rat).SetInt64(c.quota))
			require.True(t, off.Abs(off).Cmp(big.NewRat(1, 2)) <= 0, "%s: constant is %s quanta off", r, off)
			require.False(t, want.IsInt(), "%s is whole after all", r)
		}
		k := kinds[c.kind]
		bySymbol, err := k.parse("1 " + r.Text("symbol"))
		require.NoError(t, err)
		require.Equal(t, c.quota, bySymbol, "%s: parsed by symbol", r)
		if in := r.Text("in_unit"); in != "m³" {
			byMetric, err := k.parse(r.Text("decimal") + " " + in)
			require.NoError(t, err)
			require.Equal(t, c.quota, byMetric, "%s: parsed by metric decimal", r)
		}
		byDecimal, err := k.of(r.Decimal("decimal"), base)
		require.NoError(t, err)
		require.Equal(t, c.quota, byDecimal, "%s: through decimal", r)
	})
	for symbol := range named {
		require.True(t, seen[symbol], "%s is in no printed row", symbol)
	}
}

// TestEveryPair takes each two units of a type both ways round: a of one is b of the other where
// a:b is the printed ratio in lowest terms, and both counts are the same value.
func TestEveryPair(t *testing.T) {
	rows := printed.Table(t, "units/units.csv")
	pairs := 0
	for i := range rows {
		for j := range rows {
			a, b := rows[i], rows[j]
			ca, cb := named[a.Text("symbol")], named[b.Text("symbol")]
			if i == j || ca.kind == "" || ca.kind != cb.kind || a.Text("whole_quanta") != "yes" || b.Text("whole_quanta") != "yes" {
				continue
			}
			ra, _ := new(big.Rat).SetString(a.Text("exact_ratio"))
			rb, _ := new(big.Rat).SetString(b.Text("exact_ratio"))
			ra.Mul(ra, new(big.Rat).SetInt64(metric[a.Text("in_unit")]))
			rb.Mul(rb, new(big.Rat).SetInt64(metric[b.Text("in_unit")]))
			r := ra.Quo(ra, rb) // one a is Num/Denom of b
			left := new(big.Int).Mul(r.Denom(), big.NewInt(ca.quota))
			right := new(big.Int).Mul(r.Num(), big.NewInt(cb.quota))
			require.Zero(t, left.Cmp(right), "%s %s = %s %s", r.Denom(), a.Text("symbol"), r.Num(), b.Text("symbol"))
			pairs++
		}
	}
	require.Greater(t, pairs, 300)
}

// TestPSIFromItsDefinition derives the psi from pound, gravity and inch (NIST SP 811, notes 22, 23).
func TestPSIFromItsDefinition(t *testing.T) {
	ratios := map[string]*big.Rat{}
	for _, r := range printed.Table(t, "units/units.csv") {
		v, ok := new(big.Rat).SetString(r.Text("exact_ratio"))
		require.True(t, ok, "%s", r)
		ratios[r.Text("unit")] = v
	}
	force := new(big.Rat).Mul(ratios["pound (avoirdupois)"], ratios["standard gravity"])
	require.Zero(t, force.Cmp(ratios["pound-force"]))
	inch := ratios["inch"]
	psi := force.Quo(force, new(big.Rat).Mul(inch, inch))
	require.Zero(t, psi.Cmp(ratios["psi"]))
	require.Zero(t, psi.Mul(psi, new(big.Rat).SetInt64(int64(units.Pascal))).Cmp(new(big.Rat).SetInt64(int64(units.PSI))))
}

// TestTwoRoutes spells equalities that a kitchen relies on, as equality.
func TestTwoRoutes(t *testing.T) {
	for _, c := range []struct {
		name string
		a, b any
	}{
		{"2,000 ft is 609.6 m", 2000 * units.Foot, 609_600 * units.Millimetre},
		{"212 °F is 100 °C", units.Fahrenheit(212), units.Celsius(100)},
		{"−40 meets itself", units.Fahrenheit(-40), units.Celsius(-40)},
		{"32 °F is 273.15 K", units.Fahrenheit(32), units.Kelvin(273.15)},
		{"16 oz is 1 lb", 16 * units.Ounce, units.Pound},
		{"7,000 grains are 1 lb", 7000 * units.Grain, units.Pound},
		{"3 tsp is 1 tbsp", 3 * units.Teaspoon, units.Tablespoon},
		{"16 tbsp is 1 cup", 16 * units.Tablespoon, units.Cup},
		{"8 fl oz is 1 cup", 8 * units.FluidOunce, units.Cup},
		{"4 qt is 1 gal", 4 * units.Quart, units.Gallon},
		{"231 in³ is 1 gal", 231 * units.CubicInch, units.Gallon},
		{"1728 in³ is 1 ft³", 1728 * units.CubicInch, units.CubicFoot},
		{"3 thirds of a cup", 3 * (units.Cup / 3), units.Cup},
		{"4 quarter teaspoons", 4 * (units.Teaspoon / 4), units.Teaspoon},
		{"64 sixty-fourths of an inch", 64 * (units.Inch / 64), units.Inch},
		{"1,000 thousandths of an inch", 1000 * (units.Inch / 1000), units.Inch},
		{"4 quarter psi", 4 * (units.PSI / 4), units.PSI},
		{"100 hundredths of a psi", 100 * (units.PSI / 100), units.PSI},
		{"100 hundredths of an ounce", 100 * (units.Ounce / 100), units.Ounce},
		{"160 imp fl oz is 1 imp gal", 160 * units.ImperialFluidOunce, units.ImperialGallon},
		{"5,280 ft is 1 mi", 5280 * units.Foot, units.Mile},
		{"144 in² is 1 ft²", 144 * units.SquareInch, units.SquareFoot},
		{"1 in² is 6.4516 cm²", 10_000 * units.SquareInch, 64_516 * units.SquareCentimetre},
		{"1 cm² is 100 mm²", units.SquareCentimetre, 100 * units.SquareMillimetre},
		{"1 m² is 10,000 cm²", units.SquareMetre, 10_000 * units.SquareCentimetre},
		{"1 m² is 1 m by 1 m", int64(units.SquareMetre), int64(units.Metre) / 100_000 * int64(units.Metre) / 1000},
		{"1 g/mL is 1,000 g/L", units.GramPerMillilitre, 1000 * units.GramPerLitre},
		{"1 m²/s is 10,000 cm²/s", units.SquareMetrePerSecond, 10_000 * units.SquareCentimetrePerSecond},
		{"1 m²/s is 1,000,000 mm²/s", units.SquareMetrePerSecond, 1_000_000 * units.SquareMillimetrePerSecond},
		{"1 mi/h is 0.44704 m/s", 100_000 * units.MilePerHour, 44_704 * units.MetrePerSecond},
		{"1 mi/h is 5,280 ft in 3,600 s", 3600 * units.MilePerHour, units.Speed(5280 * int64(units.Foot))},
		{"1 kcal/(kg K) is 4,186.8 J/(kg K)", 10 * units.KilocaloriePerKilogramKelvin, 41_868 * units.JoulePerKilogramKelvin},
		{"1 kcal/kg is 4,186.8 J/kg", 10 * units.KilocaloriePerKilogram, 41_868 * units.JoulePerKilogram},
		{"1 kcal of food is 4,184 J", units.Kilocalorie, 4184 * units.Joule},
		{"1 ft is 12 in", units.Foot, 12 * units.Inch},
		{"1 ft² is 1 ft by 1 ft", int64(units.SquareFoot), int64(units.Foot) * int64(units.Foot) / 100_000_000},
		{"60 ft/min is 1 ft/s", 60 * units.FootPerMinute, units.Speed(int64(units.Foot))},
		{"9 °F of change is 5 K", 9 * units.FahrenheitDegrees, 5 * units.Kelvins},
		{"1 kWh is 3,600 kJ", units.KilowattHour, 3600 * units.Kilojoule},
		{"1 bar is 100 kPa", units.Bar, 100 * units.Kilopascal},
		{"1 kg is 1e9 µg", units.Kilogram, 1_000_000_000 * units.Microgram},
		{"1 L is 1e6 µL", units.Litre, 1_000_000 * units.Microlitre},
	} {
		require.Empty(t, cmp.Diff(c.a, c.b), c.name)
	}
}

// TestScales walks the readings a gauge, a map and a thermometer can show; each route gives one value.
func TestScales(t *testing.T) {
	for n := int64(0); n <= 12000; n++ { // whole feet against their metres in tenths of millimetres
		metres, err := units.ParseLength(decimal.New(n*3048, -4).String() + " m")
		require.NoError(t, err)
		require.Equal(t, units.Length(n)*units.Foot, metres)
		byFloat, err := units.OfFloat(float64(n)*0.3048, units.Metre)
		require.NoError(t, err)
		require.Equal(t, metres, byFloat)
	}
	for n := int64(0); n <= 4*60; n++ { // quarter psi
		d := decimal.New(n*25, -2)
		of, err := units.Of(d, units.PSI)
		require.NoError(t, err)
		parsed, err := units.ParsePressure(d.String() + " psi")
		require.NoError(t, err)
		require.Equal(t, units.Pressure(n)*(units.PSI/4), of)
		require.Equal(t, of, parsed)
	}
	for n := int64(-400); n <= 3000; n++ { // tenths of a Fahrenheit degree
		d := decimal.New(n, -1)
		of, err := units.TemperatureOf(d, units.FahrenheitScale)
		require.NoError(t, err)
		parsed, err := units.ParseTemperature(d.String() + " °F")
		require.NoError(t, err)
		require.Equal(t, of, parsed)
		require.Equal(t, of, units.Fahrenheit(float64(n)/10))
		require.True(t, of.In(units.FahrenheitScale, 6).Equal(d))
		celsius := decimal.New(5*(n-320), -1).DivRound(decimal.New(9, 0), 12) // t/°C = (t/°F − 32)/1.8
		viaCelsius, err := units.TemperatureOf(celsius, units.CelsiusScale)
		require.NoError(t, err)
		require.Equal(t, of, viaCelsius)
	}
}

// TestTextRoundTrip prints unit constants, their neighbours and the ends of every range and reads
// them back to the quantum.
func TestTextRoundTrip(t *testing.T) {
	values := []int64{0, 1, -1, 2, 7, 999, 1 << 40, 1<<63 - 1, -(1<<63 - 1), -1 << 63, 1<<62 + 12345, 123456789012345678}
	for _, c := range named {
		values = append(values, c.quota, c.quota+1, c.quota-1, -c.quota, 3*c.quota/4, c.quota/3)
	}
	for name, k := range kinds {
		for _, q := range values {
			back, err := k.parse(k.format(q))
			if name == "pH" && (q < 0 || q > 14_000) {
				require.ErrorIs(t, err, units.ErrRange)
				continue
			}
			require.NoError(t, err, "%s %d prints as %s", name, q, k.format(q))
			require.Equal(t, q, back, "%s %d prints as %s", name, q, k.format(q))
		}
	}
	for _, q := range append(values, 2_458_350_000, 1_089_900_000+2_458_350_000) {
		temp := units.FromAbsoluteZero(units.TemperatureChange(q))
		back, err := units.ParseTemperature(temp.String())
		require.NoError(t, err)
		require.Equal(t, temp, back, fmt.Sprint(temp))
	}
}
