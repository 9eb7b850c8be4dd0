package coldchain

import (
	"math/big"
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"github.com/stretchr/testify/require"
)

// weather makes a record of the bytes as drawn does, but from -40 °C up to 70 °C and often on -10 °C, so that lines cross the
// temperature at which spoilage stops.
func weather(data []byte) []series.Reading[units.Temperature] {
	all := drawn(data)
	for i := range all {
		c := -40 + float64(data[2*i]%221)/2
		if data[2*i] >= 221 {
			c = -10
		}
		all[i].Value = units.Celsius(c)
	}
	return all
}

// Warming a record anywhere never makes the fish younger: exactly so by the law of fresh fish, by the others to 2 ns a line.
func FuzzWarmingNeverFreshens(f *testing.F) {
	f.Add([]byte{10, 200, 120, 3, 230, 90, 40, 80, 90, 200, 1, 255, 60, 255}, uint8(2), uint8(1), uint16(30))
	f.Add([]byte{61, 255, 60, 255, 60, 255, 59, 255, 0, 255}, uint8(0), uint8(5), uint16(1))
	f.Fuzz(func(t *testing.T, data []byte, first, count uint8, by uint16) {
		readings := weather(data)
		if len(readings) < 2 {
			return
		}
		warmer := append([]series.Reading[units.Temperature](nil), readings...)
		for i := int(first); i < len(warmer) && i < int(first)+int(count); i++ {
			warmer[i].Value = warmer[i].Value.Add(units.TemperatureChange(by) * 4_000)
		}
		before, after := made(t, readings), made(t, warmer)
		require.GreaterOrEqual(t, iceDays(t, after, FreshFish).Used, iceDays(t, before, FreshFish).Used)
		for _, law := range []SpoilageLaw{TropicalFish, ColdSmokedSalmon} {
			slack := 2 * time.Duration(len(readings))
			require.GreaterOrEqual(t, iceDays(t, after, law).Used+slack, iceDays(t, before, law).Used)
		}
	})
}

// A reading more on the straight line changes nothing, nor does the order of the stretches, and a stretch in the frost adds nothing.
func FuzzSpoilageAddsUp(f *testing.F) {
	f.Add([]byte{10, 200, 120, 3, 230, 90, 40, 80, 90, 200, 1, 255, 60, 255}, uint8(3))
	f.Add([]byte{221, 0, 222, 0, 0, 1, 224, 2, 110, 3, 226, 4, 5, 5}, uint8(0))
	f.Fuzz(func(t *testing.T, data []byte, at uint8) {
		readings := weather(data)
		if len(readings) < 2 {
			return
		}
		whole := iceDays(t, made(t, readings), FreshFish).Used

		i := int(at) % (len(readings) - 1)
		a, b := readings[i], readings[i+1]
		change, err := b.Value.Sub(a.Value)
		require.NoError(t, err)
		require.Zero(t, change%2)
		middle := series.Reading[units.Temperature]{At: a.At + (b.At-a.At)/2, Value: a.Value.Add(change / 2)}
		split := append(append(append([]series.Reading[units.Temperature](nil), readings[:i+1]...), middle), readings[i+1:]...)
		require.InDelta(t, 0, int64(iceDays(t, made(t, split), FreshFish).Used-whole), 1) // a line through -10 °C rounds up to 4e-17 ns

		head, tail := iceDays(t, made(t, split[:i+2]), FreshFish).Used, iceDays(t, made(t, split[i+1:]), FreshFish).Used
		require.InDelta(t, 0, int64(head+tail-whole), 1) // each part rounds up

		end := readings[len(readings)-1].At
		var turned []series.Reading[units.Temperature]
		for j := len(readings) - 1; j >= 0; j-- {
			turned = append(turned, series.Reading[units.Temperature]{At: end - readings[j].At, Value: readings[j].Value})
		}
		for law := FreshFish; law <= ColdSmokedSalmon; law++ {
			require.Equal(t, iceDays(t, made(t, readings), law).Used, iceDays(t, made(t, turned), law).Used)
		}

		cold := units.Celsius(-10)
		readings[len(readings)-1].Value = cold
		frozen := append(readings[:len(readings):len(readings)], series.Reading[units.Temperature]{At: end + 1, Value: cold},
			series.Reading[units.Temperature]{At: end + day, Value: units.Celsius(-40)}, series.Reading[units.Temperature]{At: end + 2*day, Value: cold})
		require.Equal(t, iceDays(t, made(t, readings), FreshFish).Used, iceDays(t, made(t, frozen), FreshFish).Used)
	})
}

// The 128-bit sums against whole numbers of any size.
func FuzzWide(f *testing.F) {
	f.Add(uint64(1<<63-1), uint64(1<<60), uint64(5), uint64(7))
	f.Add(uint64(1), uint64(0), uint64(1), uint64(1))
	f.Fuzz(func(t *testing.T, a, b, num, den uint64) {
		if den == 0 || num > den {
			return
		}
		whole := func(w wide) *big.Int {
			n := new(big.Int).SetUint64(w.high)
			return n.Lsh(n, 64).Add(n, new(big.Int).SetUint64(w.low))
		}
		up := func(n, d *big.Int) *big.Int {
			q, rest := new(big.Int).QuoRem(n, d, new(big.Int))
			if rest.Sign() > 0 {
				q.Add(q, big.NewInt(1))
			}
			return q
		}
		divisor, factor := new(big.Int).SetUint64(den), new(big.Int).SetUint64(num)
		p := product(a, b)
		require.Zero(t, new(big.Int).Mul(new(big.Int).SetUint64(a), new(big.Int).SetUint64(b)).Cmp(whole(p)))
		require.Zero(t, up(new(big.Int).Mul(whole(p), factor), divisor).Cmp(whole(p.prorated(num, den))))
		q, ok := p.over(den)
		want := up(whole(p), divisor)
		require.Equal(t, want.IsInt64(), ok)
		if ok {
			require.Equal(t, want.Int64(), q)
		}
	})
}
