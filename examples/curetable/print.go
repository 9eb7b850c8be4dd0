package main

import (
	"fmt"
	"strings"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
)

// print is what to weigh and what comes of it, then the tables.
func (p plan) print(s *sheet.Sheet) {
	limit := brine.DefaultSaltLimit()
	with := ""
	if p.batch.Sugar > 0 {
		with = " and " + sheet.Text(s, p.batch.Sugar) + " of sugar"
	}
	s.Line("RESULT: %s of salt%s for %s of fish in %s; %s in the cold", sheet.Up(s, p.batch.Salt), with,
		sheet.Text(s, p.batch.Fish),
		counted(len(p.rows), "fillet"), units.Lasting(p.Cure.Time))
	s.Do("Weigh salt and sugar for every fillet by its own weight, from the table below.")
	s.Do("Have the water phase salt measured in the loin: at least %s for a low-oxygen pack%s. No estimate here says "+
		"that it is met.",
		units.AmountOf(limit.Least).Text(s.System, units.Up), s.From(limit.Citation))
	s.Line("%s. %s", p.Title, p.About)
	p.weigh(s)
	p.times(s)
	p.salt(s)
	s.Close()
}

func (p plan) weigh(s *sheet.Sheet) {
	s.Heading("What to weigh")
	rows := [][]string{{"fillet", "mass", "thickness", "salt", "sugar"}}
	for _, r := range p.rows {
		rows = append(rows, []string{r.Name, sheet.Text(s, r.Mass), sheet.Text(s, r.Thickness),
			sheet.Up(s, r.cure.Salt), sheet.Text(s, r.cure.Sugar)})
		s.Warn(r.cure.Cautions...)
	}
	s.Table(append(rows, []string{"in all", sheet.Text(s, p.batch.Fish), "", sheet.Up(s, p.batch.Salt),
		sheet.Text(s, p.batch.Sugar)})...)
	by := fmt.Sprintf("%s of %s%s", spoons(s, p.volumes.Salt), p.volumes.SaltAs.Name, s.From(p.volumes.SaltAs.Citation))
	if p.volumes.Sugar > 0 {
		by += fmt.Sprintf(", %s of %s%s", spoons(s, p.volumes.Sugar), p.volumes.SugarAs.Name,
			s.From(p.volumes.SugarAs.Citation))
	}
	s.Line("By volume, of only these ingredients: %s", by)
	s.Warn(p.volumes.Cautions...)
	for i, l := range p.layers {
		s.Line("Layer %d from the bottom: %s under %s of the mix", i+1, p.named(l.Fillets), sheet.Text(s, l.Cure))
	}
}

// named is fillets by their numbers from 1.
func (p plan) named(numbers []int) string {
	var names []string
	for _, n := range numbers {
		names = append(names, p.rows[n-1].Name)
	}
	return strings.Join(names, " and ")
}

func (p plan) times(s *sheet.Sheet) {
	s.Heading("How long")
	for _, rule := range brine.SaltingRules() {
		if rule.ID == brine.DrySaltedCold {
			s.Line("This cure: %s for every fillet, %s%s. Published only for fat fish buried in salt:",
				units.Lasting(p.Cure.Time),
				rule.Limit.Text(s.System), s.From(rule.Citation))
		}
	}
	var times []string
	for _, r := range p.rows {
		if r.noTime != nil {
			times = append(times, r.Name+" no time ("+r.noTime.Error()+")")
			continue
		}
		times = append(times, r.Name+" "+units.Lasting(r.buried.Time)+s.From(r.buried.Citation))
		s.Warn(r.buried.Cautions...)
	}
	s.Line("  %s", strings.Join(times, "; "))
}

func (p plan) salt(s *sheet.Sheet) {
	s.Heading("Water phase salt to expect: low (likely) high")
	rows := [][]string{{"fillet", "after the cure", "after smoking", "evened out"}}
	for _, r := range p.rows {
		rows = append(rows, []string{r.Name, span(s, r.before), span(s, r.after), percent(s, r.end.Final)})
		s.Warn(r.before.Cautions...)
		s.Warn(r.end.Cautions...)
	}
	s.Table(rows...)
	s.Line("The range is that of the published diffusivity%s. \"Evened out\" is after smoking, with all the salt "+
		"that the drip leaves%s.",
		s.From(brine.FleshDiffusivity().Citation), s.From(p.rows[0].end.Citation))
	p.enough(s)
}

// enough says of every fillet whether the salt that the drip leaves is what the limit asks of the water left.
func (p plan) enough(s *sheet.Sheet) {
	for _, r := range p.rows {
		text := "enough"
		if r.end.Kept < r.required {
			text = "NOT ENOUGH, however long it lies"
		}
		s.Line("  %s: %s of salt kept, %s asked for by the limit: %s", r.Name, sheet.Down(s, r.end.Kept),
			sheet.Up(s, r.required), text)
	}
}

// spoons is a volume in the measures of a kitchen.
func spoons(s *sheet.Sheet, v units.Volume) string {
	kitchen := units.Kitchen(units.CeilTo(v, units.Teaspoon/4), 4, units.Quart, units.Cup, units.Tablespoon,
		units.Teaspoon)
	metric := units.AmountOf(v).Text(units.Metric, units.Up)
	switch s.System {
	case units.US:
		return kitchen
	case units.Metric:
		return metric
	}
	return kitchen + " (" + metric + ")"
}

func span(s *sheet.Sheet, e brine.Estimate) string {
	return percent(s, e.Low) + " (" + percent(s, e.Likely) + ") " + percent(s, e.High)
}

// percent is a water phase salt, cut: it is never rounded up to a limit.
func percent(s *sheet.Sheet, r units.Ratio) string { return sheet.Down(s, r) }

func counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
