package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

var keepLimits = [...]KeepLimit{
	{
		ID: "WPS-SHELF", Salt: 20 * units.Percent, Fish: "shelf-stable seafood, or activity below 0.85", Place: "Alaska",
		Citation: cite.Citation{Source: cite.Alaska18AAC34, Where: "18 AAC 34.122(6)(B)", Basis: cite.Read},
	},
	{
		ID: "WPS-NOREF", Salt: 17 * units.Percent, Fish: "processed fish stored without refrigeration", Place: "Maine",
		Citation: cite.Citation{Source: cite.MaineRules01001Ch359, Where: "s. 3(A)(2)", Basis: cite.Read},
	},
	{
		ID: "AW-SHELF-AK", Activity: 850 * units.PerMille, Below: true, Fish: "shelf-stable seafood", Place: "Alaska",
		Citation: cite.Citation{Source: cite.Alaska18AAC34, Where: "18 AAC 34.122(6)(B)", Basis: cite.Read},
	},
	{
		ID: "AW-SHELF-FDA", Activity: 850 * units.PerMille, Fish: "shelf-stable seafood", Place: "US FDA",
		Citation: cite.Citation{Source: cite.FDAHazardsGuide4, Where: "ch. 14", Basis: cite.Recalled},
	},
	{
		ID: "WPS-CA-SEALED", Salt: 9 * units.Percent, Place: "Canada",
		Fish:     "salt content of smoked fish sealed to exclude air, not sterilised, not frozen",
		Citation: cite.Citation{Source: cite.CFIABulletinB21025, Where: "bulletin", Basis: cite.Read},
	},
}

var saltingRules = [...]SaltingRule{
	{RawUntilSalted, "raw fish until it is salted", coldLimit, cite.Citation{
		Source: cite.MichiganRegulation569, Where: "R 285.569.4; also 1 NYCRR 262.3 and Maine ch. 359 s. 3",
		Basis: cite.Read,
	}},
	{BrineStart, "brine at its start", startLimit, brineTempCitation},
	{BrineBeyond4h, "where fish brines for more than 4 h", coldLimit, brineTempCitation},
	{DrySaltedCold, "where dry-salted fish lies, from the start", coldLimit, cite.Citation{
		Source: cite.NewYork1NYCRR262, Where: "262.5(a)", Basis: cite.Read,
	}},
	{DrySaltedCoolUS, "where dry-salted fish lies, from the start", units.Fahrenheit(40), cite.Citation{
		Source: cite.FDAColdSmoked2001, Where: "course copy", Basis: cite.Read,
	}},
}
