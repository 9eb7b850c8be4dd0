package coldchain

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// course is a record as it is believed: without the readings that no fish had, and with what was seen of it.
type course struct {
	record    series.Series[units.Temperature]
	believing believing
	seen      followed
	again     followed // to go through the legs once more
	warm      []uint64 // for each reading whether the core was warming before it; nil where every leg is its line
}

// believed goes through a record.
func (t *Terms) believed(record series.Series[units.Temperature]) (course, error) {
	c := course{record: record, believing: t.believing()}
	if t.marked() {
		c.warm = make([]uint64, record.Len()/64+1)
	}
	before, _ := record.First()
	k := keeping{record: record}
	var legs []leg
	for i := 0; i < record.Len(); i++ {
		r, _ := record.At(i)
		is, warm, err := c.seen.take(&c.believing, r)
		if err != nil {
			return c, err
		}
		n := k.keep(i, is, r)
		if is == leftOut {
			continue
		}
		if is == follows && r.At-before.At <= t.MaxGap {
			legs = c.seen.legs(legs[:0], &c.believing, before, r, warm)
		}
		if warm && c.warm != nil {
			c.warm[n/64] |= 1 << (n % 64)
		}
		before = r
	}
	c.again = c.seen
	var err error
	c.record, err = k.left()
	return c, err
}

// keeping is a record of which readings are left out; kept are the others, once there is one.
type keeping struct {
	record series.Series[units.Temperature]
	kept   []series.Reading[units.Temperature]
}

// keep enters reading i of the record, and returns its place among those that are kept.
func (k *keeping) keep(i int, is taken, r series.Reading[units.Temperature]) int {
	if k.kept == nil && (is == leftOut || is == first && i > 0) {
		k.kept = append(make([]series.Reading[units.Temperature], 0, k.record.Len()), k.record.Readings()[:i]...)
	}
	if k.kept == nil || is == leftOut {
		return i
	}
	if is == first {
		k.kept = k.kept[:0]
	}
	k.kept = append(k.kept, r)
	return len(k.kept) - 1
}

// left is what is kept.
func (k *keeping) left() (series.Series[units.Temperature], error) {
	switch {
	case k.kept == nil:
		return k.record, nil
	case len(k.kept) < 2:
		return k.record, chain.CheckCount(1)
	}
	return series.New(k.kept)
}
