package chain

import (
	"math"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// What the core of a fish is believed to do; practice, with the reasons. A piece that holds a probe is not thinner than half
// an inch. What is around it is no more than 40 K away: fish of 40 °C in ice water, or ice-cold fish in 40 °C. Two readings
// of a probe that stays where it is are not 5 K apart in no time. Flesh carries temperature no faster than 0.15 mm²/s, and
// where it is frozen, below -3 °C, eight times that.
const (
	Thinnest    = units.Inch / 2
	Noise       = 5 * units.CelsiusDegrees
	mostAway    = 40 * units.CelsiusDegrees
	diffusivity = 0.15e-6 // m²/s
	whenFrozen  = 8
)

// Frozen is the temperature below which flesh is frozen for the most part.
func Frozen() units.Temperature { return units.Celsius(-3) }

// BeliefCitation is the reason behind the fastest change.
func BeliefCitation() cite.Citation {
	return cite.Citation{Where: "slab of fish whose surface is held, 40 K away: first term of the series", Basis: cite.Computed}
}

// Belief is how a record of the core of a fish is doubted: Thawed is for its readings above Frozen, Hard for those below.
type Belief struct {
	Thawed, Hard series.Believable[units.Temperature]
	low, high    int64
}

// BeliefOf is the belief in a probe in the middle of a piece so thick; one of no thickness may change at once.
func BeliefOf(thickness units.Length) Belief {
	always, afterJump := series.TemperatureCodes()
	b := Belief{low: Quanta(coldest), high: Quanta(boiling)}
	b.Thawed = series.Believable[units.Temperature]{Noise: units.AmountOf(Noise), Per: time.Minute, Codes: always, JumpCodes: afterJump}
	b.Hard = b.Thawed
	if thickness == 0 { // only what a loose wire shows is a jump
		b.Thawed.Rise, b.Hard.Rise = units.AmountOf(mostAway), units.AmountOf(mostAway)
	} else {
		b.Thawed.Rise, b.Hard.Rise = units.AmountOf(fastest(thickness, diffusivity)), units.AmountOf(fastest(thickness, whenFrozen*diffusivity))
	}
	b.Thawed.Fall, b.Hard.Fall = b.Thawed.Rise, b.Hard.Rise
	return b
}

// fastest is the change of a core in a minute: all of mostAway in the time constant d²/(π² a), rounded up.
func fastest(d units.Length, a float64) units.TemperatureChange {
	m := units.Float(d, units.Metre)
	perMinute := float64(mostAway) * 60 * math.Pi * math.Pi * a / float64(m*m)
	return units.TemperatureChange(math.Min(math.Ceil(perMinute), float64(1000*units.CelsiusDegrees)))
}

// Calm reports at a glance whether a reading that follows a believed one cannot be doubted.
func (b *Belief) Calm(before, q int64) bool {
	by := q - before
	return by <= int64(Noise) && by >= -int64(Noise) && q >= b.low && q <= b.high
}

// Reach is the coldest and the warmest that fish is.
func (b *Belief) Reach() (low, high int64) { return b.low, b.high }

// Sign is what a reading shows after the last that was believed: a code, a jump, or none.
func (b *Belief) Sign(last, r series.Reading[units.Temperature]) series.Sign {
	limits := b.Thawed
	if thaw := units.Celsius(0); last.Value.Below(thaw) && r.Value.Below(thaw) && (last.Value.Below(Frozen()) || r.Value.Below(Frozen())) {
		limits = b.Hard // but not through freezing and thawing, which take far longer
	}
	d, err := series.WatchDoubts(limits)
	if err != nil {
		return 0 // the limits are temperatures
	}
	if d, _, err = d.Next(last); err != nil {
		return 0
	}
	_, found, _ := d.Next(r)
	for _, one := range found {
		if one.Sign == series.FaultCode || one.Sign == series.Jump {
			return one.Sign
		}
	}
	return 0
}

// IsCode reports whether a reading is what only a broken probe shows.
func (b *Belief) IsCode(t units.Temperature) bool { return isOneOf(b.Thawed.Codes, t) }

// Wakes reports whether a first reading is what a probe shows that was never read, or is open, and the next tells.
func (b *Belief) Wakes(first, next series.Reading[units.Temperature]) bool {
	if !isOneOf(b.Thawed.JumpCodes, first.Value) {
		return false
	}
	by, err := next.Value.Sub(first.Value)
	if err != nil {
		return false
	}
	if by < 0 {
		by = -by
	}
	plain := *b
	plain.Thawed.JumpCodes, plain.Hard.JumpCodes = nil, nil
	return by > Noise && plain.Sign(first, next) == series.Jump
}

func isOneOf(codes []units.Temperature, t units.Temperature) bool {
	for _, c := range codes {
		if c == t {
			return true
		}
	}
	return false
}

// Believed is a record without what a broken probe shows and no core does.
type Believed struct {
	Record   series.Series[units.Temperature]
	Dropouts int
	Doubted  int
	Moved    units.Stated[series.Stretch] // the first time that the probe did not come back to where it was
}

// Believe returns what is believed of a record of the core of fish. Values that no fish has and no broken probe shows are left
// to CheckExtremes; fewer than two believed readings are no record.
func Believe(record series.Series[units.Temperature]) (Believed, error) {
	b := BeliefOf(Thinnest)
	out := Believed{Record: record}
	kept := make([]series.Reading[units.Temperature], 0, record.Len())
	away, fault := false, units.Temperature{}
	for _, r := range record.Readings() {
		n := len(kept)
		if n == 1 && b.Wakes(kept[0], r) {
			kept, n, out.Dropouts = kept[:0], 0, out.Dropouts+1
		}
		calm := n == 0 || b.Calm(Quanta(kept[n-1].Value), Quanta(r.Value))
		sign := series.Sign(0)
		switch {
		case b.IsCode(r.Value) || fault.IsSet() && r.Value == fault:
			sign = series.FaultCode
		case !calm && CheckFish(r.Value) == nil:
			sign = b.Sign(kept[n-1], r)
		}
		switch sign {
		case series.FaultCode:
			out.Dropouts++
			fault = r.Value
			continue
		case series.Jump:
			out.Doubted++
			away = true
			continue
		}
		if away && !calm && !out.Moved.Given {
			out.Moved = units.State(series.Stretch{From: kept[n-1].At, To: r.At})
		}
		away, fault = false, units.Temperature{}
		kept = append(kept, r)
	}
	switch {
	case len(kept) == record.Len():
		return out, nil
	case len(kept) < 2:
		return out, CheckCount(max(1, len(kept)))
	}
	var err error
	out.Record, err = series.New(kept)
	return out, err
}
