package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain"
)

// verdicts is the log with everything worked out, before anything is printed.
type verdicts struct {
	cooler
	fish []judged
	ice  coldchain.TripIce
}

// judged is one fish held against every published limit for raw fish.
type judged struct {
	fish
	report coldchain.Report
	landed coldchain.LandingReport
	next   []coldchain.Forecast
	aged   coldchain.Spoilage
	left   []coldchain.LifeLeft
	toxin  coldchain.Toxin
	stages []stage
	used   []share
}

// stage is what the fish went through from one event to the next.
type stage struct {
	event
	until            time.Duration
	coldest, warmest units.Temperature
	store            *coldchain.StoreJudgement // of the temperature that the fish came to in it
}

// share is how much of the tightest limit was used up by a time.
type share struct {
	at   time.Duration
	used units.Ratio
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
	if v.ice, err = coldchain.IceFor(l.trip); err != nil {
		return verdicts{}, fmt.Errorf("ice: %w", err)
	}
	return v, nil
}

func (l cooler) judgeFish(f fish) (judged, error) {
	live, err := coldchain.WatchExposure(l.terms())
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
	if j.aged, err = coldchain.IceDays(f.record, coldchain.FreshFish, l.maxGap); err != nil {
		return judged{}, err
	}
	for _, life := range f.lives {
		left, err := j.aged.Left(life)
		if err != nil {
			return judged{}, err
		}
		j.left = append(j.left, left)
	}
	if j.toxin, err = coldchain.ToxinShare(f.record, l.maxGap); err != nil {
		return judged{}, err
	}
	if j.stages, err = f.stages(); err != nil {
		return judged{}, err
	}
	j.used, err = l.usedOverTime(f.record)
	return j, err
}

func (l cooler) terms() coldchain.Terms {
	return coldchain.Terms{MaxGap: l.maxGap, Product: coldchain.RawFish}
}

// stages parts the record at the events.
func (f fish) stages() ([]stage, error) {
	last, _ := f.record.Last()
	var all []stage
	for i, e := range f.events {
		s := stage{event: e, until: last.At}
		if i+1 < len(f.events) {
			s.until = f.events[i+1].at
		}
		part, err := f.record.Slice(s.at, s.until)
		if err != nil {
			return nil, err
		}
		coldest, _ := part.Min()
		warmest, _ := part.Max()
		s.coldest, s.warmest = coldest.Value, warmest.Value
		if s.event.store != 0 {
			end, _ := part.Last()
			store, err := coldchain.JudgeStore(s.event.store, end.Value)
			if err != nil {
				return nil, err
			}
			s.store = &store
		}
		all = append(all, s)
	}
	return all, nil
}

// usedOverTime judges the record as it stood every half hour, by the limit that had least left then.
func (l cooler) usedOverTime(record series.Series[units.Temperature]) ([]share, error) {
	first, _ := record.First()
	last, _ := record.Last()
	all := []share{{at: first.At}}
	for at := first.At; at < last.At; {
		at = min(at+30*time.Minute, last.At)
		part, err := record.Slice(first.At, at)
		if err != nil {
			return nil, err
		}
		report, err := coldchain.Exposure(part, l.terms())
		if err != nil {
			return nil, err
		}
		all = append(all, share{at, tightest(report).Used})
	}
	return all, nil
}

// tightest is the finding of which most is used up.
func tightest(r coldchain.Report) coldchain.Finding {
	var most coldchain.Finding
	for i, f := range r.Findings {
		if i == 0 || f.Used > most.Used {
			most = f
		}
	}
	return most
}
