package smoke

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
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

// coldestCore is colder than fish gets by cooling: a probe that shows -127 °C has come loose, and must not pass for cold fish.
var coldestCore = units.Celsius(-40)

// AuditCooling judges a record of the core, from before the end of the heating on, against a cooling rule; the slowest
// probe decides each step. The clock of a step starts when the core first falls below From after its highest reading and
// stops when it is at To and stays there until the time is up, each rounded to the nanosecond that makes it longer; what
// comes after is storage. It is CannotTell when the record begins below From, or for a clock from the end of the heating
// does not show that end at 145 °F or above, when it ends above To before the time is up, and when it has a gap longer than
// MaxGap while the clock runs and would be met only by trusting the line across. MaxGap must be above 0 and at most an
// hour, and a caller's own rule must have steps that go down, to 70 °F or below, in at most 12 h: otherwise a
// units.RangeError; probes as for AuditHold, and none below -40 °C: otherwise a ProbeError.
func AuditCooling(rule CoolingRule, r Record) (Cooling, error) {
	if err := r.checkGap(time.Hour); err != nil {
		return Cooling{}, err
	}
	if err := rule.check(); err != nil {
		return Cooling{}, err
	}
	if err := r.checkCores(); err != nil {
		return Cooling{}, err
	}
	for i, core := range r.Cores {
		if lowest, _ := core.Min(); lowest.Value.Below(coldestCore) {
			fault := units.RangeError{
				What: "core temperature", Got: inBoth(lowest.Value), Low: inBoth(coldestCore) + ", below which the probe has come loose",
			}
			return Cooling{}, ProbeError{Probe: i, At: lowest.At, Err: fault}
		}
	}
	c := Cooling{Rule: rule}
	var found []verdict.Finding
	for i, step := range rule.Steps {
		if !step.To.IsSet() {
			continue
		}
		worst, why := slowest(r, rule, step)
		c.Steps = append(c.Steps, worst)
		if worst.Verdict != verdict.Met {
			found = append(found, why.finding(r, rule, i, worst))
		}
	}
	c.Report = verdict.Of(found, coolingCautions(rule))
	return c, nil
}

// slowest is the probe that is worst in a step, and how it went there.
func slowest(r Record, rule CoolingRule, step CoolingStep) (worst CoolingTook, why clock) {
	for i, core := range r.Cores {
		t, went := took(core, rule.Steps[0], step, r.MaxGap)
		if i == 0 || t.Verdict > worst.Verdict || t.Verdict == worst.Verdict && t.Took > worst.Took {
			t.Probe = i
			worst, why = t, went
		}
	}
	return worst, why
}

// clock is how a step went on one probe: from when to when it ran, whether its start was seen and its end reached, and the
// longest gap while it ran.
type clock struct {
	series.Stretch
	seen, there bool
	gap         series.Stretch
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
	case !w.seen || !w.there: // the start was not recorded, or the record ends too soon
		f.Kind = verdict.Missing
	default:
		f.Kind, f.When = verdict.Unobserved, units.State(w.gap)
	}
	return f
}

func coolingCautions(rule CoolingRule) []cite.Caution {
	all := make([]cite.Caution, 0, 3)
	all = append(all, coldAtOnce, notByHeatAlone)
	if rule.Citation.Unverified() {
		all = append(all, cite.Caution{ID: "smoke.cooling-unseen", Text: "This cooling rule was not seen in print, and the sources disagree.", Citation: rule.Citation})
	}
	return all
}
