package timetable_test

import (
	"math/rand"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/yield/timetable"
)

// TestAgainstEnumeration: of 2,000 random small problems the answer and the least finish are those that trying every
// start finds.
func TestAgainstEnumeration(t *testing.T) {
	rng := rand.New(rand.NewSource(1))
	answers := map[timetable.Answer]int{}
	for i := 0; i < 2000; i++ {
		p := small(rng)
		table, err := timetable.Plan(p)
		require.NoError(t, err, shown(p))
		best := enumerate(p)
		answers[table.Answer]++
		if best < 0 {
			require.Equal(t, timetable.Impossible, table.Answer, "%d: %s", i, shown(p))
			continue
		}
		require.Equal(t, timetable.Possible, table.Answer, "%d: %s", i, shown(p))
		require.Equal(t, time.Duration(best)*time.Minute, table.Finish, "%d: %s", i, shown(p))
		require.True(t, table.Least(), "%d: %s", i, shown(p))
		require.True(t, planned(t, p, table), "%d: %s", i, shown(p))
	}
	require.Greater(t, answers[timetable.Possible], 400)
	require.Greater(t, answers[timetable.Impossible], 400)
}

// planned reports whether the starts of a timetable keep everything with every duration.
func planned(t *testing.T, p timetable.Problem, table timetable.Timetable) bool {
	t.Helper()
	o := newOracle(p)
	for _, task := range p.Tasks {
		for _, slot := range table.Slots {
			if slot.Task == task.Name {
				o.starts = append(o.starts, minutes(slot.Start))
			}
		}
	}
	require.Len(t, o.starts, len(p.Tasks))
	return o.sound(len(p.Tasks) - 1)
}
