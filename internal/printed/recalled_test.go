package printed

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestRecalledFigures holds the list in README.md to the printed tables: every document with a row from
// memory is listed with the ids of those tables, and no other is. It prints the list to paste.
func TestRecalledFigures(t *testing.T) {
	root, err := moduleRoot()
	require.NoError(t, err)
	readme, err := os.ReadFile(filepath.Join(root, "README.md"))
	require.NoError(t, err)
	index, err := os.ReadFile(filepath.Join(root, "testdata", "README.md"))
	require.NoError(t, err)
	ids := map[string]string{} // by file
	for _, line := range strings.Split(string(index), "\n") {
		if cells := strings.Split(line, "|"); strings.HasPrefix(line, "| LL-") {
			ids[strings.TrimSpace(cells[2])] = strings.TrimSpace(cells[1])
		}
	}
	rows := map[string]map[string]int{} // source, id: count
	base := filepath.Join(root, "testdata")
	require.NoError(t, filepath.WalkDir(base, func(full string, entry fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(full, ".csv") || strings.Contains(filepath.ToSlash(full), "/records/") {
			return err
		}
		name, err := filepath.Rel(base, full)
		if err != nil {
			return err
		}
		name = filepath.ToSlash(name)
		for _, r := range Table(t, name) {
			if r.Text("basis") != "recalled" {
				continue
			}
			source := r.Text("source")
			if rows[source] == nil {
				rows[source] = map[string]int{}
			}
			rows[source][ids[name]]++
		}
		return nil
	}))
	var want []string
	for source, tables := range rows {
		var cells []string
		for id, n := range tables {
			cells = append(cells, fmt.Sprintf("%s (%d)", id, n))
		}
		sort.Strings(cells)
		want = append(want, fmt.Sprintf("| %s | %s |", source, strings.Join(cells, ", ")))
	}
	sort.Strings(want)
	_, list, found := strings.Cut(string(readme), "| document | tables (rows) |\n|---|---|\n")
	require.True(t, found, "README.md has no table of recalled figures")
	list, _, _ = strings.Cut(list, "\n\n")
	if got := strings.TrimSpace(list); got != strings.Join(want, "\n") {
		t.Errorf("the recalled figures in README.md do not agree with testdata; the table should be\n%s", strings.Join(want, "\n"))
	}
}
