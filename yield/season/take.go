package season

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// take counts one entry of a lot, or finds what it contradicts. Entries that no entry begins have none, below 0.
func (r *replay) take(e *Entry, at int) {
	named := at >= 0
	if e.Event == Caught && !named {
		return // all were let go
	}
	if !named {
		r.say(e, RuleBatch, "which no entry begins")
		return
	}
	x := &r.lots[at]
	switch {
	case e.Event == Caught:
		r.land(e, x)
	case e.Event == Kept || e.Event.makes():
		if x.entry != e {
			r.dispute(x)
			r.say(e, RuleBatch, "begun a second time")
		} else if e.Event == Kept {
			r.keep(e, x)
		} else {
			r.make(e, at)
		}
	case !x.begun:
		r.dispute(x)
		r.sayOrder(e, x)
	case e.Event == Failed || e.Event == Sealed:
		r.seal(e, at)
	default:
		r.leave(e, at)
	}
}

// land notes what was caught, of which some are kept.
func (r *replay) land(e *Entry, x *stored) {
	if x.entry.Event != Kept || x.entry.Day != e.Day {
		r.dispute(x)
		r.say(e, RuleBatch, "of which no fish are kept on that day")
		return
	}
	x.landed += e.Count
}

func (r *replay) keep(e *Entry, x *stored) {
	x.begun, x.product, x.good, x.round = true, -1, e.Count, e.Round
	x.fish, x.load, x.there = worstOf(x.fish), verdict.Met, e.Round
	x.until = e.Day.keepsUntil(r.ledger.Fresh.Time)
	if x.landed > 0 && e.Count > x.landed {
		r.dispute(x)
		r.sayAmount(e, e.Count, x.landed)
	}
	r.kept += e.Count
	r.in += e.Round
	r.held.All += e.Count
	r.held.Fresh += e.Count
	if e.Day >= r.ledger.Start {
		r.used += e.Count
		r.week.Kept += e.Count
	}
}

// worstOf is Met, or the doubt that a lot was in before it was begun.
func worstOf(before verdict.Verdict) verdict.Verdict {
	if before == doubted {
		return verdict.CannotTell
	}
	return verdict.Met
}

// doubted marks a lot that was contradicted before it was begun; CannotTell is the zero Verdict.
const doubted verdict.Verdict = 100

// dispute makes a lot no food until its entries are put right.
func (r *replay) dispute(x *stored) {
	if !x.begun {
		x.fish = doubted
		return
	}
	x.fish = verdict.Worst(x.fish, verdict.CannotTell)
}

// origins are the events of which what an event begins may be made.
func (e Event) origins() []Event {
	switch e {
	case Canned:
		return []Event{Kept, Smoked, Frozen}
	case Reprocessed:
		return []Event{Canned, Reprocessed}
	case Smoked:
		return []Event{Kept, Frozen}
	case Refrigerated:
		return []Event{Canned, Reprocessed, Frozen}
	}
	return []Event{Kept, Smoked, Canned, Reprocessed, Refrigerated} // frozen
}

// make begins a batch out of another.
func (r *replay) make(e *Entry, at int) {
	x := &r.lots[at]
	if x.parent < 0 {
		r.say(e, RuleBatch, "of "+e.From+", which no entry begins")
		return
	}
	p := &r.lots[x.parent]
	switch {
	case !p.begun:
		r.dispute(p)
		r.say(e, RuleOrder, "of "+e.From+", which is not made by then")
		return
	case !among(e.Event.origins(), p.entry.Event):
		r.say(e, RuleBatch, "of what was "+p.entry.Event.String())
		return
	}
	pools := p.pools(e)
	there := 0
	for _, pool := range pools {
		there += *pool
	}
	if e.Taken > there {
		r.dispute(p)
		r.sayAmount(e, e.Taken, there)
		return
	}
	x.fish = verdict.Worst(worstOf(x.fish), p.fish)
	if e.Event != Reprocessed {
		x.fish = verdict.Worst(x.fish, p.load)
	}
	salvaged := e.Event == Reprocessed || p.entry.Event.heats() && p.failed > 0 && len(pools) > 1
	if salvaged {
		x.fish = verdict.Worst(x.fish, r.inTime(e, p))
	} else if e.Day > p.until {
		x.fish = verdict.Worst(x.fish, r.sayOld(e, p))
	}
	x.begun, x.product = true, r.ledger.product(e.Product)
	product := &r.ledger.Products[x.product]
	x.quality, x.until, x.load = product.Quality, e.Day.keepsUntil(product.Keeps.Time), verdict.Met
	if p.entry.Event.heats() && e.Event == Refrigerated && !salvaged {
		x.until = min(x.until, p.until)
	}
	x.round = r.out(x.parent, e.Taken, pools...)
	if x.good = e.Count; e.Event.heats() {
		x.good, x.unchecked = 0, e.Count
		x.load = e.Audit.Value // CannotTell where it is not stated
	}
	r.recount(at)
}

// pools are from which of its own counts a lot gives what is made of it, in this order. Jars that did not seal are
// dealt with on the day of the heat and the day after; later only sound ones are opened. Any jar may be processed
// again.
func (x *stored) pools(e *Entry) []*int {
	switch {
	case e.Event == Reprocessed:
		return []*int{&x.failed, &x.unchecked, &x.good}
	case x.entry.Event.heats() && e.Day <= x.entry.Day+1:
		return []*int{&x.failed, &x.good}
	}
	return []*int{&x.good}
}

func among(all []Event, e Event) bool {
	for _, one := range all {
		if one == e {
			return true
		}
	}
	return false
}

// seal counts what a check of the seals came to.
func (r *replay) seal(e *Entry, at int) {
	x := &r.lots[at]
	if !x.entry.Event.heats() {
		r.dispute(x)
		r.say(e, RuleBatch, "which is no load of a canner")
		return
	}
	there := x.unchecked
	if e.Event == Failed {
		there += x.good
	}
	if e.Count > there {
		r.dispute(x)
		r.sayAmount(e, e.Count, there)
		return
	}
	some := min(e.Count, x.unchecked)
	x.unchecked -= some
	if e.Event == Sealed {
		x.good += some
		return
	}
	x.good -= e.Count - some
	x.failed += e.Count
	r.recount(at)
}

// leave counts what is eaten, given away or thrown out. Only food is eaten or given away; what is thrown out is first
// what did not seal.
func (r *replay) leave(e *Entry, at int) {
	x := &r.lots[at]
	if e.Event == ThrownOut {
		if e.Count > x.left() {
			r.dispute(x)
			r.sayAmount(e, e.Count, x.left())
			return
		}
		r.thrown += r.out(at, e.Count, &x.failed, &x.unchecked, &x.good)
		return
	}
	if e.Count > x.good {
		if e.Count <= x.left() {
			r.say(e, RuleNotFood, "more than is sealed")
		} else {
			r.sayAmount(e, e.Count, x.good)
		}
		r.dispute(x)
		return
	}
	if !x.verdict().Passes() {
		x.eatenBad = true
		r.findings = append(r.findings, verdict.Finding{
			Rule: RuleNotFood, What: about(e), Kind: verdict.Different, Verdict: verdict.NotMet,
			Stated: units.InWords(x.verdict().String()), Wanted: units.InWords("a pass"),
		})
	}
	if e.Day > x.until {
		r.sayOld(e, x)
	}
	m := r.out(at, e.Count, &x.good)
	if e.Event == GivenAway {
		r.given += m
		return
	}
	r.eaten += m
	if e.Day >= r.ledger.Start {
		r.week.Eaten += m
	}
}
