package canner

import (
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// The rules that a run is held against, in the order of a run.
const (
	RuleAltitude verdict.Rule = "canner.altitude" // the stove stood where the schedule was found for
	RuleVent     verdict.Rule = "canner.vent"     // steady steam for the published minutes
	RuleComeUp   verdict.Rule = "canner.come-up"  // quarts: heating and venting together
	RuleTimer    verdict.Rule = "canner.timer"    // started when the pressure is there
	RulePressure verdict.Rule = "canner.pressure" // reached, and not well above
	RuleSag      verdict.Rule = "canner.sag"      // never below pressure; where it is, the clock restarts from zero
	RuleHold     verdict.Rule = "canner.hold"     // the full time without a break
	RuleGap      verdict.Rule = "canner.gap"      // no pause between readings longer than is believed
	RuleCooling  verdict.Rule = "canner.cooling"  // the pressure falls by itself
	RuleOpening  verdict.Rule = "canner.opening"  // vent and lid stay shut while there is pressure
	RuleWait     verdict.Rule = "canner.wait"     // ten minutes from weight to lid

	// Of what contradicts physics, itself or what was marked.
	RuleContents  verdict.Rule = "canner.contents"  // all that stood in it is what the schedule is for
	RuleBarometer verdict.Rule = "canner.barometer" // belongs to the altitude
	RuleReading   verdict.Rule = "canner.reading"   // a canner can show it
	RuleAtRest    verdict.Rule = "canner.at-rest"   // no pressure while the vent is open or the lid is off
	RuleSteam     verdict.Rule = "canner.steam"     // what is vented is steam
	RuleHeat      verdict.Rule = "canner.heat"      // the pressure falls when the heat is off
	RuleAir       verdict.Rule = "canner.air"       // steam is as hot as its pressure says

	// Of remarks that change no verdict.
	RuleLidLate    verdict.Rule = "canner.lid-late"    // the lid comes off while the jars are hot
	RuleHalfFilled verdict.Rule = "canner.half-filled" // a small load
	RuleSiphoned   verdict.Rule = "canner.siphoned"    // jars that lost liquid
	RuleWeight     verdict.Rule = "canner.weight"      // the weight moves freely
)

func guide1(where string) cite.Citation {
	return cite.Citation{Source: cite.USDAGuide1Rev2015, Where: where, Basis: cite.Read}
}

var (
	timerSource   = guide1("Using pressure canners, step 4, p. 1-22")
	restartSource = guide1("Using pressure canners, step 5, p. 1-22")
	coolSource    = guide1("Using pressure canners, steps 6 and 7, p. 1-22")
	coolingSource = guide1("Recommended canners, p. 1-17")
	sealSource    = cite.Citation{
		Source: cite.MSUEPreservingFoodSafely1997, Where: "items 01600950 and 01600951", Basis: cite.Read,
	}
	reprocessSource   = guide1("Reprocessing unsealed jars, p. 1-26")
	refrigerateSource = cite.Citation{
		Source: cite.MSUEPreservingFoodSafely1997, Where: "item 01600593", Basis: cite.Read,
	}
	discardSource = cite.Citation{
		Source: cite.AskExtension889422, Where: "unsealed jars after 24 hours", Basis: cite.Read,
	}

	// Choices of this package, where nothing is printed.
	restSource = cite.Citation{
		Source: cite.MissouriCanningQuestions, Where: "the needle and zero", Basis: cite.Read,
	}
	ventSource = cite.Citation{
		Where: "2 psi is the most that a narrow vent holds back on a high flame", Basis: cite.Practice,
	}
	steamSource = cite.Citation{
		Source: cite.IAPWSR797, Where: "region 4, at the pressure of the air, less 2 °C for weather and probe",
		Basis: cite.Computed,
	}
	mostSource = cite.Citation{
		Where: "23 psi, more than any published process and less than an absolute sensor shows in one",
		Basis: cite.Practice,
	}
	leastSource = cite.Citation{
		Where: "less than a vacuum, or colder than any kitchen: a probe that is broken", Basis: cite.Practice,
	}
	longSource = cite.Citation{
		Where: "15 psi is the most of any process and weight; far above it for half the process a unit was lost",
		Basis: cite.Practice,
	}
	heatSource = cite.Citation{
		Where: "cold fish and water take minutes to boil; 12 to 15 min are usual", Basis: cite.Practice,
	}
	jumpSource = cite.Citation{
		Where: "from no pressure to the schedule's takes more than a minute; 3 to 5 min are usual",
		Basis: cite.Practice,
	}
	standsSource = cite.Citation{
		Where: "within the shortest published cooling, 20 min, the pressure has begun to fall", Basis: cite.Practice,
	}
	absoluteSource = cite.Citation{
		Where: "a gauge that never moves and shows the pressure of the air", Basis: cite.Practice,
	}
	countSource = cite.Citation{
		Where: "no canner holds more jars than it takes, and no more lose liquid than stand in it", Basis: cite.Computed,
	}
	lateSource    = cite.Citation{Where: "jars are taken out while they are hot", Basis: cite.Practice}
	gapSource     = cite.Citation{Where: "longest gap between readings, set by the caller", Basis: cite.Practice}
	slightlyAbove = cite.Citation{
		Where: "2 psi above the schedule is taken for at or slightly above pressure", Basis: cite.Practice,
	}
	altitudeSource = cite.Citation{Where: "the process is found for the altitude of the stove", Basis: cite.Practice}
)
