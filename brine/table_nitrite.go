package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// nitriteLimits are the printed limits in parts per million: least, most.
var nitriteLimits = [...]NitriteLimit{
	nitriteLimit("NIT-200", "sodium nitrite", 0, 200, "smoked cured salmon, sablefish, shad").
		in(cite.CFR21Part172Sec175, "(a)(2)", cite.Read),
	nitriteLimit("NIT-500", "sodium nitrate", 0, 500, "smoked cured salmon, sablefish, shad").
		in(cite.CFR21Part172Sec170, "(a)(1)", cite.Read),
	nitriteLimit("NIT-10", "sodium nitrite", 0, 10, "smoked cured tunafish").
		in(cite.CFR21Part172Sec175, "(a)(1)", cite.Read),
	nitriteLimit("NIT-CHUB", "sodium nitrite", 100, 200, "smoked chub, in the loin, with 3.5 % water phase salt").
		in(cite.CFR21Part172Sec177, "", cite.Recalled),
}

func nitriteLimit(id, salt string, least, most int, fish string) NitriteLimit {
	return NitriteLimit{
		ID: id, Salt: salt, Fish: fish,
		Least: units.Ratio(least) * units.PartsPerMillion, Most: units.Ratio(most) * units.PartsPerMillion,
	}
}

func (l NitriteLimit) in(source cite.Source, where string, basis cite.Basis) NitriteLimit {
	l.Citation = cite.Citation{Source: source, Where: where, Basis: basis}
	return l
}
