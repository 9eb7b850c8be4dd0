package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield"
	"example.org/lakelarder/yield/coldchain"
)

// The longest pause between two readings across which a straight line is believed.
const (
	coreGap   = 10 * time.Minute
	coolerGap = 30 * time.Minute
)

// worked is everything worked out, before anything is printed.
type worked struct {
	season
	verdict.Report // of the three records

	jars, smoker   way
	jarCount, over int64 // jars packed full, and what is over in units of Mass
	schedule       process.Schedule
	margin         process.Margin
	cure           brine.Cure
	volumes        brine.CureVolumes

	cold  coldchain.Report
	hold  smoke.Hold
	other []smoke.Hold // by the other published rules
	load  canner.Load
	run   canner.Report

	food food
	supply
}

// way is what becomes of the fish that go one way.
type way struct {
	to      yield.Stage
	batches []batch
	chains  []chain
	kept    units.Range[units.Mass]
	whole   units.Mass
}

// chain is one batch led to a stage.
type chain struct {
	yield.Outcome
	from string // whose shares they are
}

func (s season) work() (w worked, err error) {
	w.season = s
	for _, step := range []func() error{w.workCatch, w.workProcess, w.workCure, w.workRecords, w.workFood, w.workYear} {
		if err := step(); err != nil {
			return w, err
		}
	}
	return w, nil
}

func (w *worked) workCatch() (err error) {
	smoker, jars := divide(w.season)
	if w.jars, err = w.lead(jars, yield.CanningReady); err != nil {
		return err
	}
	if w.smoker, err = w.lead(smoker, yield.SkinOnFillet); err != nil {
		return err
	}
	w.jarCount, w.over = int64(w.jars.kept.Likely/w.PackPerJar), int64(w.jars.kept.Likely%w.PackPerJar)
	return nil
}

// lead leads every batch to a stage.
func (w *worked) lead(batches []batch, to yield.Stage) (way, error) {
	all := way{to: to, batches: batches}
	for _, b := range batches {
		o, from, err := w.chain(b, to)
		if err != nil {
			return all, err
		}
		all.chains = append(all.chains, chain{o, from})
		all.kept = units.Range[units.Mass]{Low: all.kept.Low + o.Kept.Low, Likely: all.kept.Likely + o.Kept.Likely,
			High: all.kept.High + o.Kept.High}
		all.whole += b.whole
	}
	return all, nil
}

func (w *worked) workProcess() (err error) {
	w.schedule, err = process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: w.Canner.Jar,
		Gauge: w.Canner.Gauge, Altitude: w.Altitude})
	if err != nil {
		return err
	}
	air, err := pressure.AirAt(w.Altitude.Value)
	if err != nil {
		return err
	}
	w.margin, err = w.schedule.Margin(air)
	return err
}

func (w *worked) workCure() (err error) {
	if w.cure, err = brine.DryCure(w.smoker.kept.Likely, w.Cure.SaltToFish, w.mix); err != nil {
		return fmt.Errorf("cure: %w", err)
	}
	w.volumes, err = w.cure.Volumes(w.salt, w.sugar)
	return err
}

// workRecords judges the three records, and joins what is found.
func (w *worked) workRecords() (err error) {
	if w.cold, err = coldchain.Audit(w.cooler.Series, coldchain.Terms{MaxGap: coolerGap,
		Product: coldchain.RawFish}); err != nil {
		return fmt.Errorf("%s: %w", w.CoolerLog, err)
	}
	if err := w.workCore(); err != nil {
		return fmt.Errorf("%s: %w", w.CoreLog, err)
	}
	if w.load, err = canner.Fit(w.schedule, w.Run.Vessel, w.jarSize, w.Run.Clearance); err != nil {
		return fmt.Errorf("run: %w", err)
	}
	run := canner.Run{Schedule: w.schedule, Altitude: w.Altitude, Marks: w.Run.Marks, MaxGap: w.Run.MaxGap}
	if w.run, err = canner.Audit(run, w.steam.Series); err != nil {
		return fmt.Errorf("run: %w", err)
	}
	w.Report = verdict.Join(w.cold.Judgement(), w.hold.Judgement(), w.run.Judgement())
	return nil
}

// workCore judges the core by the rule that the households chose, and by every other.
func (w *worked) workCore() (err error) {
	record := smoke.Record{MaxGap: coreGap}
	for _, c := range w.core {
		record.Cores = append(record.Cores, c.Series)
	}
	if w.hold, err = smoke.AuditHold(w.limit, record); err != nil {
		return err
	}
	for _, limit := range smoke.CoreLimits() {
		if limit.ID == w.limit.ID {
			continue
		}
		hold, err := smoke.AuditHold(limit, record)
		if err != nil {
			return err
		}
		w.other = append(w.other, hold)
	}
	return nil
}

// food is what is left to eat when all is in jars and smoked.
type food struct {
	packed, canned units.Mass
	low, high      units.Mass // smoked
	together       units.Mass // by the lower figures, of what the records vouch for
	servings       int64
}

func (w *worked) workFood() error {
	var err error
	if w.food.packed, err = units.Times(w.PackPerJar, w.jarCount); err != nil {
		return err
	}
	eaten, err := yield.Servings(w.food.packed, w.year.jars.Served, w.Serving)
	if err != nil {
		return fmt.Errorf("year.jars.served: %w", err)
	}
	w.food.canned = eaten.Drained
	if w.food.low, err = yield.AfterLoss(w.smoker.kept.Low, w.SmokingLoss.High); err != nil {
		return fmt.Errorf("smokingLoss: %w", err)
	}
	if w.food.high, err = yield.AfterLoss(w.smoker.kept.High, w.SmokingLoss.Low); err != nil {
		return fmt.Errorf("smokingLoss: %w", err)
	}
	if !w.cold.Verdict.Passes() {
		return nil
	}
	if w.run.Verdict.Passes() {
		w.food.together += w.food.canned
	}
	if w.hold.Verdict.Passes() {
		w.food.together += w.food.low
	}
	w.food.servings = int64(w.food.together / w.Serving)
	return nil
}

// readings says how a record was read.
func readings(name string, s series.Series[units.Temperature]) string {
	return fmt.Sprintf("%s: %d readings over %s", name, s.Len(), units.Lasting(s.Span()))
}
