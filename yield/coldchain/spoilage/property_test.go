package spoilage_test

import (
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"example.org/lakelarder/yield/coldchain/spoilage"
	"github.com/stretchr/testify/require"
)

// Warming a record anywhere never makes the fish younger: exactly so by the law of fresh fish, by the others to 2 ns a
// line.
func FuzzWarmingNeverFreshens(f *testing.F) {
	f.Add([]byte{10, 200, 120, 3, 230, 90, 40, 80, 90, 200, 1, 255, 60, 255}, uint8(2), uint8(1), uint16(30))
	f.Add([]byte{61, 255, 60, 255, 60, 255, 59, 255, 0, 255}, uint8(0), uint8(5), uint16(1))
	f.Fuzz(func(t *testing.T, data []byte, first, count uint8, by uint16) {
		readings := logged.Weather(data)
		if len(readings) < 2 {
			return
		}
		warmer := append([]series.Reading[units.Temperature](nil), readings...)
		for i := int(first); i < len(warmer) && i < int(first)+int(count); i++ {
			warmer[i].Value = warmer[i].Value.Add(units.TemperatureChange(by) * 4_000)
		}
		before, after := logged.Made(t, readings), logged.Made(t, warmer)
		require.GreaterOrEqual(t, iceDays(t, after, spoilage.FreshFish).Used, iceDays(t, before, spoilage.FreshFish).Used)
		for _, law := range []spoilage.Law{spoilage.TropicalFish, spoilage.ColdSmokedSalmon} {
			slack := 2 * time.Duration(len(readings))
			require.GreaterOrEqual(t, iceDays(t, after, law).Used+slack, iceDays(t, before, law).Used)
		}
	})
}

// A reading more on the straight line changes nothing, nor does the order of the stretches, and a stretch in the frost
// adds nothing.
func FuzzSpoilageAddsUp(f *testing.F) {
	f.Add([]byte{10, 200, 120, 3, 230, 90, 40, 80, 90, 200, 1, 255, 60, 255}, uint8(3))
	f.Add([]byte{221, 0, 222, 0, 0, 1, 224, 2, 110, 3, 226, 4, 5, 5}, uint8(0))
	f.Fuzz(func(t *testing.T, data []byte, at uint8) {
		readings := logged.Weather(data)
		if len(readings) < 2 {
			return
		}
		whole := iceDays(t, logged.Made(t, readings), spoilage.FreshFish).Used

		i := int(at) % (len(readings) - 1)
		a, b := readings[i], readings[i+1]
		change, err := b.Value.Sub(a.Value)
		require.NoError(t, err)
		require.Zero(t, change%2)
		middle := series.Reading[units.Temperature]{At: a.At + (b.At-a.At)/2, Value: a.Value.Add(change / 2)}
		split := append(append(append([]series.Reading[units.Temperature](nil), readings[:i+1]...), middle), readings[i+1:]...)
		require.InDelta(t, 0, int64(iceDays(t, logged.Made(t, split), spoilage.FreshFish).Used-whole), 1) // a line through -10 °C rounds up to 4e-17 ns

		head, tail := iceDays(t, logged.Made(t, split[:i+2]), spoilage.FreshFish).Used, iceDays(t, logged.Made(t, split[i+1:]), spoilage.FreshFish).Used
		require.InDelta(t, 0, int64(head+tail-whole), 1) // each part rounds up

		end := readings[len(readings)-1].At
		var turned []series.Reading[units.Temperature]
		for j := len(readings) - 1; j >= 0; j-- {
			turned = append(turned, series.Reading[units.Temperature]{At: end - readings[j].At, Value: readings[j].Value})
		}
		for law := spoilage.FreshFish; law <= spoilage.ColdSmokedSalmon; law++ {
			require.Equal(t, iceDays(t, logged.Made(t, readings), law).Used, iceDays(t, logged.Made(t, turned), law).Used)
		}

		cold := units.Celsius(-10)
		readings[len(readings)-1].Value = cold
		frozen := append(readings[:len(readings):len(readings)], series.Reading[units.Temperature]{At: end + 1, Value: cold},
			series.Reading[units.Temperature]{At: end + chain.Day, Value: units.Celsius(-40)}, series.Reading[units.Temperature]{At: end + 2*chain.Day, Value: cold})
		require.Equal(t, iceDays(t, logged.Made(t, readings), spoilage.FreshFish).Used, iceDays(t, logged.Made(t, frozen), spoilage.FreshFish).Used)
	})
}
