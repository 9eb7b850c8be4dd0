package series

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Value is what a logger or a scale records.
type Value interface {
	units.Temperature | units.Pressure | units.Mass | units.Ratio
}

// Reading is one value and its time since the start of the record.
type Reading[T Value] struct {
	At    time.Duration
	Value T
}

// MarshalJSON writes the reading with its time and its value, each with its unit.
func (r Reading[T]) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *Reading[T]) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// quantaOf returns the value's whole number, and false for a temperature that is not set.
func quantaOf[T Value](v T) (int64, bool) {
	switch v := any(v).(type) {
	case units.Temperature:
		return int64(v.AboveAbsoluteZero()), v.IsSet()
	case units.Pressure:
		return int64(v), true
	case units.Mass:
		return int64(v), true
	case units.Ratio:
		return int64(v), true
	}
	return 0, false
}

// ofQuanta is the way back.
func ofQuanta[T Value](q int64) (v T) {
	switch p := any(&v).(type) {
	case *units.Temperature:
		*p = units.FromAbsoluteZero(units.TemperatureChange(q))
	case *units.Pressure:
		*p = units.Pressure(q)
	case *units.Mass:
		*p = units.Mass(q)
	case *units.Ratio:
		*p = units.Ratio(q)
	}
	return v
}

// follow checks that a reading may come after one at the given time; a negative time is none.
func (r Reading[T]) follow(before int64) (q int64, err error) {
	q, ok := quantaOf(r.Value)
	if fault := order(before, int64(r.At)); fault != nil {
		return 0, fault
	}
	if !ok {
		return 0, ErrUnset
	}
	return q, nil
}

// order returns the fault of a time after another; a negative time before is none. Times from
// zero up keep every difference within int64.
func order(before, at int64) error {
	switch {
	case at < 0:
		return ErrNegative
	case at == before:
		return ErrRepeated
	case at < before:
		return ErrBackward
	}
	return nil
}

func text[T Value](v T) string { return any(v).(interface{ String() string }).String() }
