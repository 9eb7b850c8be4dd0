package lethality

import (
	"math"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// F returns the lethality of a record against a reference, exact for a temperature that runs straight between
// readings and rounded down to the nanosecond. The record must have a reading, none above 150 °C (a series.ReadingError with a
// RangeError); the reference must be 40 to 150 °C with z of 1 to 50 K. Cold readings add next to nothing. It is no better than the
// sensor, its place and the straight lines: see Series.LongestGap.
func F(record series.Series[units.Temperature], r Reference) (time.Duration, error) {
	if err := r.check(); err != nil {
		return 0, err
	}
	if record.Len() == 0 {
		return 0, series.ErrEmpty
	}
	s, limit := r.scale(), quanta(hottest)
	sum, rate := 0., 0.
	var at, q int64
	for i, n := 0, record.Len(); i < n; i++ {
		reading, _ := record.At(i)
		toAt, toQ := int64(reading.At), quanta(reading.Value)
		if toQ > limit {
			return 0, tooHot(i, reading)
		}
		if i > 0 {
			x := float64(toQ-q) * s.perQuantum
			g := taylor(x)
			if x > flat || x < -flat {
				g = growth(x)
			}
			sum += float64(float64(toAt-at) * rate * g)
			rate += float64(rate * float64(x*g))
		}
		if i%fresh == 0 {
			rate = s.rate(toQ)
		}
		at, q = toAt, toQ
	}
	return floored("F", sum)
}

// Parts is where the F of a record came from.
type Parts struct {
	ComeUp, Hold, Cooling time.Duration // before, during and after the hold
	Total                 time.Duration // their sum
	LongestGap            series.Stretch
}

// Divide returns what the parts of a record before, during and after a hold are worth, each exact on straight lines and rounded
// down to the nanosecond; a line that crosses an end of the hold is split there. The hold is the caller's: from when the
// pressure stood to when the heat went off. Its ends must lie within the record and not be in reverse; otherwise as for F.
func Divide(record series.Series[units.Temperature], r Reference, hold series.Stretch) (Parts, error) {
	if _, err := F(record, r); err != nil {
		return Parts{}, err
	}
	first, _ := record.First()
	last, _ := record.Last()
	if err := units.CheckDuration("start of the hold", hold.From, first.At, last.At); err != nil {
		return Parts{}, err
	}
	if err := units.CheckDuration("end of the hold", hold.To, hold.From, last.At); err != nil {
		return Parts{}, err
	}
	s := r.scale()
	edges := [...]time.Duration{first.At, hold.From, hold.To, last.At}
	var sums [3]float64
	a := first
	for i := 1; i < record.Len(); i++ {
		b, _ := record.At(i)
		for part := range sums {
			sums[part] += s.between(a, b, edges[part], edges[part+1])
		}
		a = b
	}
	parts := Parts{LongestGap: record.LongestGap()}
	for i, into := range []*time.Duration{&parts.ComeUp, &parts.Hold, &parts.Cooling} {
		f, err := floored("F", sums[i])
		if err != nil {
			return Parts{}, err
		}
		*into = f
		parts.Total += f
	}
	return parts, nil
}

// between is the integral along the part of a straight line that lies between two times.
func (s scale) between(a, b series.Reading[units.Temperature], from, to time.Duration) float64 {
	from, to = max(from, a.At), min(to, b.At)
	if from >= to {
		return 0
	}
	dt, rise := float64(b.At-a.At), float64(quanta(b.Value)-quanta(a.Value))*s.perQuantum
	start := s.exponent(quanta(a.Value)) + float64(rise*(float64(from-a.At)/dt))
	return float64(to-from) * math.Exp(start) * growth(rise*(float64(to-from)/dt))
}
