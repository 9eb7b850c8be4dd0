package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

var keepLimits = [...]KeepLimit{
	{
		ID: "WPS-SHELF", Salt: 20 * units.Percent, Fish: "shelf-stable seafood, or activity below 0.85",
		Place: "Alaska", Citation: alaska,
	},
	{
		ID: "WPS-SHELF-FDA", Salt: 20 * units.Percent, Fish: "shelf-stable salted fish in a low-oxygen pack",
		Place: "US FDA", Citation: guide("ch. 13, p. 255"),
	},
	{
		ID: "WPS-NOREF", Salt: 17 * units.Percent, Fish: "processed fish stored without refrigeration",
		Place: "Maine", Citation: maine("s. 3(A)(2)"),
	},
	{
		ID: "AW-SHELF-AK", Activity: 850 * units.PerMille, Below: true, Fish: "shelf-stable seafood",
		Place: "Alaska", Citation: alaska,
	},
	{
		ID: "AW-SALTED-FDA", Activity: 850 * units.PerMille, Below: true,
		Fish:  "shelf-stable fish in a low-oxygen pack, its water bound by salt or other substances",
		Place: "US FDA", Citation: guide("ch. 13, p. 255"),
	},
	{
		ID: "AW-SHELF-FDA", Activity: 850 * units.PerMille, Fish: "shelf-stable dried fish",
		Place: "US FDA", Citation: guide("ch. 14, p. 293"),
	},
	{
		ID: "WPS-CA-SEALED", Salt: 9 * units.Percent, Place: "Canada",
		Fish:     "salt content of smoked fish sealed to exclude air, not sterilised, not frozen",
		Citation: cite.Citation{Source: cite.CFIABulletinB21025, Where: "bulletin", Basis: cite.Read},
	},
	{
		ID: "WPS-SALTED-FDA", Salt: 5 * units.Percent,
		Fish:  "salted fish, not smoked, refrigerated in a low-oxygen pack",
		Place: "US FDA", Citation: guide("ch. 13, p. 253"),
	},
	{
		ID: "AW-CHILLED-FDA", Activity: 970 * units.PerMille, Below: true,
		Fish:  "salted fish, not smoked, refrigerated in a low-oxygen pack",
		Place: "US FDA", Citation: guide("ch. 13, p. 253"),
	},
}

var alaska = cite.Citation{Source: cite.Alaska18AAC34, Where: "18 AAC 34.122(6)(B)", Basis: cite.Read}

var saltingRules = [...]SaltingRule{
	{RawUntilSalted, "raw fish until it is salted", at38, cite.Citation{
		Source: cite.MichiganRegulation569, Where: "R 285.569.4; also 1 NYCRR 262.3 and Maine ch. 359 s. 3",
		Basis: cite.Read,
	}},
	{BrineStart, "brine at its start", at60, brineTempCitation},
	{BrineBeyond4h, "where fish brines for more than 4 h", at38, brineTempCitation},
	{DrySaltedCold, "where dry-salted fish lies, from the start", at38, cite.Citation{
		Source: cite.NewYork1NYCRR262, Where: "262.5(a)", Basis: cite.Read,
	}},
	{DrySaltedCoolUS, "where dry-salted fish lies, from the start", at40, cite.Citation{
		Source: cite.FDAColdSmoked2001, Where: "course copy", Basis: cite.Read,
	}},
}
