package canner

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

func TestCycles(t *testing.T) {
	packs := map[string]string{"fish": "raw", "smoked fish": "as smoked"}
	printed.Table(t, "canner/cycles.csv").Each(t, func(t *testing.T, r printed.Row) {
		c, err := CycleOf(schedule(t, r.Text("product"), packs[r.Text("product")], r.Text("jar"), "dial", 0))
		require.NoError(t, err)
		require.Equal(t, minutesOf(t, r, "heat_up_from_min"), c.HeatUp.Least)
		require.Equal(t, minutesOf(t, r, "heat_up_to_min"), c.HeatUp.Most)
		require.Equal(t, minutesOf(t, r, "vent_min"), c.Vent.Least)
		require.Equal(t, minutesOf(t, r, "process_min"), c.Process.Least)
		require.Equal(t, minutesOf(t, r, "wait_min"), c.Wait.Least)
		cool := minutesOf(t, r, "cool_min")
		require.LessOrEqual(t, c.CoolDown.Least, cool)
		require.GreaterOrEqual(t, c.CoolDown.Most, cool)
		require.Equal(t, minutesOf(t, r, "total_from_min"), c.Total.Least-c.CoolDown.Least+cool)
		require.Equal(t, minutesOf(t, r, "total_to_min"), c.Total.Most-c.CoolDown.Most+cool)
		require.Equal(t, r.Text("product") == "smoked fish" || r.Text("jar") == "quart", c.Total.Open)
		for _, part := range []Span{c.HeatUp, c.Vent, c.Pressurize, c.Process, c.CoolDown, c.Wait, c.Total} {
			require.NoError(t, part.Citation.Check())
			require.LessOrEqual(t, part.Least, part.Most)
		}
	})
}

func TestDays(t *testing.T) {
	c, err := CycleOf(fishIn(t, process.Pint))
	require.NoError(t, err)
	for _, day := range []struct{ loads, canners, rounds int }{{1, 1, 1}, {3, 1, 3}, {3, 2, 2}, {4, 2, 2}, {5, 2, 3}} {
		d, err := c.Day(day.loads, day.canners, 20*time.Minute)
		require.NoError(t, err)
		require.Equal(t, time.Duration(day.rounds)*c.Total.Least+time.Duration(day.rounds-1)*20*time.Minute, d.Least)
		require.Equal(t, time.Duration(day.rounds)*c.Total.Most+time.Duration(day.rounds-1)*20*time.Minute, d.Most)
		require.NoError(t, d.Citation.Check())
	}
	for _, bad := range []struct {
		loads, canners int
		refill         time.Duration
	}{{0, 1, 0}, {101, 1, 0}, {1, 0, 0}, {1, 3, 0}, {1, 1, -1}, {1, 1, 5 * time.Hour}} {
		_, err := c.Day(bad.loads, bad.canners, bad.refill)
		require.ErrorIs(t, err, units.ErrRange)
	}
	var contradiction ContradictionError
	_, err = CycleOf(process.Schedule{})
	require.ErrorAs(t, err, &contradiction)
}
