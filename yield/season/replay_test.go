package season_test

import (
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/season"
)

// TestPlansReplay: fish by fish, as the oracle walks, a plan keeps within the rule, eats as much as it says, leaves no fish past
// its keeping time on the shelf, and lets none wait fresh longer than fresh fish keeps.
func TestPlansReplay(t *testing.T) {
	rng := rand.New(rand.NewSource(8))
	waited, listed := 0, 0
	for i := 0; i < 1000; i++ {
		y := long(rng)
		if i%2 == 0 {
			y.Rule = season.Rule{Shape: season.ProcessedQuota, Anglers: 1 + rng.Intn(2), Daily: 1 + rng.Intn(5), Processed: 1 + rng.Intn(5)}
		}
		p := keep(t, y)
		o := oracle{y: y, oldest: p.Order == season.OldestFirst}
		var fish []one
		total := 0
		for week, w := range p.Weeks {
			fish = o.preserve(week, fish)
			require.True(t, o.allowed(total+w.Kept, fish, w.Kept), "%d, week %d: %+v", i, week, y)
			total += w.Kept
			for k := 0; k < w.Kept; k++ {
				fish = append(fish, one{caught: week, left: y.Fish})
			}
			o.listed = nil
			for _, b := range p.Begun {
				if b.Week == week {
					o.listed = append(o.listed, b)
				}
			}
			var ate units.Mass
			fish, ate = o.eat(fish)
			if p.Order == season.AsListed {
				listed++
			}
			require.Equal(t, w.Eaten, ate)
			require.True(t, o.freshSound(week, fish), "%d, week %d: %+v", i, week, y)
			for _, f := range fish {
				if !f.preserved && week-f.caught > y.Lag {
					waited++
				}
				if week+1 < y.Weeks {
					require.Less(t, week-f.caught, o.life(), "%d, week %d: %+v", i, week, y)
				}
			}
		}
	}
	require.Greater(t, waited, 10, "no fish waited for the quota: the test says nothing")
	require.Greater(t, listed, 100, "no plan was searched for: the test says nothing")
}
