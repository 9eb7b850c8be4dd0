package season

import "example.org/lakelarder/internal/word"

// Order is which fish is begun next. A fish once begun is finished before another. The zero Order is not stated.
type Order uint8

// The orders of eating.
const (
	FreshFirst  Order = iota + 1 // the oldest fresh fish, then the oldest preserved one
	OldestFirst                  // the oldest fish, preserved before fresh: first in, first out
	AsListed                     // as Plan.Begun lists them, week by week
)

var orders = word.List[Order]{What: "order of eating", Words: []string{"fresh first", "oldest first", "as listed"}}

// ParseOrder reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseOrder(s string) (Order, error) { return orders.Parse(s) }

// String is the order in words: "fresh first".
func (o Order) String() string { return orders.Of(o) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (o Order) MarshalText() ([]byte, error) { return orders.Marshal(o) }

// UnmarshalText is ParseOrder, and the empty text is one that is not set.
func (o *Order) UnmarshalText(text []byte) error { return orders.Unmarshal(text, o) }
