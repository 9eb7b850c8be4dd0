package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// written is the calendar that the demo writes.
func written(t *testing.T) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "dock.ics")
	program.Printed(t, "-ics", path)
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	return string(text)
}

// TestCalendarSpecimen: the specimen that another parser reads (examples/internal/calendar/icstest) is what is
// written.
func TestCalendarSpecimen(t *testing.T) {
	want, err := os.ReadFile("testdata/dock.ics")
	require.NoError(t, err)
	require.Equal(t, string(want), written(t))
	require.Equal(t, written(t), written(t), "the same day is the same file")
}

// endsSomething are words of an entry that would end a step by the clock.
var endsSomething = regexp.MustCompile(`(?i)heat off|turn off|turn down|take (it|them|the \w+) off|is done|` +
	`finished|ends? the|DTEND|DURATION|expected over|until`)

// TestCalendarEndsNothing: an entry begins and never ends; each start says "not before".
func TestCalendarEndsNothing(t *testing.T) {
	text := strings.ReplaceAll(written(t), "\r\n ", "")
	starts, deadlines := 0, 0
	for _, line := range strings.Split(text, "\r\n") {
		require.NotRegexp(t, endsSomething, line)
		if !strings.HasPrefix(line, "SUMMARY:") {
			continue
		}
		switch {
		case strings.HasPrefix(line, "SUMMARY:not before "):
			starts++
		case strings.HasPrefix(line, "SUMMARY:deadline reached: "):
			deadlines++
		default:
			t.Errorf("neither a start nor a deadline: %s", line)
		}
	}
	require.Equal(t, 12, starts)
	require.Equal(t, 4, deadlines)
	require.Equal(t, starts, strings.Count(text, "the probe or the scale decides when a step has ended"))
	for _, not := range []string{"SUMMARY:heat off", "DTEND:20310920T180000Z", "process: expected over by 13:00"} {
		require.Regexp(t, endsSomething, not, "the check is one that notices")
	}
}

// TestNothingToWrite: no fish, no timetable, and no file that says otherwise.
func TestNothingToWrite(t *testing.T) {
	dir := t.TempDir()
	for flag, message := range map[string]string{"-ics": "no calendar: no fish", "-svg": "no picture: no fish"} {
		file := filepath.Join(dir, "out"+flag)
		out, err := program.Changed(t, []string{"dock.json"}, []string{flag, file}, [3]string{"dock.json",
			`"preserved": 18`, `"preserved": 45`})
		require.ErrorContains(t, err, message)
		require.Empty(t, out)
		require.NoFileExists(t, file)
	}
}
