package answers

import (
	"fmt"
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// mostRows is how many rows are shown of what was found.
const mostRows = 60

func tablesSection() Section {
	return Section{
		Name: "tables", Title: "The tables",
		About: "Every printed table that the library is held against, each row with its document, place and basis, and an address to quote it by.",
		Fields: []Field{
			{Name: "search", Label: "search", Help: "words that all stand in a row, its columns or what its table holds, such as: smoked pint dial"},
			{Name: "table", Label: "table", Help: "its id, such as LL-PROC-03"},
			{Name: "row", Label: "row", Help: "its first cells, such as fish / raw / pint / dial / 0"},
		},
	}
}

// looked is the list of tables, a table, a row of it, or what was found.
func looked(w *writer) {
	all := w.request.Tables
	if len(all) == 0 {
		w.Headline = "The tables are not loaded yet."
		return
	}
	w.warn(cite.Caution{
		ID: "answers.rows-are-copies", Deciding: true,
		Text: "A row is what a document prints or a test works out, right or wrong, and some tables list figures that must not be used. " +
			"Take a process from the section of the canner only.",
	})
	id, row := w.request.Values["table"], w.request.Values["row"]
	search := strings.Fields(strings.ToLower(w.request.Values["search"]))
	switch {
	case id != "":
		t, err := find(all, id)
		if err != nil {
			w.wrong("table", err)
			return
		}
		if w.about(t); row != "" {
			w.quoted(t, row)
		} else {
			w.rows(t, search)
		}
	case row != "":
		w.wrong("table", units.UnsetError{What: "table"})
	case len(search) > 0:
		w.found(all, search)
	default:
		w.listed(all)
	}
}

func (w *writer) listed(all []Table) {
	rows := 0
	b := Block{Heading: "All tables", Head: []string{"id", "holds", "documents", "basis"}}
	for _, t := range all {
		rows += len(t.Rows)
		b.Rows, b.Links = append(b.Rows, []string{t.ID, t.Holds, t.Document, t.Basis}), append(b.Links, t.link(""))
	}
	w.Headline = counted(len(all), "table") + ", " + counted(rows, "row")
	w.Blocks = append(w.Blocks, b)
}

func (w *writer) about(t Table) {
	w.Headline = t.ID + ": " + t.Holds
	w.block("Where it is from")
	w.figure("documents", t.Document)
	w.figure("places", t.Place)
	w.figure("basis", t.Basis)
	if strings.Contains(t.Basis, "invented") {
		w.line("These records are invented for the tests. Nothing in them was measured.")
	}
}

// rows writes the rows of a table that all words stand in.
func (w *writer) rows(t Table, words []string) {
	b := Block{Heading: "Its rows", Head: append([]string{"row"}, t.Head...)}
	for i, row := range t.Rows {
		if matches(t.lower[i], words) {
			name := t.named(row)
			b.Rows, b.Links = append(b.Rows, append([]string{name}, row...)), append(b.Links, t.link(name))
		}
	}
	w.Blocks = append(w.Blocks, b)
	w.block("")
	w.line(counted(len(b.Rows), "row") + " of " + fmt.Sprint(len(t.Rows)))
}

// quoted writes one row in full, and how to quote it.
func (w *writer) quoted(t Table, name string) {
	found := 0
	for _, row := range t.Rows {
		if !t.is(row, name) {
			continue
		}
		if found++; found > 1 {
			continue
		}
		w.block("Row of " + t.named(row))
		for i, cell := range row {
			if cell != "" {
				w.figure(t.Head[i], cell)
			}
		}
		w.figure("to quote it", t.ID+", row of "+t.named(row)+"; "+t.citation(row))
		b := &w.Blocks[len(w.Blocks)-1]
		b.Rows, b.Links = [][]string{{"the address of this row"}}, []string{t.link(t.named(row))}
	}
	switch {
	case found == 0:
		w.wrong("row", units.UnknownError{What: "row of " + t.ID, Got: name})
	case found > 1:
		w.line(counted(found, "row") + " begin so; this is the first.")
	}
}

// found writes the rows of all tables that all words stand in.
func (w *writer) found(all []Table, words []string) {
	b := Block{Heading: "Rows found", Head: []string{"table and row", "the table holds", "the row", "from"}}
	rows := 0
	for _, t := range all {
		for i, row := range t.Rows {
			if !matches(t.lower[i], words) {
				continue
			}
			if rows++; rows > mostRows {
				continue
			}
			name := t.named(row)
			b.Rows, b.Links = append(b.Rows, []string{t.ID + ", " + name, t.Holds, t.plain(row), t.citation(row)}), append(b.Links, t.link(name))
		}
	}
	w.Headline = counted(rows, "row") + " found"
	if rows > mostRows {
		w.Headline += fmt.Sprintf(", the first %d shown: more words find fewer", mostRows)
	}
	if rows > 0 {
		w.Blocks = append(w.Blocks, b)
	}
}

func matches(text string, words []string) bool {
	for _, word := range words {
		if !strings.Contains(text, word) {
			return false
		}
	}
	return true
}
