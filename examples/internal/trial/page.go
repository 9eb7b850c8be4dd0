package trial

import (
	"bytes"
	"encoding/xml"
	"errors"
	"flag"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/examples/internal/sheet"
)

var (
	metricUnits = regexp.MustCompile(`\b(kPa|°C|mm|cm|m|km|g|kg|mL|L|K|MJ|kJ)\b|°C`)
	usUnits     = regexp.MustCompile(`\b(psi|in|ft|oz|lb|qt|pt|gal|BTU)\b|°F|F°`)
	quantity    = regexp.MustCompile(`\d["′″]? ?(°C|°F|F°|[A-Za-z]+)`)
	within      = regexp.MustCompile(`\bin\s+(the|a|an|all|each|every)\b`) // the word, not the inch
	cautionID   = regexp.MustCompile(`\(([a-z-]+\.[a-z0-9-]+)\)`)
)

// Page checks what is alike on what every program prints: the first line is a verdict or a result, no line is longer
// than the sheet is wide, at most so many lines come before the cautions, each caution stands once, and one line
// tells of the sources.
func Page(t testing.TB, text string, most int) {
	t.Helper()
	before, cautions, _ := parted(text)
	found := cautions != ""
	if n := strings.Count(before, "\n"); n > most {
		t.Errorf("%d lines before the cautions, at most %d wanted:\n%s", n, most, before)
	}
	if first, _, _ := strings.Cut(text, "\n"); !strings.HasPrefix(first, "VERDICT: ") && !strings.HasPrefix(first,
		"RESULT: ") {
		t.Errorf("the first line is %q", first)
	}
	for _, line := range strings.Split(text, "\n") {
		if n := len([]rune(line)); n > sheet.Width {
			t.Errorf("%d columns: %s", n, line)
		}
	}
	seen := map[string]bool{}
	for _, id := range cautionID.FindAllStringSubmatch(strings.Join(strings.Fields(cautions), " "), -1) {
		if seen[id[1]] {
			t.Errorf("caution %s stands twice", id[1])
		}
		seen[id[1]] = true
	}
	if found && len(seen) == 0 {
		t.Errorf("no caution has an id:\n%s", cautions)
	}
	if n := strings.Count(text, "\nSources: ") + strings.Count(text, "\nSOURCES\n"); n != 1 {
		t.Errorf("%d lines of sources", n)
	}
}

// parted is what stands before the cautions, the cautions, and what comes after.
func parted(text string) (before, cautions, after string) {
	before, rest, _ := strings.Cut(text, "\nCAUTIONS\n")
	cautions, after, _ = strings.Cut(rest, "\n\n")
	return before, cautions, after
}

// System fails the test for a unit of the other system outside the cautions, which are given in their own words. Passes
// are words that may stand all the same, such as the name of a jar or of a column of the input.
func System(t testing.TB, text, system string, passes ...string) {
	t.Helper()
	before, _, after := parted(text)
	text = before + "\n" + after
	if list := strings.Index(text, "SOURCES\n"); list >= 0 {
		text = text[:list] // names of documents and places in them
	}
	text = within.ReplaceAllString(text, "")
	for _, pass := range passes {
		text = strings.ReplaceAll(text, pass, "")
	}
	wrong := metricUnits
	if system == "metric" {
		wrong = usUnits
	}
	for _, q := range quantity.FindAllStringSubmatch(text, -1) {
		if wrong.MatchString(q[1]) && wrong.FindString(q[1]) == q[1] {
			t.Errorf("-units %s prints %q", system, q[0])
		}
	}
}

// ByHand fails the test unless the way by hand comes out from its printed digits, in at least so many lines.
func ByHand(t testing.TB, text string, least int) {
	t.Helper()
	lines, err := byhand.Check(text)
	if err != nil {
		t.Errorf("by hand: %v", err)
	}
	if lines < least {
		t.Errorf("%d lines by hand, at least %d wanted:\n%s", lines, least, text)
	}
	for _, line := range strings.Split(text, "\n") {
		if n := len([]rune(line)); n > sheet.Width {
			t.Errorf("%d columns: %s", n, line)
		}
	}
}

// Golden compares the first 40 lines with a file, which a person read before it was kept.
func Golden(t testing.TB, text, path string) {
	t.Helper()
	want, err := os.ReadFile(path)
	if err != nil {
		t.Errorf("golden: %v", err)
	}
	got, wanted := strings.Split(First(text, 40), "\n"), strings.Split(string(want), "\n")
	for i := 0; i < max(len(got), len(wanted)); i++ {
		line := func(of []string) string {
			if i < len(of) {
				return of[i]
			}
			return "(no line)"
		}
		if line(got) != line(wanted) {
			t.Errorf("%s: line %d: printed:\n%s\nwanted:\n%s", path, i+1, line(got), line(wanted))
		}
	}
}

// Answer is what stands before the cautions: a golden file of it outlives a new caution of some package.
func Answer(text string) string {
	before, _, _ := strings.Cut(text, "\nCAUTIONS\n")
	return before
}

// First is the first lines of a text, at most so many.
func First(text string, lines int) string {
	all := strings.SplitAfter(text, "\n")
	return strings.Join(all[:min(lines, len(all))], "")
}

// Help fails the test unless -h lists every field of the input with an example.
func Help(t testing.TB, run Program) {
	t.Helper()
	var out bytes.Buffer
	if err := run([]string{"-h"}, &out); !errors.Is(err, flag.ErrHelp) {
		t.Errorf("-h: %v", err)
	}
	_, fields, _ := strings.Cut(out.String(), "\nfields of the input file")
	if !strings.Contains(fields, ", such as ") {
		t.Errorf("no fields:\n%s", out.String())
	}
	for _, line := range strings.Split(fields, "\n") {
		if strings.HasSuffix(strings.TrimRight(line, " "), "such as") {
			t.Errorf("no example: %s", line)
		}
		if n := len([]rune(line)); n > sheet.Width {
			t.Errorf("%d columns: %s", n, line)
		}
	}
}

// Picture is the SVG that the program draws; one that is not well-formed, has no title or description, or holds no
// number where one belongs, fails the test.
func Picture(t testing.TB, run Program, args ...string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "picture.svg")
	run.Printed(t, append(args, "-svg", path)...)
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	text := string(data)
	if err := xml.Unmarshal(data, new(struct{})); err != nil {
		t.Errorf("picture: %v", err)
	}
	for _, want := range []string{"<title", "<desc", "viewBox"} {
		if !strings.Contains(text, want) {
			t.Errorf("the picture has no %s", want)
		}
	}
	if strings.Contains(text, "NaN") || strings.Contains(text, "Inf") {
		t.Errorf("the picture has what is no number")
	}
	return text
}
