package pressure

import "example.org/lakelarder/units"

// Absolute returns the absolute pressure under a gauge reading in this air: the sum of the two, exact. A reading
// below vacuum or one that passes 22.064 MPa absolute is a RangeError, an Air that is not set a units.UnsetError.
func (a Air) Absolute(gauge units.Pressure) (units.Pressure, error) {
	if err := a.check(); err != nil {
		return 0, err
	}
	if err := units.Check("gauge reading", gauge, -a.pressure, highestSteam-a.pressure); err != nil {
		return 0, err
	}
	return a.pressure + gauge, nil
}

// Gauge returns what a gauge reads in this air at an absolute pressure from 0 to 22.064 MPa, exact; below the air's own
// pressure the reading is negative, a vacuum. Anything else is a RangeError, an Air that is not set a units.UnsetError.
func (a Air) Gauge(absolute units.Pressure) (units.Pressure, error) {
	if err := a.check(); err != nil {
		return 0, err
	}
	if err := units.Check("absolute pressure", absolute, 0, highestSteam); err != nil {
		return 0, err
	}
	return absolute - a.pressure, nil
}

// SteamUnder returns the temperature of pure saturated steam under a gauge reading in this air. The reading must be
// true and leave 611.212677 Pa to 22.064 MPa absolute; anything else is a RangeError, an Air that is not set a
// units.UnsetError. Accuracy and rounding as for SteamTemperature. It explains a published setting and decides
// nothing. Source: SteamSource.
func (a Air) SteamUnder(gauge units.Pressure) (units.Temperature, error) {
	absolute, err := a.Absolute(gauge)
	if err != nil {
		return units.Temperature{}, err
	}
	return SteamTemperature(absolute)
}

// GaugeFor returns the gauge reading at which pure saturated steam in this air has a temperature from 273.15 K to
// 647.096 K; below the boiling point it is negative, a vacuum. Anything else is a RangeError, an Air that is not set
// a units.UnsetError. Accuracy and rounding as for SteamPressure. Never set a canner by it: published settings are
// not made to give one temperature. Source: SteamSource.
func (a Air) GaugeFor(t units.Temperature) (units.Pressure, error) {
	if err := a.check(); err != nil {
		return 0, err
	}
	absolute, err := SteamPressure(t)
	if err != nil {
		return 0, err
	}
	return absolute - a.pressure, nil
}

// BoilingPoint returns the temperature at which water boils in an open pot in this air. Accuracy and rounding as for
// SteamTemperature; salt or sugar in the water raises it. An Air that is not set is a units.UnsetError.
// Source: SteamSource.
func (a Air) BoilingPoint() (units.Temperature, error) { return a.SteamUnder(0) }
