package series

import (
	"bufio"
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strings"
	"unicode/utf8"
)

// rows hands out the rows of a file and knows the line each began on.
type rows struct {
	csv   *csv.Reader
	line  int
	width int // cells of the header
}

func newRows(r io.Reader) (*rows, error) {
	buffered := bufio.NewReader(r)
	start, _ := buffered.Peek(3) // a fault of the reader comes back with the first row
	switch {
	case bytes.HasPrefix(start, []byte("\xef\xbb\xbf")): // the byte order mark of UTF-8
		if _, err := buffered.Discard(3); err != nil {
			return nil, err
		}
	case bytes.HasPrefix(start, []byte("\xff\xfe")), bytes.HasPrefix(start, []byte("\xfe\xff")):
		return nil, LineError{Line: 1, Err: wrap(ErrHeader, "the file is UTF-16; save it as UTF-8")}
	}
	reader := csv.NewReader(buffered)
	reader.Comment = '#'
	reader.FieldsPerRecord = -1 // next counts them, with an error of its own
	reader.ReuseRecord = true
	reader.TrimLeadingSpace = true
	return &rows{csv: reader}, nil
}

// header reads the first row as headings.
func (f *rows) header() (header, error) {
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
		return header{}, LineError{Line: f.line, Text: all, Err: wrap(ErrHeader, "the file is not UTF-8; save it as that")}
	case len(cells) == 1 && strings.ContainsAny(all, ";\t"):
		return header{}, LineError{Line: f.line, Text: all, Err: wrap(ErrHeader, "cells are parted by commas, not semicolons or tabs")}
	}
	h := header{line: f.line}
	for i, cell := range cells {
		h.headings = append(h.headings, newHeading(i, cell))
	}
	return h, nil
}

// next returns the next row, which is good until the row after it, or io.EOF.
func (f *rows) next() ([]string, error) {
	cells, err := f.csv.Read()
	if err == io.EOF {
		return nil, err
	}
	if err != nil {
		var fault *csv.ParseError
		if errors.As(err, &fault) {
			return nil, LineError{Line: fault.StartLine, Err: fault.Err}
		}
		return nil, LineError{Line: f.line + 1, Err: err}
	}
	f.line, _ = f.csv.FieldPos(0)
	if f.width > 0 && len(cells) != f.width {
		hint := fmt.Sprintf("%d where the header has %d", len(cells), f.width)
		if len(cells) > f.width {
			hint += "; a decimal mark is a point, not a comma"
		}
		return nil, LineError{Line: f.line, Text: strings.Join(cells, ","), Err: wrap(ErrRagged, hint)}
	}
	return cells, nil
}

// fault is a LineError at a cell of the row read last.
func (f *rows) fault(h heading, cells []string, err error) error {
	return LineError{Line: f.line, Column: h.name, Text: strings.TrimSpace(cells[h.index]), Err: err}
}

func wrap(err error, hint string) error { return fmt.Errorf("%w: %s", err, hint) }
