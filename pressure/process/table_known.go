package process

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Figures in circulation that are not the published ones, kept so that a recipe that has them can be told where they are
// from. None of them is ever a process.
var (
	olderPressure = cite.Caution{
		Text:     "figure of an older rule, 10 lb at sea level and half a pound more for each 1,000 ft; the table has gone by bands since",
		Citation: cite.Citation{Source: cite.UnofficialOldPressureRule, Where: "0 to 10,000 ft", Basis: cite.Read},
	}
	inventedBand = cite.Caution{
		Text:     "a row of 10 lb for 1,000 to 2,500 ft is in circulation; it is in no tested table",
		Citation: cite.Citation{Source: cite.UnofficialRecipePages, Where: "fish", Basis: cite.Read},
	}
	shorterSmoked = cite.Caution{
		Text:     "100 min for half-pints of smoked fish is in circulation; no tested source has it",
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

// beyond says that an extension rule goes on where the official table ends, to one whose recipe goes on too.
func beyond(c Claim) []Finding {
	if c.Gauge != Dial || !extension.band.Contains(c.Altitude.Value) {
		return nil
	}
	if _, refusal := narrow(c.request(), true); refusal != nil {
		return nil
	}
	return []Finding{{What: MissingAltitude.String(), Kind: Different, Stated: height(c.Altitude.Value), Known: extensionCaution}}
}
