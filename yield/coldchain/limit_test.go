package coldchain_test

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

// Source: FDA Fish and Fishery Products Hazards and Controls Guidance, Appendix 4, table A-2; two rows read, the rest
// recalled.
func TestTableA2(t *testing.T) {
	limits := coldchain.Limits(coldchain.TableA2)
	rows := printed.Table(t, "coldchain/exposure-limits.csv")
	require.Len(t, limits, len(rows))
	for i := range rows {
		r, l := rows[i], limits[i]
		want := coldchain.Limit{
			Rule: coldchain.TableA2, Hazard: l.Hazard,
			Over: logged.Fahrenheit(t, r, "usable_low_f"), OrAt: r.Text("lower_edge") == "inclusive", UpTo: logged.Fahrenheit(t, r, "usable_high_f"),
			Allowed: logged.Hours(t, r, "limit_h"), PrintedLow: logged.Fahrenheit(t, r, "printed_low_f"), PrintedHigh: logged.Fahrenheit(t, r, "printed_high_f"),
			Note: l.Note, Citation: l.Citation,
		}
		if !r.Has("usable_high_f") {
			want.UpTo = units.Fahrenheit(135)
		}
		require.Equal(t, r.Text("hazard"), l.Hazard.String(), r.String())
		require.Empty(t, cmp.Diff(want, l, temperatures), r.String())
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(l.Citation), r.String())
		require.NoError(t, l.Citation.Check())
		require.Equal(t, r.Has("note"), l.Note != "", "%s: %s", r, l.Note)
		printed.WithinFloat(t, r, "usable_low_c", l.Over.Celsius())
		if r.Has("usable_high_c") {
			printed.WithinFloat(t, r, "usable_high_c", l.UpTo.Celsius())
		}
	}
}

// Every edge belongs to the lower band and one quantum more to the stricter, by FindLimit and by an hour on record.
func TestEdges(t *testing.T) {
	quantum := units.TemperatureChange(1)
	for _, h := range coldchain.Hazards() {
		bands := bandsOf(h)
		for i, band := range bands {
			got, err := coldchain.FindLimit(h, band.UpTo)
			require.NoError(t, err)
			require.Equal(t, band, got)
			requireOnlyBand(t, h, band.UpTo, i)
			if above := band.UpTo.Add(quantum); i+1 < len(bands) {
				got, err = coldchain.FindLimit(h, above)
				require.NoError(t, err)
				require.Equal(t, bands[i+1], got)
				requireOnlyBand(t, h, above, i+1)
			} else {
				_, err = coldchain.FindLimit(h, above)
				require.ErrorIs(t, err, units.ErrRange)
				requireOnlyBand(t, h, above, -1)
			}
		}
		_, err := coldchain.FindLimit(h, bands[0].Over.Add(-quantum))
		require.ErrorIs(t, err, units.ErrRange)
		requireOnlyBand(t, h, bands[0].Over.Add(-quantum), -1)
		requireOnlyBand(t, h, bands[0].Over, 0)
	}
}

func requireOnlyBand(t *testing.T, h coldchain.Hazard, at units.Temperature, band int) {
	t.Helper()
	r, err := coldchain.Audit(logged.Record(t, logged.Ramp(time.Hour, at, at)), coldchain.Terms{MaxGap: time.Hour, Rules: []coldchain.Rule{coldchain.TableA2}, Hazards: []coldchain.Hazard{h}})
	require.NoError(t, err)
	for i, line := range r.Allowances[0].Lines {
		want := time.Duration(0)
		if i == band {
			want = time.Hour
		}
		require.Equal(t, want, line.Used, "%v at %v, band %d", h, at, i+1)
	}
}

// Celsius readings that stand for an edge are on it: 4.4444444 °C is 40 °F, 21.1111111 °C is 70 °F, 10 °C is 50 °F.
func TestEdgesInCelsius(t *testing.T) {
	for fahrenheit, celsius := range map[float64]float64{
		40: 4.44444444, 41: 5, 43: 6.11111111, 50: 10, 54: 12.2222222, 57: 13.8888889, 59: 15, 70: 21.1111111, 80: 26.6666667, 86: 30, 93: 33.8888889, 135: 57.2222222,
		38: 3.33333333, 39.2: 4, 43.7: 6.5, 46.4: 8, 90: 32.2222222, 140: 60,
	} {
		require.Equal(t, units.Fahrenheit(fahrenheit), units.Celsius(celsius))
	}
	// 3.3 °C is printed for 38 °F and lies below it; 37.9 °F lies below 3.3 °C.
	require.True(t, units.Celsius(3.3).Below(units.Fahrenheit(38)))
	require.True(t, units.Celsius(3.3).Above(units.Fahrenheit(37.9)))
}

func TestLimitAtRefuses(t *testing.T) {
	for name, c := range map[string]struct {
		hazard coldchain.Hazard
		at     units.Temperature
	}{
		"hazard not set":        {0, units.Fahrenheit(60)},
		"hazard unknown":        {99, units.Fahrenheit(60)},
		"temperature not set":   {coldchain.Listeria, units.Temperature{}},
		"colder than the table": {coldchain.Listeria, units.Fahrenheit(31.2)},
		"warmer than the table": {coldchain.Listeria, units.Fahrenheit(135.1)},
		"frozen":                {coldchain.BotulinumE, units.Celsius(-18)},
		"boiling":               {coldchain.Salmonella, units.Celsius(100)},
		"below S. aureus":       {coldchain.StaphylococcusAureus, units.Fahrenheit(49.9)},
	} {
		_, err := coldchain.FindLimit(c.hazard, c.at)
		logged.Refused(t, err, name)
	}
	require.Empty(t, coldchain.Limits(0))
	require.Empty(t, coldchain.Limits(99))
}

// Source: FDA guidance, Appendix 4 summary (2020 text read, 4th and 3rd editions recalled).
func TestQuickLimits(t *testing.T) {
	found := map[coldchain.Rule]int{}
	printed.Table(t, "coldchain/quick-limits.csv").Each(t, func(t *testing.T, r printed.Row) {
		if r.Text("use") == "none" {
			require.NotEmpty(t, r.Text("note"))
			return
		}
		rule, err := coldchain.ParseRule(r.Text("rule"))
		require.NoError(t, err)
		var lines []coldchain.Limit
		for _, l := range coldchain.Limits(rule) {
			if int64(l.Alternative) == r.Int("alternative") {
				lines = append(lines, l)
			}
		}
		require.NotEmpty(t, lines)
		found[rule] += len(lines)
		want := coldchain.Limit{
			Rule: rule, Alternative: lines[0].Alternative, Note: lines[0].Note, Citation: lines[0].Citation,
			Over: units.Fahrenheit(50), UpTo: units.Fahrenheit(135), PrintedLow: units.Fahrenheit(50), PrintedHigh: units.Fahrenheit(135),
			EverAbove: logged.Fahrenheit(t, r, "ever_above_f"), NeverAbove: logged.Fahrenheit(t, r, "never_above_f"),
			Allowed: logged.Hours(t, r, "hours_above_50f_to_135f"),
		}
		if r.Has("hours_if_only_s_aureus") {
			want.AureusOnly = logged.Hours(t, r, "hours_if_only_s_aureus")
		}
		require.Empty(t, cmp.Diff(want, lines[0], temperatures))
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(lines[0].Citation))
		require.NoError(t, lines[0].Citation.Check())
		if !r.Has("of_which_above_70f") {
			require.Len(t, lines, 1)
			return
		}
		want.Over, want.PrintedLow = units.Fahrenheit(70), units.Fahrenheit(70)
		want.Allowed, want.Note = logged.Hours(t, r, "of_which_above_70f"), lines[1].Note
		require.Len(t, lines, 2)
		require.Empty(t, cmp.Diff(want, lines[1], temperatures))
	})
	require.Len(t, coldchain.Limits(coldchain.RawReadyToEat), found[coldchain.RawReadyToEat])
	require.Len(t, coldchain.Limits(coldchain.CookedReadyToEat), found[coldchain.CookedReadyToEat])
	require.Equal(t, 1, found[coldchain.RawReadyToEatOlder]) // its other rows are those of the newer text
	older := coldchain.Limits(coldchain.RawReadyToEatOlder)
	for i, l := range coldchain.Limits(coldchain.RawReadyToEat)[:3] {
		l.Rule = coldchain.RawReadyToEatOlder
		require.Empty(t, cmp.Diff(l, older[i], temperatures))
	}
	require.Len(t, older, 4)
}

// Source: USDA and FDA consumer advice, read in several excerpts.
func TestKitchenLimits(t *testing.T) {
	rows := printed.Table(t, "coldchain/kitchen-limits.csv")
	limits := coldchain.Limits(coldchain.KitchenTwoHours)
	n := 0
	for _, r := range rows {
		if !r.Has("hours") {
			continue
		}
		require.Less(t, n, len(limits))
		l := limits[n]
		require.Equal(t, []units.Temperature{logged.Fahrenheit(t, r, "low_f"), logged.Fahrenheit(t, r, "high_f")}, []units.Temperature{l.Over, l.UpTo})
		require.Equal(t, logged.Hours(t, r, "hours"), l.Allowed)
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(l.Citation))
		n++
	}
	require.Len(t, limits, n)
	require.False(t, limits[0].HotAir.IsSet())
	require.Equal(t, units.Fahrenheit(90), limits[1].HotAir)
}

// Bands of a hazard touch, and the limit never grows with the temperature.
func TestBandsTouch(t *testing.T) {
	require.Len(t, coldchain.Hazards(), 14)
	for _, h := range coldchain.Hazards() {
		bands := bandsOf(h)
		require.True(t, bands[0].OrAt)
		require.Equal(t, units.Fahrenheit(135), bands[len(bands)-1].UpTo)
		for i := 1; i < len(bands); i++ {
			require.Equal(t, bands[i-1].UpTo, bands[i].Over)
			require.False(t, bands[i].OrAt)
			require.Less(t, bands[i].Allowed, bands[i-1].Allowed)
		}
	}
}

// bandsOf are the limits of one hazard.
func bandsOf(h coldchain.Hazard) []coldchain.Limit {
	var bands []coldchain.Limit
	for _, l := range coldchain.Limits(coldchain.TableA2) {
		if l.Hazard == h {
			bands = append(bands, l)
		}
	}
	return bands
}
