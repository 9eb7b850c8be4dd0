package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

var keepLimits = [...]KeepLimit{
	{"WPS-SHELF", 20 * units.Percent, 0, "shelf-stable seafood, or activity below 0.85", "Alaska", cite.Citation{Source: cite.Alaska18AAC34, Where: "18 AAC 34.122(6)(B)", Basis: cite.Read}},
	{"WPS-NOREF", 17 * units.Percent, 0, "processed fish stored without refrigeration", "Maine", cite.Citation{Source: cite.MaineRules01001Ch359, Where: "s. 3(A)(2)", Basis: cite.Read}},
	{"AW-SHELF-AK", 0, 850 * units.PerMille, "shelf-stable seafood: below this", "Alaska", cite.Citation{Source: cite.Alaska18AAC34, Where: "18 AAC 34.122(6)(B)", Basis: cite.Read}},
	{"AW-SHELF-FDA", 0, 850 * units.PerMille, "shelf-stable seafood", "US FDA", cite.Citation{Source: cite.FDAHazardsGuide4, Where: "ch. 14", Basis: cite.Recalled}},
	{"WPS-CA-SEALED", 9 * units.Percent, 0, "salt content of smoked fish sealed to exclude air, not sterilised, not frozen", "Canada", cite.Citation{Source: cite.CFIABulletinB21025, Where: "bulletin", Basis: cite.Read}},
}

var saltingRules = [...]SaltingRule{
	{"RAW-38", "raw fish until it is salted", units.Fahrenheit(38), cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.4; also 1 NYCRR 262.3 and Maine ch. 359 s. 3", Basis: cite.Read}},
	{"BRINE-START", "brine at its start", units.Fahrenheit(60), brineTempCitation},
	{"BRINE-4H", "where fish brines for more than 4 h", units.Fahrenheit(38), brineTempCitation},
	{"DRYSALT-COLD", "where dry-salted fish lies, from the start", units.Fahrenheit(38), cite.Citation{Source: cite.NewYork1NYCRR262, Where: "262.5(a)", Basis: cite.Read}},
	{"DRYSALT-COLD-FDA", "where dry-salted fish lies, from the start", units.Fahrenheit(40), cite.Citation{Source: cite.FDAColdSmoked2001, Where: "course copy", Basis: cite.Read}},
}
