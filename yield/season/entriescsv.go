package season

import (
	"bytes"
	"encoding/csv"
	"errors"
	"strconv"
	"unicode/utf8"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// column is one column of a ledger as CSV, and how its cell is read into an entry.
type column struct {
	name     string
	required bool
	read     func(e *Entry, cell string) error
}

// columns are all that a ledger has.
var columns = [...]column{
	{"day", true, func(e *Entry, s string) (err error) { e.Day, err = ParseDay(s); return err }},
	{"event", true, func(e *Entry, s string) (err error) { e.Event, err = ParseEvent(s); return err }},
	{"batch", true, func(e *Entry, s string) error { e.Batch = s; return nil }},
	{"from", false, func(e *Entry, s string) error { e.From = s; return nil }},
	{"taken", false, func(e *Entry, s string) (err error) { e.Taken, err = parseCount(s); return err }},
	{"count", true, func(e *Entry, s string) (err error) { e.Count, err = parseCount(s); return err }},
	{"product", false, func(e *Entry, s string) error { e.Product = s; return nil }},
	{"round", false, func(e *Entry, s string) (err error) { e.Round, err = units.ParseMass(s); return err }},
	{"audit", false, func(e *Entry, s string) (err error) {
		e.Audit.Given = true
		e.Audit.Value, err = verdict.Parse(s)
		return err
	}},
	{"after", false, func(e *Entry, s string) (err error) {
		e.After.Given = true
		e.After.Value, err = units.ParseLasting(s)
		return err
	}},
}

// ParseEntries reads the entries of a ledger from CSV: a header, then one line an entry, in UTF-8 and separated by
// commas. The columns are day, event, batch and count, and where they are used from, taken, product, round, audit and
// after, in any order; a cell is as in JSON, empty where it is not stated. Anything else, such as another column, a
// line with fewer cells, no line, or an entry that does not state what its event needs, is a units.FieldError with the
// column, the line and what was wrong.
func ParseEntries(text []byte) ([]Entry, error) {
	if at := invalid(text); at > 0 {
		return nil, units.FieldError{Line: at, Column: 1, Err: unread(text, at, "expected UTF-8 without a byte order mark")}
	}
	reader := csv.NewReader(bytes.NewReader(text))
	reader.ReuseRecord = true
	header, err := reader.Read()
	if err != nil {
		return nil, csvError(text, err)
	}
	known, err := readHeader(header)
	if err != nil {
		return nil, err
	}
	var all []Entry
	for {
		cells, err := reader.Read()
		if err != nil {
			if len(cells) == 0 && !isSyntax(err) {
				break
			}
			return nil, csvError(text, err)
		}
		if len(all) == mostEntries {
			line, _ := reader.FieldPos(0)
			return nil, units.FieldError{Line: line, Column: 1, Err: within("entries", mostEntries+1, 1, mostEntries)}
		}
		e, err := readEntry(reader, known, cells)
		if err != nil {
			return nil, err
		}
		all = append(all, e)
	}
	if len(all) == 0 {
		return nil, units.FieldError{Line: 1, Column: 1, Err: units.UnsetError{What: "entry below the header"}}
	}
	return all, nil
}

// isSyntax reports whether reading ended at a fault and not at the end of the text.
func isSyntax(err error) bool {
	var syntax *csv.ParseError
	return errors.As(err, &syntax)
}

func csvError(text []byte, err error) error {
	var syntax *csv.ParseError
	if !errors.As(err, &syntax) {
		return units.FieldError{Line: 1, Column: 1, Err: units.UnsetError{What: "header"}}
	}
	reason := unread(text, syntax.Line, syntax.Err.Error())
	return units.FieldError{Line: syntax.Line, Column: max(1, syntax.Column), Err: reason}
}

// unread is the error of a line that is none of a ledger.
func unread(text []byte, line int, reason string) error {
	lines := bytes.SplitN(text, []byte("\n"), line+1)
	return units.ParseError{Quantity: "line of a ledger", Text: string(lines[min(line, len(lines))-1]), Reason: reason}
}

// invalid is the first line that is not UTF-8, or that begins with a byte order mark; 0 where there is none.
func invalid(text []byte) int {
	if bytes.HasPrefix(text, []byte("\ufeff")) {
		return 1
	}
	if utf8.Valid(text) {
		return 0
	}
	for i, line := range bytes.Split(text, []byte("\n")) {
		if !utf8.Valid(line) {
			return i + 1
		}
	}
	return 1
}

// readHeader finds which column of the file is which of the ledger.
func readHeader(header []string) ([]column, error) {
	known := make([]column, len(header))
	var seen [len(columns)]bool
	for i, name := range header {
		at := -1
		for c := range columns {
			if columns[c].name == name {
				at = c
			}
		}
		switch {
		case at < 0:
			return nil, inHeader(units.UnknownError{What: "column", Got: name, Known: columnNames()})
		case seen[at]:
			return nil, inHeader(units.RangeError{What: "column", Got: name + " a second time", High: "one of a name"})
		}
		known[i], seen[at] = columns[at], true
	}
	for c, ok := range seen {
		if columns[c].required && !ok {
			return nil, inHeader(units.UnsetError{What: "column " + columns[c].name})
		}
	}
	return known, nil
}

// inHeader is a fault of the first line.
func inHeader(err error) error {
	return units.FieldError{Field: "header", Line: 1, Column: 1, Err: err}
}

func columnNames() []string {
	all := make([]string, len(columns))
	for i, c := range columns {
		all[i] = c.name
	}
	return all
}

func readEntry(reader *csv.Reader, known []column, cells []string) (Entry, error) {
	var e Entry
	for i, cell := range cells {
		err := error(nil)
		if cell != "" {
			err = known[i].read(&e, cell)
		} else if known[i].required {
			err = units.UnsetError{What: known[i].name}
		}
		if err != nil {
			line, at := reader.FieldPos(i)
			return Entry{}, units.FieldError{Field: known[i].name, Line: line, Column: at, Err: err}
		}
	}
	if err := e.check(); err != nil {
		line, _ := reader.FieldPos(0)
		return Entry{}, units.FieldError{Line: line, Column: 1, Err: err}
	}
	return e, nil
}

// parseCount reads a whole number in plain figures, without a sign and without a leading zero.
func parseCount(s string) (int, error) {
	n, err := strconv.Atoi(s)
	if err != nil || strconv.Itoa(n) != s {
		return 0, units.ParseError{Quantity: "count", Text: s, Reason: "expected a whole number such as 12"}
	}
	return n, nil
}
