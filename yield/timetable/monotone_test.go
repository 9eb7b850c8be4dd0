package timetable_test

import (
	"math/rand"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/yield/timetable"
)

// roomier is a problem with more room, in one of six ways.
func roomier(rng *rand.Rand, p timetable.Problem) timetable.Problem {
	copied := p
	copied.Tasks = append([]timetable.Task(nil), p.Tasks...)
	copied.Resources = append([]timetable.Resource(nil), p.Resources...)
	copied.Bounds = append([]timetable.Bound(nil), p.Bounds...)
	switch rng.Intn(6) {
	case 0: // a second unit
		copied.Resources[rng.Intn(len(p.Resources))].Capacity++
	case 1: // more hours
		copied.Until += time.Duration(1+rng.Intn(3)) * time.Minute
	case 2: // nobody sleeps
		copied.Resources[rng.Intn(len(p.Resources))].Closed = nil
	case 3: // fewer tasks
		gone := p.Tasks[len(p.Tasks)-1].Name
		copied.Tasks, copied.Bounds = copied.Tasks[:len(p.Tasks)-1], nil
		for _, b := range p.Bounds {
			if b.To.Task != gone && b.From.Task != gone {
				copied.Bounds = append(copied.Bounds, b)
			}
		}
		copied.Restart.Tasks = nil
		for _, name := range p.Restart.Tasks {
			if name != gone {
				copied.Restart.Tasks = append(copied.Restart.Tasks, name)
			}
		}
	case 4: // a bound that holds no more
		if n := len(p.Bounds); n > 0 {
			copied.Bounds = copied.Bounds[:n-1]
		}
	case 5: // no room to restart
		copied.Restart = timetable.Restart{}
	}
	if len(copied.Restart.Tasks) == 0 {
		copied.Restart = timetable.Restart{}
	}
	return copied
}

// TestMoreRoomIsNeverLess: where a problem is possible, the same with more room is possible, and ends no later.
func TestMoreRoomIsNeverLess(t *testing.T) {
	rng := rand.New(rand.NewSource(2))
	compared := 0
	for i := 0; i < 6000; i++ {
		p := small(rng)
		table, err := timetable.Plan(p)
		require.NoError(t, err)
		more, err := timetable.Plan(roomier(rng, p))
		require.NoError(t, err)
		if table.Answer == timetable.Possible {
			compared++
			require.Equal(t, timetable.Possible, more.Answer, "%d: %s", i, shown(p))
			require.LessOrEqual(t, more.NoSooner, table.Finish, "%d: %s", i, shown(p))
			if more.Least() && table.Least() {
				require.LessOrEqual(t, more.Finish, table.Finish, "%d: %s", i, shown(p))
			}
		}
	}
	require.Greater(t, compared, 1500)
}

// TestMoreRoomIsNeverLessForTens: the same with problems too large to enumerate, in which the search may also give up.
func TestMoreRoomIsNeverLessForTens(t *testing.T) {
	rng := rand.New(rand.NewSource(6))
	answers := map[timetable.Answer]int{}
	for i := 0; i < 150; i++ {
		p := scattered(rng, 8+rng.Intn(8))
		p.Until, p.Steps = time.Duration(5+rng.Intn(15))*time.Hour, 2000
		table, err := timetable.Plan(p)
		require.NoError(t, err)
		answers[table.Answer]++
		more, err := timetable.Plan(roomier(rng, p))
		require.NoError(t, err)
		switch {
		case table.Answer == timetable.Possible:
			require.NotEqual(t, timetable.Impossible, more.Answer, i)
			require.LessOrEqual(t, more.NoSooner, table.Finish, i)
		case more.Answer == timetable.Impossible:
			require.NotEqual(t, timetable.Possible, table.Answer, i)
		}
	}
	require.Greater(t, answers[timetable.Possible], 30)
	require.Greater(t, answers[timetable.Impossible], 30)
}
