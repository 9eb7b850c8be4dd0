package canner

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// BarometerKind is what a barometer shows. The zero BarometerKind is not stated.
type BarometerKind uint8

// The kinds of barometer reading.
const (
	Station  BarometerKind = iota + 1 // the air at the barometer itself
	SeaLevel                          // reduced to sea level, as weather reports are
)

var barometerKinds = word.List[BarometerKind]{
	What: "kind of barometer reading", Words: []string{"station pressure", "reduced to sea level"},
}

// ParseBarometerKind reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseBarometerKind(s string) (BarometerKind, error) { return barometerKinds.Parse(s) }

// String is the kind in words: "station pressure".
func (k BarometerKind) String() string { return barometerKinds.Of(k) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (k BarometerKind) MarshalText() ([]byte, error) { return barometerKinds.Marshal(k) }

// UnmarshalText is ParseBarometerKind, and the empty text is one that is not set.
func (k *BarometerKind) UnmarshalText(text []byte) error { return barometerKinds.Unmarshal(text, k) }

// Barometer is a reading of a barometer beside the canner, and what it shows. The zero Barometer is not stated. Where
// the kind decides and is not stated, the verdict is CannotTell.
type Barometer struct {
	Reading units.Pressure
	Kind    BarometerKind
}

// MarshalJSON writes the barometer in the words that UnmarshalJSON reads.
func (b Barometer) MarshalJSON() ([]byte, error) { return wire.Marshal(b) }

// UnmarshalJSON reads a barometer strictly.
func (b *Barometer) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, b) }

// The usual range of the air's pressure, at sea level; beyond it is no weather but another place or a lost unit.
const (
	leastSeaLevel = 960 * units.Hectopascal
	mostSeaLevel  = 1050 * units.Hectopascal
)

var weatherSource = cite.Citation{
	Source: cite.SFSUAtmosphericPressure, Where: "typical range at sea level", Basis: cite.Read,
}

// surroundings are the air around the canner, its usual range at that altitude, light and heavy, and what is wrong with the barometer: the
// Kind of the finding is zero when nothing is.
type surroundings struct {
	air          pressure.Air
	light, heavy units.Pressure
	barometer    verdict.Finding
}

// around works out the surroundings. Where the barometer cannot be believed the air is the standard one.
func (r *Run) around() (s surroundings, err error) {
	if s.air, err = pressure.AirAt(r.Schedule.Altitude.Value); err != nil {
		return s, err
	}
	standard := s.air.Pressure()
	if s.light, err = units.ProrateDown(leastSeaLevel, standard, units.Atmosphere); err != nil {
		return s, err
	}
	if s.heavy, err = units.ProrateUp(mostSeaLevel, standard, units.Atmosphere); err != nil || r.Barometer == (Barometer{}) {
		return s, err
	}
	return s, s.read(r.Barometer)
}

// read takes in what the barometer shows. A reading that was reduced to sea level is taken back by the standard
// atmosphere; weather services reduce it by other rules too, so it never counts as less than standard air.
func (s *surroundings) read(b Barometer) error {
	if err := barometerKinds.CheckIfSet(b.Kind); err != nil {
		return err
	}
	station, err := pressure.AirReading(b.Reading)
	if err != nil {
		return err
	}
	f := verdict.Finding{
		Rule: RuleBarometer, What: "barometer", Verdict: verdict.CannotTell, Stated: units.Exactly(b.Reading), Citation: weatherSource,
	}
	low, high, where := s.light, s.heavy, "at this altitude"
	if b.Kind == SeaLevel {
		low, high, where = leastSeaLevel, mostSeaLevel, "at sea level"
	}
	switch {
	case b.Reading < low || b.Reading > high:
		f.Kind, f.Wanted = verdict.Impossible, units.Between(low, high).With(where)
		s.barometer = f
	case b.Kind == 0:
		f.Kind, f.Stated = verdict.Missing, units.Figure{}
		f.What = "whether the barometer shows station pressure or is reduced to sea level"
		s.barometer = f
	case b.Kind == Station:
		s.air = station
	case b.Reading > units.Atmosphere:
		back, err := units.Prorate(b.Reading, s.air.Pressure(), units.Atmosphere)
		if err != nil {
			return err
		}
		s.air, err = pressure.AirReading(back)
		return err
	}
	return nil
}
