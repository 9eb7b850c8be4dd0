package lethality_test

import (
	"math"
	"strings"
	"testing"
	"time"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

func TestRates(t *testing.T) {
	printed.Table(t, "lethality/rates.csv").Each(t, func(t *testing.T, r printed.Row) {
		temperature := at(t, r, "temp_c", units.CelsiusScale)
		rate, err := lethality.F0().Rate(temperature)
		require.NoError(t, err)
		if r.Has("published_rate") {
			require.True(t, units.In(rate, units.One, 12).Equal(r.Decimal("published_rate")), "published %s, got %s", r.Text("published_rate"), rate)
		}
		printed.Within(t, r, "rate_121_1c", units.In(rate, units.One, 12))
		rate, err = lethality.F0Fahrenheit().Rate(temperature)
		require.NoError(t, err)
		printed.Within(t, r, "rate_250f", units.In(rate, units.One, 12))
		d, err := lethality.F0().TimeAt(temperature, time.Minute)
		require.NoError(t, err)
		printed.Within(t, r, "minutes_for_1", inMinutes(d.Time))
	})
}

// Closed forms to twelve digits: level, ramp, two z, and a heating curve of the formula method sampled every second.
func TestClosedForms(t *testing.T) {
	printed.Table(t, "lethality/closed-form.csv").Each(t, func(t *testing.T, r printed.Row) {
		ref, d := reference(t, r), minutesOf(r.Decimal("minutes"))
		var got time.Duration
		var err error
		switch r.Text("case") {
		case "semilog_heating":
			s := semilog(t, r, d)
			got = f(t, s, ref)
			// Chords of a second on a curve that bends by 2e-5 K within one are short by less than 1e-6 of the integral.
			require.InEpsilon(t, r.Float("f_min"), got.Minutes(), 1e-6)
			return
		case "ramp_two_z":
			v, fault := lethality.NonProteolytic().Value(line(t, at(t, r, "from_c", units.CelsiusScale), at(t, r, "to_c", units.CelsiusScale), d), lethality.Moist)
			got, err = v.P, fault
		default:
			got = f(t, line(t, at(t, r, "from_c", units.CelsiusScale), at(t, r, "to_c", units.CelsiusScale), d), ref)
		}
		require.NoError(t, err)
		// twelve digits are printed, and a duration holds a nanosecond: eleven decimals of a minute
		require.InDelta(t, r.Float("f_min"), got.Minutes(), 2e-11*math.Max(1, r.Float("f_min")))
	})
}

func semilog(t *testing.T, r printed.Row, d time.Duration) temperatures {
	var readings []series.Reading[units.Temperature]
	below := r.Float("j") * r.Float("start_below_c")
	for at := time.Duration(0); at <= d; at += time.Second {
		c := r.Float("medium_c") - below*math.Pow(10, -at.Minutes()/r.Float("fh_min"))
		readings = append(readings, series.Reading[units.Temperature]{At: at, Value: units.Celsius(c)})
	}
	s, err := series.New(readings)
	require.NoError(t, err)
	return s
}

// Worked examples of textbooks, each with the rule that the book used.
func TestWorkedExamples(t *testing.T) {
	printed.Table(t, "lethality/examples.csv").Each(t, func(t *testing.T, r printed.Row) {
		got := workedExample(t, r)
		if r.Has("exact_s") {
			printed.Within(t, r, "exact_s", got.Mul(decimal.NewFromInt(60)))
			return
		}
		printed.Within(t, r, "exact", got)
		if r.Has("printed") {
			printed.Within(t, r, "printed", got)
		}
		if r.Has("wrong") {
			require.True(t, got.Sub(r.Decimal("wrong")).Abs().GreaterThan(decimal.RequireFromString("0.05")), "the slip must not come out")
		}
	})
}

func workedExample(t *testing.T, r printed.Row) decimal.Decimal {
	var d time.Duration
	var out lethality.Equivalent
	var err error
	switch r.Text("kind") {
	case "steps":
		for _, step := range strings.Fields(r.Text("steps")) {
			span, temperature, _ := strings.Cut(step, "@")
			held, fault := units.ParseTemperature(temperature)
			require.NoError(t, fault)
			part, fault := reference(t, r).Worth(held, minutesOf(decimal.RequireFromString(span)))
			require.NoError(t, fault)
			d += part.F
		}
	case "time":
		out, err = reference(t, r).TimeAt(at(t, r, "temp_c", units.CelsiusScale), minutesOf(r.Decimal("f_min")))
	case "target":
		out, err = lethality.Target(minutesOf(r.Decimal("d_min")), lethality.Logs(of(t, r, "logs", units.One)))
	case "spoilage":
		logs, fault := lethality.LogCount(r.Int("count_before"))
		require.NoError(t, fault)
		out, err = lethality.Target(minutesOf(r.Decimal("d_min")), logs+lethality.Logs(of(t, r, "logs", units.One)))
	case "counts":
		out, err = lethality.DFromCounts(r.Int("count_before"), r.Int("count_after"), minutesOf(r.Decimal("minutes")))
	case "reductions", "survivors":
		kill, fault := lethality.Reductions(minutesOf(r.Decimal("f_min")), minutesOf(r.Decimal("d_min")))
		require.NoError(t, fault)
		if r.Text("kind") == "survivors" {
			left, fault := lethality.Survivors(r.Int("count_before"), kill.Reductions)
			require.NoError(t, fault)
			return units.In(units.Ratio(left.Left), units.One, 12)
		}
		return units.In(units.Ratio(kill.Reductions), units.One, 12)
	default:
		t.Fatalf("%s: unknown kind", r)
	}
	require.NoError(t, err)
	return inMinutes(d + out.Time)
}

func TestRulesLeanAsTheySay(t *testing.T) {
	coarse := record(t, 60, 100, 112, 116, 116, 90, 60)
	exact, err := lethality.FBy(coarse, lethality.F0(), lethality.Exact)
	require.NoError(t, err)
	trapezoid, err := lethality.FBy(coarse, lethality.F0(), lethality.Trapezoid)
	require.NoError(t, err)
	simpson, err := lethality.FBy(coarse, lethality.F0(), lethality.Simpson)
	require.NoError(t, err)
	require.Greater(t, trapezoid.F, exact.F+exact.F/20, "the trapezoid reads high on coarse data")
	require.NotEqual(t, simpson.F, exact.F)
	require.Contains(t, trapezoid.Cautions[len(trapezoid.Cautions)-1].Text, "unsafe side")
	require.Equal(t, cite.CautionID("lethality.simpson"), simpson.Cautions[len(simpson.Cautions)-1].ID)
	require.Len(t, exact.Cautions, len(simpson.Cautions)-1)
}

// The short series of (eˣ − 1)/x is right to the last digits, and meets the library's function at its end.
func TestGrowth(t *testing.T) {
	require.Equal(t, 1., lethality.Growth(0))
	for x := 1e-6; x < 2; x *= 1.01 {
		require.InEpsilon(t, math.Expm1(x)/x, lethality.Growth(x), 8e-16)
		require.InEpsilon(t, math.Expm1(-x)/-x, lethality.Growth(-x), 8e-16)
	}
}

// Where the temperature is level every rule gives the same.
func TestRulesAgreeOnALevel(t *testing.T) {
	level := record(t, 111.1, 111.1, 111.1, 111.1, 111.1)
	for _, rule := range []lethality.Rule{lethality.Exact, lethality.Trapezoid, lethality.Simpson} {
		f, err := lethality.FBy(level, lethality.F0(), rule)
		require.NoError(t, err)
		require.Equal(t, 24*time.Second, f.F, rule.String())
	}
}

// Simpson's rule on three readings, by hand: L is 0.01, 0.1 and 1, and two minutes a step of two.
func TestSimpsonByHand(t *testing.T) {
	f, err := lethality.FBy(record(t, 101.1, 111.1, 121.1), lethality.F0(), lethality.Simpson)
	require.NoError(t, err)
	require.InDelta(t, (0.01+4*0.1+1)/3, f.F.Minutes(), 1e-10)
}

// What is required rounds up, what was reached rounds down.
func TestRoundingIsToTheSafeSide(t *testing.T) {
	d, err := lethality.Target(10*time.Microsecond, lethality.Logs(lethality.One/3))
	require.NoError(t, err)
	require.Equal(t, time.Duration(3_334), d.Time)
	logs, err := lethality.Reductions(2, 3)
	require.NoError(t, err)
	require.Equal(t, lethality.Logs(666_666_666_666), logs.Reductions)
	f, err := lethality.F0().Worth(units.Celsius(120), 10)
	require.NoError(t, err)
	require.Equal(t, time.Duration(7), f.F, "7.76 of a nanosecond each")
	held, err := lethality.F0().TimeAt(units.Celsius(120), 10)
	require.NoError(t, err)
	require.Equal(t, time.Duration(13), held.Time, "12.88")
	left, err := lethality.Survivors(1, lethality.Logs(lethality.One/3))
	require.NoError(t, err)
	require.Equal(t, lethality.Number(464_158_883_362), left.Left, "0.4641588833612…, rounded up")
}

func TestRecordsRefused(t *testing.T) {
	good, ref := record(t, 100, 110, 116), lethality.F0()
	for name, call := range map[string]func() error{
		"no reading":     func() error { _, err := lethality.F(temperatures{}, ref); return err },
		"zero reference": func() error { _, err := lethality.F(good, lethality.Reference{}); return err },
		"z of zero": func() error {
			_, err := lethality.F(good, lethality.Reference{Temperature: units.Celsius(121.1)})
			return err
		},
		"z negative": func() error {
			_, err := lethality.F(good, lethality.Reference{Temperature: units.Celsius(121.1), Z: -units.Kelvins})
			return err
		},
		"reference too cold": func() error {
			_, err := lethality.F(good, lethality.Reference{Temperature: units.Celsius(39.9), Z: units.Kelvins})
			return err
		},
		"reading too hot": func() error { _, err := lethality.F(record(t, 100, 150.1), ref); return err },
		"divide: too hot": func() error { _, err := lethality.Divide(record(t, 100, 151), ref, series.Stretch{}); return err },
		"hold in reverse": func() error {
			_, err := lethality.Divide(good, ref, series.Stretch{From: time.Minute, To: time.Second})
			return err
		},
		"hold before": func() error {
			_, err := lethality.Divide(good, ref, series.Stretch{From: -time.Minute, To: time.Second})
			return err
		},
		"hold after": func() error {
			_, err := lethality.Divide(good, ref, series.Stretch{From: time.Minute, To: time.Hour})
			return err
		},
		"rule not stated":    func() error { _, err := lethality.FBy(good, ref, 0); return err },
		"simpson: odd steps": func() error { _, err := lethality.FBy(record(t, 100, 110), ref, lethality.Simpson); return err },
		"rate: unset":        func() error { _, err := ref.Rate(units.Temperature{}); return err },
		"rate: too cold":     func() error { _, err := ref.Rate(units.Celsius(-61)); return err },
		"rate: past a ratio": func() error {
			_, err := lethality.Reference{Temperature: units.Celsius(40), Z: units.Kelvins}.Rate(units.Celsius(150))
			return err
		},
		"worth: negative":      func() error { _, err := ref.Worth(units.Celsius(121), -1); return err },
		"worth: past an age":   func() error { _, err := ref.Worth(units.Celsius(150), math.MaxInt64); return err },
		"time: negative":       func() error { _, err := ref.TimeAt(units.Celsius(121), -1); return err },
		"time: past an age":    func() error { _, err := ref.TimeAt(units.Celsius(-60), time.Hour); return err },
		"start: no reference":  func() error { _, err := lethality.Start(lethality.Reference{}); return err },
		"reductions: D zero":   func() error { _, err := lethality.Reductions(time.Minute, 0); return err },
		"reductions: F below":  func() error { _, err := lethality.Reductions(-1, time.Minute); return err },
		"reductions: too many": func() error { _, err := lethality.Reductions(math.MaxInt64, 1); return err },
		"target: D zero":       func() error { _, err := lethality.Target(0, lethality.Logs(lethality.One)); return err },
		"target: negative":     func() error { _, err := lethality.Target(time.Minute, -1); return err },
		"target: past an age":  func() error { _, err := lethality.Target(math.MaxInt64, lethality.Logs(2*lethality.One)); return err },
		"survivors: none":      func() error { _, err := lethality.Survivors(0, lethality.Logs(lethality.One)); return err },
		"survivors: negative":  func() error { _, err := lethality.Survivors(1, -1); return err },
		"survivors: too many":  func() error { _, err := lethality.Survivors(1e12, 0); return err },
		"count of zero":        func() error { _, err := lethality.LogCount(0); return err },
		"counts rise":          func() error { _, err := lethality.DFromCounts(5, 6, time.Minute); return err },
		"counts to zero":       func() error { _, err := lethality.DFromCounts(5, 0, time.Minute); return err },
		"no time between":      func() error { _, err := lethality.DFromCounts(5, 1, 0); return err },
	} {
		err := call()
		if name == "no reading" {
			require.ErrorIs(t, err, series.ErrEmpty)
			continue
		}
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	uneven, err := series.New([]series.Reading[units.Temperature]{{At: 0, Value: units.Celsius(100)}, {At: 1, Value: units.Celsius(100)}, {At: 3, Value: units.Celsius(100)}})
	require.NoError(t, err)
	_, err = lethality.FBy(uneven, ref, lethality.Simpson)
	require.ErrorIs(t, err, units.ErrRange)
	var reading series.ReadingError
	_, err = lethality.F(record(t, 100, 110, 150.000001), ref)
	require.ErrorAs(t, err, &reading)
	require.Equal(t, 2, reading.Index)
}

func TestRunningRefuses(t *testing.T) {
	var none lethality.Running
	_, err := none.Next(series.Reading[units.Temperature]{Value: units.Celsius(100)})
	require.ErrorIs(t, err, units.ErrRange)
	r, err := lethality.Start(lethality.F0())
	require.NoError(t, err)
	r, err = r.Next(series.Reading[units.Temperature]{At: time.Minute, Value: units.Celsius(116)})
	require.NoError(t, err)
	for _, c := range []struct {
		reading series.Reading[units.Temperature]
		want    error
	}{
		{series.Reading[units.Temperature]{At: -1, Value: units.Celsius(100)}, series.ErrNegative},
		{series.Reading[units.Temperature]{At: time.Minute, Value: units.Celsius(100)}, series.ErrRepeated},
		{series.Reading[units.Temperature]{At: 0, Value: units.Celsius(100)}, series.ErrBackward},
		{series.Reading[units.Temperature]{At: time.Hour}, series.ErrUnset},
		{series.Reading[units.Temperature]{At: time.Hour, Value: units.Celsius(150.1)}, units.ErrRange},
	} {
		after, err := r.Next(c.reading)
		require.ErrorIs(t, err, c.want)
		require.Equal(t, r, after, "a refused reading leaves the sum as it was")
	}
}
