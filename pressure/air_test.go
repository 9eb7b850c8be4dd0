package pressure_test

import (
	"math"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
)

// airColumns are the units in which the atmosphere tables print.
var airColumns = map[string]units.Pressure{
	"p_mbar": units.Millibar,
	"p_mmhg": units.Torr, // the ISO tables divide by 101 325/760 Pa
	"p_pa":   units.Pascal,
	"p_psia": units.PSI,
	"p_inhg": units.InchOfMercury,
}

func TestStandardAirAgainstTables(t *testing.T) {
	printed.Table(t, "pressure/atmosphere.csv").Each(t, func(t *testing.T, r printed.Row) {
		air, err := pressure.AirAt(geometric(t, r))
		require.NoError(t, err)
		compared := 0
		for col, unit := range airColumns {
			if !r.Has(col) {
				continue
			}
			compared++
			got := units.In(air.Pressure(), unit, 12)
			if r.Text("misprint") != col {
				printed.Within(t, r, col, got)
				continue
			}
			requireMisprint(t, r, col, got)
			printed.Within(t, r, "meant", got)
		}
		require.Positive(t, compared)
	})
}

// geometric is the altitude of a row as a map has it. Where the table does not state the kind, it is taken as geopotential; the two
// differ by less than the tables print.
func geometric(t *testing.T, r printed.Row) units.Length {
	col, unit := "alt_m", units.Metre
	if r.Has("alt_ft") {
		col, unit = "alt_ft", units.Foot
	}
	z, err := units.Of(r.Decimal(col), unit)
	require.NoError(t, err)
	if r.Text("altitude_kind") == "geometric" {
		return z
	}
	const radius = 6_356_766 // m; ISO 2533, clause 2.3: Z = rH/(r - H)
	h := units.Float(z, units.Metre)
	z, err = units.OfFloat(radius*h/(radius-h), units.Metre)
	require.NoError(t, err)
	return z
}

// requireMisprint fails when a cell that is known to be wrong comes out after all.
func requireMisprint(t *testing.T, r printed.Row, col string, got decimal.Decimal) {
	off := got.Sub(r.Decimal(col)).Abs()
	require.True(t, off.GreaterThan(r.Tolerance(col)), "%s: the misprint %s comes out", r, r.Text(col))
	require.True(t, r.Has("note"), "%s: says what is wrong", r)
}

func TestAltitudeComesBackExactly(t *testing.T) {
	for ft := units.Length(-3280); ft <= 36_089; ft++ {
		air, err := pressure.AirAt(ft * units.Foot)
		require.NoError(t, err)
		back, err := air.Altitude()
		require.NoError(t, err)
		require.Equal(t, ft*units.Foot, back)
	}
}

func FuzzAirAt(f *testing.F) {
	for _, z := range []units.Length{
		0, 1, -1, 2_000 * units.Foot, -1_000 * units.Metre, 11_000 * units.Metre, -1_000*units.Metre - 1, 11_000*units.Metre + 1,
		math.MaxInt64, math.MinInt64,
	} {
		f.Add(int64(z))
	}
	f.Fuzz(func(t *testing.T, nanometres int64) {
		z := units.Length(nanometres)
		air, err := pressure.AirAt(z)
		if z < -1_000*units.Metre || z > 11_000*units.Metre {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		require.NoError(t, err)
		back, err := air.Altitude()
		require.NoError(t, err)
		require.InDelta(t, float64(z), float64(back), float64(units.Micrometre), "to within a micrometre")

		higher, err := pressure.AirAt(z + units.Millimetre)
		if err == nil {
			require.Less(t, higher.Pressure(), air.Pressure(), "a millimetre up is less air")
		}
	})
}

func FuzzAirReading(f *testing.F) {
	for _, p := range []units.Pressure{
		0, 1, units.Atmosphere, 40 * units.Kilopascal, 110 * units.Kilopascal, 40*units.Kilopascal - 1, 110*units.Kilopascal + 1,
		math.MaxInt64, math.MinInt64,
	} {
		f.Add(int64(p))
	}
	f.Fuzz(func(t *testing.T, quanta int64) {
		p := units.Pressure(quanta)
		air, err := pressure.AirReading(p)
		if p < 40*units.Kilopascal || p > 110*units.Kilopascal {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		require.NoError(t, err)
		require.Equal(t, p, air.Pressure(), "kept as given")
		z, err := air.Altitude()
		require.NoError(t, err)
		standard, err := pressure.AirAt(z)
		require.NoError(t, err, "every reading has an altitude in the standard")
		require.InDelta(t, float64(p), float64(standard.Pressure()), float64(units.Pascal)/50_000)
	})
}

func TestCautionsSayWhatDecides(t *testing.T) {
	standard := air(t, 2000*units.Foot)
	read, err := pressure.AirReading(units.Atmosphere)
	require.NoError(t, err)
	for _, a := range []pressure.Air{standard, read, {}} {
		said := spoken(a)
		require.Contains(t, said, "tested process")
		require.Contains(t, said, "vent")
	}
	require.Contains(t, spoken(read), "station pressure")
	require.NotContains(t, spoken(standard), "station pressure")

	standard.Cautions()[0].Text = "written over"
	require.NotContains(t, spoken(standard), "written over", "every caller has a copy")
}

func spoken(a pressure.Air) string {
	var all []string
	for _, c := range a.Cautions() {
		all = append(all, c.String())
	}
	return strings.Join(all, "\n")
}

func TestSourcesAreComplete(t *testing.T) {
	require.NoError(t, pressure.AtmosphereSource().Check())
	require.NoError(t, pressure.SteamSource().Check())
}

// air is the standard air at an altitude that is known to be good.
func air(t testing.TB, altitude units.Length) pressure.Air {
	t.Helper()
	a, err := pressure.AirAt(altitude)
	require.NoError(t, err)
	return a
}
