package smoke

import (
	"time"

	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
)

// StageKind is what a stage of the smoking is for. The zero StageKind is not set.
type StageKind uint8

// The stages, in the order in which they may follow each other; any but Cook may be left out, and Glaze may come between.
const (
	Dry StageKind = iota + 1
	Smoke
	Cook
	Glaze
	Cool
)

var stages = word.List[StageKind]{What: "stage", Words: []string{"dry", "smoke", "cook", "glaze", "cool"}}

// ParseStageKind reads "dry", "smoke", "cook", "glaze" or "cool", in capitals or not; anything else is a units.UnknownError.
func ParseStageKind(s string) (StageKind, error) { return stages.Parse(s) }

// String is the stage in one word: "cook".
func (k StageKind) String() string { return stages.Of(k) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (k StageKind) MarshalText() ([]byte, error) { return stages.Marshal(k) }

// UnmarshalText is ParseStageKind, and the empty text is one that is not set.
func (k *StageKind) UnmarshalText(text []byte) error { return stages.Unmarshal(text, k) }

// Damper is how far the vent of the smoker stands open. It goes into the timetable; no humidity is guessed from it. The zero Damper is not stated.
type Damper uint8

// The settings of a damper.
const (
	DamperOpen Damper = iota + 1
	DamperHalf
	DamperClosed
)

var dampers = word.List[Damper]{What: "damper", Words: []string{"open", "half open", "closed"}, Also: map[string]Damper{"half": DamperHalf}}

// ParseDamper reads "open", "half open" (or "half") or "closed", in capitals or not; anything else is a units.UnknownError.
func ParseDamper(s string) (Damper, error) { return dampers.Parse(s) }

// String is the setting in words: "half open".
func (d Damper) String() string { return dampers.Of(d) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (d Damper) MarshalText() ([]byte, error) { return dampers.Marshal(d) }

// UnmarshalText is ParseDamper, and the empty text is one that is not set.
func (d *Damper) UnmarshalText(text []byte) error { return dampers.Unmarshal(text, d) }

// Stage is one part of a schedule. Humidity is the measured relative humidity of its air; when it is not stated the air holds no more
// water than outside, which is the safe side for what the core can reach. DryAfter is how long after the start of the stage the surface has dried, 0 where it begins
// dry, stated for each stage anew: not stated, it stays wet, and then the wet bulb is its ceiling. Baste is the time between bastings, zero for none.
type Stage struct {
	Kind     StageKind
	Air      units.Temperature
	Humidity units.Stated[units.Ratio]
	Damper   Damper
	For      time.Duration
	Baste    time.Duration
	DryAfter units.Stated[time.Duration]
}

func (s Stage) check() error {
	if err := stages.Check(s.Kind); err != nil {
		return err
	}
	if err := units.CheckDuration("time of the stage", s.For, time.Minute, longestSmoking); err != nil {
		return err
	}
	if s.Baste != 0 {
		if err := units.CheckDuration("time between bastings", s.Baste, time.Minute, s.For); err != nil {
			return err
		}
	}
	if s.DryAfter.Given {
		if err := units.CheckDuration("time until the surface is dry", s.DryAfter.Value, 0, s.For); err != nil {
			return err
		}
	}
	if s.Kind == Cool {
		return checkWarmth("air of the cooling", s.Air, units.Celsius(-20), coldStorage)
	}
	return checkWarmth("air of the stage", s.Air, units.Celsius(-5), hottestMedium)
}

// coldStorage is what four states ask of smoked fish: air above it never brings a core there.
var coldStorage = units.Fahrenheit(38)

// wet is how long the surface is wet in the stage.
func (s Stage) wet() time.Duration {
	switch {
	case s.Kind == Cool:
		return 0
	case s.DryAfter.Given:
		return s.DryAfter.Value
	}
	return s.For
}
