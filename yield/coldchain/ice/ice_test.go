package ice_test

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/ice"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

// The table for 10 kg of fish, and what the three constants make of it.
func TestIceTable(t *testing.T) {
	for _, r := range printed.Table(t, "coldchain/ice-table.csv") {
		for _, c := range ice.Constants() {
			col := map[string]string{"Icelandic guidance": "kg_icelandic", "table for 10 kg of fish": "kg_table", "lean fish": "kg_lean"}[c.Name]
			ice, err := ice.ToChill(logged.Quantity(t, r, "fish_kg", units.Kilogram), logged.Celsius(t, r, "from_c"), logged.Celsius(t, r, "to_c"), c)
			require.NoError(t, err)
			got := units.In(ice.Mass, units.Kilogram, 6)
			gram := decimal.New(1, -3) // rounded up to the gram, so up to a gram over the print's own rounding
			require.True(t, got.GreaterThanOrEqual(r.Decimal(col).Sub(r.Tolerance(col))) && got.LessThan(r.Decimal(col).Add(r.Tolerance(col)).Add(gram)),
				"%s %s: %s", r, col, got)
			if c.Name == "table for 10 kg of fish" {
				printed.Within(t, r, "printed_kg", r.Decimal(col))
			}
		}
	}
}

func TestIceChecks(t *testing.T) {
	for _, r := range printed.Table(t, "coldchain/ice-checks.csv") {
		var need ice.Need
		switch id := r.Text("id"); id {
		case "chill-3.35", "chill-3.8":
			c, err := ice.ConstantOf(logged.Quantity(t, r, "cp_kj_kgk", units.KilojoulePerKilogramKelvin), logged.Quantity(t, r, "latent_kj_kg", units.KilojoulePerKilogram))
			require.NoError(t, err)
			need, err = ice.ToChill(logged.Quantity(t, r, "fish_kg", units.Kilogram), logged.Celsius(t, r, "from_c"), logged.Celsius(t, r, "to_c"), c)
			require.NoError(t, err)
		case "wall":
			u, c, err := ice.Wall(logged.Quantity(t, r, "h_out_w_m2k", units.WattPerSquareMetreKelvin), logged.Quantity(t, r, "h_in_w_m2k", units.WattPerSquareMetreKelvin),
				ice.Layer{Thickness: logged.Quantity(t, r, "foam_m", units.Metre), Conductivity: logged.Quantity(t, r, "foam_w_mk", units.WattPerMetreKelvin)})
			require.NoError(t, err)
			require.NoError(t, c.Check())
			printed.Within(t, r, "u_w_m2k", units.In(u, units.WattPerSquareMetreKelvin, 9))
			continue
		case "box":
			rate, err := ice.MeltRateOf(logged.Quantity(t, r, "u_w_m2k", units.WattPerSquareMetreKelvin), logged.Quantity(t, r, "surface_m2", units.SquareMetre), logged.Quantity(t, r, "latent_kj_kg", units.KilojoulePerKilogram))
			require.NoError(t, err)
			need, err = rate.Hold(logged.Celsius(t, r, "outside_c"), logged.Hours(t, r, "hours"))
			require.NoError(t, err)
		case "keeping":
			var err error
			need, err = ice.RoughHold(logged.Quantity(t, r, "fish_kg", units.Kilogram), logged.Celsius(t, r, "outside_c"), logged.Hours(t, r, "hours"))
			require.NoError(t, err)
		default:
			t.Fatalf("%s: no check for %q", r, id)
		}
		got, want := units.In(need.Mass, units.Kilogram, 6), r.Decimal("ice_kg")
		require.True(t, got.GreaterThanOrEqual(want.Sub(r.Tolerance("ice_kg"))), "%s: %s", r, got)
		require.True(t, got.LessThan(want.Add(r.Tolerance("ice_kg")).Add(decimal.New(1, -3))), "%s: %s", r, got)
	}
}

// A kilocalorie an hour is 1.163 W by definition: 4186.8 J over 3600 s.
func TestKilocaloriesOfAWall(t *testing.T) {
	watts, err := units.RatioOf(units.KilocaloriePerKilogramKelvin, 3600*units.JoulePerKilogramKelvin)
	require.NoError(t, err)
	require.Equal(t, int64(watts/units.PartsPerBillion), int64(ice.KilocaloriePerSquareMetreHour))
}

// Weighing the ice of a box and holding by its wall are one rule: the test of a box gives back the rate that melted it.
func TestMeltTestGivesTheRateBack(t *testing.T) {
	rate, err := ice.MeltRateOf(units.WattPerSquareMetreKelvin*65/100, 12*units.SquareMetre/10, ice.Fresh)
	require.NoError(t, err)
	melted, err := rate.Hold(units.Celsius(25), 24*time.Hour)
	require.NoError(t, err)
	tested, err := ice.MeltTest(20*units.Kilogram, 20*units.Kilogram-melted.Mass, units.Celsius(25), 24*time.Hour)
	require.NoError(t, err)
	require.GreaterOrEqual(t, tested.PerHour, rate.PerHour, "the melted ice was rounded up")
	require.Less(t, tested.PerHour-rate.PerHour, units.Gram/500)
}

// More fish, warmer fish, a hotter day, a longer day: never less ice. Nothing is rounded below what it was.
func TestMoreNeedsMoreIce(t *testing.T) {
	base := ice.Trip{
		Fish: 20 * units.Kilogram, From: units.Celsius(14), To: units.Celsius(0), Outside: units.Celsius(22), For: 10 * time.Hour,
		Spare: 25 * units.Percent, IceShare: units.State(50 * units.Percent),
	}
	measured := base
	measured.Box = ice.MeltRate{PerHour: 9 * units.Gram}
	for _, trip := range []ice.Trip{base, measured} {
		want := trip
		before, err := ice.Plan(trip)
		require.NoError(t, err)
		require.Equal(t, before.Chill+before.Hold+before.Spare, before.Total)
		require.GreaterOrEqual(t, before.Slurry, 2*before.Total)
		require.Equal(t, trip.Box == ice.MeltRate{}, before.Rough)
		for name, more := range map[string]func(*ice.Trip){
			"fish":  func(t *ice.Trip) { t.Fish += 7 * units.Gram },
			"from":  func(t *ice.Trip) { t.From = t.From.Add(units.CelsiusDegrees / 10) },
			"out":   func(t *ice.Trip) { t.Outside = t.Outside.Add(units.CelsiusDegrees / 3) },
			"time":  func(t *ice.Trip) { t.For += time.Hour },
			"spare": func(t *ice.Trip) { t.Spare += units.Percent },
		} {
			trip = want
			more(&trip)
			after, err := ice.Plan(trip)
			require.NoError(t, err)
			require.GreaterOrEqual(t, after.Total, before.Total, name)
			require.GreaterOrEqual(t, after.Slurry, before.Slurry, name)
		}
	}
}

func TestIceIsRoundedUp(t *testing.T) {
	lean := ice.Constants()[2] // 1 kg for 100 kg and degree
	for fish, want := range map[units.Mass]units.Mass{
		0: 0, units.Gram: units.Gram, 100 * units.Kilogram: units.Kilogram, 100*units.Kilogram + 1: units.Kilogram + units.Gram,
	} {
		ice, err := ice.ToChill(fish, units.Celsius(1), units.Celsius(0), lean)
		require.NoError(t, err)
		require.Empty(t, cmp.Diff(want, ice.Mass), fish)
	}
}

func TestIceRefuses(t *testing.T) {
	zero, warm := units.Celsius(0), units.Celsius(14)
	kg, w := units.Kilogram, units.WattPerSquareMetreKelvin
	of := func(_ any, err error) error { return err }
	wall := func(_ units.FilmCoefficient, _ cite.Citation, err error) error { return err }
	rate := ice.MeltRate{PerHour: 9 * units.Gram}
	for name, err := range map[string]error{
		"negative fish":                  of(ice.ToChill(-1, warm, zero, ice.Constant{})),
		"a whale":                        of(ice.ToChill(10*units.Tonne+1, warm, zero, ice.Constant{})),
		"fish not measured":              of(ice.ToChill(kg, units.Temperature{}, zero, ice.Constant{})),
		"aim not set":                    of(ice.ToChill(kg, warm, units.Temperature{}, ice.Constant{})),
		"aim above the fish":             of(ice.ToChill(kg, zero, warm, ice.Constant{})),
		"aim below the ice":              of(ice.ToChill(kg, warm, units.Celsius(-0.1), ice.Constant{})),
		"hot fish":                       of(ice.ToChill(kg, units.Celsius(40.1), zero, ice.Constant{})),
		"a constant too small":           of(ice.ToChill(kg, warm, zero, ice.Constant{PerDegree: units.Percent / 4})),
		"a constant too large":           of(ice.ToChill(kg, warm, zero, ice.Constant{PerDegree: units.One})),
		"heat in calories":               of(ice.ConstantOf(800*units.JoulePerKilogramKelvin, ice.Fresh)),
		"ice half melted":                of(ice.ConstantOf(3*units.KilojoulePerKilogramKelvin, 80*units.KilojoulePerKilogram)),
		"no film":                        wall(ice.Wall(0, w)),
		"no inner film":                  wall(ice.Wall(w, 0)),
		"a layer of nothing":             wall(ice.Wall(w, w, ice.Layer{0, units.WattPerMetreKelvin})),
		"a perfect insulator":            wall(ice.Wall(w, w, ice.Layer{units.Centimetre, 0})),
		"no U":                           of(ice.MeltRateOf(0, units.SquareMetre, ice.Fresh)),
		"no surface":                     of(ice.MeltRateOf(w, 0, ice.Fresh)),
		"a hall":                         of(ice.MeltRateOf(w, 51*units.SquareMetre, ice.Fresh)),
		"no latent heat":                 of(ice.MeltRateOf(w, units.SquareMetre, 0)),
		"more ice afterwards":            of(ice.MeltTest(kg, 2*kg, warm, time.Hour)),
		"all of it melted":               of(ice.MeltTest(kg, 0, warm, 24*time.Hour)),
		"a test that melted nothing":     of(ice.MeltTest(kg, kg, warm, time.Hour)),
		"ten kilograms melt ten grams":   of(ice.MeltTest(10*kg, 10*kg-10*units.Gram, units.Celsius(30), 24*time.Hour)),
		"fish that is not to be chilled": of(ice.Plan(ice.Trip{Fish: kg, From: warm, To: warm, Outside: warm, For: time.Hour})),
		"fish kept at 41 °F":             of(ice.Plan(ice.Trip{Fish: kg, From: warm, To: units.Fahrenheit(41), Outside: warm, For: time.Hour})),
		"negative ice":                   of(ice.MeltTest(kg, -kg, warm, time.Hour)),
		"tested in the cold":             of(ice.MeltTest(2*kg, kg, zero, time.Hour)),
		"tested for a minute":            of(ice.MeltTest(2*kg, kg, warm, time.Minute)),
		"no rate":                        of(ice.MeltRate{}.Hold(warm, time.Hour)),
		"air not measured":               of(rate.Hold(units.Temperature{}, time.Hour)),
		"an oven":                        of(rate.Hold(units.Celsius(61), time.Hour)),
		"negative time":                  of(rate.Hold(warm, -1)),
		"a quarter":                      of(rate.Hold(warm, 31*24*time.Hour)),
		"rough, no air":                  of(ice.RoughHold(kg, units.Temperature{}, time.Hour)),
		"rough, negative fish":           of(ice.RoughHold(-kg, warm, time.Hour)),
		"no ice in the slurry":           of(ice.Slurry(kg, 0)),
		"more than all ice":              of(ice.Slurry(kg, units.One+1)),
		"negative slurry":                of(ice.Slurry(-1, units.One)),
		"trip without fish temperature":  of(ice.Plan(ice.Trip{Fish: kg, To: zero, Outside: warm})),
		"trip without air":               of(ice.Plan(ice.Trip{Fish: kg, From: warm, To: zero})),
		"negative spare":                 of(ice.Plan(ice.Trip{Fish: kg, From: warm, To: zero, Outside: warm, Spare: -1})),
		"a slurry without ice":           of(ice.Plan(ice.Trip{Fish: kg, From: warm, To: zero, Outside: warm, IceShare: units.State(units.Ratio(0))})),
	} {
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}
