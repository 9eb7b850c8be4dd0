package smoke

import "example.org/lakelarder/internal/word"

// Pack is what smoked fish is wrapped in. The zero Pack is not stated.
type Pack uint8

// The packs. What keeps air away lets Clostridium botulinum grow.
const (
	AirPack       Pack = iota + 1 // open, paper, a loose bag: air gets in
	LowOxygenPack                 // vacuum, any sealed or oxygen-free pack, a deep airless container, oil
)

var packs = word.List[Pack]{
	What: "pack", Words: []string{"air pack", "low-oxygen pack"},
	Also: map[string]Pack{"air": AirPack, "low-oxygen": LowOxygenPack, "vacuum": LowOxygenPack, "vacuum pack": LowOxygenPack},
}

// ParsePack reads "air pack" or "low-oxygen pack", also as "air" or "vacuum", in capitals or not; anything else is a
// units.UnknownError.
func ParsePack(s string) (Pack, error) { return packs.Parse(s) }

// String is the pack in words: "air pack".
func (p Pack) String() string { return packs.Of(p) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (p Pack) MarshalText() ([]byte, error) { return packs.Marshal(p) }

// UnmarshalText is ParsePack, and the empty text is one that is not set.
func (p *Pack) UnmarshalText(text []byte) error { return packs.Unmarshal(text, p) }
