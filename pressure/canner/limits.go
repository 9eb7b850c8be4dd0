package canner

import (
	"time"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// limits are what the readings of a run are held against.
type limits[T Record] struct {
	atLeast T // the schedule's pressure, as this record shows it
	high    T // what costs quality when it is passed
	zero    T // no pressure is left
	slight  T // so much is: the vent is not opened
	rest    T // the most that is shown while the vent is open
	calm    T // the most that is shown when the lid is off
	cold    T // the least that steam from the vent has; of a record of temperatures
	least   T // the least that anything in a kitchen shows
	most    T // the most that a canner holds
	long    T // the most that anybody holds for a whole process
}

// Choices, where nothing is printed.
const (
	overBy     = 2 * units.PSI   // no upper limit is printed but "at or slightly above"
	slightly   = 1 * units.PSI   // a dial at rest may show less than this
	ventShows  = 2 * units.PSI   // a narrow vent on a high flame holds a little back
	mostHeld   = 23 * units.PSI  // see mostSource
	longHeld   = 17 * units.PSI  // 15 psi is the most of any process and weight, and slightly above
	heatUp     = 2 * time.Minute // from cold water to steady steam, the least; 12 to 15 min are usual
	belowSteam = 2 * units.CelsiusDegrees
	emptiest   = 15 * units.PSI // below the air: no pump takes more out of a pot than there is
)

// coldest is colder than any kitchen and any jar; it is what an open thermistor shows.
var coldest = units.Celsius(-40)

// set works out the limits in the record's own quantity: for pressures with what the gauge reads high added, for
// temperatures that of pure steam under the schedule's pressure in this air; both with the stated error of the
// recorder.
func (l *limits[T]) set(r *Run, air pressure.Air) error {
	switch l := any(l).(type) {
	case *limits[units.Pressure]:
		off := max(0, r.Gauge.ReadsHigh) + r.Recorder.Pressure
		l.atLeast = r.Schedule.Pressure + off
		l.high, l.rest, l.calm = l.atLeast+overBy, ventShows+off, slightly+off
		l.least, l.most, l.long = -emptiest-off, mostHeld, longHeld+off
		l.slight = max(0, slightly+r.Gauge.ReadsHigh) // one that reads low shows less than there is
	case *limits[units.Temperature]:
		off := r.Recorder.Temperature
		l.least = coldest.Add(-off)
		for _, one := range [...]struct {
			to    *units.Temperature
			gauge units.Pressure
			off   units.TemperatureChange
		}{
			{&l.atLeast, r.Schedule.Pressure, off}, {&l.high, r.Schedule.Pressure + overBy, off}, {&l.zero, 0, 0},
			{&l.slight, slightly, 0}, {&l.rest, ventShows, off}, {&l.calm, slightly, off}, {&l.cold, 0, -belowSteam - off},
			{&l.most, mostHeld, 0}, {&l.long, longHeld, off},
		} {
			steam, err := air.SteamUnder(one.gauge)
			if err != nil {
				return err
			}
			*one.to = steam.Add(one.off)
		}
	}
	return nil
}

// believed is how the record of a canner is doubted. The fastest rise is the schedule's pressure in a minute.
func (l *limits[T]) believed(r *Run) (series.Doubting[T], error) {
	b := series.Believable[T]{High: units.State(l.most), Per: time.Minute}
	switch l := any(l).(type) {
	case *limits[units.Pressure]:
		b.Rise, b.Noise = units.AmountOf(r.Schedule.Pressure), units.AmountOf(ventShows)
	case *limits[units.Temperature]:
		zero := units.AmountOf(l.zero)
		b.Rise, b.Noise = units.AmountOf(l.atLeast).Minus(zero), units.AmountOf(l.rest).Minus(zero)
	}
	return series.WatchDoubts(b)
}
