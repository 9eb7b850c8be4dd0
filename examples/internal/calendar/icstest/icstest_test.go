package icstest

import (
	"os"
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/examples/internal/calendar"
)

// texts are what is hard to write: what must be escaped, what must be folded, letters of two to four octets at the
// fold.
func texts() []string {
	return []string{
		"", "plain", `back\slash`, "a;b,c:d", "two\nlines\n\nand more", `not a new line: \n`, `ends with \`, "tab\there", "quote \"quoted\"",
		strings.Repeat("x", 74), strings.Repeat("x", 75), strings.Repeat("x", 76), strings.Repeat("ö", 90), "a" + strings.Repeat("鮭", 60),
		strings.Repeat("𩸽", 50), strings.Repeat("a b ", 60) + "end", strings.Repeat(`\`, 80), strings.Repeat(";,", 50),
	}
}

// TestParserReadsWhatIsWritten: the parser finds every event with its texts and times, as they were put in.
func TestParserReadsWhatIsWritten(t *testing.T) {
	noon := time.Date(2031, 9, 20, 12, 0, 0, 0, time.UTC)
	c := calendar.Calendar{ID: "an invented evening", Stamp: noon}
	for i, text := range texts() {
		e := calendar.Event{Start: noon.Add(time.Duration(i) * 37 * time.Minute), Description: text, Summary: "not before: " + strings.ReplaceAll(text, "\n", " ")}
		e.Key = "event " + string(rune('a'+i))
		e.Location = strings.ReplaceAll(text, "\n", ", ")
		if i%2 == 0 {
			e.End = e.Start.Add(time.Duration(i+1) * time.Hour)
		}
		c.Events = append(c.Events, e)
	}
	written, err := c.Text()
	require.NoError(t, err)
	read, err := ics.ParseCalendar(strings.NewReader(written))
	require.NoError(t, err)
	require.Len(t, read.Events(), len(c.Events))
	seen := map[string]bool{}
	for i, got := range read.Events() {
		want := c.Events[i]
		require.Equal(t, want.Summary, value(got, ics.ComponentPropertySummary))
		require.Equal(t, want.Description, value(got, ics.ComponentPropertyDescription))
		require.Equal(t, want.Location, value(got, ics.ComponentPropertyLocation))
		start, err := got.GetStartAt()
		require.NoError(t, err)
		require.True(t, want.Start.Equal(start), "%s %s", want.Start, start)
		end, err := got.GetEndAt()
		if want.End.IsZero() {
			require.Error(t, err)
		} else {
			require.NoError(t, err)
			require.True(t, want.End.Equal(end))
		}
		stamp, err := got.GetDtStampTime()
		require.NoError(t, err)
		require.True(t, noon.Equal(stamp))
		require.False(t, seen[got.Id()], "a UID of its own")
		seen[got.Id()] = true
	}
}

// TestParserCanRefuse: the parser that is relied on is one that notices.
func TestParserCanRefuse(t *testing.T) {
	c := calendar.Calendar{ID: "a", Stamp: time.Unix(0, 0), Events: []calendar.Event{{Key: "k", Start: time.Unix(60, 0), Summary: "s"}}}
	written, err := c.Text()
	require.NoError(t, err)
	for _, spoilt := range []string{
		strings.Replace(written, "END:VEVENT\r\n", "", 1),
		strings.Replace(written, "BEGIN:VCALENDAR\r\n", "", 1),
		strings.Replace(written, "SUMMARY:", "SUMMARY", 1),
	} {
		require.NotEqual(t, written, spoilt)
		_, err := ics.ParseCalendar(strings.NewReader(spoilt))
		require.Error(t, err, spoilt)
	}
}

func value(e *ics.VEvent, name ics.ComponentProperty) string {
	p := e.GetProperty(name)
	if p == nil {
		return ""
	}
	return p.Value
}

// TestParserReadsDockplan: the calendar of the example on its demo input, as its own test holds it, opens; every entry begins and none
// ends.
func TestParserReadsDockplan(t *testing.T) {
	file, err := os.Open("../../../dockplan/testdata/dock.ics")
	require.NoError(t, err)
	defer file.Close()
	read, err := ics.ParseCalendar(file)
	require.NoError(t, err)
	require.Len(t, read.Events(), 16)
	dock := time.Date(2031, 9, 20, 18, 0, 0, 0, time.UTC) // noon, six hours behind
	for _, e := range read.Events() {
		start, err := e.GetStartAt()
		require.NoError(t, err)
		require.False(t, start.Before(dock) || start.After(dock.Add(52*time.Hour)), "%s", start)
		_, err = e.GetEndAt()
		require.Error(t, err)
		require.Regexp(t, "^(not before [0-9]{2}:[0-9]{2}: |deadline reached: )", value(e, ics.ComponentPropertySummary))
		require.NotEmpty(t, value(e, ics.ComponentPropertyDescription))
		require.Equal(t, "Tamarack Bench Reservoir", value(e, ics.ComponentPropertyLocation))
	}
}
