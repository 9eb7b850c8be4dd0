package smoke

import "example.org/lakelarder/units/cite"

var (
	beginsWarm = cite.Caution{
		ID: "smoke.begins-warm",
		Text: "The record begins warmer than raw fish. Either it was started late, or its degrees stand under the wrong heading: " +
			"check both.",
		Citation: cite.Citation{Where: "raw fish is not warmer than a warm room, 25 °C", Basis: cite.Practice},
	}
	wrongHeading = cite.Caution{
		ID:       "smoke.wrong-heading",
		Text:     "The same numbers in the other scale, or doubled, would reach the limit: check how the logger writes degrees.",
		Citation: cite.Citation{Where: "the numbers of the record read in another way", Basis: cite.Computed},
	}
	threeFish = cite.Caution{
		ID:       "smoke.three-fish",
		Text:     "The guide for the trade measures at the thickest part of three of the largest fish, not of one.",
		Citation: readIn(cite.FDAHazardsGuide2020, "ch. 13, control strategy 1C, p. 265"),
	}
	checkThermometer = cite.Caution{
		ID:       "smoke.check-thermometer",
		Text:     "Check the thermometer in an ice slurry, or in boiling water corrected for the altitude.",
		Citation: readIn(cite.FDAHazardsGuide2020, "ch. 13, control strategy 1C, p. 265"),
	}
	badSite = cite.Caution{
		ID: "smoke.bad-site", Deciding: true,
		Text: "A probe near bone, near the rack or in a thin tail is warmer than the middle of the thickest part. " +
			"This verdict holds for where the probe sat, not for the fish.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.7(1)", Basis: cite.Read},
	}
	coldAtOnce = cite.Caution{
		ID:       "smoke.cold-at-once",
		Text:     "Cool smoked fish at once to 38 °F (3.3 °C) or below. The hours of a rule are a limit, not a plan.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.8(1)", Basis: cite.Read},
	}
	probeInCore = cite.Caution{
		ID: "smoke.probe-in-core", Deciding: true,
		Text:     "The readings must come from the core: the middle of the thickest part of one of the biggest fish, where the smoker heats least. A thermometer of the smoker or the oven shows the air.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.7(1)", Basis: cite.Read},
	}
	notByHeatAlone = cite.Caution{
		ID: "smoke.not-by-heat-alone", Deciding: true,
		Text:     "Heat alone does not make smoked fish keep: cool it at once to 38 °F (3.3 °C) or below, and have its water phase salt measured.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.8(1), (2)", Basis: cite.Read},
	}
	stricterExists = cite.Caution{
		ID:       "smoke.stricter-exists",
		Text:     "The strictest published figure for home smoking is 180 °F (82.2 °C) for 30 min; this limit is lower.",
		Citation: DefaultCoreLimit().Citation,
	}
	commercial = cite.Caution{
		ID:       "smoke.commercial",
		Text:     "A limit that is not home guidance belongs to a licensed process that measures its salt and records its cold storage.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.7(1) and 8", Basis: cite.Read},
	}
)

// readIn is the citation of a figure that was read in print.
func readIn(source cite.Source, where string) cite.Citation {
	return cite.Citation{Source: source, Where: where, Basis: cite.Read}
}

// holdCautions are the cautions of a hold; a probe that sits badly stands first.
func holdCautions(limit CoreLimit, site Site) []cite.Caution {
	all := make([]cite.Caution, 0, 9)
	if site > InThickest {
		all = append(all, badSite)
	}
	all = append(all, probeInCore, notByHeatAlone)
	if limit.AtLeast.Below(DefaultCoreLimit().AtLeast) {
		all = append(all, stricterExists)
	}
	if !limit.Home {
		all = append(all, commercial)
	}
	if limit.Citation.Unverified() {
		all = append(all, cite.Caution{
			ID: "smoke.limit-unseen", Deciding: true, Text: "This limit was not seen in print.", Citation: limit.Citation,
		})
	}
	return append(all, threeFish, checkThermometer)
}
