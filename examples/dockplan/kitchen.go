package main

import (
	"fmt"
	"strconv"
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/keeping"
)

// kitchen is the file understood, with what is published for it. All times count from the dock.
type kitchen struct {
	file
	day     time.Time     // midnight before the dock, on the clock there
	since   time.Duration // from the first fish to the dock
	jarred  share
	filets  share
	process process.Schedule
	jar     canner.JarSize
	load    canner.Load
	fill    canner.Fill
	cycle   canner.Cycle
	heatUp  time.Duration // the longest
	limits  limits
	salting brine.SaltingTime
	cure    brine.Cure // of one fish
	smoking smoke.Schedule
	smoked  smoke.Plan
	tacky   smoke.Pellicle
	cooling smoke.CoolingRule
}

// share is what of a fish is left, and who says so.
type share struct {
	of       units.Ratio
	citation cite.Citation
	cautions []cite.Caution
}

// limits are the published times, each with its citation.
type limits struct {
	gut, jars, raw, again limit
}

type limit struct {
	within   time.Duration
	citation cite.Citation
}

// cannedWithin is the time of the caution process.within-2-days: two days of the catch.
const (
	cannedWithin = 48 * time.Hour
	withinTwo    = "process.within-2-days"
)

// load reads the day; an error names the file and the field.
func load(path string) (*kitchen, error) {
	k := &kitchen{}
	if err := form.Read(path, &k.file); err != nil {
		return nil, err
	}
	for _, understand := range []func() error{k.clock, k.counts, k.shares, k.can, k.published, k.smoke} {
		if err := understand(); err != nil {
			return nil, fmt.Errorf("%s: %w", path, err)
		}
	}
	return k, nil
}

func (k *kitchen) clock() error {
	day, err := time.Parse("2006-01-02 -07:00", k.Date+" "+k.Zone)
	if err != nil {
		return fmt.Errorf("date and zone: %q %q: expected such as 2031-09-20 and -06:00", k.Date, k.Zone)
	}
	for _, c := range []struct {
		what  string
		clock form.Clock
	}{{"caught", k.Caught}, {"dock", k.Dock}, {"home.sleep", k.Home.Sleep}, {"home.wake", k.Home.Wake}} {
		if !c.clock.Given {
			return fmt.Errorf("%s: expected a clock time, such as 11:15", c.what)
		}
	}
	if k.Home.Sleep == k.Home.Wake {
		return fmt.Errorf("home.wake: expected another time than home.sleep: people sleep")
	}
	k.day, k.since = day, k.Dock.On(k.Caught).Value
	return nil
}

// counts refuses numbers and times that are no household's.
func (k *kitchen) counts() error {
	type count struct {
		what           string
		got, low, high int
	}
	all := []count{
		{"fish", k.Fish, 1, 60}, {"home.people", k.Home.People, 1, 6}, {"home.fridge", k.Home.Fridge, 1, 10},
		{"canner.canners", k.Canner.Canners, 1, 2}, {"smoker.fish", k.Smoker.Fish, 0, 60},
		{"held.fresh", k.Held.Fresh, 0, 1000}, {"held.preserved", k.Held.Preserved, 0, 1000},
		{"held.today", k.Held.Today, 0, k.Held.Fresh}, {"held.year", k.Held.Year, 0, 10_000},
		{"year.have", k.Year.Have, 0, 10_000},
	}
	if k.Smoker.Fish > 0 {
		all = append(all, count{"smoker.batch", k.Smoker.Batch, 1, 60},
			count{"smoker.standBy", k.Smoker.StandBy, 0, k.Home.People})
	}
	for _, c := range all {
		if c.got < c.low || c.got > c.high {
			return units.RangeError{What: c.what, Got: strconv.Itoa(c.got), Low: strconv.Itoa(c.low),
				High: strconv.Itoa(c.high)}
		}
	}
	if err := units.Check("mass", k.Mass, 100*units.Gram, 50*units.Kilogram); err != nil {
		return err
	}
	if !k.Ice.IsSet() {
		return units.UnsetError{What: "ice, the temperature that the fish lies in"}
	}
	return k.durations()
}

func (k *kitchen) durations() error {
	type named struct {
		what string
		takes
	}
	work := []named{
		{"home.gut", k.Home.Gut}, {"home.ice", k.Home.Ice}, {"home.cut", k.Home.Cut}, {"home.refill", k.Home.Refill},
	}
	if s := k.Smoker; s.Fish > 0 {
		work = append(work, named{"smoker.fillet", s.Fillet}, named{"smoker.layIn", s.LayIn},
			named{"smoker.rinse", s.Rinse}, named{"smoker.takeOut", s.TakeOut})
		if err := units.CheckDuration("smoker.mayLie", s.MayLie, 0, 4*time.Hour); err != nil {
			return err
		}
	}
	if err := units.CheckDuration("home.waits", k.Home.Waits, 0, 12*time.Hour); err != nil {
		return err
	}
	for _, t := range work {
		if err := units.CheckDuration(t.what+".most", t.Most, time.Minute, 4*time.Hour); err != nil {
			return err
		}
		if err := units.CheckDuration(t.what+".least", t.Least, time.Minute, t.Most); err != nil {
			return err
		}
	}
	return nil
}

func (k *kitchen) shares() (err error) {
	if k.jarred, err = shareOf("canner.share", k.Canner.Share, yield.CanningReady); err != nil {
		return err
	}
	k.filets, err = shareOf("smoker.share", k.Smoker.Share, yield.SkinOnFillet)
	return err
}

func shareOf(field string, weighed units.Ratio, stage yield.Stage) (share, error) {
	if weighed != 0 {
		return share{of: weighed}, units.Check(field, weighed, 20*units.Percent, 95*units.Percent)
	}
	d, err := yield.PlanningDefault(stage)
	return share{d.Likely, d.Citation, d.Cautions}, err
}

// can finds the process and counts what a load is and how long it takes.
func (k *kitchen) can() (err error) {
	c := k.Canner
	request := process.Request{
		Product: process.Fish, Pack: process.RawPack, Jar: c.Jar, Gauge: c.Gauge, Altitude: k.Altitude,
	}
	if k.process, err = process.Find(request); err != nil {
		return err
	}
	if k.jar, err = canner.FindJarSize(c.Mouth); err != nil {
		return fmt.Errorf("canner.mouth: %w", err)
	}
	v := c.Vessel
	vessel := canner.Vessel{
		Diameter: v.Diameter, Height: v.Height, Rack: v.Rack, Divider: v.Divider, Capacity: v.Capacity,
	}
	if k.load, err = canner.Fit(k.process, vessel, k.jar, v.Clearance); err != nil {
		return fmt.Errorf("canner.vessel: %w", err)
	}
	if err = units.Check("canner.fill", c.Fill, 50*units.Gram, 5*units.Kilogram); err != nil {
		return err
	}
	if k.fill, err = k.jar.CheckFill(c.Fill, k.process.Headspace, canner.FleshDensity); err != nil {
		return fmt.Errorf("canner.fill: %w", err)
	}
	if !k.fill.Possible {
		return units.RangeError{What: "canner.fill", Got: c.Fill.String(), Low: "50 g", High: k.fill.Most.String()}
	}
	if k.cycle, err = canner.CycleOf(k.process); err != nil {
		return err
	}
	k.heatUp = k.cycle.HeatUp.Most
	if k.cycle.HeatUp.Open || c.HeatUp != 0 {
		if err = units.CheckDuration("canner.heatUp, for which no longest is published,", c.HeatUp,
			k.cycle.HeatUp.Most, 4*time.Hour); err != nil {
			return err
		}
		k.heatUp = c.HeatUp
	}
	return nil
}

// published are the deadlines.
func (k *kitchen) published() error {
	for _, r := range coldchain.LandingRules() {
		if r.ID == coldchain.RuleGutForCanning {
			k.limits.gut = limit{r.Within, r.Citation}
		}
	}
	for _, c := range k.process.Cautions() {
		if c.ID == withinTwo {
			k.limits.jars = limit{cannedWithin, c.Citation}
		}
	}
	times, err := keeping.Find(keeping.Brined, keeping.InRefrigerator)
	if err != nil {
		return err
	}
	k.limits.raw = limit{times.Safety[0].Low, times.Safety[0].Citation}
	jar, err := keeping.CheckJar(units.State(time.Hour), keeping.LidUnsealed)
	if err != nil {
		return err
	}
	k.limits.again = limit{24 * time.Hour, jar.Signs[0].Citation}
	return nil
}
