package main

import (
	"example.org/lakelarder/brine"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// governing is a published figure that a part is held against, or one that was computed and decides nothing.
type governing struct {
	what     string
	figure   units.Figure
	citation cite.Citation
}

// packed is what a process is for.
func packed(s process.Schedule) string {
	if s == (process.Schedule{}) {
		return ""
	}
	pack := s.Pack.String() + " "
	if s.Pack == process.AsSmoked { // smoked fish has no other pack
		pack = ""
	}
	return pack + s.Product.String() + " in " + s.Jar.String() + " jars, " + s.Gauge.String() + " gauge"
}

func governsProcess(s process.Schedule) []governing {
	if s == (process.Schedule{}) {
		return nil
	}
	all := []governing{
		band(s),
		{"pressure on the gauge", units.AtLeast(s.Pressure), s.Citation},
		{"time at pressure", units.AtLeast(s.Process), s.Citation},
		{"venting of steady steam", units.AtLeast(s.Vent), s.VentCitation},
	}
	if s.ComeUp > 0 {
		all = append(all, governing{"heating and venting together", units.AtLeast(s.ComeUp), s.ComeUpCitation})
	}
	return append(all, governing{"headspace", units.Exactly(s.Headspace), s.HeadspaceCitation},
		governing{"water in the canner", water(s.Water), s.WaterCitation})
}

// band is the altitudes of a setting.
func band(s process.Schedule) governing {
	switch b := s.Band; {
	case b.UpTo == process.NoLimit:
		return governing{"altitudes", units.MoreThan(b.Over), s.Citation}
	case b.Over == 0:
		return governing{"altitudes", units.Between(b.Over, b.UpTo), s.Citation}
	default:
		return governing{"altitudes above the first figure", units.Between(b.Over, b.UpTo), s.Citation}
	}
}

func water(w process.Water) units.Figure {
	switch {
	case w.Volume == 0:
		return units.Between(w.Shallow, w.Deep).With("deep")
	case w.AtLeast:
		return units.AtLeast(w.Volume)
	}
	return units.Exactly(w.Volume)
}

func (r recipe) governsCure(a brine.Assessment) (all []governing) {
	if !r.forJars() {
		all = append(all, governing{"water phase salt, measured in the loin", units.AtLeast(a.Limit.Least),
			a.Limit.Citation})
	}
	applies := map[brine.SaltingRuleID]bool{brine.DrySaltedCold: true}
	if a.Method == brine.WetBrined {
		applies = map[brine.SaltingRuleID]bool{brine.BrineStart: true, brine.BrineBeyond4h: true}
	}
	for _, rule := range brine.SaltingRules() {
		if applies[rule.ID] {
			all = append(all, governing{rule.What, rule.Limit, rule.Citation})
		}
	}
	switch {
	case a.SaltToFish.Given:
		all = append(all, governing{"salt to fish, from the recipe", units.Exactly(a.SaltToFish.Value), computed})
	case a.Strength.Given:
		all = append(all, governing{"strength of the brine, from the recipe", units.Exactly(a.Strength.Value),
			computed})
	}
	if e := a.Estimate; !e.Citation.IsZero() {
		all = append(all, governing{"water phase salt, estimated", e.Figure(), e.Citation})
	}
	return all
}

var computed = cite.Citation{Where: "the recipe's own figures", Basis: cite.Computed}

func (r recipe) governsSmoke(a smoke.Assessment) (all []governing) {
	if r.forJars() {
		return governsLight()
	}
	if g := a.Governing; g.AtLeast.IsSet() {
		all = append(all, governing{"core of the thickest piece", g.Printed, g.Citation},
			governing{"held at that core", units.AtLeast(g.Hold), g.Citation})
	}
	keep := a.Storage.Temperature
	if a.Storage.Days == 0 { // in a vacuum, or in a pack that is not stated
		return append(all, governing{what: "storage", figure: units.InWords("frozen")},
			governing{"thawing, serving", keep.Printed, keep.Citation})
	}
	return append(all, governing{"storage", keep.Printed, keep.Citation},
		governing{"days in the refrigerator", units.AtMost(units.Count(a.Storage.Days)), a.Storage.Time.Citation})
}

// governsLight is what the process of smoked fish in jars was tested with, and the smoke that leads there.
func governsLight() []governing {
	var all []governing
	if tested, err := smoke.CheckJarLoss(10 * units.Percent); err == nil {
		all = append(all, governing{"loss of weight in smoking", units.Between(tested.Least, tested.Most),
			tested.Citation})
	}
	if rule, err := smoke.FindChamberRule(smoke.LightSmoke); err == nil {
		all = append(all, governing{"air of the smoker", rule.Printed, rule.Citation},
			governing{"time in the smoker", units.AtMost(rule.Within), rule.Citation})
	}
	return all
}
