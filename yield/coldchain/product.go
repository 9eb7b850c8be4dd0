package coldchain

import "example.org/lakelarder/internal/word"

// Product is what the fish is. The zero Product is AnyFish, a fish that is not described: the rules for raw and for
// cooked fish both hold.
type Product uint8

// The products.
const (
	AnyFish Product = iota
	RawFish
	CookedFish // cooked, hot smoking included: its record begins when the cooking ends
)

var products = word.List[Product]{What: "product", Words: []string{"raw fish", "cooked fish"}}

// ParseProduct reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseProduct(s string) (Product, error) { return products.Parse(s) }

// String is the product in words: "raw fish"; "not stated" for AnyFish.
func (p Product) String() string { return products.Of(p) }

// MarshalText is String as bytes, empty for AnyFish; an unknown product is a units.UnknownError.
func (p Product) MarshalText() ([]byte, error) { return products.Marshal(p) }

// UnmarshalText is ParseProduct, and the empty text is AnyFish.
func (p *Product) UnmarshalText(text []byte) error { return products.Unmarshal(text, p) }
