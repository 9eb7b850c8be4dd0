package series

import (
	"strconv"
	"strings"
	"time"
)

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
	limits := [...][2]int{DayCount: {-100_000, 100_000}, Year: {1970, 2200}, Month: {1, 12}, Day: {1, 31},
		Hour: {0, 23}, Minute: {0, 59}}[c.part]
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
	if s.shape&hasHalf != 0 || s.shape&hasDate != 0 && (leadingDigits(text) != 4 || len(text) < 10 ||
		text[4] != '-' || text[7] != '-') {
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
