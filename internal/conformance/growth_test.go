package conformance

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/season"
)

// BenchmarkGrowth is what an answer costs by the length of its record: it grows as the record does.
func BenchmarkGrowth(b *testing.B) {
	for _, n := range []int{100, 10_000, 1_000_000} {
		each := min(time.Minute, 24*time.Hour/time.Duration(n))
		warm := wave(b, n, each, about(4))
		hot := wave(b, n, each, about(84))
		steam := wave(b, n, each, about(118))
		pressures := wave(b, n, each, func(i int) units.Pressure { return 12*units.PSI + units.Pressure(i*7_919%13)*units.PSI/40 })
		run := dialRun(b, each)
		file := csvOf(n)
		proposal, err := series.Sniff[units.Temperature]([]byte(file[:strings.LastIndexByte(file[:2_000], '\n')+1]), series.Format{Zone: "UTC"})
		require.NoError(b, err)
		for name, call := range map[string]func() error{
			"audit": func() error { _, err := canner.Audit(run, pressures); return err },
			"hold": func() error {
				_, err := smoke.AuditHold(smoke.DefaultCoreLimit(), smoke.Record{Cores: []series.Series[units.Temperature]{hot}, MaxGap: 10 * time.Minute})
				return err
			},
			"exposure": func() error { _, err := coldchain.Audit(warm, coldchain.Terms{MaxGap: time.Hour}); return err },
			"F":        func() error { _, err := lethality.F(steam, lethality.F0()); return err },
			"CSV": func() error {
				_, err := series.ReadCSV[units.Temperature](strings.NewReader(file), proposal.Format, time.UTC)
				return err
			},
		} {
			work := call // one a loop, for the closure
			b.Run(fmt.Sprintf("%s/%d", name, n), func(b *testing.B) { repeated(b, work) })
		}
	}
	for _, weeks := range []int{52, 520, 5_200} {
		y := fishingYear(weeks)
		b.Run(fmt.Sprintf("keep/%d", weeks), func(b *testing.B) {
			repeated(b, func() error { _, err := season.Keep(y); return err })
		})
		b.Run(fmt.Sprintf("steady/%d", weeks), func(b *testing.B) {
			repeated(b, func() error { _, _, err := season.Steady(y); return err })
		})
	}
}

func repeated(b *testing.B, work func() error) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if err := work(); err != nil {
			b.Fatal(err)
		}
	}
}

// wave is a record that goes up and down.
func wave[T series.Value](t testing.TB, n int, each time.Duration, value func(i int) T) series.Series[T] {
	readings := make([]series.Reading[T], n)
	for i := range readings {
		readings[i] = series.Reading[T]{At: time.Duration(i) * each, Value: value(i)}
	}
	s, err := series.New(readings)
	require.NoError(t, err)
	return s
}

// about is a temperature within 0.3 °C of one.
func about(celsius float64) func(int) units.Temperature {
	return func(i int) units.Temperature { return units.Celsius(celsius + float64(i*7_919%13-6)/20) }
}

func dialRun(t testing.TB, each time.Duration) canner.Run {
	schedule, err := process.Find(process.Request{
		Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial, Altitude: units.State(800 * units.Foot),
	})
	require.NoError(t, err)
	return canner.Run{Schedule: schedule, Altitude: schedule.Altitude, MaxGap: max(6*time.Minute, 2*each)}
}

// csvOf is an invented file of a logger, a row a second.
func csvOf(n int) string {
	var b strings.Builder
	b.WriteString("time,Temperature (°C)\n")
	for i := 0; i < n; i++ {
		fmt.Fprintf(&b, "%s,%d.%d\n", time.Date(2031, 5, 1, 0, 0, i, 0, time.UTC).Format("2006-01-02 15:04:05"), 3+i%5, i%10)
	}
	return b.String()
}

// fishingYear wants more than a trip in four weeks brings.
func fishingYear(weeks int) season.Year {
	keeps := func(days time.Duration) season.Keeping {
		return season.Keeping{Time: days * day, Citation: cite.Citation{Source: cite.FDAStorageChart, Where: "raw fish, refrigerator", Basis: cite.Read}}
	}
	y := season.Year{
		Rule:    season.Rule{Shape: season.Everything, Anglers: 1, Daily: 5, Possession: 10},
		Fishing: season.Expected, Weeks: weeks, Lag: 1, Fish: 3 * units.Kilogram, Weekly: 4 * units.Kilogram, Fresh: keeps(2), Keeps: keeps(365),
	}
	for week := 0; week < weeks; week += 4 {
		y.Trips = append(y.Trips, season.Trip{Week: week, Days: 1, Expected: 5, Possible: 5})
	}
	return y
}
