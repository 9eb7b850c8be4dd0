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

// A dose that is weighed on a scale is rounded up, never down. It still is the published dose if it is at most 2 %
// more, which is the greatest step of a scale that is accepted; practice, no source.
const (
	handSaltedUp = handSalted + handSalted/50
	thirdUp      = third + third/50
)

var (
	handSaltedCitation = cite.Citation{Source: cite.SalmonSmokingFoods2020, Where: "table 2", Basis: cite.Read}
	quarterCitation    = cite.Citation{
		Source: cite.ColdSmokingTradeBook, Where: "1 lb of salt to 4 lb of fish", Basis: cite.Read,
	}
	thirdCitation = cite.Citation{Source: cite.MSUEPreservingFoodSafely1997, Where: "item 01600583", Basis: cite.Read}
)

// What goes with every cure and every verdict on one.
var (
	measureIt = cite.Caution{
		ID: "brine.measure-it", Deciding: true,
		Text: "A dose is not a result. Have the water phase salt measured in the loin, the thickest and slowest part, " +
			"against the limit for the pack.",
		Citation: cite.Citation{
			Source: cite.MichiganRegulation569, Where: "R 285.569.8(2); also Maine ch. 359", Basis: cite.Read,
		},
	}
	keepCold = cite.Caution{
		ID: "brine.keep-cold", Deciding: true,
		Text:     "Put the salted fish straight back to 38 °F (3.3 °C) or below.",
		Citation: cite.Citation{Source: cite.NewYork1NYCRR262, Where: "262.5(a)", Basis: cite.Read},
	}
	rinseOff = cite.Caution{
		ID: "brine.rinse-off", Text: "Rinse the salt off afterwards.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.5(4)", Basis: cite.Read},
	}
	letRest = cite.Caution{
		ID: "brine.let-rest",
		Text: "Then let the fish rest at 38 °F (3.3 °C) or below, so that the salt evens out. " +
			"The surface is far saltier than the loin.",
		Citation: cite.Citation{Where: "usual caution", Basis: cite.Practice},
	}
)

// What belongs to a dose.
var (
	lowDose = cite.Caution{
		ID: "brine.low-dose", Deciding: true,
		Text:     "This is less salt than the lowest published dose, 30 g per kg of fish.",
		Citation: handSaltedCitation,
	}
	untested = cite.Caution{
		ID: "brine.untested-dose",
		Text: "No dose is published between 30 g per kg and 1 part of salt to 4 of fish. " +
			"This is a plan of your own, not a tested recipe.",
		Citation: quarterCitation,
	}
	excess = cite.Caution{
		ID: "brine.full-salting",
		Text: "The water of the flesh comes near saturation: time and rinsing decide the result. " +
			"Freshen the fish before it is smoked.",
		Citation: thirdCitation,
	}
	overThird = cite.Caution{
		ID: "brine.over-a-third", Text: "This is more salt than the highest published dose, 1 part to 3 of fish.",
		Citation: thirdCitation,
	}
	sugarNote = cite.Caution{
		ID: "brine.sugar-is-no-salt", Text: "Sugar does not count in water phase salt and replaces no salt.",
		Citation: cite.Citation{Source: cite.MaineRules01001Ch359, Where: "s. 1(D)", Basis: cite.Read},
	}
	spreadCitation = cite.Citation{Source: cite.SaltWeighings2012, Where: "a quarter cup of each", Basis: cite.Read}
	weighIt        = cite.Caution{
		ID: "brine.weigh-it",
		Text: "These volumes hold only for the named ingredients: a quarter cup of seven salts weighed from 33.2 g " +
			"to 76.0 g. A scale is better than any of them.",
		Citation: spreadCitation,
	}
)

// What belongs to a verdict.
var (
	figuresOnly = cite.Caution{
		ID: "brine.figures-only", Deciding: true,
		Text:     "Only the figures of the salting were compared. A recipe that is not a tested one stays so.",
		Citation: cite.Citation{Where: "usual caution", Basis: cite.Practice},
	}
	gutFirst = cite.Caution{
		ID: "brine.gut-first", Deciding: true,
		Text: "Gut the fish completely before it is salted or dried, roe and milt too, without cutting into the guts. " +
			"Otherwise toxin can form while it cures, even in strict cold.",
		Citation: guide("ch. 13, p. 248; also ch. 14, p. 294"),
	}
	oneKind = cite.Caution{
		ID: "brine.one-kind", Text: "Salt one kind of fish at a time, in pieces of about one size.",
		Citation: guide("ch. 13, p. 252"),
	}
	freshBrine = cite.Caution{
		ID: "brine.fresh-brine", Text: "Take a fresh brine for every load, or treat it before it is used again.",
		Citation: guide("ch. 13, p. 252"),
	}
	filmBreathes = cite.Caution{
		ID: "brine.film-breathes", Deciding: true,
		Text: "An air pack breathes: its film lets 10,000 cc of oxygen or more through each square metre in 24 hours. " +
			"Oil, a deep container pressed free of air or a sealed jar is a low-oxygen pack, whatever the film.",
		Citation: guide("ch. 13, p. 248"),
	}
	chosenLimit = cite.Caution{
		ID: "brine.chosen-limit", Deciding: true,
		Text:     "The limit was chosen by name. It holds where its authority rules, and for the fish that it names.",
		Citation: cite.Citation{Where: "usual caution", Basis: cite.Practice},
	}
	variance = cite.Caution{
		ID: "brine.michigan-variance", Deciding: true,
		Text:     "Michigan allows cold smoking, low-oxygen packs and nitrite only under a variance.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.18", Basis: cite.Read},
	}
	saltInJars = cite.Caution{
		ID: "brine.salt-in-jars", Deciding: true,
		Text:     "Judged as fish for jars: salt is for flavour there. Only the published process makes the jars keep.",
		Citation: cite.Citation{Source: cite.USDAGuide5Rev1994, Where: "Fish, salt if desired", Basis: cite.Read},
	}
	anEstimate = cite.Caution{
		ID: "brine.an-estimate", Deciding: true,
		Text: "A computed salt content is an estimate, whatever the number. " +
			"Without a laboratory keep the fish at or below 38 °F (3.3 °C).",
		Citation: cite.Citation{
			Source: cite.MichiganRegulation569, Where: "R 285.569.8(1); also Maine ch. 359 s. 3(A)", Basis: cite.Read,
		},
	}
	eatSoon = cite.Caution{
		ID: "brine.eat-in-14-days", Deciding: true,
		Text: "Eat home-smoked fish within 14 days, which is printed for storage below 36 °F (2.2 °C), or freeze it.",
		Citation: cite.Citation{
			Source: cite.MSUEPreservingFoodSafely1997, Where: "items 01600579 and 01600580", Basis: cite.Read,
		},
	}
)

// estimateCautions go with every computed salt content.
func estimateCautions() []cite.Caution { return []cite.Caution{anEstimate, eatSoon, measureIt} }

// afterSalting goes with every dry salting and follows it: the cold, the rinse and the rest.
func afterSalting() []cite.Caution { return []cite.Caution{keepCold, rinseOff, letRest} }

func cureCautions(salt units.Ratio, sugar units.Mass) []cite.Caution {
	all := make([]cite.Caution, 0, 4)
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
