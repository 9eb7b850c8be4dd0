package canner

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Recorder is what wrote the record, by how far it may be off, to either side. Of a dial that was read by eye only
// Gauge.ReadsHigh is known. What is stated counts on the safe side: so much more must be shown. The zero Recorder
// states nothing.
type Recorder struct {
	Pressure    units.Pressure          // the error of recorded pressures
	Temperature units.TemperatureChange // the error of recorded temperatures
}

// MarshalJSON writes the recorder in the words that UnmarshalJSON reads.
func (r Recorder) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads a recorder strictly.
func (r *Recorder) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// The greatest error with which a recorder says anything about a canner, and what is taken for one that states none
// where two records are compared; practice, no source.
const (
	recorderMost     = 2 * units.PSI
	thermometerMost  = 5 * units.CelsiusDegrees
	usualPressure    = units.PSI / 2
	usualTemperature = 1 * units.CelsiusDegrees
)

func (r Recorder) check() error {
	if err := units.CheckUnit("error of the recorder", r.Pressure, leastPressure); err != nil {
		return err
	}
	if err := units.CheckUnit("error of the thermometer", r.Temperature, leastChange); err != nil {
		return err
	}
	if err := units.Check("error of the recorder", r.Pressure, 0, recorderMost); err != nil {
		return err
	}
	return units.Check("error of the thermometer", r.Temperature, 0, thermometerMost)
}
