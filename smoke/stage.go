package smoke

import (
	"strconv"
	"strings"
	"time"

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

var stageWords = [...]string{Dry: "dry", Smoke: "smoke", Cook: "cook", Glaze: "glaze", Cool: "cool"}

// String is the stage in one word: "cook".
func (k StageKind) String() string {
	if k == 0 {
		return "unset stage"
	}
	if int(k) < len(stageWords) {
		return stageWords[k]
	}
	return "StageKind(" + strconv.Itoa(int(k)) + ")"
}

// ParseStageKind reads "dry", "smoke", "cook", "glaze" or "cool", in capitals or not; anything else is a units.ParseError.
func ParseStageKind(s string) (StageKind, error) {
	for k, word := range stageWords {
		if k > 0 && strings.EqualFold(strings.TrimSpace(s), word) {
			return StageKind(k), nil
		}
	}
	return 0, units.ParseError{Quantity: "stage", Text: s, Reason: "expected dry, smoke, cook, glaze or cool"}
}

// Damper is how far the vent of the smoker stands open. It goes into the timetable; no humidity is guessed from it.
type Damper uint8

// The settings of a damper. The zero Damper is not stated.
const (
	DamperNotStated Damper = iota
	DamperOpen
	DamperHalf
	DamperClosed
)

var damperWords = [...]string{"damper not stated", "damper open", "damper half open", "damper closed"}

// String is the setting in words: "damper half open".
func (d Damper) String() string {
	if int(d) < len(damperWords) {
		return damperWords[d]
	}
	return "Damper(" + strconv.Itoa(int(d)) + ")"
}

// ParseDamper reads "open", "half" or "closed", in capitals or not, and the empty text as not stated; anything else is a units.ParseError.
func ParseDamper(s string) (Damper, error) {
	switch strings.ToLower(strings.TrimSpace(s)) {
	case "":
		return DamperNotStated, nil
	case "open":
		return DamperOpen, nil
	case "half":
		return DamperHalf, nil
	case "closed":
		return DamperClosed, nil
	}
	return 0, units.ParseError{Quantity: "damper", Text: s, Reason: "expected open, half or closed"}
}

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
	if s.Kind < Dry || s.Kind > Cool {
		return units.RangeError{What: "stage", Got: s.Kind.String(), Low: Dry.String(), High: Cool.String()}
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
		return units.CheckTemperature("air of the cooling", s.Air, units.Celsius(-20), coldStorage)
	}
	return units.CheckTemperature("air of the stage", s.Air, units.Celsius(-5), hottestAir)
}

// coldStorage is 38 °F in its colder print: air above it never brings a core there.
var coldStorage = units.Celsius(3.3)

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
