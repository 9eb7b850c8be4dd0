package process

import "example.org/lakelarder/internal/word"

// Product is what goes into the jar, by the heads of the printed tables. The zero Product is not set.
type Product uint8

// The products with a published process here.
const (
	// Fish is raw fish other than tuna: the table names blue, mackerel, salmon, steelhead, trout and
	// other fatty fish; the one for quarts names halibut too. It names no lean lake fish, and this
	// package does not decide whether a fish not named is a fatty one.
	Fish Product = iota + 1
	// SmokedFish is lightly smoked fish, still raw inside, packed dry: salmon, rockfish, flatfish
	// and other fish.
	SmokedFish
	// Tuna has its own table.
	Tuna
)

var products = word.List[Product]{What: "product", Words: []string{"fish", "smoked fish", "tuna"}}

// ParseProduct reads "fish", "smoked fish" or "tuna", in capitals or not; anything else is a
// units.ParseError.
func ParseProduct(s string) (Product, error) {
	return products.Parse(s)
}

// String is the word that ParseProduct reads; "not stated" when it is not set.
func (p Product) String() string { return products.Of(p) }

// MarshalText is String as bytes, empty when the product is not set; an unknown one is an error.
func (p Product) MarshalText() ([]byte, error) { return products.Marshal(p) }

// UnmarshalText is ParseProduct, and the empty text is a product that is not set.
func (p *Product) UnmarshalText(text []byte) error {
	return products.Unmarshal(text, p)
}
