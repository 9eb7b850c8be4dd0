package coldchain

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

var (
	nanosecondsInHour = decimal.NewFromInt(int64(time.Hour))
	temperatures      = cmp.Comparer(func(a, b units.Temperature) bool { return a == b })
)

// segment is a straight line of a record.
type segment struct {
	length time.Duration
	from   units.Temperature
	to     units.Temperature
}

// record joins segments; where one does not begin as the last ended, the jump takes a nanosecond.
func record(t testing.TB, segments ...segment) series.Series[units.Temperature] {
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
	made, err := series.New(readings)
	require.NoError(t, err)
	return made
}

// histories are invented temperature histories by their id, straight lines within a segment.
func histories(t *testing.T, file string) map[string]series.Series[units.Temperature] {
	t.Helper()
	segments := map[string][]segment{}
	for _, r := range printed.Table(t, file) {
		from, err := units.TemperatureOf(r.Decimal("temp_start_c"), units.CelsiusScale)
		require.NoError(t, err)
		to, err := units.TemperatureOf(r.Decimal("temp_end_c"), units.CelsiusScale)
		require.NoError(t, err)
		segments[r.Text("id")] = append(segments[r.Text("id")], segment{hours(t, r, "duration_h"), from, to})
	}
	made := map[string]series.Series[units.Temperature]{}
	for id, s := range segments {
		made[id] = record(t, s...)
	}
	return made
}

// longest is a gap that no history exceeds: its flat days have a reading at either end.
const longest = 100 * time.Hour

func exposed(t *testing.T, s series.Series[units.Temperature], terms Terms) Report {
	t.Helper()
	if terms.MaxGap == 0 {
		terms.MaxGap = longest
	}
	r, err := Exposure(s, terms)
	require.NoError(t, err)
	return r
}

// inHours is a time in hours, to more digits than any of the tables has.
func inHours(d time.Duration) decimal.Decimal {
	return decimal.NewFromInt(int64(d)).DivRound(nanosecondsInHour, 12)
}

func met(v Verdict) string {
	switch v {
	case Within:
		return "yes"
	case Exceeded:
		return "no"
	}
	return v.String()
}

// Computed by exact integration outside this library, checked there by Simpson's rule and by sampling.
func TestHistoryResults(t *testing.T) {
	records := histories(t, "coldchain/records/histories.csv")
	require.Len(t, records, 7)
	printed.Table(t, "coldchain/history-results.csv").Each(t, func(t *testing.T, r printed.Row) {
		s := records[r.Text("id")]
		report := exposed(t, s, Terms{})
		printed.Within(t, r, "duration_h", inHours(report.Span))
		require.Zero(t, report.Unknown)
		for i, col := range []string{"h_above_38f", "h_above_40f", "h_above_50f", "h_above_70f", "h_above_80f"} {
			printed.Within(t, r, col, inHours(report.Hours[i].Time))
		}
		for col, rule := range map[string]Rule{
			"two_hour_met": KitchenTwoHours, "raw_met_5h": RawReadyToEat, "raw_met_6h": RawReadyToEatOlder, "cooked_met_5h": CookedReadyToEat,
		} {
			require.Equal(t, r.Text(col), met(exposed(t, s, Terms{Rules: []Rule{rule}}).Verdict), col)
		}
	})
}

// Computed as above, for five hazards of table A-2 and its three readings.
func TestHistoryBands(t *testing.T) {
	records := histories(t, "coldchain/records/histories.csv")
	printed.Table(t, "coldchain/history-bands.csv").Each(t, func(t *testing.T, r printed.Row) {
		hazard, err := ParseHazard(r.Text("hazard"))
		require.NoError(t, err)
		terms := Terms{Rules: []Rule{TableA2}, Hazards: []Hazard{hazard}}
		sum := exposed(t, records[r.Text("id")], terms).Findings[0]
		printed.Within(t, r, "sum_of_fractions", units.In(sum.Used, units.One, 12))
		lines := sum.Lines
		if hazard == StaphylococcusAureus { // the copy leaves out its single-point first band
			lines = lines[1:]
		}
		for i, col := range []string{"band1_h", "band2_h", "band3_h", "band4_h", "band5_h"} {
			require.Equal(t, i < len(lines), r.Has(col), col)
			if i < len(lines) {
				printed.Within(t, r, col, inHours(lines[i].Used))
			}
		}
		for col, reading := range map[string]Reading{"met_each_band": EachBand, "met_nested": Nested} {
			terms.Reading = reading
			require.Equal(t, r.Text(col), met(exposed(t, records[r.Text("id")], terms).Verdict), col)
		}
		require.Equal(t, sum.Used <= units.One, sum.Verdict == Within)
	})
}

// What a rule counts is what the record itself says of the time between two temperatures, to the nanosecond.
func TestCountsAgreeWithTheSeries(t *testing.T) {
	for id, s := range histories(t, "coldchain/records/histories.csv") {
		for _, reading := range []Reading{EachBand, Nested} {
			for _, f := range exposed(t, s, Terms{Reading: reading}).Findings {
				for _, line := range f.Lines {
					l := line.Limit
					top := l.UpTo
					if reading == Nested && f.Rule == TableA2 {
						top = units.Fahrenheit(135)
					}
					beyond, err := s.Above(top)
					require.NoError(t, err)
					over, err := s.Above(l.Over)
					require.NoError(t, err)
					held, err := s.AtOrAbove(l.Over) // each crossing rounds down
					require.NoError(t, err)
					if !l.OrAt {
						require.Equal(t, over-beyond, line.Used, "%s %v", id, l)
						continue
					}
					require.GreaterOrEqual(t, line.Used, held-beyond, "%s %v", id, l)
					require.LessOrEqual(t, line.Used, held-beyond+time.Duration(s.Len()), "%s %v", id, l)
				}
			}
		}
	}
}
