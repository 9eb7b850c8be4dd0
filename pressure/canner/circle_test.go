package canner

import (
	"testing"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// sixteen is the ratio of n circles with all the decimals of the table.
func sixteen(n int64) decimal.Decimal { return decimal.New(int64(circles[n-1].ratio), -16) }

func TestPackingsAreThePrintedOnes(t *testing.T) {
	rows := printed.Table(t, "canner/packing.csv")
	require.Len(t, rows, maxCircles)
	rows.Each(t, func(t *testing.T, r printed.Row) {
		n := r.Int("n")
		p, err := FindPacking(int(n))
		require.NoError(t, err)
		require.True(t, r.Decimal("ratio").Equal(sixteen(n)), "printed %s, in the code %s", r.Text("ratio"), sixteen(n))
		require.Equal(t, r.Text("optimality"), p.Optimality.String())
		require.True(t, r.Decimal("ratio").Round(12).Equal(units.In(p.Ratio, units.One, 12)))
		require.Equal(t, r.Text("source"), p.Citation.Source.Key())
		require.Equal(t, r.Text("basis"), p.Citation.Basis.String())
		require.NoError(t, p.Citation.Check())
	})
}

func TestPackingsToMoreDigits(t *testing.T) {
	printed.Table(t, "canner/packing-digits.csv").Each(t, func(t *testing.T, r printed.Row) {
		printed.Within(t, r, "ratio", sixteen(r.Int("n")))
	})
}

func TestMisprintDoesNotComeOut(t *testing.T) {
	printed.Table(t, "canner/packing-misprints.csv").Each(t, func(t *testing.T, r printed.Row) {
		away := sixteen(r.Int("n")).Sub(r.Decimal("ratio")).Abs()
		require.True(t, away.GreaterThan(r.Tolerance("ratio")), "the misprint is in the code")
	})
}

// A circle more never needs less room, and each needs more than its area.
func TestRoomGrows(t *testing.T) {
	for n := 2; n <= maxCircles; n++ {
		require.GreaterOrEqual(t, circles[n-1].ratio, circles[n-2].ratio)
		require.True(t, sixteen(int64(n)).Mul(sixteen(int64(n))).GreaterThan(decimal.NewFromInt(int64(n))))
	}
}

// At each ratio the count is that of the table and one nanometre less loses a circle, or two where two share a ratio.
func TestEdgesOfThePacking(t *testing.T) {
	for _, inner := range []units.Length{smallest, 70_000_001, 2750 * units.Inch / 1000, 4 * units.Inch, 137 * units.Millimetre} {
		for n := 1; n <= maxCircles; n++ {
			most, least := n, n-1
			if n == 6 || n == 18 {
				most++
			}
			if n == 7 || n == 19 {
				least--
			}
			need := room(n, inner)
			got, _ := across(need, inner)
			require.Equal(t, most, got, "%d of %d nm in %d", n, inner, need)
			got, _ = across(need-1, inner)
			require.Equal(t, least, got, "%d of %d nm in %d", n, inner, need-1)
		}
	}
	got, beyond := across(9*units.Inch, 3*units.Inch)
	require.Equal(t, 7, got, "a third of the vessel exactly")
	require.False(t, beyond)
	_, beyond = across(room(maxCircles, units.Inch), units.Inch)
	require.False(t, beyond)
	_, beyond = across(room(maxCircles, units.Inch)+1, units.Inch)
	require.True(t, beyond, "the table ends here")
}

func TestPackingsRefused(t *testing.T) {
	for _, n := range []int{-1, 0, maxCircles + 1, 1 << 30} {
		_, err := FindPacking(n)
		require.ErrorIs(t, err, units.ErrRange)
	}
}

func TestEveryCitationIsWhole(t *testing.T) {
	for _, c := range []cite.Citation{rackSource, threeLayers, fourQuarts, smokedCanner, ceilingSource, pintCutSource, cutSource, gaugeSource, coolingSource, restartSource,
		coolSource, timerSource, gapSource, slightlyAbove, altitudeSource, sealSource, reprocessSource, refrigerateSource, discardSource} {
		require.NoError(t, c.Check())
	}
	ids := map[cite.CautionID]bool{}
	for _, c := range []cite.Caution{notThePacking, boilBeforeTasting, pureSteam, testYearly, olderLimit, notSubtracted, newCanner, rhythm,
		uprightOnRack, smallLoad, rackBetween, notInThree, smokedLoad} {
		require.NoError(t, c.Citation.Check())
		require.False(t, ids[c.ID], c.ID)
		ids[c.ID] = true
	}
	for _, j := range JarSizes() {
		require.NoError(t, j.Citation.Check())
	}
}
