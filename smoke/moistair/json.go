package moistair

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// stored is an Air as JSON has it.
type stored struct {
	DryBulb       units.Temperature `wire:"required"`
	HumidityRatio units.Ratio       `wire:"required"`
	Pressure      units.Pressure    `wire:"required"`
}

// MarshalJSON writes the air as its dry bulb, its humidity ratio and its pressure; an Air that is not stated is a
// units.UnsetError.
func (a Air) MarshalJSON() ([]byte, error) {
	if err := a.check(); err != nil {
		return nil, err
	}
	return wire.Marshal(stored{a.dryBulb, a.humidity, a.pressure})
}

// UnmarshalJSON reads what MarshalJSON writes, strictly, and refuses what ByHumidityRatio refuses; on an error the value
// stays as it was.
func (a *Air) UnmarshalJSON(data []byte) error {
	var s stored
	if err := wire.Unmarshal(data, &s); err != nil {
		return err
	}
	read, err := ByHumidityRatio(s.DryBulb, s.HumidityRatio, s.Pressure)
	if err == nil {
		*a = read
	}
	return err
}

// MarshalJSON writes the film as an app shows it.
func (f Film) MarshalJSON() ([]byte, error) { return wire.Marshal(f) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (f *Film) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, f) }

// MarshalJSON writes the drying as an app shows it.
func (e Evaporation) MarshalJSON() ([]byte, error) { return wire.Marshal(e) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (e *Evaporation) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, e) }
