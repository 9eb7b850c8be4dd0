package pressure

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Air is the pressure of the air around the canner, from an altitude (AirAt) or from a barometer (AirReading). It is
// small and comparable. The zero Air is not set, and every method that computes from it returns a units.UnsetError.
type Air struct {
	pressure units.Pressure
	read     bool // from a barometer, not from the standard
}

// Where AirAt holds, on the map, and what AirReading takes for a barometer where people live.
const (
	lowestAltitude  = -1_000 * units.Metre
	highestAltitude = 11_000 * units.Metre
	lowestReading   = 40 * units.Kilopascal
	highestReading  = 110 * units.Kilopascal
)

// AirAt returns the standard air at an altitude: the geometric height above sea level, as on a map, from -1,000 m to
// 11,000 m; anything else is a RangeError. The pressure is that of the US Standard Atmosphere 1976 to the nearest
// micropascal; the weather moves the real one. Source: AtmosphereSource.
func AirAt(altitude units.Length) (Air, error) {
	if err := units.Check("altitude", altitude, lowestAltitude, highestAltitude); err != nil {
		return Air{}, err
	}
	p := standardPressure(float64(altitude) * (1 / float64(units.Metre)))
	return Air{pressure: nearestMicropascal(p)}, nil
}

// AirReading returns the air as a barometer beside the canner reads it: station pressure, absolute, from 40 kPa to
// 110 kPa; anything else is a RangeError. Beware of weather reports and of barometers set by them: they are reduced
// to sea level, which on high ground makes the steam look hotter than it is. Compare Altitude with the map. The
// reading is kept exactly as given.
func AirReading(barometer units.Pressure) (Air, error) {
	if err := units.Check("barometer reading", barometer, lowestReading, highestReading); err != nil {
		return Air{}, err
	}
	return Air{pressure: barometer, read: true}, nil
}

// Pressure returns the absolute pressure of the air, exactly as it is kept; zero when the Air is not set.
func (a Air) Pressure() units.Pressure { return a.pressure }

// Altitude returns the geometric height at which the US Standard Atmosphere 1976 has this pressure, to the nearest
// micrometre. It gives back the altitude of AirAt. Of a barometer reading it is the pressure altitude: in ordinary
// weather within some 1,000 ft of the map's, unless the reading was reduced to sea level. An Air that is not set is a
// units.UnsetError. Source: AtmosphereSource.
func (a Air) Altitude() (units.Length, error) {
	if err := a.check(); err != nil {
		return 0, err
	}
	z := standardAltitude(float64(a.pressure) / float64(units.Pascal))
	return nearestMicrometre(z), nil
}

// Cautions returns what must stand beside any figure worked out from this air, for a person to read: that the
// published setting decides, and what the air it was worked out from leaves out. It always returns some; the slice is
// the caller's.
func (a Air) Cautions() []cite.Caution {
	which := cite.Caution{
		ID: "pressure.standard-air",
		Text: "This is standard air. " +
			"With the barometer 25 hPa lower, steam is 0.7 to 0.8 °F cooler at the same reading.",
		Citation: AtmosphereSource(),
	}
	if a.read {
		which = cite.Caution{
			ID: "pressure.station-pressure",
			Text: "The barometer must be station pressure, read beside the canner. " +
				"Weather reports are reduced to sea level, " +
				"and on high ground make the steam look hotter than it is.",
			Citation: cite.Citation{Where: "reading a barometer", Basis: cite.Practice},
		}
	}
	return []cite.Caution{
		{
			ID: "pressure.explains-only",
			Text: "This explains a published pressure setting and never replaces, lowers or corrects one. " +
				"Use a tested process for your altitude.",
			Deciding: true,
			Citation: SteamSource(),
		},
		{
			ID: "pressure.pure-steam",
			Text: "This holds for pure steam and a gauge that reads true. Air left in the canner makes it cooler " +
				"at the same reading, so vent as the process says.",
			Citation: SteamSource(),
		},
		which,
	}
}

func (a Air) check() error {
	if a == (Air{}) {
		return units.UnsetError{What: "air"}
	}
	return nil
}
