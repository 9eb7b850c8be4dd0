package units_test

import (
	"fmt"
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

func ExampleAmountOf() {
	setting := units.AmountOf(11 * units.PSI)
	fmt.Println(setting.Text(units.US, units.Nearest), "or", setting.Text(units.Metric, units.Up))
	fmt.Println(units.AmountOf(100 * time.Minute))
	// Output:
	// 11 psi or 75.9 kPa
	// 100 min
}

func ExampleAs() {
	p, ok := units.As[units.Pressure](units.AmountOf(11 * units.PSI))
	fmt.Println(p, ok)
	_, ok = units.As[units.Length](units.AmountOf(11 * units.PSI))
	fmt.Println(ok)
	// Output:
	// 11 psi true
	// false
}

func ExampleParseAmount() {
	for _, text := range []string{"180 °F", "7 F°", "100 min", "3.5 %", "12"} {
		a, err := units.ParseAmount(text)
		fmt.Println(a, err)
	}
	// Output:
	// 180 °F <nil>
	// 7 F° <nil>
	// 100 min <nil>
	// 3.5 % <nil>
	// 12 <nil>
}

func ExampleAmount_Compare() {
	c, ok := units.AmountOf(90 * time.Minute).Compare(units.AmountOf(100 * time.Minute))
	fmt.Println(c, ok)
	// Output: -1 true
}

func ExampleAmount_Comparable() {
	fmt.Println(units.AmountOf(time.Hour).Comparable(units.AmountOf(units.PSI)))
	// Output: false
}

func ExampleAmount_Equal() {
	fmt.Println(units.AmountOf(units.Celsius(100)).Equal(units.AmountOf(units.Fahrenheit(212))))
	// Output: true
}

func ExampleAmount_Minus() {
	fmt.Println(units.AmountOf(units.Fahrenheit(180)).Minus(units.AmountOf(units.Fahrenheit(173))))
	// Output: 7 F°
}

func ExampleAmount_IsStated() {
	fmt.Println(units.Amount{}.IsStated(), units.AmountOf(units.Temperature{}).IsStated(), units.AmountOf(units.Length(0)).IsStated())
	// Output: false false true
}

// A wanted figure rounds inward and a stated one outward: 11 psi in kilopascals is never printed as less.
func ExampleAmount_Text() {
	sag := units.AmountOf(11*units.PSI - units.PSI/1000)
	fmt.Println(sag.Text(units.US, units.Down), sag.Text(units.US, units.Up))
	fmt.Println(units.AmountOf(units.Celsius(82.2)).Text(units.Both, units.Nearest))
	// Output:
	// 10.99 psi 11 psi
	// 180 °F (82.2 °C)
}

// everyMeasure is a value of each measure.
func everyMeasure() []units.Amount {
	return []units.Amount{
		units.AmountOf(4350 * units.Foot), units.AmountOf(3 * units.SquareMetre), units.AmountOf(units.Mass(1)), units.AmountOf(3 * units.Quart),
		units.AmountOf(11 * units.PSI), units.AmountOf(7 * units.FahrenheitDegrees), units.AmountOf(3 * units.Kelvins), units.AmountOf(35 * units.PerMille),
		units.AmountOf(units.KilogramPerCubicMetre), units.AmountOf(3 * units.MetrePerSecond), units.AmountOf(units.SquareMetrePerSecond),
		units.AmountOf(units.WattPerMetreKelvin), units.AmountOf(units.WattPerSquareMetreKelvin), units.AmountOf(units.JoulePerKilogramKelvin),
		units.AmountOf(3 * units.Joule), units.AmountOf(units.JoulePerKilogram), units.AmountOf(46 * units.PHUnit / 10), units.AmountOf(units.Celsius(82.2)),
		units.AmountOf(units.Fahrenheit(180)), units.AmountOf(100 * time.Minute), units.AmountOf(36 * time.Hour), units.AmountOf(1500 * time.Millisecond),
		units.AmountOf(units.Count(12)), units.AmountOf(units.Length(0)), units.AmountOf(time.Duration(0)), units.AmountOf(units.Count(-3)),
	}
}

func TestAmountsComeBack(t *testing.T) {
	for _, a := range everyMeasure() {
		text, err := a.MarshalText()
		require.NoError(t, err)
		var back units.Amount
		require.NoError(t, back.UnmarshalText(text), string(text))
		require.Equal(t, a, back, string(text))
	}
	require.Equal(t, "", units.Amount{}.String())
	back, err := units.ParseAmount("")
	require.NoError(t, err)
	require.False(t, back.IsStated())
}

func TestAmountsRefuse(t *testing.T) {
	for _, text := range []string{"psi", "eleven psi", "11 lb/in", "1.5", "not set", "NaN min", "1 h 2", "100 minutes and more", " ", "5 °X"} {
		_, err := units.ParseAmount(text)
		require.ErrorIs(t, err, units.ErrSyntax, text)
	}
}

// Different measures are never compared or subtracted, and a difference never wraps.
func TestAmountsOfDifferentMeasures(t *testing.T) {
	all := everyMeasure()
	for _, a := range all {
		c, ok := a.Compare(a)
		require.True(t, ok)
		require.Zero(t, c)
		for _, b := range all {
			if !a.Comparable(b) {
				require.False(t, a.Minus(b).IsStated(), "%v and %v", a, b)
				_, ok := a.Compare(b)
				require.False(t, ok)
			}
		}
	}
	least := units.AmountOf(units.Length(math.MinInt64))
	require.False(t, units.AmountOf(units.Metre).Minus(least).IsStated())
	require.False(t, units.AmountOf(-2*units.Nanometre).Minus(units.AmountOf(units.Length(math.MaxInt64))).IsStated())
}

// What is printed lies on the side that was asked for, and within a digit of the figure.
func TestAmountRoundsToItsSide(t *testing.T) {
	for _, c := range []struct {
		a              units.Amount
		s              units.System
		down, near, up string
	}{
		{units.AmountOf(11 * units.PSI), units.Metric, "75.8 kPa", "75.8 kPa", "75.9 kPa"},
		{units.AmountOf(13 * units.PSI), units.Metric, "89.6 kPa", "89.6 kPa", "89.7 kPa"},
		{units.AmountOf(units.Fahrenheit(180)), units.Metric, "82.2 °C", "82.2 °C", "82.3 °C"},
		{units.AmountOf(units.Celsius(-18.04)), units.Metric, "-18.1 °C", "-18 °C", "-18 °C"},
		{units.AmountOf(units.Celsius(0)), units.US, "32 °F", "32 °F", "32 °F"},
		{units.AmountOf(2000 * units.Foot), units.US, "2,000 ft", "2,000 ft", "2,000 ft"},
		{units.AmountOf(2000 * units.Foot), units.Metric, "609.6 m", "609.6 m", "609.6 m"},
		{units.AmountOf(units.Inch), units.US, "1 in", "1 in", "1 in"},
		{units.AmountOf(units.Inch), units.Metric, "25.4 mm", "25.4 mm", "25.4 mm"},
		{units.AmountOf(3 * units.Quart), units.Metric, "2.83 L", "2.84 L", "2.84 L"},
		{units.AmountOf(30 * units.Gram), units.US, "1.05 oz", "1.06 oz", "1.06 oz"},
		{units.AmountOf(units.Ratio(1)), units.US, "0.0000000001 %", "0.0000000001 %", "0.01 %"},
		{units.AmountOf(999_999 * units.Gram / 1000), units.Metric, "999.9 g", "1,000 g", "1,000 g"},
		{units.AmountOf(99*time.Minute + 59*time.Second + 600*time.Millisecond), units.Both, "99 min 59 s", "100 min", "100 min"},
		{units.AmountOf(-time.Minute - 600*time.Millisecond), units.Both, "-1 min 1 s", "-1 min 1 s", "-1 min"},
		{units.AmountOf(100 * units.SquareInch), units.US, "100 in²", "100 in²", "100 in²"},
		{units.AmountOf(100 * units.SquareInch), units.Metric, "645.1 cm²", "645.2 cm²", "645.2 cm²"},
		{units.AmountOf(200 * units.Kilocalorie), units.Metric, "836 kJ", "837 kJ", "837 kJ"},
		{units.AmountOf(200 * units.Kilocalorie), units.US, "200 kcal", "200 kcal", "200 kcal"},
		{units.AmountOf(1198 * units.KilogramPerCubicMetre), units.Both, "1,198 kg/m³", "1,198 kg/m³", "1,198 kg/m³"},
		{units.AmountOf(48 * time.Hour), units.Both, "48 h", "48 h", "48 h"},
		{units.AmountOf(72 * time.Hour), units.Both, "3 days", "3 days", "3 days"},
		{units.AmountOf(240*time.Hour + time.Minute), units.Both, "240 h 1 min", "240 h 1 min", "240 h 1 min"},
		{units.AmountOf(units.Count(3)), units.Both, "3", "3", "3"},
		{units.AmountOf(units.TemperatureChange(1)), units.US, "0.0000002 F°", "0.0000002 F°", "0.1 F°"},
	} {
		require.Equal(t, c.down, c.a.Text(c.s, units.Down), "%v down", c.a)
		require.Equal(t, c.near, c.a.Text(c.s, units.Nearest), "%v near", c.a)
		require.Equal(t, c.up, c.a.Text(c.s, units.Up), "%v up", c.a)
	}
}

func BenchmarkAmountOf(b *testing.B) {
	b.ReportAllocs()
	var sum units.Pressure
	for i := 0; i < b.N; i++ {
		a := units.AmountOf(units.Pressure(i))
		p, _ := units.As[units.Pressure](a)
		sum += p
	}
	_ = sum
}

func BenchmarkAmountText(b *testing.B) {
	b.ReportAllocs()
	a := units.AmountOf(11 * units.PSI)
	for i := 0; i < b.N; i++ {
		_ = a.Text(units.Metric, units.Up)
	}
}
