package main

import (
	"fmt"
	"sort"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/growth"
	"example.org/lakelarder/yield/coldchain/ice"
	"example.org/lakelarder/yield/coldchain/keeping"
	"example.org/lakelarder/yield/coldchain/spoilage"
)

// verdicts is the log with everything worked out, before anything is printed.
type verdicts struct {
	cooler
	fish []judged
	ice  ice.Load
}

// judged is one fish held against every published limit for raw fish.
type judged struct {
	fish
	report coldchain.Report
	landed coldchain.LandingReport
	all    verdict.Report // of the record and the landing
	next   []coldchain.Forecast
	aged   spoilage.Age
	left   []spoilage.LifeLeft
	toxin  growth.Toxin
	stages []stage
	used   [][]share
}

// stage is what the fish went through from one event to the next.
type stage struct {
	fileEvent
	until            time.Duration
	coldest, warmest units.Temperature
	store            *keeping.StoreReport // of the temperature that the fish came to in it
}

// share is how much of the tightest limit was used up by a time.
type share struct {
	at   time.Duration
	used units.Ratio
	rule string // that governs
}

func (l cooler) judge() (verdicts, error) {
	v := verdicts{cooler: l}
	for _, f := range l.fish {
		j, err := l.judgeFish(f)
		if err != nil {
			return verdicts{}, fmt.Errorf("%s: %w", f.name, err)
		}
		v.fish = append(v.fish, j)
	}
	var err error
	if v.ice, err = ice.Plan(l.trip); err != nil {
		return verdicts{}, fmt.Errorf("ice: %w", err)
	}
	return v, nil
}

func (l cooler) judgeFish(f fish) (judged, error) {
	live, err := coldchain.Watch(l.terms(f))
	if err != nil {
		return judged{}, err
	}
	for _, r := range f.record.Readings() {
		if live, err = live.Next(r); err != nil {
			return judged{}, err
		}
	}
	j := judged{fish: f, next: live.AtThisRate()}
	if j.report, err = live.Report(); err != nil {
		return judged{}, err
	}
	if j.landed, err = coldchain.CheckLanding(f.landed); err != nil {
		return judged{}, err
	}
	j.all = verdict.Join(j.report.Report, j.landed.Report)
	if j.aged, err = spoilage.IceDays(f.record, spoilage.FreshFish, l.MaxGap); err != nil {
		return judged{}, err
	}
	for _, life := range f.lives {
		left, err := j.aged.Left(life)
		if err != nil {
			return judged{}, err
		}
		j.left = append(j.left, left)
	}
	if j.toxin, err = growth.ToxinShare(f.record, l.MaxGap); err != nil {
		return judged{}, err
	}
	if j.stages, err = f.stages(l.MaxGap); err != nil {
		return judged{}, err
	}
	j.used, err = l.usedOverTime(f)
	return j, err
}

// terms are what a record is held against: what the fish is for, where it is from, and where it lay.
func (l cooler) terms(f fish) coldchain.Terms {
	t := coldchain.Terms{MaxGap: l.MaxGap, Product: coldchain.RawFish, Use: f.use, Water: f.water}
	last, _ := f.record.Last()
	for i, e := range f.events {
		until := last.At
		if i+1 < len(f.events) {
			until = f.events[i+1].At
		}
		if e.In != 0 {
			t.Stays = append(t.Stays, coldchain.Stay{When: series.Stretch{From: e.At, To: until}, In: e.In, Air: e.Air})
		}
	}
	return t
}

// stages parts the record at the events. What lies in a gap longer than maxGap is not recorded, and not guessed.
func (f fish) stages(maxGap time.Duration) ([]stage, error) {
	last, _ := f.record.Last()
	var all []stage
	for i, e := range f.events {
		s := stage{fileEvent: e, until: last.At}
		if i+1 < len(f.events) {
			s.until = f.events[i+1].At
		}
		part, err := f.record.Slice(s.At, s.until)
		if err != nil {
			return nil, err
		}
		var end units.Temperature
		for _, r := range part.Readings() {
			if !recorded(f.record, r.At, maxGap) {
				continue
			}
			end = r.Value
			if !s.coldest.IsSet() || end.Below(s.coldest) {
				s.coldest = end
			}
			if !s.warmest.IsSet() || end.Above(s.warmest) {
				s.warmest = end
			}
		}
		if s.Store != 0 && end.IsSet() {
			store, err := keeping.CheckStore(s.Store, end)
			if err != nil {
				return nil, err
			}
			s.store = &store
		}
		all = append(all, s)
	}
	return all, nil
}

// recorded reports whether a time of the record lies at a reading, or between two that are not further apart than
// maxGap.
func recorded(record series.Series[units.Temperature], at, maxGap time.Duration) bool {
	after := sort.Search(record.Len(), func(i int) bool { r, _ := record.At(i); return r.At >= at })
	next, _ := record.At(after)
	if next.At == at || after == 0 {
		return next.At == at
	}
	before, _ := record.At(after - 1)
	return next.At-before.At <= maxGap
}

// usedOverTime judges the record as it stood every half hour, but for gaps, by the limit that had least left then.
// Where a gap lies, what was used is not known: the shares come in parts, one for each stretch without a gap.
func (l cooler) usedOverTime(f fish) ([][]share, error) {
	record := f.record
	first, _ := record.First()
	last, _ := record.Last()
	parts := [][]share{{{at: first.At}}}
	for at := first.At; at < last.At; {
		at = min(at+30*time.Minute, last.At)
		if !recorded(record, at, l.MaxGap) {
			if len(parts[len(parts)-1]) > 0 {
				parts = append(parts, nil)
			}
			continue
		}
		part, err := record.Slice(first.At, at)
		if err != nil {
			return nil, err
		}
		report, err := coldchain.Audit(part, l.terms(f))
		if err != nil {
			return nil, err
		}
		governs := tightest(report)
		parts[len(parts)-1] = append(parts[len(parts)-1], share{at, governs.Used, name(governs)})
	}
	return parts, nil
}

// tightest is the allowance of which most is used up, of those that decide for what the fish is for.
func tightest(r coldchain.Report) coldchain.Allowance {
	var most coldchain.Allowance
	for _, a := range r.Allowances {
		if a.Spared == 0 && (most.ID == "" || a.Used > most.Used) {
			most = a
		}
	}
	return most
}

// name is the rule of an allowance, and the hazard where it has one.
func name(a coldchain.Allowance) string { return rule(a.Rule, a.Hazard) }

func rule(r coldchain.Rule, h coldchain.Hazard) string {
	if h == 0 {
		return r.String()
	}
	return r.String() + ", " + h.String()
}

// together is the worst of everything: one fish past a limit is enough.
func (v verdicts) together() verdict.Report {
	var all []verdict.Report
	for _, j := range v.fish {
		all = append(all, j.all)
	}
	return verdict.Join(all...)
}
