package spoilage_test

import (
	"strings"
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"example.org/lakelarder/yield/coldchain/spoilage"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

const hour = time.Hour

func lawNamed(t *testing.T, name string) spoilage.Law {
	t.Helper()
	for l := spoilage.FreshFish; l <= spoilage.ColdSmokedSalmon; l++ {
		if l.String() == name {
			return l
		}
	}
	t.Fatalf("no law %q", name)
	return 0
}

func iceDays(t *testing.T, s series.Series[units.Temperature], law spoilage.Law) spoilage.Age {
	t.Helper()
	spoiled, err := spoilage.IceDays(s, law, logged.Longest)
	require.NoError(t, err)
	return spoiled
}

// Computed outside this library from the equations of FAO Fisheries Technical Paper 348.
func TestSpoilageRates(t *testing.T) {
	printed.Table(t, "coldchain/spoilage-rates.csv").Each(t, func(t *testing.T, r printed.Row) {
		rate, err := spoilage.Rate(lawNamed(t, r.Text("law")), logged.Celsius(t, r, "temp_c"))
		require.NoError(t, err)
		printed.Within(t, r, "rate", units.In(rate, units.One, 12))
	})
	for _, c := range []float64{-10, -10.1, -18, -40} {
		rate, err := spoilage.Rate(spoilage.FreshFish, units.Celsius(c))
		require.NoError(t, err)
		require.Zero(t, rate)
	}
}

// Source: FAO Fisheries Technical Paper 348, lives below 0 °C as read in a quotation.
func TestPublishedLives(t *testing.T) {
	printed.Table(t, "coldchain/spoilage-lives.csv").Each(t, func(t *testing.T, r printed.Row) {
		life, err := spoilage.LifeAt(logged.OfDays(t, r, "days_on_ice"), spoilage.FreshFish, logged.Celsius(t, r, "temp_c"))
		require.NoError(t, err)
		printed.Within(t, r, "days", logged.InDays(life))
	})
}

// Source: Dalgaard et al. 2004, two lives of cold-smoked salmon in changing temperature, predicted and observed.
func TestSmokedSalmonLives(t *testing.T) {
	printed.Table(t, "coldchain/smoked-salmon-lives.csv").Each(t, func(t *testing.T, r printed.Row) {
		first, kept := logged.Celsius(t, r, "first_c"), logged.OfDays(t, r, "first_days")
		used, err := spoilage.IceDays(logged.Record(t, logged.Ramp(kept, first, first)), spoilage.ColdSmokedSalmon, kept)
		require.NoError(t, err)
		rate, err := spoilage.Rate(spoilage.ColdSmokedSalmon, units.Celsius(5))
		require.NoError(t, err)
		onIce, err := units.Prorate(units.Ratio(logged.OfDays(t, r, "life_at_5c_days")), rate, units.One)
		require.NoError(t, err)
		then, err := spoilage.LifeAt(time.Duration(onIce)-used.Used, spoilage.ColdSmokedSalmon, logged.Celsius(t, r, "then_c"))
		require.NoError(t, err)
		printed.Within(t, r, "predicted_days", logged.InDays(kept+then))
	})
}

// Computed by exact integration outside this library, checked there by Simpson's rule.
func TestHistorySpoilage(t *testing.T) {
	records := logged.Histories(t, "coldchain/records/histories.csv")
	printed.Table(t, "coldchain/history-results.csv").Each(t, func(t *testing.T, r printed.Row) {
		s := iceDays(t, records[r.Text("id")], spoilage.FreshFish)
		logged.Back(t, s)
		printed.Within(t, r, "equivalent_days_0c", logged.InDays(s.Used))
		for col, days := range map[string]int64{"remaining_of_14_days": 140, "remaining_of_11_8_days": 118} {
			left, err := s.Left(spoilage.Life{Low: time.Duration(days) * chain.Day / 10, High: time.Duration(days) * chain.Day / 10})
			require.NoError(t, err)
			printed.Within(t, r, col, logged.InDays(left.Low))
			logged.Back(t, left)
			require.Equal(t, left.Low, left.High)
		}
		// The mean temperature never says more than the record does.
		at := meanOf(records[r.Text("id")])
		printed.WithinFloat(t, r, "time_mean_temp_c", at.Celsius())
		mean, err := spoilage.Rate(spoilage.FreshFish, at)
		require.NoError(t, err)
		fromMean, err := units.Prorate(units.Ratio(s.Span), mean, units.One)
		require.NoError(t, err)
		printed.Within(t, r, "days_from_mean_temp", logged.InDays(time.Duration(fromMean)))
		require.LessOrEqual(t, time.Duration(fromMean), s.Used+time.Microsecond) // the mean is rounded to a quantum
	})
}

// meanOf is the mean temperature over time, straight lines between readings.
func meanOf(s series.Series[units.Temperature]) units.Temperature {
	readings, total := s.Readings(), 0.0
	for i := 1; i < len(readings); i++ {
		middle := (readings[i-1].Value.Celsius() + readings[i].Value.Celsius()) / 2
		total += float64(middle * float64(readings[i].At-readings[i-1].At))
	}
	return units.Celsius(total / float64(s.Span()))
}

// Both ends of a line are clipped at -10 °C before they are cubed, its slope is not: from -20 to 0 °C half of
// the time counts, a third of it.
func TestFrozenStretch(t *testing.T) {
	frozen := logged.Ramp(4*chain.Day, units.Celsius(-30), units.Celsius(-10))
	require.Zero(t, iceDays(t, logged.Record(t, logged.Ramp(chain.Day, units.Celsius(-18), units.Celsius(-18))), spoilage.FreshFish).Used)
	require.Zero(t, iceDays(t, logged.Record(t, frozen), spoilage.FreshFish).Used)
	thaw := logged.Ramp(6*hour, units.Celsius(-20), units.Celsius(0))
	require.Equal(t, hour, iceDays(t, logged.Record(t, thaw), spoilage.FreshFish).Used)
	freeze := logged.Ramp(6*hour, units.Celsius(0), units.Celsius(-20))
	require.Equal(t, hour, iceDays(t, logged.Record(t, freeze), spoilage.FreshFish).Used)
	require.Equal(t, hour, iceDays(t, logged.Record(t, frozen, logged.Ramp(chain.Day, units.Celsius(-20), units.Celsius(-20)), thaw), spoilage.FreshFish).Used)
	s := iceDays(t, logged.Record(t, thaw), spoilage.FreshFish)
	require.True(t, s.Outside)
	require.Contains(t, captions(s.Cautions), "frozen fish ages by other rules")
	// By the other laws frozen time counts, which errs to the safe side.
	require.Positive(t, iceDays(t, logged.Record(t, frozen), spoilage.ColdSmokedSalmon).Used)
}

// A line is the integral of the exponential in closed form: 24 h from 0 to 10 °C are 24 h (e^0.89 - 1)/0.89.
func TestExponentialStretch(t *testing.T) {
	used := iceDays(t, logged.Record(t, logged.Ramp(chain.Day, units.Celsius(0), units.Celsius(10))), spoilage.ColdSmokedSalmon).Used
	require.Equal(t, "1.61251", logged.InDays(used).StringFixed(5))
	require.Equal(t, used, iceDays(t, logged.Record(t, logged.Ramp(chain.Day, units.Celsius(10), units.Celsius(0))), spoilage.ColdSmokedSalmon).Used)
}

func TestIceDaysReportsGaps(t *testing.T) {
	s := logged.Record(t, logged.Flat(12*hour, 32), logged.Flat(30*hour, 60), logged.Flat(12*hour, 32))
	spoiled, err := spoilage.IceDays(s, spoilage.FreshFish, 12*hour)
	require.NoError(t, err)
	require.Equal(t, 24*hour, spoiled.Used.Round(time.Microsecond))
	require.Equal(t, 30*hour, spoiled.Unknown.Round(time.Microsecond))
	require.Equal(t, spoiled.LongestGap.Length(), spoiled.Unknown)
	require.Equal(t, units.Fahrenheit(60), spoiled.Highest)
	require.Contains(t, captions(spoiled.Cautions), "the fish is older than this")
}

func TestOutsideIsMarked(t *testing.T) {
	for c, holds := range map[float64]bool{-3.01: false, -3: true, 0: true, 25: true, 25.01: false, 60: false} {
		at := units.Celsius(c)
		require.Equal(t, holds, spoilage.Holds(at), c)
		require.Equal(t, !holds, iceDays(t, logged.Record(t, logged.Ramp(hour, at, at)), spoilage.FreshFish).Outside, c)
	}
	require.False(t, spoilage.Holds(units.Temperature{}))
}

func TestSpoilageRefuses(t *testing.T) {
	one, err := series.New([]series.Reading[units.Temperature]{{Value: units.Celsius(0)}})
	require.NoError(t, err)
	loose := logged.Record(t, logged.Ramp(hour, units.Celsius(20), units.Celsius(-127)), logged.Ramp(hour, units.Celsius(-127), units.Celsius(20)))
	good, hot := logged.Record(t, logged.Flat(hour, 34)), logged.Record(t, logged.Ramp(hour, units.Celsius(20), units.Celsius(100.1)))
	for name, f := range map[string]func() error{
		"one reading":  func() error { _, err := spoilage.IceDays(one, spoilage.FreshFish, hour); return err },
		"no gap":       func() error { _, err := spoilage.IceDays(good, spoilage.FreshFish, 0); return err },
		"negative gap": func() error { _, err := spoilage.IceDays(good, spoilage.FreshFish, -hour); return err },
		"unknown law":  func() error { _, err := spoilage.IceDays(good, 4, hour); return err },
		"law not set":  func() error { _, err := spoilage.IceDays(good, 0, hour); return err },
		"rate, no law": func() error { _, err := spoilage.Rate(0, units.Celsius(1)); return err },
		"life, no law": func() error { _, err := spoilage.LifeAt(chain.Day, 0, units.Celsius(1)); return err },
		"past boiling": func() error { _, err := spoilage.IceDays(hot, spoilage.FreshFish, hour); return err },
		"centuries": func() error {
			at := units.Celsius(40)
			_, err := spoilage.IceDays(logged.Record(t, logged.Ramp(200*365*chain.Day, at, at)), spoilage.FreshFish, 250*365*chain.Day)
			return err
		},
		"centuries, smoked": func() error {
			at := units.Celsius(100)
			_, err := spoilage.IceDays(logged.Record(t, logged.Ramp(200*365*chain.Day, at, at)), spoilage.ColdSmokedSalmon, 250*365*chain.Day)
			return err
		},
		"probe came loose":  func() error { _, err := spoilage.IceDays(loose, spoilage.FreshFish, hour); return err },
		"rate too cold":     func() error { _, err := spoilage.Rate(spoilage.FreshFish, units.Celsius(-80.1)); return err },
		"rate not set":      func() error { _, err := spoilage.Rate(spoilage.FreshFish, units.Temperature{}); return err },
		"rate past boiling": func() error { _, err := spoilage.Rate(spoilage.FreshFish, units.Celsius(100.1)); return err },
		"rate, unknown law": func() error { _, err := spoilage.Rate(9, units.Celsius(1)); return err },
		"life below zero":   func() error { _, err := spoilage.LifeAt(-1, spoilage.FreshFish, units.Celsius(1)); return err },
		"life of frozen":    func() error { _, err := spoilage.LifeAt(chain.Day, spoilage.FreshFish, units.Celsius(-10)); return err },
		"life, unknown law": func() error { _, err := spoilage.LifeAt(chain.Day, 9, units.Celsius(1)); return err },
		"life not set": func() error {
			_, err := spoilage.LifeAt(chain.Day, spoilage.FreshFish, units.Temperature{})
			return err
		},
		"life past a Duration": func() error {
			_, err := spoilage.LifeAt(1000*chain.Day, spoilage.FreshFish, units.Celsius(-9.99))
			return err
		},
		"no life":         func() error { _, err := spoilage.Age{}.Left(spoilage.Life{}); return err },
		"life in reverse": func() error { _, err := spoilage.Age{}.Left(spoilage.Life{Low: 2, High: 1}); return err },
	} {
		logged.Refused(t, f(), name)
	}
	_, err = spoilage.IceDays(series.Series[units.Temperature]{}, spoilage.FreshFish, hour)
	require.ErrorIs(t, err, series.ErrEmpty)
	logged.Words(t, spoilage.ColdSmokedSalmon, spoilage.ParseLaw)
	require.True(t, spoilage.Law(9).Citation().IsZero())
}

// Source: FAO Fisheries Technical Paper 348 and studies; half of the rows recalled.
func TestIceLives(t *testing.T) {
	rows, lives := printed.Table(t, "coldchain/ice-lives.csv"), spoilage.Lives()
	require.Len(t, lives, len(rows))
	for i, r := range rows {
		want := spoilage.Life{Fish: r.Text("fish"), Waters: r.Text("waters"), Low: logged.OfDays(t, r, "low_days"), High: logged.OfDays(t, r, "high_days")}
		if r.Has("gutted") {
			want.Gutted = units.State(r.Text("gutted") == "yes")
		}
		want.Note, want.Citation = lives[i].Note, lives[i].Citation
		require.Empty(t, cmp.Diff(want, lives[i]), r.String())
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(lives[i].Citation))
		require.NoError(t, lives[i].Citation.Check())
		require.LessOrEqual(t, lives[i].Low, lives[i].High)
	}
}

func TestFindLives(t *testing.T) {
	for _, c := range []struct {
		fish   string
		gutted units.Stated[bool]
		low    []int64 // tenths of a day
	}{
		{"salmon", units.Stated[bool]{}, []int64{118}},
		{" Chinook Salmon ", units.State(true), []int64{118}},
		{"rainbow trout", units.State(true), []int64{90, 160, 210}},
		{"RAINBOW TROUT", units.State(false), []int64{90, 140, 160}},
		{"trout", units.Stated[bool]{}, []int64{90, 140, 160, 210}},
		{"lake trout", units.State(true), []int64{90, 160}},
		{"freshwater fish", units.Stated[bool]{}, []int64{60, 90}},
		{"cod", units.State(false), []int64{90, 140}},
	} {
		lives, err := spoilage.FindLives(c.fish, c.gutted)
		require.NoError(t, err)
		var low []int64
		for _, l := range lives {
			low = append(low, int64(l.Low/(chain.Day/10)))
		}
		require.Equal(t, c.low, low, c.fish)
	}
	for _, fish := range []string{"", "walleye", "almon", "trout rainbow", "salmontrout", "cold-smoked salmon", "canned salmon"} {
		_, err := spoilage.FindLives(fish, units.Stated[bool]{})
		require.ErrorIs(t, err, units.ErrUnknown, fish)
		require.ErrorContains(t, err, "freshwater fish")
	}
}

func TestLeftWarns(t *testing.T) {
	s := iceDays(t, logged.Record(t, logged.Ramp(10*chain.Day/4, units.Celsius(10), units.Celsius(10))), spoilage.FreshFish)
	lives, err := spoilage.FindLives("trout", units.State(true))
	require.NoError(t, err)
	left, err := s.Left(lives[0])
	require.NoError(t, err)
	require.Equal(t, []time.Duration{-chain.Day, chain.Day}, []time.Duration{left.Low, left.High})
	require.Len(t, left.Cautions, len(s.Cautions)+3)
	require.Contains(t, left.Cautions[0].Text, "not safety")
	require.Contains(t, left.Cautions[len(s.Cautions)].Text, "used up")
	last, err := s.Left(lives[2])
	require.NoError(t, err)
	require.Len(t, last.Cautions, len(s.Cautions))
	spoilage.Lives()[0].Low = 0
	require.Equal(t, 118*chain.Day/10, spoilage.Lives()[0].Low)
}

// captions are the texts of cautions, one a line.
func captions(all []cite.Caution) string {
	var texts []string
	for _, c := range all {
		texts = append(texts, c.Text)
	}
	return strings.Join(texts, "\n")
}

func TestGolden(t *testing.T) {
	s := iceDays(t, logged.Record(t, logged.Ramp(6*hour, units.Celsius(14), units.Celsius(2)), logged.Ramp(48*hour, units.Celsius(2), units.Celsius(2))), spoilage.FreshFish)
	logged.Golden(t, "spoilage-age", s)
	lives, err := spoilage.FindLives("rainbow trout", units.State(true))
	require.NoError(t, err)
	left, err := s.Left(lives[0])
	require.NoError(t, err)
	logged.Golden(t, "spoilage-life-left", left)
}
