package brine_test

import (
	"encoding/json"
	"fmt"
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/units"
)

// A recipe that is too sparing and too warm.
func ExampleCheck() {
	a, err := brine.Check(brine.Claim{
		Method:      brine.DrySalted,
		Fish:        units.State(2 * units.Kilogram),
		Salt:        units.State(40 * units.Gram),
		Time:        units.State(24 * time.Hour),
		Temperature: units.State(units.Fahrenheit(45)),
	})
	fmt.Println(a.Verdict, err)
	for _, f := range a.Findings {
		fmt.Println(f)
	}
	// Output:
	// not met <nil>
	// salt to fish: 2 % stated, at least 3 % published, short by 1 %
	// temperature: 45 °F (7.3 °C) stated, at most 38 °F (3.3 °C) published, too warm by 7 F° (3.9 C°)
	// water phase salt: missing, at least 3.5 % published
}

func ExampleStrictestSaltLimit() {
	l := brine.StrictestSaltLimit(brine.ColdSmoked, brine.AirPack)
	fmt.Println(l.Least, l.Place)
	fmt.Println(brine.StrictestSaltLimit(brine.ColdSmoked, brine.LowOxygenPack).Least)
	// Output:
	// 3.5 % UK (advice)
	// 3.5 %
}

func ExampleGrowthLimits() {
	l := brine.GrowthLimits()[3]
	fmt.Println(l.Organism, l.MostSalt, l.Coldest)
	fmt.Println(l.Citation.Basis)
	// Output:
	// Clostridium botulinum type E, nonproteolytic B and F 5 % 3.3 °C
	// read
}

// What 3.5 % of salt and a refrigerator at 38 °F hold back.
func ExampleConditions_Holds() {
	all, err := brine.Conditions{WaterPhaseSalt: 35 * units.PerMille, Temperature: units.Fahrenheit(38)}.Holds()
	for _, g := range all[2:7] {
		fmt.Println(g)
	}
	fmt.Println(err)
	// Output:
	// Clostridium botulinum type A, proteolytic B and F: held back by cold
	// Clostridium botulinum type E, nonproteolytic B and F: can grow
	// Clostridium perfringens: held back by cold
	// pathogenic Escherichia coli: held back by cold
	// Listeria monocytogenes: can grow
	// <nil>
}

func ExampleGrowth() {
	fmt.Println(brine.Growth{Limit: brine.GrowthLimit{Organism: "Salmonella spp."}, By: []brine.Barrier{brine.ByCold, brine.ByPH}})
	// Output: Salmonella spp.: held back by cold, pH
}

func ExampleBarrier() {
	fmt.Println(brine.BySalt, brine.ByActivity)
	// Output: salt water activity
}

func ExampleKeepLimits() {
	for _, l := range brine.KeepLimits()[:2] {
		fmt.Println(l.Salt, l.Place)
	}
	// Output:
	// 20 % Alaska
	// 20 % US FDA
}

func ExampleSaltingRules() {
	for _, r := range brine.SaltingRules()[:4] {
		fmt.Println(r.Limit.Text(units.Both), r.What)
	}
	// Output:
	// at most 38 °F (3.3 °C) raw fish until it is salted
	// at most 60 °F (15.6 °C) brine at its start
	// at most 38 °F (3.3 °C) where fish brines for more than 4 h
	// at most 38 °F (3.3 °C) where dry-salted fish lies, from the start
}

// An assessment is saved, read again, and shown in one system of units.
func ExampleAssessment() {
	a, err := brine.Check(brine.Claim{SaltToFish: units.State(3 * units.Percent), Time: units.State(24 * time.Hour)})
	if err != nil {
		fmt.Println(err)
		return
	}
	text, err := json.Marshal(a)
	fmt.Println(len(text) > 1000, err)
	var back brine.Assessment
	fmt.Println(json.Unmarshal(text, &back), back.Verdict, back.Cautions[0].ID)
	for _, f := range back.Findings {
		fmt.Println(f.Text(units.Metric))
	}
	// Output:
	// true <nil>
	// <nil> cannot tell brine.figures-only
	// temperature: missing, at most 3.3 °C published
	// water phase salt: missing, at least 3.5 % published
}

func ExampleClaim() {
	var c brine.Claim
	err := json.Unmarshal([]byte(`{"fish": "2 kg", "saltVolume": "1/4 cup", "saltAs": "table salt", "time": "24 h", "pack": "air pack"}`), &c)
	fmt.Println(c.Fish.Value, c.SaltAs.Name, units.Lasting(c.Time.Value), c.Pack, err)
	err = json.Unmarshal([]byte(`{"fish": "2 kg", "salt": 60}`), &c)
	fmt.Println(err)
	// Output:
	// 2 kg table salt 24 h air pack <nil>
	// salt (line 1, column 26): expected text with a unit, such as "1 lb 6 oz", not the number 60
}

func ExampleParseMethod() {
	m, err := brine.ParseMethod("Dry salted")
	fmt.Println(m, err)
	fmt.Println(brine.Method(0))
	_, err = brine.ParseMethod("pickled")
	fmt.Println(err)
	// Output:
	// dry salted <nil>
	// not stated
	// unknown method of salting "pickled": expected dry salted or wet brined
}

func ExampleParseSmoking() {
	s, err := brine.ParseSmoking("cold-smoked")
	fmt.Println(s, err)
	// Output:
	// cold-smoked <nil>
}

func ExampleParsePack() {
	p, err := brine.ParsePack("low-oxygen pack")
	fmt.Println(p, err)
	// Output:
	// low-oxygen pack <nil>
}

func ExampleParseFaces() {
	f, err := brine.ParseFaces("two faces")
	fmt.Println(f, err)
	// Output:
	// two faces <nil>
}

func ExampleParseFatness() {
	f, err := brine.ParseFatness("lean fish")
	fmt.Println(f, err)
	// Output:
	// lean fish <nil>
}

func ExampleParseBarrier() {
	b, err := brine.ParseBarrier("ph")
	fmt.Println(b, err)
	// Output:
	// pH <nil>
}

func ExampleMethod() {
	fmt.Println(brine.DrySalted, "or", brine.WetBrined)
	// Output: dry salted or wet brined
}

func ExampleSmoking() {
	fmt.Println(brine.HotSmoked, "or", brine.ColdSmoked)
	// Output: hot-smoked or cold-smoked
}

func ExamplePack() {
	fmt.Println(brine.AirPack, "or", brine.LowOxygenPack)
	// Output: air pack or low-oxygen pack
}

func ExampleFaces() {
	fmt.Println(brine.OneFace, "or", brine.TwoFaces)
	// Output: one face or two faces
}

func ExampleFatness() {
	fmt.Println(brine.FatFish, "or", brine.LeanFish)
	// Output: fat fish or lean fish
}

// 3.0 % in an air pack passes only where somebody names the authority that says so.
func ExampleCheckAgainst() {
	c := brine.Claim{
		SaltToFish: units.State(3 * units.Percent), Time: units.State(24 * time.Hour), Temperature: units.State(units.Celsius(3.3)),
		Smoked: brine.HotSmoked, Pack: brine.AirPack, WaterPhaseSalt: units.State(3 * units.Percent),
	}
	a, err := brine.Check(c)
	fmt.Println(a.Verdict, a.Limit.Place, err)
	a, err = brine.CheckAgainst(c, brine.MichiganAir)
	fmt.Println(a.Verdict, a.Limit.Place, err)
	c.Pack = brine.LowOxygenPack
	a, err = brine.CheckAgainst(c, brine.MichiganAir)
	fmt.Println(a.Verdict, err)
	for _, f := range a.Findings {
		fmt.Println(f)
	}
	// Output:
	// not met UK (advice) <nil>
	// met Michigan <nil>
	// not met <nil>
	// water phase salt: 3 % stated, at least 3.5 % published, short by 0.5 %
	// pack: low-oxygen pack stated, air pack published
}

func ExampleFindSaltLimit() {
	l, err := brine.FindSaltLimit(brine.MaineVacuum)
	fmt.Println(l.Least, l.Pack, err)
	_, err = brine.FindSaltLimit("WPS")
	fmt.Println(err)
	// Output:
	// 3.5 % low-oxygen pack <nil>
	// unknown limit of water phase salt "WPS": expected WPS-US-VAC, WPS-FDA-CH13, WPS-ME-VAC, WPS-TORRY, WPS-MI-AIR, WPS-GL-MODEL, WPS-ME-AIR, WPS-US-VAC-NIT, WPS-FDA-CH13-NIT or WPS-ME-VAC-NIT
}
