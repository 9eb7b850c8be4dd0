package keeping

import "example.org/lakelarder/internal/word"

// Food is what is kept. The zero Food is not set.
type Food uint8

// The foods. Raw is raw fish of a kind that is not stated: the rules for lean and for fatty fish both hold.
const (
	Raw Food = iota + 1
	RawLean
	RawFatty
	RawSalmon     // fatty
	RawTrout      // counted fatty by one chart and lean by another, so both hold
	Brined        // in brine or dry cure of a home strength, which preserves nothing: counted as Raw
	Cooked        // not smoked
	LightlySmoked // for the canner, not cooked
	Smoked        // hot smoked to a published limit, in paper or a loose bag
	SmokedVacuum  // the same, in a vacuum or any sealed pack
	HomeCanned    // by a published process, sealed
	Opened        // out of a can or jar
	anyFood
)

var foodNames = word.List[Food]{What: "food", Words: []string{
	"raw fish", "raw lean fish", "raw fatty fish", "raw salmon", "raw trout", "brined fish", "cooked fish",
	"lightly smoked fish",
	"smoked fish", "smoked fish in vacuum", "home-canned fish", "opened canned fish",
}}

// ParseFood reads the name that String writes, in capitals or not; anything else is a units.UnknownError that lists the
// names.
func ParseFood(s string) (Food, error) {
	return foodNames.Parse(s)
}

// String is the name that ParseFood reads; "not stated" when it is not set.
func (f Food) String() string { return foodNames.Of(f) }

// MarshalText is String as bytes, empty when the food is not set; an unknown one is an error.
func (f Food) MarshalText() ([]byte, error) { return foodNames.Marshal(f) }

// UnmarshalText is ParseFood, and the empty text is a food that is not set.
func (f *Food) UnmarshalText(text []byte) error { return foodNames.Unmarshal(text, f) }

// countsAs reports whether a rule printed for one food holds for another in a storage.
func (f Food) countsAs(printed Food, storage Storage) bool {
	switch printed {
	case f:
		return true
	case Raw:
		return f <= Brined
	case RawLean:
		return f == Raw || f == RawTrout || f == Brined
	case RawFatty:
		return f == Raw || f == RawSalmon || f == RawTrout || f == Brined
	case Smoked: // a vacuum pack has a time of its own, and none in the refrigerator
		return f == SmokedVacuum && storage == InFreezer
	case anyFood: // a jar is not frozen
		return f != HomeCanned
	}
	return false
}

// Storage is where it is kept. The zero Storage is not set.
type Storage uint8

// The storages.
const (
	InRefrigerator Storage = iota + 1
	InFreezer
	InCupboard // dry and dark
)

var storageNames = word.List[Storage]{What: "storage", Words: []string{"refrigerator", "freezer", "cupboard"}}

// ParseStorage reads the name that String writes, in capitals or not; anything else is a units.UnknownError that lists
// the names.
func ParseStorage(s string) (Storage, error) {
	return storageNames.Parse(s)
}

// String is the name that ParseStorage reads; "not stated" when it is not set.
func (s Storage) String() string { return storageNames.Of(s) }

// MarshalText is String as bytes, empty when the storage is not set; an unknown one is an error.
func (s Storage) MarshalText() ([]byte, error) { return storageNames.Marshal(s) }

// UnmarshalText is ParseStorage, and the empty text is a storage that is not set.
func (s *Storage) UnmarshalText(text []byte) error { return storageNames.Unmarshal(text, s) }
