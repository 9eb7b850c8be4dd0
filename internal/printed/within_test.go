package printed

import (
	"math"
	"testing"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

func TestWithinTakesTheLimit(t *testing.T) {
	for _, c := range []struct{ printed, got string }{
		{"113.2743", "113.2743"},
		{"113.2743", "113.27435"},
		{"113.2743", "113.27425"},
		{"845.560", "845.5604999"},
		{"1,000", "1000.5"},
		{"-40", "-40.5"},
		{"1.4e-7", "0.000000145"},
		{"2e3", "2500"},
	} {
		said, _ := told(func(tb testing.TB) {
			Within(tb, rowOf(t, "x", `"`+c.printed+`"`), "x", decimal.RequireFromString(c.got))
		})
		require.Empty(t, said, "%s against %s", c.got, c.printed)
	}
}

func TestWithinRefusesBeyondTheLimit(t *testing.T) {
	for _, c := range []struct{ printed, got string }{
		{"113.2743", "113.274350000000000000001"},
		{"113.2743", "113.274249999999999999999"},
		{"845.560", "845.5606"},
		{"1,000", "1000.500000001"},
		{"-40", "40"},
		{"1.4e-7", "0.0000001451"},
		{"1.4e-7", "1.4"},
		{"0", "0.51"},
	} {
		said, ended := told(func(tb testing.TB) {
			Within(tb, rowOf(t, "x", `"`+c.printed+`"`), "x", decimal.RequireFromString(c.got))
		})
		require.NotEmpty(t, said, "%s against %s", c.got, c.printed)
		require.False(t, ended, "the other rows are still to be checked")
	}
}

func TestWithinSaysEverything(t *testing.T) {
	r := rowOf(t, "t_boil_f,tolerance,note,source,place,basis", "208.4,0.2,the page rounds twice,SomeHandbook9Ed,\"page 3, table 1\",read")
	said, _ := told(func(tb testing.TB) { Within(tb, r, "t_boil_f", decimal.RequireFromString("208.75")) })
	require.Equal(t, "testdata/x/y.csv:2: column t_boil_f: printed 208.4, got 208.75, off by 0.35, tolerance 0.2\n"+
		"\tSomeHandbook9Ed, page 3, table 1, read", said)
}

func TestWithinFailsTheTestItIsGiven(t *testing.T) {
	r := rowOf(t, "x", "words")
	said, ended := told(func(tb testing.TB) { Within(tb, r, "x", decimal.Decimal{}) })
	require.True(t, ended)
	require.Contains(t, said, "is not a printed number")
}

func TestWithinFloatTakesTheShortestDecimal(t *testing.T) {
	accepted := map[float64]string{0.145: "0.14", 0.135: "0.14", 1.005: "1.00", 113.2743: "113.2743", -0.5: "0", 1.4e-7: "1.4e-7"}
	for got, text := range accepted {
		said, _ := told(func(tb testing.TB) { WithinFloat(tb, rowOf(t, "x", text), "x", got) })
		require.Empty(t, said, "%v against %s", got, text)
	}
	refused := map[float64]string{
		0.14500000000000005: "0.14",
		0.1349999999999999:  "0.14",
		math.NaN():          "0",
		math.Inf(1):         "1e999",
		math.Inf(-1):        "0",
		1e300:               "1.00",
		math.MaxFloat64:     "1",
	}
	for got, text := range refused {
		said, _ := told(func(tb testing.TB) { WithinFloat(tb, rowOf(t, "x", text), "x", got) })
		require.Contains(t, said, "testdata/x/y.csv:2: column x: printed "+text, "%v against %s", got, text)
	}
}
