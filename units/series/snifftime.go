package series

import (
	"strconv"
	"strings"
	"time"
)

// times finds the columns of the time, the order of the dates and the zone.
func (s *sniffer) times() error {
	if len(s.stated.Time) > 0 {
		s.statedTime()
	} else if err := s.timeColumns(); err != nil {
		return err
	}
	for _, c := range s.format.Time {
		if c.Part <= Date && c.Part > 0 || c.Part == Clock {
			if err := s.order(); err != nil {
				return err
			}
			break
		}
	}
	s.zone()
	return nil
}

func (s *sniffer) time(i int, part Part, unit string) {
	s.format.Time = append(s.format.Time, TimeColumn{Column: s.heading(i), Part: part, Unit: unit})
	s.because("Time", "column %d %q holds the %v", i+1, short(s.cols[i].name), part)
}

// timeColumns chooses the columns by what their cells hold, then by their headings.
func (s *sniffer) timeColumns() error {
	sh := s.sheet
	is := func(want class) []int { return sh.find(func(c class) bool { return c == want }) }
	both, dates, clocks, spans := is(classBoth), is(classDate), is(classClock), is(classSpan)
	switch {
	case len(both) > 1:
		return s.askTime(both, nil)
	case len(both) == 1:
		s.time(both[0], DateAndClock, "")
		s.half()
	case len(dates) > 0 && len(clocks) > 0:
		if len(dates) > 1 || len(clocks) > 1 {
			return s.askTime(dates, clocks)
		}
		s.time(dates[0], Date, "")
		s.time(clocks[0], Clock, "")
		s.half()
	case len(dates) > 1:
		return s.askTime(dates, nil)
	case len(dates) == 1:
		s.time(dates[0], Date, "")
		s.clockDigits()
	case s.inParts():
	case len(clocks) > 0:
		if len(clocks) > 1 {
			return s.askTime(clocks, nil)
		}
		return s.clockOnly(clocks[0])
	case len(spans) == 1:
		return s.span(spans[0])
	default:
		return s.counts()
	}
	s.besideClock(spans)
	return nil
}

// askTime asks which column, or which pair of a date and a clock, is the time.
func (s *sniffer) askTime(columns, clocks []int) error {
	var choices []Choice
	for _, i := range columns {
		if len(clocks) == 0 {
			choices = append(choices, Choice{strconv.Itoa(i + 1), s.example(i)})
		}
		for _, k := range clocks {
			choices = append(choices, Choice{strconv.Itoa(i+1) + "+" + strconv.Itoa(k+1), s.example(i) + ", " + s.example(k)})
		}
	}
	s.ask(AskTime, choices, "Several columns hold dates or clocks. Which of them says when a row was written?")
	return nil
}

// stated takes the columns of an answer; what they hold is seen from their cells.
func (s *sniffer) statedTime() {
	s.format.Time = append([]TimeColumn(nil), s.stated.Time...)
	for k := range s.format.Time {
		t := &s.format.Time[k]
		i := t.Column.Number - 1
		if t.Part != 0 || i < 0 || i >= len(s.cols) {
			continue
		}
		t.Part = map[class]Part{classBoth: DateAndClock, classDate: Date, classClock: Clock, classSpan: ElapsedClock}[s.cols[i].class]
		t.Column = s.heading(i)
	}
	s.half()
}

// example shows a column by its heading and a value.
func (s *sniffer) example(i int) string {
	c := s.cols[i]
	text := c.name
	if text == "" {
		text = "column " + strconv.Itoa(i+1)
	}
	if len(c.values) > 0 {
		text += ": " + c.values[0]
		if last := c.values[len(c.values)-1]; last != c.values[0] {
			text += " … " + last
		}
	}
	return short(text)
}

// half finds AM and PM in a column of their own.
func (s *sniffer) half() {
	for _, t := range s.format.Time {
		if t.Part == HalfDay {
			return
		}
	}
	for i, c := range s.cols {
		all := len(c.values) > 0
		for _, v := range c.values {
			_, size := halfDay(v)
			all = all && size == len(v)
		}
		if all {
			s.time(i, HalfDay, "")
			return
		}
	}
}

// clockDigits finds a clock of bare digits, or hours and minutes in columns of their own, beside a date.
func (s *sniffer) clockDigits() {
	if i := s.named("hour", "hours", "hh", "hr"); i >= 0 && s.cols[i].class == classNumber {
		s.time(i, Hour, "")
		if m := s.named("minute", "minutes", "mm", "min"); m >= 0 {
			s.time(m, Minute, "")
			if sec := s.named("second", "seconds", "ss", "sec"); sec >= 0 {
				s.time(sec, Second, "")
			}
		}
		return
	}
	for i, c := range s.cols {
		name := strings.ToLower(c.name)
		if c.class != classNumber || !(strings.HasPrefix(name, "time") || strings.HasPrefix(name, "clock") || strings.HasPrefix(name, "hhmm") || name == "zeit") {
			continue
		}
		all := true
		for _, v := range c.values {
			all = all && (len(v) == 4 || len(v) == 6) && leadingDigits(v) == len(v) && len(v) == len(c.values[0])
		}
		if all {
			s.time(i, Clock, "")
			return
		}
	}
}

// named returns the first column of one of the names, -1 without.
func (s *sniffer) named(names ...string) int {
	for i, c := range s.cols {
		lower := strings.ToLower(strings.TrimSpace(c.name))
		for _, name := range names {
			if lower == name {
				return i
			}
		}
	}
	return -1
}

// inParts finds year, month, day and clock in columns of their own.
func (s *sniffer) inParts() bool {
	y, m, d := s.named("year", "yyyy", "yr"), s.named("month", "mon", "mo"), s.named("day", "dd")
	h := s.named("hour", "hours", "hh", "hr")
	if y < 0 || m < 0 || d < 0 {
		return false
	}
	s.time(y, Year, "")
	s.time(m, Month, "")
	s.time(d, Day, "")
	if h >= 0 {
		s.time(h, Hour, "")
		if i := s.named("minute", "minutes", "min"); i >= 0 {
			s.time(i, Minute, "")
		}
		if i := s.named("second", "seconds", "sec"); i >= 0 {
			s.time(i, Second, "")
		}
	} else if clocks := s.sheet.find(func(c class) bool { return c == classClock }); len(clocks) == 1 {
		s.time(clocks[0], Clock, "")
	}
	return true
}

// clockOnly takes a clock without a date: beside a count of days, or as a count from nought, or as it is.
func (s *sniffer) clockOnly(i int) error {
	for k, c := range s.cols {
		if k != i && c.class == classNumber && saysDate(strings.ToLower(c.name)) && allWhole(c.values) {
			s.time(k, DayCount, "")
			s.time(i, Clock, "")
			s.half()
			return nil
		}
	}
	name := strings.ToLower(s.cols[i].name)
	counts := strings.Contains(name, "elapsed") || strings.Contains(name, "duration") || strings.Contains(name, "since")
	first := s.cols[i].values[0]
	if counts && strings.Count(first, ":") == 1 {
		return s.span(i)
	}
	if from, _ := readStamp(first, 0); counts || from.clock == 0 && strings.Count(first, ":") == 2 && (name == "" || counts) {
		s.time(i, ElapsedClock, "")
		return nil
	}
	s.time(i, Clock, "")
	s.half()
	return nil
}

// span takes a count written with colons. Of two parts they may be hours and minutes or minutes and seconds.
func (s *sniffer) span(i int) error {
	s.time(i, ElapsedClock, "")
	first, name := s.cols[i].values[0], strings.ToLower(s.cols[i].name)
	if strings.Count(first, ":") > 1 || strings.Contains(name, "h:mm") || strings.Contains(name, "hh:mm") {
		return nil
	}
	s.format.Time = s.format.Time[:len(s.format.Time)-1]
	return LineError{Line: s.sheet.rows[s.sheet.first].line, Column: short(s.cols[i].name), Text: short(first),
		Err: wrap(ErrAmbiguous, "hours and minutes or minutes and seconds; write h:mm:ss")}
}

func allWhole(values []string) bool {
	for _, v := range values {
		if leadingDigits(v) != len(v) || v == "" || len(v) > 18 {
			return false
		}
	}
	return len(values) > 0
}

// besideClock finds a count that stands beside the clock under a heading that says so.
func (s *sniffer) besideClock(spans []int) {
	for i, c := range s.cols {
		if c.class != classNumber || s.isTime(i) {
			continue
		}
		unit, base, ok := elapsedUnit(c.name)
		if ok && isElapsedName(base) && len(c.values) > 1 && c.values[0] != c.values[len(c.values)-1] {
			s.time(i, Elapsed, unitName(unit))
			return
		}
	}
	if len(spans) == 1 && strings.Contains(strings.ToLower(s.cols[spans[0]].name), "elapsed") {
		s.time(spans[0], ElapsedClock, "")
	}
}

func isElapsedName(base string) bool {
	switch base {
	case "time", "elapsed", "elapsed time", "t", "run time", "runtime", "duration", "time elapsed", "seconds", "minutes", "hours", "":
		return true
	}
	return false
}

func unitName(d time.Duration) string {
	switch d {
	case time.Microsecond:
		return "us"
	case time.Millisecond:
		return "ms"
	case time.Second:
		return "s"
	case time.Minute:
		return "min"
	case time.Hour:
		return "h"
	}
	return "d"
}
