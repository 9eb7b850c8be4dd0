package main

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/timetable"
)

// answer is the most fish to keep, and their timetable.
type answer struct {
	*kitchen
	bounds
	inTime  inTime
	keep    int
	work    work // of the fish to keep; none for no fish
	landing coldchain.LandingReport
	more    work // of one fish more than can be processed in time, where there is one
	ways    []way
}

// inTime is how many fish can be processed, and whether it is proven that one more cannot.
type inTime struct {
	fish   int
	proven bool
}

// way is what would have to give for more fish, and how many it lets be processed.
type way struct {
	what string
	inTime
}

func (k *kitchen) answer() (a answer, err error) {
	a.kitchen = k
	if a.bounds, err = k.bound(); err != nil {
		return a, err
	}
	if a.inTime, err = k.most(); err != nil {
		return a, err
	}
	a.keep = min(a.inTime.fish, a.rule, a.year, a.advisory)
	if a.keep > 0 {
		if a.work, err = k.plan(a.keep); err != nil {
			return a, err
		}
		if a.landing, err = a.land(); err != nil {
			return a, err
		}
	}
	if a.inTime.fish < k.Fish {
		if a.more, err = k.plan(a.inTime.fish + 1); err != nil {
			return a, err
		}
		a.ways, err = k.ways()
	}
	return a, err
}

// most is how many of the fish can be processed in time. What cannot be done with some fish cannot with more (see
// problem), so that the
// number is found by halving.
func (k *kitchen) most() (inTime, error) {
	possible, not := 0, k.Fish+1
	proven := true // of none of the fish that there are not
	for n := k.Fish; possible+1 < not; n = (possible + not) / 2 {
		w, err := k.plan(n)
		switch {
		case err != nil:
			return inTime{}, err
		case w.table.Answer == timetable.Possible:
			possible = n
		default:
			not, proven = n, w.table.Answer == timetable.Impossible
		}
	}
	return inTime{possible, proven}, nil
}

// ways tries what would have to give beside fewer fish.
func (k *kitchen) ways() (all []way, err error) {
	try := func(what string, change func(*kitchen)) {
		if err != nil {
			return
		}
		other := *k
		change(&other)
		var found inTime
		if found, err = other.most(); err == nil {
			all = append(all, way{what, found})
		}
	}
	try("a second canner beside the first, each with a person", func(o *kitchen) { o.Canner.Canners++ })
	try("another pair of hands", func(o *kitchen) { o.Home.People++ })
	if k.DoneBy.Given {
		try("on ice until tomorrow, within the published two days, and not done by the hour that you want",
			func(o *kitchen) { o.DoneBy.Given = false })
	}
	return all, err
}

// land holds the plan, with everything as late as it may be, against the published deadlines after the catch.
func (a answer) land() (coldchain.LandingReport, error) {
	var late coldchain.Landing
	for _, s := range a.work.table.Slots {
		if len(s.Steps) == 2 && s.Steps[1].Step == "ice" {
			late.Gutted = units.State(max(late.Gutted.Value, a.since+s.Steps[0].End))
			late.Iced = units.State(max(late.Iced.Value, a.since+s.Latest))
		}
	}
	late.Medium, late.ForCanning, late.ForSmoking = a.Ice, a.work.jarred > 0, a.work.smoked > 0
	return coldchain.CheckLanding(late)
}
