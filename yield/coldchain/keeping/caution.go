package keeping

import (
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// mostCautions is room for the cautions of any food, storage and temperature.
const mostCautions = 8

// cautionsOf are what must be known beside the times of a food in a storage.
func (t *Times) cautionsOf() []cite.Caution {
	all := make([]cite.Caution, 0, mostCautions)
	if len(t.Safety) == 0 && t.Food != HomeCanned {
		all = append(all, notPublished)
	}
	switch t.Food {
	case Brined:
		all = append(all, brinedCounts)
	case Smoked:
		all = append(all, smokedCold, listeriaInAWeek)
	case SmokedVacuum:
		all = append(all, smokedCold, listeriaInAWeek, vacuumFreezes)
	case HomeCanned:
		all = append(all, lookAtJars)
	}
	if t.Storage == InFreezer && t.Food != HomeCanned {
		all = append(all, monthsAreQuality, sealedAndFrozen)
	}
	if t.Storage == InRefrigerator {
		all = append(all, daysTogether)
		if t.Food <= Brined {
			all = append(all, vacuumAt38)
		}
	}
	return all
}

var (
	notPublished = cite.Caution{
		ID: "keeping.not-published", Deciding: true,
		Text: "It is not published how long this is safe here: do not keep it so.",
	}
	brinedCounts = cite.Caution{
		ID: "keeping.brined-counts-as-raw",
		Text: "No keeping time is published for fish in a home brine or cure: it counts as raw fish, " +
			"the time in the salt included.",
		Citation: cite.Citation{Where: "fish in a home brine", Basis: cite.Practice},
	}
	smokedCold = cite.Caution{
		ID: "keeping.smoked-cold",
		Text: "Smoked fish is kept at or below 38 °F (3.3 °C) by law in several states, " +
			"and below 36 °F (2.2 °C) by the strictest home guidance.",
		Citation: chain.ReadIn(cite.MichiganRegulation569, "R 285.569.8(1)"),
	}
	listeriaInAWeek = cite.Caution{
		ID: "keeping.listeria-in-a-week", Deciding: true,
		Text: "Listeria grows in the refrigerator: a table for the trade limits ready-to-eat fish to seven days, " +
			"even just above freezing.",
		Citation: chain.ReadIn(cite.FDAHazardsGuide2020, "Appendix 4, table A-2, p. 421"),
	}
	vacuumFreezes = cite.Caution{
		ID: "keeping.vacuum-freezes", Deciding: true,
		Text: "No home guidance for the refrigerator was found: freeze smoked fish in a vacuum or sealed pack, " +
			"and open the pack before it thaws.",
		Citation: chain.ReadIn(cite.MichiganRegulation569, "R 285.569.18"),
	}
	sealedAndFrozen = cite.Caution{
		ID: "keeping.sealed-and-frozen", Deciding: true,
		Text: "Freezing is all that keeps toxin out of raw fish in a sealed pack: freeze it at once, label it to be kept frozen, " +
			"and thaw it in the refrigerator just before use.",
		Citation: chain.ReadIn(cite.FDAHazardsGuide2020, "ch. 13, p. 254"),
	}
	monthsAreQuality = cite.Caution{
		ID: "keeping.months-are-quality",
		Text: "Freezer months are only of quality, counted from fresh fish frozen quickly and wrapped well. " +
			"Freezing does not mend what was kept too long before.",
		Citation: federalFrozen,
	}
	daysTogether = cite.Caution{
		ID: "keeping.days-together",
		Text: "The days count from the catch, the smoking or the opening, " +
			"at a temperature that a thermometer in the refrigerator shows.",
		Citation: cite.Citation{Where: "counting refrigerator days", Basis: cite.Practice},
	}
	lookAtJars = cite.Caution{
		ID: "keeping.look-at-jars", Deciding: true,
		Text: "A year on the shelf says nothing of the process: look at every jar for signs of spoilage. " +
			"Where the process is in any doubt, boil the food before anyone tastes it.",
		Citation: chain.ReadIn(cite.USDAGuide1Rev1994, "spoiled food; For Safety's Sake"),
	}
	pastKeeping = cite.Caution{
		ID: "keeping.past-the-longest", Deciding: true,
		Text: "Past the longest time of a published rule: do not eat it. " +
			"Neither smell nor taste tells whether it is safe, and heat does not mend it.",
		Citation: cite.Citation{Where: "food past its keeping time", Basis: cite.Practice},
	}
	tooWarmToKeep = cite.Caution{
		ID: "keeping.too-warm", Deciding: true,
		Text: "Warmer than the keeping times are printed for: the hours above that temperature count against the limits of " +
			"exposure. Where no record of them exists, discard it.",
		Citation: kitchenRule,
	}
	warmFreezerKept = cite.Caution{
		ID: "keeping.warm-freezer", Deciding: true,
		Text: "Warmer than the 0 °F (-17.8 °C) that the times of the freezer are printed for: make it colder. " +
			"The quality goes sooner, and the hours of what thawed count against the limits of exposure.",
		Citation: federalFrozen,
	}
	strictestColder = cite.Caution{
		ID: "keeping.strictest-colder", Deciding: true,
		Text:     "Too warm for the strictest source and not for the others: make it colder, and go by the shortest time.",
		Citation: cite.Citation{Where: "sources that differ in temperature", Basis: cite.Practice},
	}
	keptFromMemory = cite.Caution{
		ID: "keeping.from-memory", Deciding: true,
		Text: "The rule that decides here is from memory, as its line says: the rules that were read allow more.",
	}
	jarFrozen = cite.Caution{
		ID: "keeping.jar-frozen",
		Text: "Freezing does a jar no harm unless its seal breaks: let it thaw and look at the seal. " +
			"A jar with a broken seal has a sign of spoilage. Freezing softens the fish.",
		Citation: chain.ReadIn(cite.USDAGuide1Rev1994, "Storing"),
	}
)
