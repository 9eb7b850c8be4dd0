package answers

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"net/url"
	"slices"
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Table is one printed table: its line in the index and its rows.
type Table struct {
	ID       string     `json:"id"`
	File     string     `json:"file"`
	Holds    string     `json:"holds"`
	Document string     `json:"document"`
	Place    string     `json:"place"`
	Basis    string     `json:"basis"`
	Head     []string   `json:"head"`
	Rows     [][]string `json:"rows"`

	lower []string // of Rows, to be searched
}

// ReadTables reads every table of an index in the form of testdata/README.md; file gives the bytes of each.
func ReadTables(index string, file func(name string) ([]byte, error)) ([]Table, error) {
	var all []Table
	for _, line := range strings.Split(index, "\n") {
		cells := strings.Split(line, " | ")
		if !strings.HasPrefix(line, "| LL-") || len(cells) < 7 {
			continue
		}
		t := Table{ID: strings.TrimPrefix(cells[0], "| "), File: cells[1], Holds: cells[2], Document: cells[3], Place: cells[4], Basis: cells[5]}
		data, err := file(t.File)
		if err != nil {
			return nil, err
		}
		rows, err := csv.NewReader(bytes.NewReader(data)).ReadAll()
		if err != nil || len(rows) == 0 {
			return nil, fmt.Errorf("%s: no table: %w", t.File, err)
		}
		t.Head, t.Rows = rows[0], rows[1:]
		all = append(all, t)
	}
	return Prepared(all), nil
}

// Prepared makes tables ready to be searched.
func Prepared(all []Table) []Table {
	for i := range all {
		t := &all[i]
		of := strings.ToLower(t.ID + " " + t.Holds + " " + strings.Join(t.Head, " ") + " ")
		t.lower = make([]string, len(t.Rows))
		for n, row := range t.Rows {
			t.lower[n] = of + strings.ToLower(strings.Join(row, " "))
		}
	}
	return all
}

// cell is the cell of a row in a column of that name, empty where there is none.
func (t Table) cell(row []string, column string) string {
	if i := slices.Index(t.Head, column); i >= 0 && i < len(row) {
		return row[i]
	}
	return ""
}

// between stands between the cells that name a row.
const between = " / "

// named is the shortest first cells of a row that no other row begins with. Rows that are alike as far as their source
// have one name.
func (t Table) named(row []string) string {
	last := slices.Index(t.Head, "source")
	if last < 1 {
		last = len(row)
	}
	for n := 1; n < last; n++ {
		same := 0
		for _, other := range t.Rows {
			if slices.Equal(other[:n], row[:n]) {
				same++
			}
		}
		if same == 1 {
			return strings.Join(row[:n], between)
		}
	}
	return strings.Join(row[:last], between)
}

// is reports whether the row is the one of that name.
func (t Table) is(row []string, name string) bool {
	text := strings.Join(row, between)
	return text == name || strings.HasPrefix(text, name+between)
}

// citation is where a row is from.
func (t Table) citation(row []string) string {
	basis := t.cell(row, "basis")
	if basis == "" {
		basis = t.Basis
	}
	document := t.cell(row, "source")
	if source, err := cite.ParseSource(document); err == nil {
		document = source.String()
	}
	return strings.TrimPrefix(strings.Join([]string{document, t.cell(row, "place")}, ", "), ", ") + " (" + basis + ")"
}

// link is the address of a table, or of a row of it.
func (t Table) link(row string) string {
	values := url.Values{"table": {t.ID}}
	if row != "" {
		values.Set("row", row)
	}
	return "#tables?" + values.Encode()
}

// plain is the row without what says where it is from.
func (t Table) plain(row []string) string {
	var parts []string
	for i, cell := range row {
		if i < len(t.Head) && cell != "" && !slices.Contains([]string{"source", "place", "basis"}, t.Head[i]) {
			parts = append(parts, t.Head[i]+" "+cell)
		}
	}
	return strings.Join(parts, "; ")
}

// find is a table by its id.
func find(all []Table, id string) (Table, error) {
	for _, t := range all {
		if strings.EqualFold(t.ID, strings.TrimSpace(id)) {
			return t, nil
		}
	}
	return Table{}, units.UnknownError{What: "table", Got: id}
}
