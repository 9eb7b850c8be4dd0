package season

import "example.org/lakelarder/units"

// Keep returns the plan that keeps as many fish on each trip as may be held and will be eaten in time. In each week,
// in this order: fish caught at least Lag weeks ago are preserved, oldest first, as far as a processed quota has
// room; a trip keeps fish; people eat. With a Lag of 1 no other choice of fish to keep or to begin lets more be
// eaten, in the whole plan or up to any week of it: what is held later only grows with what was kept and eaten
// before. With a longer Lag every choice is tried as far as some milliseconds go; Plan.Proven says whether that was
// all of them.
//
// Every kept fish is begun within the plan and, where its keeping time ends before the plan, eaten up by then, so
// that nothing is kept to be thrown away; Plan.Spared counts what is therefore let go. Whole fish round down, and an
// opened one counts whole, both the safe side. A year that cannot be held is no error: the plan says so. A Year with
// a figure missing, out of range, or whose trips stand out of order is a RangeError or a units.UnsetError, a word
// that is not known a units.UnknownError, a keeping time without a citation a cite.IncompleteError.
func Keep(y Year) (Plan, error) {
	if err := y.check(); err != nil {
		return Plan{}, err
	}
	p := y.plan()
	p.Cautions = p.cautions()
	return p, nil
}

// plan chooses the order of eating. The fish that are kept and eaten do not depend on it when fish is preserved by
// the next week: what people leave fresh is preserved in place of what they eat. With a longer lag fresh first makes
// more room and oldest first keeps longer, and the best may be neither. Preserved by the next week, the same year
// eats no less.
func (y Year) plan() Plan {
	p := y.ordered()
	if !y.even() {
		p.Proven = p.Feasible()
		return p
	}
	steps := searchSteps
	p = y.improved(p, y.most(p), &steps)
	p.Proven = p.Proven && p.Thrown == 0 || p.Feasible()
	return p
}

// most is what can be eaten at all, where a plan eats as much as it does in one order throughout.
func (y Year) most(p Plan) units.Mass {
	if y.Lag == 1 || p.Feasible() {
		return p.Eaten
	}
	y.Lag = 1
	return y.ordered().Eaten
}

// improved is the plan, or one found by a search where that eats more.
func (y Year) improved(p Plan, most units.Mass, steps *int) Plan {
	if p.Proven = p.Eaten >= most; p.Proven {
		return p
	}
	found, complete := y.better(p.Eaten, most, steps)
	if found.kept != nil {
		p = y.walk(AsListed, found)
	}
	p.Proven = complete || p.Eaten >= most
	return p
}

// ordered is the plan that keeps what it can, in one order of eating throughout.
func (y Year) ordered() Plan {
	if y.Lag > 1 && y.keeps() < y.Weeks-1 {
		return y.walk(OldestFirst, choices{})
	}
	p := y.walk(FreshFirst, choices{})
	if p.Oldest() > y.keeps() || p.Thrown > 0 {
		return y.walk(OldestFirst, choices{})
	}
	return p
}

// walk goes through the weeks in their order, and keeps what it can, or what was chosen.
func (y Year) walk(order Order, chosen choices) Plan {
	p := Plan{
		Year: y, Order: order, Limits: y.Rule.limits(),
		Weeks: make([]PlannedWeek, y.Weeks), Kept: make([]int, len(y.Trips)), Ages: make([]units.Mass, y.Weeks+y.Start.oldest()),
		Begun: chosen.begun,
	}
	s := y.shelf()
	next := 0
	for week := range p.Weeks {
		w := &p.Weeks[week]
		room := s.kept
		if p.Limits.Preserved > 0 {
			room = p.Limits.Preserved - s.stock().Preserved
		}
		before := s.raw
		w.Moved = s.preserve(week-y.Lag, room)
		w.Preserved = before - s.raw
		w.Thrown = s.throw(week, y.fresh())
		for ; next < len(y.Trips) && y.Trips[next].Week == week; next++ {
			caught := y.Trips[next].catch(y.Fishing, y.Rule)
			lawful := min(caught, y.lawful(s, p.Limits))
			n := min(lawful, y.room(s, p.Limits, week))
			if order == AsListed {
				n = min(n, chosen.kept[week]-w.Kept)
			}
			p.Spared += lawful - n
			if n > 0 {
				s.keep(week, n, week+y.keeps(), y.Fish)
			}
			p.Kept[next] = n
			w.Caught += caught
			w.Kept += n
		}
		w.Held = s.stock()
		if order == AsListed {
			w.Eaten = s.eatListed(week, y.Weekly, p.Begun, p.Ages)
		} else {
			w.Eaten = s.eat(week, y.Weekly, order, p.Ages)
		}
		w.End = s.stock()
		p.add(week)
	}
	p.Left = s.food
	return p
}

// room returns how many more fish may be kept in a week such that each is eaten in time, lawful aside. All counts are
// from what has left the shelf; none of them shrinks when more was kept or eaten before.
func (y Year) room(s shelf, limits Stock, week int) int {
	more := int((y.Weekly*units.Mass(y.Weeks-week) - s.food + y.Fish - 1) / y.Fish) // begun by the end
	if y.Weeks-week > y.keeps()+1 {
		more = int((y.Weekly*units.Mass(y.keeps()+1) - s.food) / y.Fish) // eaten up in time
	}
	if wait := y.fresh() + 1; limits.Preserved > 0 && week+wait < y.Weeks {
		more = min(more, y.finishedIn(s, wait)+limits.Preserved-s.kept)
	}
	return max(0, more)
}

// noLimit is more fish than anybody may hold.
const noLimit = 1 << 30

// lawful returns how many more fish the limits and the cap let people keep, whether they are eaten in time or not.
func (y Year) lawful(s shelf, limits Stock) int {
	held := noLimit
	if limits.All > 0 {
		held = min(held, s.done+limits.All)
	}
	if limits.Fresh > 0 {
		held = min(held, s.left+limits.Fresh)
	}
	if y.Rule.Annual > 0 {
		held = min(held, y.Rule.Annual*y.Rule.Anglers+s.before)
	}
	return max(0, held-s.kept)
}

// finishedIn is how many fish have been eaten up after so many weeks, if there are that many, were they the largest.
func (y Year) finishedIn(s shelf, weeks int) int {
	mass := y.Weekly * units.Mass(weeks)
	if mass < s.open {
		return s.done
	}
	begun := 0
	if s.open > 0 {
		begun = 1
	}
	return s.done + begun + int((mass-s.open)/y.largest())
}
