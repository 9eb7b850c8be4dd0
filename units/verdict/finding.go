package verdict

import (
	"strconv"
	"strings"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Rule names what a finding is about. Each judge has its rules as constants; they are unique in the library and stable.
type Rule string

// Finding is one thing that a claim states or a record shows and that is not as wanted. Figures are numbers until Text
// prints them. Verdict is what the finding alone makes of it: it may be Met, for what was made good. When is the stretch
// of the record, not given where it has none. Stated is what was stated or recorded, Wanted what the rule asks for, By
// how far they are apart. Citation is where Wanted is published. Known is where a wrong figure is known from, such as an
// older rule, else zero. Findings are comparable.
type Finding struct {
	Rule     Rule
	What     string
	Kind     Kind
	Verdict  Verdict `wire:"always"`
	When     units.Stated[series.Stretch]
	Stated   units.Figure
	Wanted   units.Figure
	By       units.Amount
	Citation cite.Citation
	Known    cite.Caution
}

// String is Text in both systems of units.
func (f Finding) String() string { return f.Text(units.Both) }

// Text is the finding in one line, in a system of units: "process time: 90 min stated, at least 100 min published, short by
// 10 min". What is stated is rounded away from what is wanted, and with enough digits to tell the two apart.
func (f Finding) Text(s units.System) string {
	stated, wanted := units.Apart(f.Stated, f.Wanted, s)
	line := f.What + ": "
	switch {
	case stated != "" && f.When.Given:
		line += stated + " recorded"
	case stated != "":
		line += stated + " stated"
	default:
		line += f.Kind.String()
	}
	if wanted != "" {
		line += ", " + wanted + f.authority()
	}
	if f.By.IsStated() {
		line += ", " + f.Kind.String() + " by " + f.By.Text(s, units.Up)
	} else if stated != "" && f.Kind != Different && f.Kind != 0 {
		line += ", " + f.Kind.String()
	}
	if f.When.Given {
		line += ", " + spanOf(f.When.Value)
	}
	if f.Known.Text != "" {
		line += " (" + strings.TrimSuffix(f.Known.Text, ".") + ")"
	}
	return line
}

// authority says what stands behind the wanted figure.
func (f Finding) authority() string {
	if f.Citation.Source != 0 && f.Citation.Basis != cite.Computed && f.Citation.Basis != cite.Practice {
		return " published"
	}
	return " wanted"
}

// spanOf prints when something was, in minutes of the record: "at minute 12", "from minute 12 to 15:20".
func spanOf(s series.Stretch) string {
	if s.From == s.To {
		return "at minute " + minute(s.From)
	}
	return "from minute " + minute(s.From) + " to " + minute(s.To)
}

// minute prints a moment as minutes and seconds of the record: "63", "63:20".
func minute(d time.Duration) string {
	d = d.Round(time.Second)
	minutes, seconds := int64(d/time.Minute), int64(d%time.Minute/time.Second)
	text := strconv.FormatInt(minutes, 10)
	switch {
	case seconds == 0:
		return text
	case seconds < 10:
		return text + ":0" + strconv.FormatInt(seconds, 10)
	}
	return text + ":" + strconv.FormatInt(seconds, 10)
}
