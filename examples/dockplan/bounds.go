package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield"
	"example.org/lakelarder/yield/coldchain/keeping"
	"example.org/lakelarder/yield/season"
)

// room is what one line of the possession rule leaves: the limit of all anglers together and what it counts already.
type room struct {
	name          string
	limit, counts int
}

func (r room) left() int { return max(0, r.limit-r.counts) }

// bounds are how many fish the rule, the year and the advisory let be kept today.
type bounds struct {
	rooms                []room
	rule, year, advisory int
	larder               season.Larder
	eats                 int // fish, in all the weeks
	advice               yield.MealAdvice
	periods, meals       int64 // whole ones in the weeks; of all people
	eaten, each          units.Mass
	allowed              int64 // fish, in all the weeks
}

func (k *kitchen) bound() (b bounds, err error) {
	if err = k.possess(&b); err != nil {
		return b, fmt.Errorf("rule: %w", err)
	}
	if err = k.eat(&b); err != nil {
		return b, fmt.Errorf("year: %w", err)
	}
	if err = k.advise(&b); err != nil {
		return b, fmt.Errorf("advisory and intake: %w", err)
	}
	return b, nil
}

// possess is the caller's rule on the caller's figures. Package season checks the rule, and says what all anglers may
// hold together.
func (k *kitchen) possess(b *bounds) error {
	raw := k.limits.raw
	plan, err := season.Keep(season.Year{
		Rule: k.Rule, Fishing: season.Expected, Weeks: 1, Lag: 1, Fish: k.Mass, Weekly: k.Mass,
		Fresh: season.Keeping{Time: season.Week, Citation: raw.citation},
		Keeps: season.Keeping{Time: season.Week, Citation: raw.citation},
	})
	if err != nil {
		return err
	}
	h, most := k.Held, plan.Limits
	b.rooms = append(b.rooms, room{"daily limit", k.Rule.Anglers * k.Rule.Daily, h.Today})
	for _, r := range []room{
		{"all fish held", most.All, h.Fresh + h.Preserved}, {"fresh fish held", most.Fresh, h.Fresh},
		{"preserved fish held, which today's become", most.Preserved, h.Fresh + h.Preserved},
		{"fish of the year", k.Rule.Anglers * k.Rule.Annual, h.Year},
	} {
		if r.limit > 0 {
			b.rooms = append(b.rooms, r)
		}
	}
	b.rule = b.least().left()
	return nil
}

// least is the line of the rule that leaves the fewest fish.
func (b bounds) least() room {
	least := b.rooms[0]
	for _, r := range b.rooms {
		if r.left() < least.left() {
			least = r
		}
	}
	return least
}

// eat is what the household wants of the weeks to come, less what it has. Whole fish, rounded down: more would be
// kept to be thrown away.
func (k *kitchen) eat(b *bounds) error {
	if k.Smoker.Fish > 0 && k.Year.Smoked == (fileProduct{}) {
		return units.UnsetError{What: "smoked, how much of the smoked fish people eat"}
	}
	var wants []season.Want
	for _, one := range []struct {
		name    string
		p       fileProduct
		left    share
		load    int
		food    keeping.Food
		storage keeping.Storage
	}{
		{"jars", k.Year.Canned, k.jarred, k.load.Jars, keeping.HomeCanned, keeping.InCupboard},
		{"smoked", k.Year.Smoked, k.filets, 0, keeping.SmokedVacuum, keeping.InFreezer},
	} {
		if one.p == (fileProduct{}) {
			continue
		}
		times, err := keeping.Find(one.food, one.storage)
		if err != nil {
			return err
		}
		best := times.Quality[0].Rule
		wants = append(wants, season.Want{
			Name: one.name, Meals: one.p.Meals, Serving: one.p.Serving, Pack: one.p.Pack, Served: one.p.Served,
			Yield: one.left.of, Load: one.load,
			Keeps: season.Keeping{Time: best.Low, Citation: best.Citation},
		})
	}
	var err error
	house := season.Household{People: k.Year.People, Weeks: k.Year.Weeks, Fish: k.Mass}
	if b.larder, err = season.Size(house, wants...); err != nil {
		return err
	}
	b.eats = int(b.larder.Round / k.Mass)
	b.year = max(0, b.eats-k.Year.Have)
	return nil
}

// advise is how many fish the advisory's meals are, of a meal as the intake has it. The fish is the one of which most
// is eaten: the safe side.
func (k *kitchen) advise(b *bounds) (err error) {
	if b.advice, err = yield.Advise(k.Advisory, k.Intake); err != nil {
		return err
	}
	b.periods = int64(time.Duration(k.Year.Weeks) * season.Week / b.advice.Period)
	b.meals = b.periods * int64(b.advice.Meals) * int64(k.Year.People)
	b.eaten = units.Mass(b.meals) * k.Intake.Meal
	for _, one := range []struct{ left, served units.Ratio }{
		{k.jarred.of, k.Year.Canned.Served}, {k.filets.of, k.Year.Smoked.Served},
	} {
		part, err := units.ProrateUp(k.Mass, one.left, units.One)
		if err != nil {
			return err
		}
		if part, err = units.ProrateUp(part, one.served, units.One); err != nil {
			return err
		}
		b.each = max(b.each, part)
	}
	b.allowed = int64(b.eaten / b.each)
	b.advisory = max(0, int(b.allowed)-k.Year.Have)
	return nil
}
