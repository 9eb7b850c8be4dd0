package brine

import (
	"strconv"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Verdict is the outcome of Check. The zero Verdict is none.
type Verdict uint8

// The verdicts. Where several hold, FallsShort goes before Differs, then CannotTell, Exceeds.
const (
	// Meets: every figure that is judged is stated and within what is published. It is no proof of the salt in the fish.
	Meets Verdict = iota + 1
	// Exceeds: nothing falls short, something is more than published.
	Exceeds
	// CannotTell: the recipe does not state something that decides, or its water phase salt was not measured.
	CannotTell
	// Differs: a figure that nobody has published.
	Differs
	// FallsShort: less salt or time than published, or warmer.
	FallsShort
)

var verdictWords = [...]string{"no verdict", "meets", "exceeds", "cannot tell", "differs", "falls short"}

// String is the verdict in words: "falls short".
func (v Verdict) String() string { return word(verdictWords[:], uint8(v), "verdict") }

// Kind is how a stated figure stands to the published one. The zero Kind is none.
type Kind uint8

// The kinds of finding.
const (
	NotStated Kind = iota + 1 // something that decides is left out
	Short                     // less than published
	Different                 // another figure than published
	Over                      // more than published
	TooWarm                   // warmer than published
)

var kindWords = [...]string{"no finding", "not stated", "short", "different", "over", "too warm"}

// String is the kind in words: "not stated".
func (k Kind) String() string { return word(kindWords[:], uint8(k), "kind") }

func word(words []string, n uint8, what string) string {
	if int(n) < len(words) {
		return words[n]
	}
	return what + "(" + strconv.Itoa(int(n)) + ")"
}

// verdict is what a finding of the kind comes to; the worst one decides.
func (k Kind) verdict() Verdict {
	switch k {
	case Short, TooWarm:
		return FallsShort
	case Different:
		return Differs
	case NotStated:
		return CannotTell
	}
	return Exceeds
}

// Finding is one figure of a recipe that is not the published one. Stated, Published and Difference are text, empty where there is nothing to
// show; beside NotStated, Stated is what can be estimated. Citation is where the published figure is printed.
type Finding struct {
	What       string // "salt to fish", "time" …
	Kind       Kind
	Stated     string
	Published  string
	Difference string
	Citation   cite.Citation
}

// String is the finding in one line: "salt to fish: 2 % stated, 3 % published, short by 1 %".
func (f Finding) String() string {
	s := f.What + ": "
	if f.Kind == NotStated {
		s += "not stated"
		if f.Stated != "" {
			s += ", " + f.Stated
		}
	} else {
		s += f.Stated + " stated"
	}
	if f.Published != "" {
		s += ", " + f.Published + " published"
	}
	switch {
	case f.Difference == "":
	case f.Kind == TooWarm:
		s += ", too warm by " + f.Difference
	default:
		s += ", " + f.Kind.String() + " by " + f.Difference
	}
	return s
}

// Assessment is what Check found. SaltToFish and Strength are what the recipe comes to, of a dry cure and of a brine, zero where it does not
// say; SugarToSalt is by mass. Limit is the water phase salt it is held against, zero for jars. Estimate is the average water phase salt after its time
// and loss, zero where the recipe does not state enough. Findings come with the worst kind first.
type Assessment struct {
	Verdict     Verdict
	Method      Method
	SaltToFish  units.Ratio
	Strength    units.Ratio
	SugarToSalt units.Ratio
	Limit       SaltLimit
	Estimate    Estimate
	Findings    []Finding
}

// Cautions returns what must be shown beside the verdict; it is never empty, and the slice is the caller's own.
func (a Assessment) Cautions() []cite.Caution {
	all := []cite.Caution{figuresOnly}
	if a.Limit == (SaltLimit{}) {
		all = append(all, saltInJars)
	} else {
		all = append(all, EstimateCautions()...)
	}
	if a.SaltToFish >= quarter {
		all = append(all, excess)
	}
	return append(all, AfterSalting()...)
}

// saltInJars stands beside a verdict on fish for jars.
var saltInJars = cite.Caution{
	Text:     "judged as fish for jars: salt is for flavour there, and only the published process makes the jars keep",
	Citation: cite.Citation{Source: cite.USDAGuide5Rev1994, Where: "Fish, salt if desired", Basis: cite.Read},
}

// figuresOnly stands beside every verdict.
var figuresOnly = cite.Caution{
	Text:     "only the figures of the salting were compared; a recipe that is not a tested one stays so",
	Citation: cite.Citation{Where: "usual caution", Basis: cite.Practice},
}
