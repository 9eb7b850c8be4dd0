package season

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// State is what a ledger comes to at the end of a Day. Its report holds what the entries contradict and which limits
// were passed; an entry that contradicts what there is was not counted, and its batch is no food until the entry is
// put right. Lots, EatFirst and Aside are what is left; the masses are round and add up: Kept is Left, Eaten,
// GivenAway and ThrownOut.
type State struct {
	verdict.Report
	Day       Day
	Start     Day
	Rule      Rule
	Held      Stock    // what a warden would count
	Limits    Stock    // of all anglers together; zero is no limit
	Used      int      `wire:"always"` // fish kept since the start, against the annual cap
	Lots      []Lot    // in the order of their catches, and of what was made of each
	EatFirst  []Food   // by days left, then in the order of Lots
	Aside     []NoFood // in the order of Lots
	Kept      units.Mass
	Left      units.Mass
	Eaten     units.Mass
	GivenAway units.Mass
	ThrownOut units.Mass
	Weeks     []PastWeek // whole weeks since the start, up to the day
}

// MarshalJSON writes the state as an app shows it.
func (s State) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (s *State) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// Lot is what is left of a catch or of a batch. Of a catch it counts whole fish, of a batch containers. Food may be
// eaten, by its verdict and its seal, whatever its age; Unchecked is jars whose seal nobody checked, Failed jars that
// did not seal. Until is the last day of its keeping time. Verdict is of the fish, and of the audit of its load.
type Lot struct {
	Batch     string
	Event     Event
	From      string
	Catch     string // the catch of it, with its day, fish and round mass
	Caught    Day
	OfFish    int
	OfRound   units.Mass
	Made      Day
	Product   string
	Count     int // when it was begun
	Left      int `wire:"always"`
	Food      int
	Unchecked int
	Failed    int
	Round     units.Mass // of what is left
	Held      units.Mass // of what counts as fish held
	Until     Day
	Quality   bool            // whether the keeping time is of quality alone
	Verdict   verdict.Verdict `wire:"always"`
}

// Food is what may be eaten of a lot, and how many days more it keeps: 0 is today for the last time.
type Food struct {
	Batch   string
	Product string // empty for fresh fish
	Count   int
	Until   Day
	Days    int `wire:"always"`
}

// NoFood is what is left of a lot and may not be eaten, and why.
type NoFood struct {
	Batch string
	Count int
	Why   Why
}

// PastWeek is one week of a ledger that is over, to hold against the PlannedWeek of the same number.
type PastWeek struct {
	Week  int        `wire:"always"` // from the start of the ledger
	Kept  int        `wire:"always"`
	Eaten units.Mass `wire:"always"`
	End   Stock      // on its last day
}

// Why is the reason for which something that is left is no food. The zero Why is not stated.
type Why uint8

// The reasons. The first that holds is given.
const (
	NotProven   Why = iota + 1 // the audit of its load is no pass, or its entries contradict
	DidNotSeal                 // or was found unsealed later
	NotChecked                 // the seal
	PastKeeping                // its keeping time is over
)

var reasons = word.List[Why]{What: "reason", Words: []string{
	"not proven", "did not seal", "seal not checked", "past its keeping time",
}}

// ParseWhy reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseWhy(s string) (Why, error) { return reasons.Parse(s) }

// String is the reason in words: "did not seal".
func (w Why) String() string { return reasons.Of(w) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (w Why) MarshalText() ([]byte, error) { return reasons.Marshal(w) }

// UnmarshalText is ParseWhy, and the empty text is one that is not set.
func (w *Why) UnmarshalText(text []byte) error { return reasons.Unmarshal(text, w) }
