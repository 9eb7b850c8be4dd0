package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// The rules of what cannot be judged.
const (
	RuleBelieved     verdict.Rule = "coldchain.believed"     // what no fish and no working probe does
	RuleSurroundings verdict.Rule = "coldchain.surroundings" // the core warmed, and in what was not stated
	RuleRaw          verdict.Rule = "coldchain.raw"          // fish that is called raw, or of which it is not known, was hot
	RuleLaterStep    verdict.Rule = "coldchain.later-step"   // what the verdict relies on
)

var (
	sparseSource = cite.Citation{Where: "longest time between readings, by what the short rules allow above 70 °F", Basis: cite.Practice}
	stuckSource  = cite.Citation{Where: "a probe that stands still in a refrigerator that cycles", Basis: cite.Practice}
	colderSource = cite.Citation{Where: "what is colder cools, and what is warmer warms", Basis: cite.Practice}
	rawSource    = chain.ReadIn(cite.FDAHazardsGuide2020, "Appendix 4, summary, p. 417")
	ambient      = chain.ReadIn(cite.FDAHazardsGuide2020, "ch. 12, pp. 211-212")
	laterSource  = chain.ReadIn(cite.FDAHazardsGuide2020, "ch. 12, p. 215")
)

// doubtful reports whether something of the record cannot be believed.
func (f *followed) doubtful() bool {
	return f.Moved.Given || f.Stuck.Given || f.Against.Given || f.Sparse.Given || f.mostly()
}

// mostly reports whether so many readings were left out as of no core that nobody knows which are of it.
func (f *followed) mostly() bool {
	out := f.Doubted + f.Dropouts
	return out >= fewDoubted && out > f.Seen/mostDoubted
}

// A quarter of the readings may be those of a probe that was loose, or moved and put back, and always two.
const (
	mostDoubted = 4
	fewDoubted  = 3
)

// doubts are the findings about what cannot be believed, and what is not known of where the fish lay.
func (r *Report) doubts(all []verdict.Finding, seen *followed) []verdict.Finding {
	if m := seen.Moved; m.Given {
		all = append(all, impossible("reading of the core, "+text(m.Value.From)+" before it", m.Value.When, units.Exactly(m.Value.Here),
			units.Figure{}, chain.BeliefCitation(), probeInPlace))
	}
	if m := seen.Stuck; m.Given {
		all = append(all, impossible("the same reading of the core, "+text(m.Value.Here), m.Value.When, units.Exactly(m.Value.When.Length()),
			units.Figure{}, stuckSource, lookAtProbe))
	}
	if m := seen.Against; m.Given {
		wanted := units.AtMost(m.Value.From.Add(colderBy))
		if m.Value.Here.Below(m.Value.From) {
			wanted = units.AtLeast(m.Value.From.Add(-colderBy))
		}
		all = append(all, impossible("core", m.Value.When, units.Exactly(m.Value.Here), wanted.With("in what is around it"),
			colderSource, probeInPlace))
	}
	if seen.mostly() {
		all = append(all, impossible("readings that are not of a core", series.Stretch{From: seen.Start, To: seen.End},
			units.Exactly(units.Count(seen.Doubted+seen.Dropouts)), units.AtMost(units.Count(seen.Seen/mostDoubted)), chain.BeliefCitation(), probeInPlace))
	}
	if s := seen.Sparse; s.Given {
		all = append(all, verdict.Finding{
			Rule: RuleRecorded, What: "time between two readings", Kind: verdict.Unobserved, Verdict: verdict.CannotTell,
			When: s, Stated: units.Exactly(s.Value.Length()), Wanted: units.AtMost(longestBlind),
			By: units.AmountOf(s.Value.Length() - longestBlind), Citation: sparseSource, Known: vouch,
		})
	}
	if top := units.Fahrenheit(guideTop); r.Terms.Product != CookedFish && r.Highest.Value.Above(top) {
		f := impossible("raw fish", series.Stretch{From: r.Highest.At, To: r.Highest.At}, units.Exactly(r.Highest.Value),
			units.AtMost(top).With("to be called raw"), rawSource, noLongerRaw)
		f.Rule = RuleRaw
		all = append(all, f)
	}
	if seen.Blind > 0 && r.blindDecides() {
		all = append(all, verdict.Finding{
			Rule: RuleSurroundings, What: "air or surface around the fish while its core warms", Kind: verdict.Missing,
			Verdict: verdict.CannotTell, When: seen.Unseen, Citation: ambient, Known: stateAround,
		})
	}
	return all
}

// blindDecides reports whether a rule that governs cannot tell for what was around the warming core.
func (r *Report) blindDecides() bool {
	for i := range r.Allowances {
		if a := &r.Allowances[i]; a.Spared == 0 && a.Verdict == verdict.CannotTell {
			return true
		}
	}
	return false
}

// condition is what the verdict relies on, where a limit that does not decide for it is not kept.
func (r *Report) condition() (verdict.Finding, bool) {
	if !r.Terms.relaxed() || r.Terms.Later.Given {
		return verdict.Finding{}, false
	}
	for i := range r.Allowances {
		if a := &r.Allowances[i]; a.Spared == HeatUndoesIt && a.Verdict != verdict.Met {
			return verdict.Finding{
				Rule: RuleLaterStep, What: "verdict of the later step, " + r.Terms.Use.String(), Kind: verdict.Missing,
				Verdict: verdict.Met, Citation: laterSource, Known: laterStep,
			}, true
		}
	}
	return verdict.Finding{}, false
}

func impossible(what string, when series.Stretch, stated, wanted units.Figure, c cite.Citation, known cite.Caution) verdict.Finding {
	return verdict.Finding{
		Rule: RuleBelieved, What: what, Kind: verdict.Impossible, Verdict: verdict.CannotTell, When: units.State(when),
		Stated: stated, Wanted: wanted, Citation: c, Known: known,
	}
}

func text(t units.Temperature) string { return units.AmountOf(t).Text(units.Both, units.Nearest) }

// unobserved is the finding about a gap that is longer than is trusted.
func (r *Report) unobserved(gap time.Duration) verdict.Finding {
	return verdict.Finding{
		Rule: RuleRecorded, What: "time between two readings", Kind: verdict.Unobserved, Verdict: verdict.CannotTell,
		When: units.State(r.LongestGap), Stated: units.Exactly(gap), Wanted: units.AtMost(r.Terms.MaxGap),
		By: units.AmountOf(gap - r.Terms.MaxGap),
	}
}

var (
	probeInPlace = cite.Caution{
		ID: "coldchain.probe-in-place", Deciding: true,
		Text: "Put the probe into the thickest fish and leave it there: keep what it showed elsewhere out of the record.",
	}
	lookAtProbe = cite.Caution{
		ID: "coldchain.look-at-probe", Deciding: true,
		Text:     "Put the probe into ice slurry, which is 32 °F (0 °C), or boiling water corrected for altitude, and see it move.",
		Citation: chain.ReadIn(cite.FDAHazardsGuide2020, "ch. 13, p. 265"),
	}
	vouch = cite.Caution{
		ID: "coldchain.vouch", Deciding: true,
		Text: "State where the fish lay in that time, or record it more often.",
	}
	stateAround = cite.Caution{
		ID: "coldchain.state-around", Deciding: true,
		Text: "While the core warms the outside is warmer than it: record the air or the surface, or state it, " +
			"such as refrigerator, 38 °F.",
		Citation: ambient,
	}
	laterStep = cite.Caution{
		ID: "coldchain.later-step", Deciding: true,
		Text:     "The verdict holds only if that step is met: if it is not, or the plan changes, every limit governs.",
		Citation: laterSource,
	}
)
