package smoke

import (
	"time"

	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
)

// Event is what happens at a time of the timetable. The zero Event is not stated.
type Event uint8

// The events.
const (
	Begin Event = iota + 1 // of a stage
	Baste
	End // of the schedule
)

var events = word.List[Event]{What: "event", Words: []string{"begin", "baste", "end"}}

// ParseEvent reads "begin", "baste" or "end", in capitals or not; anything else is a units.UnknownError.
func ParseEvent(s string) (Event, error) { return events.Parse(s) }

// String is what to do in one word: "baste".
func (e Event) String() string { return events.Of(e) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (e Event) MarshalText() ([]byte, error) { return events.Marshal(e) }

// UnmarshalText is ParseEvent, and the empty text is one that is not set.
func (e *Event) UnmarshalText(text []byte) error { return events.Unmarshal(text, e) }

// Entry is one line of the timetable. At counts from the start of the first stage; Stage counts from zero.
type Entry struct {
	At    time.Duration `wire:"always"`
	Event Event
	Stage int `wire:"always"`
}

// entries are a stage's lines in the timetable: its start, and each basting before its end.
func (s Stage) entries(stage int, began time.Duration) []Entry {
	all := []Entry{{At: began, Event: Begin, Stage: stage}}
	if s.Baste > 0 {
		for at := s.Baste; at < s.For; at += s.Baste {
			all = append(all, Entry{At: began + at, Event: Baste, Stage: stage})
		}
	}
	return all
}

// phases are what the surface sees: the wet bulb while it is wet, then the air.
func (s Stage) phases(wetBulb units.Temperature) []Phase {
	wet := s.wet()
	var all []Phase
	if wet > 0 {
		all = append(all, Phase{wetBulb, wet})
	}
	if wet < s.For {
		all = append(all, Phase{s.Air, s.For - wet})
	}
	return all
}
