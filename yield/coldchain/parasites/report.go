package parasites

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Report is what a plan or a record comes to. Treatment is the best of the deciding findings: one of those rules is
// enough. Where only a named rule is met, it stays NotMet.
type Report struct {
	Treatment Treatment
	Findings  []Line
	Next      []string // what to do now
	Cautions  []cite.Caution
}

// Line is one rule held against a plan or a record. Held is the time that counts, of a record the longest stretch
// without a break, which is Stretch. Short is how much time is missing, Beyond by how much the fish, of a plan the
// freezer, was never at the temperature. Would is what would meet the rule, empty when it is met.
type Line struct {
	Rule      Rule
	Treatment Treatment
	Held      time.Duration
	Stretch   series.Stretch
	Short     time.Duration
	Beyond    units.TemperatureChange
	Would     string
}

// reported sums findings up.
func reported(findings []Line) Report {
	r := Report{Treatment: NotMet, Findings: findings}
	for i := range findings {
		f := &findings[i]
		f.Would = f.would()
		if f.Rule.Standing == Deciding {
			r.Treatment = r.Treatment.better(f.Treatment)
		}
	}
	r.Next = r.next()
	return r
}

func (f Line) would() string {
	if f.Treatment == Met {
		return ""
	}
	text := ""
	if f.Beyond > 0 {
		side := "too warm"
		if f.Rule.Heat {
			side = "too cool"
		}
		off := max(f.Beyond, units.CelsiusDegrees/10) // a hair is never told as none
		text = fmt.Sprintf("%s °F (%s °C) %s: ", units.In(off, units.FahrenheitDegrees, 1), units.In(off, units.CelsiusDegrees, 1), side)
	}
	at := bothScales(f.Rule.Temperature) + " or below"
	if f.Rule.Heat {
		at = bothScales(f.Rule.Temperature) + " or above at the coldest point"
	}
	switch {
	case f.Rule.Solid.IsSet() && f.Rule.Solid != f.Rule.Temperature:
		text += "freeze it solid at " + bothScales(f.Rule.Solid) + " or below, then keep it at "
	case f.Rule.Solid.IsSet():
		text += "freeze it solid and keep it at "
	default:
		text += "keep it at "
	}
	text += fmt.Sprintf("%s for %v without a break, %v", at, units.Lasting(f.Rule.Hold), f.Rule.Clock)
	if f.Beyond == 0 && f.Short > 0 {
		text += fmt.Sprintf("; %v are missing", units.Lasting(f.Short))
	}
	if f.Treatment == NotTold {
		text += "; a probe in the thickest fish would tell"
	}
	return text
}

// bothScales prints a temperature in °C and °F, to a tenth where it takes one.
func bothScales(t units.Temperature) string {
	one := func(s units.Scale) string { return t.In(s, 1).String() + " " + s.String() }
	return one(units.CelsiusScale) + " (" + one(units.FahrenheitScale) + ")"
}

func (r Report) next() []string {
	if r.Treatment == Met {
		return []string{"Parasites may be taken for dead. Nothing else is mended: keep the fish frozen until it is used, then cold, and use it soon."}
	}
	first := "Do not eat this fish raw, cold-smoked, marinated or lightly salted as it is."
	if r.Treatment == NotTold {
		first += " It may have been treated, but what is known does not show it."
	}
	return []string{
		first,
		"Colder: " + ruleTable[0].cold() + ". A home freezer at 0 °F (-17.8 °C) is 4 °F (2.2 °C) too warm for that: turn it down and check it with a thermometer between the packs.",
		"Or heat: " + bothScales(units.Celsius(63)) + " at the coldest point for 15 s when cooked, " + bothScales(units.Fahrenheit(145)) + " for 30 minutes when hot-smoked.",
	}
}

// cold is a rule of freezing in words.
func (r Rule) cold() string {
	return fmt.Sprintf("at %s or below for %v without a break, %v", bothScales(r.Temperature), units.Lasting(r.Hold), r.Clock)
}

// cautionsOf are what must be known of either answer.
func cautionsOf(record bool) []cite.Caution {
	all := []cite.Caution{
		{Text: "freezing kills parasites, not bacteria, and undoes no spoilage: thawed fish is as perishable as fresh"},
		{Text: "0 °F for 24 or 48 h and 14 °F for 24 h are printed against tapeworm: not to be used for fish eaten raw", Citation: tapewormState},
		{Text: "rules of the EU and Codex count 24 h at -20 °C where the Food Code counts 168 h from loading: the longer decides here, the others are named", Citation: parasiteEU},
		{Text: "the rules of the EU are for parasites other than flukes", Citation: parasiteEU},
		{Text: "some inspectors allow 2 °F on -20 °C and -35 °C; nothing is allowed here", Citation: parasiteAllowed},
		{Text: "salting, brining, cold smoking and drying are no rule of any of these sources"},
		{Text: "follow local codes and the advice of the extension service where they are stricter"},
	}
	if record {
		return append(all, cite.Caution{Text: "the record must be of the core of the thickest fish; where a rule counts from loading, here only the core's own time counts, the stricter reading", Citation: parasiteA})
	}
	return append(all,
		cite.Caution{Text: "the temperature must be the warmest of the freezer, door and defrosting included, by a thermometer in it", Citation: parasiteA},
		cite.Caution{Text: "for fish thicker than 6 in (15.2 cm) the guide doubts its own rules: time from loading is not relied on", Citation: parasiteThick})
}
