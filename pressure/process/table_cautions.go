package process

import "example.org/lakelarder/units/cite"

// guide1 and guide5 cite a place in the printed guide.
func guide1(where string) cite.Citation {
	return cite.Citation{Source: cite.USDAGuide1Rev2015, Where: where, Basis: cite.Read}
}

func guide5(where string) cite.Citation {
	return cite.Citation{Source: cite.USDAGuide5Rev2015, Where: where, Basis: cite.Read}
}

var extensionCaution = cite.Caution{
	ID: "process.extension", Deciding: true, Text: "15 psi above 8,000 ft is in no USDA table: it is an extension rule carried on by one band. Ask the local extension service first.",
	Citation: extensionRule,
}

var pintCautions = []cite.Caution{
	{ID: "process.fatty-fish", Text: "For blue, mackerel, salmon, steelhead, trout and other fatty fish. The table names no lean lake fish.", Citation: guide5("Fish in Pint Jars, p. 5-10")},
	{ID: "process.gut-in-2-hours", Text: "Bleed and gut at once, never later than 2 hours after the catch; keep on ice until canned.", Citation: guide5("Fish in Pint Jars, caution, p. 5-10")},
	{ID: "process.pack-raw", Text: "Pack raw, without liquid; wipe fish oil off the rim, or the lid may not seal.", Citation: guide5("Fish in Pint Jars, p. 5-10")},
}

var quartCautions = []cite.Caution{
	{ID: "process.quart-procedure", Text: "Quarts have their own procedure, and the safety of the jar rests on it: 3 quarts of water, 20 minutes on high, longer until steam is steady, " +
		"then 10 minutes of steady steam; heating and venting never under 30 minutes together.", Citation: quartProcedure},
	{ID: "process.unbroken", Text: "The time must run without a break. Write down when it starts and when it will end.", Citation: quartProcedure},
	{ID: "process.quart-jars", Text: "Straight-sided mason jars of one quart; pack solidly.", Citation: guide5("Fish in Quart Jars, p. 5-11")},
	{ID: "process.fatty-fish-quart", Text: "For blue, mackerel, salmon, steelhead, trout and other fatty fish; halibut without skin and bones. The table names no lean lake fish.",
		Citation: guide5("Fish in Quart Jars, p. 5-11")},
	{ID: "process.gut-in-2-hours-quart", Text: "Bleed and gut at once, never later than 2 hours after the catch; keep on ice until canned.", Citation: guide5("Fish in Quart Jars, caution, p. 5-11")},
	{ID: "process.wipe-rim-quart", Text: "Wipe fish oil off the rim, or the lid may not seal.", Citation: guide5("Fish in Quart Jars, p. 5-11")},
}

var smokedCautions = []cite.Caution{
	{ID: "process.smoked-water", Text: "At least 4 quarts of cool tap water in the canner, up to the bands of pint jars: neither less nor heated.", Citation: smokedProcedure},
	{ID: "process.smoked-canner", Text: "Only in a canner of 16 to 22 quarts; nothing is known to be safe in a smaller one.", Citation: guide5("Smoked Fish, p. 5-13")},
	{ID: "process.smoked-jar", Text: "No jar larger than a pint.", Citation: guide5("Smoked Fish, p. 5-13")},
	{ID: "process.smoked-raw", Text: "Lightly smoked fish is not cooked: do not taste it before canning.", Citation: guide5("Smoked Fish, caution, p. 5-13")},
	{ID: "process.smoked-only", Text: "For smoked fish only, smoked by a tested method; other smoked seafood is frozen, not canned.", Citation: guide5("Smoked Fish, caution, p. 5-13")},
	{ID: "process.smoked-dry", Text: "Pack dry: no liquid in the jar.", Citation: guide5("Smoked Fish, p. 5-13")},
}

var tunaCautions = []cite.Caution{
	{ID: "process.tuna-jars", Text: "Half-pints and pints only; keep on ice until canned.", Citation: guide5("Tuna, p. 5-14")},
	{ID: "process.wipe-rim-tuna", Text: "Wipe fish oil off the rim, or the lid may not seal.", Citation: guide5("Tuna, p. 5-14")},
}

var dialCautions = []cite.Caution{
	{ID: "process.test-dial", Text: "Have the dial gauge tested every year. One that reads high under-processes; replace one that is off by more than 2 lb.", Citation: guide1("Pressure canners, p. 1-20")},
}

var weightsOnly = cite.Caution{ID: "process.weights-only", Text: "A weighted gauge holds 5, 10 or 15 lb and nothing between. It holds its pressure while it jiggles or rocks as its maker says.", Citation: guide1("Pressure canners, p. 1-20")}

var openBandCaution = cite.Caution{
	ID: "process.open-band", Text: "The table gives this band no upper limit. It is followed here to 10,000 ft and no further.", Citation: guide5("weighted-gauge tables, head: above 1,000 ft"),
}

var generalCautions = [...]cite.Caution{
	{ID: "process.vent-first", Text: "Vent for 10 minutes of steady steam before closing the vent, with either gauge: trapped air makes the load colder than the gauge says.", Citation: ventSource},
	{ID: "process.not-shorter", Text: "Do not shorten the time or lower the pressure: fewer minutes or less pressure than published may spoil the food.",
		Citation: guide1("Selecting the correct processing time, pp. 1-22 and 1-23")},
	{ID: "process.start-clock", Text: "Start the clock when the gauge reads the pressure, or the weight begins to jiggle or rock.", Citation: guide1("Using pressure canners, step 4, p. 1-22")},
	{ID: "process.restart", Text: "If the pressure falls below the setting at any moment, bring it back and start the whole time again from zero.",
		Citation: guide1("Using pressure canners, step 5, p. 1-22")},
	{ID: "process.at-most-15", Text: "No more than 15 psi in a new canner.", Citation: guide1("Equipment and methods not recommended, p. 1-10")},
	{ID: "process.cool-by-itself", Text: "Let the canner cool by itself: no water, no opening of the vent. Forced cooling may leave the food unsafe.",
		Citation: guide1("Using pressure canners, step 6, p. 1-22")},
	{ID: "process.wait-10", Text: "When the pressure is gone, take off the weight and wait 10 minutes before opening the lid.", Citation: guide1("Using pressure canners, step 7, p. 1-22")},
	{ID: "process.not-tighten", Text: "Do not tighten lids again after processing, and do not open a jar to top it up.", Citation: guide1("Cooling jars, pp. 1-24 and 1-25")},
	{ID: "process.boil-first", Deciding: true, Text: "Food that may not have been canned exactly as published is boiled before anyone tastes it: 10 minutes below 1,000 ft, and from there on a minute more for each 1,000 ft, a started one counted whole.",
		Citation: boilingRule},
	{ID: "process.within-2-days", Text: "Can fish within 2 days of the catch.", Citation: guide1("p. 1-11")},
	{ID: "process.steam-varies", Text: "Steam at a published setting is not 240 °F everywhere in its band. That is no reason to change the setting.",
		Citation: cite.Citation{Source: cite.IAPWSR797, Where: "with the US Standard Atmosphere 1976", Basis: cite.Computed}},
	{ID: "process.scanned", Text: "These figures were read in a scanned text of the guide. Can by the printed guide or another tested recipe, and ask the local extension service.",
		Citation: cite.Citation{Where: "usual caution", Basis: cite.Practice}},
}
