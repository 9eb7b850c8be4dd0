package canner

import (
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
)

// Barometer is a reading of a barometer beside the canner: station pressure, absolute. The zero Barometer is not stated.
type Barometer struct {
	Reading units.Pressure
}

// air is the air around the canner. A barometer that is further from the map than the weather takes it is not believed:
// it was set to sea level, or its unit was lost.
func (r *Run) air() (pressure.Air, error) {
	altitude := r.Schedule.Altitude.Value
	if r.Barometer == (Barometer{}) {
		return pressure.AirAt(altitude)
	}
	air, err := pressure.AirReading(r.Barometer.Reading)
	if err != nil {
		return pressure.Air{}, err
	}
	height, err := air.Altitude()
	if err != nil {
		return pressure.Air{}, err
	}
	if height > altitude+weather || height < altitude-weather {
		return pressure.Air{}, ContradictionError{
			What: "barometer", Got: r.Barometer.Reading.String(), Expected: "station pressure at " + altitude.String(),
		}
	}
	return air, nil
}

// weather moves a barometer by 1,000 ft of altitude in ordinary times.
const weather = 1500 * units.Foot
