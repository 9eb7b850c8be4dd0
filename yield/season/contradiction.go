package season

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// The rules that a ledger is held against.
const (
	RuleBatch      verdict.Rule = "season.batch"            // every batch is begun once, of what it can be made of
	RuleOrder      verdict.Rule = "season.order"            // nothing happens to a batch before it is begun
	RuleAmount     verdict.Rule = "season.amount"           // no more than there is
	RuleAudit      verdict.Rule = "season.audit"            // the audit of every load is stated and a pass
	RuleWithin     verdict.Rule = "season.unsealed-in-time" // unsealed jars are dealt with within 24 h of the heat
	RuleKeeping    verdict.Rule = "season.keeping-time"     // nothing is eaten or made of what is past its time
	RuleNotFood    verdict.Rule = "season.not-food"         // only food is eaten or given away
	RuleDaily      verdict.Rule = "season.daily-limit"
	RulePossession verdict.Rule = "season.possession-limit"
	RuleFresh      verdict.Rule = "season.fresh-limit"
	RuleQuota      verdict.Rule = "season.processed-quota"
	RuleCap        verdict.Rule = "season.annual-cap"
)

var reprocessing = cite.Citation{
	Source: cite.USDAGuide1Rev2015, Where: "Reprocessing unsealed jars, p. 1-26", Basis: cite.Read,
}

// about is what a finding is of: "eaten of P1 on 2026-07-14".
func about(e *Entry) string {
	return e.Event.String() + " of " + e.Batch + " on " + e.Day.String()
}

// say adds a contradiction that has no figure.
func (r *replay) say(e *Entry, rule verdict.Rule, why string) {
	r.findings = append(r.findings, verdict.Finding{
		Rule: rule, What: about(e) + ", " + why, Kind: verdict.Impossible, Verdict: verdict.CannotTell,
	})
}

// sayOrder adds that something happens to a batch before it is begun, or to one that was never made.
func (r *replay) sayOrder(e *Entry, x *stored) {
	if e.Day < x.entry.Day {
		r.say(e, RuleOrder, "before it is begun on "+x.entry.Day.String())
		return
	}
	r.say(e, RuleBatch, "for the entry that begins it was not counted")
}

// sayAmount adds that more is stated than there is.
func (r *replay) sayAmount(e *Entry, stated, there int) {
	r.findings = append(r.findings, verdict.Finding{
		Rule: RuleAmount, What: about(e), Kind: verdict.Over, Verdict: verdict.CannotTell,
		Stated: units.Exactly(units.Count(stated)), Wanted: units.AtMost(units.Count(there)),
		By: units.AmountOf(units.Count(stated - there)),
	})
}

// sayOld adds that something is past its keeping time, and returns what that makes of it: nothing where the time is
// one of quality.
func (r *replay) sayOld(e *Entry, x *stored) verdict.Verdict {
	keeps := r.ledger.Fresh
	if x.product >= 0 {
		keeps = r.ledger.Products[x.product].Keeps
	}
	f := verdict.Finding{
		Rule: RuleKeeping, What: about(e), Kind: verdict.TooLong, Verdict: verdict.NotMet, Citation: keeps.Citation,
		Stated: units.Exactly(daysFrom(x.entry.Day, e.Day)), Wanted: units.AtMost(daysFrom(x.entry.Day, x.until)),
		By: units.AmountOf(time.Duration(e.Day-x.until) * 24 * time.Hour),
	}
	if daysFrom(x.entry.Day, x.until) != keeps.Time { // whole days of it
		f.Citation = cite.Citation{}
	}
	made := f.Verdict
	if x.quality {
		f.Verdict, made = verdict.Differs, verdict.Met
	}
	r.findings = append(r.findings, f)
	return made
}

// daysFrom is the longest that something is kept from one day to another, whatever the hours.
func daysFrom(made, on Day) time.Duration { return time.Duration(on-made+1) * 24 * time.Hour }

// endDay holds a day against the limits. Whether something was eaten before more was kept, days do not say: what is
// within a limit only by that order cannot be told.
func (r *replay) endDay() {
	rule := r.ledger.Rule
	if r.kept > rule.Anglers*rule.Daily {
		r.sayLimit(RuleDaily, "fish kept", r.kept, rule.Anglers*rule.Daily, verdict.NotMet)
	}
	if most := rule.Anglers * rule.Annual; most > 0 && r.kept > 0 && r.day >= r.ledger.Start && r.used > most {
		r.sayLimit(RuleCap, "fish kept in the year until then,", r.used, most, verdict.NotMet)
	}
	for i, c := range [...]struct {
		rule             verdict.Rule
		what             string
		end, peak, limit int
	}{
		{RulePossession, "fish held", r.held.All, r.morning.All + r.kept, r.limits.All},
		{RuleFresh, "fresh fish held", r.held.Fresh, r.morning.Fresh + r.kept, r.limits.Fresh},
		{RuleQuota, "preserved fish held", r.held.Preserved, r.held.Preserved, r.limits.Preserved},
	} {
		over := c.end - c.limit
		switch {
		case c.limit == 0:
		case over > 0:
			if over > r.over[i] {
				r.sayLimit(c.rule, c.what, c.end, c.limit, verdict.NotMet)
			}
		case c.peak > c.limit && r.kept > 0:
			r.sayLimit(c.rule, c.what, c.peak, c.limit, verdict.CannotTell)
		}
		r.over[i] = max(0, over)
	}
}

func (r *replay) sayLimit(rule verdict.Rule, what string, got, limit int, v verdict.Verdict) {
	r.findings = append(r.findings, verdict.Finding{
		Rule: rule, What: what + " on " + r.day.String(), Kind: verdict.Over, Verdict: v,
		Stated: units.Exactly(units.Count(got)), Wanted: units.AtMost(units.Count(limit)),
		By: units.AmountOf(units.Count(got - limit)),
	})
}
