package keeping

import (
	"sort"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Rule is one printed keeping time, Low to High: after Low it is time, after High it is over. Both are zero where the
// print knows no end (NoEnd). AtMost is the warmest that the time is printed for, with Under already too warm; not set
// where the print states none. A month counts 30 days, a year 365.
type Rule struct {
	Food      Food    // as printed; zero for any
	Storage   Storage // as printed
	Printed   string  // "1-2 days"
	Low, High time.Duration
	NoEnd     bool
	AtMost    units.Temperature
	Under     bool
	Note      string
	Citation  cite.Citation
}

// SafetyRule is a keeping time after which the food may make ill.
type SafetyRule struct{ Rule }

// QualityRule is a keeping time after which the food may be poor to eat. It says nothing of safety.
type QualityRule struct{ Rule }

// Times is what is published of a food in a storage, each list from the strictest: the shorter Low, then the shorter
// High, then the colder. A list without rules is a time that nobody has published, and not a time without an end.
type Times struct {
	Food     Food
	Storage  Storage
	Safety   []SafetyRule
	Quality  []QualityRule
	Cautions []cite.Caution
}

// Find returns every published keeping time of a food in a storage, safety and quality apart, each with the strictest
// first. A food counts as what it is and as what it belongs to: trout as trout, raw, lean and fatty fish. A Food or
// Storage that is not set or not known is a units.RangeError. Refrigerator days are of safety; freezer months are of
// quality alone, as is the year of a jar.
func Find(food Food, storage Storage) (Times, error) {
	if food == 0 || food >= anyFood {
		return Times{}, units.RangeError{What: "food", Got: food.String(), Low: Raw.String(), High: Opened.String()}
	}
	if storage == 0 || storage > InCupboard {
		return Times{}, units.RangeError{What: "storage", Got: storage.String(), Low: InRefrigerator.String(), High: InCupboard.String()}
	}
	k := Times{Food: food, Storage: storage}
	for _, row := range timeRows {
		if row.storage != storage || !food.countsAs(row.food, storage) {
			continue
		}
		if row.concern == Safety {
			k.Safety = append(k.Safety, SafetyRule{row.rule()})
		} else {
			k.Quality = append(k.Quality, QualityRule{row.rule()})
		}
	}
	sort.SliceStable(k.Safety, func(i, j int) bool { return k.Safety[i].stricter(k.Safety[j].Rule) })
	sort.SliceStable(k.Quality, func(i, j int) bool { return k.Quality[i].stricter(k.Quality[j].Rule) })
	k.Cautions = k.cautions()
	return k, nil
}

func (row timeRow) rule() Rule {
	r := Rule{
		Food: row.food, Storage: row.storage, Printed: row.printed, Low: row.low, High: row.high, NoEnd: row.high == 0,
		AtMost: row.at, Under: row.under, Note: row.note, Citation: row.citation,
	}
	if r.Food == anyFood {
		r.Food = 0
	}
	return r
}

func (r Rule) stricter(than Rule) bool {
	switch {
	case r.NoEnd != than.NoEnd:
		return than.NoEnd
	case r.Low != than.Low:
		return r.Low < than.Low
	case r.High != than.High:
		return r.High < than.High
	}
	return r.AtMost.Below(than.AtMost) || r.AtMost == than.AtMost && r.Under && !than.Under
}

// cautions are what must be known beside the rules.
func (k Times) cautions() []cite.Caution {
	var all []cite.Caution
	if len(k.Safety) == 0 && k.Food != HomeCanned {
		all = append(all, cite.Caution{Text: "nobody has published how long this is safe here: do not keep it so"})
	}
	switch k.Food {
	case Brined:
		all = append(all, brinedCounts)
	case Smoked, SmokedVacuum:
		all = append(all, smokedCold, listeriaInAWeek)
		if k.Food == SmokedVacuum {
			all = append(all, vacuumFreezes)
		}
	case HomeCanned:
		all = append(all, jarSigns)
	}
	if k.Storage == InFreezer && k.Food != HomeCanned {
		all = append(all, monthsAreQuality)
	}
	if k.Storage == InRefrigerator {
		all = append(all, daysTogether)
		if k.Food <= Brined {
			all = append(all, vacuumAt38)
		}
	}
	return all
}

var (
	brinedCounts = cite.Caution{
		Text:     "no keeping time is published for fish in a home brine or cure: it counts as raw fish, the time in the salt included",
		Citation: cite.Citation{Where: "fish in a home brine", Basis: cite.Practice},
	}
	smokedCold = cite.Caution{
		Text:     "smoked fish is kept at or below 38 °F (3.3 °C) by law in several states, and below 36 °F (2.2 °C) by the strictest home guidance",
		Citation: chain.ReadIn(cite.MichiganRegulation569, "R 285.569.8(1)"),
	}
	listeriaInAWeek = cite.Caution{
		Text:     "Listeria grows in the refrigerator: a table for the trade limits ready-to-eat fish to seven days, even just above freezing",
		Citation: chain.ReadIn(cite.FDAHazardsGuide2020, "Appendix 4, table A-2, as quoted in a secondary note"),
	}
	vacuumFreezes = cite.Caution{
		Text:     "no home guidance for the refrigerator was found: freeze smoked fish in a vacuum or sealed pack, and open the pack before it thaws",
		Citation: chain.ReadIn(cite.MichiganRegulation569, "R 285.569.18"),
	}
	monthsAreQuality = cite.Caution{
		Text:     "freezer months are of quality alone, counted from fresh fish frozen quickly and wrapped well; freezing does not mend what was kept too long before",
		Citation: federalFrozen,
	}
	daysTogether = cite.Caution{
		Text:     "the days count from the catch, the smoking or the opening, at a temperature that a thermometer in the refrigerator shows",
		Citation: cite.Citation{Where: "counting refrigerator days", Basis: cite.Practice},
	}
	jarSigns = cite.Caution{
		Text:     "a year on the shelf says nothing of the process: look at every jar for SpoilageSigns, and where the process is in any doubt boil before tasting, as package process says",
		Citation: chain.ReadIn(cite.USDAGuide1Rev1994, "spoiled food; For Safety's Sake"),
	}
)
