package main

import (
	"strings"

	larder "example.org/lakelarder/brine"
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

var (
	notDeath = cite.Caution{
		ID: "brinetable.growth-is-not-death", Deciding: true,
		Text:     "What cannot grow is not dead, and toxin that is there already stays. Keep brine and fish cold.",
		Citation: cite.Citation{Where: "limits of growth, everything else at its best", Basis: cite.Practice},
	}
	ofWater = cite.Caution{
		ID: "brinetable.of-the-water", Deciding: true,
		Text: "These are strengths of the brine. The water of the fish in it has less salt until a laboratory " +
			"says otherwise.",
		Citation: cite.Citation{Where: "brine and water phase salt", Basis: cite.Practice},
	}
)

func (f file) print(p *sheet.Sheet, all []brine) {
	first := all[0]
	p.Line("RESULT: %s of %s brine at %s: %s of salt and %s of water, %s on the salometer", sheet.Text(p, f.Volume),
		sheet.Text(p, first.Share), sheet.Text(p, f.Temperature),
		sheet.Up(p, first.makeup.Salt), sheet.Text(p, first.makeup.Water), degrees(first.Salometer, units.Percent, 1))
	p.Do("Weigh the salt. Count a hydrometer's reading only at the temperature that it is made for.")
	p.Line("%s. %s", f.Title, f.About)
	f.printScales(p, all)
	printActivity(p, all)
	p.Warn(notDeath, ofWater)
	p.Cautions()
	f.printMakeup(p, all)
	printGrowth(p, all)
	p.Close()
}

// degrees is a reading of a scale that is a ratio in the library.
func degrees(r, unit units.Ratio, places int32) string {
	return units.In(r, unit, places).String() + "°"
}

func (f file) printScales(p *sheet.Sheet, all []brine) {
	_, saturation := solution.Saturation()
	p.Heading("The same strength on every scale")
	for _, system := range []units.System{units.US, units.Metric} {
		if p.System != units.Both && p.System != system {
			continue
		}
		s := &sheet.Sheet{W: p.W, System: system}
		rows := [][]string{{"by mass", "salometer", "Baumé", "gravity", "to water", "to its volume", "in the brine",
			"density"}}
		for _, b := range all {
			rows = append(rows, []string{sheet.Text(s, b.Share), degrees(b.Salometer, units.Percent, 1),
				degrees(b.Baume, units.One, 2), units.In(b.SpecificGravity, units.One, 4).String(),
				sheet.Text(s, b.PerWater), toVolume(system, b.PerVolumeWater), toVolume(system, b.PerVolumeBrine),
				toVolume(system, b.Density)})
		}
		p.Table(rows...)
	}
	p.Line("By mass is salt/(salt + water); 100° of the salometer is saturation%s. \"To its volume\" is salt to a "+
		"volume of the water, \"in the brine\" to one of the brine%s.",
		p.From(saturation), p.From(solution.DensityCitation()))
}

// toVolume is a mass to a volume in the units that brine is made in.
func toVolume(system units.System, d units.Density) string {
	if system == units.US {
		return units.In(d, solution.PoundPerGallon, 3).StringFixed(3) + " lb/gal"
	}
	return units.In(d, units.GramPerLitre, 1).StringFixed(1) + " g/L"
}

func (f file) printMakeup(p *sheet.Sheet, all []brine) {
	p.Heading("To make " + sheet.Text(p, f.Volume))
	rows := [][]string{{"by mass", "salt", "water", "which is"}}
	for _, b := range all {
		rows = append(rows, []string{sheet.Text(p, b.Share), sheet.Up(p, b.makeup.Salt), sheet.Text(p, b.makeup.Water),
			sheet.Text(p, b.makeup.WaterVolume)})
	}
	p.Table(rows...)
}

func printActivity(p *sheet.Sheet, all []brine) {
	p.Heading("What it does to water")
	rows := [][]string{{"by mass", "water activity", "freezes from"}}
	var from []cite.Citation
	for _, b := range all {
		ice := "gives salt first"
		if b.ice.Given {
			ice = sheet.Text(p, b.ice.Value)
			from = append(from, b.from)
		}
		rows = append(rows, []string{sheet.Text(p, b.Share), units.In(b.activity, units.One, 4).String(), ice})
	}
	p.Table(rows...)
	p.Line("Activity by the osmotic coefficient of salt in water%s; freezing by printed points%s",
		p.From(solution.ActivityCitation()), p.FromEach(from[:min(1, len(from))]))
}

// printGrowth is, of each organism, the weakest strength of the list that holds it back, by its printed salt or
// activity.
func printGrowth(p *sheet.Sheet, all []brine) {
	p.Heading("What it holds back, everything else at its best")
	rows := [][]string{{"organism", "least activity", "most salt", "held from", ""}}
	for _, limit := range larder.GrowthLimits() {
		weakest := units.Stated[units.Ratio]{}
		for _, b := range all {
			if holds(limit, b) && (!weakest.Given || b.Share < weakest.Value) {
				weakest = units.State(b.Share)
			}
		}
		held := "none of these"
		if weakest.Given {
			held = sheet.Text(p, weakest.Value)
		}
		rows = append(rows, []string{limit.Organism, printed(p, limit.LeastActivity, true),
			printed(p, limit.MostSalt, false), held, p.From(limit.Citation)})
	}
	p.Table(rows...)
}

// holds reports whether a strength holds an organism back only by salt or by activity.
func holds(limit larder.GrowthLimit, b brine) bool {
	all, err := larder.Conditions{WaterPhaseSalt: b.Share, Activity: b.activity}.Holds()
	if err != nil {
		return false
	}
	for _, growth := range all {
		if growth.Limit == limit {
			return len(growth.By) > 0
		}
	}
	return false
}

// printed is a figure of the table, a dash where it has none.
func printed(p *sheet.Sheet, r units.Ratio, plain bool) string {
	switch {
	case r == 0:
		return "–"
	case plain:
		return strings.TrimRight(units.In(r, units.One, 4).String(), "0")
	}
	return sheet.Text(p, r)
}
