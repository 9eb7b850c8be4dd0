package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

var (
	oven = cite.Citation{Source: cite.WSUSmokingCuring, Where: "home smoking method: finish in the oven",
		Basis: cite.Read}
	raw  = cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, p. 5-13", Basis: cite.Read}
	soon = cite.Citation{Source: cite.PNW450, Where: "holding lightly smoked fish", Basis: cite.Read}
	lost = cite.Citation{Where: "fish that no record vouches for", Basis: cite.Practice}
)

// ovenWithin is how soon fish from a smoker that was not hot enough must be in an oven.
const ovenWithin = 2 * time.Hour

// canning is the process of smoked fish in jars and how this fish stands to it; zero when no jars were named.
type canning struct {
	schedule process.Schedule
	loss     smoke.JarLoss
	light    smoke.Assessment // of the smoking as fish for jars
}

func (s *study) can() (c canning, err error) {
	if s.Jar == 0 {
		return c, nil
	}
	c.schedule, err = process.Find(process.Request{
		Product: process.SmokedFish, Pack: process.AsSmoked, Jar: s.Jar, Gauge: s.Gauge, Altitude: units.State(s.Altitude),
	})
	if err != nil {
		return c, err
	}
	claim := s.lightly()
	claim.Loss = units.Stated[units.Ratio]{Value: s.weight.loss, Given: s.Weighed.Given}
	if c.light, err = smoke.Check(claim); err != nil || !s.Weighed.Given {
		return c, err
	}
	c.loss, err = smoke.CheckJarLoss(s.weight.loss)
	return c, err
}

// lightly is what the smoking before the cooking states of fish for jars: the hottest air of its smoke stages and the
// time in them.
func (s study) lightly() smoke.Claim {
	claim := smoke.Claim{Smoking: smoke.HotSmoked, ForJars: true}
	began := time.Duration(0)
	for _, stage := range s.schedule.Stages {
		length := stage.For
		if s.takenOut.Given {
			length = min(length, s.takenOut.Value-began)
		}
		if stage.Kind == smoke.Smoke && length > 0 {
			claim.Time = units.State(claim.Time.Value + length)
			if !claim.Air.Given || stage.Air.Above(claim.Air.Value) {
				claim.Air = units.State(stage.Air)
			}
		}
		began += stage.For
	}
	return claim
}

// printTonight is what to do, right below why.
func (s study) printTonight(p *sheet.Sheet) {
	if s.cooked() || !s.takenOut.Given {
		s.printShort(p)
		if late := s.printLateOven(p); !late {
			s.printCooled(p)
			s.printKeep(p)
		}
	} else {
		p.Do("Taken out before the cooking it is lightly smoked, raw fish, and no smoked fish to keep: refrigerate it for a day at most%s, and cook it, freeze it or can it.", p.From(soon))
	}
	if s.Jar != 0 {
		s.printJars(p)
	}
}

// printShort says what is left to do for a hold that was not met.
func (s study) printShort(p *sheet.Sheet) {
	switch {
	case s.strict.Verdict.Passes():
		return
	case !s.takenOut.Given:
		p.Do("Leave it in the heat, or finish it in an oven: see what is still owed. A probe that falls below begins the hold anew.")
		return
	}
	p.Do("It is not hot-smoked fish by the strictest home rule. Until %s it may go into an oven%s; the hold begins anew there.", s.clock(s.takenOut.Value+ovenWithin), p.From(oven))
	switch {
	case s.byOther():
		p.Do("It is by %s, a home rule as well (%s)%s. Choose the rule before the smoking, not after reading this.",
			s.other.Limit.ID, s.other.Limit.Place, p.From(s.other.Limit.Citation))
	case s.other.Verdict.Passes():
		p.Do("That %s is met is no help: it belongs to a licensed process that measures its salt and records its cold storage%s.", s.other.Limit.ID, p.From(s.other.Limit.Citation))
	}
	p.Do("Fish that meets no rule chosen beforehand is not kept. When in doubt, throw it out%s.", p.From(lost))
}

// printLateOven says so, and reports it, when the fish stood for too long between the smoker and the oven in which
// its hold was met.
func (s study) printLateOven(p *sheet.Sheet) bool {
	if s.backAt.Given {
		p.Do("It was taken out at %s and got warm again only after %s, later than it may go into an oven%s: no hold makes up for that, it is not kept. When in doubt, throw it out%s.",
			s.clock(s.takenOut.Value), s.clock(s.backAt.Value), p.From(oven), p.From(lost))
	}
	return s.backAt.Given
}

// printCooled says what the cooling means for the fish.
func (s study) printCooled(p *sheet.Sheet) {
	rule := s.cooling.Rule
	switch {
	case !s.takenOut.Given && s.strict.Verdict.Passes():
		p.Do("The hold is met: take it out, and cool it at once. This sheet judges the cooling when the record has it.")
	case s.takenOut.Given && s.cooling.Verdict == verdict.NotMet:
		p.Do("It cooled too slowly (%s)%s: it is not kept. When in doubt, throw it out%s.", rule.ID,
			p.From(rule.Citation), p.From(lost))
	case s.takenOut.Given && s.cooling.Verdict == verdict.CannotTell:
		p.Do("Nobody can tell yet that it cooled in time (%s)%s: see the cooling below. Fish that nobody saw cold in time is not kept%s.", rule.ID,
			p.From(rule.Citation), p.From(lost))
	}
}

// byOther reports whether the alternative is a rule for the home and is met.
func (s study) byOther() bool { return s.other.Verdict.Passes() && s.other.Limit.Home }

// printKeep is the storage by pack, and for whom it holds.
func (s study) printKeep(p *sheet.Sheet) {
	k := s.keep
	who := "Keep it"
	switch {
	case s.takenOut.Given && s.cooling.Verdict == verdict.NotMet:
		return
	case !s.takenOut.Given || !s.cooling.Verdict.Passes():
		who = "Only once a hold is met and the fish has cooled in time is it kept"
	case s.strict.Verdict.Passes():
	case s.byOther():
		who = "Who goes by " + s.other.Limit.ID.String() + " keeps it"
	default:
		who = "Only once a hold is met is it kept"
	}
	at := sheet.Down(p, k.AtMost)
	if k.Days == 0 {
		p.Do("%s, %s: frozen, tonight; open the pack before it thaws, and until it is eaten hold it at or below %s%s.", who, k.Pack, at, p.From(k.Temperature.Citation))
		return
	}
	p.Do("%s, %s: at or below %s%s, for at most %d days%s; what is to last longer is frozen tonight.", who, k.Pack, at,
		p.From(k.Temperature.Citation), k.Days, p.From(k.Time.Citation))
}

func (s study) printJars(p *sheet.Sheet) {
	c := s.canning
	where := sheet.Text(p, s.Altitude)
	published := fmt.Sprintf("%s jars, %s gauge, %s for %s%s", c.schedule.Jar, c.schedule.Gauge, sheet.Up(p,
		c.schedule.Pressure), units.Lasting(c.schedule.Process), p.From(c.schedule.Citation))
	if s.cooked() {
		p.Do("Not into jars: the process of smoked fish is for lightly smoked fish, still raw inside%s, and this one was cooked. Next time take the jars' part out before the cooking, "+
			"refrigerate it for a day at most%s, and can it at %s: %s.", p.From(raw), p.From(soon), where, published)
		return
	}
	if !s.takenOut.Given {
		p.Do("It is not cooked yet. What is to go into jars is taken out before %s, refrigerated for a day at most%s, and canned at %s: %s.", s.clock(s.cook.From), p.From(soon), where, published)
		return
	}
	p.Do("Into jars at %s: %s, at once or refrigerated for a day at most%s.", where, published, p.From(soon))
	tested := fmt.Sprintf("the tested %s to %s%s", percent(c.loss.Least, 0), percent(c.loss.Most, 0),
		p.From(c.loss.Citation))
	switch {
	case !s.Weighed.Given:
		p.Line("  Weigh it first: the process was tested at certain losses only.")
	case c.loss.Verdict.Passes():
		p.Line("  Its loss of %s lies within %s.", percent(c.loss.Loss, 1), tested)
	default:
		p.Line("  NOT THIS FISH: its loss of %s lies outside %s.", percent(c.loss.Loss, 1), tested)
	}
	for _, f := range c.light.Findings {
		if f.Rule != smoke.RuleLoss {
			p.Line("  NOT A LIGHT SMOKE: %s%s.", f.Text(p.System), p.From(f.Citation))
		}
	}
	p.Warn(c.loss.Cautions...)
	p.Warn(c.light.Cautions...)
	p.Warn(c.schedule.Cautions()...)
}
