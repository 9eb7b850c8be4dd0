package season

import (
	"cmp"
	"slices"

	"example.org/lakelarder/units"
)

// YearFrom returns what is left of a year, to plan it again: its weeks after the day of the state, its trips in them,
// and the Start that the state is. The day must be the last of one of the year's weeks, counted from the start of the
// ledger, and the year's rule that of the ledger: otherwise a units.RangeError. What was there at the start of the
// year is taken from the ledger.
//
// Fish of a catch are shared out to what was made of it, what is eaten first first, and counted whole; what is held
// and is no food counts until the end, for the plan cannot know when it is thrown out. What keeps for less than a week
// is to be eaten in the first.
func (s State) YearFrom(y Year) (Year, error) {
	if err := y.check(); err != nil {
		return Year{}, err
	}
	if y.Rule != s.Rule {
		return Year{}, units.RangeError{What: "rule of the year", Got: "another", High: "that of the ledger"}
	}
	days := int(s.Day + 1 - s.Start)
	week := days / 7
	if days < 0 || days%7 != 0 || week >= y.Weeks {
		return Year{}, units.RangeError{
			What: "day of the state, the last of a week of the year,", Got: s.Day.String(),
			Low: (s.Start + Day(7*max(0, week)) - 1).String(), High: (s.Start + Day(7*min(week+1, y.Weeks-1)) - 1).String(),
		}
	}
	for _, l := range s.Lots {
		if err := l.check(); err != nil {
			return Year{}, err
		}
	}
	rest := y
	rest.Weeks, rest.Trips, rest.Start = y.Weeks-week, nil, Start{Used: s.Used, Holdings: s.holdings(y)}
	for _, t := range y.Trips {
		if t.Week >= week {
			t.Week -= week
			rest.Trips = append(rest.Trips, t)
		}
	}
	return rest, rest.check()
}

// check refuses a lot that Audit does not return.
func (l Lot) check() error {
	if err := within("left of "+l.Batch, l.Left, 1, most); err != nil {
		return err
	}
	if err := within("food of "+l.Batch, l.Food, 0, l.Left); err != nil {
		return err
	}
	if err := within("fish of the catch of "+l.Batch, l.OfFish, 1, most); err != nil {
		return err
	}
	if err := units.Check("round mass of the catch of "+l.Batch, l.OfRound, units.Gram, units.Tonne); err != nil {
		return err
	}
	if err := units.Check("round mass of "+l.Batch, l.Round, 0, l.OfRound); err != nil {
		return err
	}
	if err := l.Caught.check("day of the catch of " + l.Batch); err != nil {
		return err
	}
	if err := l.Until.check("last day of " + l.Batch); err != nil {
		return err
	}
	return units.Check("round mass held of "+l.Batch, l.Held, 0, l.Round)
}

// holdings are what is held, by catch.
func (s State) holdings(y Year) []Holding {
	var all []Holding
	for first := 0; first < len(s.Lots); {
		end := first + 1
		for end < len(s.Lots) && s.Lots[end].Event.makes() && s.Lots[end].Catch == s.Lots[first].Catch {
			end++
		}
		lots := s.Lots[first:end]
		caught := weekOf(lots[0].Caught - s.Day - 1)
		if !lots[0].Event.makes() {
			l := lots[0]
			h := Holding{Caught: caught, Last: max(0, caught+y.keeps()), Fish: l.Left, Each: l.Round / units.Mass(l.Left)}
			if l.Food == 0 || l.Until <= s.Day {
				h.Last, h.Each = -1, 0
			}
			all, lots = append(all, h), lots[1:]
		}
		all = append(all, s.preserved(caught, lots)...)
		first = end
	}
	return all
}

// preserved are the holdings of what was made of one catch.
func (s State) preserved(caught int, lots []Lot) []Holding {
	lots = slices.Clone(lots)
	slices.SortStableFunc(lots, func(a, b Lot) int { return cmp.Compare(a.Until, b.Until) })
	var all []Holding
	var food, counted units.Mass
	fish := 0
	for _, l := range lots {
		counted += l.Held
		mass := s.edible(l)
		if mass == 0 {
			continue
		}
		food += mass
		h := Holding{Caught: caught, Last: max(0, weekOf(l.Until-s.Day)-1), Preserved: true, Each: mass}
		h.Fish = l.fish(food) - fish
		if h.Fish == 0 { // with what is eaten before it
			all[len(all)-1].Each += mass
			continue
		}
		fish += h.Fish
		all = append(all, h)
	}
	for i := range all {
		all[i].Each /= units.Mass(all[i].Fish)
	}
	if len(lots) > 0 && lots[0].fish(counted) > fish {
		all = append(all, Holding{Caught: caught, Last: -1, Fish: lots[0].fish(counted) - fish, Preserved: true})
	}
	return all
}

// edible is the round mass of a lot that may still be eaten after the day.
func (s State) edible(l Lot) units.Mass {
	if l.Food == 0 || l.Until <= s.Day {
		return 0
	}
	m, err := units.ProrateDown(l.Round, units.Mass(l.Food), units.Mass(l.Left))
	if err != nil {
		return 0
	}
	return m
}

// fish is how many whole fish a round mass of a lot's catch is, rounded up.
func (l Lot) fish(m units.Mass) int {
	n, err := wholeFish(m, &Entry{Count: l.OfFish, Round: l.OfRound})
	if err != nil {
		return 0
	}
	return n
}

// weekOf is the week in which a day is, counted from day 0 of week 0.
func weekOf(d Day) int {
	if d < 0 {
		return -int((6 - d) / 7)
	}
	return int(d / 7)
}
