package series_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// watched is what has been seen of the invented run after its first n readings.
func watched(n int) series.Running[units.Pressure] {
	r, err := series.Watch(13 * units.PSI)
	for _, reading := range run().Readings()[:n] {
		if err == nil {
			r, err = r.Next(reading)
		}
	}
	if err != nil {
		panic(err)
	}
	return r
}

func ExampleWatch() {
	r, err := series.Watch(13 * units.PSI)
	fmt.Println(r.Len(), r.Total(), err)
	_, err = series.Watch(units.Temperature{})
	fmt.Println(err)
	// Output:
	// 0 0s <nil>
	// limit not set is out of range: expected a value that is set
}

func ExampleRunning_Next() {
	r := watched(7)
	fmt.Println(r.Total(), r.Longest().Length())
	r, err := r.Next(series.Reading[units.Pressure]{At: 80 * time.Minute, Value: 0})
	fmt.Println(r.Total(), r.Longest().Length(), err)
	r, err = r.Next(series.Reading[units.Pressure]{At: 79 * time.Minute, Value: 0})
	fmt.Println(r.Len(), err)
	// Output:
	// 39m0s 20m0s
	// 40m20s 21m20s <nil>
	// 8 reading 8 at 1h19m0s: the time runs backward
}

func ExampleRunning_Limit() {
	fmt.Println(units.Text(watched(0).Limit(), units.PSI, 0))
	// Output: 13 psi
}

func ExampleRunning_Len() {
	fmt.Println(watched(3).Len())
	// Output: 3
}

func ExampleRunning_Last() {
	last, ok := watched(3).Last()
	fmt.Println(last.At, units.Text(last.Value, units.PSI, 0), ok)
	// Output: 20m0s 15 psi true
}

func ExampleRunning_Total() {
	fmt.Println(watched(4).Total())
	// Output: 14m0s
}

func ExampleRunning_Current() {
	now := watched(4).Current()
	fmt.Println(now.From, now.To)
	fmt.Println(watched(5).Current().Length()) // the pressure has fallen: start over
	// Output:
	// 16m0s 30m0s
	// 0s
}

func ExampleRunning_Longest() {
	fmt.Println(watched(5).Longest())
	// Output: {16m0s 35m0s}
}

func ExampleRunning_LongestGap() {
	fmt.Println(watched(8).LongestGap().Length())
	// Output: 20m0s
}
