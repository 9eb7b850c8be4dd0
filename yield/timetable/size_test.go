package timetable_test

import (
	"math/rand"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/yield/timetable"
)

// TestNothingBreaksWhateverItTakes: plans of 20 to 60 tasks keep every bound, capacity and hour with all tasks at
// their longest, at their shortest, and at random in between, each step by itself.
func TestNothingBreaksWhateverItTakes(t *testing.T) {
	rng := rand.New(rand.NewSource(4))
	problems := []timetable.Problem{weekend(12), weekend(4)}
	for _, tasks := range []int{20, 30, 40, 60} {
		problems = append(problems, scattered(rng, tasks))
	}
	problems[1].Restart.Tasks = []string{"can 1", "can 2", "can 3", "can 4"}
	for i, p := range problems {
		table, err := timetable.Plan(p)
		require.NoError(t, err)
		require.Equal(t, timetable.Possible, table.Answer, i)
		require.LessOrEqual(t, table.NoSooner, table.Finish)
		for round := 0; round < 60; round++ {
			starts, lasts, end := drawn(rng, p, table, round)
			require.True(t, kept(p, starts, lasts), "%d, round %d", i, round)
			require.LessOrEqual(t, end, minutes(table.Finish))
			if round == 0 && table.Spare.Task == "" {
				require.Equal(t, end, minutes(table.Finish), "nothing takes longer than the longest")
			}
		}
	}
}

// drawn are the starts of a plan and durations of all steps: the longest in the first round, the shortest in the
// second, then each one of them or anything between.
func drawn(rng *rand.Rand, p timetable.Problem, table timetable.Timetable, round int) (starts []int, lasts [][]int, end int) {
	for _, task := range p.Tasks {
		for _, slot := range table.Slots {
			if slot.Task == task.Name {
				starts = append(starts, minutes(slot.Start))
			}
		}
		var lasting []int
		for _, s := range task.Steps {
			least, most := minutes(s.Takes.Least), minutes(s.Takes.Most)
			d := []int{most, least, least + rng.Intn(most-least+1)}[min(round, 2)]
			if round > 2 && rng.Intn(2) == 0 {
				d = []int{least, most}[rng.Intn(2)]
			}
			lasting = append(lasting, d)
		}
		lasts = append(lasts, lasting)
		end = max(end, starts[len(starts)-1]+sum(lasting))
	}
	return starts, lasts, end
}

// TestSameAgain: equal problems have equal timetables.
func TestSameAgain(t *testing.T) {
	p := weekend(12)
	once, err := timetable.Plan(p)
	require.NoError(t, err)
	again, err := timetable.Plan(weekend(12))
	require.NoError(t, err)
	require.Empty(t, cmp.Diff(once, again))
	require.Empty(t, cmp.Diff(weekend(12), p), "the problem stays as it was")
}

// TestStepsAreKept: the search never takes more steps than allowed, and says Undecided where that is too few.
func TestStepsAreKept(t *testing.T) {
	p := weekend(12)
	answers := map[timetable.Answer]bool{}
	for _, steps := range []int{1, 10, 100, 1000} {
		p.Steps = steps
		table, err := timetable.Plan(p)
		require.NoError(t, err)
		require.LessOrEqual(t, table.Steps, steps)
		answers[table.Answer] = true
		require.NotEqual(t, timetable.Impossible, table.Answer)
		require.False(t, table.Least())
	}
	require.True(t, answers[timetable.Undecided])
	require.True(t, answers[timetable.Possible])
	p.Until = 48 * time.Hour
	for _, steps := range []int{1, 100} {
		p.Steps = steps
		table, err := timetable.Plan(p)
		require.NoError(t, err)
		require.NotEqual(t, timetable.Possible, table.Answer)
		require.LessOrEqual(t, table.Steps, 3*steps)
	}
}

// TestMostOfEverything: the largest problem that is accepted ends, and soon.
func TestMostOfEverything(t *testing.T) {
	p := scattered(rand.New(rand.NewSource(5)), 120)
	p.Until = 400 * time.Hour
	p.Steps = 200
	table, err := timetable.Plan(p)
	require.NoError(t, err)
	require.LessOrEqual(t, table.Steps, 600)
}

// TestConflictStandsByItself: whatever the steps allow to leave away, the parts of a conflict by themselves are impossible.
func TestConflictStandsByItself(t *testing.T) {
	found := 0
	for _, until := range []time.Duration{40, 48, 76} {
		for _, steps := range []int{30, 3000} {
			p := weekend(12)
			p.Until, p.Steps = until*time.Hour, steps
			table, err := timetable.Plan(p)
			require.NoError(t, err)
			if table.Answer != timetable.Impossible {
				continue
			}
			found++
			alone := only(p, table.Conflict.Parts)
			alone.Steps = 20_000
			again, err := timetable.Plan(alone)
			require.NoError(t, err)
			require.Equal(t, timetable.Impossible, again.Answer, "%s in %d steps: %s", until, steps, table)
		}
	}
	require.GreaterOrEqual(t, found, 4)
}
