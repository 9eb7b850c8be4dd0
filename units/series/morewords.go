package series

import "example.org/lakelarder/internal/word"

// Part is what a column says of the time of its row.
type Part uint8

// The parts. A clock without a date is a record within one day. Epoch counts from 1970 in UTC. ElapsedClock is a
// count written h:mm:ss or h:mm, beyond 24 h too. HalfDay is AM or PM. DayCount numbers the days of a record,
// whose clock stands beside it.
const (
	DateAndClock Part = 1 + iota
	Date
	Clock
	HalfDay
	DayCount
	Year
	Month
	Day
	Hour
	Minute
	Second
	Epoch
	Elapsed
	ElapsedClock
)

var parts = word.List[Part]{What: "part of the time", Words: []string{"date and clock", "date",
	"clock", "AM or PM",
	"day count", "year", "month", "day", "hour", "minute", "second", "epoch", "elapsed", "elapsed h:mm:ss"}}

// String returns the part's name.
func (p Part) String() string { return parts.Of(p) }

// ParsePart reads a name of String; anything else is a units.UnknownError that lists them.
func ParsePart(s string) (Part, error) {
	return parts.Parse(s)
}

// MarshalText writes the name, nothing for one that is not set.
func (p Part) MarshalText() ([]byte, error) { return parts.Marshal(p) }

// UnmarshalText reads what MarshalText writes.
func (p *Part) UnmarshalText(text []byte) error { return parts.Unmarshal(text, p) }

// Repeats is what becomes of a row that is the row before it, letter by letter.
type Repeats uint8

// The two ways. Not set refuses, as RefuseRepeats. A row that repeats the time with another value is refused in both.
const (
	RefuseRepeats Repeats = 1 + iota
	DropRepeats
)

var repeats = word.List[Repeats]{What: "treatment of repeated rows", Words: []string{"refuse", "drop"}}

// String returns the way's name.
func (r Repeats) String() string { return repeats.Of(r) }

// ParseRepeats reads a name of String; anything else is a units.UnknownError that lists them.
func ParseRepeats(s string) (Repeats, error) {
	return repeats.Parse(s)
}

// MarshalText writes the name, nothing for one that is not set.
func (r Repeats) MarshalText() ([]byte, error) { return repeats.Marshal(r) }

// UnmarshalText reads what MarshalText writes.
func (r *Repeats) UnmarshalText(text []byte) error { return repeats.Unmarshal(text, r) }

// Why is why a row holds no reading.
type Why uint8

// The reasons: the cell is empty or says that there is none; the number is what a broken probe says; the row is
// a remark and no row of the table; the row is the one before once more, and the Format drops it.
const (
	Missing Why = 1 + iota
	Fault
	Remark
	Repeat
)

var whys = word.List[Why]{What: "reason", Words: []string{"missing", "fault code", "remark", "repeated row"}}

// String returns the reason in words.
func (w Why) String() string { return whys.Of(w) }

// ParseWhy reads a reason of String; anything else is a units.UnknownError that lists them.
func ParseWhy(s string) (Why, error) {
	return whys.Parse(s)
}

// MarshalText writes the reason, nothing for one that is not set.
func (w Why) MarshalText() ([]byte, error) { return whys.Marshal(w) }

// UnmarshalText reads what MarshalText writes.
func (w *Why) UnmarshalText(text []byte) error { return whys.Unmarshal(text, w) }

// Ask is what a Question asks for. Its answer fills one field of the Format.
type Ask uint8

// What may be asked: Value, Unit, Order, Time, the Unit of the time column, Only, Repeats, Zone, Missing and Decimal.
const (
	AskColumn Ask = 1 + iota
	AskUnit
	AskDateOrder
	AskTime
	AskTimeUnit
	AskSensor
	AskRepeats
	AskZone
	AskMissing
	AskDecimal
)

var asks = word.List[Ask]{What: "question", Words: []string{"column", "unit", "date order",
	"time column", "unit of time",
	"sensor", "repeated rows", "zone", "no reading", "decimal mark"}}

// String returns what is asked for.
func (a Ask) String() string { return asks.Of(a) }

// ParseAsk reads a name of String; anything else is a units.UnknownError that lists them.
func ParseAsk(s string) (Ask, error) {
	return asks.Parse(s)
}

// MarshalText writes what is asked for, nothing for one that is not set.
func (a Ask) MarshalText() ([]byte, error) { return asks.Marshal(a) }

// UnmarshalText reads what MarshalText writes.
func (a *Ask) UnmarshalText(text []byte) error { return asks.Unmarshal(text, a) }
