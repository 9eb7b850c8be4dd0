package series

import (
	"strconv"
	"strings"
	"time"

	"example.org/lakelarder/units"
)

// timer reads the time of a row from the columns that make it.
type timer struct {
	columns []timeCell
	order   DateOrder
	strict  bool // dates in ISO 8601 only, no AM or PM
	comma   bool // counts have decimal commas
	zone    zone

	counted bool // an elapsed column is the time
	clocked bool // and, or, a clock is
	shape   shape
	began   bool
	zero    int64 // nanoseconds since 1970 of the first row's clock
	count   int64 // the first row's count
	drift   int64 // what the clock has jumped against the count so far
	sample  string
	letters string // for a zone, behind every clock
	oneDate int64
	grain   int64  // of the clock: a second, a minute or a day
	date    string // how the date of the row before is written, where a blank or T and a clock follow it
	dayOf   stamp  // and which day it is
}

type timeCell struct {
	index int
	name  string
	part  Part
	unit  int64
}

// at returns the time of a row: what the elapsed column counts, else what has passed by the clock since the first row. cell is the index of the
// cell at fault.
func (t *timer) at(cells []string) (at int64, cell int, err error) {
	var s stamp
	var count int64
	for i := range t.columns {
		c := &t.columns[i]
		text := cells[c.index]
		if text == "" {
			return 0, c.index, ErrMissing
		}
		if c.part == Elapsed || c.part == ElapsedClock {
			count, err = t.elapsed(text, c)
		} else {
			err = t.clock(&s, text, c)
		}
		if err != nil {
			return 0, c.index, err
		}
	}
	first := t.columns[0].index
	if !t.clocked {
		return count, first, nil
	}
	now, err := t.moment(s, cells[first])
	if err != nil {
		return 0, first, err
	}
	if !t.began {
		t.began, t.zero, t.count, t.sample = true, now, count, strings.Clone(cells[first])
	}
	since, ok := minus(now, t.zero)
	if !ok {
		return 0, first, units.RangeError{What: "time", Got: short(cells[first]), High: "292 years after the first"}
	}
	if t.counted {
		return count, first, t.agree(since, count)
	}
	return since, first, nil
}

// follow returns the fault of a time after that of the reading before, with what may help.
func (t *timer) follow(last, at int64) error {
	err := order(last, at)
	if err == ErrNegative && last >= 0 && t.clocked && !t.counted {
		err = ErrBackward
	}
	switch {
	case err != ErrBackward || !t.clocked || t.counted:
		return err
	case t.shape&hasDate == 0:
		return wrap(err, "a record that runs past midnight needs dates, as in 2026-08-01 21:05")
	case last-at <= hour && t.zone.location == nil && t.shape&hasOffset == 0 && !t.strict:
		return wrap(err, "where summer time ends here, state the zone of the clock")
	}
	return err
}

func minus(a, b int64) (int64, bool) {
	d := a - b
	return d, (a >= b) == (d >= 0)
}

// moment returns a stamp as nanoseconds since 1970, or since midnight for a clock without a date.
func (t *timer) moment(s stamp, text string) (int64, error) {
	if t.began && s.shape != t.shape {
		return 0, wrap(ErrNotAClock, "the rows before are written as "+short(t.sample))
	}
	if t.began && s.zone != t.letters {
		return 0, wrap(ErrAmbiguous, "the clock changes from "+t.letters+" to "+s.zone)
	}
	t.shape, t.letters = s.shape, s.zone
	if t.order == OneDate && s.guessed {
		if t.began && s.day != t.oneDate {
			return 0, wrap(ErrNotAClock, "a second date; state whether the day or the month comes first")
		}
		t.oneDate, s.day = s.day, 0
	}
	if s.year != 0 && (s.year < 1900 || s.year > 2200) {
		return 0, units.RangeError{What: "time", Got: short(text), High: "292 years after the first"}
	}
	now := s.day*day + s.clock
	if s.shape&hasOffset != 0 {
		return now - s.offset*second, nil
	}
	if s.shape&hasDate != 0 && t.order != OneDate {
		return t.zone.instant(now)
	}
	return now, nil
}

// clock adds what one cell says to the stamp.
func (t *timer) clock(s *stamp, text string, c *timeCell) error {
	switch c.part {
	case DateAndClock, Date, Clock:
		one, ok := t.stamp(text)
		if !ok && c.part == Clock && (len(text) == 4 || len(text) == 6) && leadingDigits(text) == len(text) {
			_, ok = one.readCompact(text, len(text))
		}
		want := hasDate | hasClock
		if c.part == Date {
			want = hasDate
		} else if c.part == Clock {
			want = hasClock
		}
		if !ok || one.shape&(hasDate|hasClock) != want || t.strict && !isoStamp(text, one) {
			return t.notAClock(one, ok)
		}
		if one.shape&hasDate != 0 {
			s.day, s.year, s.guessed = one.day, one.year, one.guessed
		}
		s.clock, s.offset, s.shape = s.clock+one.clock, s.offset+one.offset, s.shape|one.shape
		if one.zone != "" {
			s.zone = strings.Clone(one.zone)
		}
		if t.grain == 0 || one.shape&hasClock != 0 && !t.began {
			t.grain = grainOf(text, one)
		}
		return nil
	case HalfDay:
		half, size := halfDay(text)
		if size != len(text) || s.shape&hasHalf != 0 || !s.half(half, int(s.clock/hour)) {
			return wrap(ErrNotAClock, "expected AM or PM beside a clock of 1 to 12 hours")
		}
		s.shape |= hasHalf
		return nil
	}
	return t.number(s, text, c)
}

// stamp is readStamp, which need not read the date again while the day is the same.
func (t *timer) stamp(text string) (stamp, bool) {
	if n := len(t.date); n > 0 && len(text) > n+3 && text[:n] == t.date && (text[n] == ' ' || text[n] == 'T') {
		s := t.dayOf
		if rest, ok := s.readClock(text[n+1:]); ok && s.readTail(rest) {
			return s, true
		}
	}
	s, ok := readStamp(text, t.order)
	n := strings.IndexAny(text, " T")
	if ok && s.shape&(hasDate|hasClock) == hasDate|hasClock && n >= 8 && strings.IndexByte(text[n:], ':') > 0 {
		if day, ok := readStamp(text[:n], t.order); ok && day.shape == hasDate && day.day == s.day {
			t.date, t.dayOf = text[:n], day
		}
	}
	return s, ok
}

func grainOf(text string, s stamp) int64 {
	switch {
	case s.shape&hasClock == 0:
		return day
	case strings.Count(text, ":") > 1:
		return second
	}
	return minute
}

// number adds a part that is written as a bare number.
func (t *timer) number(s *stamp, text string, c *timeCell) error {
	if t.comma {
		text = strings.Replace(text, ",", ".", 1)
	}
	if c.part == Second || c.part == Epoch {
		ns, err := elapsedTime(text, time.Duration(c.unit))
		if err != nil || c.part == Second && (ns < 0 || ns >= minute) {
			return wrap(ErrNotAClock, "expected a count of "+c.part.String())
		}
		s.clock += ns
		if c.part == Epoch {
			s.shape = hasDate | hasClock | hasOffset
		}
		return nil
	}
	v, err := strconv.Atoi(text)
	limits := [...][2]int{DayCount: {-100_000, 100_000}, Year: {1970, 2200}, Month: {1, 12}, Day: {1, 31}, Hour: {0, 23}, Minute: {0, 59}}[c.part]
	if err != nil || v < limits[0] || v > limits[1] {
		return wrap(ErrNotAClock, "expected a whole number for the "+c.part.String())
	}
	switch c.part {
	case DayCount:
		s.day, s.shape = int64(v), s.shape|hasDate
	case Year:
		s.year = v
	case Month:
		s.day = int64(v)
	case Day:
		if !s.setDate(s.year, int(s.day), v) {
			return wrap(ErrNotAClock, "no such day")
		}
	case Hour:
		s.clock, s.shape = int64(v)*hour, s.shape|hasClock
	case Minute:
		s.clock += int64(v) * minute
	}
	return nil
}

// isoStamp holds a stamp to the plain form: no AM or PM, a year of four digits first and hyphens, T only with seconds.
func isoStamp(text string, s stamp) bool {
	if s.shape&hasHalf != 0 || s.shape&hasDate != 0 && (leadingDigits(text) != 4 || len(text) < 10 || text[4] != '-' || text[7] != '-') {
		return false
	}
	i := strings.IndexByte(text, ':')
	return i >= 0 && i+3 <= len(text) && leadingDigits(text[i+1:]) == 2
}

func (t *timer) notAClock(s stamp, ok bool) error {
	switch {
	case t.began:
		return wrap(ErrNotAClock, "the rows before are written as "+short(t.sample))
	case t.strict:
		return wrap(ErrNotAClock, "expected 21:05, 21:05:30, 2026-08-01 21:05:00 or RFC 3339")
	case !ok && s.guessed && t.order == 0:
		return wrap(ErrNotAClock, "the order of day, month and year is not stated")
	}
	return wrap(ErrNotAClock, "expected a date or a clock such as 2026-08-01 21:05")
}

// elapsed reads a count.
func (t *timer) elapsed(text string, c *timeCell) (int64, error) {
	if c.part == ElapsedClock {
		if ns, ok := readSpan(text); ok {
			return ns, nil
		}
		return 0, wrap(ErrNotAClock, "expected an elapsed time such as 26:05:30")
	}
	if t.comma {
		text = strings.Replace(text, ",", ".", 1)
	}
	return elapsedTime(text, time.Duration(c.unit))
}

// agree holds a count against the clock beside it: they may part by what a zone steps, and by the grain of the clock.
func (t *timer) agree(since, count int64) error {
	apart := since - (count - t.count) - t.drift
	slack := 2*t.grain + (count-t.count)/500
	for _, step := range []int64{0, hour, -hour, hour / 2, -hour / 2} {
		if d := apart - step; d >= -slack && d <= slack {
			if step != 0 {
				t.drift += step
			}
			if t.drift > hour || t.drift < -hour {
				break
			}
			return nil
		}
	}
	return wrap(ErrContradiction, "the clock says "+time.Duration(since).String()+" since the first row, the count "+
		time.Duration(count-t.count).String())
}
