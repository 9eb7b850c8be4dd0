package lethality_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
)

func TestGTableIsThePrintedOne(t *testing.T) {
	rows := printed.Table(t, "lethality/ball.csv")
	require.Len(t, rows, lethality.GRows)
	last := lethality.Number(-1 << 62)
	for _, r := range rows {
		logG, source, err := lethality.GTable(number(t, r, "fh_over_u"))
		require.NoError(t, err)
		require.Equal(t, number(t, r, "log_g"), logG)
		require.Equal(t, citation(t, r), source)
		require.Greater(t, logG, last)
		last = logG
	}
}

// Straight lines on the two logs read no higher than the curve between three printed points: the long lines over a point lie below it.
func TestGTableReadsLow(t *testing.T) {
	rows := printed.Table(t, "lethality/ball.csv")
	for i := 2; i < len(rows); i++ {
		slope := func(a, b printed.Row) float64 {
			return (b.Float("log_g") - a.Float("log_g")) / (log10(b.Float("fh_over_u")) - log10(a.Float("fh_over_u")))
		}
		require.Greater(t, slope(rows[i-2], rows[i-1]), slope(rows[i-1], rows[i]), "the printed curve is hollow downward")
	}
}

// fish is the pint as the formula method sees it.
func fish(t *testing.T) lethality.Formula {
	f, err := pint.Factors(lethality.Point{})
	require.NoError(t, err)
	return lethality.Formula{Medium: units.Celsius(116), Start: units.Celsius(10), Fh: f.Fh, Jch: f.Jch, ComeUp: 15 * time.Minute}
}

// For a conduction pack cooled at once, by water 100 K (180 °F) below, the method lands a fifth to a quarter under the exact answer, since
// the centre's jcc is near 2 and not 1.41; the come-up counted for 42 % and the straight lines of the table add to that. A canner that cools slowly by itself gives the exact answer far more.
func TestFormulaAgainstTheExactAnswer(t *testing.T) {
	answer, err := fish(t).Lethality(100 * time.Minute)
	require.NoError(t, err)
	quick := pintRun
	quick.Cooling, quick.End = 100*units.Kelvins, units.Celsius(16)
	exact, err := pint.Follow(quick, lethality.F0Fahrenheit())
	require.NoError(t, err)
	require.InDelta(t, 0.73, answer.F.Minutes()/exact.F.Total.Minutes(), 0.07)
	require.Equal(t, 100*time.Minute+15*time.Minute*42/100, answer.B)
	require.InDelta(t, 116-exact.AtSteamOff.Celsius(), units.Float(answer.G, units.Kelvins), 0.5)
}

// Process and Lethality are inverse, and more F asks for more time.
func TestFormulaThereAndBack(t *testing.T) {
	last := time.Duration(0)
	for f := time.Minute; f <= 12*time.Minute; f += time.Minute {
		asked, err := fish(t).Process(f)
		require.NoError(t, err)
		require.Greater(t, asked.Operator, last)
		last = asked.Operator
		back, err := fish(t).Lethality(asked.Operator)
		require.NoError(t, err)
		require.GreaterOrEqual(t, back.F, f, "rounded up to the second")
		require.InDelta(t, f.Minutes(), back.F.Minutes(), 0.01)
	}
}

func TestFormulaRefuses(t *testing.T) {
	change := func(edit func(*lethality.Formula)) error {
		b := fish(t)
		edit(&b)
		_, err := b.Lethality(100 * time.Minute)
		return err
	}
	for name, err := range map[string]error{
		"g too great":        second(fish(t).Lethality(time.Minute)),
		"g too small":        second(fish(t).Lethality(10 * time.Hour)),
		"F too great":        second(fish(t).Process(10 * time.Hour)),
		"F too small":        second(fish(t).Process(time.Second)),
		"F zero":             second(fish(t).Process(0)),
		"time negative":      second(fish(t).Lethality(-1)),
		"medium cold":        change(func(b *lethality.Formula) { b.Medium = units.Celsius(80) }),
		"start hot":          change(func(b *lethality.Formula) { b.Start = units.Celsius(116) }),
		"start unset":        change(func(b *lethality.Formula) { b.Start = units.Temperature{} }),
		"fh zero":            change(func(b *lethality.Formula) { b.Fh = 0 }),
		"j zero":             change(func(b *lethality.Formula) { b.Jch = 0 }),
		"come-up negative":   change(func(b *lethality.Formula) { b.ComeUp = -1 }),
		"come-up eats it up": second(lethality.Formula{Medium: units.Celsius(121), Start: units.Celsius(90), Fh: time.Minute, Jch: lethality.One, ComeUp: 20 * time.Hour}.Process(time.Minute)),
	} {
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	for _, x := range []lethality.Number{0, -lethality.One, lethality.One/2 - 1, 200*lethality.One + 1} {
		_, _, err := lethality.GTable(x)
		require.ErrorIs(t, err, units.ErrRange)
	}
}
