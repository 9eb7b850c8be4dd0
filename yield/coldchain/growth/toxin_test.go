package growth_test

import (
	"math"
	"strings"
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/growth"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/stretchr/testify/require"
)

const hour = time.Hour

func toxinShare(t *testing.T, s series.Series[units.Temperature]) units.Ratio {
	t.Helper()
	share, err := growth.ToxinShare(s, logged.Longest)
	require.NoError(t, err)
	return share.Share
}

// Computed outside this library from the two equations.
func TestTimeToToxin(t *testing.T) {
	printed.Table(t, "coldchain/toxin-times.csv").Each(t, func(t *testing.T, r printed.Row) {
		at := logged.Celsius(t, r, "temp_c")
		var got growth.ToxinTime
		var err error
		if r.Has("log10_spores") {
			got, err = growth.TimeToToxinInFish(at, logged.Quantity(t, r, "log10_spores", units.One))
		} else {
			got, err = growth.TimeToToxin(at)
		}
		require.NoError(t, err)
		printed.Within(t, r, "days", logged.InDays(got.Time))
		require.Equal(t, at, got.Temperature)
		require.Equal(t, r.Text("source"), got.Citation.Source.Key())
		require.True(t, got.Citation.Unverified())
		require.Contains(t, got.Cautions[1].Text, "from memory")
	})
}

// Source: Garcia et al. 1987 and Garcia and Genigeorgis 1987, abstracts. The envelope is shorter than every time to
// toxin found in salmon.
func TestEnvelopeIsShorterThanTheStudies(t *testing.T) {
	printed.Table(t, "coldchain/toxin-studies.csv").Each(t, func(t *testing.T, r printed.Row) {
		got, err := growth.TimeToToxin(logged.Celsius(t, r, "temp_c"))
		require.NoError(t, err)
		require.Less(t, got.Time, logged.OfDays(t, r, "earliest_days"))
		if r.Has("to_days") {
			require.Less(t, r.Float("earliest_days"), r.Float("to_days"))
		}
	})
}

// Up to 70 °F the limits of table A-2 for the botulinum of the refrigerator lie within the envelope at the top of each
// band: two sources, both recalled, that do not contradict each other. Above 70 °F the table's single row is wider than
// the envelope.
func TestTableA2LiesWithinTheEnvelope(t *testing.T) {
	bands := 0
	for _, r := range printed.Table(t, "coldchain/exposure-limits.csv") {
		if !strings.HasPrefix(r.Text("hazard"), "Clostridium botulinum type E") {
			continue
		}
		bands++
		top := units.Celsius(45)
		if r.Has("usable_high_f") {
			top = logged.Fahrenheit(t, r, "usable_high_f")
		}
		envelope, err := growth.TimeToToxin(top)
		require.NoError(t, err)
		require.Equal(t, r.Has("usable_high_f"), logged.Hours(t, r, "limit_h") < envelope.Time, r.String())
	}
	require.Equal(t, 4, bands)
}

// Few spores take longer than the envelope of any food, which is then the one to go by.
func TestTheShorterEnvelopeIsNamed(t *testing.T) {
	few, err := growth.TimeToToxinInFish(units.Celsius(5), 0)
	require.NoError(t, err)
	require.Contains(t, few.Cautions[len(few.Cautions)-1].Text, "shorter here")
	require.Equal(t, 206*hour, few.AnyFood.Value.Truncate(hour)) // 8.62 days
	logged.Back(t, few)
	many, err := growth.TimeToToxinInFish(units.Celsius(5), 6*units.One)
	require.NoError(t, err)
	require.False(t, many.AnyFood.Given)
	for _, c := range many.Cautions {
		require.NotContains(t, c.Text, "shorter here")
	}
}

// More warmth and more spores never give more time.
func TestTimeToToxinFalls(t *testing.T) {
	before := time.Duration(math.MaxInt64)
	inFish := [7]time.Duration{}
	for c := 3.0; c <= 45; c += 0.25 {
		got, err := growth.TimeToToxin(units.Celsius(c))
		require.NoError(t, err)
		require.Less(t, got.Time, before)
		before = got.Time
		for logs := range inFish {
			got, err := growth.TimeToToxinInFish(units.Celsius(c), units.Ratio(logs)*units.One)
			require.NoError(t, err)
			if c > 3 {
				require.Less(t, got.Time, inFish[logs])
			}
			if logs > 0 {
				require.Less(t, got.Time, inFish[logs-1])
			}
			inFish[logs] = got.Time
		}
	}
}

func TestToxinRefuses(t *testing.T) {
	for name, at := range map[string]units.Temperature{
		"not set": {}, "frozen": units.Celsius(-18), "just below zero": units.Celsius(-0.01), "zero": units.Celsius(0), "just above zero": units.Celsius(0.01),
		"below the envelope": units.Celsius(2.99), "above it": units.Celsius(45.01), "boiling": units.Celsius(100),
	} {
		_, err := growth.TimeToToxin(at)
		require.ErrorIs(t, err, units.ErrRange, name)
		_, err = growth.TimeToToxinInFish(at, 2*units.One)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	for _, logs := range []units.Ratio{-1, 6*units.One + 1} {
		_, err := growth.TimeToToxinInFish(units.Celsius(5), logs)
		require.ErrorIs(t, err, units.ErrRange)
	}
	one, err := series.New([]series.Reading[units.Temperature]{{Value: units.Celsius(5)}})
	require.NoError(t, err)
	hot := units.Celsius(100.5)
	for name, c := range map[string]struct {
		record series.Series[units.Temperature]
		maxGap time.Duration
	}{
		"one reading":  {one, hour},
		"no gap":       {logged.Record(t, logged.Flat(hour, 40)), 0},
		"loose probe":  {logged.Record(t, logged.Ramp(hour, units.Celsius(-127), units.Celsius(20))), hour},
		"past boiling": {logged.Record(t, logged.Ramp(hour, hot, hot)), hour},
	} {
		_, err := growth.ToxinShare(c.record, c.maxGap)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	_, err = growth.ToxinShare(series.Series[units.Temperature]{}, hour)
	require.ErrorIs(t, err, series.ErrEmpty)
	at := units.Celsius(45)
	_, err = growth.ToxinShare(logged.Record(t, logged.Ramp(250*365*chain.Day, at, at)), 290*365*chain.Day)
	require.NoError(t, err, "the logLongest record at the warmest is four million of its time")
}

// Computed by exact integration outside this library, checked there by Simpson's rule.
func TestHistoryToxin(t *testing.T) {
	records := logged.Histories(t, "coldchain/records/histories.csv")
	printed.Table(t, "coldchain/history-results.csv").Each(t, func(t *testing.T, r printed.Row) {
		printed.Within(t, r, "skinner_larkin_fraction", units.In(toxinShare(t, records[r.Text("id")]), units.One, 12))
	})
}

// Only 3 to 45 °C counts, both included, and a line counts for the part of its time in there.
func TestToxinCountsWhereItGrows(t *testing.T) {
	level := func(c float64) units.Ratio {
		at := units.Celsius(c)
		return toxinShare(t, logged.Record(t, logged.Ramp(chain.Day, at, at)))
	}
	for _, c := range []float64{-18, -1, 0, 0.001, 2.9999, 45.0001, 60} {
		require.Zero(t, level(c), c)
	}
	for _, c := range []float64{3, 3.0001, 44.9999, 45} {
		require.Positive(t, level(c), c)
	}
	// A nanosecond rounds up.
	require.Equal(t, units.Ratio(1), toxinShare(t, logged.Record(t, logged.Ramp(1, units.Celsius(4), units.Celsius(4)))))
	// A day from -39 to 45 °C is half a day from 3 to 45 °C; so is the way down from 87 °C.
	half := toxinShare(t, logged.Record(t, logged.Ramp(12*hour, units.Celsius(3), units.Celsius(45))))
	require.InDelta(t, int64(half), int64(toxinShare(t, logged.Record(t, logged.Ramp(chain.Day, units.Celsius(-39), units.Celsius(45))))), 1e3)
	require.InDelta(t, int64(half), int64(toxinShare(t, logged.Record(t, logged.Ramp(chain.Day, units.Celsius(87), units.Celsius(3))))), 1e3)
	// At one temperature the share is the time over the time to toxin.
	at, err := growth.TimeToToxin(units.Celsius(8))
	require.NoError(t, err)
	whole := toxinShare(t, logged.Record(t, logged.Ramp(at.Time, units.Celsius(8), units.Celsius(8))))
	require.InDelta(t, int64(units.One), int64(whole), 1e3)
}

func TestToxinCautions(t *testing.T) {
	s := logged.Record(t, logged.Flat(20*hour, 120), logged.Flat(30*hour, 34), logged.Flat(40*hour, 60))
	share, err := growth.ToxinShare(s, 40*hour)
	require.NoError(t, err)
	require.Len(t, share.Cautions, 5)
	logged.Back(t, share)
	require.Contains(t, share.Cautions[3].Text, "do not eat it")
	require.Contains(t, share.Cautions[4].Text, "takes nothing back")
	share, err = growth.ToxinShare(s, 30*hour)
	require.NoError(t, err)
	require.Equal(t, 40*hour, share.Unknown.Round(time.Microsecond))
	require.Contains(t, share.Cautions[len(share.Cautions)-2].Text, "too far apart")
	require.Len(t, share.Cautions, 5)
}

// Warming up to 45 °C never lowers the share; a reading more changes nothing but the last rounding, and the order
// nothing at all.
func FuzzToxinAddsUp(f *testing.F) {
	f.Add([]byte{10, 200, 120, 3, 230, 90, 40, 80, 90, 200, 1, 255, 60, 255}, uint8(3), uint16(30))
	f.Add([]byte{86, 10, 87, 10, 85, 10, 170, 9, 171, 9}, uint8(0), uint16(1))
	f.Fuzz(func(t *testing.T, data []byte, at uint8, by uint16) {
		readings := logged.Weather(data)
		for i := range readings {
			if readings[i].Value.Above(units.Celsius(45)) {
				readings[i].Value = units.Celsius(45)
			}
		}
		if len(readings) < 2 {
			return
		}
		slack := func(share units.Ratio, lines int) float64 { return float64(share)*2e-8 + float64(lines) }
		whole := toxinShare(t, logged.Made(t, readings))

		warmer := append([]series.Reading[units.Temperature](nil), readings...)
		for i := int(at); i < len(warmer); i += 3 {
			if up := warmer[i].Value.Add(units.TemperatureChange(by) * 4_000); !up.Above(units.Celsius(45)) {
				warmer[i].Value = up
			}
		}
		require.GreaterOrEqual(t, float64(toxinShare(t, logged.Made(t, warmer)))+slack(whole, len(readings)), float64(whole))

		i := int(at) % (len(readings) - 1)
		a, b := readings[i], readings[i+1]
		change, err := b.Value.Sub(a.Value)
		require.NoError(t, err)
		middle := series.Reading[units.Temperature]{At: a.At + (b.At-a.At)/2, Value: a.Value.Add(change / 2)}
		split := append(append(append([]series.Reading[units.Temperature](nil), readings[:i+1]...), middle), readings[i+1:]...)
		require.InDelta(t, float64(whole), float64(toxinShare(t, logged.Made(t, split))), slack(whole, 2))

		end := readings[len(readings)-1].At
		var turned []series.Reading[units.Temperature]
		for j := len(readings) - 1; j >= 0; j-- {
			turned = append(turned, series.Reading[units.Temperature]{At: end - readings[j].At, Value: readings[j].Value})
		}
		require.Equal(t, whole, toxinShare(t, logged.Made(t, turned)))
	})
}
