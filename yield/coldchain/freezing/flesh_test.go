package freezing_test

import (
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/freezing"
	"example.org/lakelarder/yield/coldchain/internal/logged"
)

// leanFish is cod of ASHRAE's composition table, from memory, freezing where the FAO has white fish freeze.
func leanFish() freezing.Flesh {
	return freezing.Flesh{
		Water: 8122 * units.Percent / 100, Protein: 1781 * units.Percent / 100, Fat: 67 * units.Percent / 100, Ash: 116 * units.Percent / 100,
		FreezesAt: units.Celsius(-1),
	}
}

func sharePct(t *testing.T, r printed.Row, col string) units.Ratio {
	t.Helper()
	share, err := units.Of(r.Decimal(col), units.Percent)
	require.NoError(t, err)
	return share
}

func TestFleshProperties(t *testing.T) {
	printed.Table(t, "coldchain/fish-properties.csv").Each(t, func(t *testing.T, r printed.Row) {
		f := freezing.Flesh{
			Water: sharePct(t, r, "water_pct"), Protein: sharePct(t, r, "protein_pct"), Fat: sharePct(t, r, "fat_pct"), Ash: sharePct(t, r, "ash_pct"),
			FreezesAt: units.Celsius(-1),
		}
		th, err := f.Thermal(units.Celsius(r.Float("temp_c")))
		require.NoError(t, err)
		require.Zero(t, th.Ice)
		require.False(t, th.Citation.Unverified())
		printed.Within(t, r, "density_kg_m3", units.In(th.Density, units.KilogramPerCubicMetre, 9))
		printed.Within(t, r, "cp_j_kgk", units.In(th.SpecificHeat, units.JoulePerKilogramKelvin, 6))
		printed.Within(t, r, "k_parallel_w_mk", units.In(th.ConductivityHigh, units.WattPerMetreKelvin, 9))
		printed.Within(t, r, "k_series_w_mk", units.In(th.ConductivityLow, units.WattPerMetreKelvin, 9))
		printed.Within(t, r, "k_geometric_w_mk", units.In(th.ConductivityMiddle, units.WattPerMetreKelvin, 9))
		printed.Within(t, r, "alpha_parallel_m2_s", units.In(th.DiffusivityHigh, units.SquareMetrePerSecond, 18))
		printed.Within(t, r, "alpha_series_m2_s", units.In(th.DiffusivityLow, units.SquareMetrePerSecond, 18))
	})
}

// Source: FAO V3630E ch. 19, tables 30 and 31, white fish. The tolerances are how far the equations lie from the
// measurement.
func TestFleshEnthalpy(t *testing.T) {
	printed.Table(t, "coldchain/fish-enthalpy.csv").Each(t, func(t *testing.T, r printed.Row) {
		at := units.Celsius(r.Float("temp_c"))
		heat, err := leanFish().Heat(at, units.Celsius(-40))
		require.NoError(t, err)
		printed.Within(t, r, "enthalpy_kcal_kg", units.In(heat, units.KilocaloriePerKilogram, 6))
		if at.Above(units.Celsius(0)) {
			th, err := leanFish().Thermal(at)
			require.NoError(t, err)
			printed.Within(t, r, "specific_heat_kcal_kgc", units.In(th.SpecificHeat, units.KilocaloriePerKilogramKelvin, 6))
		}
	})
}

func TestFleshHeatToFreeze(t *testing.T) {
	printed.Table(t, "coldchain/fish-heat.csv").Each(t, func(t *testing.T, r printed.Row) {
		from := units.Celsius(r.Float("initial_temp_c"))
		for col, to := range map[string]float64{"heat_to_minus30c_kcal_kg": -30, "heat_to_minus18c_kcal_kg": -18} {
			heat, err := leanFish().Heat(from, units.Celsius(to))
			require.NoError(t, err)
			printed.Within(t, r, col, units.In(heat, units.KilocaloriePerKilogram, 6))
		}
	})
}

// Source: FAO V3630E ch. 19: 55 and 70 % of the water are ice at -2.2 and -5 °C.
func TestFrozenWater(t *testing.T) {
	for _, law := range []freezing.IceLaw{freezing.IdealIce, freezing.TchigeovIce} {
		law := law
		t.Run(law.String(), func(t *testing.T) {
			printed.Table(t, "coldchain/frozen-water.csv").Each(t, func(t *testing.T, r printed.Row) {
				f := leanFish()
				f.Law = law
				ice, err := f.IceAt(units.Celsius(r.Float("temp_c")))
				require.NoError(t, err)
				part, err := units.RatioOf(ice, f.Water)
				require.NoError(t, err)
				printed.Within(t, r, "frozen_pct", units.In(part, units.Percent, 6))
			})
		})
	}
}

// Source: ASHRAE Refrigeration, thermal properties, table 3; Earle, appendix 7; FAO V3630E ch. 19.
func TestFreezables(t *testing.T) {
	all := freezing.Fishes()
	rows := printed.Table(t, "coldchain/fish-freezing.csv")
	require.Len(t, all, len(rows))
	for i, r := range rows {
		f := all[i]
		require.Equal(t, r.Text("fish"), f.Name, r.String())
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(f.Citation), r.String())
		require.NoError(t, f.Citation.Check())
		col, scale := "freezes_at_c", units.CelsiusScale
		if r.Has("freezes_at_f") {
			col, scale = "freezes_at_f", units.FahrenheitScale
		}
		at, err := units.TemperatureOf(r.Decimal(col), scale)
		require.NoError(t, err)
		require.Equal(t, at, f.FreezesAt, r.String())
		heat, unit, energy := "_btu_lbf", units.KilocaloriePerKilogramKelvin, units.BTUPerPound
		latent := "latent_btu_lb"
		if !r.Has("freezes_at_f") {
			heat, unit, energy, latent = "_kj_kgk", units.KilojoulePerKilogramKelvin, units.KilojoulePerKilogram, "latent_kj_kg"
		}
		if !r.Has(latent) {
			require.Zero(t, f.Latent+units.SpecificEnergy(f.Before)+units.SpecificEnergy(f.After))
			continue
		}
		require.True(t, units.In(f.Before, unit, 6).Equal(r.Decimal("before"+heat)), r.String())
		require.True(t, units.In(f.After, unit, 6).Equal(r.Decimal("after"+heat)), r.String())
		require.True(t, units.In(f.Latent, energy, 6).Equal(r.Decimal(latent)), r.String())
		found, err := freezing.FindFish(" " + f.Name)
		require.NoError(t, err)
		require.Empty(t, cmp.Diff(f, found))
	}
	for _, name := range []string{"", "salmon", "cod", "whole", "cod, whole, raw"} {
		_, err := freezing.FindFish(name)
		require.ErrorIs(t, err, units.ErrSyntax, name)
	}
}

func TestFleshRefuses(t *testing.T) {
	for name, spoil := range map[string]func(*freezing.Flesh){
		"nothing":             func(f *freezing.Flesh) { *f = freezing.Flesh{FreezesAt: f.FreezesAt} },
		"too little":          func(f *freezing.Flesh) { f.Water -= 8 * units.Percent },
		"too much":            func(f *freezing.Flesh) { f.Fat += 6 * units.Percent },
		"below nought":        func(f *freezing.Flesh) { f.Fat, f.Water = -units.Percent, f.Water+units.Percent },
		"carbohydrate":        func(f *freezing.Flesh) { f.Carbohydrate = -1 },
		"no freezing point":   func(f *freezing.Flesh) { f.FreezesAt = units.Temperature{} },
		"freezes at nought":   func(f *freezing.Flesh) { f.FreezesAt = units.Celsius(0) },
		"freezes like brine":  func(f *freezing.Flesh) { f.FreezesAt = units.Celsius(-5.1) },
		"bound beyond water":  func(f *freezing.Flesh) { f.Bound = units.State(f.Water + 1) },
		"bound below nought":  func(f *freezing.Flesh) { f.Bound = units.State(units.Ratio(-1)) },
		"a law nobody stated": func(f *freezing.Flesh) { f.Law = 9 },
	} {
		f := leanFish()
		spoil(&f)
		at := units.Celsius(-10)
		_, err := f.Thermal(at)
		logged.Refused(t, err, name)
		_, err = f.IceAt(at)
		logged.Refused(t, err, name)
		_, err = f.Heat(at, units.Celsius(-20))
		logged.Refused(t, err, name)
	}
	for _, at := range []units.Temperature{{}, units.Celsius(-40.1), units.Celsius(150.1)} {
		_, err := leanFish().Thermal(at)
		logged.Refused(t, err, "changed")
		_, err = leanFish().IceAt(at)
		logged.Refused(t, err, "changed")
		_, err = leanFish().Heat(at, units.Celsius(-20))
		logged.Refused(t, err, "changed")
		_, err = leanFish().Heat(units.Celsius(-20), at)
		logged.Refused(t, err, "changed")
	}
}

// Colder is never less ice, gives off never less heat, and the bounds of conductivity keep their order; heat adds up
// and comes back.
func FuzzFlesh(f *testing.F) {
	f.Add(uint16(8122), uint16(1781), uint16(67), int16(-10), int16(-200), int16(-220), false)
	f.Add(uint16(6800), uint16(2000), uint16(1100), int16(-22), int16(100), int16(-300), true)
	f.Fuzz(func(t *testing.T, water, protein, fat uint16, freezes, a, b int16, tchigeov bool) {
		flesh := freezing.Flesh{
			Water: units.Ratio(water) * units.Percent / 100, Protein: units.Ratio(protein) * units.Percent / 100, Fat: units.Ratio(fat) * units.Percent / 100,
			Ash: units.Percent, FreezesAt: logged.Tenths(freezes),
		}
		if tchigeov {
			flesh.Law = freezing.TchigeovIce
		}
		warm, cold := logged.Tenths(max(a, b)), logged.Tenths(min(a, b))
		w, err := flesh.Thermal(warm)
		if err != nil {
			logged.Refused(t, err, "changed")
			return
		}
		c, err := flesh.Thermal(cold)
		if err != nil {
			logged.Refused(t, err, "changed")
			return
		}
		require.GreaterOrEqual(t, c.Ice, w.Ice)
		require.Equal(t, c.Ice > 0, c.Citation.Unverified(), "the laws of ice are from memory")
		require.LessOrEqual(t, c.Ice, flesh.Water+flesh.Water/10)
		for _, th := range []freezing.Thermal{w, c} {
			require.LessOrEqual(t, th.ConductivityLow, th.ConductivityMiddle)
			require.LessOrEqual(t, th.ConductivityMiddle, th.ConductivityHigh)
			require.Positive(t, th.DiffusivityLow)
		}
		out, err := flesh.Heat(warm, cold)
		require.NoError(t, err)
		back, err := flesh.Heat(cold, warm)
		require.NoError(t, err)
		require.GreaterOrEqual(t, out, units.SpecificEnergy(0))
		require.Equal(t, -out, back)
		middle := logged.Tenths(int16((int(a) + int(b)) / 2))
		first, err := flesh.Heat(warm, middle)
		require.NoError(t, err)
		second, err := flesh.Heat(middle, cold)
		require.NoError(t, err)
		require.LessOrEqual(t, math.Abs(float64(out-first-second)), 2.)
	})
}

func BenchmarkThermal(b *testing.B) {
	f, at := leanFish(), units.Celsius(-12)
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := f.Thermal(at); err != nil {
			b.Fatal(err)
		}
	}
}
