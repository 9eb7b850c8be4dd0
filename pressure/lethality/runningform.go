package lethality

import (
	"math"
	"strconv"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// runningForm is a Running as it leaves the process. Rate and Sum are hexadecimal, so that they come back to the last
// bit and F goes on as if the Running had not been away.
type runningForm struct {
	Reference  Reference `wire:"required"`
	Readings   int       `wire:"always"`
	At         time.Duration
	Last       units.Temperature
	Rate, Sum  string
	LongestGap series.Stretch
}

// MarshalJSON writes what was seen so far, exactly. A Running not made by Start is a units.UnsetError.
func (r Running) MarshalJSON() ([]byte, error) {
	if r.scale.perQuantum == 0 {
		return nil, units.UnsetError{What: "reference"}
	}
	f := runningForm{Reference: r.reference, Readings: r.n, LongestGap: r.gap}
	if r.n > 0 {
		f.At, f.Last = time.Duration(r.walk.at), units.FromAbsoluteZero(units.TemperatureChange(r.walk.q))
		f.Rate, f.Sum = hexadecimal(r.walk.rate), hexadecimal(r.walk.sum)
	}
	return wire.Marshal(f)
}

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError, and a RangeError or a
// units.ParseError what no readings lead to. On an error r keeps its value.
func (r *Running) UnmarshalJSON(data []byte) error {
	var f runningForm
	if err := wire.Unmarshal(data, &f); err != nil {
		return err
	}
	read, err := Start(f.Reference)
	if err != nil {
		return err
	}
	if f.Readings == 0 {
		if f != (runningForm{Reference: f.Reference}) {
			return units.UnsetError{What: "number of readings"}
		}
		*r = read
		return nil
	}
	if read.walk, err = f.walk(read.scale); err != nil {
		return err
	}
	read.n, read.gap = f.Readings, f.LongestGap
	*r = read
	return nil
}

// walk is the integral so far, checked.
func (f runningForm) walk(s scale) (walk, error) {
	if f.Readings < 0 {
		return walk{}, units.RangeError{What: "number of readings", Got: strconv.Itoa(f.Readings), Low: "0"}
	}
	if err := units.CheckDuration("time of the last reading", f.At, 0, longest); err != nil {
		return walk{}, err
	}
	if err := units.CheckTemperature("last reading", f.Last, units.Kelvin(0.000001), hottest); err != nil {
		return walk{}, err
	}
	if err := units.CheckDuration("end of the longest gap", f.LongestGap.To, f.LongestGap.From, f.At); err != nil {
		return walk{}, err
	}
	if err := units.CheckDuration("start of the longest gap", f.LongestGap.From, 0, f.At); err != nil {
		return walk{}, err
	}
	w := walk{at: int64(f.At), q: quanta(f.Last)}
	var err error
	if w.rate, err = plainFloat("rate", f.Rate); err != nil {
		return walk{}, err
	}
	if w.sum, err = plainFloat("sum", f.Sum); err != nil {
		return walk{}, err
	}
	if fair := s.rate(w.q); math.Abs(w.rate-fair) > 1e-9*fair {
		return walk{}, units.RangeError{
			What: "lethal rate at the last reading", Got: short(w.rate), Low: short(fair), High: short(fair),
		}
	}
	_, err = floored("F", w.sum)
	return w, err
}

func hexadecimal(x float64) string { return strconv.FormatFloat(x, 'x', -1, 64) }

// plainFloat reads what hexadecimal writes, zero or more.
func plainFloat(what, s string) (float64, error) {
	x, err := strconv.ParseFloat(s, 64)
	if err != nil || hexadecimal(x) != s || !(x >= 0) || math.IsInf(x, 0) {
		return 0, units.ParseError{
			Quantity: what, Text: s, Reason: "expected a hexadecimal number, as a saved watch has it",
		}
	}
	return x, nil
}
