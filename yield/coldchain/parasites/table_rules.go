package parasites

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

var (
	parasiteA     = cite.Citation{Source: cite.FDAFoodCode, Where: "3-402.11(A)(1)", Basis: cite.Read}
	parasiteB     = cite.Citation{Source: cite.FDAFoodCode, Where: "3-402.11(A)(2)", Basis: cite.Read}
	parasiteC     = cite.Citation{Source: cite.FDAFoodCode, Where: "3-402.11(A)(3)", Basis: cite.Read}
	parasiteEU    = cite.Citation{Source: cite.EURegulation853y2004, Where: "annex III, s. VIII, ch. III, part D, point 2", Basis: cite.Read}
	parasiteEUHot = cite.Citation{Source: cite.EURegulation853y2004, Where: "annex III, s. VIII, ch. III, part D, point 3(a)", Basis: cite.Read}
	parasiteCodex = cite.Citation{Source: cite.CodexCXC52, Where: "also CXS 311-2013, annex", Basis: cite.Recalled}
	parasiteCook  = cite.Citation{Source: cite.FDAFoodCode, Where: "3-401.11", Basis: cite.Read}
	parasiteSmoke = cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.7", Basis: cite.Read}
	tapewormWell  = cite.Citation{Source: cite.MinnesotaParasites, Where: "as quoted second-hand", Basis: cite.Read}
	tapewormState = cite.Citation{Source: cite.NorthDakotaGameFish, Where: "page", Basis: cite.Read}
	tapewormOld   = cite.Citation{Source: cite.PublicHealthTrainingText, Where: "tapeworm text", Basis: cite.Read}

	parasiteThick   = cite.Citation{Source: cite.FDAHazardsGuide4, Where: "ch. 5", Basis: cite.Recalled}
	parasiteExempt  = cite.Citation{Source: cite.FDAFoodCode, Where: "3-402.11(B)", Basis: cite.Read}
	parasiteAllowed = cite.Citation{Source: cite.SNHDParasiteFAQ, Where: "inspector tolerance", Basis: cite.Read}
)

const (
	eatenRaw    = "fish eaten raw or undercooked"
	euFish      = "fin fish eaten raw, marinated, salted or otherwise treated too mildly to kill"
	noTrematode = "for parasites other than trematodes (flukes); a seventh of the time the Food Code asks for at this temperature"
	tapewormOne = "for tapeworm alone; warmer and shorter than any rule for fish eaten raw"
)

// ruleTable has each rule in the scale that its source prints first.
var ruleTable = [...]Rule{
	{"Food Code, 7 days", false, units.Celsius(-20), 168 * time.Hour, units.Temperature{}, FromLoading, Deciding, eatenRaw, "frozen and stored; the FDA's guide and the CDC say total time", parasiteA},
	{"Food Code, 15 hours", false, units.Celsius(-35), 15 * time.Hour, units.Celsius(-35), FromSolid, Deciding, eatenRaw, "", parasiteB},
	{"Food Code, 24 hours", false, units.Celsius(-20), 24 * time.Hour, units.Celsius(-35), FromSolid, Deciding, eatenRaw, "", parasiteC},
	{"EU, 24 hours", false, units.Celsius(-20), 24 * time.Hour, units.Temperature{}, FromCore, Named, euFish, noTrematode, parasiteEU},
	{"EU, 15 hours", false, units.Celsius(-35), 15 * time.Hour, units.Temperature{}, FromCore, Named, euFish, "for parasites other than trematodes (flukes)", parasiteEU},
	{"Codex, 24 hours", false, units.Celsius(-20), 24 * time.Hour, units.Temperature{}, FromCore, Named, "fish for cold smoking and the like", "", parasiteCodex},
	{"tapeworm, 48 hours", false, units.Fahrenheit(0), 48 * time.Hour, units.Temperature{}, FromLoading, Refused, "pike and its like before cold pickling", tapewormOne, tapewormWell},
	{"tapeworm, 24 hours", false, units.Fahrenheit(0), 24 * time.Hour, units.Temperature{}, FromLoading, Refused, "any fish", tapewormOne, tapewormState},
	{"tapeworm, 24 hours at 14 °F", false, units.Fahrenheit(14), 24 * time.Hour, units.Temperature{}, FromLoading, Refused, "pike, pickerel", tapewormOne, tapewormOld},

	{"Food Code, cooking", true, units.Celsius(63), 15 * time.Second, units.Temperature{}, FromCore, Deciding, "cooked fish", "145 °F, which is 62.8 °C; the warmer of the two scales is taken", parasiteCook},
	{"hot smoking, 30 minutes", true, units.Fahrenheit(145), 30 * time.Minute, units.Temperature{}, FromCore, Deciding, "hot-smoked fish", "made for more than parasites", parasiteSmoke},
	{"EU, heating", true, units.Celsius(60), time.Minute, units.Temperature{}, FromCore, Named, euFish, "heated so, the fish need not be frozen", parasiteEUHot},
	{"tapeworm, 165 °F", true, units.Fahrenheit(165), 5 * time.Minute, units.Temperature{}, FromCore, Named, "any fish", "for tapeworm alone", tapewormState},
	{"tapeworm, 122 °F", true, units.Fahrenheit(122), 10 * time.Minute, units.Temperature{}, FromCore, Refused, "pike, pickerel", tapewormOne, tapewormOld},
}
