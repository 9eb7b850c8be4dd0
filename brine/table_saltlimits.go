package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// saltLimits are the published limits in tenths of a percent, the default first.
var saltLimits = [...]SaltLimit{
	least(35, LowOxygenPack, FDALetter, "US FDA", "refrigerated smoked fish, letter on cold-smoked salmon").in(letter),
	least(35, LowOxygenPack, FDAGuide, "US FDA", "smoked fish").in(chapter13),
	least(35, LowOxygenPack, MaineVacuum, "Maine", "hot- or cold-smoked fish").in(maine("s. 2(C)(2), (5)")),
	least(35, 0, TorryAdvice, "UK (advice)", "ready-to-eat hot-smoked fish below 5 °C").smoked(HotSmoked).in(torry),
	least(30, AirPack, MichiganAir, "Michigan", "smoked fish").in(michigan),
	least(30, 0, GreatLakesModel, "Great Lakes model plan", "smoked lake whitefish, lake trout, lake herring").
		smoked(HotSmoked).in(greatLakes),
	least(25, AirPack, MaineAir, "Maine", "hot- or cold-smoked fish").in(maine("s. 2(C)(1), (4)")),
	least(30, LowOxygenPack, FDALetterNitrite, "US FDA", "refrigerated smoked fish, letter on cold-smoked salmon").
		withNitrite().in(letter),
	least(30, LowOxygenPack, FDAGuideNitrite, "US FDA", "smoked fish").withNitrite().in(chapter13),
	least(30, LowOxygenPack, MaineVacuumNitrite, "Maine", "hot-smoked fish").smoked(HotSmoked).withNitrite().
		in(maine("s. 2(C)(2)")),
}

var (
	letter     = cite.Citation{Source: cite.FDAWarningFLA0227, Where: "least water phase salt", Basis: cite.Read}
	chapter13  = guide("ch. 13, control strategy 1A, p. 260")
	torry      = cite.Citation{Source: cite.TorryNote82Revised, Where: "accompanying notes", Basis: cite.Read}
	michigan   = cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.8(2)", Basis: cite.Read}
	greatLakes = cite.Citation{Source: cite.GreatLakesHACCP2000, Where: "water phase salt", Basis: cite.Read}
)

func maine(where string) cite.Citation {
	return cite.Citation{Source: cite.MaineRules01001Ch359, Where: where, Basis: cite.Read}
}

// guide cites a place in the guide of the FDA, the printing of March 2020.
func guide(where string) cite.Citation {
	return cite.Citation{Source: cite.FDAHazardsGuide2020, Where: where, Basis: cite.Read}
}

func least(tenths int, pack Pack, id SaltLimitID, place, fish string) SaltLimit {
	return SaltLimit{ID: id, Least: units.Ratio(tenths) * units.Percent / 10, Pack: pack, Fish: fish, Place: place}
}

func (l SaltLimit) in(c cite.Citation) SaltLimit {
	l.Citation = c
	return l
}

func (l SaltLimit) withNitrite() SaltLimit {
	l.Nitrite = true
	return l
}

func (l SaltLimit) smoked(s Smoking) SaltLimit {
	l.Smoked = s
	return l
}
