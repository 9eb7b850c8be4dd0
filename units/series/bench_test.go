package series_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// tenThousand is a made-up record, one reading a second, that crosses 80 °C between any two: the worst case.
func tenThousand(tb testing.TB) (series.Series[units.Temperature], units.Temperature) {
	tb.Helper()
	rs := make([]series.Reading[units.Temperature], 10_000)
	for i := range rs {
		rs[i].At = time.Duration(i) * time.Second
		rs[i].Value = units.Celsius(80 + float64(1+i%97)/10*float64(1-i%2*2))
	}
	s, err := series.New(rs)
	require.NoError(tb, err)
	return s, units.Celsius(80)
}

func logFile() string {
	var b strings.Builder
	b.WriteString("time (s),core (°C)\n")
	for i := 0; i < 10_000; i++ {
		fmt.Fprintf(&b, "%d,%d.%d\n", i, 20+i/100, i%10)
	}
	return b.String()
}

func TestQuestionsDoNotAllocate(t *testing.T) {
	s, limit := tenThousand(t)
	r, err := series.Watch(limit)
	require.NoError(t, err)
	for name, question := range map[string]func(){
		"AtOrAbove":        func() { _, _ = s.AtOrAbove(limit) },
		"Above":            func() { _, _ = s.Above(limit) },
		"LongestAtOrAbove": func() { _, _ = s.LongestAtOrAbove(limit) },
		"FirstAtOrAbove":   func() { _, _, _ = s.FirstAtOrAbove(limit) },
		"ValueAt":          func() { _, _ = s.ValueAt(time.Minute + 1) },
		"At":               func() { _, _ = s.At(7) },
		"Max":              func() { _, _ = s.Max() },
		"Next": func() {
			last, _ := r.Last()
			r, _ = r.Next(series.Reading[units.Temperature]{At: last.At + time.Second, Value: limit})
		},
	} {
		require.Zero(t, testing.AllocsPerRun(10, question), name)
	}
	require.Positive(t, r.Total()) // Next did take the readings
}

func BenchmarkAtOrAbove(b *testing.B) {
	s, limit := tenThousand(b)
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		_, _ = s.AtOrAbove(limit)
	}
}

func BenchmarkAtOrAboveNoCrossing(b *testing.B) {
	s, _ := tenThousand(b)
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		_, _ = s.AtOrAbove(units.Celsius(59))
	}
}

func BenchmarkLongestAtOrAbove(b *testing.B) {
	s, limit := tenThousand(b)
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		_, _ = s.LongestAtOrAbove(limit)
	}
}

func BenchmarkAtEveryReading(b *testing.B) {
	s, _ := tenThousand(b)
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		for k := 0; k < s.Len(); k++ {
			_, _ = s.At(k)
		}
	}
}

func BenchmarkNext(b *testing.B) {
	s, limit := tenThousand(b)
	rs := s.Readings()
	fresh, err := series.Watch(limit)
	require.NoError(b, err)
	r := fresh
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if i%len(rs) == 0 {
			r = fresh
		}
		r, _ = r.Next(rs[i%len(rs)])
	}
}

func BenchmarkNew(b *testing.B) {
	s, _ := tenThousand(b)
	rs := s.Readings()
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		_, _ = series.New(rs)
	}
}

// datedFile is a made-up record of n readings a second apart, with date and clock.
func datedFile(n int) string {
	var b strings.Builder
	b.WriteString("time,core (°C)\n")
	start := time.Date(2026, 8, 1, 0, 0, 0, 0, time.UTC)
	for i := 0; i < n; i++ {
		fmt.Fprintf(&b, "%s,%d.%d\n", start.Add(time.Duration(i)*time.Second).Format("2006-01-02 15:04:05"), 20+i%80, i%10)
	}
	return b.String()
}

func benchmarkRead(b *testing.B, file string, f series.Format) {
	b.Helper()
	b.ReportAllocs()
	b.SetBytes(int64(len(file)))
	rows := 0
	for i := 0; i < b.N; i++ {
		log, err := read(file, f, nil)
		if err != nil {
			b.Fatal(err)
		}
		rows += log.Series.Len()
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(rows), "ns/row")
}

func BenchmarkReadCSVCounted(b *testing.B) { benchmarkRead(b, logFile(), counted()) }

func BenchmarkReadCSVDated(b *testing.B) { benchmarkRead(b, datedFile(10_000), dated()) }

func BenchmarkReadCSVQuoted(b *testing.B) {
	file := datedFile(10_000)
	benchmarkRead(b, "\""+strings.NewReplacer(",", "\",\"", "\n", "\"\n\"").Replace(file[:len(file)-1])+"\"\n", dated())
}

func BenchmarkReadCSVZone(b *testing.B) {
	zone, err := time.LoadLocation("Europe/Berlin")
	require.NoError(b, err)
	f := dated()
	f.Zone = "Europe/Berlin"
	file := datedFile(10_000)
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := read(file, f, zone); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkReadCSVMillion(b *testing.B) { benchmarkRead(b, datedFile(1_000_000), dated()) }

func BenchmarkSniff(b *testing.B) {
	file := []byte(datedFile(1000))
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := series.Sniff[units.Temperature](file, series.Format{}); err != nil {
			b.Fatal(err)
		}
	}
}

// A row costs one allocation, its text; the times and values are kept once.
func TestReadCSVAllocatesOnceARow(t *testing.T) {
	file := datedFile(5000)
	f := dated()
	perFile := testing.AllocsPerRun(3, func() {
		if _, err := read(file, f, nil); err != nil {
			t.Fatal(err)
		}
	})
	require.Less(t, perFile, 5000*1.05)
}

func BenchmarkReadColumn(b *testing.B) {
	file := logFile()
	b.ReportAllocs()
	b.SetBytes(int64(len(file)))
	for i := 0; i < b.N; i++ {
		if _, err := series.ReadColumn[units.Temperature](strings.NewReader(file), "core"); err != nil {
			b.Fatal(err)
		}
	}
}
