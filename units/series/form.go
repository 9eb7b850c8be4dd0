package series

import (
	"strconv"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// form is a Series as it leaves the process.
type form[T Value] struct {
	Origin   Origin
	Readings []formReading[T]
}

// formReading is a Reading of which neither a time nor a value of zero is left out.
type formReading[T Value] struct {
	At    time.Duration `wire:"required"`
	Value T             `wire:"required"`
}

// MarshalJSON writes the readings in their order, each with its time and value, and the origin where there is one. An empty
// series has no readings. Exact, but for the zone of a clock, which becomes the offset that it had at time zero.
func (s Series[T]) MarshalJSON() ([]byte, error) {
	f := form[T]{Origin: s.Origin(), Readings: make([]formReading[T], s.Len())}
	for i := range f.Readings {
		r, _ := s.At(i)
		f.Readings[i] = formReading[T](r)
	}
	return wire.Marshal(f)
}

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError, and readings that New does
// not take a ReadingError. On an error s keeps its value.
func (s *Series[T]) UnmarshalJSON(data []byte) error {
	var f form[T]
	if err := wire.Unmarshal(data, &f); err != nil {
		return err
	}
	if f.Readings == nil {
		return units.UnsetError{What: "readings of the series"}
	}
	readings := make([]Reading[T], len(f.Readings))
	for i, r := range f.Readings {
		readings[i] = Reading[T](r)
	}
	read, err := Series[T]{}.Append(readings...)
	if err != nil {
		return err
	}
	read.origin = f.Origin.kept()
	*s = read
	return nil
}

// runningForm is a Running as it leaves the process.
type runningForm[T Value] struct {
	Limit      T   `wire:"required"`
	Readings   int `wire:"always"`
	Last       units.Stated[formReading[T]]
	From       time.Duration
	Total      time.Duration
	Longest    Stretch
	LongestGap Stretch
}

// MarshalJSON writes what was seen so far: the limit, the last reading, the times and stretches. Exact. A Running not made
// by Watch is a units.UnsetError.
func (r Running[T]) MarshalJSON() ([]byte, error) {
	if !r.watching {
		return nil, units.UnsetError{What: "limit of the record"}
	}
	f := runningForm[T]{Limit: r.Limit(), Readings: r.n, Total: r.Total(), Longest: r.longest, LongestGap: r.longestGap}
	if last, ok := r.Last(); ok {
		f.Last, f.From = units.State(formReading[T](last)), r.Current().From
	}
	return wire.Marshal(f)
}

// UnmarshalJSON reads what MarshalJSON writes, strictly, and goes on as if it had not been away: anything else is a
// units.FieldError, and a RangeError or a ReadingError what no readings lead to. On an error r keeps its value.
func (r *Running[T]) UnmarshalJSON(data []byte) error {
	var f runningForm[T]
	if err := wire.Unmarshal(data, &f); err != nil {
		return err
	}
	read, err := Watch(f.Limit)
	if err != nil {
		return err
	}
	if f.Last.Given != (f.Readings > 0) || f.Readings < 0 {
		return units.RangeError{What: "readings so far", Got: strconv.Itoa(f.Readings), Low: "0"}
	}
	if !f.Last.Given {
		if f != (runningForm[T]{Limit: f.Limit}) {
			return units.UnsetError{What: "last reading"}
		}
		*r = read
		return nil
	}
	last := f.Last.Value
	q, err := Reading[T](last).follow(-1)
	if err != nil {
		return ReadingError{Index: f.Readings - 1, At: last.At, Err: err}
	}
	for _, part := range [...]struct {
		what string
		s    Stretch
	}{
		{"total", Stretch{To: f.Total}}, {"open stretch", Stretch{From: f.From, To: last.At}},
		{"longest stretch", f.Longest}, {"longest gap", f.LongestGap},
	} {
		if err := units.CheckDuration("start of the "+part.what, part.s.From, 0, last.At); err != nil {
			return err
		}
		if err := units.CheckDuration("end of the "+part.what, part.s.To, part.s.From, last.At); err != nil {
			return err
		}
	}
	read.n, read.at, read.q, read.from = f.Readings, int64(last.At), q, int64(f.From)
	read.total, read.longest, read.longestGap = int64(f.Total), f.Longest, f.LongestGap
	*r = read
	return nil
}
