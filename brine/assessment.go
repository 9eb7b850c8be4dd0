package brine

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// The rules that a recipe's salting is held against.
const (
	RuleMethod         verdict.Rule = "brine.method"
	RuleGutting        verdict.Rule = "brine.gutting"
	RuleFreshBrine     verdict.Rule = "brine.fresh-brine"
	RuleLoad           verdict.Rule = "brine.load"
	RuleLimit          verdict.Rule = "brine.limit"
	RuleSaltWeight     verdict.Rule = "brine.salt-weight"
	RuleSaltToFish     verdict.Rule = "brine.salt-to-fish"
	RuleStrength       verdict.Rule = "brine.strength"
	RuleTime           verdict.Rule = "brine.time"
	RuleTemperature    verdict.Rule = "brine.temperature"
	RuleThickness      verdict.Rule = "brine.thickness"
	RuleWaterPhaseSalt verdict.Rule = "brine.water-phase-salt"
	RuleNitrite        verdict.Rule = "brine.nitrite"
	RuleSugar          verdict.Rule = "brine.sugar"
	RulePack           verdict.Rule = "brine.pack"
)

// Assessment is what Check found. SaltToFish and Strength are what the recipe comes to, of a dry cure and of a
// brine, not given where it does not say; SugarToSalt is by mass. Limit is the water phase salt that it is held
// against, zero for jars. Estimate is the average water phase salt after its time and loss, zero where the recipe
// does not state enough; it decides nothing, and its cautions are those of the report.
type Assessment struct {
	verdict.Report
	Method      Method
	SaltToFish  units.Stated[units.Ratio]
	Strength    units.Stated[units.Ratio]
	SugarToSalt units.Stated[units.Ratio]
	Limit       SaltLimit
	Estimate    Estimate
}

// MarshalJSON writes the assessment as an app shows it.
func (a Assessment) MarshalJSON() ([]byte, error) { return wire.Marshal(a) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (a *Assessment) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, a) }

// judgement is an assessment on its way.
type judgement struct {
	Claim
	found    Assessment
	findings []verdict.Finding
	chosen   bool // the limit was chosen by name

	// Salt that the recipe uses, 0 where it does not say, and the greater figure where it says so twice; dose or
	// strength by the amounts.
	salt, saltAtMost units.Mass
	sugar            units.Mass // the lesser, where it is stated in two ways
	worked           units.Stated[units.Ratio]
}

// mostFindings and mostCautions are room for what most recipes have.
const (
	mostFindings = 3
	mostCautions = 11
)

func (j *judgement) find(f verdict.Finding) {
	if f.Verdict == verdict.CannotTell {
		f.Verdict = f.Kind.Verdict()
	}
	if j.findings == nil {
		j.findings = make([]verdict.Finding, 0, mostFindings)
	}
	j.findings = append(j.findings, f)
}

// missing says that the recipe leaves out something that decides.
func (j *judgement) missing(rule verdict.Rule, what string, wanted units.Figure, c cite.Citation) {
	j.find(verdict.Finding{Rule: rule, What: what, Kind: verdict.Missing, Wanted: wanted, Citation: c})
}

// cautions are what must be shown beside the verdict, never none.
func (j *judgement) cautions() []cite.Caution {
	all := make([]cite.Caution, 0, mostCautions)
	all = append(all, figuresOnly, gutFirst)
	if j.chosen {
		all = append(all, chosenLimit)
		if j.found.Limit.ID == MichiganAir && j.Smoked != HotSmoked {
			all = append(all, variance)
		}
	}
	if j.ForJars {
		all = append(all, saltInJars)
	} else {
		all = append(all, anEstimate, eatSoon, measureIt)
		if j.Pack == AirPack {
			all = append(all, filmBreathes)
		}
	}
	all = append(all, keepCold)
	if j.found.SaltToFish.Value >= quarter {
		all = append(all, excess)
	}
	all = append(all, oneKind)
	if j.found.Method == WetBrined {
		all = append(all, freshBrine)
	}
	return append(all, rinseOff, letRest)
}
