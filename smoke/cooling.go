package smoke

import (
	"sort"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// CoolingStep is one step of a cooling rule: from below From down to To. From is not set where the clock runs from the end of the
// heating, taken as the highest reading. Of a step InAll, Within counts from the start of the first step.
type CoolingStep struct {
	From, To units.Temperature
	Within   time.Duration
	InAll    bool
}

// CoolingRule is one published rule for fish that was smoked or cooked hot. The rules disagree; they are not merged.
type CoolingRule struct {
	ID       string
	Steps    [2]CoolingStep // a second step that is zero is none
	Fish     string
	Place    string
	Citation cite.Citation
}

// CoolingRules returns the published rules. The slice is the caller's own.
func CoolingRules() []CoolingRule { return append([]CoolingRule(nil), coolingRules[:]...) }

// DefaultCoolingRule returns 60 to 21 °C in 2 h and on to 4 °C in 4 h more, the strictest in hours that was read for smoked fish
// and leads into the cold. The French rule is stricter at its start and ends at 10 °C; Michigan says "at once" and no hours.
func DefaultCoolingRule() CoolingRule { return coolingRules[0] }

// CoolingTook is what a record says of one step: how long the slowest probe took, or has taken when the record ends before it is there.
type CoolingTook struct {
	Step    CoolingStep
	Verdict Verdict
	Took    time.Duration
	Probe   int
}

// Cooling is what a record of the core says about a CoolingRule. The worst step decides: NotMet before CannotTell before Met.
type Cooling struct {
	Verdict  Verdict
	Rule     CoolingRule
	Steps    []CoolingTook
	Cautions []cite.Caution
}

// coldestCore is colder than fish gets by cooling: a probe that shows -127 °C has come loose, and must not pass for cold fish.
var coldestCore = units.Celsius(-40)

// CheckCooling judges records of the core, from before the end of the heating on, against a cooling rule; the slowest probe decides each
// step. The clock of a step starts when the core first falls below From after its highest reading and stops when it is at To and stays there
// until the time is up, each rounded to the nanosecond that makes it longer; what comes after is storage. It is CannotTell when the record
// begins below From, or for a clock from the end of the heating does not show that end at 145 °F or above, when it ends above To before the
// time is up, and when it has a gap longer than maxGap while the clock runs and would be met only by trusting the line across. MaxGap must be above 0
// and at most an hour, and a caller's own rule must have steps that go down, to 70 °F or below, in at most 12 h: otherwise a units.RangeError;
// probes as for CheckHold, and none below -40 °C: otherwise a ProbeError.
func CheckCooling(rule CoolingRule, maxGap time.Duration, probes ...series.Series[units.Temperature]) (Cooling, error) {
	if err := units.CheckDuration("longest gap", maxGap, 1, time.Hour); err != nil {
		return Cooling{}, err
	}
	if err := rule.check(); err != nil {
		return Cooling{}, err
	}
	if err := checkProbes(probes); err != nil {
		return Cooling{}, err
	}
	for i, core := range probes {
		if lowest, _ := core.Min(); lowest.Value.Below(coldestCore) {
			fault := units.RangeError{What: "core temperature", Got: lowest.Value.String(), Low: coldestCore.String() + ", below which the probe has come loose"}
			return Cooling{}, ProbeError{Probe: i, At: lowest.At, Err: fault}
		}
	}
	c := Cooling{Verdict: Met, Rule: rule, Cautions: []cite.Caution{coldAtOnce, notByHeatAlone}}
	if rule.Citation.Unverified() {
		c.Cautions = append(c.Cautions, cite.Caution{Text: "this cooling rule was not seen in print, and the sources disagree", Citation: rule.Citation})
	}
	for _, step := range rule.Steps {
		if !step.To.IsSet() {
			continue
		}
		var worst CoolingTook
		for i, core := range probes {
			if t := took(core, rule.Steps[0], step, maxGap); i == 0 || worse(t, worst) {
				t.Probe = i
				worst = t
			}
		}
		c.Steps = append(c.Steps, worst)
		c.Verdict = worseOf(c.Verdict, worst.Verdict)
	}
	return c, nil
}

// What a cooling may be judged against: no published step ends above 70 °F or takes longer than 12 h.
var (
	warmestEnd = units.Fahrenheit(70)
	coldestEnd = units.Celsius(-20)
)

const longestCooling = 12 * time.Hour

// check refuses what no rule asks for; a step that is not there is none.
func (r CoolingRule) check() error {
	for i, step := range r.Steps {
		if i > 0 && step == (CoolingStep{}) {
			continue
		}
		if err := units.CheckTemperature("end of the cooling", step.To, coldestEnd, warmestEnd); err != nil {
			return err
		}
		if err := units.CheckDuration("time of the cooling", step.Within, 1, longestCooling); err != nil {
			return err
		}
		if step.From.IsSet() && !step.From.Above(step.To) {
			return units.RangeError{What: "start of the cooling", Got: step.From.String(), Low: "above its end, " + step.To.String()}
		}
	}
	return nil
}

// worse: NotMet before CannotTell before Met, and within one the longer time.
func worse(a, b CoolingTook) bool {
	if a.Verdict != b.Verdict {
		return worseOf(a.Verdict, b.Verdict) == a.Verdict
	}
	return a.Took > b.Took
}

func worseOf(a, b Verdict) Verdict {
	if a == NotMet || b == NotMet {
		return NotMet
	}
	if a == CannotTell || b == CannotTell {
		return CannotTell
	}
	return Met
}

// took times one step on one probe.
func took(core series.Series[units.Temperature], first, step CoolingStep, maxGap time.Duration) CoolingTook {
	t := CoolingTook{Step: step}
	from := step.From
	if step.InAll {
		from = first.From
	}
	began, seen := fellBelow(core, from)
	ended, there := downTo(core, step.To, began+step.Within)
	if ended > began {
		t.Took = ended - began
	}
	switch {
	case t.Took > step.Within:
		t.Verdict = NotMet
	case seen && there && longestGapIn(core, series.Stretch{From: began, To: ended}).Length() <= maxGap:
		t.Verdict = Met
	}
	return t
}

// fellBelow returns when the core falls below a temperature after its highest reading, that reading itself when none is set, and false when
// the heat before was not seen: none at or above it, or with none set, no end of a heating; then it is the start of the record.
func fellBelow(core series.Series[units.Temperature], from units.Temperature) (time.Duration, bool) {
	first, _ := core.First()
	highest, _ := core.Max()
	switch {
	case !from.IsSet() && highest.At > first.At && highest.Value.AtLeast(coldestLimit): // else it begins on the way down, or was never cooked
		return highest.At, true
	case !from.IsSet() || highest.Value.Below(from):
		return first.At, false
	}
	for i := 1; ; i++ {
		a, _ := core.At(i - 1)
		b, more := core.At(i)
		switch {
		case !more:
			return a.At, true
		case a.At >= highest.At && b.Value.Below(from):
			return a.At + warmPart(a, b, from), true
		}
	}
}

// downTo returns when the core comes to a temperature or below and stays until the time is up, or, when it is not there by then, for good; and
// false when the record ends before that; then it is the end of the record.
func downTo(core series.Series[units.Temperature], to units.Temperature, due time.Duration) (time.Duration, bool) {
	last := core.Len() - 1
	if then, err := core.ValueAt(due); err == nil && !then.Above(to) { // what comes after is storage
		last = sort.Search(last, func(i int) bool { r, _ := core.At(i); return r.At >= due })
		if r, _ := core.At(last); r.Value.Above(to) {
			last-- // it rises through due and after it
		}
	}
	b, _ := core.At(last)
	if b.Value.Above(to) {
		return b.At, false
	}
	for i := last - 1; i >= 0; i-- {
		a, _ := core.At(i)
		if a.Value.Above(to) {
			return min(b.At, a.At+warmPart(a, b, to)+1), true // warmPart rounds down
		}
		b = a
	}
	return b.At, true
}

var coldAtOnce = cite.Caution{
	Text:     "cool smoked fish at once to 38 °F (3.3 °C) or below: the hours of a rule are a limit, not a plan",
	Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.8(1)", Basis: cite.Read},
}
