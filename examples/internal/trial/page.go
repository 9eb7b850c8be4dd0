package trial

import (
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
	cautionID   = regexp.MustCompile(`\(([a-z-]+\.[a-z0-9-]+)\)`)
)

// Page checks what is alike on what every program prints: the first line is a verdict or a result, no line is longer than
// the sheet is wide, at most so many lines come before the cautions, each caution stands once, and one line tells of the sources.
func Page(t testing.TB, text string, most int) {
	t.Helper()
	before, cautions, found := strings.Cut(text, "\nCAUTIONS\n")
	if n := strings.Count(before, "\n"); n > most {
		t.Errorf("%d lines before the cautions, at most %d wanted:\n%s", n, most, before)
	}
	if first, _, _ := strings.Cut(text, "\n"); !strings.HasPrefix(first, "VERDICT: ") && !strings.HasPrefix(first, "RESULT: ") {
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

// System fails the test for a unit of the other system before the cautions, which are given in their own words. Passes
// are words that may stand all the same, such as the name of a jar or of a column of the input.
func System(t testing.TB, text, system string, passes ...string) {
	t.Helper()
	text, _, _ = strings.Cut(text, "\nCAUTIONS\n")
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

// Golden compares the first lines, 40 of them at most, with a text that stands in the test.
func Golden(t testing.TB, text, want string) {
	t.Helper()
	lines := strings.Split(text, "\n")
	if len(lines) > 40 {
		lines = lines[:40]
	}
	got := strings.Join(lines, "\n")
	if got != strings.TrimPrefix(want, "\n") {
		t.Errorf("printed:\n%s\nwanted:\n%s", got, want)
	}
}
