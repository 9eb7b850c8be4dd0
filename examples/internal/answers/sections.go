package answers

import "example.org/lakelarder/pressure/process"

// Section is one part of the page, with an address of its own.
type Section struct {
	Name    string            `json:"name"` // its address
	Title   string            `json:"title"`
	About   string            `json:"about"`
	Fields  []Field           `json:"fields"`
	Drops   []Drop            `json:"drops,omitempty"`
	Example map[string]string `json:"example,omitempty"` // invented values, by field
}

// Field is one thing to be typed or chosen.
type Field struct {
	Name    string            `json:"name"`
	Label   string            `json:"label"`
	Group   string            `json:"group,omitempty"`
	Help    string            `json:"help,omitempty"`
	Choices []string          `json:"choices,omitempty"` // none: typed
	Stops   map[string][]Stop `json:"stops,omitempty"`   // of a slider, by the gauge
	Confirm bool              `json:"confirm,omitempty"` // asked again when it came with a link
}

// Stop is where a slider comes to rest, and what that stands for.
type Stop struct {
	Value string `json:"value"`
	Says  string `json:"says"`
}

// Drop is a place for a logger's file. Sample is the name of an invented one.
type Drop struct {
	Name   string `json:"name"`
	Label  string `json:"label"`
	Help   string `json:"help"`
	Sample string `json:"sample,omitempty"`
}

// part is a section and what answers it.
type part struct {
	name    string
	section func() Section
	answer  func(*writer)
}

func parts() []part {
	return []part{
		{"water", waterSection, caught}, {"canner", cannerSection, canned}, {"jar", jarSection, warmed}, {"cure", cureSection, cured},
		{"year", yearSection, provided}, {"recipe", recipeSection, weighed}, {"tables", tablesSection, looked},
	}
}

// Sections are all sections in the order in which a fish goes through them.
func Sections() []Section {
	var all []Section
	for _, p := range parts() {
		all = append(all, p.section())
	}
	return all
}

// words are the words of a list whose values count from one, as far as it goes.
func words[T interface {
	~uint8
	String() string
	MarshalText() ([]byte, error)
}]() []string {
	var all []string
	for v := T(1); ; v++ {
		if _, err := v.MarshalText(); err != nil {
			return all
		}
		all = append(all, v.String())
	}
}

// stops are the upper ends of the published bands of altitude, by gauge: what is published at one holds in the whole band.
func stops() map[string][]Stop {
	all := map[string][]Stop{}
	for _, gauge := range []process.Gauge{process.Dial, process.Weighted} {
		for _, s := range process.Schedules() {
			if s.Product != process.Fish || s.Jar != process.Pint || s.Gauge != gauge {
				continue
			}
			top := s.Band.UpTo
			if top == process.NoLimit {
				top = process.Ceiling
			}
			all[gauge.String()] = append(all[gauge.String()], Stop{Value: feet(top), Says: s.Band.String()})
		}
	}
	return all
}
