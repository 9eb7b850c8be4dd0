package season

// Order is which fish is begun next. A fish once begun is finished before another.
type Order uint8

// The orders of eating.
const (
	FreshFirst  Order = iota // the oldest fresh fish, then the oldest preserved one
	OldestFirst              // the oldest fish, preserved before fresh: first in, first out
)

// String is the order in words: "fresh first" or "oldest first".
func (o Order) String() string {
	switch o {
	case FreshFirst:
		return "fresh first"
	case OldestFirst:
		return "oldest first"
	}
	return "unknown order"
}
