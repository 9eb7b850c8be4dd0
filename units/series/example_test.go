package series_test

import (
	"errors"
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// The records in these examples are invented: one run of a canner and one evening of a smokehouse
// at a reservoir that is on no map.

// run is a gauge read every ten minutes; on the way the fire was turned down too far.
func run() series.Series[units.Pressure] {
	psi := func(minutes int64, n units.Pressure) series.Reading[units.Pressure] {
		return series.Reading[units.Pressure]{At: time.Duration(minutes) * time.Minute, Value: n * units.PSI}
	}
	s, err := series.New([]series.Reading[units.Pressure]{
		psi(0, 0), psi(10, 10), psi(20, 15), psi(30, 15), psi(40, 11), psi(50, 13), psi(70, 15), psi(80, 0),
	})
	if err != nil {
		panic(err)
	}
	return s
}

// smokehouse is the core of one fillet.
func smokehouse() series.Series[units.Temperature] {
	s, err := series.New([]series.Reading[units.Temperature]{
		{At: 0, Value: units.Celsius(10)},
		{At: 2 * time.Hour, Value: units.Celsius(50)},
		{At: 3 * time.Hour, Value: units.Celsius(66)},
		{At: 4 * time.Hour, Value: units.Celsius(66)},
		{At: 6 * time.Hour, Value: units.Celsius(6)},
	})
	if err != nil {
		panic(err)
	}
	return s
}

func ExampleNew() {
	s, err := series.New([]series.Reading[units.Pressure]{
		{At: 0, Value: 10 * units.PSI},
		{At: 10 * time.Minute, Value: 14 * units.PSI},
	})
	fmt.Println(s.Len(), s.Span(), err)

	_, err = series.New([]series.Reading[units.Temperature]{
		{At: 0, Value: units.Celsius(20)},
		{At: 10 * time.Minute}, // the reading was forgotten
	})
	fmt.Println(err)
	// Output:
	// 2 10m0s <nil>
	// reading 1 at 10m0s: the value is not set
}

func ExampleReadingError() {
	at := series.Reading[units.Pressure]{At: time.Minute, Value: 11 * units.PSI}
	_, err := series.New([]series.Reading[units.Pressure]{at, at})
	var fault series.ReadingError
	fmt.Println(errors.As(err, &fault), fault.Index)
	fmt.Println(errors.Is(err, series.ErrRepeated), err)
	// Output:
	// true 1
	// true reading 1 at 1m0s: the time repeats the one before
}

func ExampleSeries_Append() {
	before := smokehouse()
	after, err := before.Append(series.Reading[units.Temperature]{At: 7 * time.Hour, Value: units.Celsius(4)})
	fmt.Println(before.Len(), after.Len(), err)
	// Output: 5 6 <nil>
}

func ExampleSeries_Len() {
	fmt.Println(run().Len())
	// Output: 8
}

func ExampleSeries_At() {
	s := run()
	r, ok := s.At(2)
	fmt.Println(r.At, units.Text(r.Value, units.PSI, 0), ok)
	_, ok = s.At(8)
	fmt.Println(ok)
	// Output:
	// 20m0s 15 psi true
	// false
}

func ExampleSeries_Readings() {
	for _, r := range smokehouse().Readings()[:2] {
		fmt.Println(r.At, r.Value)
	}
	// Output:
	// 0s 10 °C
	// 2h0m0s 50 °C
}

func ExampleSeries_First() {
	r, ok := smokehouse().First()
	fmt.Println(r.At, r.Value, ok)
	// Output: 0s 10 °C true
}

func ExampleSeries_Last() {
	r, ok := smokehouse().Last()
	fmt.Println(r.At, r.Value, ok)
	// Output: 6h0m0s 6 °C true
}

func ExampleSeries_Span() {
	fmt.Println(smokehouse().Span())
	// Output: 6h0m0s
}

func ExampleSeries_Min() {
	r, ok := smokehouse().Min()
	fmt.Println(r.At, r.Value, ok)
	// Output: 6h0m0s 6 °C true
}

func ExampleSeries_Max() {
	r, ok := smokehouse().Max()
	fmt.Println(r.At, r.Value, ok)
	// Output: 3h0m0s 66 °C true
}

func ExampleSeries_Equal() {
	s := run()
	part, err := s.Slice(0, 80*time.Minute)
	fmt.Println(s.Equal(part), err)
	// Output: true <nil>
}

func ExampleSeries_ValueAt() {
	s := smokehouse()
	v, err := s.ValueAt(time.Hour)
	fmt.Println(v, err)
	_, err = s.ValueAt(7 * time.Hour)
	fmt.Println(err)
	// Output:
	// 30 °C <nil>
	// time in the record 7 h is out of range: expected 0 min to 6 h
}

func ExampleSeries_Slice() {
	cooling, err := smokehouse().Slice(4*time.Hour, 5*time.Hour)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range cooling.Readings() {
		fmt.Println(r.At, r.Value)
	}
	// Output:
	// 4h0m0s 66 °C
	// 5h0m0s 36 °C
}

func ExampleSeries_AtOrAbove() {
	held, err := run().AtOrAbove(13 * units.PSI)
	fmt.Println(held, err)
	_, err = smokehouse().AtOrAbove(units.Temperature{})
	fmt.Println(err)
	// Output:
	// 40m20s <nil>
	// limit not set is out of range: expected a value that is set
}

func ExampleSeries_Above() {
	s := smokehouse()
	exposed, err := s.Above(units.Celsius(66)) // it stood at 66 °C for an hour, never above
	fmt.Println(exposed, err)
	exposed, err = s.Above(units.Celsius(65))
	fmt.Println(exposed, err)
	// Output:
	// 0s <nil>
	// 1h5m45s <nil>
}

func ExampleSeries_AtOrBelow() {
	cold, err := smokehouse().AtOrBelow(units.Celsius(10))
	fmt.Println(cold, err)
	// Output: 8m0s <nil>
}

func ExampleSeries_Below() {
	short, err := run().Below(13 * units.PSI)
	fmt.Println(short, err)
	// Output: 39m40s <nil>
}

func ExampleSeries_Between() {
	warm, err := smokehouse().Between(units.Celsius(10), units.Celsius(50))
	fmt.Println(warm, err)
	_, err = smokehouse().Between(units.Celsius(50), units.Celsius(10))
	fmt.Println(err)
	// Output:
	// 3h20m0s <nil>
	// upper limit 10 °C is out of range: expected at least 50 °C
}

func ExampleStretch_Length() {
	fmt.Println(series.Stretch{From: 16 * time.Minute, To: 35 * time.Minute}.Length())
	// Output: 19m0s
}

func ExampleSeries_LongestGap() {
	gap := run().LongestGap()
	fmt.Println(gap.From, gap.To, gap.Length())
	// Output: 50m0s 1h10m0s 20m0s
}

func ExampleSeries_LongestAtOrAbove() {
	hold, err := run().LongestAtOrAbove(13 * units.PSI)
	fmt.Println(hold.From, hold.To, hold.Length(), err)
	// Output: 50m0s 1h11m20s 21m20s <nil>
}

func ExampleSeries_LongestAtOrBelow() {
	cold, err := smokehouse().LongestAtOrBelow(units.Celsius(50))
	fmt.Println(cold.From, cold.To, cold.Length(), err)
	// Output: 0s 2h0m0s 2h0m0s <nil>
}

func ExampleSeries_FirstAtOrAbove() {
	at, found, err := run().FirstAtOrAbove(15 * units.PSI)
	fmt.Println(at, found, err)
	// Output: 20m0s true <nil>
}

func ExampleSeries_FirstAtOrBelow() {
	cooling, err := smokehouse().Slice(4*time.Hour, 6*time.Hour)
	if err != nil {
		fmt.Println(err)
		return
	}
	at, found, err := cooling.FirstAtOrBelow(units.Celsius(21))
	fmt.Println(at, found, err)
	// Output: 5h30m0s true <nil>
}

func ExampleSeries_FirstAbove() {
	_, found, err := run().FirstAbove(15 * units.PSI) // reached, never passed
	fmt.Println(found, err)
	// Output: false <nil>
}

func ExampleSeries_FirstBelow() {
	process, err := run().Slice(20*time.Minute, 70*time.Minute)
	if err != nil {
		fmt.Println(err)
		return
	}
	at, found, err := process.FirstBelow(13 * units.PSI)
	fmt.Println(at, found, err)
	// Output: 35m0s true <nil>
}
