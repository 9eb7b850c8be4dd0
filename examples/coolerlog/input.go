package main

import (
	"fmt"
	"io"
	"time"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/ice"
	"example.org/lakelarder/yield/coldchain/keeping"
	"example.org/lakelarder/yield/coldchain/spoilage"
)

// file is cooler.json as it is written: texts, so that a fault can be named by its field.
type file struct {
	About  string     `json:"about"`
	Place  string     `json:"place"`
	MaxGap string     `json:"maxGap"`
	Ice    fileIce    `json:"ice"`
	Fish   []fileFish `json:"fish"`
}

type fileFish struct {
	Name   string      `json:"name"`
	Log    string      `json:"log"`
	Landed fileLanding `json:"landing"`
	Like   string      `json:"keepsLike"`
	Gutted *bool       `json:"gutted"`
	Events []fileEvent `json:"events"`
}

// fileLanding is what was done with the fish after the catch; what is left out is not known.
type fileLanding struct {
	Gutted  string `json:"gutted"`
	Iced    string `json:"iced"`
	In      string `json:"in"`
	Warmest string `json:"warmest"`
}

// fileIce is the next trip, and how the box melted ice when it was tried.
type fileIce struct {
	Fish    string   `json:"fish"`
	From    string   `json:"from"`
	To      string   `json:"to"`
	Outside string   `json:"outside"`
	For     string   `json:"for"`
	Spare   string   `json:"spare"`
	Test    fileTest `json:"test"`
}

type fileTest struct {
	Before  string `json:"before"`
	After   string `json:"after"`
	Outside string `json:"outside"`
	For     string `json:"for"`
}

type fileEvent struct {
	At    string          `json:"at"`
	What  string          `json:"what"`
	Store keeping.Storage `json:"store"`
}

// cooler is what the file says, understood, with the logs beside it.
type cooler struct {
	about, place string
	maxGap       time.Duration
	trip         ice.Trip
	fish         []fish
}

type fish struct {
	name   string
	landed coldchain.Landing
	lives  []spoilage.Life // the shortest first
	record series.Series[units.Temperature]
	events []event
}

// event is something that was done, from when on, and the storage that it went into, where that is to be judged.
type event struct {
	at    time.Duration
	what  string
	store keeping.Storage
}

// load reads the file and the logs beside it; an error names the file and the field or line.
func load(path string) (cooler, error) {
	var f file
	if err := form.Read(path, &f); err != nil {
		return cooler{}, err
	}
	l, err := f.understand()
	if err != nil {
		return cooler{}, fmt.Errorf("%s: %w", path, err)
	}
	for i := range l.fish {
		if l.fish[i].record, err = form.Log(path, f.Fish[i].Log, oneColumn); err != nil {
			return cooler{}, err
		}
		if err := l.fish[i].inside(); err != nil {
			return cooler{}, fmt.Errorf("%s: fish[%d].events: %w", path, i, err)
		}
	}
	return l, nil
}

func oneColumn(r io.Reader) (series.Series[units.Temperature], error) {
	return series.ReadColumn[units.Temperature](r, "")
}

// inside holds the events to the time of the record.
func (f fish) inside() error {
	first, _ := f.record.First()
	last, _ := f.record.Last()
	for _, e := range f.events {
		if e.at < first.At || e.at >= last.At {
			return fmt.Errorf("%q at %v: expected within the record, %v to %v", e.what, e.at, first.At, last.At)
		}
	}
	return nil
}

func (f file) understand() (cooler, error) {
	r := &form.Fields{}
	l := cooler{about: f.About, place: f.Place}
	r.Require(f.About != "", "about", "say what this log is, and that it is invented if it is")
	l.maxGap = form.Field(r, "maxGap", f.MaxGap, time.ParseDuration)
	l.trip = f.Ice.read(r)
	r.Require(len(f.Fish) > 0, "fish", "expected at least one")
	for i, one := range f.Fish {
		field := fmt.Sprintf("fish[%d]", i)
		r.Require(one.Name != "", field+".name", "expected a name")
		r.Require(len(one.Events) > 0, field+".events", "expected at least one, such as the catch")
		g := fish{name: one.Name, landed: one.Landed.read(r, field+".landing")}
		g.lives = form.Field(r, field+".keepsLike", one.Like, func(like string) ([]spoilage.Life, error) {
			var gutted units.Stated[bool]
			if one.Gutted != nil {
				gutted = units.State(*one.Gutted)
			}
			return spoilage.LivesOf(like, gutted)
		})
		for n, e := range one.Events {
			at := form.Field(r, fmt.Sprintf("%s.events[%d].at", field, n), e.At, time.ParseDuration)
			r.Require(e.What != "", fmt.Sprintf("%s.events[%d].what", field, n), "say what was done")
			r.Require(n == 0 || at > g.events[n-1].at, fmt.Sprintf("%s.events[%d].at", field, n), "expected later than the event before")
			g.events = append(g.events, event{at, e.What, e.Store})
		}
		l.fish = append(l.fish, g)
	}
	return l, r.Err
}

func (f fileLanding) read(r *form.Fields, field string) coldchain.Landing {
	l := coldchain.Landing{ForCanning: true}
	after := func(name, text string) (d units.Stated[time.Duration]) {
		if text != "" {
			d = units.State(form.Field(r, field+name, text, time.ParseDuration))
		}
		return d
	}
	l.Gutted, l.Iced = after(".gutted", f.Gutted), after(".iced", f.Iced)
	if f.In != "" {
		l.Medium = form.Field(r, field+".in", f.In, units.ParseTemperature)
	}
	if f.Warmest != "" {
		l.Warmest = form.Field(r, field+".warmest", f.Warmest, units.ParseTemperature)
	}
	return l
}

func (f fileIce) read(r *form.Fields) ice.Trip {
	rate := func(text string) (ice.MeltRate, error) {
		before := form.Field(r, "ice.test.before", text, units.ParseMass)
		after := form.Field(r, "ice.test.after", f.Test.After, units.ParseMass)
		outside := form.Field(r, "ice.test.outside", f.Test.Outside, units.ParseTemperature)
		length := form.Field(r, "ice.test.for", f.Test.For, time.ParseDuration)
		if r.Err != nil {
			return ice.MeltRate{}, r.Err
		}
		return ice.MeltTest(before, after, outside, length)
	}
	return ice.Trip{
		Fish: form.Field(r, "ice.fish", f.Fish, units.ParseMass), From: form.Field(r, "ice.from", f.From, units.ParseTemperature),
		To: form.Field(r, "ice.to", f.To, units.ParseTemperature), Outside: form.Field(r, "ice.outside", f.Outside, units.ParseTemperature),
		For: form.Field(r, "ice.for", f.For, time.ParseDuration), Spare: form.Field(r, "ice.spare", f.Spare, units.ParseRatio),
		Box: form.Field(r, "ice.test", f.Test.Before, rate),
	}
}
