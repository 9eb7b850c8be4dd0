package coldchain

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// Stay is a stretch of the record that the fish spent in one place. Air is the warmest that the air, the water or the
// surface of the fish had there, as recorded or as a thermometer in the place shows it: "refrigerator, 38 °F". Melting
// ice is 0 °C without being stated. Time in ice, refrigerator or freezer is not counted by the kitchen's two-hour rule;
// time out is, whatever the core.
type Stay struct {
	When series.Stretch `wire:"required"`
	In   Place          `wire:"required"`
	Air  units.Temperature
}

// MarshalJSON writes the stay in the words that UnmarshalJSON reads.
func (s Stay) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads a stay strictly; its time and its place must be there.
func (s *Stay) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// notRefrigerated is the air of a refrigerator above which time in it is time out of refrigeration: the guide's ambient
// air for processing without a limit.
const notRefrigerated = 50 // °F

func (s Stay) check(after time.Duration) error {
	if err := places.Check(s.In); err != nil {
		return err
	}
	switch {
	case s.When.From < after:
		return units.RangeError{What: "start of a stay", Got: units.Lasting(s.When.From), Low: units.Lasting(after)}
	case s.When.To <= s.When.From:
		return units.RangeError{What: "end of a stay", Got: units.Lasting(s.When.To), Low: units.Lasting(s.When.From), LowExclusive: true}
	}
	if !s.Air.IsSet() {
		return nil
	}
	low, high := s.believed()
	return units.CheckTemperature("air around the fish, "+s.In.String(), s.Air, low, high)
}

// believed is the range of temperatures that a place is believed to have.
func (s Stay) believed() (low, high units.Temperature) {
	switch s.In {
	case InIce:
		return units.Celsius(-3), units.Celsius(5)
	case InRefrigerator:
		return units.Celsius(-5), units.Celsius(25)
	case InFreezer:
		return units.Celsius(-60), units.Celsius(10)
	}
	return units.Celsius(-40), units.Celsius(150)
}

// cold reports whether time in the place is in ice or refrigeration.
func (s Stay) cold() bool {
	return s.In != Out && !(s.In == InRefrigerator && s.Air.Above(units.Fahrenheit(notRefrigerated)))
}

// around is the temperature around the fish, not set where it is not known.
func (s Stay) around() units.Temperature {
	if s.In == InIce && !s.Air.IsSet() {
		return units.Celsius(0)
	}
	return s.Air
}
