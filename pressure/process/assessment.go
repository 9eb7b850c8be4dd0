package process

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// The rules that a recipe is held against, in the order of Claim.
const (
	RuleProduct   verdict.Rule = "process.product"
	RulePack      verdict.Rule = "process.pack"
	RuleJar       verdict.Rule = "process.jar"
	RuleGauge     verdict.Rule = "process.gauge"
	RuleAltitude  verdict.Rule = "process.altitude"
	RulePressure  verdict.Rule = "process.pressure"
	RuleTime      verdict.Rule = "process.time"
	RuleVent      verdict.Rule = "process.vent"
	RuleComeUp    verdict.Rule = "process.come-up"
	RuleWater     verdict.Rule = "process.water"
	RuleHeadspace verdict.Rule = "process.headspace"
)

// Assessment is what Check found. Governing is the official process that the recipe is judged by, zero when what it states
// leaves more than one open or none. Refusal says what is not published when the Verdict is NotPublished.
type Assessment struct {
	verdict.Report
	Governing Schedule
	Refusal   NotPublishedError
}

// MarshalJSON writes the assessment as an app shows it.
func (a Assessment) MarshalJSON() ([]byte, error) { return wire.Marshal(a) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (a *Assessment) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, a) }

// cautionsOf returns what must be shown beside a verdict: what Check does not judge, then the cautions of the governing
// process, if there is one.
func cautionsOf(governing Schedule) []cite.Caution {
	all := make([]cite.Caution, 1, 1+mostCautions)
	all[0] = figuresOnly
	if governing != (Schedule{}) {
		return governing.appendCautions(all)
	}
	return append(all, generalCautions[:]...)
}

// figuresOnly stands beside every verdict.
var figuresOnly = cite.Caution{
	ID: "process.figures-only", Deciding: true,
	Text: "Only the figures of the process were compared, not what is in the jar or how it was filled. " +
		"A recipe that is not a tested one stays so.",
	Citation: cite.Citation{Where: "usual caution", Basis: cite.Practice},
}
