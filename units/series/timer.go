package series

import (
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

// at returns the time of a row: what the elapsed column counts, else what has passed by the clock since the
// first row. cell is the index of the cell at fault.
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
	if number, ok := expanded(text); ok && !t.strict {
		text = number
	}
	return elapsedTime(text, time.Duration(c.unit))
}

// agree holds a count against the clock beside it: they may part by what a zone steps, and by the grain of the clock.
func (t *timer) agree(since, count int64) error {
	apart := since - (count - t.count) - t.drift
	if t.shape&hasDate == 0 { // a clock without a date says nothing of whole days
		if apart %= day; apart > day/2 {
			apart -= day
		} else if apart < -day/2 {
			apart += day
		}
	}
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
