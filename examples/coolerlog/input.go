package main

import (
	"fmt"
	"io"
	"time"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// file is cooler.json as it is written: texts, so that a fault can be named by its field.
type file struct {
	About  string     `json:"about"`
	Place  string     `json:"place"`
	MaxGap string     `json:"maxGap"`
	Fish   []fileFish `json:"fish"`
}

type fileFish struct {
	Name   string      `json:"name"`
	Log    string      `json:"log"`
	Events []fileEvent `json:"events"`
}

type fileEvent struct {
	At   string `json:"at"`
	What string `json:"what"`
}

// cooler is what the file says, understood, with the logs beside it.
type cooler struct {
	about, place string
	maxGap       time.Duration
	fish         []fish
}

type fish struct {
	name   string
	record series.Series[units.Temperature]
	events []event
}

// event is something that was done, from when on.
type event struct {
	at   time.Duration
	what string
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
	return series.ReadCSV[units.Temperature](r, "")
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
	r.Require(len(f.Fish) > 0, "fish", "expected at least one")
	for i, one := range f.Fish {
		field := fmt.Sprintf("fish[%d]", i)
		r.Require(one.Name != "", field+".name", "expected a name")
		r.Require(len(one.Events) > 0, field+".events", "expected at least one, such as the catch")
		g := fish{name: one.Name}
		for n, e := range one.Events {
			at := form.Field(r, fmt.Sprintf("%s.events[%d].at", field, n), e.At, time.ParseDuration)
			r.Require(e.What != "", fmt.Sprintf("%s.events[%d].what", field, n), "say what was done")
			r.Require(n == 0 || at > g.events[n-1].at, fmt.Sprintf("%s.events[%d].at", field, n), "expected later than the event before")
			g.events = append(g.events, event{at, e.What})
		}
		l.fish = append(l.fish, g)
	}
	return l, r.Err
}
