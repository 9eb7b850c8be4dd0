package series_test

import (
	"fmt"
	"math/rand"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// core are invented limits for the core of a fish.
func core() series.Believable[units.Temperature] {
	always, afterJump := series.TemperatureCodes()
	return series.Believable[units.Temperature]{
		Low: units.State(units.Celsius(-60)), High: units.State(units.Celsius(150)),
		Rise: units.AmountOf(5 * units.Kelvins), Fall: units.AmountOf(5 * units.Kelvins), Noise: units.AmountOf(2 * units.Kelvins), Per: time.Minute,
		Still: 2 * time.Hour, Codes: always, JumpCodes: afterJump,
	}
}

func record(t testing.TB, every time.Duration, celsius ...float64) series.Series[units.Temperature] {
	t.Helper()
	var readings []series.Reading[units.Temperature]
	for i, c := range celsius {
		readings = append(readings, series.Reading[units.Temperature]{At: time.Duration(i) * every, Value: units.Celsius(c)})
	}
	s, err := series.New(readings)
	require.NoError(t, err)
	return s
}

func ExampleSeries_Doubts() {
	s, err := series.New([]series.Reading[units.Temperature]{
		{At: 0, Value: units.Celsius(4)}, {At: time.Minute, Value: units.Celsius(-127)}, {At: 2 * time.Minute, Value: units.Celsius(4.5)},
		{At: 3 * time.Minute, Value: units.Celsius(40)},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	always, _ := series.TemperatureCodes()
	doubts, err := s.Doubts(series.Believable[units.Temperature]{
		Rise: units.AmountOf(5 * units.Kelvins), Fall: units.AmountOf(5 * units.Kelvins), Per: time.Minute, Codes: always,
	})
	for _, d := range doubts {
		fmt.Println(d.Sign, d.When.To, d.Value)
	}
	clean, dropped := s.Without(doubts, series.FaultCode)
	fmt.Println(clean.Len(), dropped, err)
	// Output:
	// fault code 1m0s -127 °C
	// jump 3m0s 40 °C
	// 3 1 <nil>
}

func ExampleSeries_Without() {
	s, _ := series.New([]series.Reading[units.Temperature]{{At: 0, Value: units.Celsius(4)}, {At: time.Minute, Value: units.Celsius(85)}})
	kept, dropped := s.Without([]series.Doubt[units.Temperature]{{Sign: series.FaultCode, When: series.Stretch{To: time.Minute}}}, series.FaultCode)
	fmt.Println(kept.Len(), dropped)
	// Output: 1 1
}

func ExampleWatchDoubts() {
	always, _ := series.TemperatureCodes()
	watch, err := series.WatchDoubts(series.Believable[units.Temperature]{Codes: always})
	if err != nil {
		fmt.Println(err)
		return
	}
	_, doubts, err := watch.Next(series.Reading[units.Temperature]{Value: units.Celsius(32767)})
	fmt.Println(doubts[0].Sign, err)
	// Output: fault code <nil>
}

func ExampleTemperatureCodes() {
	always, afterJump := series.TemperatureCodes()
	fmt.Println(always[0], afterJump[0])
	// Output: -127 °C 85 °C
}

func ExampleParseSign() {
	s, err := series.ParseSign("stuck")
	fmt.Println(s, err)
	// Output: stuck <nil>
}

// What is seen in records of the core, by hand; signs in order, each with the minute at which it shows.
func TestDoubts(t *testing.T) {
	type seen struct {
		sign   series.Sign
		minute int
	}
	same := make([]float64, 13) // ten minutes apart: two hours
	for name, c := range map[string]struct {
		every   time.Duration
		celsius []float64
		want    []seen
	}{
		"clean":                             {time.Minute, []float64{4, 5, 7, 9, 12, 16, 20}, nil},
		"as fast as it can":                 {time.Minute, []float64{4, 11, 18}, nil},
		"a hair faster":                     {time.Minute, []float64{4, 11.001, 18}, []seen{{series.Jump, 1}}},
		"faster in the fall":                {time.Minute, []float64{60, 52.9}, []seen{{series.Jump, 1}}},
		"noise at any interval":             {time.Second, []float64{4, 5.9, 4.1, 5.9}, nil},
		"slow logger":                       {10 * time.Minute, []float64{4, 50, 4}, nil},
		"open probe":                        {time.Minute, []float64{4, -127, 4}, []seen{{series.FaultCode, 1}}},
		"open probe at the start":           {time.Minute, []float64{-127, 4}, []seen{{series.FaultCode, 0}}},
		"overflow":                          {time.Minute, []float64{4, 32767, 4}, []seen{{series.FaultCode, 1}}},
		"open thermocouple":                 {time.Minute, []float64{4, 1800, 1800, 4}, []seen{{series.FaultCode, 1}, {series.FaultCode, 2}}},
		"85 by a jump":                      {time.Minute, []float64{4, 85, 4}, []seen{{series.FaultCode, 1}}},
		"85 by heating":                     {time.Minute, []float64{79, 82, 85, 85}, nil},
		"-40 by a jump":                     {time.Minute, []float64{4, -40, 4}, []seen{{series.FaultCode, 1}}},
		"-40 by freezing":                   {10 * time.Minute, []float64{4, -20, -40}, nil},
		"too hot":                           {10 * time.Minute, []float64{140, 151}, []seen{{series.OutOfReach, 1}}},
		"too cold":                          {10 * time.Minute, []float64{-50, -61}, []seen{{series.OutOfReach, 1}}},
		"two hours of the same":             {10 * time.Minute, same, nil},
		"two hours and ten":                 {10 * time.Minute, append(append([]float64{}, same...), 0, 0, 1), []seen{{series.Stuck, 13}}},
		"stuck twice":                       {3 * time.Hour, []float64{1, 1, 2, 2, 3}, []seen{{series.Stuck, 1}, {series.Stuck, 3}}},
		"a code that stays is also stuck":   {3 * time.Hour, []float64{-127, -127}, []seen{{series.FaultCode, 0}, {series.FaultCode, 1}, {series.Stuck, 1}}},
		"single reading":                    {time.Minute, []float64{20}, nil},
		"the way back from a code, no jump": {time.Minute, []float64{20, -127, 21}, []seen{{series.FaultCode, 1}}},
	} {
		doubts, err := record(t, c.every, c.celsius...).Doubts(core())
		require.NoError(t, err)
		var got []seen
		for _, d := range doubts {
			got = append(got, seen{d.Sign, int(d.When.To / c.every)})
		}
		require.Equal(t, c.want, got, name)
	}
}

// Watching equals judging the whole at every prefix.
func TestWatchDoubtsEqualsDoubts(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for n := 0; n < 300; n++ {
		var celsius []float64
		for i := 0; i < 40; i++ {
			celsius = append(celsius, []float64{4, 4, 5, 12, 85, -40, -127, 30, 200}[r.Intn(9)])
		}
		s := record(t, time.Duration(1+r.Intn(60))*time.Minute, celsius...)
		watch, err := series.WatchDoubts(core())
		require.NoError(t, err)
		var all []series.Doubt[units.Temperature]
		for i, reading := range s.Readings() {
			var found []series.Doubt[units.Temperature]
			watch, found, err = watch.Next(reading)
			require.NoError(t, err)
			all = append(all, found...)
			prefix, err := series.New(s.Readings()[:i+1])
			require.NoError(t, err)
			want, err := prefix.Doubts(core())
			require.NoError(t, err)
			require.Empty(t, cmp.Diff(want, all))
		}
	}
}

func TestDoubtsRefuse(t *testing.T) {
	s := record(t, time.Minute, 4, 5)
	for _, limits := range []series.Believable[units.Temperature]{
		{Rise: units.AmountOf(units.PSI), Per: time.Minute}, {Fall: units.AmountOf(units.Celsius(5)), Per: time.Minute},
		{Noise: units.AmountOf(-units.Kelvins), Per: time.Minute}, {Per: -1}, {Still: -1},
	} {
		_, err := s.Doubts(limits)
		require.ErrorIs(t, err, units.ErrRange)
	}
	var none series.Doubting[units.Temperature]
	_, _, err := none.Next(series.Reading[units.Temperature]{Value: units.Celsius(4)})
	require.ErrorIs(t, err, units.ErrRange)
	watch, err := series.WatchDoubts(core())
	require.NoError(t, err)
	watch, _, err = watch.Next(series.Reading[units.Temperature]{At: time.Minute, Value: units.Celsius(4)})
	require.NoError(t, err)
	same, _, err := watch.Next(series.Reading[units.Temperature]{At: time.Minute, Value: units.Celsius(4)})
	require.ErrorIs(t, err, series.ErrRepeated)
	require.Equal(t, watch, same)
}

// Pressures, masses and shares jump by an amount of themselves.
func TestDoubtsOfPressure(t *testing.T) {
	s, err := series.New([]series.Reading[units.Pressure]{{At: 0, Value: 0}, {At: time.Second, Value: 11 * units.PSI}})
	require.NoError(t, err)
	limits := series.Believable[units.Pressure]{Rise: units.AmountOf(units.PSI), Fall: units.AmountOf(units.PSI), Per: time.Minute}
	doubts, err := s.Doubts(limits)
	require.NoError(t, err)
	require.Len(t, doubts, 1)
	limits.Rise = units.AmountOf(11 * 60 * units.PSI)
	doubts, err = s.Doubts(limits)
	require.NoError(t, err)
	require.Empty(t, doubts)
}

func TestSignsComeBack(t *testing.T) {
	for s := series.Sign(0); s <= series.Stuck; s++ {
		text, err := s.MarshalText()
		require.NoError(t, err)
		back := series.Sign(99)
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, s, back)
	}
	_, err := series.ParseSign("noisy")
	require.ErrorIs(t, err, units.ErrUnknown)
}

func BenchmarkDoubts(b *testing.B) {
	celsius := make([]float64, 10_000)
	for i := range celsius {
		celsius[i] = 4 + float64(i%7)/10
	}
	s := record(b, time.Minute, celsius...)
	limits := core()
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if doubts, err := s.Doubts(limits); err != nil || len(doubts) > 0 {
			b.Fatal(doubts, err)
		}
	}
}

func ExampleSign() { fmt.Println(series.FaultCode, series.Sign(0)) /* Output: fault code not stated */ }

func ExampleDoubting_Next() {
	watch, err := series.WatchDoubts(series.Believable[units.Temperature]{High: units.State(units.Celsius(100))})
	if err != nil {
		fmt.Println(err)
		return
	}
	_, doubts, err := watch.Next(series.Reading[units.Temperature]{Value: units.Celsius(120)})
	fmt.Println(doubts[0].Sign, err)
	// Output: out of reach <nil>
}
