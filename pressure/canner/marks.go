package canner

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Marks are the moments of a run that somebody wrote down, as times since the start of the record. What was not
// written down is left out: units.State(d) marks a moment, the zero value is not marked.
type Marks struct {
	HeatOn      units.Stated[time.Duration] // the burner under the closed lid
	SteadySteam units.Stated[time.Duration] // a steady stream from the open vent
	VentClosed  units.Stated[time.Duration] // petcock closed, or weight on
	Timer       units.Stated[time.Duration] // the last time the timer was started
	HeatOff     units.Stated[time.Duration]
	Gone        units.Stated[time.Duration] // the pressure: gauge at zero, or lock dropped
	WeightOff   units.Stated[time.Duration] // or petcock opened
	LidOff      units.Stated[time.Duration]
}

// MarshalJSON writes the marks in the words that UnmarshalJSON reads.
func (m Marks) MarshalJSON() ([]byte, error) { return wire.Marshal(m) }

// UnmarshalJSON reads marks strictly.
func (m *Marks) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, m) }

// all are the marks in the order of a run.
func (m *Marks) all() [8]units.Stated[time.Duration] {
	return [...]units.Stated[time.Duration]{
		m.HeatOn, m.SteadySteam, m.VentClosed, m.Timer, m.HeatOff, m.Gone, m.WeightOff, m.LidOff,
	}
}

var markNames = [...]string{
	"heat on", "steady steam", "vent closed", "timer", "heat off", "pressure gone", "weight off", "lid off",
}

// markOrder are the pairs of marks of which the first cannot be later than the second.
var markOrder = [...][2]int{{0, 1}, {0, 2}, {1, 2}, {2, 4}, {3, 4}, {2, 5}, {2, 6}, {2, 7}, {4, 5}, {4, 7}, {6, 7}}

// markOfTimer is the place of the timer among all.
const markOfTimer = 3

// leastMark is the earliest moment after the start that anybody marks; a bare number is nanoseconds.
const leastMark = time.Second

// check returns the first mark that cannot have been: before the start, or in an order that no run has. A timer
// started too early and a vent opened too early are possible, and findings.
func (m *Marks) check() error {
	marks := m.all()
	for i, mark := range marks {
		if mark.Value < 0 || mark.Value > longestRun {
			return ContradictionError{
				What: "mark of " + markNames[i], Got: units.Lasting(mark.Value),
				Expected: "a time within a week from the start of the record",
			}
		}
		if mark.Value != 0 && mark.Value < leastMark {
			return units.UnitError{
				What: "mark of " + markNames[i], Got: mark.Value.String(), Least: units.Lasting(leastMark),
			}
		}
	}
	for _, pair := range markOrder {
		first, second := marks[pair[0]], marks[pair[1]]
		if first.Given && second.Given && first.Value > second.Value {
			return ContradictionError{What: "mark of " + markNames[pair[1]], Got: units.Lasting(second.Value),
				Expected: "no earlier than " + markNames[pair[0]] + " at " + units.Lasting(first.Value)}
		}
	}
	return nil
}

const longestRun = 7 * 24 * time.Hour

// over reports whether the heat is off, or must have been.
func (m *Marks) over() bool {
	return m.HeatOff.Given || m.Gone.Given || m.WeightOff.Given || m.LidOff.Given
}
