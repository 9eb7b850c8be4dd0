package lethality

import (
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// F returns the lethality of a record against a reference, exact for a temperature that runs straight between
// readings and rounded down to the nanosecond. The record must have a reading, none above 150 °C (a
// series.ReadingError with a RangeError); the reference must be 40 to 150 °C with z of 1 to 50 K. Cold readings add
// next to nothing. It is no better than the sensor, its place and the straight lines: see Series.LongestGap.
func F(record series.Series[units.Temperature], r Reference) (Lethality, error) {
	if err := r.check(); err != nil {
		return Lethality{}, err
	}
	sum, gap, err := r.scale().integral(record)
	if err != nil {
		return Lethality{}, err
	}
	f, err := floored("F", sum)
	if err != nil {
		return Lethality{}, err
	}
	return Lethality{f, r, gap, explainsRecord()}, nil
}

// chunk is how many readings are fetched at once.
const chunk = 256

// integral is the F of a record in nanoseconds, not yet rounded, and its longest gap: walk.to from reading to
// reading, in place.
func (s scale) integral(record series.Series[units.Temperature]) (sum float64, gap series.Stretch, err error) {
	first, ok := record.First()
	if !ok {
		return 0, gap, series.ErrEmpty
	}
	at, q, limit := int64(first.At), quanta(first.Value), quanta(hottest)
	if q > limit {
		return 0, gap, tooHot(0, first)
	}
	rate, from, longest := s.rate(q), int64(0), int64(0)
	var times, values [chunk]int64
	for i := 1; ; i += chunk {
		n := record.Copy(i, times[:], values[:])
		for j, toAt := range times[:n] {
			toQ := values[j]
			if toAt-at > longest {
				from, longest = at, toAt-at
			}
			x, dt := float64(toQ-q)*s.perQuantum, float64(toAt-at)
			at, q = toAt, toQ
			if x <= flat && x >= -flat && (i+j)%fresh != 0 && toQ <= limit {
				g := taylor(x)
				sum += float64(dt * rate * g)
				rate = float64(rate * (1 + float64(x*g)))
				continue
			}
			if toQ > limit {
				reading, _ := record.At(i + j)
				return 0, gap, tooHot(i+j, reading)
			}
			sum, rate = s.afresh(x, dt, sum, rate, q)
		}
		if n < chunk {
			return sum, series.Stretch{From: time.Duration(from), To: time.Duration(from + longest)}, nil
		}
	}
}

// Parts is where the F of a record came from.
type Parts struct {
	ComeUp     time.Duration `wire:"always"` // before the hold
	Hold       time.Duration `wire:"always"`
	Cooling    time.Duration `wire:"always"` // after the hold
	Total      time.Duration `wire:"always"` // their sum
	LongestGap series.Stretch
	Cautions   []cite.Caution
}

// Divide returns what the parts of a record before, during and after a hold are worth, each exact on straight lines
// and rounded down to the nanosecond; a line that crosses an end of the hold is split there. The hold is the
// caller's: from when the pressure stood to when the heat went off. Its ends must lie within the record and not be in
// reverse; otherwise as for F.
func Divide(record series.Series[units.Temperature], r Reference, hold series.Stretch) (Parts, error) {
	if err := r.check(); err != nil {
		return Parts{}, err
	}
	if err := checkRecord(record); err != nil {
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
	parts := Parts{LongestGap: record.LongestGap(), Cautions: explainsRecord()}
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
	return float64(to-from) * portable.Exp(start) * growth(rise*(float64(to-from)/dt))
}

// checkRecord returns an error for a record without readings and for a reading beyond the model.
func checkRecord(record series.Series[units.Temperature]) error {
	if record.Len() == 0 {
		return series.ErrEmpty
	}
	for i := 0; i < record.Len(); i++ {
		if reading, _ := record.At(i); reading.Value.Above(hottest) {
			return tooHot(i, reading)
		}
	}
	return nil
}
