package series

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"
)

// plainFile hands out the rows of a plain record and knows the line each began on.
type plainFile struct {
	lines *lines
	line  int
	width int // cells of the header

	said   string                  // a remark before the columns were chosen that states a unit of any quantity
	saidAt int                     // its line
	other  func(text string) error // what is wrong with a remark after that
}

// header reads the first row as headings.
func (f *plainFile) header() (header, error) {
	cells, err := f.next()
	if err == io.EOF {
		return header{}, LineError{Line: 1, Err: wrap(ErrEmpty, "the file is empty")}
	}
	if err != nil {
		return header{}, err
	}
	f.width = len(cells)
	all := strings.Join(cells, ",")
	switch {
	case !utf8.ValidString(all):
		return header{}, LineError{Line: f.line, Text: short(all), Err: wrap(ErrHeader,
			"the file is not UTF-8; save it as that")}
	case len(cells) == 1 && strings.ContainsAny(all, ";\t"):
		return header{}, LineError{Line: f.line, Text: short(all), Err: wrap(ErrHeader,
			"cells are parted by commas, not semicolons or tabs")}
	}
	h := header{line: f.line}
	for i, cell := range cells {
		h.headings = append(h.headings, newHeading(i, cell))
	}
	return h, nil
}

// next returns the next row, which is good until the row after it, or io.EOF.
func (f *plainFile) next() ([]string, error) {
	for {
		raw, err := f.lines.line()
		if err != nil {
			return nil, err
		}
		if len(raw) > 0 && raw[0] == '#' {
			if err := f.remark(string(raw)); err != nil {
				return nil, err
			}
			continue
		}
		if len(raw) == 0 {
			continue
		}
		f.line = f.lines.n
		cells, err := f.lines.split(string(raw))
		if err != nil {
			return nil, plainFault(err)
		}
		if f.width > 0 && len(cells) != f.width {
			hint := fmt.Sprintf("%d where the header has %d", len(cells), f.width)
			if len(cells) > f.width {
				hint += "; a decimal mark is a point, not a comma"
			}
			return nil, LineError{Line: f.line, Text: short(strings.Join(cells, ",")), Err: wrap(ErrRagged, hint)}
		}
		return cells, nil
	}
}

// plainFault leaves out the line of a fault of quotation, which may be long.
func plainFault(err error) error {
	if fault, ok := err.(LineError); ok {
		fault.Text = ""
		return fault
	}
	return err
}

// fault is a LineError at a cell of the row read last.
func (f *plainFile) fault(h heading, cells []string, err error) error {
	return LineError{Line: f.line, Column: short(h.name), Text: strings.Clone(short(strings.TrimSpace(cells[h.index]))), Err: err}
}
