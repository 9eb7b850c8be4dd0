package printed

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"
)

// Rows are the rows of one table in printed order; there is always at least one.
type Rows []Row

// Table reads testdata/<path> of this module from whatever package the test runs in. The path has forward slashes and
// starts below testdata: "process/schedules.csv". A file that is missing, empty or carelessly written ends the test: see read.
func Table(t testing.TB, path string) Rows {
	t.Helper()
	if !fs.ValidPath(path) || !strings.HasSuffix(path, ".csv") {
		t.Fatalf("printed.Table: %q is not a path below testdata such as process/schedules.csv", path)
	}
	root, err := moduleRoot()
	if err != nil {
		t.Fatalf("printed.Table: %v", err)
	}
	text, err := os.ReadFile(filepath.Join(root, "testdata", filepath.FromSlash(path)))
	if err != nil {
		t.Fatalf("printed.Table: %v", err)
	}
	rows, err := read("testdata/"+path, text)
	if err != nil {
		t.Fatalf("printed.Table: %v", err)
	}
	for i := range rows {
		rows[i].t = t
	}
	return rows
}

// File reads testdata/<path> byte for byte: a specimen that is no table, such as series/formats/bom.txt.
func File(t testing.TB, path string) []byte {
	t.Helper()
	if !fs.ValidPath(path) {
		t.Fatalf("printed.File: %q is not a path below testdata", path)
	}
	root, err := moduleRoot()
	if err != nil {
		t.Fatalf("printed.File: %v", err)
	}
	text, err := os.ReadFile(filepath.Join(root, "testdata", filepath.FromSlash(path)))
	if err != nil {
		t.Fatalf("printed.File: %v", err)
	}
	return text
}

// Each runs check for every row as a subtest named by the row's line.
func (rows Rows) Each(t *testing.T, check func(t *testing.T, r Row)) {
	t.Helper()
	for i := range rows {
		row := rows[i]
		t.Run(fmt.Sprintf("line %d", row.line), func(t *testing.T) {
			check(t, row.In(t))
		})
	}
}

// moduleRoot is the nearest directory with a go.mod, from the working directory upwards.
func moduleRoot() (string, error) {
	start, err := os.Getwd()
	if err != nil {
		return "", err
	}
	for dir := start; ; dir = filepath.Dir(dir) {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return dir, nil
		}
		if dir == filepath.Dir(dir) {
			return "", fmt.Errorf("no go.mod in %s or above it", start)
		}
	}
}

// read takes a table apart and repairs nothing: no byte order mark, no carriage return, no blank line, no unnamed or
// repeated column, no ragged row, no white space around a cell, no table without rows.
func read(file string, text []byte) (Rows, error) {
	if err := clean(file, text); err != nil {
		return nil, err
	}
	reader := csv.NewReader(bytes.NewReader(text))
	records, lines := [][]string{}, []int{}
	for {
		record, err := reader.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return nil, fmt.Errorf("%s: %w", file, err)
		}
		line, _ := reader.FieldPos(0)
		for i, cell := range record {
			if cell != strings.TrimSpace(cell) {
				return nil, fmt.Errorf("%s:%d: cell %d has white space around it: %q", file, line, i+1, cell)
			}
		}
		records, lines = append(records, record), append(lines, line)
	}
	if len(records) < 2 {
		return nil, fmt.Errorf("%s: a table has a header and at least one row", file)
	}
	columns := make(map[string]int, len(records[0]))
	for i, name := range records[0] {
		if _, repeated := columns[name]; repeated || name == "" {
			return nil, fmt.Errorf("%s:1: column %d has no name of its own: %q", file, i+1, name)
		}
		columns[name] = i
	}
	rows := make(Rows, 0, len(records)-1)
	for i, record := range records[1:] {
		rows = append(rows, Row{file: file, line: lines[i+1], columns: columns, cells: record})
	}
	return rows, nil
}

// clean refuses what a CSV reader would pass over in silence.
func clean(file string, text []byte) error {
	switch {
	case !utf8.Valid(text):
		return fmt.Errorf("%s: is not UTF-8", file)
	case bytes.HasPrefix(text, []byte("\ufeff")):
		return fmt.Errorf("%s:1: starts with a byte order mark", file)
	case bytes.ContainsRune(text, '\r'):
		return fmt.Errorf("%s: has a carriage return", file)
	case !bytes.HasSuffix(text, []byte("\n")):
		return fmt.Errorf("%s: does not end with a newline", file)
	}
	for i, line := range strings.Split(strings.TrimSuffix(string(text), "\n"), "\n") {
		if strings.TrimSpace(line) == "" {
			return fmt.Errorf("%s:%d: is a blank line", file, i+1)
		}
	}
	return nil
}
