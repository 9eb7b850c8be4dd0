package units_test

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

func ExampleFigure() {
	core := units.AtLeast(units.Fahrenheit(180)).Also(units.AtLeast(units.Celsius(82.2)))
	fmt.Println(core.Text(units.US))
	fmt.Println(core.Text(units.Metric))
	fmt.Println(core.Admits(units.AmountOf(units.Celsius(82.2))), core.Admits(units.AmountOf(units.Celsius(82.1))))
	// Output:
	// at least 180 °F
	// at least 82.2 °C
	// true false
}

func ExampleExactly() {
	fmt.Println(units.Exactly(1 * units.Inch).Text(units.Both)) /* Output: 1 in (25.4 mm) */
}

func ExampleAtLeast() {
	fmt.Println(units.AtLeast(100 * time.Minute).Text(units.US)) /* Output: at least 100 min */
}

func ExampleAtMost() {
	fmt.Println(units.AtMost(units.Fahrenheit(38)).Text(units.Metric)) // rounded down: what keeps to it keeps to 38 °F
	// Output: at most 3.3 °C
}

func ExampleMoreThan() {
	fmt.Println(units.MoreThan(2000 * units.Foot).Text(units.US)) /* Output: more than 2,000 ft */
}

func ExampleLessThan() {
	fmt.Println(units.LessThan(85 * units.Percent).Text(units.US)) /* Output: below 85 % */
}

func ExampleBetween() {
	fmt.Println(units.Between(units.Fahrenheit(200), units.Fahrenheit(225)).Text(units.US)) // Output: 200 °F to 225 °F
}

func ExampleInWords() {
	fmt.Println(units.InWords("one method").Text(units.Both)) /* Output: one method */
}

func ExampleFigure_With() {
	fmt.Println(units.Between(3*units.Quart, 4*units.Quart).With("for some of these loads").Text(units.US))
	// Output: 3 qt to 4 qt for some of these loads
}

func ExampleFigure_Also() {
	printed := units.AtMost(units.Fahrenheit(36)).Also(units.AtMost(units.Celsius(2.2)))
	fmt.Println(printed.Text(units.Both))
	// Output: at most 36 °F (2.2 °C)
}

func ExampleFigure_IsStated() { fmt.Println(units.Figure{}.IsStated()) /* Output: false */ }

func ExampleFigure_IsExact() {
	fmt.Println(units.Exactly(time.Hour).IsExact(), units.AtLeast(time.Hour).IsExact())
	// Output: true false
}

func ExampleFigure_Text() {
	fmt.Println(units.AtLeast(11 * units.PSI).Text(units.Both)) /* Output: at least 11 psi (75.9 kPa) */
}

func ExampleFigure_Admits() {
	fmt.Println(units.LessThan(85 * units.Percent).Admits(units.AmountOf(85 * units.Percent)))
	// Output: false
}

// A hair below a limit never looks like the limit.
func ExampleApart() {
	stated, wanted := units.Apart(units.Exactly(units.Fahrenheit(179.96)), units.AtLeast(units.Fahrenheit(180)), units.US)
	fmt.Println(stated, "|", wanted)
	// Output: 179.9 °F | at least 180 °F
}

func TestApart(t *testing.T) {
	for _, c := range []struct {
		stated, wanted units.Figure
		s              units.System
		left, right    string
	}{
		{units.Exactly(units.Fahrenheit(179.999)), units.AtLeast(units.Fahrenheit(180)), units.US, "179.9 °F", "at least 180 °F"},
		{units.Exactly(units.Celsius(82.2)), units.AtLeast(units.Fahrenheit(180)), units.Metric, "82.2 °C", "at least 82.3 °C"},
		{units.Exactly(units.Celsius(82.2)), units.AtLeast(units.Fahrenheit(180)), units.US, "179.9 °F", "at least 180 °F"},
		{units.Exactly(units.Fahrenheit(38.01)), units.AtMost(units.Fahrenheit(38)), units.US, "38.1 °F", "at most 38 °F"},
		{units.Exactly(11*units.PSI - 1), units.AtLeast(11 * units.PSI), units.US, "10.99 psi", "at least 11 psi"},
		{units.Exactly(11*units.PSI - 1), units.Exactly(11 * units.PSI), units.US, "10.99 psi", "11 psi"},
		{units.Exactly(11*units.PSI + 1), units.Exactly(11 * units.PSI), units.US, "11.01 psi", "11 psi"},
		{units.Exactly(99*time.Minute + 59999*time.Millisecond), units.AtLeast(100 * time.Minute), units.US, "99 min 59 s", "at least 100 min"},
		{units.Exactly(100 * time.Minute), units.AtLeast(100 * time.Minute), units.US, "100 min", "at least 100 min"},
		{units.InWords("wet brined, with salt to fish"), units.InWords("one method"), units.US, "wet brined, with salt to fish", "one method"},
	} {
		left, right := units.Apart(c.stated, c.wanted, c.s)
		require.Equal(t, c.left, left)
		require.Equal(t, c.right, right)
	}
}

func TestFigureAdmits(t *testing.T) {
	pair := units.AtLeast(units.Fahrenheit(180)).Also(units.AtLeast(units.Celsius(82.2)))
	for _, c := range []struct {
		f    units.Figure
		a    units.Amount
		want bool
	}{
		{pair, units.AmountOf(units.Fahrenheit(180)), true},
		{pair, units.AmountOf(units.Celsius(82.2)), true},
		{pair, units.AmountOf(units.Fahrenheit(179.95)), false},
		{units.Exactly(time.Hour), units.AmountOf(time.Hour), true},
		{units.Exactly(time.Hour), units.AmountOf(time.Hour + 1), false},
		{units.Between(time.Hour, 2*time.Hour), units.AmountOf(2 * time.Hour), true},
		{units.Between(time.Hour, 2*time.Hour), units.AmountOf(2*time.Hour + 1), false},
		{units.MoreThan(time.Hour), units.AmountOf(time.Hour), false},
		{units.MoreThan(time.Hour), units.AmountOf(time.Hour + 1), true},
		{units.LessThan(time.Hour), units.AmountOf(time.Hour), false},
		{units.AtLeast(time.Hour), units.AmountOf(11 * units.PSI), false}, // another measure
		{units.AtLeast(time.Hour), units.Amount{}, false},                 // nothing stated meets nothing
		{units.InWords("one method"), units.AmountOf(time.Hour), false},
		{units.Figure{}, units.AmountOf(time.Hour), false},
	} {
		require.Equal(t, c.want, c.f.Admits(c.a), "%v admits %v", c.f.Text(units.Both), c.a)
	}
}
