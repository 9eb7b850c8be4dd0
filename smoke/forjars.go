package smoke

import (
	"fmt"
	"sort"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// CheckForJars is Check for fish that is smoked to go into jars, which is another product: smoked lightly, not cooked, and canned within a day.
// It holds the loss of weight in smoking against what the process of smoked fish was tested with, and judges air, time and keeping when they are
// stated, and a day of waiting by where it is waited out; no core and no hold is asked for, and a core that cooks the fish differs. Outside the tested losses, and for cold smoke, it is
// RecipeNotPublished. A loss outside 0 to 100 % is a units.RangeError, as is what Check refuses. It says nothing of the process in the jar.
func CheckForJars(c Claim, loss units.Stated[units.Ratio]) (Assessment, error) {
	if err := c.check(); err != nil {
		return Assessment{}, err
	}
	if !loss.Given {
		loss.Value = jarLeast
	}
	jar, err := CheckJarLoss(loss.Value)
	if err != nil {
		return Assessment{}, err
	}
	storage, err := Keep(c.Pack)
	if err != nil {
		return Assessment{}, err
	}
	if !loss.Given { // the range and the cautions stand, no loss does
		jar.Loss, jar.Tested = 0, false
	}
	a := Assessment{Jar: jar}
	switch c.Method {
	case 0:
		a.Findings = append(a.Findings, RecipeFinding{What: "method", Kind: NotStated})
	case ColdSmoke:
		a.Refusal = coldRefusal
	}
	if f := lossFinding(jar, loss.Given); f.Kind != 0 {
		a.Findings = append(a.Findings, f)
	}
	if loss.Given && !jar.Tested {
		a.Refusal = jar.Cautions[0].Text
	}
	a.Findings = append(a.Findings, c.lightFindings()...)
	a.Findings = append(a.Findings, c.waitFindings(storage)...)
	a.judge()
	return a, nil
}

// judge sorts the findings and lets the worst decide.
func (a *Assessment) judge() {
	sort.SliceStable(a.Findings, func(i, j int) bool { return a.Findings[i].Kind.verdict() > a.Findings[j].Kind.verdict() })
	a.Verdict = RecipeMeets
	if len(a.Findings) > 0 {
		a.Verdict = a.Findings[0].Kind.verdict()
	}
	if a.Refusal != "" {
		a.Verdict = RecipeNotPublished
	}
}

func lossFinding(j JarLoss, given bool) RecipeFinding {
	f := RecipeFinding{What: "loss", Published: j.Least.String() + " to " + j.Most.String(), Citation: j.Citation}
	switch {
	case !given:
		f.Kind = NotStated
	case j.Loss < j.Least:
		f.Kind, f.Stated, f.Difference = Different, j.Loss.String(), (j.Least - j.Loss).String()
	case j.Loss > j.Most:
		f.Kind, f.Stated, f.Difference = Different, j.Loss.String(), (j.Loss - j.Most).String()
	}
	return f
}

// lightFindings judges the smoker, and a core that has been cooked, which the process was not tested with.
func (c Claim) lightFindings() (all []RecipeFinding) {
	light := chamber("LIGHT-140-160")
	air := RecipeFinding{What: "air of the smoker", Kind: Different, Stated: bothScales(c.Air.Value),
		Published: bothScales(light.AtLeast) + " to " + bothScales(light.AtMost), Citation: light.Citation}
	switch {
	case !c.Air.Given:
	case c.Air.Value.Below(light.AtLeast):
		air.Difference = degrees(light.AtLeast, c.Air.Value)
		all = append(all, air)
	case c.Air.Value.Above(light.AtMost):
		air.Difference = degrees(c.Air.Value, light.AtMost)
		all = append(all, air)
	}
	if c.Time.Given && c.Time.Value > light.Within {
		all = append(all, RecipeFinding{What: "time in the smoker", Kind: TooLong, Stated: units.Lasting(c.Time.Value), Published: "at most " + units.Lasting(light.Within),
			Difference: units.Lasting(c.Time.Value - light.Within), Citation: light.Citation})
	}
	if c.Core.Given && c.Core.Value.AtLeast(coldestLimit) { // no rule calls a colder core cooked
		all = append(all, RecipeFinding{What: "core", Kind: Different, Stated: bothScales(c.Core.Value), Published: "not cooked", Citation: jarSoon.Citation})
	}
	return all
}

// waitFindings judges how the fish waits for its jars: no more than a day, and cold; frozen fish is not judged by days.
func (c Claim) waitFindings(s Storage) (all []RecipeFinding) {
	if c.frozen() {
		return nil
	}
	if c.Keep.Given && c.Keep.Value.Above(s.AtMost) {
		all = append(all, RecipeFinding{What: "storage", Kind: TooWarm, Stated: bothScales(c.Keep.Value), Published: "at most " + bothScales(s.AtMost),
			Difference: degrees(c.Keep.Value, s.AtMost), Citation: s.Temperature.Citation, Known: wholeDegrees(c.Keep.Value, s.AtMost, s.Temperature.Citation)})
	}
	if c.Days.Value > 0 && !c.Keep.Given { // a day in the refrigerator, not on the shelf
		all = append(all, RecipeFinding{What: "storage", Kind: NotStated, Published: "at most " + bothScales(s.AtMost), Citation: s.Temperature.Citation})
	}
	if c.Days.Value > 1 {
		all = append(all, RecipeFinding{What: "days", Kind: TooLong, Stated: fmt.Sprintf("%d days", c.Days.Value), Published: "at most 1 day before canning", Citation: jarSoon.Citation})
	}
	return all
}

// forJarsOnly and lightUnseen stand beside every verdict on fish for jars.
var (
	forJarsOnly = cite.Caution{
		Text:     "judged as fish for jars: it is not ready to eat, and none of it is eaten or kept before it was canned",
		Citation: cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, caution, p. 5-13", Basis: cite.Read},
	}
	lightUnseen = cite.Caution{
		Text:     "the air and the time of a light smoke were not seen in print",
		Citation: chamber("LIGHT-140-160").Citation,
	}
)
