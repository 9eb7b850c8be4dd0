package main

import (
	"math/rand"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/timetable"
)

// kitchenWith is the demo's kitchen with texts of its file replaced.
func kitchenWith(t *testing.T, changes ...string) *kitchen {
	t.Helper()
	data, err := os.ReadFile("dock.json")
	require.NoError(t, err)
	text := string(data)
	for i := 0; i < len(changes); i += 2 {
		require.Contains(t, text, changes[i])
		text = strings.Replace(text, changes[i], changes[i+1], 1)
	}
	path := filepath.Join(t.TempDir(), "dock.json")
	require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
	k, err := load(path)
	require.NoError(t, err)
	return k
}

// kitchens are days of several kinds.
func kitchens(t *testing.T) map[string]*kitchen {
	return map[string]*kitchen{
		"demo":        kitchenWith(t),
		"two canners": kitchenWith(t, `"canners": 1`, `"canners": 2`),
		"one person":  kitchenWith(t, `"people": 2`, `"people": 1`, `"dock": "12:00"`, `"dock": "11:30"`),
		"two batches": kitchenWith(t, `"batch": 3`, `"batch": 2`, `"fridge": 1`, `"fridge": 3`),
		"stood by":    kitchenWith(t, `"standBy": 0`, `"standBy": 1`),
		"tonight":     kitchenWith(t, `"fish": 16`, `"fish": 16, "doneBy": "22:30"`, `"fish": 3`, `"fish": 0`),
		"half-pints": kitchenWith(t, `"jar": "pint"`, `"jar": "half-pint"`, `"mouth": "pint regular"`,
			`"mouth": "half-pint regular"`, `"fill": "14 oz"`, `"fill": "6 oz"`),
		"in the evening": kitchenWith(t, `"caught": "11:15"`, `"caught": "18:00"`, `"dock": "12:00"`,
			`"dock": "18:40"`, `"thick": "1 in"`, `"thick": "3/4 in"`, `"thin": "3/4 in"`, `"thin": "1/2 in"`),
	}
}

// TestNothingBreaks: whatever the steps take, no deadline is passed and nobody is in two places or up at night.
func TestNothingBreaks(t *testing.T) {
	random := rand.New(rand.NewSource(1))
	for name, k := range kitchens(t) {
		most, err := k.most()
		require.NoError(t, err, name)
		require.Positive(t, most.fish, name)
		w, err := k.plan(most.fish)
		require.NoError(t, err, name)
		require.Equal(t, timetable.Possible, w.table.Answer, name)
		for i := 0; i < 12; i++ {
			went := day(w, func(d timetable.Times) time.Duration {
				switch i {
				case 0:
					return d.Most
				case 1:
					return d.Least
				}
				return d.Least + time.Duration(random.Int63n(int64((d.Most-d.Least)/time.Minute)+1))*time.Minute
			})
			require.NoError(t, holds(w, went), name)
			require.NoError(t, byClock(k, w, went), name)
		}
		for _, d := range (answer{kitchen: k, work: w}).deadlines() {
			require.LessOrEqual(t, d.latest, d.bound.Gap, "%s: %s, the second run too", name, d.bound.Name)
		}
		spare := w.table.Spare
		require.Equal(t, w.loads > 0, spare.Task != "", name)
		for _, n := range k.nights() {
			require.False(t, spare.Task != "" && spare.Start < n.To && n.From < spare.Latest,
				"%s: the spare at night", name)
		}
	}
}

// TestCheckCanFail: the check of a day is one that notices.
func TestCheckCanFail(t *testing.T) {
	k := kitchenWith(t)
	w, err := k.plan(13)
	require.NoError(t, err)
	longer := func(by time.Duration) error {
		return holds(w, day(w, func(d timetable.Times) time.Duration { return d.Most + by }))
	}
	require.NoError(t, longer(0))
	require.Error(t, longer(time.Minute))
	require.ErrorContains(t, longer(20*time.Minute), "gutted and on ice")
	for i := range w.table.Slots {
		if w.table.Slots[i].Task == "load 3" {
			w.table.Slots[i].Start = 12 * time.Hour // at midnight
		}
	}
	require.ErrorContains(t, longer(0), "load 3")
	require.ErrorContains(t, byClock(k, w, day(w, func(d timetable.Times) time.Duration { return d.Most })), "load 3")
	w.problem.Bounds = nil
	require.ErrorContains(t, longer(0), "people at 12h0m0s")
}

// TestHalvingIsScanning: what halving finds is what trying every number finds, and no number above it is possible.
func TestHalvingIsScanning(t *testing.T) {
	for name, k := range kitchens(t) {
		got, err := k.most()
		require.NoError(t, err, name)
		best, proven := 0, true
		for n := 1; n <= k.Fish; n++ {
			w, err := k.plan(n)
			require.NoError(t, err, name)
			switch w.table.Answer {
			case timetable.Possible:
				require.Equal(t, n-1, best, "%s: what is possible with %d is with fewer", name, n)
				best = n
			case timetable.Undecided:
				proven = false
			}
		}
		require.Equal(t, inTime{best, proven}, got, name)
	}
}

// TestMonotone: more of the kitchen, or more time, never lets fewer fish be processed.
func TestMonotone(t *testing.T) {
	for name, k := range kitchens(t) {
		was, err := k.most()
		require.NoError(t, err)
		for what, change := range map[string]func(*kitchen){
			"canner":   func(o *kitchen) { o.Canner.Canners++ },
			"person":   func(o *kitchen) { o.Home.People++ },
			"fridge":   func(o *kitchen) { o.Home.Fridge++ },
			"waits":    func(o *kitchen) { o.Home.Waits += time.Hour },
			"not done": func(o *kitchen) { o.DoneBy.Given = false },
			"earlier":  func(o *kitchen) { o.since -= 10 * time.Minute },
			"quicker":  func(o *kitchen) { o.Home.Gut.Most = o.Home.Gut.Least },
		} {
			other := *k
			change(&other)
			is, err := other.most()
			require.NoError(t, err)
			require.GreaterOrEqual(t, is.fish, was.fish, "%s: %s", name, what)
		}
	}
}

// TestTakenFromPackages: the deadlines and durations are those that are published, each with its citation.
func TestTakenFromPackages(t *testing.T) {
	k := kitchenWith(t)
	require.Equal(t, []time.Duration{2 * time.Hour, 48 * time.Hour, 24 * time.Hour, 24 * time.Hour},
		[]time.Duration{k.limits.gut.within, k.limits.jars.within, k.limits.raw.within, k.limits.again.within})
	for _, l := range []limit{k.limits.gut, k.limits.jars, k.limits.raw, k.limits.again} {
		require.NoError(t, l.citation.Check())
	}
	found := 0
	for _, c := range k.process.Cautions() {
		if c.ID == withinTwo {
			require.Contains(t, c.Text, "within 2 days of the catch")
			found++
		}
	}
	require.Equal(t, 1, found)
	require.Equal(t, 12*time.Hour, k.salting.Time)
	require.Equal(t, 6*time.Hour, k.cooled())
	var least, most time.Duration
	for _, step := range k.loadTask("load").Steps[1:] {
		least, most = least+step.Takes.Least, most+step.Takes.Most
	}
	require.Equal(t, k.cycle.Total.Least, least)
	require.Equal(t, k.cycle.Total.Most, most)
}

// TestOpenHeatUp: where no longest time to steam is published, it is asked for and never made up.
func TestOpenHeatUp(t *testing.T) {
	quarts := []string{`"jar": "pint"`, `"jar": "quart"`, `"mouth": "pint regular"`, `"mouth": "quart regular"`,
		`"fill": "14 oz"`, `"fill": "28 oz"`}
	data, err := os.ReadFile("dock.json")
	require.NoError(t, err)
	text := string(data)
	for i := 0; i < len(quarts); i += 2 {
		text = strings.Replace(text, quarts[i], quarts[i+1], 1)
	}
	path := filepath.Join(t.TempDir(), "dock.json")
	require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
	_, err = load(path)
	require.ErrorContains(t, err, "canner.heatUp, for which no longest is published")
	k := kitchenWith(t, append(quarts, `"fill": "28 oz"`, `"fill": "28 oz", "heatUp": "40 min"`)...)
	require.Equal(t, process.Quart, k.process.Jar)
	require.Equal(t, 40*time.Minute, k.loadTask("load").Steps[1].Takes.Most)
}

// TestLargest: the most fish that may be stated are answered in seconds.
func TestLargest(t *testing.T) {
	k := kitchenWith(t, `"fish": 16`, `"fish": 60`, `"people": 2`, `"people": 6`, `"canners": 1`, `"canners": 2`,
		`"batch": 3`, `"batch": 8`, `"fish": 3`, `"fish": 8`)
	began := time.Now()
	most, err := k.most()
	require.NoError(t, err)
	require.Greater(t, most.fish, 16)
	t.Logf("%d fish, proven %v, in %s", most.fish, most.proven, time.Since(began))
	require.Less(t, time.Since(began), time.Minute)
}

// TestLandingAtTheLatest: the landing that is held against the published times is that of the slowest hands.
func TestLandingAtTheLatest(t *testing.T) {
	k := kitchenWith(t)
	a, err := k.answer()
	require.NoError(t, err)
	late := 0
	for i := range a.work.table.Slots {
		if s := &a.work.table.Slots[i]; s.Task == "gut 1" {
			s.Latest = 2*time.Hour - k.since + time.Minute
			late++
		}
	}
	require.Equal(t, 1, late)
	is, err := a.land()
	require.NoError(t, err)
	require.Equal(t, verdict.Met, a.landing.Verdict)
	require.Equal(t, verdict.NotMet, is.Verdict)
}

// TestSure: what was only found is not called proven.
func TestSure(t *testing.T) {
	require.Equal(t, "proven: no fixed starts do for 6", inTime{5, true}.sure(9))
	require.Equal(t, "the best found, and more is not proven impossible", inTime{5, false}.sure(9))
	require.Equal(t, "that is all", inTime{9, true}.sure(9))
}
