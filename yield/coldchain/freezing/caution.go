package freezing

import "example.org/lakelarder/units/cite"

var (
	estimateOnly = cite.Caution{
		ID:   "freezing.estimate-only",
		Text: "An estimate for planning: whether the core is cold, only a probe in the thickest piece tells.",
	}
	worseThanTheyLook = cite.Caution{
		ID: "freezing.worse-than-they-look",
		Text: "The film must hold for the piece as wrapped and packed, and the medium be the warmest that the loaded " +
			"freezer gets: both are worse than they look.",
	}
	plankLeavesOut = cite.Caution{
		ID: "freezing.plank-leaves-out", Deciding: true,
		Text: "Plank's time has neither the heat above the freezing point nor that below in it. For fish it understates, " +
			"most where the core ends near the medium: by up to 39 %.",
		Citation: modelCitation,
	}
	phamShort = cite.Caution{
		ID: "freezing.pham-short", Deciding: true,
		Text: "Fish of less than 67 % water, as when it is very fatty, or that freezes below 28 °F (-2.2 °C): " +
			"Pham's time came out up to 13 % short, most where the core ends near the medium. Add that.",
		Citation: modelCitation,
	}
	phamLong = cite.Caution{
		ID:       "freezing.pham-long",
		Text:     "Pham's time came out 0 to 42 % long for fish put in at 15 °C (59 °F) or colder: the safe side.",
		Citation: modelCitation,
	}
	chillFirst = cite.Caution{
		ID: "freezing.chill-first", Deciding: true,
		Text:     "The fish goes in above 15 °C (59 °F): chill it first. Pham's time came out up to 2 % short for it.",
		Citation: modelCitation,
	}
	biotOutside = cite.Caution{
		ID:       "freezing.biot-outside",
		Text:     "The Biot number lies outside of 0.02 to 11, for which Pham's method was made.",
		Citation: phamCitation,
	}
	stefanOutside = cite.Caution{
		ID:       "freezing.stefan-outside",
		Text:     "The Stefan number lies outside of 0.11 to 0.36, for which Pham's method was made.",
		Citation: phamCitation,
	}
	plankOutside = cite.Caution{
		ID:       "freezing.plank-outside",
		Text:     "The Plank number lies outside of 0.03 to 0.61, for which Pham's method was made.",
		Citation: phamCitation,
	}
)
