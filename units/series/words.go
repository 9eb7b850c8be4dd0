package series

import "example.org/lakelarder/internal/word"

// Encoding is how the bytes of a file spell its characters.
type Encoding uint8

// The encodings that are read. Not set is UTF-8. A byte order mark, where there is one, must agree.
const (
	UTF8 Encoding = 1 + iota
	UTF16LittleEndian
	UTF16BigEndian
	Latin1
)

var encodings = word.List[Encoding]{What: "encoding", Words: []string{"UTF-8", "UTF-16 little-endian",
	"UTF-16 big-endian",
	"Latin-1"}}

// String returns the encoding's name.
func (e Encoding) String() string { return encodings.Of(e) }

// ParseEncoding reads a name of String; anything else is a units.UnknownError that lists them.
func ParseEncoding(s string) (Encoding, error) {
	return encodings.Parse(s)
}

// MarshalText writes the name, nothing for one that is not set.
func (e Encoding) MarshalText() ([]byte, error) { return encodings.Marshal(e) }

// UnmarshalText reads what MarshalText writes.
func (e *Encoding) UnmarshalText(text []byte) error { return encodings.Unmarshal(text, e) }

// Separator is what parts the cells of a row.
type Separator uint8

// The separators that are read. Blanks are runs of blanks and tabs, each cell rid of a comma or semicolon at its end.
const (
	Commas Separator = 1 + iota
	Semicolons
	Tabs
	Bars
	Blanks
)

var separators = word.List[Separator]{What: "separator", Words: []string{"commas", "semicolons", "tabs",
	"bars", "blanks"}}

// String returns the separator's name.
func (s Separator) String() string { return separators.Of(s) }

// ParseSeparator reads a name of String; anything else is a units.UnknownError that lists them.
func ParseSeparator(s string) (Separator, error) {
	return separators.Parse(s)
}

// MarshalText writes the name, nothing for one that is not set.
func (s Separator) MarshalText() ([]byte, error) { return separators.Marshal(s) }

// UnmarshalText reads what MarshalText writes.
func (s *Separator) UnmarshalText(text []byte) error { return separators.Unmarshal(text, s) }

// mark is the separator as a byte.
func (s Separator) mark() byte { return [...]byte{',', ',', ';', '\t', '|', ' '}[s] }

// Decimal is the decimal mark of the numbers. Thousands are never grouped.
type Decimal uint8

// The two decimal marks.
const (
	DecimalPoint Decimal = 1 + iota
	DecimalComma
)

var decimals = word.List[Decimal]{What: "decimal mark", Words: []string{"point", "comma"}}

// String returns the mark's name.
func (d Decimal) String() string { return decimals.Of(d) }

// ParseDecimal reads a name of String; anything else is a units.UnknownError that lists them.
func ParseDecimal(s string) (Decimal, error) {
	return decimals.Parse(s)
}

// MarshalText writes the name, nothing for one that is not set.
func (d Decimal) MarshalText() ([]byte, error) { return decimals.Marshal(d) }

// UnmarshalText reads what MarshalText writes.
func (d *Decimal) UnmarshalText(text []byte) error { return decimals.Unmarshal(text, d) }

// DateOrder is the order of day, month and year in dates written with numbers.
type DateOrder uint8

// The orders. Not set takes only dates that say it themselves: a year of four digits first, a month by its name.
// OneDate stands where all rows bear one date whose order nobody knows: the time of day is kept, the date is
// not, and another date is refused.
const (
	YearFirst DateOrder = 1 + iota
	DayFirst
	MonthFirst
	OneDate
)

var dateOrders = word.List[DateOrder]{What: "date order", Words: []string{"year first", "day first",
	"month first", "one date"}}

// String returns the order's name.
func (o DateOrder) String() string { return dateOrders.Of(o) }

// ParseDateOrder reads a name of String; anything else is a units.UnknownError that lists them.
func ParseDateOrder(s string) (DateOrder, error) {
	return dateOrders.Parse(s)
}

// MarshalText writes the name, nothing for one that is not set.
func (o DateOrder) MarshalText() ([]byte, error) { return dateOrders.Marshal(o) }

// UnmarshalText reads what MarshalText writes.
func (o *DateOrder) UnmarshalText(text []byte) error { return dateOrders.Unmarshal(text, o) }
