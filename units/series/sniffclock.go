package series

import (
	"strings"
	"time"
)

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
	if from, _ := readStamp(first, 0); counts || from.clock == 0 && strings.Count(first, ":") == 2 &&
		(name == "" || counts) {
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
		if ok && isElapsedName(base) && len(c.values) > 1 && c.values[0] != c.values[len(c.values)-1] &&
			!s.leastOf(i) && !s.partOfClock(i, unit) {
			s.time(i, Elapsed, unitName(unit))
			return
		}
	}
	if len(spans) == 1 && strings.Contains(strings.ToLower(s.cols[spans[0]].name), "elapsed") {
		s.time(spans[0], ElapsedClock, "")
	}
}

// leastOf reports a column of lowest values, which "min" means beside one of highest.
func (s *sniffer) leastOf(i int) bool {
	return strings.EqualFold(s.cols[i].bare, "min") && s.named("max", "maximum") >= 0
}

// partOfClock reports a column of minutes or seconds that repeats those of the clock beside it in every row.
func (s *sniffer) partOfClock(i int, unit time.Duration) bool {
	clock := s.dateColumn()
	for _, t := range s.format.Time {
		if t.Part == Clock {
			clock = t.Column.Number - 1
		}
	}
	for _, r := range s.sheet.data {
		cells := s.sheet.rows[r].cells
		if i >= len(cells) || clock >= len(cells) || leadingDigits(cells[i]) != len(cells[i]) || len(cells[i]) == 0 || len(cells[i]) > 2 {
			return false
		}
		now, ok := readStamp(cells[clock], s.format.Order)
		if !ok || unit == 0 || now.clock/int64(unit)%60 != int64(whole(cells[i], len(cells[i]))) {
			return false
		}
	}
	return unit == time.Minute || unit == time.Second
}

func isElapsedName(base string) bool {
	switch base {
	case "uptime", "up time", "time since start", "since start", "time", "elapsed", "elapsed time", "t", "run time", "runtime", "duration", "time elapsed", "seconds",
		"minutes", "hours", "":
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
