package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// saltLimits are the printed limits in tenths of a percent, the default first.
var saltLimits = [...]SaltLimit{
	least(35, LowOxygenPack, "WPS-US-VAC", "refrigerated smoked fish, letter on cold-smoked salmon", "US FDA", cite.FDAWarningFLA0227, "least water phase salt", cite.Read),
	least(35, LowOxygenPack, "WPS-FDA-CH13", "smoked fish", "US FDA", cite.FDAHazardsGuide4, "ch. 13", cite.Recalled),
	least(35, LowOxygenPack, "WPS-ME-VAC", "hot- or cold-smoked fish", "Maine", cite.MaineRules01001Ch359, "s. 2(C)(2), (5)", cite.Read),
	least(35, PackNotStated, "WPS-TORRY", "ready-to-eat hot-smoked fish below 5 °C", "UK (advice)", cite.TorryNote82Revised, "accompanying notes", cite.Read).smoked(HotSmoked),
	least(30, AirPack, "WPS-MI-AIR", "smoked fish", "Michigan", cite.MichiganRegulation569, "R 285.569.8(2)", cite.Read),
	least(30, PackNotStated, "WPS-GL-MODEL", "smoked lake whitefish, lake trout, lake herring", "Great Lakes model plan", cite.GreatLakesHACCP2000, "water phase salt", cite.Read).smoked(HotSmoked),
	least(25, AirPack, "WPS-ME-AIR", "hot- or cold-smoked fish", "Maine", cite.MaineRules01001Ch359, "s. 2(C)(1), (4)", cite.Read),
	least(30, LowOxygenPack, "WPS-US-VAC-NIT", "refrigerated smoked fish, letter on cold-smoked salmon", "US FDA", cite.FDAWarningFLA0227, "least water phase salt", cite.Read).withNitrite(),
	least(30, LowOxygenPack, "WPS-FDA-CH13-NIT", "smoked fish", "US FDA", cite.FDAHazardsGuide4, "ch. 13", cite.Recalled).withNitrite(),
	least(30, LowOxygenPack, "WPS-ME-VAC-NIT", "hot-smoked fish", "Maine", cite.MaineRules01001Ch359, "s. 2(C)(2)", cite.Read).smoked(HotSmoked).withNitrite(),
}

func least(tenths int, pack Pack, id, fish, place string, source cite.Source, where string, basis cite.Basis) SaltLimit {
	return SaltLimit{
		ID: id, Least: units.Ratio(tenths) * units.Percent / 10, Pack: pack, Fish: fish, Place: place,
		Citation: cite.Citation{Source: source, Where: where, Basis: basis},
	}
}

func (l SaltLimit) withNitrite() SaltLimit {
	l.Nitrite = true
	return l
}

func (l SaltLimit) smoked(s Smoking) SaltLimit {
	l.Smoked = s
	return l
}
