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

var packNames = word.List{
	What:  "pack",
	Words: []string{"unset pack", "raw", "precooked", "as smoked"},
}

// ParsePack reads "raw", "precooked" or "as smoked", in capitals or not; anything else is a
// units.ParseError.
func ParsePack(s string) (Pack, error) {
	v, err := packNames.Parse(s)
	return Pack(v), err
}

// String is the word that ParsePack reads; "unset pack" when it is not set.
func (p Pack) String() string { return packNames.Of(uint8(p)) }

// MarshalText is String as bytes, empty when the pack is not set; an unknown one is an error.
func (p Pack) MarshalText() ([]byte, error) { return packNames.Marshal(uint8(p)) }

// UnmarshalText is ParsePack, and the empty text is a pack that is not set.
func (p *Pack) UnmarshalText(text []byte) error { return packNames.Unmarshal(text, (*uint8)(p)) }
