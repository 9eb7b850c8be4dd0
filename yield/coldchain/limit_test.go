package coldchain

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

func fahrenheit(t *testing.T, r printed.Row, col string) units.Temperature {
	t.Helper()
	if !r.Has(col) {
		return units.Temperature{}
	}
	f, err := units.TemperatureOf(r.Decimal(col), units.FahrenheitScale)
	require.NoError(t, err)
	return f
}

func hours(t *testing.T, r printed.Row, col string) time.Duration {
	t.Helper()
	h := r.Decimal(col).Mul(nanosecondsInHour)
	require.True(t, h.IsInteger(), "%s %s", r, col)
	return time.Duration(h.IntPart())
}

func provenance(r printed.Row) []string {
	return []string{r.Text("source"), r.Text("place"), r.Text("basis")}
}

func provenanceOf(c cite.Citation) []string {
	return []string{c.Source.Key(), c.Where, c.Basis.String()}
}

// Source: FDA Fish and Fishery Products Hazards and Controls Guidance, Appendix 4, table A-2; two rows read, the rest recalled.
func TestTableA2(t *testing.T) {
	limits := Limits(TableA2)
	rows := printed.Table(t, "coldchain/exposure-limits.csv")
	require.Len(t, limits, len(rows))
	for i := range rows {
		r, l := rows[i], limits[i]
		want := Limit{
			Rule: TableA2, Hazard: l.Hazard,
			Over: fahrenheit(t, r, "usable_low_f"), OrAt: r.Text("lower_edge") == "inclusive", UpTo: fahrenheit(t, r, "usable_high_f"),
			Allowed: hours(t, r, "limit_h"), PrintedLow: fahrenheit(t, r, "printed_low_f"), PrintedHigh: fahrenheit(t, r, "printed_high_f"),
			Note: l.Note, Citation: l.Citation,
		}
		if !r.Has("usable_high_f") {
			want.UpTo = units.Fahrenheit(guideTop)
		}
		require.Equal(t, r.Text("hazard"), l.Hazard.String(), r.String())
		require.Empty(t, cmp.Diff(want, l, temperatures), r.String())
		require.Equal(t, provenance(r), provenanceOf(l.Citation), r.String())
		require.NoError(t, l.Citation.Check())
		require.Equal(t, r.Has("note"), l.Note != "", "%s: %s", r, l.Note)
		printed.WithinFloat(t, r, "usable_low_c", l.Over.Celsius())
		if r.Has("usable_high_c") {
			printed.WithinFloat(t, r, "usable_high_c", l.UpTo.Celsius())
		}
	}
}

// Bands of a hazard touch, and the limit never grows with the temperature.
func TestBandsTouch(t *testing.T) {
	require.Len(t, Hazards(), 14)
	for _, h := range Hazards() {
		bands := a2Of(h)
		require.True(t, bands[0].OrAt)
		require.Equal(t, units.Fahrenheit(135), bands[len(bands)-1].UpTo)
		for i := 1; i < len(bands); i++ {
			require.Equal(t, bands[i-1].UpTo, bands[i].Over)
			require.False(t, bands[i].OrAt)
			require.Less(t, bands[i].Allowed, bands[i-1].Allowed)
		}
	}
}

// Every edge belongs to the lower band and one quantum more to the stricter, by LimitAt and by an hour on record.
func TestEdges(t *testing.T) {
	quantum := units.TemperatureChange(1)
	for _, h := range Hazards() {
		bands := a2Of(h)
		for i, band := range bands {
			got, err := LimitAt(h, band.UpTo)
			require.NoError(t, err)
			require.Equal(t, band.Limit, got)
			requireOnlyBand(t, h, band.UpTo, i)
			if above := band.UpTo.Add(quantum); i+1 < len(bands) {
				got, err = LimitAt(h, above)
				require.NoError(t, err)
				require.Equal(t, bands[i+1].Limit, got)
				requireOnlyBand(t, h, above, i+1)
			} else {
				_, err = LimitAt(h, above)
				require.ErrorIs(t, err, units.ErrRange)
				requireOnlyBand(t, h, above, -1)
			}
		}
		_, err := LimitAt(h, bands[0].Over.Add(-quantum))
		require.ErrorIs(t, err, units.ErrRange)
		requireOnlyBand(t, h, bands[0].Over.Add(-quantum), -1)
		requireOnlyBand(t, h, bands[0].Over, 0)
	}
}

func requireOnlyBand(t *testing.T, h Hazard, at units.Temperature, band int) {
	t.Helper()
	r, err := Exposure(record(t, segment{time.Hour, at, at}), Terms{MaxGap: time.Hour, Rules: []Rule{TableA2}, Hazards: []Hazard{h}})
	require.NoError(t, err)
	for i, line := range r.Findings[0].Lines {
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
		hazard Hazard
		at     units.Temperature
	}{
		"hazard not set":        {0, units.Fahrenheit(60)},
		"hazard unknown":        {99, units.Fahrenheit(60)},
		"temperature not set":   {Listeria, units.Temperature{}},
		"colder than the table": {Listeria, units.Fahrenheit(31.2)},
		"warmer than the table": {Listeria, units.Fahrenheit(135.1)},
		"frozen":                {BotulinumE, units.Celsius(-18)},
		"boiling":               {Salmonella, units.Celsius(100)},
		"below S. aureus":       {StaphylococcusAureus, units.Fahrenheit(49.9)},
	} {
		_, err := LimitAt(c.hazard, c.at)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	require.Empty(t, Limits(0))
	require.Empty(t, Limits(99))
}

// Source: FDA guidance, Appendix 4 summary (2020 text read, 4th and 3rd editions recalled).
func TestQuickLimits(t *testing.T) {
	found := map[Rule]int{}
	printed.Table(t, "coldchain/quick-limits.csv").Each(t, func(t *testing.T, r printed.Row) {
		if r.Text("use") == "none" {
			require.NotEmpty(t, r.Text("note"))
			return
		}
		rule, err := ParseRule(r.Text("rule"))
		require.NoError(t, err)
		var lines []Limit
		for _, l := range Limits(rule) {
			if int64(l.Alternative) == r.Int("alternative") {
				lines = append(lines, l)
			}
		}
		require.NotEmpty(t, lines)
		found[rule] += len(lines)
		want := Limit{
			Rule: rule, Alternative: lines[0].Alternative, Note: lines[0].Note, Citation: lines[0].Citation,
			Over: units.Fahrenheit(50), UpTo: units.Fahrenheit(135), PrintedLow: units.Fahrenheit(50), PrintedHigh: units.Fahrenheit(135),
			EverAbove: fahrenheit(t, r, "ever_above_f"), NeverAbove: fahrenheit(t, r, "never_above_f"),
			Allowed: hours(t, r, "hours_above_50f_to_135f"),
		}
		if r.Has("hours_if_only_s_aureus") {
			want.AureusOnly = hours(t, r, "hours_if_only_s_aureus")
		}
		require.Empty(t, cmp.Diff(want, lines[0], temperatures))
		require.Equal(t, provenance(r), provenanceOf(lines[0].Citation))
		require.NoError(t, lines[0].Citation.Check())
		if !r.Has("of_which_above_70f") {
			require.Len(t, lines, 1)
			return
		}
		want.Over, want.PrintedLow = units.Fahrenheit(70), units.Fahrenheit(70)
		want.Allowed, want.Note = hours(t, r, "of_which_above_70f"), lines[1].Note
		require.Len(t, lines, 2)
		require.Empty(t, cmp.Diff(want, lines[1], temperatures))
	})
	require.Len(t, Limits(RawReadyToEat), found[RawReadyToEat])
	require.Len(t, Limits(CookedReadyToEat), found[CookedReadyToEat])
	require.Equal(t, 1, found[RawReadyToEatOlder]) // its other rows are those of the newer text
	older := Limits(RawReadyToEatOlder)
	for i, l := range Limits(RawReadyToEat)[:3] {
		l.Rule = RawReadyToEatOlder
		require.Empty(t, cmp.Diff(l, older[i], temperatures))
	}
	require.Len(t, older, 4)
}

// Source: USDA and FDA consumer advice, read in several excerpts.
func TestKitchenLimits(t *testing.T) {
	rows := printed.Table(t, "coldchain/kitchen-limits.csv")
	limits := Limits(KitchenTwoHours)
	n := 0
	for _, r := range rows {
		if !r.Has("hours") {
			continue
		}
		require.Less(t, n, len(limits))
		l := limits[n]
		require.Equal(t, []units.Temperature{fahrenheit(t, r, "low_f"), fahrenheit(t, r, "high_f")}, []units.Temperature{l.Over, l.UpTo})
		require.Equal(t, hours(t, r, "hours"), l.Allowed)
		require.Equal(t, provenance(r), provenanceOf(l.Citation))
		n++
	}
	require.Len(t, limits, n)
	require.False(t, limits[0].HotAir.IsSet())
	require.Equal(t, units.Fahrenheit(90), limits[1].HotAir)
}
