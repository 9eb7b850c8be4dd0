package process

import "example.org/lakelarder/internal/word"

// Pack is the style of pack, by the column of that name in the printed tables. The zero Pack is not
// set.
type Pack uint8

// The styles of pack.
const (
	// RawPack is raw fish without liquid.
	RawPack Pack = iota + 1
	// Precooked is tuna that was baked or steamed and chilled first.
	Precooked
	// AsSmoked is smoked fish packed dry, as it comes from the smoker.
	AsSmoked
)

var packs = word.List[Pack]{
	What:  "pack",
	Words: []string{"raw", "precooked", "as smoked"},
}

// ParsePack reads "raw", "precooked" or "as smoked", in capitals or not; anything else is a
// units.ParseError.
func ParsePack(s string) (Pack, error) {
	return packs.Parse(s)
}

// String is the word that ParsePack reads; "not stated" when it is not set.
func (p Pack) String() string { return packs.Of(p) }

// MarshalText is String as bytes, empty when the pack is not set; an unknown one is an error.
func (p Pack) MarshalText() ([]byte, error) { return packs.Marshal(p) }

// UnmarshalText is ParsePack, and the empty text is a pack that is not set.
func (p *Pack) UnmarshalText(text []byte) error { return packs.Unmarshal(text, p) }
