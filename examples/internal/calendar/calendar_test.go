package calendar_test

import (
	"fmt"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/examples/internal/calendar"
)

func noon() time.Time { return time.Date(2031, 9, 20, 12, 0, 0, 0, time.UTC) }

func evening() calendar.Calendar {
	return calendar.Calendar{
		ID: "an invented evening", Stamp: noon(),
		Events: []calendar.Event{
			{Key: "load 1", Start: noon().Add(time.Hour), Summary: "Load 1: not before now", Location: "canner",
				Description: "Heat, vent, then process; the gauge decides.\nNobody leaves."},
			{Key: "cook", Start: noon(), End: noon().Add(8 * time.Hour), Summary: "Cook is there"},
		},
	}
}

func Example() {
	text, err := evening().Text()
	fmt.Println(strings.ReplaceAll(text, "\r\n", "\n"), err)
	// Output:
	// BEGIN:VCALENDAR
	// VERSION:2.0
	// PRODID:-//lakelarder//examples//EN
	// CALSCALE:GREGORIAN
	// BEGIN:VEVENT
	// UID:49234890aa6ff556513217144da9cbc2@lakelarder.example.org
	// DTSTAMP:20310920T120000Z
	// DTSTART:20310920T130000Z
	// SUMMARY:Load 1: not before now
	// LOCATION:canner
	// DESCRIPTION:Heat\, vent\, then process\; the gauge decides.\nNobody leaves.
	// END:VEVENT
	// BEGIN:VEVENT
	// UID:e95faee6d4bfd7c39b6dd2d369648b7c@lakelarder.example.org
	// DTSTAMP:20310920T120000Z
	// DTSTART:20310920T120000Z
	// DTEND:20310920T200000Z
	// SUMMARY:Cook is there
	// END:VEVENT
	// END:VCALENDAR
	//  <nil>
}

// TestLines: every line ends in CR LF, has at most 75 octets, and is whole letters; unfolded and unescaped the text
// is what was put in.
func TestLines(t *testing.T) {
	for n := 0; n < 200; n++ {
		for _, letter := range []string{"a", "ö", "鮭", "𩸽", `\`, ";", ",", "\n"} {
			c := evening()
			c.Events[0].Description = strings.Repeat("x", n%7) + strings.Repeat(letter, n)
			text, err := c.Text()
			require.NoError(t, err)
			require.True(t, strings.HasSuffix(text, "END:VCALENDAR\r\n"))
			for _, line := range strings.Split(strings.TrimSuffix(text, "\r\n"), "\r\n") {
				require.LessOrEqual(t, len(line), 75)
				require.True(t, utf8.ValidString(line))
				require.NotContains(t, line, "\n")
				require.NotEmpty(t, line)
			}
			require.Equal(t, c.Events[0].Description, unescaped(property(text, "DESCRIPTION")))
		}
	}
}

// property is the first value of a name, unfolded.
func property(text, name string) string {
	for _, line := range strings.Split(strings.ReplaceAll(text, "\r\n ", ""), "\r\n") {
		if strings.HasPrefix(line, name+":") {
			return strings.TrimPrefix(line, name+":")
		}
	}
	return ""
}

// unescaped reads a value letter by letter.
func unescaped(value string) string {
	var b strings.Builder
	escaped := false
	for _, r := range value {
		switch {
		case escaped && r == 'n':
			b.WriteByte('\n')
		case escaped || r != '\\':
			b.WriteRune(r)
		}
		escaped = !escaped && r == '\\'
	}
	return b.String()
}

// TestSameEventsKeepTheirID: times, words and order do not change the UID; the ID of the calendar and the key do.
func TestSameEventsKeepTheirID(t *testing.T) {
	uid := func(change func(c *calendar.Calendar)) string {
		c := evening()
		change(&c)
		text, err := c.Text()
		require.NoError(t, err)
		return property(text, "UID")
	}
	same := uid(func(*calendar.Calendar) {})
	require.Equal(t, same, uid(func(c *calendar.Calendar) { c.Stamp = c.Stamp.Add(time.Hour); c.Events[0].Summary = "later" }))
	require.Equal(t, same, uid(func(c *calendar.Calendar) { c.Events = c.Events[:1] }))
	require.NotEqual(t, same, uid(func(c *calendar.Calendar) { c.ID = "another" }))
	require.NotEqual(t, same, uid(func(c *calendar.Calendar) { c.Events[0].Key = "load 2" }))
	require.NotEqual(t, uid(func(c *calendar.Calendar) { c.ID, c.Events[0].Key = "a", "b 1 c" }), uid(func(c *calendar.Calendar) { c.ID, c.Events[0].Key = "a 1 b", "c" }))
}

// TestZones: a time is written in UTC wherever it was put in.
func TestZones(t *testing.T) {
	c := evening()
	c.Events[0].Start = time.Date(2031, 9, 20, 19, 30, 0, 0, time.FixedZone("", -5*3600))
	text, err := c.Text()
	require.NoError(t, err)
	require.Equal(t, "20310921T003000Z", property(text, "DTSTART"))
	require.Equal(t, "20310920T120000Z", property(text, "DTSTAMP"))
}

func TestRefused(t *testing.T) {
	for want, spoil := range map[string]func(c *calendar.Calendar){
		"no events":                     func(c *calendar.Calendar) { c.Events = nil },
		"ID: is empty":                  func(c *calendar.Calendar) { c.ID = " " },
		"stamp: is not set":             func(c *calendar.Calendar) { c.Stamp = time.Time{} },
		"event 2: key \"load 1\"":       func(c *calendar.Calendar) { c.Events[1].Key = "load 1" },
		"event 1: key: is empty":        func(c *calendar.Calendar) { c.Events[0].Key = "" },
		"event 1: summary: is empty":    func(c *calendar.Calendar) { c.Events[0].Summary = "" },
		"summary: \"a\\nb\": has a":     func(c *calendar.Calendar) { c.Events[0].Summary = "a\nb" },
		"location: \"a\\rb\": has a":    func(c *calendar.Calendar) { c.Events[0].Location = "a\rb" },
		"description: \"a\\x00\": has":  func(c *calendar.Calendar) { c.Events[0].Description = "a\x00" },
		"description: \"\\xff\": exp":   func(c *calendar.Calendar) { c.Events[0].Description = "\xff" },
		"start: is not set":             func(c *calendar.Calendar) { c.Events[0].Start = time.Time{} },
		"expected whole seconds":        func(c *calendar.Calendar) { c.Events[0].Start = noon().Add(1) },
		"year 10000: expected 1 to":     func(c *calendar.Calendar) { c.Events[0].Start = noon().AddDate(7969, 0, 0) },
		"end 20310920T120000Z: expecte": func(c *calendar.Calendar) { c.Events[1].End = noon() },
		"event 2: end: 2031-09-20T20:0": func(c *calendar.Calendar) { c.Events[1].End = c.Events[1].End.Add(1) },
	} {
		c := evening()
		spoil(&c)
		text, err := c.Text()
		require.ErrorContains(t, err, want)
		require.Empty(t, text)
	}
}
