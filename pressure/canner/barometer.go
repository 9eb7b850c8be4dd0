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

var barometerKinds = word.List[BarometerKind]{What: "kind of barometer reading", Words: []string{"station pressure", "reduced to sea level"}}

// ParseBarometerKind reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseBarometerKind(s string) (BarometerKind, error) { return barometerKinds.Parse(s) }

// String is the kind in words: "station pressure".
func (k BarometerKind) String() string { return barometerKinds.Of(k) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (k BarometerKind) MarshalText() ([]byte, error) { return barometerKinds.Marshal(k) }

// UnmarshalText is ParseBarometerKind, and the empty text is one that is not set.
func (k *BarometerKind) UnmarshalText(text []byte) error { return barometerKinds.Unmarshal(text, k) }

// Barometer is a reading of a barometer beside the canner, and what it shows. The zero Barometer is not stated. Where the
// kind decides and is not stated, the verdict is CannotTell.
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

var weatherSource = cite.Citation{Source: cite.SFSUAtmosphericPressure, Where: "typical range at sea level", Basis: cite.Read}

// around is the air around the canner, and what is wrong with the barometer: its Kind is zero when nothing is. Where the
// barometer cannot be believed the air is the standard one. A reading that was reduced to sea level is taken back by the
// standard atmosphere; weather services reduce it by other rules too, so it never counts as less than standard air.
func (r *Run) around() (pressure.Air, verdict.Finding, error) {
	altitude := r.Schedule.Altitude.Value
	air, err := pressure.AirAt(altitude)
	b := r.Barometer
	if err != nil || b == (Barometer{}) {
		return air, verdict.Finding{}, err
	}
	if err := barometerKinds.CheckIfSet(b.Kind); err != nil {
		return air, verdict.Finding{}, err
	}
	read, err := pressure.AirReading(b.Reading)
	if err != nil {
		return air, verdict.Finding{}, err
	}
	sea, err := pressure.AirAt(0)
	if err != nil {
		return air, verdict.Finding{}, err
	}
	f := verdict.Finding{Rule: RuleBarometer, What: "barometer", Verdict: verdict.CannotTell, Stated: units.Exactly(b.Reading), Citation: weatherSource}
	low, high := leastSeaLevel, mostSeaLevel
	if b.Kind != SeaLevel {
		var usual [2]units.Pressure
		usual, err = weatherAt(air)
		low, high = usual[0], usual[1]
	}
	switch {
	case err != nil:
		return air, f, err
	case b.Reading < low || b.Reading > high:
		f.Kind, f.Wanted = verdict.Impossible, units.Between(low, high).With("at this altitude")
		return air, f, nil
	case b.Kind == Station:
		return read, verdict.Finding{}, nil
	case b.Kind == 0:
		f.Kind, f.What, f.Stated = verdict.Missing, "whether the barometer shows station pressure or is reduced to sea level", units.Figure{}
		return air, f, nil
	}
	back, err := units.Prorate(b.Reading, air.Pressure(), sea.Pressure())
	if err == nil && back > air.Pressure() {
		air, err = pressure.AirReading(back)
	}
	return air, verdict.Finding{}, err
}

// weatherAt is the usual range of the air's pressure at the altitude of standard air.
func weatherAt(standard pressure.Air) (usual [2]units.Pressure, err error) {
	sea, err := pressure.AirAt(0)
	if err != nil {
		return usual, err
	}
	if usual[0], err = units.ProrateDown(leastSeaLevel, standard.Pressure(), sea.Pressure()); err != nil {
		return usual, err
	}
	usual[1], err = units.ProrateUp(mostSeaLevel, standard.Pressure(), sea.Pressure())
	return usual, err
}
