package parasites

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

var (
	parasiteA  = cite.Citation{Source: cite.FDAFoodCode, Where: "3-402.11(A)(1)", Basis: cite.Read}
	parasiteB  = cite.Citation{Source: cite.FDAFoodCode, Where: "3-402.11(A)(2)", Basis: cite.Read}
	parasiteC  = cite.Citation{Source: cite.FDAFoodCode, Where: "3-402.11(A)(3)", Basis: cite.Read}
	parasiteEU = cite.Citation{
		Source: cite.EURegulation853y2004, Where: "annex III, s. VIII, ch. III, part D, point 2", Basis: cite.Read,
	}
	parasiteEUHot = cite.Citation{
		Source: cite.EURegulation853y2004, Where: "annex III, s. VIII, ch. III, part D, point 3(a)", Basis: cite.Read,
	}
	parasiteCodex = cite.Citation{Source: cite.CodexCXC52, Where: "also CXS 311-2013, annex", Basis: cite.Recalled}
	parasiteCook  = cite.Citation{Source: cite.FDAFoodCode, Where: "3-401.11", Basis: cite.Read}
	parasiteSmoke = cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.7", Basis: cite.Read}
	tapewormWell  = cite.Citation{Source: cite.MinnesotaParasites, Where: "as quoted second-hand", Basis: cite.Read}
	tapewormState = cite.Citation{Source: cite.NorthDakotaGameFish, Where: "page", Basis: cite.Read}
	tapewormOld   = cite.Citation{Source: cite.PublicHealthTrainingText, Where: "tapeworm text", Basis: cite.Read}

	parasiteThick   = cite.Citation{Source: cite.FDAHazardsGuide2020, Where: "ch. 5, p. 94", Basis: cite.Read}
	parasiteExempt  = cite.Citation{Source: cite.FDAFoodCode, Where: "3-402.11(B)", Basis: cite.Read}
	parasiteAllowed = cite.Citation{Source: cite.SNHDParasiteFAQ, Where: "inspector tolerance", Basis: cite.Read}
)

const (
	eatenRaw    = "fish eaten raw or undercooked"
	euFish      = "fin fish eaten raw, marinated, salted or otherwise treated too mildly to kill"
	noTrematode = "for parasites other than trematodes (flukes); " +
		"a seventh of the time the Food Code asks for at this temperature"
	tapewormOne = "for tapeworm only; warmer and shorter than any rule for fish eaten raw"
)

// The rules that the steps name.
var (
	foodCodeWeek = Rule{
		ID: RuleFoodCodeWeek, Name: "Food Code, 7 days", Temperature: units.Celsius(-20), Hold: 168 * time.Hour,
		Clock: FromLoading, Standing: Deciding, Fish: eatenRaw,
		Note: "frozen and stored; the FDA's guide and the CDC say total time", Citation: parasiteA,
	}
	foodCodeCooking = Rule{
		ID: RuleFoodCodeCooking, Name: "Food Code, cooking", Heat: true, Temperature: units.Celsius(63),
		Hold:  15 * time.Second,
		Clock: FromCore, Standing: Deciding, Fish: "cooked fish",
		Note: "145 °F, which is 62.8 °C; the warmer of the two scales is taken", Citation: parasiteCook,
	}
	hotSmoking = Rule{
		ID: RuleHotSmoking, Name: "hot smoking, 30 minutes", Heat: true, Temperature: units.Fahrenheit(145),
		Hold: 30 * time.Minute, Clock: FromCore, Standing: Deciding, Fish: "hot-smoked fish",
		Note: "made for more than parasites", Citation: parasiteSmoke,
	}
)

// ruleTable has each rule in the scale that its source prints first.
var ruleTable = [...]Rule{
	foodCodeWeek,
	{
		ID: RuleFoodCode15Hours, Name: "Food Code, 15 hours", Temperature: units.Celsius(-35), Hold: 15 * time.Hour,
		Solid: units.Celsius(-35), Clock: FromSolid, Standing: Deciding, Fish: eatenRaw, Citation: parasiteB,
	},
	{
		ID: RuleFoodCode24Hours, Name: "Food Code, 24 hours", Temperature: units.Celsius(-20), Hold: 24 * time.Hour,
		Solid: units.Celsius(-35), Clock: FromSolid, Standing: Deciding, Fish: eatenRaw, Citation: parasiteC,
	},
	{
		ID: RuleEU24Hours, Name: "EU, 24 hours", Temperature: units.Celsius(-20), Hold: 24 * time.Hour,
		Clock: FromCore, Standing: Named, Fish: euFish, Note: noTrematode, Citation: parasiteEU,
	},
	{
		ID: RuleEU15Hours, Name: "EU, 15 hours", Temperature: units.Celsius(-35), Hold: 15 * time.Hour,
		Clock: FromCore, Standing: Named, Fish: euFish, Note: "for parasites other than trematodes (flukes)",
		Citation: parasiteEU,
	},
	{
		ID: RuleCodex24Hours, Name: "Codex, 24 hours", Temperature: units.Celsius(-20), Hold: 24 * time.Hour,
		Clock: FromCore, Standing: Named, Fish: "fish for cold smoking and the like", Citation: parasiteCodex,
	},
	{
		ID: RuleTapeworm48Hours, Name: "tapeworm, 48 hours", Temperature: units.Fahrenheit(0), Hold: 48 * time.Hour,
		Clock: FromLoading, Standing: Refused, Fish: "pike and its like before cold pickling", Note: tapewormOne,
		Citation: tapewormWell,
	},
	{
		ID: RuleTapeworm24Hours, Name: "tapeworm, 24 hours", Temperature: units.Fahrenheit(0), Hold: 24 * time.Hour,
		Clock: FromLoading, Standing: Refused, Fish: "any fish", Note: tapewormOne, Citation: tapewormState,
	},
	{
		ID: RuleTapeworm14F, Name: "tapeworm, 24 hours at 14 °F", Temperature: units.Fahrenheit(14),
		Hold:  24 * time.Hour,
		Clock: FromLoading, Standing: Refused, Fish: "pike, pickerel", Note: tapewormOne, Citation: tapewormOld,
	},

	foodCodeCooking,
	hotSmoking,
	{
		ID: RuleEUHeating, Name: "EU, heating", Heat: true, Temperature: units.Celsius(60), Hold: time.Minute,
		Clock: FromCore, Standing: Named, Fish: euFish, Note: "heated so, the fish need not be frozen",
		Citation: parasiteEUHot,
	},
	{
		ID: RuleTapeworm165F, Name: "tapeworm, 165 °F", Heat: true, Temperature: units.Fahrenheit(165),
		Hold:  5 * time.Minute,
		Clock: FromCore, Standing: Named, Fish: "any fish", Note: "for tapeworm only", Citation: tapewormState,
	},
	{
		ID: RuleTapeworm122F, Name: "tapeworm, 122 °F", Heat: true, Temperature: units.Fahrenheit(122),
		Hold:  10 * time.Minute,
		Clock: FromCore, Standing: Refused, Fish: "pike, pickerel", Note: tapewormOne, Citation: tapewormOld,
	},
}
