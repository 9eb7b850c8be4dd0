package series

import (
	"bytes"
	"io"
	"strings"
	"unicode/utf8"
)

// encodingOf tells an encoding without its byte order mark.
func encodingOf(head []byte) Encoding {
	var nought [2]int
	for i := 0; i < len(head) && i < 4096; i++ {
		if head[i] == 0 {
			nought[i%2]++
		}
	}
	seen := min(len(head), 4096)
	switch {
	case nought[1] > seen/4 && nought[0] == 0:
		return UTF16LittleEndian
	case nought[0] > seen/4 && nought[1] == 0:
		return UTF16BigEndian
	case utf8.Valid(head):
		return UTF8
	}
	return Latin1
}

func decodedText(head []byte, e Encoding) (string, error) {
	r, err := decoded(bytes.NewReader(head), e)
	if err != nil {
		return "", err
	}
	text, err := io.ReadAll(r)
	return string(text), err
}

// sheet is the text split at one separator.
type sheet struct {
	sep   Separator
	rows  []srow  // every line that is not blank
	width int     // cells of a data row, spare ones at the end left out
	first int     // index in rows of the first data row
	data  []int   // indexes of the data rows
	kinds []class // what each column mostly holds
	score int
}

type srow struct {
	line  int // from 1
	text  string
	cells []string // without the empty ones at the end
	raw   int      // cells with those
}

// class is what a cell looks like.
type class uint8

const (
	classEmpty class = iota
	classText
	classNumber
	classComma // a number with a decimal comma
	classUnit  // a number with a unit behind it
	classDate
	classClock
	classBoth // date and clock
	classSpan // h:mm:ss beyond a day
	classNone // a known text for no reading
)

func (c class) isNumber() bool { return c == classNumber || c == classComma || c == classUnit }

func (c class) isTime() bool { return c >= classDate && c <= classSpan }

func classify(cell string) class {
	switch {
	case cell == "":
		return classEmpty
	case isNumber(cell):
		if n := len(cell); (n == 8 || n == 12 || n == 14) && leadingDigits(cell) == n {
			if s, ok := readStamp(cell, 0); ok && s.year > 1989 && s.year < 2100 {
				return stampClass(s)
			}
		}
		return classNumber
	case isNumber(strings.Replace(cell, ",", ".", 1)) && !strings.Contains(cell, "."):
		return classComma
	case saysNone(cell):
		return classNone
	}
	if _, ok := expanded(strings.Replace(cell, ",", ".", 1)); ok {
		return classNumber
	}
	for _, order := range []DateOrder{DayFirst, MonthFirst, YearFirst} {
		if s, ok := readStamp(cell, order); ok {
			return stampClass(s)
		}
	}
	if _, ok := readSpan(cell); ok {
		return classSpan
	}
	if i := strings.LastIndexAny(cell, "0123456789") + 1; i > 0 && isNumber(strings.Replace(cell[:i], ",", ".", 1)) {
		if k, _ := kindOfWord(cell[i:]); k != unknown {
			return classUnit
		}
	}
	return classText
}

func stampClass(s stamp) class {
	switch s.shape & (hasDate | hasClock) {
	case hasDate:
		return classDate
	case hasClock:
		return classClock
	}
	return classBoth
}

// saysNone knows the texts that stand for no reading wherever a logger or a spreadsheet writes them.
func saysNone(cell string) bool {
	switch strings.ToLower(cell) {
	case "na", "n/a", "#n/a", "nan", "null", "nil", "none", "-", "--", "---", "----", "-.-", "--.-", "#name?",
		"#value!", "#div/0!", "#ref!", "#num!", "inf", "-inf", "+inf", "missing", "no data", "nodata", "err",
		"error", "fault", "open", "short", "fail", "failed", "disconnected", "no probe", "no sensor",
		"overrange", "underrange", "over", "under", "ol", "lo", "hi", "?", "*", "**", "***", "m":
		return true
	}
	return false
}

// newSheet splits the lines at a separator. A line whose quotation marks come to nothing is a row of one cell.
func newSheet(text []string, sep Separator) *sheet {
	sh := &sheet{sep: sep}
	l := newLines(strings.NewReader(""), sep)
	for i := 0; i < len(text); i++ {
		line, next := text[i], i
		marks := strings.Count(line, `"`)
		for marks%2 == 1 && next+1 < len(text) && next-i < longestQuote && len(line) < longestLine {
			next++
			marks += strings.Count(text[next], `"`)
			line += "\n" + text[next]
		}
		cells, err := l.split(line)
		if err != nil || marks%2 == 1 {
			cells, next = []string{text[i]}, i
		}
		row := srow{line: i + 1, text: text[i], raw: len(cells)}
		for len(cells) > 0 && cells[len(cells)-1] == "" {
			cells = cells[:len(cells)-1]
		}
		if len(cells) > 0 && !empty(cells) {
			row.cells = append(row.cells, cells...)
			sh.rows = append(sh.rows, row)
		}
		i = next
	}
	return sh
}
