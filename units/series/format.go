package series

import "fmt"

// Heading is a column: its number counted from 1, its heading, or both, which must then agree. The heading is
// the whole text of the file or that text without the unit.
type Heading struct {
	Number int
	Name   string
}

// String names the column in words.
func (h Heading) String() string {
	switch {
	case h.Number == 0:
		return fmt.Sprintf("column %q", short(h.Name))
	case h.Name == "":
		return fmt.Sprintf("column %d", h.Number)
	}
	return fmt.Sprintf("column %d %q", h.Number, short(h.Name))
}

func (h Heading) isZero() bool { return h == Heading{} }

// TimeColumn is a column that says something of the time. Unit is ms, s, min, h or d for an elapsed column, ms
// or s or us for an epoch, and empty for the others.
type TimeColumn struct {
	Column Heading
	Part   Part
	Unit   string
}

// Filter keeps the rows that bear a text in a column: one sensor of a file that lists several below each other.
type Filter struct {
	Column Heading
	Text   string
}

// Format is how a file is to be read: plain data, as text or JSON too. Separator, Decimal, Time, Value and Unit
// must be stated; the rest says what the file has beyond them. Where Sniff leaves a question open, Open holds
// it, and ReadCSV refuses the Format.
type Format struct {
	Encoding  Encoding
	Separator Separator
	Decimal   Decimal
	Preamble  int    // lines before the header, whatever they hold
	Header    int    // lines of headings, the names in the first; 0 for none
	Cells     int    // cells of a row without the spare empty ones at its end; 0 for as many as the header or the first row
	Comment   string // what a line of remarks begins with; empty for none
	End       string // what the line begins with from which on the file holds remarks; empty for none

	Time  []TimeColumn // one column, or several that make the time together; an elapsed one may stand beside a clock
	Order DateOrder    // of dates in numbers
	Zone  string       // of a clock without offset: a name of the time zone database, "+02:00", or empty for a clock that runs evenly

	Value       Heading  // the wanted column
	Unit        string   // of its numbers: "°C", "psi"; "0.001 °C" where they count thousandths
	UnitColumn  Heading  // a column that repeats the unit in every row; not set for none
	UnitInCells bool     // the unit stands after each number
	Only        Filter   // not set for all rows
	Missing     []string // what stands for no reading beside the empty cell: texts in any case, or numbers such as -9999
	Kept        []string // numbers that look like codes for no reading and are readings, for Sniff not to ask again
	Repeats     Repeats

	Open []Ask // what Sniff asked and nobody answered: the reader takes only a Format without
}

// Check returns a FormatError for the first field that is not stated, or whose value cannot be; nil when the
// reader takes the Format.
func (f Format) Check() error {
	if len(f.Open) > 0 {
		return FormatError{Field: "Open", Wants: "an answer to the question of the " + f.Open[0].String()}
	}
	for _, c := range []struct {
		ok           bool
		field, wants string
	}{
		{f.Encoding <= Latin1, "Encoding", "one of the encodings"},
		{separators.Known(f.Separator), "Separator", "commas, semicolons, tabs, bars or blanks"},
		{decimals.Known(f.Decimal), "Decimal", "point or comma"},
		{f.Preamble >= 0 && f.Preamble <= 10_000, "Preamble", "0 to 10000 lines"},
		{f.Header >= 0 && f.Header <= 10, "Header", "0 to 10 lines"},
		{f.Cells >= 0 && f.Cells <= mostCells, "Cells", fmt.Sprintf("0 to %d", mostCells)},
		{len(f.Time) > 0, "Time", "the column of the time"},
		{!f.Value.isZero(), "Value", "the wanted column"},
		{f.Unit != "", "Unit", "the unit of the numbers"},
		{f.Order <= OneDate, "Order", "one of the orders"},
		{f.Repeats <= DropRepeats, "Repeats", "refuse or drop"},
		{len(f.Missing) <= 100, "Missing", "at most 100 texts"},
		{f.Only.Column.isZero() == (f.Only.Text == ""), "Only", "a column and the text that it must hold"},
	} {
		if !c.ok {
			return FormatError{Field: c.field, Wants: c.wants}
		}
	}
	return f.checkColumns()
}

func (f Format) checkColumns() error {
	all := []Heading{f.Value, f.UnitColumn, f.Only.Column}
	for _, t := range f.Time {
		if !parts.Known(t.Part) {
			return FormatError{Field: "Time", Wants: "what each column says of the time"}
		}
		if t.Column.isZero() {
			return FormatError{Field: "Time", Wants: "the number or heading of each column"}
		}
		if (t.Part == Elapsed || t.Part == Epoch) && timeUnit(t.Unit) == 0 {
			return FormatError{Field: "Time", Wants: "the unit of the count: ms, s, min, h or d"}
		}
		all = append(all, t.Column)
	}
	for _, h := range all {
		if h.Number < 0 || h.Number > mostCells {
			return FormatError{Field: "Number", Wants: fmt.Sprintf("a column from 1 to %d", mostCells)}
		}
		if f.Header == 0 && h.Number == 0 && !h.isZero() {
			return FormatError{Field: "Number", Wants: "the number of each column, for the file has no header"}
		}
	}
	return checkParts(f.Time)
}

// checkParts refuses times that are said twice or in part.
func checkParts(columns []TimeColumn) error {
	var n [ElapsedClock + 1]int
	for _, c := range columns {
		n[c.Part]++
	}
	counts := n[Elapsed] + n[ElapsedClock]
	dates := n[DateAndClock] + n[Date] + n[Epoch] + n[Year] + n[DayCount]
	clocks := n[DateAndClock] + n[Clock] + n[Epoch] + n[Hour]
	whole := n[Year] == n[Month] && n[Year] == n[Day] && (n[Hour] == n[Minute] || n[Hour] == 1) &&
		n[Second] <= n[Minute] && n[Year] <= 1 && n[Hour] <= 1
	switch {
	case counts > 1 || dates > 1 || clocks > 1 || n[HalfDay] > 1:
		return FormatError{Field: "Time", Wants: "each part of the time once"}
	case !whole:
		return FormatError{Field: "Time", Wants: "year, month and day together, and the minute with its hour"}
	case n[DayCount] == 1 && clocks == 0, n[HalfDay] == 1 && n[Clock]+n[DateAndClock] == 0:
		return FormatError{Field: "Time", Wants: "the clock beside the day count, or beside AM or PM"}
	case n[Hour] == 1 && n[Year]+n[Date] == 0:
		return FormatError{Field: "Time", Wants: "the date beside the hour"}
	case counts+dates+clocks == 0:
		return FormatError{Field: "Time", Wants: "a date, a clock or a count"}
	}
	return nil
}
