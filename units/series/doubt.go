package series

import (
	"time"

	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
)

// Sign is why a part of a record is not believed. The zero Sign is not stated.
type Sign uint8

// The signs. They say what the record does, not what it means: that is for who knows the thing recorded.
const (
	FaultCode  Sign = iota + 1 // a value that a broken probe shows
	OutOfReach                 // a value that the thing recorded cannot have
	Jump                       // faster than the thing recorded can change
	Stuck                      // the same value for longer than the thing recorded can keep it
)

var signs = word.List[Sign]{What: "sign of a fault", Words: []string{"fault code", "out of reach", "jump", "stuck"}}

// ParseSign reads the word that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseSign(s string) (Sign, error) { return signs.Parse(s) }

// String is the sign in words: "fault code".
func (s Sign) String() string { return signs.Of(s) }

// MarshalText is String as bytes, empty when the sign is not set; an unknown one is a units.UnknownError.
func (s Sign) MarshalText() ([]byte, error) { return signs.Marshal(s) }

// UnmarshalText is ParseSign, and the empty text is a sign that is not set.
func (s *Sign) UnmarshalText(text []byte) error { return signs.Unmarshal(text, s) }

// Doubt is a stretch of a record that contradicts its Believable limits: from the reading before to the one that shows it, for
// Stuck from the first to the last of the same readings. Value is the reading that shows it, Before the one before.
type Doubt[T Value] struct {
	Sign          Sign
	When          Stretch
	Before, Value T
}

// Believable are the limits within which a record is believed. Each limit that is not given judges nothing. The package
// knows no thing that is recorded: whoever does hands them in, with their source.
type Believable[T Value] struct {
	Low, High units.Stated[T] // what the thing can have, both included
	// Rise and Fall are how fast the thing can change, in a time of Per; Noise is how far two readings may lie apart
	// whatever the time. They are changes: of a temperature a units.TemperatureChange, else an amount of T. A Per of zero judges no change.
	Rise, Fall, Noise units.Amount
	Per               time.Duration
	Still             time.Duration // the longest that exactly the same reading is believed
	Codes             []T           // values of a broken probe, wherever they stand
	JumpCodes         []T           // values of a broken probe that the thing may have too: only where a Jump leads to or from them
}

// TemperatureCodes returns what broken probes are known to show: -127 (no sensor), 1800 (open thermocouple) and 32767 (overflow), as
// degrees of either scale; and, as JumpCodes, 85 °C (a sensor that was never read) and -40 °C (-40 °F, an open thermistor).
// Common practice of the trade, no published source. The slices are the caller's own.
func TemperatureCodes() (always, afterJump []units.Temperature) {
	always = []units.Temperature{
		units.Celsius(-127), units.Fahrenheit(-127), units.Celsius(1800), units.Fahrenheit(1800), units.Celsius(32767), units.Fahrenheit(32767),
	}
	return always, []units.Temperature{units.Celsius(85), units.Celsius(-40)}
}

// Doubts returns every stretch of the record that contradicts the limits, in the order in which it shows; nil for a clean
// record, without an allocation. A limit whose change does not measure T is a units.RangeError.
func (s Series[T]) Doubts(limits Believable[T]) ([]Doubt[T], error) {
	w, err := WatchDoubts(limits)
	if err != nil {
		return nil, err
	}
	var all []Doubt[T]
	for i := 0; i < len(s.at); i++ {
		if i = w.skip(s.at, s.q, i); i == len(s.at) {
			break
		}
		signs, n := w.step(s.at[i], s.q[i])
		all = append(all, signs[:n]...)
	}
	return all, nil
}

// Without returns the record without the readings that a doubt of the given signs names as its Value, and how many were left
// out: a fault code then is a gap, not a reading. A Stuck stretch loses all but its first reading.
func (s Series[T]) Without(doubts []Doubt[T], signs ...Sign) (Series[T], int) {
	drop := func(at int64) bool {
		for _, d := range doubts {
			named := false
			for _, sign := range signs {
				named = named || d.Sign == sign
			}
			if named && (at == int64(d.When.To) || d.Sign == Stuck && at > int64(d.When.From) && at < int64(d.When.To)) {
				return true
			}
		}
		return false
	}
	var kept Series[T]
	for i, at := range s.at {
		if !drop(at) {
			kept.at, kept.q = append(kept.at, at), append(kept.q, s.q[i])
		}
	}
	return kept, len(s.at) - len(kept.at)
}
