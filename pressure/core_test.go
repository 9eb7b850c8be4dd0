package pressure

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
)

// The exported results are rounded; these tests hold the equations behind them to more digits than a result carries.

// Every coefficient is the printed one to its last digit, and every printed one is there.
func TestRegion4AsPrinted(t *testing.T) {
	var want coefficients
	for _, r := range printed.Table(t, "pressure/region4.csv") {
		want[r.Int("i")] = r.Float("n_i")
	}
	if diff := cmp.Diff(want, region4); diff != "" {
		t.Errorf("coefficients (-printed +code):\n%s", diff)
	}
}

func TestAtmosphereConstantsAsPrinted(t *testing.T) {
	constants := map[string]float64{
		"seaLevelPressure": seaLevelPressure, "seaLevelTemperature": seaLevelTemperature, "lapseRate": lapseRate,
		"standardGravity": standardGravity, "molarMass": molarMass, "gasConstant": gasConstant, "earthRadius": earthRadius,
		"exponent": exponent,
	}
	rows := printed.Table(t, "pressure/atmosphere-constants.csv")
	require.Len(t, rows, len(constants))
	for _, r := range rows {
		require.Contains(t, constants, r.Text("name"))
		if r.Text("basis") == "read" {
			require.Equal(t, r.Float("value"), constants[r.Text("name")], r.Text("name"))
		}
		printed.WithinFloat(t, r, "value", constants[r.Text("name")])
	}
}

func TestAtmosphereToFourteenDigits(t *testing.T) {
	printed.Table(t, "pressure/atmosphere-computed.csv").Each(t, func(t *testing.T, r printed.Row) {
		printed.WithinFloat(t, r, "p_pa", standardPressure(r.Float("alt_m")))
		printed.WithinFloat(t, r, "alt_m_from_p", standardAltitude(r.Float("p_pa")))
	})
}

func TestSaturationToAllPrintedDigits(t *testing.T) {
	printed.Table(t, "pressure/saturation.csv").Each(t, func(t *testing.T, r printed.Row) {
		col, got := saturation(r, region4)
		printed.WithinFloat(t, r, col, got)
	})
}

// A public code carries n9 with one digit 8 too many. The six official values still come out of it to all nine printed digits; the
// rows with twelve digits are what tells.
func TestOfficialValuesDoNotProveTheCoefficients(t *testing.T) {
	slipped := region4
	slipped[9] = -0.238_558_557_567_849
	official, digits12 := 0, 0
	for _, r := range printed.Table(t, "pressure/saturation.csv") {
		col, got := saturation(r, slipped)
		switch r.Text("place") {
		case "table 35", "table 36":
			official++
			printed.WithinFloat(t, r, col, got)
		case "region 4, 40-digit arithmetic":
			digits12++
			off := decimal.NewFromFloat(got).Sub(r.Decimal(col)).Abs()
			require.True(t, off.GreaterThan(r.Tolerance(col).Mul(decimal.NewFromInt(1000))), "%s: the slip does not show: %s", r, off)
		}
	}
	require.Equal(t, []int{6, 2}, []int{official, digits12})
}

// saturation works out what a row prints from what it gives: the column of the result, and the result in its unit.
func saturation(r printed.Row, n coefficients) (col string, got float64) {
	tCol, t, zero := "t_k", 0.0, 0.0
	if r.Has("t_c") {
		tCol, zero = "t_c", 273.15
	}
	pCol, unit := "p_mpa", 1.0
	switch {
	case r.Has("p_pa"):
		pCol, unit = "p_pa", 1e6
	case r.Has("p_bar"):
		pCol, unit = "p_bar", 10
	}
	t = r.Float(tCol) + zero
	if r.Text("given") == "t" {
		return pCol, n.pressure(t) * unit
	}
	return tCol, n.temperature(r.Float(pCol)/unit) - zero
}
