package smoke

import (
	"time"

	"example.org/lakelarder/units"
)

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
func (s Stage) phases(air Air) []Phase {
	wet := s.wet()
	var all []Phase
	if wet > 0 {
		all = append(all, Phase{units.Celsius(air.wetSurface(1)), wet})
	}
	if wet < s.For {
		all = append(all, Phase{s.Air, s.For - wet})
	}
	return all
}
