package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/ice"
	"example.org/lakelarder/yield/coldchain/keeping"
	"example.org/lakelarder/yield/coldchain/spoilage"
)

// file is the log as it is written.
type file struct {
	About  string        `wire:"required" help:"what this log is, and that it is invented if it is"`
	Place  string        `wire:"required" help:"where"`
	MaxGap time.Duration `wire:"required" help:"longest time between readings that a straight line is trusted for"`
	Ice    fileIce
	Fish   []fileFish `wire:"required"`
}

type fileFish struct {
	Name      string          `wire:"required"`
	Log       string          `wire:"required" help:"the record of the warmest part inside the fish, a CSV file beside this one"`
	Format    series.Format   `wire:"partial" help:"how the record is written, as far as it does not say so itself" example:"{\"order\": \"day first\"}"`
	Use       coldchain.Use   `help:"what it is for: the limits that govern it" example:"\"eaten raw\""`
	Water     coldchain.Water `help:"where it is from" example:"\"freshwater\""`
	Landing   fileLanding
	KeepsLike string             `wire:"required" help:"the fish by whose published life on ice it is measured"`
	Gutted    units.Stated[bool] `help:"whether it was gutted"`
	Events    []fileEvent        `wire:"required"`
}

// fileLanding is what was done with the fish after the catch; what is left out is not known.
type fileLanding struct {
	Gutted  units.Stated[time.Duration] `help:"how long after the catch it was bled and gutted"`
	Iced    units.Stated[time.Duration] `help:"how long after death it lay in ice or another cold medium"`
	In      units.Temperature           `help:"of that medium"`
	Warmest units.Temperature           `help:"the warmest air or water that it lay in before"`
}

// fileIce is the next trip, and how the box melted ice when it was tried.
type fileIce struct {
	Fish    units.Mass        `wire:"required" help:"to be caught"`
	From    units.Temperature `wire:"required" help:"of the fish as caught"`
	To      units.Temperature `wire:"required" help:"that it is to have"`
	Outside units.Temperature `wire:"required" help:"air around the box"`
	For     time.Duration     `wire:"required" help:"how long it is to last"`
	Spare   units.Ratio       `help:"to be left over, as a share of what melts"`
	Test    fileTest
}

type fileTest struct {
	Before  units.Mass        `help:"ice put into the box"`
	After   units.Mass        `help:"ice left, drained"`
	Outside units.Temperature `help:"mean of the air around the box"`
	For     time.Duration     `help:"how long it stood"`
}

// fileEvent is something that was done, from when on, and the storage that the fish went into, where that is to be
// judged.
type fileEvent struct {
	At    time.Duration     `wire:"always" help:"since the record began"`
	What  string            `wire:"required" help:"what was done"`
	In    coldchain.Place   `help:"where the fish lay from then on: ice, refrigerator, freezer or out"`
	Air   units.Temperature `help:"the warmest air, water or surface around it there"`
	Store keeping.Storage   `help:"refrigerator, freezer or cupboard, where it is to be judged" example:"\"refrigerator\""`
}

// cooler is what the file says, understood, with the logs beside it.
type cooler struct {
	file
	trip ice.Trip
	fish []fish
}

type fish struct {
	name   string
	landed coldchain.Landing
	lives  []spoilage.Life // the shortest first
	record series.Series[units.Temperature]
	read   string // how it was read
	events []fileEvent
	use    coldchain.Use
	water  coldchain.Water
}

// load reads the file and the logs beside it; an error names the file and the field or line.
func load(path string) (cooler, error) {
	var l cooler
	if err := form.Read(path, &l.file); err != nil {
		return cooler{}, err
	}
	if err := l.understand(); err != nil {
		return cooler{}, fmt.Errorf("%s: %w", path, err)
	}
	for i, f := range l.Fish {
		log, err := form.ReadLog[units.Temperature](path, f.Log, fmt.Sprintf("fish[%d].format", i), f.Format)
		if err != nil {
			return cooler{}, err
		}
		l.fish[i].record, l.fish[i].read = log.Series, log.Read
		if err := l.fish[i].inside(); err != nil {
			return cooler{}, fmt.Errorf("%s: fish[%d].events: %w", path, i, err)
		}
	}
	return l, nil
}

// inside holds the events to the time of the record.
func (f fish) inside() error {
	first, _ := f.record.First()
	last, _ := f.record.Last()
	for _, e := range f.events {
		if e.At < first.At || e.At >= last.At {
			return fmt.Errorf("%q at %s: expected within the record, %s to %s", e.What, units.Lasting(e.At),
				units.Lasting(first.At), units.Lasting(last.At))
		}
	}
	return nil
}

func (l *cooler) understand() error {
	t := l.Ice.Test
	box, err := ice.MeltTest(t.Before, t.After, t.Outside, t.For)
	if err != nil {
		return fmt.Errorf("ice.test: %w", err)
	}
	l.trip = ice.Trip{Fish: l.Ice.Fish, From: l.Ice.From, To: l.Ice.To, Outside: l.Ice.Outside, For: l.Ice.For,
		Spare: l.Ice.Spare, Box: box}
	if len(l.Fish) == 0 {
		return fmt.Errorf("fish: expected at least one")
	}
	for i, f := range l.Fish {
		lives, err := spoilage.FindLives(f.KeepsLike, f.Gutted)
		if err != nil {
			return fmt.Errorf("fish[%d].keepsLike: %w", i, err)
		}
		if len(f.Events) == 0 {
			return fmt.Errorf("fish[%d].events: expected at least one, such as the catch", i)
		}
		for n := 1; n < len(f.Events); n++ {
			if f.Events[n].At <= f.Events[n-1].At {
				return fmt.Errorf("fish[%d].events[%d].at: %s: expected later than the event before", i, n,
					units.Lasting(f.Events[n].At))
			}
		}
		landed := coldchain.Landing{ForCanning: true, Gutted: f.Landing.Gutted, Iced: f.Landing.Iced,
			Medium: f.Landing.In, Warmest: f.Landing.Warmest}
		l.fish = append(l.fish, fish{name: f.Name, landed: landed, lives: lives, events: f.Events, use: f.Use, water: f.Water})
	}
	return nil
}
