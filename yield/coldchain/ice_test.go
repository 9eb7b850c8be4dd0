package coldchain

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

func celsius(t *testing.T, r printed.Row, col string) units.Temperature {
	t.Helper()
	c, err := units.TemperatureOf(r.Decimal(col), units.CelsiusScale)
	require.NoError(t, err)
	return c
}

func quantity[Q units.Quantity](t *testing.T, r printed.Row, col string, unit Q) Q {
	t.Helper()
	q, err := units.Of(r.Decimal(col), unit)
	require.NoError(t, err)
	return q
}

// Sources: FAO Fisheries Technical Papers 331 and 436, Icelandic guidance, a trade page; see the rows.
func TestIceConstants(t *testing.T) {
	rows := map[string]printed.Row{}
	for _, r := range printed.Table(t, "coldchain/ice-constants.csv") {
		rows[r.Text("what")] = r
	}
	all := IceConstants()
	for i, c := range all {
		r, ok := rows["constant: "+c.Name]
		require.True(t, ok, c.Name)
		printed.Within(t, r, "value", units.In(c.PerDegree, units.One, 6))
		require.Equal(t, provenance(r), provenanceOf(c.Citation))
		require.NoError(t, c.Citation.Check())
		require.True(t, i == 0 || c.PerDegree < all[i-1].PerDegree, "largest first")
		delete(rows, "constant: "+c.Name)
	}
	take := func(what string) printed.Row {
		r, ok := rows[what]
		require.True(t, ok, what)
		delete(rows, what)
		return r
	}
	fresh, sea := take("latent heat, fresh ice"), take("latent heat, sea-water ice")
	printed.Within(t, fresh, "value", units.In(FreshIce, units.KilocaloriePerKilogram, 6))
	printed.Within(t, sea, "value", units.In(SeaWaterIce, units.KilocaloriePerKilogram, 6))
	for what, name := range map[string]string{"specific heat of lean fish": "lean fish", "specific heat implied by the table for 10 kg": "table for 10 kg of fish"} {
		c, err := IceConstantOf(quantity(t, take(what), "value", units.KilocaloriePerKilogramKelvin), FreshIce)
		require.NoError(t, err)
		for _, known := range all {
			require.True(t, known.Name != name || known.PerDegree == c.PerDegree, name)
		}
	}
	// Fish that is fatter holds less heat and never needs more ice.
	before, err := IceConstantOf(8*units.KilocaloriePerKilogramKelvin/10, FreshIce)
	require.NoError(t, err)
	for _, what := range []string{"specific heat of medium fish", "specific heat of fatty fish"} {
		c, err := IceConstantOf(quantity(t, take(what), "value", units.KilocaloriePerKilogramKelvin), FreshIce)
		require.NoError(t, err)
		require.Less(t, c.PerDegree, before.PerDegree)
		before = c
	}
	keeping := take("keeping rule")
	printed.Within(t, keeping, "value", units.In(keepingPerDegree, units.One, 6))
	require.Equal(t, provenance(keeping), provenanceOf(keepingCitation))
	slurry, err := Slurry(units.Kilogram, 33*units.Percent)
	require.NoError(t, err)
	printed.Within(t, take("slurry of 33 % ice for its ice"), "value", units.In(slurry.Mass, units.Kilogram, 6))
	require.Empty(t, rows, "every printed row is held against the code")
}

// The table for 10 kg of fish, and what the three constants make of it.
func TestIceTable(t *testing.T) {
	for _, r := range printed.Table(t, "coldchain/ice-table.csv") {
		for _, c := range IceConstants() {
			col := map[string]string{"Icelandic guidance": "kg_icelandic", "table for 10 kg of fish": "kg_table", "lean fish": "kg_lean"}[c.Name]
			ice, err := ChillIce(quantity(t, r, "fish_kg", units.Kilogram), celsius(t, r, "from_c"), celsius(t, r, "to_c"), c)
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
		var ice Ice
		switch id := r.Text("id"); id {
		case "chill-3.35", "chill-3.8":
			c, err := IceConstantOf(quantity(t, r, "cp_kj_kgk", units.KilojoulePerKilogramKelvin), quantity(t, r, "latent_kj_kg", units.KilojoulePerKilogram))
			require.NoError(t, err)
			ice, err = ChillIce(quantity(t, r, "fish_kg", units.Kilogram), celsius(t, r, "from_c"), celsius(t, r, "to_c"), c)
			require.NoError(t, err)
		case "wall":
			u, c, err := Wall(quantity(t, r, "h_out_w_m2k", units.WattPerSquareMetreKelvin), quantity(t, r, "h_in_w_m2k", units.WattPerSquareMetreKelvin),
				Layer{quantity(t, r, "foam_m", units.Metre), quantity(t, r, "foam_w_mk", units.WattPerMetreKelvin)})
			require.NoError(t, err)
			require.NoError(t, c.Check())
			printed.Within(t, r, "u_w_m2k", units.In(u, units.WattPerSquareMetreKelvin, 9))
			continue
		case "box":
			rate, err := MeltRateOf(quantity(t, r, "u_w_m2k", units.WattPerSquareMetreKelvin), quantity(t, r, "surface_m2", units.SquareMetre), quantity(t, r, "latent_kj_kg", units.KilojoulePerKilogram))
			require.NoError(t, err)
			ice, err = rate.Hold(celsius(t, r, "outside_c"), hours(t, r, "hours"))
			require.NoError(t, err)
		case "keeping":
			var err error
			ice, err = RoughKeepingIce(quantity(t, r, "fish_kg", units.Kilogram), celsius(t, r, "outside_c"), hours(t, r, "hours"))
			require.NoError(t, err)
		default:
			t.Fatalf("%s: no check for %q", r, id)
		}
		got, want := units.In(ice.Mass, units.Kilogram, 6), r.Decimal("ice_kg")
		require.True(t, got.GreaterThanOrEqual(want.Sub(r.Tolerance("ice_kg"))), "%s: %s", r, got)
		require.True(t, got.LessThan(want.Add(r.Tolerance("ice_kg")).Add(decimal.New(1, -3))), "%s: %s", r, got)
	}
}

// A kilocalorie an hour is 1.163 W by definition: 4186.8 J over 3600 s.
func TestKilocaloriesOfAWall(t *testing.T) {
	watts, err := units.RatioOf(units.KilocaloriePerKilogramKelvin, 3600*units.JoulePerKilogramKelvin)
	require.NoError(t, err)
	require.Equal(t, int64(watts/units.PartsPerBillion), int64(KilocaloriePerSquareMetreHour))
}

// Weighing the ice of a box and holding by its wall are one rule: the test of a box gives back the rate that melted it.
func TestMeltTestGivesTheRateBack(t *testing.T) {
	rate, err := MeltRateOf(units.WattPerSquareMetreKelvin*65/100, 12*units.SquareMetre/10, FreshIce)
	require.NoError(t, err)
	melted, err := rate.Hold(units.Celsius(25), 24*time.Hour)
	require.NoError(t, err)
	tested, err := MeltTest(20*units.Kilogram, 20*units.Kilogram-melted.Mass, units.Celsius(25), 24*time.Hour)
	require.NoError(t, err)
	require.GreaterOrEqual(t, tested.PerHour, rate.PerHour, "the melted ice was rounded up")
	require.Less(t, tested.PerHour-rate.PerHour, units.Gram/500)
}

// More fish, warmer fish, a hotter day, a longer day: never less ice. Nothing is rounded below what it was.
func TestMoreNeedsMoreIce(t *testing.T) {
	base := Trip{
		Fish: 20 * units.Kilogram, From: units.Celsius(14), To: units.Celsius(0), Outside: units.Celsius(22), For: 10 * time.Hour,
		Spare: 25 * units.Percent, IceShare: units.State(50 * units.Percent),
	}
	measured := base
	measured.Box = MeltRate{PerHour: 9 * units.Gram}
	for _, trip := range []Trip{base, measured} {
		want := trip
		before, err := IceFor(trip)
		require.NoError(t, err)
		require.Equal(t, before.Chill+before.Hold+before.Spare, before.Total)
		require.GreaterOrEqual(t, before.Slurry, 2*before.Total)
		require.Equal(t, trip.Box == MeltRate{}, before.Rough)
		for name, more := range map[string]func(*Trip){
			"fish":  func(t *Trip) { t.Fish += 7 * units.Gram },
			"from":  func(t *Trip) { t.From = t.From.Add(units.CelsiusDegrees / 10) },
			"out":   func(t *Trip) { t.Outside = t.Outside.Add(units.CelsiusDegrees / 3) },
			"time":  func(t *Trip) { t.For += time.Hour },
			"spare": func(t *Trip) { t.Spare += units.Percent },
		} {
			trip = want
			more(&trip)
			after, err := IceFor(trip)
			require.NoError(t, err)
			require.GreaterOrEqual(t, after.Total, before.Total, name)
			require.GreaterOrEqual(t, after.Slurry, before.Slurry, name)
		}
	}
}

func TestIceIsRoundedUp(t *testing.T) {
	lean := IceConstants()[2] // 1 kg for 100 kg and degree
	for fish, want := range map[units.Mass]units.Mass{
		0: 0, units.Gram: units.Gram, 100 * units.Kilogram: units.Kilogram, 100*units.Kilogram + 1: units.Kilogram + units.Gram,
	} {
		ice, err := ChillIce(fish, units.Celsius(1), units.Celsius(0), lean)
		require.NoError(t, err)
		require.Empty(t, cmp.Diff(want, ice.Mass), fish)
	}
}

// What no Mass can hold is said to be that, and is no mass.
func TestMoreIceThanCanBeStated(t *testing.T) {
	_, err := MeltRate{PerHour: mostFish}.Hold(units.Celsius(60), 30*day)
	require.ErrorIs(t, err, units.ErrRange)
	require.EqualError(t, err, "result too large is out of range: expected at most what its type can hold")
}

func TestIceRefuses(t *testing.T) {
	zero, warm := units.Celsius(0), units.Celsius(14)
	kg, w := units.Kilogram, units.WattPerSquareMetreKelvin
	of := func(_ any, err error) error { return err }
	wall := func(_ units.FilmCoefficient, _ cite.Citation, err error) error { return err }
	rate := MeltRate{PerHour: 9 * units.Gram}
	still, err := MeltTest(kg, kg, warm, time.Hour)
	require.NoError(t, err)
	for name, err := range map[string]error{
		"negative fish":                 of(ChillIce(-1, warm, zero, IceConstant{})),
		"a whale":                       of(ChillIce(10*units.Tonne+1, warm, zero, IceConstant{})),
		"fish not measured":             of(ChillIce(kg, units.Temperature{}, zero, IceConstant{})),
		"aim not set":                   of(ChillIce(kg, warm, units.Temperature{}, IceConstant{})),
		"aim above the fish":            of(ChillIce(kg, zero, warm, IceConstant{})),
		"aim below the ice":             of(ChillIce(kg, warm, units.Celsius(-0.1), IceConstant{})),
		"hot fish":                      of(ChillIce(kg, units.Celsius(40.1), zero, IceConstant{})),
		"a constant too small":          of(ChillIce(kg, warm, zero, IceConstant{PerDegree: units.Percent / 4})),
		"a constant too large":          of(ChillIce(kg, warm, zero, IceConstant{PerDegree: units.One})),
		"heat in calories":              of(IceConstantOf(800*units.JoulePerKilogramKelvin, FreshIce)),
		"ice half melted":               of(IceConstantOf(3*units.KilojoulePerKilogramKelvin, 80*units.KilojoulePerKilogram)),
		"no film":                       wall(Wall(0, w)),
		"no inner film":                 wall(Wall(w, 0)),
		"a layer of nothing":            wall(Wall(w, w, Layer{0, units.WattPerMetreKelvin})),
		"a perfect insulator":           wall(Wall(w, w, Layer{units.Centimetre, 0})),
		"no U":                          of(MeltRateOf(0, units.SquareMetre, FreshIce)),
		"no surface":                    of(MeltRateOf(w, 0, FreshIce)),
		"a hall":                        of(MeltRateOf(w, 51*units.SquareMetre, FreshIce)),
		"no latent heat":                of(MeltRateOf(w, units.SquareMetre, 0)),
		"more ice afterwards":           of(MeltTest(kg, 2*kg, warm, time.Hour)),
		"all of it melted":              of(MeltTest(kg, 0, warm, 24*time.Hour)),
		"a test that melted nothing":    of(still.Hold(warm, time.Hour)),
		"negative ice":                  of(MeltTest(kg, -kg, warm, time.Hour)),
		"tested in the cold":            of(MeltTest(2*kg, kg, zero, time.Hour)),
		"tested for a minute":           of(MeltTest(2*kg, kg, warm, time.Minute)),
		"no rate":                       of(MeltRate{}.Hold(warm, time.Hour)),
		"air not measured":              of(rate.Hold(units.Temperature{}, time.Hour)),
		"an oven":                       of(rate.Hold(units.Celsius(61), time.Hour)),
		"negative time":                 of(rate.Hold(warm, -1)),
		"a quarter":                     of(rate.Hold(warm, 31*24*time.Hour)),
		"rough, no air":                 of(RoughKeepingIce(kg, units.Temperature{}, time.Hour)),
		"rough, negative fish":          of(RoughKeepingIce(-kg, warm, time.Hour)),
		"no ice in the slurry":          of(Slurry(kg, 0)),
		"more than all ice":             of(Slurry(kg, units.One+1)),
		"negative slurry":               of(Slurry(-1, units.One)),
		"trip without fish temperature": of(IceFor(Trip{Fish: kg, To: zero, Outside: warm})),
		"trip without air":              of(IceFor(Trip{Fish: kg, From: warm, To: zero})),
		"negative spare":                of(IceFor(Trip{Fish: kg, From: warm, To: zero, Outside: warm, Spare: -1})),
		"a slurry without ice":          of(IceFor(Trip{Fish: kg, From: warm, To: zero, Outside: warm, IceShare: units.State(units.Ratio(0))})),
	} {
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}
