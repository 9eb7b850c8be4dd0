package pressure

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// form is an Air as it leaves the process: its absolute pressure, under the name of where it is from. One of the two.
type form struct {
	Standard  units.Stated[units.Pressure]
	Barometer units.Stated[units.Pressure]
}

// MarshalJSON writes the absolute pressure of the air: {"standard": …} of AirAt, {"barometer": …} of AirReading.
// Exact. An Air that is not set is a units.UnsetError.
func (a Air) MarshalJSON() ([]byte, error) {
	if err := a.check(); err != nil {
		return nil, err
	}
	if a.read {
		return wire.Marshal(form{Barometer: units.State(a.pressure)})
	}
	return wire.Marshal(form{Standard: units.State(a.pressure)})
}

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError, no pressure a
// units.UnsetError, and a RangeError what AirAt and AirReading do not give. On an error a keeps its value.
func (a *Air) UnmarshalJSON(data []byte) error {
	var f form
	if err := wire.Unmarshal(data, &f); err != nil {
		return err
	}
	switch {
	case f.Standard.Given && f.Barometer.Given:
		return units.RangeError{
			What: "air of a barometer beside standard air", Got: f.Barometer.Value.String(), High: "one of the two",
		}
	case f.Barometer.Given:
		read, err := AirReading(f.Barometer.Value)
		if err != nil {
			return err
		}
		*a = read
		return nil
	case !f.Standard.Given:
		return units.UnsetError{What: "pressure of the air"}
	}
	return a.takeStandard(f.Standard.Value)
}

// takeStandard is AirAt of the altitude that has this pressure: both are whole in their step of rounding.
func (a *Air) takeStandard(p units.Pressure) error {
	low, err := AirAt(highestAltitude)
	if err != nil {
		return err
	}
	high, err := AirAt(lowestAltitude)
	if err != nil {
		return err
	}
	if err := units.Check("pressure of standard air", p, low.pressure, high.pressure); err != nil {
		return err
	}
	if whole := units.RoundTo(p, micropascal); whole != p {
		return units.RangeError{
			What: "pressure of standard air", Got: p.String(), Low: whole.String(), High: whole.String(),
		}
	}
	*a = Air{pressure: p}
	return nil
}
