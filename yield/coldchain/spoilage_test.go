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

func inDays(d time.Duration) decimal.Decimal {
	return decimal.NewFromInt(int64(d)).DivRound(decimal.NewFromInt(int64(day)), 14)
}

func ofDays(t *testing.T, r printed.Row, col string) time.Duration {
	t.Helper()
	d := r.Decimal(col).Mul(decimal.NewFromInt(int64(day)))
	require.True(t, d.IsInteger(), "%s %s", r, col)
	return time.Duration(d.IntPart())
}

func lawNamed(t *testing.T, name string) SpoilageLaw {
	t.Helper()
	for l := FreshFish; l.check() == nil; l++ {
		if l.String() == name {
			return l
		}
	}
	t.Fatalf("no law %q", name)
	return 0
}

func iceDays(t *testing.T, s series.Series[units.Temperature], law SpoilageLaw) Spoilage {
	t.Helper()
	spoiled, err := IceDays(s, law, longest)
	require.NoError(t, err)
	return spoiled
}

// Source: FAO Fisheries Technical Paper 348 and Dalgaard et al. 2004; all but the slope of smoked salmon recalled.
func TestSpoilageConstants(t *testing.T) {
	code := map[string]float64{
		"temperature of no spoilage": spoilageMinimum, "reference temperature": spoilageReference,
		"slope of the tropical law": tropicalSlope, "slope of the law of cold-smoked salmon": smokedSlope,
	}
	laws := map[string]SpoilageLaw{
		"temperature of no spoilage": FreshFish, "reference temperature": FreshFish,
		"slope of the tropical law": TropicalFish, "slope of the law of cold-smoked salmon": ColdSmokedSalmon,
	}
	rows := printed.Table(t, "coldchain/spoilage-constants.csv")
	require.Len(t, rows, len(code))
	rows.Each(t, func(t *testing.T, r printed.Row) {
		require.Equal(t, r.Float("value"), code[r.Text("name")])
		require.Equal(t, provenance(r), provenanceOf(laws[r.Text("name")].Citation()))
	})
}

// Computed outside this library from the equations of FAO Fisheries Technical Paper 348.
func TestSpoilageRates(t *testing.T) {
	printed.Table(t, "coldchain/spoilage-rates.csv").Each(t, func(t *testing.T, r printed.Row) {
		rate, err := SpoilageRate(lawNamed(t, r.Text("law")), celsius(t, r, "temp_c"))
		require.NoError(t, err)
		printed.Within(t, r, "rate", units.In(rate, units.One, 12))
	})
	for _, c := range []float64{-10, -10.1, -18, -40} {
		rate, err := SpoilageRate(FreshFish, units.Celsius(c))
		require.NoError(t, err)
		require.Zero(t, rate)
	}
}

// Source: FAO Fisheries Technical Paper 348, lives below 0 °C as read in a quotation, those above recalled.
func TestPublishedLives(t *testing.T) {
	printed.Table(t, "coldchain/spoilage-lives.csv").Each(t, func(t *testing.T, r printed.Row) {
		life, err := LifeAt(ofDays(t, r, "days_on_ice"), FreshFish, celsius(t, r, "temp_c"))
		require.NoError(t, err)
		printed.Within(t, r, "days", inDays(life))
	})
}

// Source: FAO Fisheries Technical Paper 348, table 6.1, recalled. The law departs from what was observed on most
// products to the safe side, on packed cod to the other.
func TestObservedRates(t *testing.T) {
	printed.Table(t, "coldchain/spoilage-observed.csv").Each(t, func(t *testing.T, r printed.Row) {
		observed := r.Decimal("days_at_0c").DivRound(r.Decimal("days_at_temp"), 6)
		printed.Within(t, r, "observed_rate", observed)
		rate, err := SpoilageRate(FreshFish, celsius(t, r, "temp_c"))
		require.NoError(t, err)
		slower := units.In(rate, units.One, 12).LessThan(observed)
		require.Equal(t, r.Text("law") == "slower", slower, r.Text("fish"))
	})
}

// Source: Dalgaard et al. 2004, two lives of cold-smoked salmon in changing temperature, predicted and observed.
func TestSmokedSalmonLives(t *testing.T) {
	printed.Table(t, "coldchain/smoked-salmon-lives.csv").Each(t, func(t *testing.T, r printed.Row) {
		first, kept := celsius(t, r, "first_c"), ofDays(t, r, "first_days")
		used, err := IceDays(record(t, segment{kept, first, first}), ColdSmokedSalmon, kept)
		require.NoError(t, err)
		rate, err := SpoilageRate(ColdSmokedSalmon, units.Celsius(5))
		require.NoError(t, err)
		onIce, err := units.Prorate(units.Ratio(ofDays(t, r, "life_at_5c_days")), rate, units.One)
		require.NoError(t, err)
		then, err := LifeAt(time.Duration(onIce)-used.Used, ColdSmokedSalmon, celsius(t, r, "then_c"))
		require.NoError(t, err)
		printed.Within(t, r, "predicted_days", inDays(kept+then))
	})
}

// Computed by exact integration outside this library, checked there by Simpson's rule.
func TestHistorySpoilage(t *testing.T) {
	records := histories(t, "coldchain/records/histories.csv")
	printed.Table(t, "coldchain/history-results.csv").Each(t, func(t *testing.T, r printed.Row) {
		s := iceDays(t, records[r.Text("id")], FreshFish)
		printed.Within(t, r, "equivalent_days_0c", inDays(s.Used))
		for col, days := range map[string]int64{"remaining_of_14_days": 140, "remaining_of_11_8_days": 118} {
			left, err := s.Left(IceLife{Low: tenthDays(days), High: tenthDays(days)})
			require.NoError(t, err)
			printed.Within(t, r, col, inDays(left.Low))
			require.Equal(t, left.Low, left.High)
		}
		// The mean temperature never says more than the record does.
		at := meanOf(records[r.Text("id")])
		printed.WithinFloat(t, r, "time_mean_temp_c", at.Celsius())
		mean, err := SpoilageRate(FreshFish, at)
		require.NoError(t, err)
		fromMean, err := units.Prorate(units.Ratio(s.Span), mean, units.One)
		require.NoError(t, err)
		printed.Within(t, r, "days_from_mean_temp", inDays(time.Duration(fromMean)))
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
	frozen := segment{4 * day, units.Celsius(-30), units.Celsius(-10)}
	require.Zero(t, iceDays(t, record(t, segment{day, units.Celsius(-18), units.Celsius(-18)}), FreshFish).Used)
	require.Zero(t, iceDays(t, record(t, frozen), FreshFish).Used)
	thaw := segment{6 * hour, units.Celsius(-20), units.Celsius(0)}
	require.Equal(t, hour, iceDays(t, record(t, thaw), FreshFish).Used)
	freeze := segment{6 * hour, units.Celsius(0), units.Celsius(-20)}
	require.Equal(t, hour, iceDays(t, record(t, freeze), FreshFish).Used)
	require.Equal(t, hour, iceDays(t, record(t, frozen, segment{day, units.Celsius(-20), units.Celsius(-20)}, thaw), FreshFish).Used)
	s := iceDays(t, record(t, thaw), FreshFish)
	require.True(t, s.Outside)
	require.Contains(t, s.Cautions[len(s.Cautions)-2].Text, "frozen fish ages by other rules")
	// By the other laws frozen time counts, which errs to the safe side.
	require.Positive(t, iceDays(t, record(t, frozen), ColdSmokedSalmon).Used)
}

// A line is the integral of the exponential in closed form: 24 h from 0 to 10 °C are 24 h (e^0.89 - 1)/0.89.
func TestExponentialStretch(t *testing.T) {
	used := iceDays(t, record(t, segment{day, units.Celsius(0), units.Celsius(10)}), ColdSmokedSalmon).Used
	require.Equal(t, "1.61251", inDays(used).StringFixed(5))
	require.Equal(t, used, iceDays(t, record(t, segment{day, units.Celsius(10), units.Celsius(0)}), ColdSmokedSalmon).Used)
}

func TestIceDaysReportsGaps(t *testing.T) {
	s := record(t, flat(12*hour, 32), flat(30*hour, 60), flat(12*hour, 32))
	spoiled, err := IceDays(s, FreshFish, 12*hour)
	require.NoError(t, err)
	require.Equal(t, 24*hour, spoiled.Used.Round(time.Microsecond))
	require.Equal(t, 30*hour, spoiled.Unknown.Round(time.Microsecond))
	require.Equal(t, spoiled.LongestGap.Length(), spoiled.Unknown)
	require.Equal(t, units.Fahrenheit(60), spoiled.Highest)
	require.Contains(t, spoiled.Cautions[2].Text, "the fish is older than this")
}

func TestOutsideIsMarked(t *testing.T) {
	for c, holds := range map[float64]bool{-3.01: false, -3: true, 0: true, 25: true, 25.01: false, 60: false} {
		at := units.Celsius(c)
		require.Equal(t, holds, SpoilageHolds(at), c)
		require.Equal(t, !holds, iceDays(t, record(t, segment{hour, at, at}), FreshFish).Outside, c)
	}
	require.False(t, SpoilageHolds(units.Temperature{}))
}

func TestSpoilageRefuses(t *testing.T) {
	one, err := series.New([]series.Reading[units.Temperature]{{Value: units.Celsius(0)}})
	require.NoError(t, err)
	loose := record(t, segment{hour, units.Celsius(20), units.Celsius(-127)}, segment{hour, units.Celsius(-127), units.Celsius(20)})
	good, hot := record(t, flat(hour, 34)), record(t, segment{hour, units.Celsius(20), units.Celsius(100.1)})
	for name, f := range map[string]func() error{
		"one reading":  func() error { _, err := IceDays(one, FreshFish, hour); return err },
		"no gap":       func() error { _, err := IceDays(good, FreshFish, 0); return err },
		"negative gap": func() error { _, err := IceDays(good, FreshFish, -hour); return err },
		"unknown law":  func() error { _, err := IceDays(good, 3, hour); return err },
		"past boiling": func() error { _, err := IceDays(hot, FreshFish, hour); return err },
		"centuries": func() error {
			at := units.Celsius(40)
			_, err := IceDays(record(t, segment{200 * 365 * day, at, at}), FreshFish, 250*365*day)
			return err
		},
		"centuries, smoked": func() error {
			at := units.Celsius(100)
			_, err := IceDays(record(t, segment{200 * 365 * day, at, at}), ColdSmokedSalmon, 250*365*day)
			return err
		},
		"probe came loose":     func() error { _, err := IceDays(loose, FreshFish, hour); return err },
		"rate too cold":        func() error { _, err := SpoilageRate(FreshFish, units.Celsius(-80.1)); return err },
		"rate not set":         func() error { _, err := SpoilageRate(FreshFish, units.Temperature{}); return err },
		"rate past boiling":    func() error { _, err := SpoilageRate(FreshFish, units.Celsius(100.1)); return err },
		"rate, unknown law":    func() error { _, err := SpoilageRate(9, units.Celsius(1)); return err },
		"life below zero":      func() error { _, err := LifeAt(-1, FreshFish, units.Celsius(1)); return err },
		"life of frozen":       func() error { _, err := LifeAt(day, FreshFish, units.Celsius(-10)); return err },
		"life, unknown law":    func() error { _, err := LifeAt(day, 9, units.Celsius(1)); return err },
		"life not set":         func() error { _, err := LifeAt(day, FreshFish, units.Temperature{}); return err },
		"life past a Duration": func() error { _, err := LifeAt(1000*day, FreshFish, units.Celsius(-9.99)); return err },
		"no life":              func() error { _, err := Spoilage{}.Left(IceLife{}); return err },
		"life in reverse":      func() error { _, err := Spoilage{}.Left(IceLife{Low: 2, High: 1}); return err },
	} {
		require.ErrorIs(t, f(), units.ErrRange, name)
	}
	_, err = IceDays(series.Series[units.Temperature]{}, FreshFish, hour)
	require.ErrorIs(t, err, series.ErrEmpty)
	require.Equal(t, "unknown law", SpoilageLaw(9).String())
	require.True(t, SpoilageLaw(9).Citation().IsZero())
}

// Source: FAO Fisheries Technical Paper 348 and studies; half of the rows recalled.
func TestIceLives(t *testing.T) {
	rows, lives := printed.Table(t, "coldchain/ice-lives.csv"), IceLives()
	require.Len(t, lives, len(rows))
	for i, r := range rows {
		want := IceLife{Fish: r.Text("fish"), Waters: r.Text("waters"), Low: ofDays(t, r, "low_days"), High: ofDays(t, r, "high_days")}
		if r.Has("gutted") {
			want.Gutted = units.State(r.Text("gutted") == "yes")
		}
		want.Note, want.Citation = lives[i].Note, lives[i].Citation
		require.Empty(t, cmp.Diff(want, lives[i]), r.String())
		require.Equal(t, provenance(r), provenanceOf(lives[i].Citation))
		require.NoError(t, lives[i].Citation.Check())
		require.LessOrEqual(t, lives[i].Low, lives[i].High)
	}
}

func TestIceLivesOf(t *testing.T) {
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
		lives, err := IceLivesOf(c.fish, c.gutted)
		require.NoError(t, err)
		var low []int64
		for _, l := range lives {
			low = append(low, int64(l.Low/(day/10)))
		}
		require.Equal(t, c.low, low, c.fish)
	}
	for _, fish := range []string{"", "walleye", "almon", "trout rainbow", "salmontrout", "cold-smoked salmon", "canned salmon"} {
		_, err := IceLivesOf(fish, units.Stated[bool]{})
		require.ErrorAs(t, err, &UnknownFishError{}, fish)
		require.ErrorContains(t, err, "freshwater fish")
	}
}

func TestLeftWarns(t *testing.T) {
	s := iceDays(t, record(t, segment{10 * day / 4, units.Celsius(10), units.Celsius(10)}), FreshFish)
	lives, err := IceLivesOf("trout", units.State(true))
	require.NoError(t, err)
	left, err := s.Left(lives[0])
	require.NoError(t, err)
	require.Equal(t, []time.Duration{-day, day}, []time.Duration{left.Low, left.High})
	require.Len(t, left.Cautions, len(s.Cautions)+3)
	require.Contains(t, left.Cautions[0].Text, "not safety")
	require.Contains(t, left.Cautions[len(s.Cautions)].Text, "used up")
	last, err := s.Left(lives[2])
	require.NoError(t, err)
	require.Len(t, last.Cautions, len(s.Cautions))
	IceLives()[0].Low = 0
	require.Equal(t, tenthDays(118), IceLives()[0].Low)
}
