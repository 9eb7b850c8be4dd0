package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// The doses that publications give.
const (
	handSalted = 30 * units.PerMille
	quarter    = units.One / 4
	third      = units.One / 3 // 1e-12 down: exactly 1:3 is not above it
)

var (
	handSaltedCitation = cite.Citation{Source: cite.SalmonSmokingFoods2020, Where: "table 2", Basis: cite.Read}
	quarterCitation    = cite.Citation{Source: cite.ColdSmokingTradeBook, Where: "1 lb of salt to 4 lb of fish", Basis: cite.Read}
	thirdCitation      = cite.Citation{Source: cite.MSUEPreservingFoodSafely1997, Where: "item 01600583", Basis: cite.Read}
)

var (
	measureIt = cite.Caution{
		Text:     "a dose is not a result: have the water phase salt measured in the loin, the thickest and slowest part, against the limit for the pack",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.8(2); also Maine ch. 359", Basis: cite.Read},
	}
	keepCold = cite.Caution{
		Text:     "put the salted fish straight back to 38 °F (3.3 °C) or below",
		Citation: cite.Citation{Source: cite.NewYork1NYCRR262, Where: "262.5(a)", Basis: cite.Read},
	}
	lowDose   = cite.Caution{Text: "less salt than the lowest published dose, 30 g per kg of fish", Citation: handSaltedCitation}
	untested  = cite.Caution{Text: "no published dose lies between 30 g per kg and 1 part of salt to 4 of fish: a plan of your own, not a tested recipe", Citation: quarterCitation}
	excess    = cite.Caution{Text: "full salting: the water of the flesh comes near saturation, time and rinsing decide the result, and the fish is freshened before smoking", Citation: thirdCitation}
	overThird = cite.Caution{Text: "more salt than the highest published dose, 1 part to 3 of fish", Citation: thirdCitation}
	sugarNote = cite.Caution{
		Text:     "sugar does not count in water phase salt and replaces no salt",
		Citation: cite.Citation{Source: cite.MaineRules01001Ch359, Where: "s. 1(D)", Basis: cite.Read},
	}
)

func cureCautions(salt units.Ratio, sugar units.Mass) []cite.Caution {
	all := make([]cite.Caution, 0, 5)
	all = append(all, measureIt, keepCold)
	switch {
	case salt < handSalted:
		all = append(all, lowDose)
	case salt > handSalted && salt < quarter:
		all = append(all, untested)
	case salt >= quarter:
		all = append(all, excess)
	}
	if salt > third {
		all = append(all, overThird)
	}
	if sugar > 0 {
		all = append(all, sugarNote)
	}
	return all
}
