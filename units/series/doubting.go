package series

import (
	"math"
	"math/bits"
	"time"

	"example.org/lakelarder/units"
)

// Doubting is Doubts for a record in the making, one reading at a time and without storing them. It is a plain value; Next
// returns the next one. Start with WatchDoubts.
type Doubting[T Value] struct {
	limits            Believable[T]
	rise, fall, noise int64
	watching          bool
	n                 int
	at, q             int64 // the last reading
	since             int64 // of the same value
	stuck             bool  // was said of it
}

// WatchDoubts returns a Doubting that has seen nothing yet. A limit whose change does not measure T, or that is below zero, is a
// units.RangeError.
func WatchDoubts[T Value](limits Believable[T]) (Doubting[T], error) {
	d := Doubting[T]{limits: limits, watching: true}
	for _, c := range []struct {
		what string
		a    units.Amount
		q    *int64
	}{{"fastest rise", limits.Rise, &d.rise}, {"fastest fall", limits.Fall, &d.fall}, {"noise between readings", limits.Noise, &d.noise}} {
		q, ok := changeOf[T](c.a)
		if !ok || q < 0 {
			return Doubting[T]{}, units.RangeError{What: c.what, Got: c.a.String(), Low: "a change of what is recorded, zero or more"}
		}
		*c.q = q
	}
	if limits.Per < 0 || limits.Still < 0 {
		return Doubting[T]{}, units.RangeError{What: "time of a limit", Got: units.Lasting(min(limits.Per, limits.Still)), Low: "0 min"}
	}
	return d, nil
}

// Next returns the Doubting with one more reading, and the doubts that it shows, nil for none. A reading out of order or not set
// is a ReadingError, and d stays as it was.
func (d Doubting[T]) Next(reading Reading[T]) (Doubting[T], []Doubt[T], error) {
	if !d.watching {
		return d, nil, errNoLimit
	}
	before := int64(-1)
	if d.n > 0 {
		before = d.at
	}
	q, err := reading.follow(before)
	if err != nil {
		return d, nil, ReadingError{Index: d.n, At: reading.At, Err: err}
	}
	signs, n := d.step(int64(reading.At), q)
	if n == 0 {
		return d, nil, nil
	}
	return d, append([]Doubt[T](nil), signs[:n]...), nil
}

// skip takes in the readings from i on that show nothing at a glance, and returns the first that needs a step: a tight loop, for
// most of a clean record ends here.
func (d *Doubting[T]) skip(at, q []int64, i int) int {
	if d.n == 0 {
		return i
	}
	low, high := d.plain(d.q)
	before, beforeAt, since := d.q, d.at, d.since
	still := int64(math.MaxInt64)
	if d.limits.Still > 0 {
		still = int64(d.limits.Still)
	}
	var dt, allowed int64 = -1, math.MaxInt64
	first := i
	for ; i < len(q) && i < len(at); i++ {
		v, now := q[i], at[i]
		if d.limits.Per > 0 && now-beforeAt != dt {
			dt = now - beforeAt
			allowed = d.allowance(dt)
		}
		if v < low || v > high || v-before > allowed || before-v > allowed {
			break
		}
		if v != before {
			since = now
		} else if now-since > still {
			break
		}
		before, beforeAt = v, now
	}
	if i > first {
		d.stuck = d.stuck && since == d.since
		d.n, d.at, d.q, d.since = d.n+i-first, beforeAt, before, since
	}
	return i
}

// plain is the widest span around a value within which no reading is out of reach or a code; empty where the value is one.
func (d *Doubting[T]) plain(around int64) (low, high int64) {
	low, high = -extreme, extreme // differences of such values fit into an int64
	if q, ok := quantaOf(d.limits.Low.Value); d.limits.Low.Given && ok {
		low = max(low, q)
	}
	if q, ok := quantaOf(d.limits.High.Value); d.limits.High.Given && ok {
		high = min(high, q)
	}
	for _, c := range d.limits.Codes {
		q, _ := quantaOf(c)
		switch {
		case q < around:
			low = max(low, q+1)
		case q > around:
			high = min(high, q-1)
		default:
			return 1, 0
		}
	}
	return low, high
}

const extreme = 1 << 61

// allowance is a change that is surely no jump in a time dt: the noise and, rounded down, the slower of rise and fall.
func (d *Doubting[T]) allowance(dt int64) int64 {
	hi, lo := bits.Mul64(uint64(min(d.rise, d.fall)), uint64(dt))
	if hi >= uint64(d.limits.Per) {
		return extreme
	}
	most, _ := bits.Div64(hi, lo, uint64(d.limits.Per))
	return int64(min(most, extreme)) + min(d.noise, extreme)
}

// step takes in a reading and returns what it shows, at most one doubt of each kind.
func (d *Doubting[T]) step(at, q int64) (found [2]Doubt[T], n int) {
	first, before, from := d.n == 0, d.q, d.at
	if first {
		before, from, d.since = q, at, at
	}
	add := func(s Sign, since int64) {
		found[n] = Doubt[T]{Sign: s, When: Stretch{time.Duration(since), time.Duration(at)}, Before: ofQuanta[T](before), Value: ofQuanta[T](q)}
		n++
	}
	jump := !first && d.jumps(before, q, at-from)
	switch {
	case d.isCode(d.limits.Codes, q), jump && d.isCode(d.limits.JumpCodes, q):
		add(FaultCode, from)
	case d.outOfReach(q):
		add(OutOfReach, from)
	case jump && !d.isCode(d.limits.Codes, before) && !d.isCode(d.limits.JumpCodes, before):
		add(Jump, from)
	}
	if q != before {
		d.since, d.stuck = at, false
	} else if d.limits.Still > 0 && !d.stuck && at-d.since > int64(d.limits.Still) {
		d.stuck = true
		add(Stuck, d.since)
	}
	d.n, d.at, d.q = d.n+1, at, q
	return found, n
}

// jumps reports whether the value changed by more than the noise and the fastest change in that time.
func (d *Doubting[T]) jumps(from, to, dt int64) bool {
	if d.limits.Per == 0 {
		return false
	}
	by, fastest := uint64(to)-uint64(from), uint64(d.rise)
	if to < from {
		by, fastest = uint64(from)-uint64(to), uint64(d.fall)
	}
	if by <= uint64(d.noise) {
		return false
	}
	by -= uint64(d.noise)
	// by/dt > fastest/Per, through 128 bits.
	return moreThan(by, uint64(d.limits.Per), fastest, uint64(dt))
}

func (d *Doubting[T]) isCode(codes []T, q int64) bool {
	for _, c := range codes {
		if code, _ := quantaOf(c); code == q {
			return true
		}
	}
	return false
}

func (d *Doubting[T]) outOfReach(q int64) bool {
	if low, ok := quantaOf(d.limits.Low.Value); d.limits.Low.Given && ok && q < low {
		return true
	}
	high, ok := quantaOf(d.limits.High.Value)
	return d.limits.High.Given && ok && q > high
}

// changeOf returns a change of T in quanta, zero for one that is not stated.
func changeOf[T Value](a units.Amount) (int64, bool) {
	if !a.IsStated() {
		return 0, true
	}
	var none T
	if _, ok := any(none).(units.Temperature); ok {
		c, ok := units.As[units.TemperatureChange](a)
		return int64(c), ok
	}
	var v T
	var ok bool
	switch p := any(&v).(type) {
	case *units.Pressure:
		*p, ok = units.As[units.Pressure](a)
	case *units.Mass:
		*p, ok = units.As[units.Mass](a)
	case *units.Ratio:
		*p, ok = units.As[units.Ratio](a)
	}
	q, _ := quantaOf(v)
	return q, ok
}
