package lethality

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Value is the pasteurisation value of a record: what lay within the printed span of the target counts, what lay
// outside is stated apart.
type Value struct {
	P            time.Duration `wire:"always"` // minutes at the reference temperature
	Reductions   Logs          `wire:"always"` // by the target's six for its time
	Span         Span          // of the printed table
	Below, Above Outside       // of the span
	LongestGap   series.Stretch
	Cautions     []cite.Caution
	Citation     cite.Citation
}

// Outside is a part of a record for which the target's table has no row.
type Outside struct {
	Time time.Duration // how long the record was there, to the nearest nanosecond
	P    time.Duration // what the formula would make of it, which counts for nothing; the longest Duration stands for that and more
}

// Value returns what a record was worth, exact on straight lines, which are split where they cross the reference
// temperature or an end of the printed span; P and Reductions are rounded down and count nothing outside it: a food
// at 40 °C for two weeks grows Listeria. The record must be of the coldest spot, with a reading and none above 150
// °C; the heat must be stated, otherwise a RangeError. Spores in dry smoke are a DrySmokeError: there is no figure
// for them.
func (p Pasteurisation) Value(record series.Series[units.Temperature], heat Heat) (Value, error) {
	if p.sixD == 0 {
		return Value{}, units.UnsetError{What: "pasteurisation target"}
	}
	if err := heats.Check(heat); err != nil {
		return Value{}, err
	}
	if p.spores && heat == DrySmoke {
		return Value{}, DrySmokeError{p.name, drySmokeCitation()}
	}
	if err := checkRecord(record); err != nil {
		return Value{}, err
	}
	z := p.zones()
	var sums sums
	a, _ := record.First()
	for i := 1; i < record.Len(); i++ {
		b, _ := record.At(i)
		z.add(&sums, float64(b.At-a.At), quanta(a.Value), quanta(b.Value))
		a = b
	}
	return p.value(record, heat, sums)
}

// zones are where the rate has one z and where it counts: below the span, up to the reference, from it up, above the
// span.
type zones struct {
	low, high scale
	ends      [3]int64
}

func (p Pasteurisation) zones() zones {
	span := p.Span()
	return zones{
		low: Reference{p.reference, p.below}.scale(), high: Reference{p.reference, p.above}.scale(),
		ends: [3]int64{quanta(span.From), quanta(p.reference), quanta(span.To)},
	}
}

// sums are nanoseconds, of P and of time, in each zone.
type sums struct{ p, time [4]float64 }

// add adds a straight line of dt from one temperature to another. The ends of the span belong to it.
func (z zones) add(s *sums, dt float64, from, to int64) {
	if from > to {
		from, to = to, from // the same integral
	}
	for zone := range s.p {
		low, high := from, to
		if zone > 0 {
			low = max(low, z.ends[zone-1])
		}
		if zone < len(z.ends) {
			high = min(high, z.ends[zone])
		}
		part := dt
		switch {
		case from == to && !z.holds(zone, from) || from < to && low >= high:
			continue
		case from < to:
			part = float64(dt * (float64(high-low) / float64(to-from)))
		}
		rates := z.low
		if zone > 1 {
			rates = z.high
		}
		s.time[zone] += part
		s.p[zone] += rates.over(part, low, high)
	}
}

// holds reports in which zone a level line lies.
func (z zones) holds(zone int, q int64) bool {
	switch zone {
	case 0:
		return q < z.ends[0]
	case 1:
		return q >= z.ends[0] && q < z.ends[1]
	case 2:
		return q >= z.ends[1] && q <= z.ends[2]
	}
	return q > z.ends[2]
}

func (p Pasteurisation) value(record series.Series[units.Temperature], heat Heat, s sums) (Value, error) {
	out := Value{Span: p.Span(), LongestGap: record.LongestGap(), Cautions: p.cautions(heat), Citation: p.Citation()}
	var err error
	if out.P, err = floored("P", s.p[1]+s.p[2]); err != nil {
		return Value{}, err
	}
	out.Below = Outside{Time: time.Duration(s.time[0] + 0.5), P: beyond(s.p[0])}
	out.Above = Outside{Time: time.Duration(s.time[3] + 0.5), P: beyond(s.p[3])}
	if out.Below.Time > 0 {
		out.Cautions = append(out.Cautions, cite.Caution{
			ID: "lethality.below-the-table",
			Text: "The record was colder than the printed table for a time. " +
				"Nothing was counted there, where germs may grow.",
			Deciding: true, Citation: p.Citation(),
		})
	}
	if out.Above.Time > 0 {
		out.Cautions = append(out.Cautions, cite.Caution{
			ID:       "lethality.above-the-table",
			Text:     "The record was hotter than the printed table for a time. Nothing was counted there.",
			Citation: p.Citation(),
		})
	}
	out.Reductions, err = reductions(6*min(out.P, longest/6), p.sixD)
	return out, err
}

// beyond is nanoseconds of what counts for nothing.
func beyond(ns float64) time.Duration {
	d, err := floored("P", ns)
	if err != nil {
		return longest
	}
	return d
}
