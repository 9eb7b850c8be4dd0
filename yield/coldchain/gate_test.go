package coldchain_test

import (
	"fmt"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
)

const minute = time.Minute

// at is a number of the row's scale.
func at(t testing.TB, r printed.Row, n decimal.Decimal) units.Temperature {
	t.Helper()
	scale := units.CelsiusScale
	if r.Text("scale") == "F" {
		scale = units.FahrenheitScale
	}
	v, err := units.TemperatureOf(n, scale)
	require.NoError(t, err, r.String())
	return v
}

// pairs are the entries of a cell: "0 4; 150 83.5" is two, of two numbers each.
func pairs(t testing.TB, cell string) (all [][]string) {
	t.Helper()
	for _, one := range strings.Split(cell, ";") {
		if fields := strings.Fields(one); len(fields) > 0 {
			all = append(all, fields)
		}
	}
	return all
}

func number(t testing.TB, s string) decimal.Decimal {
	t.Helper()
	n, err := decimal.NewFromString(s)
	require.NoError(t, err)
	return n
}

// stretch is "100-160" in minutes, or one minute.
func stretch(t testing.TB, s string) series.Stretch {
	t.Helper()
	from, to, two := strings.Cut(s, "-")
	if !two {
		to = from
	}
	minutes := func(s string) time.Duration {
		n, err := strconv.Atoi(s)
		require.NoError(t, err)
		return time.Duration(n) * minute
	}
	return series.Stretch{From: minutes(from), To: minutes(to)}
}

// drawn samples straight lines between corners every so often, trembling by as much as the row says.
func drawn(t testing.TB, r printed.Row, cell string, every time.Duration) []series.Reading[units.Temperature] {
	t.Helper()
	corners := pairs(t, cell)
	minutesOf := func(i int) decimal.Decimal { return number(t, corners[i][0]) }
	tremble := decimal.Zero
	if r.Has("noise") {
		tremble = r.Decimal("noise")
	}
	var all []series.Reading[units.Temperature]
	last := 0
	end := time.Duration(minutesOf(len(corners)-1).IntPart()) * minute
	for i, now := 0, time.Duration(0); now <= end; i, now = i+1, now+every {
		m := decimal.NewFromInt(int64(now)).Div(decimal.NewFromInt(int64(minute)))
		for last+1 < len(corners)-1 && m.GreaterThanOrEqual(minutesOf(last+1)) {
			last++
		}
		from, to := number(t, corners[last][1]), number(t, corners[last+1][1])
		share := m.Sub(minutesOf(last)).Div(minutesOf(last + 1).Sub(minutesOf(last)))
		v := from.Add(to.Sub(from).Mul(share)).Add(tremble.Mul(decimal.NewFromInt(int64([...]int{0, 2, -2, 1, -1, 0, -2, 2, -1, 1, 0}[i%11]))).Div(decimal.NewFromInt(2)))
		all = append(all, series.Reading[units.Temperature]{At: now, Value: at(t, r, v.Round(4))})
	}
	return all
}

// recordOf is the record of a row: its corners, without what was left out, and with its faults in their place.
func recordOf(t testing.TB, r printed.Row) []series.Reading[units.Temperature] {
	t.Helper()
	every := time.Duration(r.Int("every_s")) * time.Second
	var kept []series.Reading[units.Temperature]
	all := drawn(t, r, r.Text("core"), every)
	within := func(s series.Stretch, at time.Duration) bool { return s.From <= at && at <= s.To }
	for _, one := range all {
		out := false
		for _, gap := range pairs(t, r.Text("left_out")) {
			out = out || within(stretch(t, gap[0]), one.At)
		}
		for _, fault := range pairs(t, r.Text("faults")) {
			if within(stretch(t, fault[0]), one.At) {
				one.Value = at(t, r, number(t, fault[1]))
			}
		}
		if !out {
			kept = append(kept, one)
		}
	}
	return kept
}

// termsOf are the terms of a row.
func termsOf(t testing.TB, r printed.Row) coldchain.Terms {
	t.Helper()
	terms := coldchain.Terms{
		MaxGap: time.Duration(r.Int("max_gap_min")) * minute, Undisturbed: r.Text("undisturbed") == "yes", HotAir: r.Text("hot_air") == "yes",
	}
	for cell, to := range map[string]interface{ UnmarshalText([]byte) error }{
		"product": &terms.Product, "use": &terms.Use, "water": &terms.Water, "probe": &terms.Probe,
	} {
		require.NoError(t, to.UnmarshalText([]byte(r.Text(cell))), r.String())
	}
	if r.Has("later") {
		v, err := verdict.Parse(r.Text("later"))
		require.NoError(t, err)
		terms.Later = units.State(v)
	}
	if r.Has("thickness_mm") {
		terms.Thickness = units.State(units.Length(r.Int("thickness_mm")) * units.Millimetre)
	}
	if r.Has("step_c") {
		step, err := units.Of(r.Decimal("step_c"), units.CelsiusDegrees)
		require.NoError(t, err)
		terms.Step = step
	}
	for _, one := range pairs(t, r.Text("stays")) {
		s := coldchain.Stay{When: stretch(t, one[0])}
		require.NoError(t, s.In.UnmarshalText([]byte(one[1])))
		if len(one) > 2 {
			s.Air = at(t, r, number(t, one[2]))
		}
		terms.Stays = append(terms.Stays, s)
	}
	if r.Has("air") {
		terms.Air = drawn(t, r, r.Text("air"), 5*minute)
	}
	return terms
}

// judged audits the record of a row and holds the watch against it, at some prefixes.
func judged(t testing.TB, terms coldchain.Terms, readings []series.Reading[units.Temperature]) coldchain.Report {
	t.Helper()
	live, err := coldchain.Watch(terms)
	require.NoError(t, err)
	for i, reading := range readings {
		live, err = live.Next(reading)
		require.NoError(t, err)
		if i%(1+len(readings)/8) != 0 && i < len(readings)-1 {
			continue
		}
		s, err := series.New(readings[:i+1])
		require.NoError(t, err)
		want, fault := coldchain.Audit(s, terms)
		got, err := live.Report()
		require.Equal(t, fault == nil, err == nil, "%v %v", fault, err)
		require.Empty(t, cmp.Diff(want, got), "after %d readings", i+1)
	}
	s, err := series.New(readings)
	require.NoError(t, err)
	report, err := coldchain.Audit(s, terms)
	require.NoError(t, err)
	return report
}

// kinds are the findings in short: "coldchain.believed impossible".
func kinds(all []verdict.Finding) (short []string) {
	for _, f := range all {
		short = append(short, fmt.Sprintf("%s %s", strings.TrimPrefix(string(f.Rule), "coldchain."), f.Kind))
	}
	return short
}

// What contradicts physics or itself, or was not seen, is never a pass, and says what contradicts what.
func TestNothingImpossibleIsMet(t *testing.T) {
	rows := printed.Table(t, "coldchain/impossible.csv")
	require.GreaterOrEqual(t, len(rows), 40)
	rows.Each(t, func(t *testing.T, r printed.Row) {
		report := judged(t, termsOf(t, r), recordOf(t, r))
		require.Equal(t, r.Text("verdict"), report.Verdict.String(), "%v", report.Findings)
		require.False(t, report.Verdict.Passes())
		require.Contains(t, kinds(report.Findings), r.Text("finding"), "%v", report.Findings)
		require.Equal(t, report.Verdict, report.Findings[0].Verdict, "the first finding decides")
	})
}

// The gate does not cry wolf: what is honest keeps its verdict.
func TestWhatIsHonestKeepsItsVerdict(t *testing.T) {
	rows := printed.Table(t, "coldchain/honest.csv")
	require.GreaterOrEqual(t, len(rows), 25)
	rows.Each(t, func(t *testing.T, r printed.Row) {
		report := judged(t, termsOf(t, r), recordOf(t, r))
		require.Equal(t, r.Text("verdict"), report.Verdict.String(), "%v", report.Findings)
		require.Equal(t, r.Text("finding"), strings.Join(kinds(report.Findings), "; "), "%v", report.Findings)
	})
}

// What the fish is for decides which limits govern, and every relaxation is named.
func TestUses(t *testing.T) {
	rows := printed.Table(t, "coldchain/uses.csv")
	passes := 0
	rows.Each(t, func(t *testing.T, r printed.Row) {
		terms := termsOf(t, r)
		report := judged(t, terms, recordOf(t, r))
		require.Equal(t, r.Text("verdict"), report.Verdict.String(), "%v", report.Findings)
		if r.Has("finding") {
			require.Contains(t, kinds(report.Findings), r.Text("finding"), "%v", report.Findings)
		}
		if report.Verdict.Passes() {
			passes++
		}
		// Shown, and with its share, is every allowance; what does not decide says why, and is no finding that decides.
		strict := terms
		strict.Use, strict.Water = 0, 0
		all := judged(t, strict, recordOf(t, r))
		require.Len(t, report.Allowances, len(all.Allowances))
		require.GreaterOrEqual(t, all.Verdict, report.Verdict, "the use never makes it worse")
		for i, a := range report.Allowances {
			require.Equal(t, all.Allowances[i].Used, a.Used)
			require.Equal(t, all.Allowances[i].Verdict, a.Verdict)
			for _, f := range report.Findings {
				require.False(t, f.Rule == a.ID && a.Spared != 0, a.ID)
			}
		}
	})
	require.GreaterOrEqual(t, len(rows), 30)
	require.GreaterOrEqual(t, len(rows)-passes, passes, "as many fail as pass")
}

// A bare number where a quantity was meant is refused by its size, just below the least that is believed and not at it.
func TestBareNumbersAreRefused(t *testing.T) {
	readings := []series.Reading[units.Temperature]{{Value: units.Celsius(1)}, {At: minute, Value: units.Celsius(1)}}
	s, err := series.New(readings)
	require.NoError(t, err)
	for name, c := range map[string]struct{ refused, accepted func(*coldchain.Terms) }{
		"longest gap": {func(t *coldchain.Terms) { t.MaxGap = time.Second - 1 }, func(t *coldchain.Terms) { t.MaxGap = time.Second }},
		"thickness": {
			func(t *coldchain.Terms) { t.Thickness = units.State(units.Millimetre - 1) },
			func(t *coldchain.Terms) { t.Thickness = units.State(3 * units.Millimetre) },
		},
		"thick": {
			func(t *coldchain.Terms) { t.Thickness = units.State(60*units.Centimetre + 1) },
			func(t *coldchain.Terms) { t.Thickness = units.State(60 * units.Centimetre) },
		},
		"step": {func(t *coldchain.Terms) { t.Step = 5 }, func(t *coldchain.Terms) { t.Step = units.CelsiusDegrees / 1000 }},
		"coarse": {
			func(t *coldchain.Terms) { t.Step = 2*units.CelsiusDegrees + 1 }, func(t *coldchain.Terms) { t.Step = 2 * units.CelsiusDegrees },
		},
		"use":   {func(t *coldchain.Terms) { t.Use = 9 }, func(t *coldchain.Terms) { t.Use = coldchain.Canned }},
		"water": {func(t *coldchain.Terms) { t.Water = 9 }, func(t *coldchain.Terms) { t.Water = coldchain.Marine }},
		"probe": {func(t *coldchain.Terms) { t.Probe = 9 }, func(t *coldchain.Terms) { t.Probe = coldchain.Core }},
		"place": {
			func(t *coldchain.Terms) { t.Stays = []coldchain.Stay{{When: series.Stretch{To: hour}}} },
			func(t *coldchain.Terms) {
				t.Stays = []coldchain.Stay{{When: series.Stretch{To: hour}, In: coldchain.InIce}}
			},
		},
		"stays overlap": {
			func(t *coldchain.Terms) {
				t.Stays = []coldchain.Stay{{When: series.Stretch{To: hour}, In: coldchain.InIce}, {When: series.Stretch{From: hour - 1, To: 2 * hour}, In: coldchain.Out}}
			},
			func(t *coldchain.Terms) {
				t.Stays = []coldchain.Stay{{When: series.Stretch{To: hour}, In: coldchain.InIce}, {When: series.Stretch{From: hour, To: 2 * hour}, In: coldchain.Out}}
			},
		},
		"a stay of no time": {
			func(t *coldchain.Terms) {
				t.Stays = []coldchain.Stay{{When: series.Stretch{From: hour, To: hour}, In: coldchain.InIce}}
			},
			func(t *coldchain.Terms) {
				t.Stays = []coldchain.Stay{{When: series.Stretch{From: hour, To: hour + 1}, In: coldchain.InIce}}
			},
		},
		"a refrigerator of 26 °C": {
			func(t *coldchain.Terms) {
				t.Stays = []coldchain.Stay{{When: series.Stretch{To: hour}, In: coldchain.InRefrigerator, Air: units.Celsius(25).Add(1)}}
			},
			func(t *coldchain.Terms) {
				t.Stays = []coldchain.Stay{{When: series.Stretch{To: hour}, In: coldchain.InRefrigerator, Air: units.Celsius(25)}}
			},
		},
		"air of a loose probe": {
			func(t *coldchain.Terms) { t.Air = []series.Reading[units.Temperature]{{Value: units.Celsius(-127)}} },
			func(t *coldchain.Terms) { t.Air = []series.Reading[units.Temperature]{{Value: units.Celsius(-40)}} },
		},
		"air backward": {
			func(t *coldchain.Terms) {
				t.Air = []series.Reading[units.Temperature]{{At: hour, Value: units.Celsius(1)}, {At: hour, Value: units.Celsius(1)}}
			},
			func(t *coldchain.Terms) {
				t.Air = []series.Reading[units.Temperature]{{At: hour, Value: units.Celsius(1)}, {At: hour + 1, Value: units.Celsius(1)}}
			},
		},
	} {
		terms := coldchain.Terms{MaxGap: hour}
		c.refused(&terms)
		_, err := coldchain.Audit(s, terms)
		require.Error(t, err, name)
		_, err = coldchain.Watch(terms)
		require.Error(t, err, name)
		terms = coldchain.Terms{MaxGap: hour}
		c.accepted(&terms)
		_, err = coldchain.Audit(s, terms)
		require.NoError(t, err, name)
	}
	_, err = coldchain.Audit(s, coldchain.Terms{MaxGap: 30})
	require.EqualError(t, err, "longest gap trusted 30 (30ns): was the unit left out? Expected 0 or at least 1 s")
	_, err = coldchain.CheckLanding(coldchain.Landing{Gutted: units.State[time.Duration](2)})
	require.ErrorIs(t, err, units.ErrRange)
	_, err = coldchain.CheckLanding(coldchain.Landing{Gutted: units.State(time.Second)})
	require.NoError(t, err)
}
