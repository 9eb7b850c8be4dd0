package season_test

import (
	"math/rand"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/season"
)

// best is what trying every way to keep fish found.
type best struct {
	vectors int        // ways that keep within the limits, whatever spoils or is left
	eaten   units.Mass // the most eaten by a way in which nothing passes its keeping time
	byWeek  []units.Mass
}

// one is a single fish of the oracle: it knows nothing of counts since the start, of lots and of bounds ahead.
type one struct {
	caught    int
	preserved bool
	left      units.Mass
}

// oracle walks through a year fish by fish. It is written again from the order of events, and shares nothing with the package.
type oracle struct {
	y      season.Year
	oldest bool // eat the oldest first
	best   *best
	listed []season.Begun // eat these, where any are listed
}

func enumerate(y season.Year) best {
	b := best{byWeek: make([]units.Mass, y.Weeks)}
	oracle{y: y, best: &b}.week(0, 0, nil, make([]units.Mass, 0, y.Weeks), true)
	return b
}

// enumerateOldest is enumerate for people who eat the oldest fish first.
func enumerateOldest(y season.Year) best {
	b := best{byWeek: make([]units.Mass, y.Weeks)}
	oracle{y: y, oldest: true, best: &b}.week(0, 0, nil, make([]units.Mass, 0, y.Weeks), true)
	return b
}

// week tries every number of fish to keep in a week, and then the next. sound is whether nothing has passed its keeping time so far.
func (o oracle) week(week, total int, fish []one, eaten []units.Mass, sound bool) {
	if week == o.y.Weeks {
		o.end(fish, eaten, sound)
		return
	}
	fish = o.preserve(week, fish)
	for k := 0; k <= o.caught(week) && o.allowed(total+k, fish, k); k++ {
		now := append([]one(nil), fish...)
		for i := 0; i < k; i++ {
			now = append(now, one{caught: week, left: o.y.Fish})
		}
		now, ate := o.eat(now)
		fine := sound
		for _, f := range now {
			if week-f.caught >= o.life() && week < o.y.Weeks-1 {
				fine = false
			}
		}
		o.week(week+1, total+k, now, append(eaten, ate), fine && o.freshSound(week, now))
	}
}

func (o oracle) life() int { return int(o.y.Keeps.Time/season.Week) - 1 }

// freshSound: in the week before the last that a fresh fish may wait, what cannot be preserved next week must be gone.
func (o oracle) freshSound(week int, fish []one) bool {
	if week+1 == o.y.Weeks {
		return true
	}
	waits := max(0, int(o.y.Fresh.Time/season.Week)-1)
	for _, f := range o.preserve(week+1, append([]one(nil), fish...)) {
		if !f.preserved && week+1-f.caught > waits {
			return false
		}
	}
	return true
}

func (o oracle) preserve(week int, fish []one) []one {
	preserved := 0
	for _, f := range fish {
		if f.preserved {
			preserved++
		}
	}
	for i, f := range fish { // oldest first: fish stand in the order of their catch
		full := o.y.Rule.Shape == season.ProcessedQuota && preserved >= o.y.Rule.Anglers*o.y.Rule.Processed
		if !f.preserved && week-f.caught >= o.y.Lag && !full {
			fish[i].preserved = true
			preserved++
		}
	}
	return fish
}

func (o oracle) caught(week int) int {
	n := 0
	for _, t := range o.y.Trips {
		if t.Week == week {
			n += min(t.Expected, o.y.Rule.Anglers*o.y.Rule.Daily*t.Days)
		}
	}
	return n
}

// allowed reports whether k more fish may be held beside the others.
func (o oracle) allowed(total int, fish []one, k int) bool {
	r := o.y.Rule
	fresh := 0
	for _, f := range fish {
		if !f.preserved {
			fresh++
		}
	}
	switch {
	case k == 0:
		return true
	case r.Annual > 0 && total > r.Anglers*r.Annual:
		return false
	case r.Shape == season.Everything:
		return len(fish)+k <= r.Anglers*r.Possession
	case r.Shape == season.OneDay:
		return len(fish)+k <= r.Anglers*r.Daily
	case r.Shape == season.ProcessedQuota:
		return fresh+k <= r.Anglers*r.Daily
	}
	return fresh+k <= r.Anglers*r.Possession
}

// eat takes a week's food: the fish begun, then by the order of eating.
func (o oracle) eat(fish []one) ([]one, units.Mass) {
	rest := o.y.Weekly
	for rest > 0 && len(fish) > 0 {
		next := -1
		for i, f := range fish {
			if f.left < o.y.Fish {
				next = i
			}
		}
		for i := range fish {
			if next < 0 && len(o.listed) == 0 && fish[i].preserved == o.oldest {
				next = i
			}
		}
		if next < 0 && len(o.listed) > 0 {
			next = listedFish(fish, o.listed[0])
			o.listed[0].Fish--
			if o.listed[0].Fish == 0 {
				o.listed = o.listed[1:]
			}
		}
		next = max(next, 0)
		bite := min(rest, fish[next].left)
		rest -= bite
		if fish[next].left -= bite; fish[next].left == 0 {
			fish = append(fish[:next:next], fish[next+1:]...)
		}
	}
	return fish, o.y.Weekly - rest
}

func (o oracle) end(fish []one, eaten []units.Mass, sound bool) {
	o.best.vectors++
	if !sound {
		return
	}
	var sum units.Mass
	for week, m := range eaten {
		sum += m
		o.best.byWeek[week] = max(o.best.byWeek[week], sum)
	}
	o.best.eaten = max(o.best.eaten, sum)
}

// small is a random year that can be enumerated.
func small(rng *rand.Rand) season.Year {
	r := season.Rule{Shape: season.Shape(1 + rng.Intn(4)), Anglers: 1 + rng.Intn(2), Daily: 1 + rng.Intn(3)}
	switch r.Shape {
	case season.Everything, season.Unpreserved:
		r.Possession = 1 + rng.Intn(6)
	case season.ProcessedQuota:
		r.Processed = 1 + rng.Intn(5)
	}
	if rng.Intn(4) == 0 {
		r.Annual = 1 + rng.Intn(6)
	}
	y := season.Year{Rule: r, Fishing: season.Expected, Weeks: 4 + rng.Intn(9), Fish: 12 * units.Kilogram}
	y.Weekly = units.Mass(3+rng.Intn(30)) * units.Kilogram
	if rng.Intn(3) == 0 {
		y.Weekly = units.Mass(1+rng.Intn(2)) * y.Fish
	}
	y.Lag = 1 + rng.Intn(3)
	y.Fresh = keeping(timesWeek(y.Lag + rng.Intn(3)))
	y.Keeps = keeping(timesWeek(1 + rng.Intn(y.Weeks+2)))
	if rng.Intn(3) == 0 {
		y.Keeps = keeping(timesWeek(y.Weeks + 1))
	}
	for week := 0; week < y.Weeks && len(y.Trips) < 5; week++ {
		if rng.Intn(2) == 0 {
			n := rng.Intn(5)
			y.Trips = append(y.Trips, season.Trip{Week: week, Days: 1 + rng.Intn(2), Expected: n, Possible: n + rng.Intn(3)})
		}
	}
	return y
}

// listedFish is the index of a whole fish as it is listed.
func listedFish(fish []one, b season.Begun) int {
	for i, f := range fish {
		if f.caught == b.Caught && f.preserved == b.Preserved {
			return i
		}
	}
	return len(fish) // no such fish: the index fails
}

// TestOptimal: no way to keep fish lets more be eaten, whichever fish is begun next, under any rule; with a lag of one week
// not up to any week either.
func TestOptimal(t *testing.T) {
	rng := rand.New(rand.NewSource(1))
	orders := map[season.Order]int{}
	for i := 0; i < 6000; i++ {
		y := small(rng)
		if i >= 1500 && y.Lag == 1 {
			continue
		}
		plan, err := season.Keep(y)
		require.NoError(t, err)
		require.True(t, plan.Proven, "%d: %+v", i, y)
		require.Equal(t, freely(y), plan.Eaten, "%d: %+v", i, y)
		orders[plan.Order]++
		if y.Lag > 1 {
			continue
		}
		found, oldest := enumerate(y), enumerateOldest(y)
		var byWeek []units.Mass
		var sum units.Mass
		for w, m := range oldest.byWeek {
			found.byWeek[w] = max(found.byWeek[w], m)
			sum += plan.Weeks[w].Eaten
			byWeek = append(byWeek, sum)
		}
		require.Empty(t, cmp.Diff(found.byWeek, byWeek), "%d: %+v", i, y)
	}
	require.Greater(t, orders[season.FreshFirst], 100)
	require.Greater(t, orders[season.OldestFirst], 100)
	require.Greater(t, orders[season.AsListed], 5)
}

func timesWeek(n int) time.Duration { return time.Duration(n) * season.Week }
