package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
)

// print writes the verdict, why, and what to do tonight; the plan beside the records comes after the cautions.
func (s study) print(p *sheet.Sheet) {
	limit := s.strict.Limit
	p.Verdict(s.all.Verdict, fmt.Sprintf("core %s for %s (%s, the strictest home rule)", limit.Printed.Text(p.System),
		units.Lasting(limit.Hold), limit.ID))
	p.Findings(s.all, s.stretch, nil)
	s.printTonight(p)
	p.Heading("In short")
	s.printHold(p, "By the strictest home rule", s.strict)
	s.printOwed(p)
	s.printHold(p, "By the alternative named", s.other)
	if s.takenOut.Given && s.cooked() {
		p.Line("Cooled in time (%s)%s: %s", s.cooling.Rule.ID, p.From(s.cooling.Rule.Citation), s.cooling.Verdict)
	}
	p.Line("%s, %s, %s. %s", s.Place, sheet.Text(p, s.Altitude), s.Batch.Fish, s.About)
	for _, read := range s.read {
		p.Item("%s", read)
	}
	p.Warn(s.other.Cautions...)
	p.Warn(s.keep.Cautions...)
	p.Warn(s.plan.Cautions...)
	p.Warn(s.listeria.Cautions...)
	p.Cautions()
	s.printTimetable(p)
	s.printCurve(p)
	s.printHolds(p)
	s.printCooling(p)
	s.printListeria(p)
	s.printWeight(p)
	p.Close()
}

func (s study) printHold(p *sheet.Sheet, by string, h smoke.Hold) {
	p.Line("%s, core %s for %s (%s)%s: %s; the longest hold was %s", by, h.Limit.Printed.Text(p.System),
		units.Lasting(h.Limit.Hold), h.Limit.ID,
		p.From(h.Limit.Citation), h.Verdict, held(h.Held))
}

func (s study) printOwed(p *sheet.Sheet) {
	hold := units.Lasting(s.strict.Limit.Hold)
	switch {
	case s.strict.Verdict.Passes():
	case !s.takenOut.Given:
		p.Line("STILL OWED: %s without a break, every probe %s, counted from the last reading on",
			owed(s.strict.Owed), s.strict.Limit.Printed.Text(p.System))
	case s.whenOut.Owed < s.strict.Limit.Hold:
		p.Line("STILL OWED when it was taken out at %s: %s. Now it is out, all %s are owed again.",
			s.clock(s.takenOut.Value), owed(s.whenOut.Owed), hold)
	default:
		p.Line("STILL OWED when it was taken out at %s: all %s", s.clock(s.takenOut.Value), hold)
	}
}

func (s study) printTimetable(p *sheet.Sheet) {
	p.Heading("Details: the timetable")
	for _, e := range s.plan.Timetable {
		stage := s.schedule.Stages[e.Stage]
		switch e.Event {
		case smoke.Begin:
			p.Line("%s  %-5s  air %s, %s%s", s.clock(e.At), stage.Kind, sheet.Text(p, stage.Air),
				units.Lasting(stage.For), s.remarks(stage))
		default:
			p.Line("%s         %s", s.clock(e.At), e.Event)
		}
	}
	s.printPellicle(p)
	p.Line("By the model the core comes to %s %s%s.", sheet.Up(p, s.strict.Limit.AtLeast), s.reaches(),
		p.From(s.plan.Core.Citation))
	if s.plan.Fits {
		p.Line("The plan fits: the slowest case has its hold before the cooking ends. It proves nothing; the probes do.")
	} else {
		p.Line("THE PLAN DOES NOT FIT: the slowest case is not through its hold when the cooking ends.")
	}
}

// printPellicle says what is lost before the first smoke, where there is one.
func (s study) printPellicle(p *sheet.Sheet) {
	for _, stage := range s.schedule.Stages {
		if stage.Kind != smoke.Smoke {
			continue
		}
		pellicle := "no more than a pellicle takes"
		if s.plan.OverDried {
			pellicle = "THE SURFACE MAY SEAL before it, and then takes no smoke; dry for a shorter time"
		}
		p.Line("Before the smoke begins it loses %s to %s: %s.", sheet.Text(p, s.plan.BeforeSmoke.Low), sheet.Text(p,
			s.plan.BeforeSmoke.High), pellicle)
		return
	}
}

// remarks is what else is to be known of a stage.
func (s study) remarks(stage smoke.Stage) string {
	text := ""
	if stage.Kind != smoke.Cool {
		text = ", " + "damper " + stage.Damper.String()
		if stage.Humidity.Given {
			text += ", humidity measured " + percent(stage.Humidity.Value, 0)
		}
	}
	if stage.Kind == smoke.Cook && stage.DryAfter.Given {
		text += ", surface taken to be dry after " + units.Lasting(stage.DryAfter.Value)
	}
	return text
}

func (s study) reaches() string {
	t := s.plan.Core.ToLimit
	text := func(at time.Duration) string {
		if at == 0 {
			return "not at all"
		}
		return "at " + s.clock(at)
	}
	return text(t.Low) + " at the soonest, " + text(t.Likely) + " likely, " + text(t.High) + " in the slowest case"
}

// printBelief sets the air beside the core, at the moment when the smoker looks ready.
func (s study) printBelief(p *sheet.Sheet) {
	hottest := units.Temperature{}
	from := s.cook.From
	began := time.Duration(0)
	for _, stage := range s.schedule.Stages {
		if stage.Kind == smoke.Cook && (!hottest.IsSet() || stage.Air.Above(hottest)) {
			hottest, from = stage.Air, began
		}
		began += stage.For
	}
	if s.air.Len() > 0 {
		at, found, _ := s.air.FirstAtOrAbove(hottest)
		if !found {
			return
		}
		from = at
	}
	for _, later := range []time.Duration{0, time.Hour, 2 * time.Hour} {
		core, ok := s.coldest(from + later)
		air, err := s.air.ValueAt(from + later)
		if !ok || err != nil || from+later > s.cook.To {
			return
		}
		below, _ := air.Sub(core)
		p.Line("At %s the air stood at %s and the coldest core at %s, %s below it.", s.clock(from+later),
			sheet.Text(p, air), sheet.Text(p, core), sheet.Text(p, below))
	}
}
