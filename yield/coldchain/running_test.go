package coldchain_test

import (
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

func watching(t *testing.T, terms coldchain.Terms, readings ...series.Reading[units.Temperature]) coldchain.Running {
	t.Helper()
	r, err := coldchain.Watch(vouched(terms))
	require.NoError(t, err)
	for _, reading := range readings {
		r, err = r.Next(reading)
		require.NoError(t, err)
	}
	return r
}

// requireSame holds the running report after every reading against Exposure of the record so far.
func requireSame(t *testing.T, terms coldchain.Terms, readings []series.Reading[units.Temperature]) {
	t.Helper()
	running := watching(t, terms)
	for i, reading := range readings {
		next, err := running.Next(reading)
		require.NoError(t, err)
		running = next
		got, err := running.Report()
		if i == 0 {
			require.ErrorIs(t, err, units.ErrRange)
			continue
		}
		require.NoError(t, err)
		require.Empty(t, cmp.Diff(exposed(t, logged.Made(t, readings[:i+1]), terms), got), "after %d readings", i+1)
	}
}

func TestRunningAgreesOnEveryHistory(t *testing.T) {
	for _, s := range logged.Histories(t, "coldchain/records/histories.csv") {
		for _, terms := range []coldchain.Terms{{}, {MaxGap: 5 * hour}, {Reading: coldchain.Nested, Product: coldchain.RawFish}, {Rules: []coldchain.Rule{coldchain.RawReadyToEatOlder, coldchain.KitchenTwoHours}, HotAir: true}} {
			requireSame(t, terms, s.Readings())
		}
	}
}

// The running report is Exposure at every prefix, to the nanosecond and the word.
func FuzzRunningIsExposure(f *testing.F) {
	f.Add([]byte{10, 200, 120, 3, 230, 90, 40, 80, 90, 200, 1, 255, 60, 255}, uint8(0), true)
	f.Add([]byte{200, 255, 200, 255, 10, 255, 50, 255, 50, 255}, uint8(1), false)
	f.Add([]byte{80, 255, 80, 255, 120, 255, 80, 255}, uint8(2), false)
	f.Fuzz(func(t *testing.T, data []byte, reading uint8, short bool) {
		readings := logged.Drawn(data)
		if len(readings) > 12 {
			readings = readings[:12]
		}
		terms := coldchain.Terms{Reading: coldchain.Reading(reading % 3), MaxGap: longest}
		if short {
			terms.MaxGap = time.Hour / 2
		}
		requireSame(t, terms, readings)
	})
}

// A forecast is kept: at its moment the rule still holds, a nanosecond later it does not, and where it does not run a
// month changes nothing.
func FuzzForecastComesTrue(f *testing.F) {
	f.Add([]byte{10, 200, 120, 3, 230, 90, 40, 80, 90, 200, 1, 255, 60, 255}, uint8(0))
	f.Add([]byte{20, 10, 20, 10}, uint8(1))
	f.Add([]byte{225, 10, 225, 10}, uint8(2))
	f.Fuzz(func(t *testing.T, data []byte, reading uint8) {
		readings := logged.Drawn(data)
		if len(readings) < 2 {
			return
		}
		terms := coldchain.Terms{Reading: coldchain.Reading(reading % 3), MaxGap: 1000 * hour}
		now := watching(t, terms, readings...)
		last := readings[len(readings)-1]
		for i, forecast := range now.AtThisRate() {
			later := func(at time.Duration) coldchain.Allowance {
				next, err := now.Next(series.Reading[units.Temperature]{At: at, Value: last.Value})
				require.NoError(t, err)
				report, err := next.Report()
				require.NoError(t, err)
				require.Equal(t, forecast.Rule, report.Allowances[i].Rule)
				require.Equal(t, forecast.Hazard, report.Allowances[i].Hazard)
				return report.Allowances[i]
			}
			switch {
			case forecast.Verdict == verdict.NotMet:
				require.Equal(t, forecast.At, later(last.At+1).ExceededAt)
				require.Zero(t, forecast.Left)
			case forecast.Runs:
				require.Equal(t, last.At+forecast.Left, forecast.At)
				if forecast.Left > 0 {
					require.Equal(t, verdict.Met, later(forecast.At).Verdict)
				}
				after := later(forecast.At + 1)
				require.Equal(t, verdict.NotMet, after.Verdict)
				require.Equal(t, forecast.At, after.ExceededAt)
			default:
				require.Equal(t, verdict.Met, later(last.At+720*hour).Verdict)
			}
		}
	})
}

// Source: the rules' own hours. Raw fish at 60 °F has five hours, two gone; by the kitchen's rule it is at its end.
func TestForecastInHours(t *testing.T) {
	warm := units.Fahrenheit(60)
	r := watching(t, coldchain.Terms{Rules: []coldchain.Rule{coldchain.RawReadyToEat, coldchain.KitchenTwoHours, coldchain.TableA2}, Hazards: []coldchain.Hazard{coldchain.Salmonella, coldchain.VibrioCholerae, coldchain.Campylobacter}},
		series.Reading[units.Temperature]{Value: warm}, series.Reading[units.Temperature]{At: 2 * hour, Value: warm})
	all := r.AtThisRate()
	require.Empty(t, cmp.Diff([]coldchain.Forecast{
		{Rule: coldchain.RawReadyToEat, Verdict: verdict.Met, Runs: true, Left: 3 * hour, At: 5 * hour},
		{Rule: coldchain.KitchenTwoHours, Verdict: verdict.Met, Runs: true, Left: 0, At: 2 * hour},
		{Rule: coldchain.TableA2, Hazard: coldchain.Salmonella, Verdict: verdict.Met, Runs: true, Left: 3 * hour, At: 5 * hour},
		{Rule: coldchain.TableA2, Hazard: coldchain.VibrioCholerae, Verdict: verdict.Met, Runs: true, Left: 4 * hour, At: 6 * hour},
		{Rule: coldchain.TableA2, Hazard: coldchain.Campylobacter, Verdict: verdict.Met},
	}, all))
	// Above 70 °F the same fish has two hours above 50 °F in all: none are left, though four would be with two above 70
	// °F.
	r, err := r.Next(series.Reading[units.Temperature]{At: 2*hour + 1, Value: units.Fahrenheit(75)})
	require.NoError(t, err)
	hot := r.AtThisRate()
	require.Equal(t, verdict.Met, hot[0].Verdict)
	require.InDelta(t, int64(2*hour), int64(hot[0].Left), 2)
	require.Equal(t, verdict.NotMet, hot[1].Verdict)
	require.Equal(t, 2*hour, hot[1].At)
	// On ice nothing runs but Yersinia and Listeria.
	iced := watching(t, coldchain.Terms{}, series.Reading[units.Temperature]{Value: units.Celsius(0)})
	for _, f := range iced.AtThisRate() {
		require.Equal(t, f.Hazard == coldchain.Listeria || f.Hazard == coldchain.Yersinia, f.Runs, f.Hazard)
	}
	// A gap may have used what is left.
	gap := watching(t, coldchain.Terms{MaxGap: hour}, series.Reading[units.Temperature]{Value: warm}, series.Reading[units.Temperature]{At: 2 * hour, Value: warm})
	require.Equal(t, verdict.CannotTell, gap.AtThisRate()[0].Verdict)
	report, err := gap.Report()
	require.NoError(t, err)
	require.Equal(t, 2*hour, report.Unknown)
	// At the end of all time nothing is added past it.
	end := watching(t, coldchain.Terms{}, series.Reading[units.Temperature]{At: 1<<63 - 1, Value: warm})
	require.False(t, end.AtThisRate()[0].Runs)
}

func TestRunningRefuses(t *testing.T) {
	start := series.Reading[units.Temperature]{At: hour, Value: units.Fahrenheit(40)}
	r := watching(t, coldchain.Terms{}, start)
	for name, reading := range map[string]series.Reading[units.Temperature]{
		"same time":     {At: hour, Value: units.Fahrenheit(40)},
		"earlier":       {At: 1, Value: units.Fahrenheit(40)},
		"negative":      {At: -1, Value: units.Fahrenheit(40)},
		"value not set": {At: 2 * hour},
	} {
		same, err := r.Next(reading)
		require.ErrorAs(t, err, &series.ReadingError{}, name)
		require.Equal(t, r.AtThisRate(), same.AtThisRate(), name)
	}
	for _, c := range []float64{-126, -80.1, 100.1} {
		same, err := r.Next(series.Reading[units.Temperature]{At: 2 * hour, Value: units.Celsius(c)})
		require.ErrorIs(t, err, units.ErrRange, c)
		require.Equal(t, r.AtThisRate(), same.AtThisRate(), c)
	}
	_, err := coldchain.Running{}.Next(start)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = coldchain.Running{}.Report()
	require.ErrorIs(t, err, series.ErrEmpty)
	require.Empty(t, coldchain.Running{}.AtThisRate())
	for name, terms := range map[string]coldchain.Terms{
		"no gap": {}, "unknown product": {MaxGap: hour, Product: 9}, "unknown rule": {MaxGap: hour, Rules: []coldchain.Rule{9}},
		"unknown hazard": {MaxGap: hour, Hazards: []coldchain.Hazard{99}}, "unknown reading": {MaxGap: hour, Reading: 9},
	} {
		_, err := coldchain.Watch(terms)
		logged.Refused(t, err, name)
	}
}

// A running exposure is a value: what comes after does not change it, nor does its caller.
func TestRunningStaysAsItWas(t *testing.T) {
	rules := []coldchain.Rule{coldchain.KitchenTwoHours}
	r, err := coldchain.Watch(coldchain.Terms{MaxGap: longest, Rules: rules})
	require.NoError(t, err)
	rules[0] = coldchain.TableA2
	r, err = r.Next(series.Reading[units.Temperature]{Value: units.Fahrenheit(60)})
	require.NoError(t, err)
	r, err = r.Next(series.Reading[units.Temperature]{At: hour, Value: units.Fahrenheit(60)})
	require.NoError(t, err)
	before, err := r.Report()
	require.NoError(t, err)
	_, err = r.Next(series.Reading[units.Temperature]{At: 9 * hour, Value: units.Fahrenheit(60)})
	require.NoError(t, err)
	again, err := r.Report()
	require.NoError(t, err)
	require.Empty(t, cmp.Diff(before, again))
	require.Equal(t, coldchain.KitchenTwoHours, again.Allowances[0].Rule)
	require.Equal(t, verdict.Met, again.Verdict)
}
