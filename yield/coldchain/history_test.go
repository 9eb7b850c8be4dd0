package coldchain_test

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

// longest is a gap that no history exceeds: its flat days have a reading at either end.
const longest = 100 * time.Hour

// vouched are terms for a record that is drawn by its corners: of the warmest part, and true between any two readings.
func vouched(terms coldchain.Terms) coldchain.Terms {
	if terms.MaxGap == 0 {
		terms.MaxGap = longest
	}
	terms.Probe, terms.Undisturbed = coldchain.WarmestPart, true
	return terms
}

func exposed(t *testing.T, s series.Series[units.Temperature], terms coldchain.Terms) coldchain.Report {
	t.Helper()
	r, err := coldchain.Audit(s, vouched(terms))
	require.NoError(t, err)
	return r
}

func met(v verdict.Verdict) string {
	switch v {
	case verdict.Met:
		return "yes"
	case verdict.NotMet:
		return "no"
	}
	return v.String()
}

// Computed by exact integration outside this library, checked there by Simpson's rule and by sampling.
func TestHistoryResults(t *testing.T) {
	records := logged.Histories(t, "coldchain/records/histories.csv")
	require.Len(t, records, 7)
	printed.Table(t, "coldchain/history-results.csv").Each(t, func(t *testing.T, r printed.Row) {
		s := records[r.Text("id")]
		report := exposed(t, s, coldchain.Terms{})
		printed.Within(t, r, "duration_h", logged.InHours(report.Span))
		require.Zero(t, report.Unknown)
		for i, col := range []string{"h_above_38f", "h_above_40f", "h_above_50f", "h_above_70f", "h_above_80f"} {
			printed.Within(t, r, col, logged.InHours(report.Hours[i].Time))
		}
		for col, rule := range map[string]coldchain.Rule{
			"two_hour_met": coldchain.KitchenTwoHours, "raw_met_5h": coldchain.RawReadyToEat, "raw_met_6h": coldchain.RawReadyToEatOlder, "cooked_met_5h": coldchain.CookedReadyToEat,
		} {
			require.Equal(t, r.Text(col), met(exposed(t, s, coldchain.Terms{Rules: []coldchain.Rule{rule}}).Verdict), col)
		}
	})
}

// Computed as above, for five hazards of table A-2 and its three readings.
func TestHistoryBands(t *testing.T) {
	records := logged.Histories(t, "coldchain/records/histories.csv")
	printed.Table(t, "coldchain/history-bands.csv").Each(t, func(t *testing.T, r printed.Row) {
		hazard, err := coldchain.ParseHazard(r.Text("hazard"))
		require.NoError(t, err)
		terms := coldchain.Terms{Rules: []coldchain.Rule{coldchain.TableA2}, Hazards: []coldchain.Hazard{hazard}}
		sum := exposed(t, records[r.Text("id")], terms).Allowances[0]
		printed.Within(t, r, "sum_of_fractions", units.In(sum.Used, units.One, 12))
		lines := sum.Lines
		if hazard == coldchain.StaphylococcusAureus { // the copy leaves out its single-point first band
			lines = lines[1:]
		}
		for i, col := range []string{"band1_h", "band2_h", "band3_h", "band4_h", "band5_h"} {
			require.Equal(t, i < len(lines), r.Has(col), col)
			if i < len(lines) {
				printed.Within(t, r, col, logged.InHours(lines[i].Used))
			}
		}
		for col, reading := range map[string]coldchain.Reading{"met_each_band": coldchain.EachBand, "met_nested": coldchain.Nested} {
			terms.Reading = reading
			require.Equal(t, r.Text(col), met(exposed(t, records[r.Text("id")], terms).Verdict), col)
		}
		require.Equal(t, sum.Used <= units.One, sum.Verdict == verdict.Met)
	})
}

// What a rule counts is what the record itself says of the time between two temperatures, to the nanosecond.
func TestCountsAgreeWithTheSeries(t *testing.T) {
	for id, s := range logged.Histories(t, "coldchain/records/histories.csv") {
		for _, reading := range []coldchain.Reading{coldchain.EachBand, coldchain.Nested} {
			for _, f := range exposed(t, s, coldchain.Terms{Reading: reading}).Allowances {
				for _, line := range f.Lines {
					l := line.Limit
					top := l.UpTo
					if reading == coldchain.Nested && f.Rule == coldchain.TableA2 {
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

// temperatures compares them in tests.
var temperatures = cmp.Comparer(func(a, b units.Temperature) bool { return a == b })
