package yield

import "example.org/lakelarder/internal/word"

// Destination is where the part of the fish goes that a step does not keep. The zero Destination is not stated.
type Destination uint8

// Every quantum that leaves goes to one of these.
const (
	Loss Destination = iota + 1 // gone: blood, slime, drip, water
	Trim                        // head, frame, fins, skin, offal
	Food                        // eaten, but not from this chain: roe, collars, belly strips
)

var destinations = word.List[Destination]{What: "destination", Words: []string{"loss", "trim", "food"}}

// ParseDestination reads the word that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseDestination(s string) (Destination, error) { return destinations.Parse(s) }

// String is the destination in one word: "trim".
func (d Destination) String() string { return destinations.Of(d) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (d Destination) MarshalText() ([]byte, error) { return destinations.Marshal(d) }

// UnmarshalText is ParseDestination, and the empty text is one that is not set.
func (d *Destination) UnmarshalText(text []byte) error { return destinations.Unmarshal(text, d) }
