package lethality_test

import (
	"fmt"
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

func citation(t testing.TB, r printed.Row) cite.Citation {
	t.Helper()
	source, err := cite.ParseSource(r.Text("source"))
	require.NoError(t, err)
	basis, err := cite.ParseBasis(r.Text("basis"))
	require.NoError(t, err)
	return cite.Citation{Source: source, Where: r.Text("place"), Basis: basis}
}

// Every printed D and z is in the library and every one there is in the print, in the same order.
func TestResistancesAreThePrintedOnes(t *testing.T) {
	rows, all := printed.Table(t, "lethality/resistance.csv"), lethality.Resistances()
	require.Len(t, all, len(rows))
	for i, r := range rows {
		want := lethality.Resistance{Organism: r.Text("organism"), Medium: r.Text("medium"), Note: r.Text("note"), Citation: citation(t, r)}
		if r.Has("temp_c") {
			want.Temperature = at(t, r, "temp_c", units.CelsiusScale)
		}
		if r.Has("d_min") {
			want.D = minutesOf(r.Decimal("d_min"))
		}
		if r.Has("d_min_high") {
			want.DHigh = minutesOf(r.Decimal("d_min_high"))
		}
		if r.Has("z_c") {
			want.Z = of(t, r, "z_c", units.Kelvins)
		}
		if r.Has("z_c_high") {
			want.ZHigh = of(t, r, "z_c_high", units.Kelvins)
		}
		require.Equal(t, want, all[i], r.String())
	}
	all[0].Organism = ""
	require.NotEmpty(t, lethality.Resistances()[0].Organism, "the slice is fresh")
}

// killRow is a printed row as the library should have it.
type killRow struct {
	table  lethality.KillTable
	at     units.Temperature
	time   time.Duration
	logs   lethality.Logs
	source cite.Citation
}

// Both ways: every printed time comes out at its temperature and nowhere a quantum beside it, and no other row exists.
func TestKillTimesAreThePrintedOnes(t *testing.T) {
	var rows []killRow
	for _, r := range printed.Table(t, "lethality/botulinum-6d.csv") {
		table := lethality.BotulinumUK
		if r.Text("table") == "A-4" {
			table = lethality.BotulinumA4
		}
		rows = append(rows, killRow{table, at(t, r, "temp_c", units.CelsiusScale), minutesOf(r.Decimal("minutes")), lethality.Logs(6 * lethality.One), citation(t, r)})
	}
	for _, r := range printed.Table(t, "lethality/listeria-6d.csv") {
		table := lethality.ListeriaUK
		if r.Text("table") == "A-3" {
			table = lethality.ListeriaA3
		}
		rows = append(rows, killRow{table, at(t, r, "temp_c", units.CelsiusScale), minutesOf(r.Decimal("minutes")), lethality.Logs(6 * lethality.One), citation(t, r)})
	}
	for _, r := range printed.Table(t, "lethality/salmonella.csv") {
		rows = append(rows, killRow{lethality.Salmonella1999, at(t, r, "temp_f", units.FahrenheitScale),
			time.Duration(r.Int("seconds")) * time.Second, lethality.Logs(of(t, r, "logs", units.One)), citation(t, r)})
	}
	want := map[killRow]bool{}
	for _, row := range rows {
		want[row] = true
		found := lethality.KillTimesAt(row.at, row.table)
		require.Contains(t, found, lethality.KillTime{Table: row.table, Temperature: row.at, Time: row.time, Reductions: row.logs, Citation: row.source, Cautions: row.table.Cautions()})
		require.Empty(t, lethality.KillTimesAt(row.at.Add(1), row.table), "never the nearest row")
		require.Empty(t, lethality.KillTimesAt(row.at.Add(-1), row.table))
	}
	all := lethality.KillTimes()
	require.Len(t, all, len(want))
	for _, k := range all {
		require.True(t, want[killRow{k.Table, k.Temperature, k.Time, k.Reductions, k.Citation}], "%v is in no printed copy", k)
	}
	require.Empty(t, lethality.KillTimesAt(units.Celsius(90)), "no table asked for")
	require.Empty(t, lethality.KillTimesAt(units.Temperature{}, lethality.BotulinumA4))
	require.True(t, lethality.KillTable(0).Citation().IsZero())
}

// Every table says what must be known, with where that is from.
func TestEveryTableHasCautions(t *testing.T) {
	for k := lethality.BotulinumA4; k <= lethality.Salmonella1999; k++ {
		require.NoError(t, k.Citation().Check())
		require.NotEmpty(t, k.Cautions(), k.String())
		for _, c := range k.Cautions() {
			require.NotEmpty(t, c.Text)
			require.NoError(t, c.Citation.Check())
		}
	}
	require.Empty(t, lethality.KillTable(0).Cautions())
	require.Empty(t, lethality.KillTable(6).Cautions())
}

// The stricter of two tables stands first.
func TestStricterFirst(t *testing.T) {
	found := lethality.KillTimesAt(units.Celsius(86), lethality.BotulinumUK, lethality.BotulinumA4)
	require.Len(t, found, 2)
	require.Equal(t, lethality.BotulinumA4, found[0].Table)
	found = lethality.KillTimesAt(units.Celsius(65), lethality.ListeriaA3, lethality.ListeriaUK)
	require.Equal(t, lethality.ListeriaUK, found[0].Table)
	us, uk := lethality.NonProteolytic(), lethality.NonProteolyticUK()
	for c := 85.; c < 90; c += 0.5 { // where both are printed
		a, err := us.TimeAt(units.Celsius(c))
		require.NoError(t, err)
		b, err := uk.TimeAt(units.Celsius(c))
		require.NoError(t, err)
		require.Greater(t, a.Time, b.Time)
	}
}

// The formulas against the printed six-D rows; the rows that depart say so themselves.
func TestSixDByFormula(t *testing.T) {
	printed.Table(t, "lethality/botulinum-6d.csv").Each(t, func(t *testing.T, r printed.Row) {
		target := lethality.NonProteolyticUK()
		if r.Text("table") == "A-4" {
			target = lethality.NonProteolytic()
		}
		sixD(t, r, target)
	})
	printed.Table(t, "lethality/listeria-6d.csv").Each(t, func(t *testing.T, r printed.Row) { sixD(t, r, lethality.Listeria()) })
}

func sixD(t *testing.T, r printed.Row, target lethality.Pasteurisation) {
	temperature := at(t, r, "temp_c", units.CelsiusScale)
	if span := target.Span(); temperature.Below(span.From) || temperature.Above(span.To) {
		_, err := target.TimeAt(temperature)
		require.ErrorIs(t, err, units.ErrRange, "another table's row beyond the span of this one")
		return
	}
	six, err := target.TimeAt(temperature)
	require.NoError(t, err)
	d := six.Time
	printed.Within(t, r, "minutes", inMinutes(d))
	// the same target by a record held there
	v, err := target.Value(line(t, temperature, temperature, d), lethality.Moist)
	require.NoError(t, err)
	require.InDelta(t, 6, units.Float(units.Ratio(v.Reductions), units.One), 1e-8)
	if r.Has("lethal_rate") {
		_, six := target.SixD()
		printed.WithinFloat(t, r, "lethal_rate", six.Minutes()/d.Minutes())
	}
}

// Three D of one strain in buffer lead to more at 121.1 °C than the 0.21 and 0.204 min of 12-D arguments.
func TestBufferSporesAtTheReference(t *testing.T) {
	points := 0
	for _, r := range lethality.Resistances() {
		if r.Citation.Source != cite.OdlaugPflug1977 {
			continue
		}
		points++
		d, err := lethality.Reference{Temperature: r.Temperature, Z: r.Z}.TimeAt(units.Celsius(121.1), r.D)
		require.NoError(t, err)
		require.InDelta(t, 0.345, d.Time.Minutes(), 0.02)
	}
	require.Equal(t, 3, points)
}

// A straight line through the log of printed D gives back the printed z, as far as the points lie on one.
func TestPrintedZFromPrintedD(t *testing.T) {
	for _, c := range []struct {
		source cite.Source
		medium string
		within float64
	}{
		{cite.Rhodehamel1991, "menhaden surimi", 0.3}, {cite.Lindstrom2003, "whitefish medium", 0.1}, {cite.HarrisonHuang1990, "blue crab meat (TSA recovery)", 0.1},
	} {
		var n, st, sl, stt, stl, z float64
		for _, r := range lethality.Resistances() {
			if r.Citation.Source == c.source && r.Medium == c.medium {
				x, y := r.Temperature.Celsius(), math.Log10(r.D.Minutes())
				n, st, sl, stt, stl = n+1, st+x, sl+y, stt+x*x, stl+x*y
				z = units.Float(r.Z, units.Kelvins)
			}
		}
		require.GreaterOrEqual(t, n, 2.)
		require.InDelta(t, z, -(n*stt-st*st)/(n*stl-st*sl), c.within, c.medium)
	}
}

// The 6.5-log rows of cooked beef fall along z = 10.01 °F, by a fit of their logs where minutes are printed to two digits or seconds.
func TestSalmonellaRowsKeepOneZ(t *testing.T) {
	var n, st, sl, stt, stl float64
	for _, k := range lethality.KillTimes() {
		if k.Table == lethality.Salmonella1999 && k.Reductions == lethality.Logs(65*lethality.One/10) && k.Time > 0 {
			x, y := k.Temperature.Fahrenheit(), math.Log10(k.Time.Minutes())
			n, st, sl, stt, stl = n+1, st+x, sl+y, stt+x*x, stl+x*y
		}
	}
	require.InDelta(t, 10.01, -(n*stt-st*st)/(n*stl-st*sl), 0.02)
}

func TestPasteurisationRefuses(t *testing.T) {
	good := record(t, 20, 70, 95, 95, 20)
	var dry lethality.DrySmokeError
	for _, target := range []lethality.Pasteurisation{lethality.NonProteolytic(), lethality.NonProteolyticUK()} {
		_, err := target.Value(good, lethality.DrySmoke)
		require.ErrorAs(t, err, &dry)
		require.Equal(t, cite.Lindstrom2003, dry.Citation.Source)
	}
	for name, err := range map[string]error{
		"heat unstated":        second(lethality.Listeria().Value(good, 0)),
		"zero target":          second(lethality.Pasteurisation{}.Value(good, lethality.Moist)),
		"too hot":              second(lethality.Listeria().Value(record(t, 20, 151), lethality.Moist)),
		"time: unset":          second(lethality.Listeria().TimeAt(units.Temperature{})),
		"time: below the span": second(lethality.Listeria().TimeAt(units.Celsius(62.9))),
		"time: above the span": second(lethality.NonProteolytic().TimeAt(units.Celsius(100.1))),
		"time: too cold":       second(lethality.Listeria().TimeAt(units.Celsius(-70))),
		"time: too hot":        second(lethality.NonProteolytic().TimeAt(units.Celsius(151))),
		"time: none":           second(lethality.Pasteurisation{}.TimeAt(units.Celsius(70))),
	} {
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	_, err := lethality.Listeria().Value(temperatures{}, lethality.Moist)
	require.ErrorIs(t, err, series.ErrEmpty)
	_, err = lethality.Listeria().Value(good, 3)
	require.ErrorIs(t, err, units.ErrUnknown)
	v, err := lethality.Listeria().Value(good, lethality.DrySmoke)
	require.NoError(t, err)
	said := fmt.Sprint(v.Cautions)
	require.Contains(t, said, "Dry smoke protects the surface")
	require.Contains(t, said, "decide")
}

// A line that crosses 90 °C is split there: up and down give the same, and the parts add up.
func TestTwoZSplitAtTheKnee(t *testing.T) {
	target := lethality.NonProteolytic()
	p := func(s temperatures) float64 {
		v, err := target.Value(s, lethality.Moist)
		require.NoError(t, err)
		return float64(v.P)
	}
	up, down := line(t, units.Celsius(85), units.Celsius(95), 10*time.Minute), line(t, units.Celsius(95), units.Celsius(85), 10*time.Minute)
	require.InDelta(t, p(up), p(down), 2)
	low, high := line(t, units.Celsius(85), units.Celsius(90), 5*time.Minute), line(t, units.Celsius(90), units.Celsius(95), 5*time.Minute)
	require.InDelta(t, p(up), p(low)+p(high), 2)
}
