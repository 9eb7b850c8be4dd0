package keeping

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// ThawLine is one published demand held against a plan, met or not: what it is of, what is demanded and what was
// planned, not stated where the plan does not say.
type ThawLine struct {
	Rule     verdict.Rule
	What     string
	Wanted   units.Figure
	Planned  units.Figure
	Verdict  verdict.Verdict `wire:"always"`
	Citation cite.Citation
}

// ThawReport is a plan held against every demand that applies. Its verdict is the worst of the lines.
type ThawReport struct {
	verdict.Report
	Plan  ThawPlan
	Lines []ThawLine
}

// MarshalJSON writes the report as an app shows it.
func (r ThawReport) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *ThawReport) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// thawLongest is what the Food Code allows raw portions above 41 °F.
const thawLongest = 4 * time.Hour

// CheckThaw holds a plan of thawing against the published demands: the refrigerator and the fish in it at or below 41
// °F; running water at or below 70 °F, raw fish above 41 °F for at most 4 h in all and ready-to-eat fish never; a
// sealed pack opened before; fish for smoking never above 38 °F. Still water and the counter are in no published list
// found, and fail. The medium must be -5 to 60 °C, a stated time 0 to 7 days: otherwise a units.RangeError. A method
// that is not set is a units.UnsetError, an unknown one a units.UnknownError. What the plan leaves out is CannotTell.
func CheckThaw(plan ThawPlan) (ThawReport, error) {
	if err := thawMethods.Check(plan.Method); err != nil {
		return ThawReport{}, err
	}
	low, high := units.Celsius(-5), units.Celsius(60)
	if err := units.CheckTemperature("around the thawing fish", plan.Medium, low, high); err != nil {
		return ThawReport{}, err
	}
	if err := units.CheckDuration("time above 41 °F", plan.FishAbove41.Value, 0, 7*chain.Day); err != nil {
		return ThawReport{}, err
	}
	c := thawCheck{plan: plan}
	switch plan.Method {
	case ThawInRefrigerator:
		c.colder(RuleThawRefrigerator, "around the fish", thawRows[thawRefrigerator])
		if plan.FishAbove41.Given {
			c.warmTime()
		}
	case ThawInRunningWater:
		c.colder(RuleThawWater, "the running water", thawRows[thawWater])
		c.warmTime()
	default:
		c.add(verdict.Finding{
			Rule: RuleThawMethod, What: "method", Kind: verdict.Different, Verdict: verdict.NotMet,
			Stated:   units.InWords(plan.Method.String()),
			Wanted:   units.InWords(ThawInRefrigerator.String() + " or " + ThawInRunningWater.String()),
			Citation: thawRows[thawRefrigerator].citation,
		})
		c.warmTime()
	}
	if plan.ForSmoking {
		c.smoking()
	}
	if plan.SealedPack {
		c.pack()
	}
	return ThawReport{Report: verdict.Of(c.findings, plan.cautionsOf()), Plan: plan, Lines: c.lines}, nil
}

// thawCheck collects what is held against a plan.
type thawCheck struct {
	plan     ThawPlan
	lines    []ThawLine
	findings []verdict.Finding
}

// add enters a demand, and what it finds where it is not met.
func (c *thawCheck) add(f verdict.Finding) {
	c.lines = append(c.lines, ThawLine{f.Rule, f.What, f.Wanted, f.Stated, f.Verdict, f.Citation})
	if f.Verdict != verdict.Met {
		c.findings = append(c.findings, f)
	}
}

// colder is that the medium is cold enough.
func (c *thawCheck) colder(rule verdict.Rule, what string, row thawRow) {
	f := verdict.Finding{
		Rule: rule, What: what, Verdict: verdict.Met, Stated: units.Exactly(c.plan.Medium), Wanted: units.AtMost(row.atMost),
		Citation: row.citation,
	}
	if c.plan.Medium.Above(row.atMost) {
		f.Kind, f.Verdict = verdict.TooWarm, verdict.NotMet
		f.By = units.AmountOf(c.plan.Medium).Minus(units.AmountOf(row.atMost))
	}
	c.add(f)
}

// warmTime is the time above 41 °F: four hours raw, none ready to eat and none in the refrigerator.
func (c *thawCheck) warmTime() {
	row := thawRows[thawRaw]
	switch {
	case c.plan.Method == ThawInRefrigerator:
		row = thawRows[thawRefrigerator]
	case c.plan.ReadyToEat:
		row = thawRows[thawReady]
	}
	c.add(c.warm(RuleThawWarmTime, "time that the fish is too warm, all of it together", row.allowed, row.citation))
}

// warm holds the time above 41 °F against what is allowed.
func (c *thawCheck) warm(rule verdict.Rule, what string, allowed time.Duration, from cite.Citation) verdict.Finding {
	above := c.plan.FishAbove41
	f := verdict.Finding{Rule: rule, What: what, Verdict: verdict.Met, Wanted: units.AtMost(allowed), Citation: from}
	switch {
	case !above.Given:
		f.Kind, f.Verdict = verdict.Missing, verdict.CannotTell
	case above.Value > allowed:
		f.Kind, f.Verdict, f.By = verdict.TooLong, verdict.NotMet, units.AmountOf(above.Value-allowed)
		f.Stated = units.Exactly(above.Value)
	default:
		f.Stated = units.Exactly(above.Value)
	}
	return f
}

// smoking is the stricter rule for fish that will be smoked: inside never above 38 °F. A medium at or below that proves
// it, but where the fish was warmer afterwards, in the handling.
func (c *thawCheck) smoking() {
	row := thawRows[thawSmoking]
	if c.plan.FishAbove41.Given && c.plan.FishAbove41.Value > 0 {
		c.add(c.warm(RuleThawSmoking, "time that fish for smoking is too warm", 0, row.citation))
		return
	}
	f := verdict.Finding{
		Rule: RuleThawSmoking, What: "fish for smoking, inside", Kind: verdict.Missing, Verdict: verdict.CannotTell,
		Wanted: units.AtMost(row.atMost), Citation: row.citation,
	}
	if !c.plan.Medium.Above(row.atMost) {
		f.Kind, f.Verdict, f.Stated = 0, verdict.Met, units.AtMost(c.plan.Medium)
	}
	c.add(f)
}

// pack is that a sealed pack is opened before it thaws.
func (c *thawCheck) pack() {
	f := verdict.Finding{
		Rule: RuleThawPack, What: "the sealed pack", Verdict: verdict.Met, Stated: units.InWords("opened"),
		Wanted: units.InWords("opened before it thaws"), Citation: thawRows[thawPack].citation,
	}
	if !c.plan.Opened {
		f.Kind, f.Verdict, f.Stated = verdict.Different, verdict.NotMet, units.InWords("shut")
	}
	c.add(f)
}

func (p ThawPlan) cautionsOf() []cite.Caution {
	all := append(make([]cite.Caution, 0, 4), thawOnce)
	if p.SealedPack {
		all = append(all, vacuumAt38, sealedAndFrozen)
	}
	switch p.Method {
	case ThawOnCounter:
		all = append(all, thawCounter)
	case ThawInStillWater:
		all = append(all, thawCounter, thawChanged)
	}
	return all
}

var (
	thawOnce = cite.Caution{
		ID: "keeping.thawed-is-raw",
		Text: "What has thawed counts as raw fish from then on: cook, can or cure it within its keeping time, " +
			"or discard it.",
		Citation: cite.Citation{Where: "fish after thawing", Basis: cite.Practice},
	}
	thawChanged = cite.Caution{
		ID: "keeping.still-water-advice",
		Text: "Consumer advice, from memory, has cold water changed every half hour, for a pack that does not leak, " +
			"and the fish cooked at once. The rule here asks for running water.",
		Citation: cite.Citation{Source: cite.USDAFDAConsumerAdvice, Where: "thawing in cold water", Basis: cite.Recalled},
	}
	thawCounter = cite.Caution{
		ID: "keeping.thaw-outside-first", Deciding: true,
		Text: "The outside warms for hours before the middle thaws: two hours above 40 °F (4.4 °C) are the " +
			"kitchen's limit.",
		Citation: kitchenRule,
	}
)
