package smoke

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// Assessment is what Check found. Governing is the core limit that a hot smoke is judged by, Storage how the fish is kept;
// both are zero for fish for jars. Refusal says why nothing is published when the Verdict is NotPublished.
type Assessment struct {
	verdict.Report
	Governing CoreLimit
	Storage   Storage
	Refusal   cite.Caution
}

// MarshalJSON writes the assessment as an app shows it.
func (a Assessment) MarshalJSON() ([]byte, error) { return wire.Marshal(a) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (a *Assessment) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, a) }

// judged is the assessment of findings: the worst decides, and what is not published is not.
func (a Assessment) judged(found []verdict.Finding, cautions []cite.Caution) Assessment {
	a.Report = verdict.Of(found, cautions)
	if a.Refusal != (cite.Caution{}) {
		a.Verdict = verdict.NotPublished
	}
	return a
}

// readyToEat are the cautions of fish that is eaten as it is.
func (a Assessment) readyToEat() []cite.Caution {
	all := make([]cite.Caution, 1, 20)
	all[0] = airIsNotCore
	if a.Governing.AtLeast.IsSet() { // a caller's own limit need not have an ID
		all = append(all, holdCautions(a.Governing, 0)...)
	}
	return append(append(all, coldAtOnce), a.Storage.Cautions...)
}

var (
	airIsNotCore = cite.Caution{
		ID: "smoke.air-is-not-core", Deciding: true,
		Text: "The temperature of the smoker is not that of the fish. A wet surface stays at the wet bulb, far below the air, " +
			"and only a probe in the core tells.",
		Citation: moistair.Source(),
	}
	notAtHome = cite.Caution{
		ID: "smoke.cold-not-at-home", Deciding: true,
		Text: "No home process is published for cold-smoked fish. It stays raw, and the trade does it with measured salt, " +
			"freezing against parasites and a variance.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.18", Basis: cite.Read},
	}
)
