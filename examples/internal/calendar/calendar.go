// Package calendar writes an iCalendar file that a phone opens: the events of RFC 5545 in UTC, and nothing else of
// it. The same calendar is the same text, byte for byte.
//
// An event says when something may begin, and no event ends a hold or says that the heat is off: the gauge, the probe
// or the scale decides that. Whoever makes the events keeps to it: a summary says "not before", and End is given only
// to what a clock may end, such as the hours that somebody is expected to be there.
package calendar

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"
)

// Calendar is one file. ID tells it from other calendars, and keeps the events of this one the same when it is
// written again: a later Stamp with the same ID and keys replaces them. Stamp is when it was made; no clock is read.
type Calendar struct {
	ID     string
	Stamp  time.Time
	Events []Event // at least one
}

// Event is one entry. All times are whole seconds of the years 1 to 9999, in any zone; they are written in UTC.
type Event struct {
	Key         string // of its own in the calendar
	Start       time.Time
	End         time.Time // after Start; zero is an event that only begins
	Summary     string    // one line
	Description string    // may have several lines, and may be empty
	Location    string    // one line, may be empty
}

// Text returns the whole file. What RFC 5545 cannot hold is an error that names it: a time that is not set or not
// whole, an end before its start, text that is not UTF-8 or has control characters, an ID or key that is empty or
// used twice.
func (c Calendar) Text() (string, error) {
	if err := c.check(); err != nil {
		return "", err
	}
	var b strings.Builder
	line := func(name, value string) { b.WriteString(fold(name + ":" + value)) }
	line("BEGIN", "VCALENDAR")
	line("VERSION", "2.0")
	line("PRODID", "-//lakelarder//examples//EN")
	line("CALSCALE", "GREGORIAN")
	for _, e := range c.Events {
		line("BEGIN", "VEVENT")
		line("UID", c.uid(e))
		line("DTSTAMP", utc(c.Stamp))
		line("DTSTART", utc(e.Start))
		if !e.End.IsZero() {
			line("DTEND", utc(e.End))
		}
		line("SUMMARY", escape(e.Summary))
		if e.Location != "" {
			line("LOCATION", escape(e.Location))
		}
		if e.Description != "" {
			line("DESCRIPTION", escape(e.Description))
		}
		line("END", "VEVENT")
	}
	line("END", "VCALENDAR")
	return b.String(), nil
}

// uid is made of nothing but the calendar's ID and the event's key, whose lengths keep "a"+"bc" and "ab"+"c" apart.
func (c Calendar) uid(e Event) string {
	sum := sha256.Sum256([]byte(fmt.Sprintf("%d %s %d %s", len(c.ID), c.ID, len(e.Key), e.Key)))
	return hex.EncodeToString(sum[:16]) + "@lakelarder.example.org"
}

func utc(t time.Time) string { return t.UTC().Format("20060102T150405Z") }

// escape writes text as section 3.3.11 has it.
func escape(text string) string {
	return strings.NewReplacer(`\`, `\\`, ";", `\;`, ",", `\,`, "\n", `\n`).Replace(text)
}

// fold breaks a line so that none is longer than 75 octets, the space before what follows included, and no letter is
// torn apart; section 3.1.
func fold(line string) string {
	const most = 75
	var b strings.Builder
	width := 0
	for _, r := range line {
		n := utf8.RuneLen(r)
		if width+n > most {
			b.WriteString("\r\n ")
			width = 1
		}
		b.WriteRune(r)
		width += n
	}
	return b.String() + "\r\n"
}

func (c Calendar) check() error {
	if len(c.Events) == 0 {
		return fmt.Errorf("calendar: no events: expected at least one")
	}
	if err := checkText("calendar: ID", c.ID, true, false); err != nil {
		return err
	}
	if err := checkTime("calendar: stamp", c.Stamp); err != nil {
		return err
	}
	seen := map[string]bool{}
	for i, e := range c.Events {
		what := fmt.Sprintf("calendar: event %d", i+1)
		if seen[e.Key] {
			return fmt.Errorf("%s: key %q: expected one of its own", what, e.Key)
		}
		seen[e.Key] = true
		if err := e.check(what); err != nil {
			return err
		}
	}
	return nil
}

func (e Event) check(what string) error {
	for _, err := range []error{
		checkText(what+": key", e.Key, true, false),
		checkText(what+": summary", e.Summary, true, false),
		checkText(what+": location", e.Location, false, false),
		checkText(what+": description", e.Description, false, true),
		checkTime(what+": start", e.Start),
	} {
		if err != nil {
			return err
		}
	}
	if e.End.IsZero() {
		return nil
	}
	if err := checkTime(what+": end", e.End); err != nil {
		return err
	}
	if !e.End.After(e.Start) {
		return fmt.Errorf("%s: end %s: expected after the start, %s", what, utc(e.End), utc(e.Start))
	}
	return nil
}

func checkTime(what string, t time.Time) error {
	year := t.UTC().Year()
	switch {
	case t.IsZero():
		return fmt.Errorf("%s: is not set", what)
	case t.Nanosecond() != 0:
		return fmt.Errorf("%s: %s: expected whole seconds", what, t.UTC().Format(time.RFC3339Nano))
	case year < 1 || year > 9999:
		return fmt.Errorf("%s: year %d: expected 1 to 9999", what, year)
	}
	return nil
}

func checkText(what, text string, needed, lines bool) error {
	bad := func(r rune) bool { return unicode.IsControl(r) && r != '\t' && !(lines && r == '\n') }
	switch {
	case needed && strings.TrimSpace(text) == "":
		return fmt.Errorf("%s: is empty", what)
	case !utf8.ValidString(text):
		return fmt.Errorf("%s: %q: expected UTF-8", what, text)
	case strings.IndexFunc(text, bad) >= 0:
		return fmt.Errorf("%s: %q: has a control character", what, text)
	}
	return nil
}
