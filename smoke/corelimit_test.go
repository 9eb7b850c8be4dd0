package smoke

import (
	"sort"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// limitRow is a printed rule in comparable form.
type limitRow struct {
	ID                   string
	AtLeast              string
	Printed              units.Figure
	Hold                 time.Duration
	Home                 bool
	Source, Where, Basis string
}

// Every printed rule comes out, every rule in the code is printed, and the figure in Fahrenheit is the limit of a record.
func TestCoreLimitsAreThePrintedOnes(t *testing.T) {
	var want, got []limitRow
	for _, r := range printed.Table(t, "smoke/core-limits.csv") {
		c, err := units.TemperatureOf(r.Decimal("core_c"), units.CelsiusScale)
		require.NoError(t, err)
		f, err := units.TemperatureOf(r.Decimal("core_f"), units.FahrenheitScale)
		require.NoError(t, err)
		printed.Within(t, r, "core_c", f.In(units.CelsiusScale, 6)) // the two figures are one, rounded
		want = append(want, limitRow{
			r.Text("id"), f.String(), units.AtLeast(f).Also(units.AtLeast(c)), time.Duration(r.Int("hold_min")) * time.Minute, r.Text("home") == "yes",
			r.Text("source"), r.Text("place"), r.Text("basis"),
		})
	}
	for _, l := range CoreLimits() {
		require.NoError(t, l.Citation.Check(), l.ID)
		require.NoError(t, l.check())
		require.NotEmpty(t, l.Fish)
		require.NotEmpty(t, l.Place)
		got = append(got, limitRow{l.ID.String(), l.AtLeast.String(), l.Printed, l.Hold, l.Home, l.Citation.Source.Key(), l.Citation.Where, l.Citation.Basis.String()})
		found, err := FindCoreLimit(l.ID)
		require.NoError(t, err)
		require.Equal(t, l, found)
	}
	for _, rows := range [][]limitRow{want, got} {
		sort.Slice(rows, func(i, j int) bool { return rows[i].ID < rows[j].ID })
	}
	require.Empty(t, cmp.Diff(want, got))
}

func TestDefaultIsTheStrictest(t *testing.T) {
	standard := DefaultCoreLimit()
	require.True(t, standard.Home)
	require.Equal(t, units.Fahrenheit(180), standard.AtLeast)
	require.Equal(t, cite.Read, standard.Citation.Basis)
	for i, l := range CoreLimits() {
		require.False(t, l.AtLeast.Above(standard.AtLeast), l.ID)
		require.LessOrEqual(t, l.Hold, standard.Hold, l.ID)
		if i > 0 {
			require.False(t, l.AtLeast.Above(CoreLimits()[i-1].AtLeast), "strictest first: %s", l.ID)
		}
	}
	CoreLimits()[0].Hold = 0
	require.Equal(t, standard, DefaultCoreLimit(), "the slice is the caller's own")
}

func TestUnknownCoreLimits(t *testing.T) {
	for _, id := range []string{"", "160", "HOT-160", "HOT-155-PNW"} {
		_, err := ParseCoreLimitID(id)
		require.ErrorIs(t, err, units.ErrUnknown)
		require.ErrorContains(t, err, "HOT-160-PNW, ")
	}
	_, err := FindCoreLimit(0)
	require.ErrorIs(t, err, units.ErrUnset)
	_, err = FindCoreLimit(Hot145States + 1)
	require.ErrorIs(t, err, units.ErrUnknown)
}
