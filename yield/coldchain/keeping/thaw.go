package keeping

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// ThawMethod is how frozen fish is thawed. The zero ThawMethod is not set.
type ThawMethod uint8

// The methods. Published limits were found for the first two alone.
const (
	ThawInRefrigerator ThawMethod = iota + 1
	ThawInRunningWater
	ThawInStillWater
	ThawOnCounter
)

// String is the method in words.
func (m ThawMethod) String() string {
	switch m {
	case 0:
		return "no method"
	case ThawInRefrigerator:
		return "in the refrigerator"
	case ThawInRunningWater:
		return "under running water"
	case ThawInStillWater:
		return "in still water"
	case ThawOnCounter:
		return "on the counter"
	}
	return "unknown method"
}

// ThawPlan is how fish is to be thawed, or was. Medium is the warmest of the air or water around it. FishAbove41 is the
// longest that any of the fish is warmer than 41 °F, with the thawing, the handling and the chilling after it; left
// out, it is not known. SealedPack says that it was frozen in a vacuum or any pack that keeps the air out; Opened that
// the pack is opened before the thawing begins. ReadyToEat fish, smoked fish among it, is not cooked any more.
type ThawPlan struct {
	Method      ThawMethod
	Medium      units.Temperature
	FishAbove41 units.Stated[time.Duration]
	SealedPack  bool
	Opened      bool
	ReadyToEat  bool
	ForSmoking  bool
}

// ThawLine is one published demand held against a plan: what it is of, what is demanded and what was planned, in words,
// and whether it is Met. Where the plan does not say, Verdict is CannotTell.
type ThawLine struct {
	What     string
	Required string
	Planned  string
	Verdict  coldchain.Verdict
	Citation cite.Citation
}

// ThawReport is a plan held against every demand that applies. Verdict is the worst of the lines.
type ThawReport struct {
	Plan     ThawPlan
	Verdict  coldchain.Verdict
	Lines    []ThawLine
	Cautions []cite.Caution
}

// thawLongest is what the Food Code allows raw portions above 41 °F.
const thawLongest = 4 * time.Hour

// CheckThaw holds a plan of thawing against the published demands: the refrigerator and the fish in it at or below 41
// °F; running water at or below 70 °F, raw fish above 41 °F for at most 4 h in all and ready-to-eat fish never; a
// sealed pack opened before; fish for smoking never above 38 °F. Still water and the counter are in no published list
// found, and fail. The medium must be -5 to 60 °C, a stated time 0 to 7 days: otherwise, and for no known method, a
// units.RangeError. What the plan leaves out cannot be told.
func CheckThaw(plan ThawPlan) (ThawReport, error) {
	if plan.Method == 0 || plan.Method > ThawOnCounter {
		return ThawReport{}, units.RangeError{What: "method of thawing", Got: plan.Method.String(), Low: ThawInRefrigerator.String(), High: ThawOnCounter.String()}
	}
	if err := units.CheckTemperature("around the thawing fish", plan.Medium, units.Celsius(-5), units.Celsius(60)); err != nil {
		return ThawReport{}, err
	}
	if err := units.CheckDuration("time above 41 °F", plan.FishAbove41.Value, 0, 7*chain.Day); err != nil {
		return ThawReport{}, err
	}
	r := ThawReport{Plan: plan, Verdict: coldchain.Within}
	switch plan.Method {
	case ThawInRefrigerator:
		r.colder("around the fish", thawRows[thawRefrigerator], plan.Medium)
		if plan.FishAbove41.Given {
			r.warmTime(plan)
		}
	case ThawInRunningWater:
		r.colder("the running water", thawRows[thawWater], plan.Medium)
		r.warmTime(plan)
	default:
		r.add("method", "refrigerator or running water", plan.Method.String(), coldchain.Exceeded, thawRows[thawRefrigerator].citation)
		r.warmTime(plan)
	}
	if plan.ForSmoking {
		r.smoking(plan)
	}
	if plan.SealedPack {
		planned, verdict := "shut", coldchain.Exceeded
		if plan.Opened {
			planned, verdict = "opened", coldchain.Within
		}
		r.add("the sealed pack", "opened before it thaws", planned, verdict, thawRows[thawPack].citation)
	}
	r.Cautions = r.cautions()
	return r, nil
}

func (r *ThawReport) add(what, required, planned string, verdict coldchain.Verdict, citation cite.Citation) {
	r.Lines = append(r.Lines, ThawLine{what, required, planned, verdict, citation})
	r.Verdict = worst(r.Verdict, verdict)
}

func (r *ThawReport) colder(what string, row thawRow, medium units.Temperature) {
	planned, verdict := medium.Text(units.FahrenheitScale, 1), coldchain.Within
	if medium.Above(row.atMost) {
		verdict = coldchain.Exceeded
		if planned == row.atMost.Text(units.FahrenheitScale, 1) {
			planned = "above it by less than 0.1 °F"
		}
	}
	r.add(what, "at or below "+row.atMost.Text(units.FahrenheitScale, 0), planned, verdict, row.citation)
}

// warmTime is the time above 41 °F: four hours raw, none ready to eat and none in the refrigerator.
func (r *ThawReport) warmTime(plan ThawPlan) {
	row, required := thawRows[thawRaw], "at most "+units.Lasting(thawLongest)
	switch {
	case plan.Method == ThawInRefrigerator:
		row, required = thawRows[thawRefrigerator], "never"
	case plan.ReadyToEat:
		row, required = thawRows[thawReady], "never"
	}
	planned, verdict := "not stated", coldchain.CannotTell
	if plan.FishAbove41.Given {
		planned, verdict = units.Lasting(plan.FishAbove41.Value), coldchain.Within
		if plan.FishAbove41.Value > row.allowed {
			verdict = coldchain.Exceeded
		}
	}
	r.add("fish above 41 °F, all of it together", required, planned, verdict, row.citation)
}

// smoking is the stricter rule for fish that will be smoked: inside never above 38 °F. A medium at or below that proves
// it, but where the fish was warmer afterwards, in the handling.
func (r *ThawReport) smoking(plan ThawPlan) {
	row := thawRows[thawSmoking]
	planned, verdict := "not stated", coldchain.CannotTell
	switch {
	case plan.FishAbove41.Given && plan.FishAbove41.Value > 0:
		planned, verdict = "above 41 °F for "+units.Lasting(plan.FishAbove41.Value), coldchain.Exceeded
	case !plan.Medium.Above(row.atMost):
		planned, verdict = "medium "+plan.Medium.Text(units.FahrenheitScale, 1), coldchain.Within
	}
	r.add("fish for smoking, inside", "not above "+row.atMost.Text(units.FahrenheitScale, 0), planned, verdict, row.citation)
}

func (r ThawReport) cautions() []cite.Caution {
	all := []cite.Caution{thawOnce}
	if r.Plan.SealedPack {
		all = append(all, vacuumAt38)
	}
	switch r.Plan.Method {
	case ThawOnCounter:
		all = append(all, thawCounter)
	case ThawInStillWater:
		all = append(all, thawCounter, thawChanged)
	}
	return all
}

var (
	thawOnce = cite.Caution{
		Text:     "what has thawed counts as raw fish from then on: cook, can or cure it within its keeping time, or discard it",
		Citation: cite.Citation{Where: "fish after thawing", Basis: cite.Practice},
	}
	thawChanged = cite.Caution{
		Text:     "consumer advice, from memory, has cold water changed every half hour, for a pack that does not leak, and the fish cooked at once: it is not the rule here, which asks for running water",
		Citation: cite.Citation{Source: cite.USDAFDAConsumerAdvice, Where: "thawing in cold water", Basis: cite.Recalled},
	}
	thawCounter = cite.Caution{Text: "the outside warms for hours before the middle thaws: two hours above 40 °F (4.4 °C) are the kitchen's limit", Citation: kitchenRule}
)

// worst is the worse of two verdicts.
func worst(a, b coldchain.Verdict) coldchain.Verdict {
	if a == coldchain.Exceeded || b == coldchain.Exceeded {
		return coldchain.Exceeded
	}
	if a == coldchain.CannotTell || b == coldchain.CannotTell {
		return coldchain.CannotTell
	}
	return coldchain.Within
}
