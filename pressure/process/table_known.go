package process

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// Figures in circulation that are not the published ones, kept so that a recipe that has them can be told where they are
// from. None of them is ever a process.
var (
	olderPressure = cite.Caution{
		ID:       "process.older-pressure",
		Text:     "Figure of an older rule, 10 lb at sea level and half a pound more for each 1,000 ft; the table has bands since.",
		Citation: cite.Citation{Source: cite.UnofficialOldPressureRule, Where: "0 to 10,000 ft", Basis: cite.Read},
	}
	inventedBand = cite.Caution{
		ID:       "process.invented-band",
		Text:     "A row of 10 lb for 1,000 to 2,500 ft is in circulation; it is in no tested table.",
		Citation: cite.Citation{Source: cite.UnofficialRecipePages, Where: "fish", Basis: cite.Read},
	}
	shorterSmoked = cite.Caution{
		ID:       "process.shorter-smoked",
		Text:     "100 min for half-pints of smoked fish is in circulation; no tested source has it.",
		Citation: cite.Citation{Source: cite.UnofficialRecipePages, Where: "hot smoked fillets", Basis: cite.Read},
	}
)

// knownPressure is where a pressure that is too low is known from, if it is. The older rule is tabulated at whole thousands of feet: its values
// at both ends of the thousand are recognised, but for whole pounds above 10, which stand in the present table too.
func knownPressure(c Claim) cite.Caution {
	const step = 1_000 * units.Foot
	below := 10*units.PSI + units.Pressure(c.Altitude.Value/step)*units.PSI/2
	p := c.Pressure.Value
	switch {
	case c.Altitude.Given && c.Altitude.Value > step && c.Altitude.Value <= 2_500*units.Foot && p == 10*units.PSI:
		return inventedBand
	case c.Gauge != Dial || p%units.PSI == 0 && p != 10*units.PSI:
		return cite.Caution{}
	case p == below || p == below+units.PSI/2:
		return olderPressure
	}
	return cite.Caution{}
}

// knownTime is where a time that is too short is known from, if it is.
func knownTime(c Claim) cite.Caution {
	if c.Product == SmokedFish && c.Jar == HalfPint && c.Process.Value == 100*time.Minute {
		return shorterSmoked
	}
	return cite.Caution{}
}

// extended notes that an extension rule continues above the official table, for a recipe stated for such an altitude.
func extended(c Claim) []verdict.Finding {
	if c.Gauge != Dial || !extension.band.Contains(c.Altitude.Value) {
		return nil
	}
	if _, refusal := narrow(nil, c.request(), true); refusal != nil {
		return nil
	}
	return []verdict.Finding{{
		Rule: RuleAltitude, What: MissingAltitude.String(), Kind: verdict.Different, Verdict: verdict.NotPublished,
		Stated: units.Exactly(c.Altitude.Value), Known: extensionCaution,
	}}
}
