package season_test

import (
	"fmt"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/season"
)

// choosing is an oracle that also chooses which fish is begun next, any of those there are.
type choosing struct {
	oracle
	best units.Mass
	seen map[string]units.Mass
}

// freely is the most that can be eaten in a year, whichever fish are kept and begun.
func freely(y season.Year) units.Mass {
	c := choosing{oracle: oracle{y: y}, seen: map[string]units.Mass{}}
	c.week(0, 0, nil, 0)
	return c.best
}

func (c *choosing) week(week, total int, fish []one, eaten units.Mass) {
	if week == c.y.Weeks {
		c.best = max(c.best, eaten)
		return
	}
	key := fmt.Sprint(week, total, fish)
	if before, ok := c.seen[key]; ok && before >= eaten || eaten+c.y.Weekly*units.Mass(c.y.Weeks-week) <= c.best {
		return
	}
	c.seen[key] = eaten
	fish = c.preserve(week, append([]one(nil), fish...))
	for k := c.caught(week); k >= 0; k-- {
		if !c.allowed(total+k, fish, k) {
			continue
		}
		now := append([]one(nil), fish...)
		for i := 0; i < k; i++ {
			now = append(now, one{caught: week, left: c.y.Fish})
		}
		c.meal(week, total+k, now, c.y.Weekly, eaten)
	}
}

// meal eats the fish that is begun, and tries each of the others next.
func (c *choosing) meal(week, total int, fish []one, rest, eaten units.Mass) {
	if rest == 0 || len(fish) == 0 {
		for _, f := range fish {
			if week-f.caught >= c.life() && week < c.y.Weeks-1 {
				return
			}
		}
		if c.freshSound(week, fish) {
			c.week(week+1, total, fish, eaten)
		}
		return
	}
	open := -1
	for i, f := range fish {
		if f.left < c.y.Fish {
			open = i
		}
	}
	tried := map[one]bool{}
	for i, f := range fish {
		if open >= 0 && i != open || tried[f] {
			continue
		}
		tried[f] = true
		bite := min(rest, f.left)
		next := append([]one(nil), fish...)
		if next[i].left -= bite; next[i].left == 0 {
			next = append(next[:i], next[i+1:]...)
		}
		c.meal(week, total, next, rest-bite, eaten+bite)
	}
}
