package pressure

import (
	"math"
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"
)

// exactly is p0 x^exponent in 200 bits: e to the power of exponent ln x, both by their series.
func exactly(x float64) *big.Float {
	const bits = 200
	number := func(s string) *big.Float {
		f, _, err := big.ParseFloat(s, 10, bits, big.ToNearestEven)
		if err != nil {
			panic(err)
		}
		return f
	}
	of := func(f float64) *big.Float { return new(big.Float).SetPrec(bits).SetFloat64(f) }
	power := new(big.Float).Mul(number("9.80665"), number("28.9644"))
	power.Quo(power, new(big.Float).Mul(number("8314.32"), number("0.0065")))
	// ln x = 2 atanh((x − 1)/(x + 1))
	y := new(big.Float).Quo(new(big.Float).Sub(of(x), of(1)), new(big.Float).Add(of(x), of(1)))
	ln, term, square := of(0), new(big.Float).Set(y), new(big.Float).Mul(y, y)
	for k := 1; k < 200; k += 2 {
		ln.Add(ln, new(big.Float).Quo(term, of(float64(k))))
		term.Mul(term, square)
	}
	z := power.Mul(power, ln.Mul(ln, of(2)))
	sum, one := of(1), of(1)
	for k := 1; k < 100; k++ {
		one.Quo(one.Mul(one, z), of(float64(k)))
		sum.Add(sum, one)
	}
	return sum.Mul(sum, of(seaLevelPressure))
}

// Every entry of the table is the pressure in the middle of its 64th, in two words.
func TestStandardAirTable(t *testing.T) {
	for i, entry := range standardAirTable {
		want := exactly(float64(2*(i+48)+1) / 128)
		got := new(big.Float).SetPrec(200).SetFloat64(entry.high)
		got.Add(got, new(big.Float).SetFloat64(entry.low))
		off, _ := got.Sub(got, want).Float64()
		require.LessOrEqual(t, math.Abs(off), 1e-26*entry.high, "entry %d", i)
		nearest, _ := want.Float64()
		require.Equal(t, nearest, entry.high)
	}
}

// The pressure is that of equation 33a within 0.65 of a last digit, over all of AirAt's range and at the edges of the
// table's parts.
func TestOfColder(t *testing.T) {
	worst := 0.
	try := func(x float64) {
		got := ofColder(x)
		want := exactly(x)
		off, _ := new(big.Float).Sub(new(big.Float).SetFloat64(got), want).Float64()
		worst = max(worst, math.Abs(off)/(math.Nextafter(got, math.Inf(1))-got))
	}
	for i := 0; i <= 2_000; i++ {
		try(0.752 + float64(i)*(1.0227-0.752)/2_000)
	}
	for part := 49; part <= 65; part++ {
		edge := float64(part) / 64
		try(edge)
		try(math.Nextafter(edge, 0))
		try(math.Nextafter(edge, 2))
	}
	require.Less(t, worst, 0.65)
	require.Equal(t, 101_325., ofColder(1))
}
