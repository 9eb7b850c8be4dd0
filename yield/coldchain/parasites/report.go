package parasites

import (
	"slices"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// Report is what a plan or a record comes to. One of the deciding rules is enough: the verdict is the best of theirs,
// and the findings are those of the deciding rules that come as near as that, none where one is met. Where only a named
// rule is met, the verdict stays NotMet. Lines are all the rules that were judged; Next is what to do now.
type Report struct {
	verdict.Report
	Lines []Line
	Next  []Step
}

// MarshalJSON writes the report as an app shows it.
func (r Report) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *Report) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// Line is one rule held against a plan or a record. Held is the time that counts, of a record the longest stretch
// without a break, which is Stretch. Short is how much time is missing, Beyond by how much the fish, of a plan the
// freezer, was never at the temperature.
type Line struct {
	Rule    Rule
	Verdict verdict.Verdict `wire:"always"`
	Held    time.Duration   `wire:"always"`
	Stretch series.Stretch
	Short   time.Duration
	Beyond  units.TemperatureChange
}

// judged is a line with what is found where it is not met.
type judged struct {
	Line
	finding verdict.Finding
}

// doubt makes of every rule that is met one that cannot be told.
func doubt(all []judged, f verdict.Finding) {
	for i := range all {
		if all[i].Verdict.Passes() {
			all[i].Verdict, all[i].finding = verdict.CannotTell, f
		}
	}
}

// reported sums up what was judged.
func reported(all []judged, record bool) Report {
	best := verdict.NotMet
	for i := range all {
		if all[i].Rule.Standing == Deciding {
			best = min(best, all[i].Verdict)
		}
	}
	var findings []verdict.Finding
	r := Report{Lines: make([]Line, len(all)), Next: next(best)}
	for i := range all {
		r.Lines[i] = all[i].Line
		if all[i].Rule.Standing == Deciding && all[i].Verdict == best && best != verdict.Met && !slices.Contains(findings, all[i].finding) {
			if findings == nil {
				findings = make([]verdict.Finding, 0, len(all))
			}
			findings = append(findings, all[i].finding)
		}
	}
	r.Report = verdict.Of(findings, cautionsOf(record))
	return r
}

// Would is what would meet the rule, in a system of units: empty when it is met.
func (l Line) Would(s units.System) string {
	if l.Verdict == verdict.Met {
		return ""
	}
	text := ""
	if l.Beyond > 0 {
		text = units.AmountOf(l.Beyond).Text(s, units.Up) + " too warm: "
		if l.Rule.Heat {
			text = units.AmountOf(l.Beyond).Text(s, units.Up) + " too cool: "
		}
	}
	switch {
	case l.Rule.Solid.IsSet() && l.Rule.Solid != l.Rule.Temperature:
		text += "freeze it solid at " + cold(l.Rule.Solid, s) + ", then keep it at "
	case l.Rule.Solid.IsSet():
		text += "freeze it solid and keep it at "
	default:
		text += "keep it at "
	}
	if l.Rule.Heat {
		text += hot(l.Rule.Temperature, s) + " or above at the coldest point"
	} else {
		text += cold(l.Rule.Temperature, s)
	}
	text += " for " + units.AmountOf(l.Rule.Hold).Text(s, units.Up) + " without a break, " + l.Rule.Clock.String()
	if l.Beyond == 0 && l.Short > 0 {
		text += "; " + units.AmountOf(l.Short).Text(s, units.Up) + " are missing"
	}
	if l.Verdict == verdict.CannotTell {
		text += "; a probe in the thickest fish would tell"
	}
	return text
}

// cold prints a temperature that is not to be passed upward.
func cold(t units.Temperature, s units.System) string {
	return units.AmountOf(t).Text(s, units.Down) + " or below"
}

// hot prints a temperature that is to be reached.
func hot(t units.Temperature, s units.System) string { return units.AmountOf(t).Text(s, units.Up) }
