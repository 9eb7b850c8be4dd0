package coldchain_test

import (
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

func rank(v verdict.Verdict) int {
	return map[verdict.Verdict]int{verdict.Met: 0, verdict.CannotTell: 1, verdict.NotMet: 2}[v]
}

// Warming a record anywhere, up to the top of the bands, never improves a verdict, never uses less and never puts the
// moment off.
func FuzzWarmingNeverImproves(f *testing.F) {
	f.Add([]byte{10, 200, 120, 3, 230, 90, 40, 80, 90, 200, 1, 255, 60, 255}, uint8(2), uint8(1), uint16(30), true)
	f.Add([]byte{200, 255, 200, 255, 10, 255, 50, 255, 50, 255}, uint8(0), uint8(5), uint16(400), false)
	f.Fuzz(func(t *testing.T, data []byte, first, count uint8, by uint16, short bool) {
		readings := logged.Drawn(data)
		if len(readings) < 2 {
			return
		}
		terms := coldchain.Terms{MaxGap: longest}
		if short {
			terms.MaxGap = time.Hour / 2
		}
		warmer := append([]series.Reading[units.Temperature](nil), readings...)
		for i := int(first); i < len(warmer) && i < int(first)+int(count); i++ {
			warmer[i].Value = warmer[i].Value.Add(units.TemperatureChange(by) * 12_345)
			if warmer[i].Value.Above(units.Fahrenheit(135)) {
				warmer[i].Value = units.Fahrenheit(135)
			}
		}
		for _, terms.Reading = range []coldchain.Reading{coldchain.SumOfFractions, coldchain.Nested} {
			before, after := exposed(t, logged.Made(t, readings), terms), exposed(t, logged.Made(t, warmer), terms)
			require.GreaterOrEqual(t, rank(after.Verdict), rank(before.Verdict))
			for i, b := range before.Allowances {
				a := after.Allowances[i]
				require.GreaterOrEqual(t, rank(a.Verdict), rank(b.Verdict), "%v %v", b.Rule, b.Hazard)
				if b.Verdict == verdict.NotMet {
					require.LessOrEqual(t, a.ExceededAt, b.ExceededAt+1, "%v %v", b.Rule, b.Hazard)
				}
				if b.Rule == coldchain.TableA2 {
					require.GreaterOrEqual(t, a.Used, b.Used-1, "%v", b.Hazard) // the sum is rounded to 1e-12
				}
			}
		}
	})
}

// A reading more on the straight line changes nothing, and the parts of a record add up to the whole.
func FuzzSplittingChangesNothing(f *testing.F) {
	f.Add([]byte{10, 200, 120, 3, 230, 90, 40, 80, 90, 200, 1, 255, 60, 255}, uint8(3))
	f.Add([]byte{221, 0, 222, 0, 223, 1, 224, 2, 225, 3, 226, 4, 5, 5}, uint8(0))
	f.Fuzz(func(t *testing.T, data []byte, at uint8) {
		readings := logged.Drawn(data)
		if len(readings) < 2 {
			return
		}
		i := int(at) % (len(readings) - 1)
		a, b := readings[i], readings[i+1]
		change, err := b.Value.Sub(a.Value)
		require.NoError(t, err)
		middle := series.Reading[units.Temperature]{At: a.At + (b.At-a.At)/2, Value: a.Value.Add(change / 2)}
		if change%2 != 0 {
			return
		}
		split := append(append(append([]series.Reading[units.Temperature](nil), readings[:i+1]...), middle), readings[i+1:]...)
		for _, reading := range []coldchain.Reading{coldchain.SumOfFractions, coldchain.Nested, coldchain.EachBand} {
			whole, more := exposed(t, logged.Made(t, readings), coldchain.Terms{Reading: reading}), exposed(t, logged.Made(t, split), coldchain.Terms{Reading: reading})
			require.Empty(t, cmp.Diff(whole.Allowances, more.Allowances, temperatures))
			require.Empty(t, cmp.Diff(whole.Hours, more.Hours, temperatures))
			require.Equal(t, whole.Verdict, more.Verdict)

			head, tail := exposed(t, logged.Made(t, split[:i+2]), coldchain.Terms{Reading: reading}), exposed(t, logged.Made(t, split[i+1:]), coldchain.Terms{Reading: reading})
			for j := range whole.Hours {
				require.Equal(t, whole.Hours[j].Time, head.Hours[j].Time+tail.Hours[j].Time)
			}
			for j, finding := range whole.Allowances {
				if finding.Rule != coldchain.TableA2 {
					continue
				}
				for k, line := range finding.Lines {
					require.Equal(t, line.Used, head.Allowances[j].Lines[k].Used+tail.Allowances[j].Lines[k].Used)
				}
			}
		}
	})
}

// From the strictest reading to the mildest, what passes one passes the next.
func FuzzReadingsRise(f *testing.F) {
	f.Add([]byte{10, 200, 120, 3, 230, 90, 40, 80, 90, 200, 1, 255, 60, 255})
	f.Add([]byte{80, 255, 80, 255, 120, 255, 80, 255})
	f.Fuzz(func(t *testing.T, data []byte) {
		readings := logged.Drawn(data)
		if len(readings) < 2 {
			return
		}
		s := logged.Made(t, readings)
		sum, nested, each := exposed(t, s, coldchain.Terms{}), exposed(t, s, coldchain.Terms{Reading: coldchain.Nested}), exposed(t, s, coldchain.Terms{Reading: coldchain.EachBand})
		for i := range sum.Allowances {
			require.GreaterOrEqual(t, rank(sum.Allowances[i].Verdict), rank(nested.Allowances[i].Verdict))
			require.GreaterOrEqual(t, rank(nested.Allowances[i].Verdict), rank(each.Allowances[i].Verdict))
		}
		for _, h := range sum.Hours {
			want, err := s.Between(h.Above, units.Fahrenheit(135))
			require.NoError(t, err)
			require.Equal(t, want, h.Time)
			if first, ever, err := s.FirstAbove(h.Above); h.Ever {
				require.NoError(t, err)
				require.True(t, ever)
				require.InDelta(t, 0, int64(h.First-first), 1)
			}
		}
	})
}
