package smoke

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// CoolingTook is what a record says of one step: how long the slowest probe took, or has taken when the record ends before it is there.
type CoolingTook struct {
	Step    CoolingStep
	Verdict verdict.Verdict `wire:"always"`
	Took    time.Duration   `wire:"always"`
	Probe   int             // from zero
}

// Cooling is what a record of the core says about a CoolingRule. The worst step decides.
type Cooling struct {
	verdict.Report
	Rule  CoolingRule
	Steps []CoolingTook
}

// MarshalJSON writes the cooling as an app shows it.
func (c Cooling) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (c *Cooling) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// AuditCooling judges a record of the core, from before the end of the heating on, against a cooling rule; the slowest
// probe decides each step. The clock of a step starts when the core first falls below From after its highest reading, that
// of a second step no later than the first ended, and stops when the core is at To and stays there until the time is up,
// each rounded to the nanosecond that makes it longer; what comes after is storage. Fish that is heated again before it is
// cold takes the time it had spent with it, and heated again once it was cold, has another cooling to go through.
//
// It is CannotTell when the record begins below From, or for a clock from the end of the heating does not show that end at
// 145 °F or above, when it ends above To before the time is up, when it has a gap longer than MaxGap while the clock runs
// and would be met only by trusting the line across, and when it is met only by readings that no core can have: colder than
// a bare slab gets in ice water, or warmer than its air. MaxGap must be 1 s to an hour, and a caller's own rule must have
// steps that go down, to 70 °F or below, in at most 12 h: otherwise a units.RangeError; probes as for AuditHold:
// otherwise a ProbeError.
func AuditCooling(rule CoolingRule, r Record) (Cooling, error) {
	if err := r.check(time.Hour); err != nil {
		return Cooling{}, err
	}
	if err := rule.check(); err != nil {
		return Cooling{}, err
	}
	all, err := r.checkCores()
	if err != nil {
		return Cooling{}, err
	}
	c := Cooling{Rule: rule}
	found := c.judge(r)
	if found == nil {
		found = c.doubted(r, r.doubt(reachOf(r.Piece, iceWaterFilm), all))
	}
	c.Report = verdict.Of(found, coolingCautions(rule, r.Site))
	return c, nil
}

// doubted says what is not believed of a record that meets the rule, where it would not without that.
func (c Cooling) doubted(r Record, d doubt) []verdict.Finding {
	if d.same < 0 && d.why == nil {
		return nil
	}
	believed := r
	believed.Cores = d.believedOnly(r.Cores)
	for _, core := range believed.Cores {
		if core.Len() == 0 {
			return d.findings(r)
		}
	}
	if again := (&Cooling{Rule: c.Rule}); d.same < 0 && again.judge(believed) == nil {
		return nil
	}
	return d.findings(r)
}

// judge times the steps, and says why they are not met.
func (c *Cooling) judge(r Record) (found []verdict.Finding) {
	worst, why := [2]CoolingTook{}, [2]clock{}
	for probe, core := range r.Cores {
		for n, part := range c.Rule.coolings(core) {
			var before *clock
			for i, step := range c.Rule.Steps {
				if !step.To.IsSet() {
					continue
				}
				t, went := c.Rule.took(part, i, r.MaxGap, before)
				t.Probe, before = probe, &went
				if probe == 0 && n == 0 || t.worse(worst[i]) {
					worst[i], why[i] = t, went
				}
			}
		}
	}
	for i, step := range c.Rule.Steps {
		if !step.To.IsSet() {
			continue
		}
		c.Steps = append(c.Steps, worst[i])
		if worst[i].Verdict != verdict.Met {
			found = append(found, why[i].finding(r, c.Rule, i, worst[i]))
		}
	}
	return found
}

// worse reports whether a probe or a cooling decides a step before another.
func (t CoolingTook) worse(than CoolingTook) bool {
	return t.Verdict > than.Verdict || t.Verdict == than.Verdict && t.Took > than.Took
}

// coolingSteps are the steps as a finding names them.
var coolingSteps = [...]string{"cooling, first step", "cooling, second step"}

// finding says why a step, counted from zero, is not met or cannot be told.
func (w clock) finding(r Record, rule CoolingRule, i int, t CoolingTook) verdict.Finding {
	f := verdict.Finding{
		Rule: [...]verdict.Rule{RuleCooling, RuleColdFinish}[i], What: r.named(coolingSteps[i], t.Probe), Verdict: t.Verdict, When: units.State(w.Stretch),
		Wanted: units.AtMost(t.Step.Within), Citation: rule.Citation,
	}
	switch {
	case t.Verdict == verdict.NotMet:
		f.Kind, f.Stated, f.By = verdict.TooLong, units.Exactly(t.Took), units.AmountOf(t.Took-t.Step.Within)
		if !w.there {
			f.Stated = units.AtLeast(t.Took)
		}
		if w.all != w.Stretch {
			f.When, f.Stated = units.State(w.all), f.Stated.With("in all")
		}
	case !w.seen || !w.there: // the start was not recorded, or the record ends too soon
		f.Kind = verdict.Missing
	default:
		f.Kind, f.When = verdict.Unobserved, units.State(w.gap)
	}
	return f
}

func coolingCautions(rule CoolingRule, site Site) []cite.Caution {
	all := make([]cite.Caution, 0, 4)
	if site > InThickest {
		all = append(all, badSite)
	}
	all = append(all, coldAtOnce, notByHeatAlone)
	if rule.Citation.Unverified() {
		all = append(all, cite.Caution{ID: "smoke.cooling-unseen", Text: "This cooling rule was not seen in print, and the sources disagree.", Citation: rule.Citation})
	}
	return all
}
