package spoilage

import (
	"math"
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Age is a record as time on ice. Used is the time in melting ice that would have
// spoiled the fish as far. It is quality, not safety: hold the same record against coldchain.Audit. Outside is
// true where the record leaves the -3 to 25 °C in which the law is trusted.
type Age struct {
	Law        Law
	MaxGap     time.Duration
	Span       time.Duration
	Used       time.Duration `wire:"always"`
	Unknown    time.Duration // in gaps longer than MaxGap: not counted in Used
	LongestGap series.Stretch
	Lowest     units.Temperature
	Highest    units.Temperature
	Outside    bool
	Citation   cite.Citation
	Cautions   []cite.Caution
}

// MarshalJSON writes the age as an app shows it.
func (a Age) MarshalJSON() ([]byte, error) { return wire.Marshal(a) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (a *Age) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, a) }

// IceDays returns the time on ice that a record of the temperature inside the fish is worth, the integral
// of the spoilage rate over straight lines between readings. Gaps longer than maxGap are reported and not
// bridged. By FreshFish the integral is exact, but for 1e-16 ns at each crossing of -10 °C, and rounded up
// once, to the nanosecond; by the other laws each line to 1e-15 of itself and rounded up. The record must
// have two readings or more, none below -80 or above 100 °C, and maxGap be above zero: otherwise a units.RangeError, as
// is a result past 292 years; an empty record is series.ErrEmpty. Source: FAO Fisheries Technical Paper
// 348; Dalgaard et al. 2004 for smoked salmon.
func IceDays(record series.Series[units.Temperature], law Law, maxGap time.Duration) (Age, error) {
	if err := laws.Check(law); err != nil {
		return Age{}, err
	}
	if err := chain.CheckWalk(record, maxGap); err != nil {
		return Age{}, err
	}
	s := Age{Law: law, MaxGap: maxGap, Span: record.Span(), LongestGap: record.LongestGap(), Citation: law.Citation()}
	w := iceWalk{law: law, floor: chain.Quanta(units.Celsius(spoilageMinimum)), maxGap: maxGap}
	w.through(record)
	if err := chain.CheckExtremes(w.lowest, w.highest); err != nil {
		return Age{}, err
	}
	used, ok := w.total()
	if !ok {
		return Age{}, units.RangeError{
			What: "time on ice that the record is worth", Got: "more than 292 years", High: "292 years",
		}
	}
	s.Used, s.Unknown = used, w.unknown
	s.Lowest, s.Highest = w.lowest, w.highest
	s.Outside = !Holds(s.Lowest) || !Holds(s.Highest)
	s.Cautions = s.cautionsOf()
	return s, nil
}

// iceWalk adds up the integral of a law over the lines of a record: by the square root law dt (x² + xy + y²),
// three times the integral of the square of a line from x to y quanta above Tmin, by the others nanoseconds.
type iceWalk struct {
	law             Law
	floor           int64 // Tmin in quanta
	maxGap          time.Duration
	sum             wide
	unknown         time.Duration
	lowest, highest units.Temperature
}

// through walks a record of at least one reading.
func (w *iceWalk) through(record series.Series[units.Temperature]) {
	before, _ := record.First()
	x, slope := chain.Quanta(before.Value)-w.floor, w.law.slope()
	low, high, at, sum := x, x, before.At, wide{}
	for i, n := 1, record.Len(); i < n; i++ {
		next, _ := record.At(i)
		y, dt := chain.Quanta(next.Value)-w.floor, next.At-at
		low, high = min(low, y), max(high, y)
		switch {
		case dt > w.maxGap:
			w.unknown += dt
		case slope != 0:
			sum = sum.plus(wide{low: exponential(dt, w.above(x), w.above(y), slope)})
		case x >= 0 && y >= 0:
			sum = sum.plus(product(uint64(dt), uint64(x*x+x*y+y*y))) // below 2⁶², as both are below 2³⁰ at 100 °C
		default:
			sum = sum.plus(thawed(uint64(dt), min(x, y), max(x, y)))
		}
		x, at = y, next.At
	}
	w.lowest, w.highest, w.sum = w.above(low), w.above(high), sum
}

// above is the temperature so many quanta above Tmin.
func (w *iceWalk) above(x int64) units.Temperature {
	return units.FromAbsoluteZero(units.TemperatureChange(w.floor + x))
}

// thawed is three times the integral of the square of a line that begins at x below Tmin. Both ends are
// clipped there: only the part above counts, dt y/(y - x) of time, from zero to y.
func thawed(dt uint64, x, y int64) wide {
	if y <= 0 {
		return wide{}
	}
	return product(dt, uint64(y*y)).prorated(uint64(y), uint64(y-x))
}

// exponential is dt e^(k T1) (e^(k(T2 - T1)) - 1)/(k(T2 - T1)), rounded up; past 2⁶³ it is that.
func exponential(dt time.Duration, from, to units.Temperature, k float64) uint64 {
	a, b := from.Celsius(), to.Celsius()
	if a > b {
		a, b = b, a
	}
	mean := portable.Exp(k * a)
	if rise := k * (b - a); rise > 0 {
		mean *= portable.Expm1(rise) / rise
	}
	return uint64(math.Min(math.Ceil(float64(dt)*mean), 1<<63))
}

// total is the sum in nanoseconds, and false when it is past the longest time.Duration.
func (w *iceWalk) total() (time.Duration, bool) {
	unit := uint64(1)
	if w.law.slope() == 0 {
		span := uint64(chain.Quanta(units.Celsius(spoilageReference)) - w.floor)
		unit = 3 * span * span
	}
	t, ok := w.sum.over(unit)
	return time.Duration(t), ok
}
