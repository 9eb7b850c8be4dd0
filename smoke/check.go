package smoke

import (
	"fmt"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Check holds what a recipe states about its smoking against the strictest published home figures and says what falls short, differs, exceeds or is left
// out, by how much and where the published figure is printed. Core, hold, pack and storage decide; air and time are judged when stated and never prove a
// core. Cold smoking at home is RecipeNotPublished, judged all the same by the rules for the trade. A figure below zero or that no fish and no
// smoker can have is a units.RangeError. Nothing is rounded: a second short is short.
func Check(c Claim) (Assessment, error) { return CheckAgainst(DefaultCoreLimit(), c) }

// CheckAgainst is Check by a core limit of the caller's choice, such as one by FindCoreLimit; a limit that CheckHold refuses is
// a units.RangeError.
func CheckAgainst(limit CoreLimit, c Claim) (Assessment, error) {
	if err := limit.check(); err != nil {
		return Assessment{}, err
	}
	if err := c.check(); err != nil {
		return Assessment{}, err
	}
	storage, err := Keep(c.Pack)
	if err != nil {
		return Assessment{}, err
	}
	a := Assessment{Storage: storage}
	switch c.Method {
	case 0:
		a.Findings = append(a.Findings, RecipeFinding{What: "method", Kind: NotStated})
		fallthrough // as hot smoke: whatever the method is, raw fish is not passed
	case HotSmoke:
		a.Governing = limit
		a.Findings = append(a.Findings, c.coreFindings(limit)...)
		a.Findings = append(a.Findings, c.airFindings(limit)...)
	case ColdSmoke:
		a.Refusal = coldRefusal
		a.Findings = append(a.Findings, c.coldFindings()...)
	}
	a.Findings = append(a.Findings, c.storageFindings(storage)...)
	a.judge()
	return a, nil
}

const coldRefusal = "no home process is published for cold-smoked fish: it stays raw, and the trade does it with measured salt, freezing against parasites and a variance"

// coreFindings judges core and hold. A core that another published rule asks for says so.
func (c Claim) coreFindings(limit CoreLimit) (all []RecipeFinding) {
	core := RecipeFinding{What: "core", Published: bothScales(limit.AtLeast), Citation: limit.Citation}
	switch {
	case !c.Core.Given:
		core.Kind = NotStated
		all = append(all, core)
	case c.Core.Value.Below(limit.AtLeast):
		core.Kind, core.Difference = Short, degrees(limit.AtLeast, c.Core.Value)
		core.Stated, core.Published = apart(c.Core.Value, limit.AtLeast)
		for _, other := range coreLimits {
			if other.AtLeast == c.Core.Value {
				core.Known = cite.Caution{Text: "a published figure, " + other.ID + ", but not the one that governs here", Citation: other.Citation}
				break
			}
		}
		if tenth := limit.AtLeast.Text(units.CelsiusScale, 1); core.Known.Text == "" && c.Core.Value.Text(units.CelsiusScale, 1) == tenth {
			core.Known = cite.Caution{Text: "the same rule in tenths of a degree, " + tenth + "; where it is printed in both scales the warmer figure counts", Citation: limit.Citation}
		}
		all = append(all, core)
	}
	hold := RecipeFinding{What: "hold", Published: units.Lasting(limit.Hold), Citation: limit.Citation}
	switch {
	case !c.Hold.Given:
		hold.Kind = NotStated
		all = append(all, hold)
	case c.Hold.Value < limit.Hold:
		hold.Kind, hold.Stated, hold.Difference = Short, units.Lasting(c.Hold.Value), units.Lasting(limit.Hold-c.Hold.Value)
		all = append(all, hold)
	}
	return all
}

// airFindings judges the smoker of a hot smoke, when its air or time is stated: by the limit, and by the core and hold that the recipe
// states, where they are more.
func (c Claim) airFindings(limit CoreLimit) (all []RecipeFinding) {
	finish, longest := chamber("AIR-200-225"), chamber("TIME-12")
	core, hold := limit.AtLeast, max(limit.Hold, c.Hold.Value) // what the recipe says of itself must fit into it too
	if c.Core.Value.Above(core) {
		core = c.Core.Value
	}
	own := func(f *RecipeFinding, what string) { // not by print: the recipe's own figures do not fit each other
		f.Stated, f.Published, f.Citation = f.Stated+" with "+what, "", cite.Citation{}
	}
	air := RecipeFinding{What: "air of the smoker", Stated: bothScales(c.Air.Value), Published: bothScales(finish.AtLeast) + " to " + bothScales(finish.AtMost), Citation: finish.Citation}
	switch {
	case !c.Air.Given:
	case !c.Air.Value.Above(core): // no core comes to the temperature of the air, let alone above it
		air.Kind, air.Published, air.Difference, air.Citation = Short, "hotter than the core of "+bothScales(core), degrees(core, c.Air.Value), limit.Citation
		if core != limit.AtLeast {
			own(&air, "a core of "+bothScales(core))
		}
		all = append(all, air)
	case c.Air.Value.Below(finish.AtLeast):
		air.Kind, air.Difference = Different, degrees(finish.AtLeast, c.Air.Value)
		air.Known = finishInOven
		all = append(all, air)
	case c.Air.Value.Above(finish.AtMost):
		air.Kind, air.Difference = Over, degrees(c.Air.Value, finish.AtMost)
		all = append(all, air)
	}
	smoking := RecipeFinding{What: "time in the smoker", Stated: units.Lasting(c.Time.Value), Published: "at most " + units.Lasting(longest.Within), Citation: longest.Citation}
	switch {
	case !c.Time.Given:
	case c.Time.Value < hold:
		smoking.Kind, smoking.Published, smoking.Difference, smoking.Citation = Short, "a hold of "+units.Lasting(hold), units.Lasting(hold-c.Time.Value), limit.Citation
		if hold != limit.Hold {
			own(&smoking, "a hold of "+units.Lasting(hold))
		}
		all = append(all, smoking)
	case c.Time.Value > longest.Within:
		smoking.Kind, smoking.Difference = TooLong, units.Lasting(c.Time.Value-longest.Within)
		all = append(all, smoking)
	}
	return all
}

// coldFindings judges a cold smoke by the rules for the trade: 90 °F for 20 h, or 50 °F for 24 h.
func (c Claim) coldFindings() (all []RecipeFinding) {
	warm, cold := chamber("COLD-90-20"), chamber("COLD-50-24")
	air := RecipeFinding{What: "air of the smoker", Stated: bothScales(c.Air.Value), Published: "at most " + bothScales(warm.AtMost), Citation: warm.Citation}
	switch {
	case !c.Air.Given:
		air.Kind, air.Stated = NotStated, ""
		all = append(all, air)
	case c.Air.Value.Above(warm.AtMost):
		air.Kind, air.Difference = TooWarm, degrees(c.Air.Value, warm.AtMost)
		air.Known = wholeDegrees(c.Air.Value, warm.AtMost, air.Citation)
		all = append(all, air)
	}
	rule := warm
	if c.Air.Given && !c.Air.Value.Above(cold.AtMost) {
		rule = cold
	}
	smoking := RecipeFinding{What: "time in the smoker", Stated: units.Lasting(c.Time.Value), Published: "at most " + units.Lasting(rule.Within), Citation: rule.Citation}
	switch {
	case !c.Time.Given:
		smoking.Kind, smoking.Stated = NotStated, ""
		all = append(all, smoking)
	case c.Time.Value > rule.Within:
		smoking.Kind, smoking.Difference = TooLong, units.Lasting(c.Time.Value-rule.Within)
		all = append(all, smoking)
	}
	return all
}

// storageFindings judges what becomes of the fish; frozen fish is not judged by days.
func (c Claim) storageFindings(s Storage) (all []RecipeFinding) {
	if c.frozen() {
		return nil
	}
	if c.Pack == PackNotStated {
		all = append(all, RecipeFinding{What: "pack", Kind: NotStated})
	}
	keep := RecipeFinding{What: "storage", Stated: bothScales(c.Keep.Value), Published: "at most " + bothScales(s.AtMost), Citation: s.Temperature.Citation}
	switch {
	case !c.Keep.Given:
		keep.Kind, keep.Stated = NotStated, ""
		all = append(all, keep)
	case c.Keep.Value.Above(s.AtMost):
		keep.Kind, keep.Difference = TooWarm, degrees(c.Keep.Value, s.AtMost)
		keep.Known = wholeDegrees(c.Keep.Value, s.AtMost, keep.Citation)
		all = append(all, keep)
	}
	longest := s
	if c.Pack == PackNotStated {
		longest, _ = Keep(AirPack) // longer than that is too long in any pack
	}
	kept := RecipeFinding{What: "days", Stated: days(c.Days.Value), Published: "at most " + days(longest.Days), Citation: longest.Time.Citation}
	if c.Pack == VacuumPack {
		kept.Published, kept.Citation = "frozen", vacuumVariance.Citation
	}
	switch {
	case !c.Days.Given:
		kept.Kind, kept.Stated = NotStated, ""
		all = append(all, kept)
	case c.Days.Value > longest.Days:
		kept.Kind, kept.Difference = TooLong, days(c.Days.Value-longest.Days)
		all = append(all, kept)
	}
	return all
}

// wholeDegrees says that a stated figure is the limit itself in its print of whole degrees Fahrenheit, when it is: 36 °F is 2.2 °C by the print.
func wholeDegrees(stated, limit units.Temperature, from cite.Citation) cite.Caution {
	if same, err := units.TemperatureOf(limit.In(units.FahrenheitScale, 0), units.FahrenheitScale); err != nil || same != stated {
		return cite.Caution{}
	}
	return cite.Caution{
		Text:     "the same rule in whole degrees, " + limit.Text(units.FahrenheitScale, 0) + "; where it is printed in both scales the colder figure counts",
		Citation: from,
	}
}

func days(n int) string {
	if n == 1 {
		return "1 day"
	}
	return fmt.Sprintf("%d days", n)
}

// degrees is a difference in both scales, empty when there is none; the two are set.
func degrees(warm, cold units.Temperature) string {
	d, _ := warm.Sub(cold)
	places := int32(2)
	switch {
	case d == 0:
		return ""
	case d < units.Kelvins/100: // never "short by nothing"
		places = 6
	}
	return units.Text(d, units.FahrenheitDegrees, places) + " (" + units.Text(d, units.Kelvins, places) + ")"
}
