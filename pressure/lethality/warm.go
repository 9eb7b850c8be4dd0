package lethality

import (
	"strconv"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// Warm returns the temperature of a place in a jar that starts at one temperature throughout and stands in a medium
// with the given record, which runs straight between readings: a reading every step from the first of the medium on,
// and one at its end. Other samplings of the same straight lines give the same answer. Duhamel's integral over the
// double series, each part carried from step to step exactly, within 1e-6 K. The step must be 0.0005 or more of the
// Fourier number α·step/length², length the smaller of radius and half height, about 5 s for a pint; otherwise, or as
// for Factors, a RangeError, as is a record of so many readings that the answer would take more than about a third of
// a second. A reading that follows a bend of the medium's line sooner than that may be off by what the medium does in
// the meantime.
func (c Cylinder) Warm(start units.Temperature, medium series.Series[units.Temperature], at Point, step time.Duration) (series.Series[units.Temperature], error) {
	var none series.Series[units.Temperature]
	if err := c.checkRun(start, medium, at); err != nil {
		return none, err
	}
	least := max(c.fourier(0.0005), medium.Span()/1_000_000)
	if err := units.CheckDuration("step", step, least, longest/4); err != nil {
		return none, err
	}
	return c.warm(start, medium, at, step, max(least, min(step, time.Minute, soonest(medium, step))))
}

// soonest is the least time from the start, or from a bend of the medium's line, to the next reading; a bend on a
// reading counts a whole step.
func soonest(medium series.Series[units.Temperature], step time.Duration) time.Duration {
	first, _ := medium.First()
	last, _ := medium.Last()
	least := min(step, medium.Span())
	for i := 1; i < medium.Len()-1; i++ {
		bend, _ := medium.At(i)
		least = min(least, step-(bend.At-first.At)%step, last.At-bend.At)
	}
	return least
}

// mostWork is how many parts may be carried on in one call, about a third of a second.
const mostWork = 300_000_000

// warm is Warm with the parts that outlive a memory.
func (c Cylinder) warm(start units.Temperature, medium series.Series[units.Temperature], at Point, step, memory time.Duration) (series.Series[units.Temperature], error) {
	m := c.solid(at).modes(memory.Seconds())
	first, _ := medium.First()
	last, _ := medium.Last()
	here := first.Value.Celsius()
	out := make([]series.Reading[units.Temperature], 1, int(medium.Span()/step)+3)
	out[0] = series.Reading[units.Temperature]{At: first.At, Value: start}
	now, next := first.At, min(first.At+step, last.At)
	for i := 1; i < medium.Len(); i++ {
		to, _ := medium.At(i)
		end := to.Value.Celsius()
		slope := (end - here) / (to.At - now).Seconds()
		if i == 1 {
			m.start(here-start.Celsius(), slope)
		}
		m.bend(slope)
		from, base := now, here
		for now < to.At {
			if m.work > mostWork {
				return series.Series[units.Temperature]{}, units.RangeError{
					What: "parts of the series carried on for this step and these readings",
					Got:  strconv.Itoa(m.work), High: strconv.Itoa(mostWork),
				}
			}
			until := min(next, to.At)
			m.advance(until - now)
			now = until
			if now < next {
				continue
			}
			level := base + float64(slope*(now-from).Seconds())
			out = append(out, series.Reading[units.Temperature]{At: now, Value: units.Celsius(level - m.behind())})
			next = min(next+step, last.At)
		}
		here = end
	}
	return series.New(out)
}

func (c Cylinder) checkRun(start units.Temperature, medium series.Series[units.Temperature], at Point) error {
	if err := c.check(at); err != nil {
		return err
	}
	if err := units.CheckTemperature("start", start, units.Celsius(-1), hottest); err != nil {
		return err
	}
	if medium.Len() == 0 {
		return series.ErrEmpty
	}
	low, _ := medium.Min()
	high, _ := medium.Max()
	if err := units.CheckTemperature("medium", low.Value, units.Celsius(-1), hottest); err != nil {
		return err
	}
	return units.CheckTemperature("medium", high.Value, units.Celsius(-1), hottest)
}

// fourier is the time of a Fourier number on the smaller of radius and half height.
func (c Cylinder) fourier(fo float64) time.Duration {
	length := units.Float(min(c.Radius, c.Height/2), units.Metre)
	return time.Duration(fo * float64(length*length) / units.Float(c.Diffusivity, units.SquareMetrePerSecond) * float64(time.Second))
}
