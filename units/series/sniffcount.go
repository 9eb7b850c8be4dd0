package series

import (
	"strconv"
	"strings"
	"time"
)

// elapsedUnit reads the unit of a count of time out of a heading: in brackets, after a comma, as its last word
// or as all of it.
func elapsedUnit(heading string) (unit time.Duration, base string, ok bool) {
	lower := strings.ToLower(strings.TrimSpace(heading))
	if open := strings.LastIndexAny(lower, "(["); open >= 0 {
		inside := strings.Trim(lower[open:], "()[] ")
		if unit = timeUnit(inside); unit != 0 {
			return unit, strings.TrimSpace(lower[:open]), true
		}
		return 0, lower, false
	}
	words := strings.FieldsFunc(lower, func(r rune) bool {
		return r == ' ' || r == ',' || r == '_' || r == '-' ||
			r == '/'
	})
	if len(words) == 0 {
		return 0, "", false
	}
	last := words[len(words)-1]
	unit = timeUnit(last)
	base = strings.Join(words[:len(words)-1], " ")
	if unit == 0 || len(words) == 1 && len(last) < 3 {
		return 0, lower, false
	}
	return unit, base, true
}

// counts finds a time that is counted: since 1970, or from the start in a unit that the heading names or somebody must.
func (s *sniffer) counts() error {
	for i := range s.cols {
		if unit := s.epoch(i); unit != "" {
			s.time(i, Epoch, unit)
			s.because("Time", "the numbers are %s since 1970", unit)
			return nil
		}
	}
	best, unit := -1, time.Duration(0)
	for i, c := range s.cols {
		u, base, ok := elapsedUnit(c.name)
		if c.class != classNumber || !ok || s.rising(i) < 0.6 {
			continue
		}
		if best < 0 || isElapsedName(base) && u != 0 {
			if _, was, _ := elapsedUnit(s.nameOf(best)); best < 0 || !isElapsedName(was) {
				best, unit = i, u
			}
		}
	}
	if best >= 0 {
		s.time(best, Elapsed, unitName(unit))
		return nil
	}
	for i, c := range s.cols {
		if c.class != classNumber || s.rising(i) < 0.6 {
			continue
		}
		name := strings.ToLower(c.name)
		if s.format.Header == 0 || isElapsedName(name) || saysTime(name) {
			return s.askTimeUnit(i)
		}
	}
	return LineError{Line: s.format.Preamble + 1, Err: wrap(ErrHeader, "no column of the time; "+listed(s.nameList()))}
}

// saysTime reports a heading of the time, whatever it counts: the days of a spreadsheet or of a year among it.
func saysTime(name string) bool {
	for _, word := range []string{"time", "elapsed", "date", "stamp", "doy", "julian", "jday", "serial day",
		"zeit", "clock"} {
		if strings.Contains(name, word) {
			return true
		}
	}
	return false
}

func (s *sniffer) nameOf(i int) string {
	if i < 0 {
		return ""
	}
	return s.cols[i].name
}

func (s *sniffer) nameList() []string {
	if s.format.Header == 0 {
		return nil
	}
	var names []string
	for _, c := range s.cols {
		names = append(names, c.name)
	}
	return names
}

// askTimeUnit asks what a count without a unit counts. It must rise whatever it counts.
func (s *sniffer) askTimeUnit(i int) error {
	if s.rising(i) < 1 {
		return LineError{Line: s.format.Preamble + s.format.Header + 1, Column: short(s.cols[i].name),
			Err: wrap(ErrBackward, "the count of the time starts again or repeats, and the file does not say how long it stood")}
	}
	var choices []Choice
	first, last := s.cols[i].values[0], s.cols[i].values[len(s.cols[i].values)-1]
	for _, unit := range []string{"ms", "s", "min", "h", "d"} {
		choices = append(choices, Choice{unit, short(first + " … " + last + " " + unit)})
	}
	s.ask(AskTimeUnit, choices, "Column %d %q rises from row to row. In which unit does it count the time?",
		i+1, short(s.cols[i].name))
	s.format.Time = []TimeColumn{{Column: s.heading(i), Part: Elapsed}}
	return nil
}

// rising is the share of steps upward, from 0 to 1.
func (s *sniffer) rising(i int) float64 {
	var before float64
	up, n := 0, 0
	for k, v := range s.cols[i].values {
		x, err := strconv.ParseFloat(strings.Replace(v, ",", ".", 1), 64)
		if err != nil {
			return 0
		}
		if k > 0 {
			n++
			if x > before {
				up++
			}
		}
		before = x
	}
	if n == 0 {
		return 1
	}
	return float64(up) / float64(n)
}

// epoch reports a column of seconds, or parts of them, since 1970: every number falls in the years 2000 to 2100.
func (s *sniffer) epoch(i int) string {
	c := s.cols[i]
	if c.class != classNumber || len(c.values) == 0 {
		return ""
	}
	for _, u := range []struct {
		name string
		size float64
	}{{"s", 1}, {"ms", 1e3}, {"us", 1e6}} {
		all := true
		for _, v := range c.values {
			x, err := strconv.ParseFloat(strings.Replace(v, ",", ".", 1), 64)
			all = all && err == nil && x/u.size >= 946684800 && x/u.size < 4102444800
		}
		if all && (s.rising(i) > 0 || strings.Contains(strings.ToLower(c.name), "time") || len(c.values) == 1 &&
			s.format.Header == 0) {
			return u.name
		}
	}
	return ""
}

// zone reads an offset out of the heading of the time.
func (s *sniffer) zone() {
	if s.stated.Zone != "" || len(s.format.Time) == 0 || !s.clockWithoutOffset() {
		return
	}
	for _, t := range s.format.Time {
		name := t.Column.Name
		for _, word := range []string{"GMT", "UTC"} {
			i := strings.Index(name, word)
			if i < 0 {
				continue
			}
			rest := strings.TrimLeft(name[i+3:], " ")
			end := 0
			for end < len(rest) && strings.IndexByte("+-:0123456789", rest[end]) >= 0 {
				end++
			}
			if _, ok := readOffset(rest[:end]); ok {
				s.format.Zone = rest[:end]
			} else if end == 0 {
				s.format.Zone = "UTC"
			}
			s.because("Zone", "the heading of the time says %s", short(name))
			return
		}
	}
}

func (s *sniffer) clockWithoutOffset() bool {
	for _, t := range s.format.Time {
		if t.Part != DateAndClock && t.Part != Date {
			continue
		}
		i := t.Column.Number - 1
		if i < 0 || i >= len(s.cols) || len(s.cols[i].values) == 0 {
			return false
		}
		for _, order := range []DateOrder{YearFirst, DayFirst, MonthFirst} {
			if st, ok := readStamp(s.cols[i].values[0], order); ok {
				return st.shape&hasOffset == 0
			}
		}
	}
	return false
}
