package series

import (
	"strconv"
	"strings"
)

// times finds the columns of the time, the order of the dates and the zone.
func (s *sniffer) times() error {
	if len(s.stated.Time) > 0 {
		if err := s.statedTime(); err != nil {
			return err
		}
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
	return s.epochsAgree()
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
		if err := s.clockOnly(clocks[0]); err != nil || s.format.Time[0].Part == ElapsedClock {
			return err
		}
	case len(spans) == 1:
		return s.span(spans[0])
	default:
		return s.counts()
	}
	s.besideClock(spans)
	return nil
}

// mostChoices bounds what a person is asked to choose from.
const mostChoices = 200

// askTime asks which column, or which pair of a date and a clock, is the time.
func (s *sniffer) askTime(columns, clocks []int) error {
	if len(columns)*max(1, len(clocks)) > mostChoices {
		return LineError{Line: s.format.Preamble + 1, Err: wrap(ErrHeader,
			"dates or clocks in more columns than a person can choose from")}
	}
	var choices []Choice
	for _, i := range columns {
		if len(clocks) == 0 {
			choices = append(choices, Choice{strconv.Itoa(i + 1), s.example(i)})
		}
		for _, k := range clocks {
			choices = append(choices, Choice{strconv.Itoa(i+1) + "+" + strconv.Itoa(k+1),
				s.example(i) + ", " + s.example(k)})
		}
	}
	s.ask(AskTime, choices, "Several columns hold dates or clocks. Which of them says when a row was written?")
	return nil
}

// stated takes the columns of an answer; what they hold is seen from their cells.
func (s *sniffer) statedTime() error {
	s.format.Time = append([]TimeColumn(nil), s.stated.Time...)
	for k := range s.format.Time {
		t := &s.format.Time[k]
		i, err := s.find(t.Column)
		if err != nil {
			return err
		}
		t.Column = s.heading(i)
		if t.Part == 0 {
			t.Part = map[class]Part{classBoth: DateAndClock, classDate: Date, classClock: Clock,
				classSpan: ElapsedClock}[s.cols[i].class]
		}
		if t.Part == 0 || len(s.cols[i].values) == 0 {
			return LineError{Line: s.format.Preamble + 1, Column: short(s.cols[i].name), Err: wrap(ErrHeader,
				"no column of dates or clocks")}
		}
	}
	s.half()
	return nil
}

// dateColumn is the column in which the date stands, or the clock where there is no date.
func (s *sniffer) dateColumn() int {
	found := -1
	for _, t := range s.format.Time {
		switch {
		case t.Part == DateAndClock || t.Part == Date:
			return t.Column.Number - 1
		case t.Part == Clock:
			found = t.Column.Number - 1
		}
	}
	return max(found, 0)
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
		if c.class != classNumber || !(strings.HasPrefix(name, "time") || strings.HasPrefix(name, "clock") ||
			strings.HasPrefix(name, "hhmm") || name == "zeit") {
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
