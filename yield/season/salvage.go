package season

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// again is how long after the heat unsealed jars may be processed again, frozen or refrigerated.
const again = 24 * time.Hour

// inTime is whether unsealed jars are dealt with in time: on the day of the heat they are, on the day after the entry
// must say.
func (r *replay) inTime(e *Entry, p *stored) verdict.Verdict {
	f := verdict.Finding{
		Rule: RuleWithin, What: about(e), Kind: verdict.TooLong, Verdict: verdict.NotMet, Wanted: units.AtMost(again),
		Citation: reprocessing,
	}
	apart := time.Duration(e.Day - p.entry.Day)
	shortest, longest := max(0, apart-1)*24*time.Hour, (apart+1)*24*time.Hour
	switch after := e.After.Value; {
	case e.After.Given && (after < shortest || after > longest):
		f.Kind, f.Verdict = verdict.Impossible, verdict.CannotTell
		f.Stated, f.Wanted = units.Exactly(after), units.Between(shortest, longest).With("by the days")
		f.Citation = cite.Citation{}
	case e.After.Given && after > again:
		f.Stated, f.By = units.Exactly(after), units.AmountOf(after-again)
	case e.After.Given || apart == 0:
		return verdict.Met
	case apart == 1:
		f.Kind, f.Verdict = verdict.Missing, verdict.CannotTell
	default:
		f.Stated = units.MoreThan(shortest)
	}
	r.findings = append(r.findings, f)
	return f.Verdict
}
