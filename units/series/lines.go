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

// What a file may ask of memory and time. A record of a reading a second fills the lines in eight weeks.
const (
	longestLine  = 64 << 10
	mostLines    = 5_000_000
	mostCells    = 1024
	mostNoValues = 1_000_000
	longestQuote = 100 // lines that one quoted cell may take
	longestEcho  = 60  // characters of the file in an error
)

// lines hands out the lines of a text and splits them into cells.
type lines struct {
	in     *bufio.Reader
	n      int // the line read last, from 1
	sep    Separator
	quoted *csv.Reader
	feed   feed
	cells  []string
}

func newLines(r io.Reader, sep Separator) *lines {
	return &lines{in: bufio.NewReaderSize(r, longestLine), sep: sep}
}

// line returns the next line without its end, good until the next call, or io.EOF.
func (l *lines) line() ([]byte, error) {
	text, err := l.in.ReadSlice('\n')
	switch {
	case err == bufio.ErrBufferFull:
		return nil, LineError{Line: l.n + 1, Text: short(string(text[:longestEcho])), Err: ErrTooLong}
	case err == io.EOF && len(text) == 0:
		return nil, err
	case err != nil && err != io.EOF:
		return nil, LineError{Line: l.n + 1, Err: err}
	}
	if l.n++; l.n > mostLines {
		return nil, LineError{Line: l.n, Err: wrap(ErrTooLong, fmt.Sprintf("a record of more than %d lines", mostLines))}
	}
	if n := len(text); n > 0 && text[n-1] == '\n' {
		text = text[:n-1]
	}
	if n := len(text); n > 0 && text[n-1] == '\r' {
		text = text[:n-1]
	}
	return text, nil
}

// skip passes over n lines.
func (l *lines) skip(n int) error {
	for ; n > 0; n-- {
		if _, err := l.line(); err != nil {
			return err
		}
	}
	return nil
}

// split parts a line at the separators, as encoding/csv does; a line with a quotation mark is given to it, together
// with those that a quoted cell runs over. The cells are good until the next call.
func (l *lines) split(text string) ([]string, error) {
	if strings.IndexByte(text, '"') >= 0 {
		return l.splitQuoted(text)
	}
	l.cells = l.cells[:0]
	if l.sep == Blanks {
		for _, cell := range strings.Fields(text) {
			l.cells = append(l.cells, strings.TrimRight(cell, ",;"))
		}
		return l.counted(text)
	}
	mark := l.sep.mark()
	for {
		i := strings.IndexByte(text, mark)
		if i < 0 {
			break
		}
		l.cells = append(l.cells, trim(text[:i]))
		text = text[i+1:]
		if len(l.cells) > mostCells {
			break
		}
	}
	l.cells = append(l.cells, trim(text))
	return l.counted(text)
}

// counted bounds the cells of a row.
func (l *lines) counted(text string) ([]string, error) {
	if len(l.cells) > mostCells {
		return nil, LineError{Line: l.n, Text: short(text), Err: wrap(ErrTooLong,
			fmt.Sprintf("more than %d cells", mostCells))}
	}
	return l.cells, nil
}

// feed gives encoding/csv one row at a time.
type feed struct{ text string }

func (f *feed) Read(p []byte) (int, error) {
	if f.text == "" {
		return 0, io.EOF
	}
	n := copy(p, f.text)
	f.text = f.text[n:]
	return n, nil
}

// splitQuoted takes the lines that a quoted cell runs over, until the quotation marks are even, and parses them once.
func (l *lines) splitQuoted(text string) ([]string, error) {
	start, marks := l.n, strings.Count(text, `"`)
	for taken := 1; marks%2 == 1 && taken < longestQuote && len(text) < longestLine; taken++ {
		more, err := l.line()
		if err == io.EOF {
			break
		}
		if err != nil {
			return nil, err
		}
		marks += bytes.Count(more, []byte{'"'})
		text += "\n" + string(more)
	}
	cells, err := l.parse(text)
	if err != nil {
		err = LineError{Line: start, Text: short(text), Err: err}
	}
	return cells, err
}

func (l *lines) parse(text string) ([]string, error) {
	if l.quoted == nil {
		l.quoted = csv.NewReader(&l.feed)
		l.quoted.Comma = rune(l.sep.mark())
		l.quoted.FieldsPerRecord = -1
		l.quoted.ReuseRecord = true
		l.quoted.TrimLeadingSpace = l.sep != Tabs
	}
	l.feed.text = text + "\n"
	cells, err := l.quoted.Read()
	if err != nil {
		l.quoted = nil // what is left of the row must not reach the next one
		var fault *csv.ParseError
		if errors.As(err, &fault) {
			return nil, fault.Err
		}
		return nil, err
	}
	l.cells = l.cells[:0]
	for _, cell := range cells {
		if cell = trim(cell); cell != "" || l.sep != Blanks {
			l.cells = append(l.cells, cell)
		}
	}
	return l.counted(text)
}

// trim is strings.TrimSpace with a short way for what needs none.
func trim(s string) string {
	if s == "" || s[0] > ' ' && s[0] < utf8.RuneSelf && s[len(s)-1] > ' ' && s[len(s)-1] < utf8.RuneSelf {
		return s
	}
	return strings.TrimSpace(s)
}

// short cuts what an error repeats of a file.
func short(s string) string {
	if len(s) <= longestEcho {
		return s
	}
	cut := longestEcho - len("…")
	for cut > 0 && !utf8.RuneStart(s[cut]) {
		cut--
	}
	return s[:cut] + "…"
}

// wrap adds a hint to an error of the package.
func wrap(err error, hint string) error { return fmt.Errorf("%w: %s", err, hint) }
