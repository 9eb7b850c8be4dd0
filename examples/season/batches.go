package main

import (
	"fmt"
	"strings"
	"time"

	"github.com/shopspring/decimal"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	larder "example.org/lakelarder/yield/season"
)

// made adds up what the batches fill: jars, bags, and canner loads.
func made(batches []larder.Batch) (jars, bags, loads int) {
	for _, b := range batches {
		jars += b.Made[0]
		bags += b.Made[1]
		loads += b.Loads[0]
	}
	return jars, bags, loads
}

func (s season) printShopping(p *page, plan larder.Plan, l larder.Larder, batches []larder.Batch) {
	p.Heading("The year: shopping list")
	jars, bags, loads := made(batches)
	p.Line("for the fish that the plan keeps; the larder wanted %d jars and %d bags, less what is eaten fresh or cannot be held", l.Supplies[0].Containers, l.Supplies[1].Containers)
	p.Line("  jars            %d, for %s", jars, count(loads, "canner load"))
	p.Line("  lids            %d, new for every jar; spare ones for lids that fail", jars)
	p.Line("  freezer bags    %d for smoked fish", bags)
	salt, sugar := s.cureFor(batches)
	p.Line("  salt            %s for the cure, and %s for the jars at %s each, as the households like it %s", p.mass(coarse(p, salt)),
		p.mass(coarse(p, units.Mass(jars)*s.year.jarSalt)), p.mass(s.year.jarSalt), p.From(practice("salt in the jar for taste, by the households")))
	p.Line("  sugar           %s for the cure", p.mass(coarse(p, sugar)))
	var largest, all units.Mass
	for i := range plan.Kept {
		m := units.Mass(plan.Kept[i]) * plan.Year.Fish
		largest = max(largest, m)
		all += m
	}
	ice := practice("ice for the fish, by the households' own weighing")
	p.Line("  ice             %s for the largest trip, %s in all: %s of the fish %s", p.mass(coarse(p, s.iceFor(largest))), p.mass(coarse(p, s.iceFor(all))), s.year.ice, p.From(ice))
}

func (s season) iceFor(fish units.Mass) units.Mass {
	m, err := s.year.ice.Of(fish)
	if err != nil {
		return fish
	}
	return m
}

// coarse rounds up to what a shop sells by.
func coarse(p *page, m units.Mass) units.Mass {
	if p.US {
		return units.CeilTo(m, units.Ounce)
	}
	return units.CeilTo(m, 10*units.Gram)
}

// cureFor adds up the cures of the batches.
func (s season) cureFor(batches []larder.Batch) (salt, sugar units.Mass) {
	for _, b := range batches {
		if cure, err := s.cure(b); err == nil {
			salt += cure.Salt
			sugar += cure.Sugar
		}
	}
	return salt, sugar
}

// cure is that of the fillets which a batch packs.
func (s season) cure(b larder.Batch) (brine.Cure, error) {
	return brine.DryCure(units.Mass(b.Made[1])*s.year.smoked.Pack, s.saltToFish, s.mix)
}

// printCosts shares the price of the trips that are made out over the fish they bring.
func (s season) printCosts(p *page, plan larder.Plan, l larder.Larder) error {
	p.Heading("The year: costs")
	p.Line("in %s, for the larder as wanted; trips are shared out by the kilogram of whole fish", s.year.currency)
	trips := s.year.trip.Mul(decimal.NewFromInt(int64(plan.Trips())))
	kilogram := decimal.Zero
	if plan.Fish() > 0 {
		kilogram = trips.DivRound(units.In(units.Mass(plan.Fish())*plan.Year.Fish, units.Kilogram, 16), 8)
	}
	for i, supply := range l.Supplies {
		prices := larder.Prices{Kilogram: kilogram, Container: s.year.prices[i], Load: s.year.prices[2]}
		c, err := larder.Costs(l.Household, supply, prices, 2)
		if err != nil {
			return err
		}
		p.Line("  %-15s %s in all, %s a container, %s a meal", supply.Want.Name, c.Total.StringFixed(2), c.Container.StringFixed(2), c.Meal.StringFixed(2))
	}
	return nil
}

// printBatches is the calendar and, below it, a sheet for each day in the kitchen.
func (s season) printBatches(p *page, schedule process.Schedule, l larder.Larder, batches []larder.Batch) error {
	p.Heading("The year: calendar of loads")
	fresh := s.year.plan.Fresh
	p.Line("fish is canned or cured within %s of the catch %s, and counts as preserved by the week after", count(int(fresh.Time/day), "day"), p.From(fresh.Citation))
	for _, b := range batches {
		p.Line("  caught in week %2d: %2d fish, %s whole: %s in %s, %s of smoked fish", b.Caught, b.Fish, p.mass(b.Round), count(b.Made[0], "jar"), count(b.Loads[0], "load"),
			count(b.Made[1], "bag"))
	}
	if len(batches) == 0 {
		p.Line("  no fish is preserved")
	}
	for _, b := range batches {
		p.Heading(fmt.Sprintf("Batch sheet, fish caught in week %d", b.Caught))
		p.Line("[ ] caught ______, on ice from ______; canned or cured within %s, by ______ %s", count(int(fresh.Time/day), "day"), p.From(fresh.Citation))
		p.Line("[ ] fish counted: %d, weighed whole: ______ (planned %s)", b.Fish, p.mass(b.Round))
		if b.Made[0] > 0 {
			p.Line("[ ] %s of %s: loads of %s", count(b.Made[0], s.jar.String()+" jar"), p.mass(s.year.jars.Pack), loadSizes(b.Made[0], s.jarsPerLoad))
			p.Line("[ ] each load: vent %s, then %s and never less for %s without a break %s", minutes(schedule.Vent), p.pressure(schedule.Pressure), minutes(schedule.Process), p.From(schedule.Citation))
			p.Line("    load  vented  at pressure  heat off  lid off  sealed")
			for i := 1; i <= b.Loads[0]; i++ {
				p.Line("    %4d  ______  ___________  ________  _______  ______", i)
			}
		}
		if b.Made[1] > 0 {
			if err := s.printSmokeSheet(p, b); err != nil {
				return err
			}
		}
	}
	return nil
}

func (s season) printSmokeSheet(p *page, b larder.Batch) error {
	cure, err := s.cure(b)
	if err != nil {
		return err
	}
	p.Line("[ ] fillets for %s, %s raw: %s salt, %s sugar", count(b.Made[1], "bag"), p.mass(cure.Fillet), p.mass(dose(p, cure.Salt)), p.mass(dose(p, cure.Sugar)))
	p.Line("[ ] weight before the smoker ______, after ______; lost ______ %%")
	p.Line("[ ] core %s for %s by the probe in the thickest piece: from ______ to ______ %s", p.Temperature(s.coreLimit.AtLeast), minutes(s.coreLimit.Hold), p.From(s.coreLimit.Citation))
	p.Line("[ ] frozen on ______; eat within %d days %s", s.year.smoked.Keeps.Time/day, p.From(s.year.smoked.Keeps.Citation))
	return nil
}

const day = 24 * time.Hour

// count is "1 load" or "3 loads".
func count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}

// loadSizes is "9, 9, 5".
func loadSizes(jars, load int) string {
	var sizes []string
	for ; jars > 0; jars -= load {
		sizes = append(sizes, fmt.Sprint(min(jars, load)))
	}
	return strings.Join(sizes, ", ")
}
