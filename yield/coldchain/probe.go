package coldchain

import "example.org/lakelarder/internal/word"

// Probe is what the record is of. The zero Probe is not stated and counts as Core: then the outside is warmer wherever the
// core warms.
type Probe uint8

// The probes.
const (
	Core        Probe = iota + 1 // the middle of the thickest fish
	WarmestPart                  // at every reading the warmest of the core and the surface
)

var probes = word.List[Probe]{What: "probe", Words: []string{"core", "warmest part"}}

// ParseProbe reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseProbe(s string) (Probe, error) { return probes.Parse(s) }

// String is the probe in words: "core"; "not stated" when it is not set.
func (p Probe) String() string { return probes.Of(p) }

// MarshalText is String as bytes, empty when the probe is not set; an unknown one is a units.UnknownError.
func (p Probe) MarshalText() ([]byte, error) { return probes.Marshal(p) }

// UnmarshalText is ParseProbe, and the empty text is one that is not set.
func (p *Probe) UnmarshalText(text []byte) error { return probes.Unmarshal(text, p) }
