package growth

import (
	"math"
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/stretchr/testify/require"
)

// Source: Mejlholm and Dalgaard 2009 and Jia et al. 2020, in a transcription; the temperature of the square root
// conversion is inferred.
func TestListeriaConstants(t *testing.T) {
	code := map[string]float64{
		"seafood: rate at 25 C": seafoodRate, "seafood: temperature without growth": seafoodZero, "seafood: reference temperature": seafoodReference,
		"seafood: water activity without growth": activityLimit, "seafood: pH without growth": acidityLimit,
		"seafood: phenol": phenolLimit, "seafood: nitrite": nitriteLimit, "seafood: carbon dioxide": dioxideLimit,
		"activity: constant": activityConstant, "activity: per percent of water phase salt": activityLinear, "activity: per square": activitySquare,
		"salmon: scale": salmonScale, "salmon: temperature without growth": salmonZero, "salmon: power": salmonPower,
		"salmon: log of lag": salmonLag, "salmon: power of lag": salmonLagPower, "smoked fish: temperature without growth": listeriaZero,
	}
	for name, a := range map[string]acid{"acetic": acetic, "benzoic": benzoic, "citric": citric, "diacetate": diacetate, "lactic": lactic, "sorbic": sorbic} {
		code[name+": molar mass"], code[name+": pKa"], code[name+": undissociated without growth"] = a.molar, a.pKa, a.limit
	}
	rows := printed.Table(t, "coldchain/listeria-constants.csv")
	require.Len(t, rows, len(code))
	rows.Each(t, func(t *testing.T, r printed.Row) {
		require.Contains(t, code, r.Text("name"))
		require.Equal(t, r.Float("value"), code[r.Text("name")])
	})
}

// log10 a day is 24/ln 10 times the natural logarithm an hour: a rate of ln 10 an hour is a tenfold each hour.
func TestGrowthUnits(t *testing.T) {
	g, err := rateOf(math.Ln10, squareRootCitation)
	require.NoError(t, err)
	require.Equal(t, 24*units.One, g.PerDay)
	over, err := g.Over(3 * time.Hour)
	require.NoError(t, err)
	require.InDelta(t, int64(3*units.One), int64(over), 1)
	over, err = g.Over(0)
	require.NoError(t, err)
	require.Zero(t, over)
}

// Source: Skinner and Larkin 1998; Baker and Genigeorgis 1990; all recalled.
func TestToxinConstants(t *testing.T) {
	code := map[string]float64{
		"any food: constant": anyFoodConstant, "any food: per degree C": anyFoodSlope, "any food: over degrees C": anyFoodPole,
		"fish: constant": fishConstant, "fish: per degree C": fishSlope, "fish: over degrees C": fishPole,
		"fish: per log10 of spores": fishSpores,
	}
	rows := printed.Table(t, "coldchain/toxin-constants.csv")
	require.Len(t, rows, len(code))
	rows.Each(t, func(t *testing.T, r printed.Row) {
		require.Contains(t, code, r.Text("name"))
		require.Equal(t, r.Float("value"), code[r.Text("name")])
		citation := anyFoodCitation
		if r.Text("source") != citation.Source.Key() {
			citation = fishCitation
		}
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(citation))
		require.NoError(t, citation.Check())
	})
}

// The integral against Simpson's rule with ten thousand steps.
func TestToxinIntegral(t *testing.T) {
	for _, c := range [][2]float64{{3, 3.001}, {3, 4}, {3, 45}, {3.7, 9.2}, {10, 10.5}, {20, 33.3}, {44, 45}} {
		a, b, n := c[0], c[1], 10_000
		h := (b - a) / float64(n)
		sum := toxinRate(a) + toxinRate(b)
		for i := 1; i < n; i++ {
			sum += float64(float64(2+2*(i%2)) * toxinRate(a+float64(float64(i)*h)))
		}
		require.InEpsilon(t, float64(sum*h)/3, toxinIntegral(a, b), 1e-9, c)
	}
}
