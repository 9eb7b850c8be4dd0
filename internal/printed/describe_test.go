package printed

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"example.org/lakelarder/units/cite"
)

var filePath = regexp.MustCompile(`^[a-z]+/(records/)?[a-z0-9][a-z0-9-]*\.csv$`)

// describe is the index line that a file and the tests ask for, without id and without what it holds.
func (l library) describe(file string) (found entry, wrong []string) {
	if !filePath.MatchString(file) || prefix(file) == "LL-?-" {
		return entry{}, []string{"testdata/" + file + ": is not <area>/<name>.csv or <area>/records/<name>.csv, in small letters, digits and hyphens"}
	}
	rows, err := read("testdata/"+file, []byte(l.files[file]))
	if err != nil {
		return entry{}, []string{err.Error()}
	}
	for _, col := range []string{"source", "place", "basis"} {
		if _, ok := rows[0].columns[col]; !ok && !invented(file) {
			wrong = append(wrong, "testdata/"+file+": has no column "+col)
		}
	}
	counts, sources, places := map[string]int{}, map[string]bool{}, map[string]bool{}
	for _, r := range rows {
		wrong = append(wrong, judge(r, invented(file))...)
		basis := r.optional("basis")
		if basis == "" {
			basis = "invented"
		}
		counts[basis]++
		sources[r.optional("source")], places[r.optional("place")] = true, true
	}
	delete(sources, "")
	delete(places, "")
	found = entry{file: file, document: list(sources, ", "), place: "?", rows: strconv.Itoa(len(rows)), tests: l.readers(file)}
	if len(places) <= 3 {
		found.place = list(places, "; ")
	}
	var basis []string
	for _, word := range bases {
		if counts[word] > 0 {
			basis = append(basis, fmt.Sprintf("%d %s", counts[word], word))
		}
	}
	found.basis = strings.Join(basis, ", ")
	return found, wrong
}

// judge says what is wrong with where a row is from, and with its own tolerance.
func judge(r Row, inventedFile bool) []string {
	var wrong []string
	if complaint := unfitCitation(r, inventedFile); complaint != "" {
		wrong = append(wrong, r.String()+": "+complaint)
	}
	for _, col := range sortedKeys(r.columns) {
		if (col == "tolerance" || strings.HasPrefix(col, "tolerance_")) && r.optional(col) != "" {
			if complaint := unfitTolerance(r, col); complaint != "" {
				wrong = append(wrong, r.String()+": "+complaint)
			}
		}
	}
	return wrong
}

// unfitCitation holds a row's source, place and basis to what package cite asks of every citation.
func unfitCitation(r Row, inventedFile bool) string {
	basis, source := r.optional("basis"), r.optional("source")
	if inventedFile {
		if _, ok := r.columns["basis"]; ok && basis != "invented" || source != "" {
			return fmt.Sprintf("basis %q, source %q: records are invented and have no source", basis, source)
		}
		return ""
	}
	var c cite.Citation
	var err error
	if c.Basis, err = cite.ParseBasis(basis); err != nil {
		return err.Error()
	}
	if source != "" {
		if c.Source, err = cite.ParseSource(source); err != nil {
			return err.Error()
		}
	}
	c.Where = r.optional("place")
	if err = c.Check(); err != nil {
		return err.Error()
	}
	return ""
}

func unfitTolerance(r Row, col string) string {
	value, _, err := number(r.optional(col))
	switch {
	case err != nil || value.Sign() <= 0:
		return fmt.Sprintf("%s %q is not a number above zero", col, r.optional(col))
	case r.optional("note") == "":
		return col + " without a reason in the column note"
	}
	if of := strings.TrimPrefix(col, "tolerance_"); of != col {
		if _, ok := r.columns[of]; !ok {
			return col + ": there is no column " + of
		}
	}
	return ""
}

// readers are the tests that hold the file's path: "pressure/process.TestSchedules, yield.TestShares", or "?".
func (l library) readers(file string) string {
	var tests []string
	for _, dir := range sortedKeys(l.tests) {
		for _, test := range sortedKeys(l.tests[dir]) {
			if test != "" && l.tests[dir][test][file] {
				tests = append(tests, dir+"."+test)
			}
		}
	}
	if tests == nil {
		return "?"
	}
	return strings.Join(tests, ", ")
}

func list(set map[string]bool, between string) string {
	if len(set) == 0 {
		return "-"
	}
	return strings.ReplaceAll(strings.Join(sortedKeys(set), between), "|", "/")
}
