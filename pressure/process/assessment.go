package process

import (
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units/cite"
)

// Verdict is the outcome of Check. The zero Verdict is none.
type Verdict uint8

// The verdicts. Where several hold, NotPublished goes before FallsShort, then Differs, CannotTell, Exceeds.
const (
	// Meets: every figure that is judged is stated and is the published one.
	Meets Verdict = iota + 1
	// Exceeds: nothing falls short, something is more than published: longer, not better.
	Exceeds
	// CannotTell: the recipe does not state something that decides, and nothing stated is wrong for certain.
	CannotTell
	// Differs: a figure is neither short nor long but another one than published.
	Differs
	// FallsShort: less time, pressure, venting or water than published. More of one never makes up for less of another.
	FallsShort
	// NotPublished: there is no official process for what the recipe states; see Assessment.Refusal.
	NotPublished
)

var verdictNames = word.List{What: "verdict", Words: []string{
	"no verdict", "meets", "exceeds", "cannot tell", "differs", "falls short", "not published",
}}

// String is the verdict in words: "falls short".
func (v Verdict) String() string { return verdictNames.Of(uint8(v)) }

// Kind is how a stated figure stands to the published one. The zero Kind is none.
type Kind uint8

// The kinds of finding.
const (
	NotStated Kind = iota + 1 // something that decides is left out
	Short                     // less than published, be it by a second
	Different                 // another figure than published
	Over                      // more than published
)

var kindNames = word.List{What: "kind", Words: []string{"no finding", "not stated", "short", "different", "over"}}

// String is the kind in words: "not stated".
func (k Kind) String() string { return kindNames.Of(uint8(k)) }

// Finding is one figure of a recipe that is not the published one. Stated, Published and Difference are text, empty where there is nothing to
// show: in the units of the tables and exact, or as stated where that is not whole there, and a difference of pressures then up to
// the next 0.001 psi. Citation is where the published figure is printed. Known is where the stated figure is known from, when it is: an
// older rule, a page in circulation; else it is zero.
type Finding struct {
	What       string // "pressure", "process time" …
	Kind       Kind
	Stated     string
	Published  string
	Difference string
	Citation   cite.Citation
	Known      cite.Caution
}

// String is the finding in one line: "process time: 90 min stated, 100 min published, short by 10 min".
func (f Finding) String() string {
	s := f.What + ": "
	if f.Kind == NotStated {
		s += "not stated"
	} else {
		s += f.Stated + " stated"
	}
	if f.Published != "" {
		s += ", " + f.Published + " published"
	}
	if f.Kind == Over {
		s += ", more by " + f.Difference + " and not better"
	} else if f.Difference != "" {
		s += ", " + f.Kind.String() + " by " + f.Difference
	}
	if f.Known.Text != "" {
		s += " (" + f.Known.Text + ")"
	}
	return s
}

// Assessment is what Check found. Governing is the official process that the recipe is judged by, zero when what it states
// leaves more than one open or none. Refusal says what is not published when the Verdict is NotPublished. Findings come with the worst
// kind first, and within a kind as Claim lists them.
type Assessment struct {
	Verdict   Verdict
	Governing Schedule
	Refusal   NotPublishedError
	Findings  []Finding
}

// Cautions returns what must be shown beside the verdict: what Check does not judge, then the cautions of the governing
// process, if there is one. It is never empty; the slice is the caller's own.
func (a Assessment) Cautions() []cite.Caution {
	all := []cite.Caution{figuresOnly}
	if a.Governing != (Schedule{}) {
		return append(all, a.Governing.Cautions()...)
	}
	return append(all, generalCautions...)
}

// figuresOnly stands beside every verdict.
var figuresOnly = cite.Caution{
	Text:     "Only the figures of the process were compared, not what is in the jar or how it was filled. A recipe that is not a tested one stays so.",
	Citation: cite.Citation{Where: "usual caution", Basis: cite.Practice},
}
