package smoke

import (
	"slices"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// deepDip is how far one reading lies below both beside it where a core does not: it would have to cool and warm again
// by that much between three readings. Practice.
const deepDip = 4 * probeNoise

// withoutDropouts is the record without the readings in which a probe dropped out and came back: colder than a core gets
// by then, or one deep dip. Neither cold fish nor fish that is warm again is believed for it.
func (r Record) withoutDropouts() (Record, error) {
	all, err := r.checkCores()
	if err != nil || float64(all.fall) <= probeNoise {
		return r, err
	}
	lost := make([][]time.Duration, len(r.Cores))
	for _, w := range r.doubt(reachOf(r.Piece, iceWaterFilm), all).why {
		core := r.Cores[w.probe]
		if last, _ := core.Last(); w.of != outside || last.At == w.when.To {
			continue // it did not come back
		}
		for _, a := range core.Readings() {
			if a.At > w.when.From && a.At <= w.when.To {
				lost[w.probe] = append(lost[w.probe], a.At)
			}
		}
	}
	kept := make([]series.Series[units.Temperature], len(r.Cores))
	for i, core := range r.Cores {
		kept[i] = core
		if lost[i] = append(lost[i], deepDips(core, r.MaxGap)...); lost[i] != nil {
			slices.Sort(lost[i])
			kept[i] = leftOut(core, lost[i])
		}
	}
	r.Cores = kept
	return r, nil
}

// deepDips are the times of single readings far below both beside them, where those are no further off than a gap.
func deepDips(core series.Series[units.Temperature], maxGap time.Duration) (at []time.Duration) {
	for i := 1; i+1 < core.Len(); i++ {
		before, _ := core.At(i - 1)
		a, _ := core.At(i)
		after, _ := core.At(i + 1)
		if a.At-before.At > maxGap || after.At-a.At > maxGap {
			continue
		}
		if quanta(a.Value)+deepDip < min(quanta(before.Value), quanta(after.Value)) {
			at = append(at, a.At)
		}
	}
	return at
}
