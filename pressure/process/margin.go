package process

import (
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Margin is what a setting gives in some air: the temperature of pure saturated steam, and how far it
// is above Reference, 240 °F; Above is negative where it is below. It is stated, never asserted: several
// published settings end their band below 240 °F, and none of them is to be changed for that.
type Margin struct {
	Steam     units.Temperature
	Reference units.Temperature
	Above     units.TemperatureChange
	Citation  cite.Citation // of Steam, computed
}

// Margin returns what the pressure of the schedule gives in the air around the canner, with a true gauge and no
// air trapped inside. An Air that is not set is a units.RangeError. Whether the air belongs to the Band
// is not judged: a barometer reads other altitudes than the map. It explains the schedule and decides nothing; show air.Cautions beside it.
// Accuracy as pressure.SteamTemperature. Source of the 240 °F: USDA Complete Guide, Guide 1, rev. 2015, p. 1-19.
func (s Schedule) Margin(air pressure.Air) (Margin, error) {
	steam, err := air.SteamUnder(s.Pressure)
	if err != nil {
		return Margin{}, err
	}
	reference := units.Fahrenheit(240)
	above, err := steam.Sub(reference)
	if err != nil {
		return Margin{}, err
	}
	return Margin{Steam: steam, Reference: reference, Above: above, Citation: pressure.SteamSource()}, nil
}
