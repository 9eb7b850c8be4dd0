package season

import "example.org/lakelarder/internal/word"

// Event is what an Entry of a ledger says happened. The zero Event is not stated.
type Event uint8

// The events, in the order in which those of one day are taken.
const (
	Caught       Event = iota + 1 // fish landed, those let go included: Count, of a catch
	Kept                          // fish kept, with their round mass: begins a catch
	Canned                        // jars of one load, with the verdict of its audit: begins a batch
	Reprocessed                   // jars of another load, made of unsealed ones: begins a batch
	Smoked                        // packages: begins a batch
	Frozen                        // packages: begins a batch
	Refrigerated                  // jars opened, or jars that did not seal, put in the refrigerator: begins a batch
	Failed                        // jars that did not seal, or were found unsealed later
	Sealed                        // jars whose seal was checked and held
	Eaten
	GivenAway
	ThrownOut
)

var events = word.List[Event]{What: "event", Words: []string{
	"caught", "kept", "canned", "reprocessed", "smoked", "frozen", "refrigerated", "failed", "sealed", "eaten",
	"given away", "thrown out",
}}

// ParseEvent reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseEvent(s string) (Event, error) { return events.Parse(s) }

// String is the event in words: "given away".
func (e Event) String() string { return events.Of(e) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (e Event) MarshalText() ([]byte, error) { return events.Marshal(e) }

// UnmarshalText is ParseEvent, and the empty text is one that is not set.
func (e *Event) UnmarshalText(text []byte) error { return events.Unmarshal(text, e) }

// makes reports whether the event begins a batch of another.
func (e Event) makes() bool { return Canned <= e && e <= Refrigerated }

// heats reports whether the event is a load of the canner.
func (e Event) heats() bool { return e == Canned || e == Reprocessed }

// leaves reports whether what it concerns is gone after it.
func (e Event) leaves() bool { return e >= Eaten }

// Counting is until when a jar that did not seal counts as fish held, as the local rule says or as its reader takes
// it. The zero Counting is not stated.
type Counting uint8

// The two ways to count. UntilThrownOut is the stricter.
const (
	UntilThrownOut Counting = iota + 1
	UntilFailed
)

var countings = word.List[Counting]{
	What: "counting of unsealed jars", Words: []string{"until thrown out", "until failed"},
}

// ParseCounting reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseCounting(s string) (Counting, error) { return countings.Parse(s) }

// String is the counting in words: "until thrown out".
func (c Counting) String() string { return countings.Of(c) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (c Counting) MarshalText() ([]byte, error) { return countings.Marshal(c) }

// UnmarshalText is ParseCounting, and the empty text is one that is not set.
func (c *Counting) UnmarshalText(text []byte) error { return countings.Unmarshal(text, c) }
