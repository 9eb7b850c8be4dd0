package byhand

import (
	"bytes"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// The air and the steam are those of the library at every altitude, and come out again from the page.
func TestSteam(t *testing.T) {
	for _, system := range []units.System{units.US, units.Metric, units.Both} {
		for _, altitude := range []units.Length{0, 4350 * units.Foot, 10_000 * units.Foot} {
			air, err := pressure.AirAt(altitude)
			require.NoError(t, err)
			steam, err := air.SteamUnder(13 * units.PSI)
			require.NoError(t, err)
			var out bytes.Buffer
			p := New(&out, "steam")
			p.Air(altitude, air.Pressure())
			p.Steam(13*units.PSI, "published", steam, system)
			require.NoError(t, p.Close())
			lines, err := Check(out.String())
			require.NoError(t, err)
			require.GreaterOrEqual(t, lines, 11)
		}
	}
	p := New(&bytes.Buffer{}, "another steam")
	p.Let("pa", "101325", "Pa", "air")
	p.Steam(13*units.PSI, "published", units.Fahrenheit(245), units.US)
	require.ErrorContains(t, p.Close(), "T is ")
}

func TestApart(t *testing.T) {
	for _, c := range []struct {
		stated, wanted, by units.Amount
		want               string
	}{
		{units.AmountOf(12 * units.PSI), units.AmountOf(13 * units.PSI), units.AmountOf(units.PSI),
			"= 13 − 12 = 1.000 psi"},
		{units.AmountOf(90 * time.Minute), units.AmountOf(100 * time.Minute), units.AmountOf(10 * time.Minute),
			"= 100 − 90 = 10.00 min"},
		{units.AmountOf(units.Fahrenheit(45)), units.AmountOf(units.Fahrenheit(38)),
			units.AmountOf(7 * units.FahrenheitDegrees), "= 38 − 45 = -7.000 F°"},
		{units.AmountOf(1000 * units.Foot), units.AmountOf(2000 * units.Foot), units.AmountOf(1000 * units.Foot),
			"= 2000 − 1000 = 1000 ft"},
		{units.AmountOf(units.PSI), units.AmountOf(units.Foot), units.Amount{}, ""},
	} {
		var out bytes.Buffer
		p := New(&out, "apart")
		p.Apart("it", c.stated, c.wanted, c.by, units.Both, cite.Citation{})
		require.NoError(t, p.Close())
		require.Contains(t, out.String(), c.want)
		_, err := Check(out.String())
		require.NoError(t, err)
	}
	p := New(&bytes.Buffer{}, "a wrong difference")
	p.Apart("it", units.AmountOf(12*units.PSI), units.AmountOf(13*units.PSI), units.AmountOf(2*units.PSI), units.US,
		cite.Citation{})
	require.ErrorContains(t, p.Close(), "apart is ")
}

func TestCount(t *testing.T) {
	var out bytes.Buffer
	p := New(&out, "counts")
	p.Let("n", "12", "", "fish")
	p.Count("all", "n × 4", "fish")
	p.Count("none", "n − 12", "fish")
	p.Count("less", "n − 15", "fish")
	require.NoError(t, p.Close())
	require.Contains(t, out.String(), "all = n × 4 = 12 × 4 = 48 fish")
	require.Contains(t, out.String(), "none = n − 12 = 12 − 12 = 0 fish")
	require.Contains(t, out.String(), "less = n − 15 = 12 − 15 = -3 fish")
	p = New(&bytes.Buffer{}, "no count")
	p.Count("half", "1 / 2", "fish")
	require.ErrorContains(t, p.Close(), "no whole number")
}

// Where the two forms meet they are the same.
func TestUptake(t *testing.T) {
	for fourier, want := range map[string]string{"0.1": "0.356825", "0.100001": "0.356826", "1": "0.931259",
		"0.0001": "0.0112838"} {
		p := New(&bytes.Buffer{}, "uptake")
		p.Let("Fo", fourier, "", "Fourier number")
		p.Uptake("E", "Fo")
		require.NoError(t, p.Close())
		require.InEpsilon(t, value(t, want), p.Float("E"), 5e-6, fourier)
	}
}

func value(t *testing.T, digits string) float64 {
	t.Helper()
	v, err := Evaluate(digits)
	require.NoError(t, err)
	return v
}
