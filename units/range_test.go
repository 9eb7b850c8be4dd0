package units_test

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

func ExampleRange() {
	r := units.Range[units.Mass]{Low: 1_061 * units.Gram, Likely: 1_320 * units.Gram, High: 1_598 * units.Gram}
	fmt.Println(r.Text(units.Metric))
	fmt.Println(r == units.Range[units.Mass]{}, r.Holds(1_100*units.Gram), r.Holds(units.Kilogram))
	// Output:
	// 1.06 kg to 1.6 kg, likely 1.32 kg
	// false true false
}

func ExampleRangeOf() {
	r, err := units.RangeOf("drying time", time.Hour, 90*time.Minute, 2*time.Hour)
	fmt.Println(r, err)
	_, err = units.RangeOf("drying time", time.Hour, 30*time.Minute, 2*time.Hour)
	fmt.Println(err)
	// Output:
	// 1 h to 2 h, likely 90 min <nil>
	// likely drying time 30 min is out of range: expected at least 1 h
}

func ExampleRange_Holds() {
	r := units.Range[units.Temperature]{Low: units.Celsius(60), Likely: units.Celsius(65), High: units.Celsius(72)}
	fmt.Println(r.Holds(units.Celsius(72)), r.Holds(units.Celsius(72.1)), r.Holds(units.Temperature{}))
	// Output: true false false
}

func ExampleRange_Figure() {
	r := units.Range[units.Ratio]{Low: 10 * units.Percent, Likely: 20 * units.Percent, High: 30 * units.Percent}
	fmt.Println(r.Figure().Text(units.Metric))
	// Output: 10 % to 30 %
}

func ExampleRange_Text() {
	r := units.Range[units.Temperature]{Low: units.Celsius(60), Likely: units.Celsius(65), High: units.Celsius(72)}
	fmt.Println(r.Text(units.US))
	fmt.Println(r.Text(units.Both))
	// Output:
	// 140 °F to 161.6 °F, likely 149 °F
	// 140 °F (60 °C) to 161.6 °F (72 °C), likely 149 °F (65 °C)
}

// What is printed holds the range: the least is never printed higher than it is, the greatest never lower.
func TestRangesArePrintedOutward(t *testing.T) {
	r := units.Range[units.Temperature]{Low: units.Celsius(60.06), Likely: units.Celsius(60.1), High: units.Celsius(60.14)}
	require.Equal(t, "60 °C to 60.2 °C, likely 60.1 °C", r.Text(units.Metric))
	require.Equal(t, "2 h", units.Range[time.Duration]{Low: 2 * time.Hour, Likely: 2 * time.Hour, High: 2 * time.Hour}.Text(units.US))
}

func TestRangesThatDoNotRise(t *testing.T) {
	for name, make := range map[string]func() error{
		"likely below low":  func() error { _, err := units.RangeOf("mass", 2, units.Mass(1), 3); return err },
		"high below likely": func() error { _, err := units.RangeOf("mass", 1, units.Mass(3), 2); return err },
		"not set": func() error {
			_, err := units.RangeOf("core", units.Celsius(1), units.Temperature{}, units.Celsius(2))
			return err
		},
		"none set": func() error {
			_, err := units.RangeOf[units.Temperature]("core", units.Temperature{}, units.Temperature{}, units.Temperature{})
			return err
		},
	} {
		require.ErrorIs(t, make(), units.ErrRange, name)
	}
	r, err := units.RangeOf("mass", 1, units.Mass(1), 1)
	require.NoError(t, err)
	require.Equal(t, units.Range[units.Mass]{Low: 1, Likely: 1, High: 1}, r)
}
