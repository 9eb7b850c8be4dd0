package main

import (
	"fmt"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/units"
)

// plan is the batch that the run belongs to.
type plan struct {
	load  canner.Load
	batch canner.Batch
	cycle canner.Cycle
	day   canner.Span
	fill  canner.Fill
	cut   canner.Cut
}

func (n night) planned() (d plan, err error) {
	v := n.Vessel
	vessel := canner.Vessel{Diameter: v.Diameter, Height: v.Height, Rack: v.Rack, Divider: v.Divider,
		Capacity: v.Capacity}
	if d.load, err = canner.Fit(n.run.Schedule, vessel, n.jar, v.Clearance); err != nil {
		return d, fmt.Errorf("vessel: %w", err)
	}
	if d.batch, err = d.load.Loads(n.Jars); err != nil {
		return d, fmt.Errorf("jars: %w", err)
	}
	if d.cycle, err = canner.CycleOf(n.run.Schedule); err != nil {
		return d, err
	}
	if d.day, err = d.cycle.Day(d.batch.Loads, n.Canners, n.Refill); err != nil {
		return d, err
	}
	if d.fill, err = n.jar.CheckFill(n.Fill, n.run.Schedule.Headspace, canner.FleshDensity); err != nil {
		return d, fmt.Errorf("fill: %w", err)
	}
	d.cut, err = n.jar.Cut(n.run.Schedule.Headspace)
	return d, err
}

func (d plan) print(p *sheet.Sheet, n night) {
	p.Heading("The load and the day")
	p.Item("%d jars a load: %d in each of %d layers%s, no more for %s; clearance %s", d.load.Jars, d.load.PerLayer,
		d.load.Layers,
		p.From(d.load.Packing.Citation), d.load.LayersBy, sheet.Text(p, n.Vessel.Clearance))
	p.Item("%d jars are %d loads, the last of %d", n.Jars, d.batch.Loads, d.batch.Last)
	p.Item("A load takes %s%s; all of them with %d canner(s) %s", span(d.cycle.Total), p.From(d.cycle.Total.Citation),
		n.Canners, span(d.day))
	again := ""
	if !d.fill.Possible {
		again = ": too much by " + sheet.Up(p, d.fill.Over) + ", weigh again"
	}
	p.Item("%s in a %s jar, at most %s below %s of headspace%s%s", sheet.Text(p, n.Fill), n.jar.Name, sheet.Down(p,
		d.fill.Most),
		sheet.Text(p, n.run.Schedule.Headspace), p.From(d.fill.Citation), again)
	sizes := ""
	if !n.jar.Citation.IsZero() {
		sizes = fmt.Sprintf("; jar sizes are typical ones%s: measure your own", p.From(n.jar.Citation))
	}
	p.Item("Cut the fish to %s%s%s", sheet.Down(p, d.cut.Length), p.From(d.cut.Citation), sizes)
}

func span(s canner.Span) string {
	if s.Open {
		return units.Lasting(s.Least) + " or more"
	}
	return units.Lasting(s.Least) + " to " + units.Lasting(s.Most)
}
