package logged

import (
	"math"
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"github.com/shopspring/decimal"
)

// Segment is a straight line of a record.
type Segment struct {
	length time.Duration
	from   units.Temperature
	to     units.Temperature
}

// Ramp is a straight line that lasts a time.
func Ramp(length time.Duration, from, to units.Temperature) Segment { return Segment{length, from, to} }

// Flat is a time at one temperature, degrees Fahrenheit.
func Flat(d time.Duration, fahrenheit float64) Segment {
	return Ramp(d, units.Fahrenheit(fahrenheit), units.Fahrenheit(fahrenheit))
}

// Record joins segments; where one does not begin as the last ended, the jump takes a nanosecond.
func Record(t testing.TB, segments ...Segment) series.Series[units.Temperature] {
	t.Helper()
	var readings []series.Reading[units.Temperature]
	now := time.Duration(0)
	for i, s := range segments {
		if i == 0 || segments[i-1].to != s.from {
			at := now
			if i > 0 {
				at++
			}
			readings = append(readings, series.Reading[units.Temperature]{At: at, Value: s.from})
		}
		now += s.length
		readings = append(readings, series.Reading[units.Temperature]{At: now, Value: s.to})
	}
	return Made(t, readings)
}

// Histories are invented temperature histories by their id, straight lines within a segment.
func Histories(t *testing.T, file string) map[string]series.Series[units.Temperature] {
	t.Helper()
	segments := map[string][]Segment{}
	for _, r := range printed.Table(t, file) {
		line := Ramp(Hours(t, r, "duration_h"), Celsius(t, r, "temp_start_c"), Celsius(t, r, "temp_end_c"))
		segments[r.Text("id")] = append(segments[r.Text("id")], line)
	}
	made := map[string]series.Series[units.Temperature]{}
	for id, s := range segments {
		made[id] = Record(t, s...)
	}
	return made
}

// InHours is a time in hours, to more digits than any of the tables has.
func InHours(d time.Duration) decimal.Decimal {
	return decimal.NewFromInt(int64(d)).DivRound(nanosecondsInHour, 12)
}

// Invented is an invented logger's week: a reading a minute, a swing of a few degrees and a saw of noise.
func Invented(b *testing.B, mean, swing float64) series.Series[units.Temperature] {
	b.Helper()
	readings := make([]series.Reading[units.Temperature], 10_000)
	for i := range readings {
		f := mean + float64(swing*math.Sin(float64(i)/230)) + float64(i%7)/10
		readings[i] = series.Reading[units.Temperature]{At: time.Duration(i) * time.Minute, Value: units.Fahrenheit(f)}
	}
	s, err := series.New(readings)
	if err != nil {
		b.Fatal(err)
	}
	return s
}

// Longest is a gap that no history exceeds: its flat days have a reading at either end.
const Longest = 100 * time.Hour
