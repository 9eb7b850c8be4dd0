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
	if !t.marked() && !before.Value.Above(meltingIce) {
		if extent, ok := record.Extent(); ok && t.plain(extent) {
			c.seen = plainly(record)
			return c, nil
		}
	}
	var kept []series.Reading[units.Temperature] // once one is left out
	var legs []leg
	dense := true
	for i := 0; i < record.Len(); i++ {
		if dense {
			if i = c.seen.glide(&c.believing, record, i); i == record.Len() {
				break
			}
			before = c.seen.Last
		}
		r, _ := record.At(i)
		is, warm, err := c.seen.take(&c.believing, r)
		if err != nil {
			return c, err
		}
		if dense && (is == leftOut || is == first && i > 0) {
			dense = false
			kept = append(kept, record.Readings()[:i]...)
		}
		if !dense && is == first {
			kept = kept[:0]
		}
		if is == leftOut {
			continue
		}
		if is == follows && r.At-before.At <= t.MaxGap {
			legs = c.seen.legs(legs[:0], &c.believing, before, r, warm)
		}
		n := i
		if !dense {
			n = len(kept)
			kept = append(kept, r)
		}
		if warm && c.warm != nil {
			c.warm[n/64] |= 1 << (n % 64)
		}
		before = r
	}
	if !dense {
		if c.seen.Taken < 2 {
			return c, chain.CheckCount(max(1, c.seen.Taken))
		}
		var err error
		if c.record, err = series.New(kept); err != nil {
			return c, err
		}
	}
	c.again = c.seen
	return c, nil
}

// plain reports at a glance whether a record has nothing to doubt and never warms: most that lie in ice.
func (t *Terms) plain(x series.Extent[units.Temperature]) bool {
	span, err := x.High.Sub(x.Low)
	return err == nil && span <= rises && !x.High.Above(meltingIce) && x.Low.AtLeast(chain.Frozen) &&
		(x.Longest.Length() <= longestBlind || t.Undisturbed)
}

// plainly is what is seen of a plain record.
func plainly(record series.Series[units.Temperature]) followed {
	start, _ := record.First()
	end, _ := record.Last()
	return followed{Start: start.At, End: end.At, Seen: record.Len(), Taken: record.Len(), Last: end}
}
