package units_test

import (
	"fmt"
	"math"
	"math/big"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

// What the salt is enough for rounds down.
func ExampleProrateDown() {
	fillet, err := units.ProrateDown(units.Kilogram, 100*units.Gram, 30*units.Gram)
	fmt.Println(units.FloorTo(fillet, units.Gram), err)
	// Output: 3.333 kg <nil>
}

// What is to be bought rounds up.
func ExampleProrateUp() {
	salt, err := units.ProrateUp(units.Ounce, 2*units.Kilogram, 3*units.Kilogram)
	fmt.Println(3*salt > 2*units.Ounce, 3*(salt-1) < 2*units.Ounce, err)
	// Output: true true <nil>
}

// edges are where products and signs turn.
var edges = []int64{0, 1, -1, 2, -2, 3, -3, 7, 10, -10, 1<<31 - 1, 1 << 32, 1<<62 - 1, 1 << 62, -1 << 62,
	math.MaxInt64 - 1, math.MaxInt64, -math.MaxInt64, math.MinInt64}

// TestProrateBothWays holds the three roundings to whole-number arithmetic without a bound, at every edge and for
// random values.
func TestProrateBothWays(t *testing.T) {
	for _, q := range edges {
		for _, part := range edges {
			for _, whole := range edges {
				prorated(t, q, part, whole)
			}
		}
	}
	r := rand.New(rand.NewSource(1))
	for i := 0; i < 20_000; i++ {
		prorated(t, int64(r.Uint64())>>r.Intn(64), int64(r.Uint64())>>r.Intn(64), int64(r.Uint64())>>r.Intn(64))
	}
}

func prorated(t *testing.T, q, part, whole int64) {
	t.Helper()
	down, errDown := units.ProrateDown(units.Mass(q), units.Volume(part), units.Volume(whole))
	up, errUp := units.ProrateUp(units.Mass(q), units.Volume(part), units.Volume(whole))
	near, errNear := units.Prorate(units.Mass(q), units.Volume(part), units.Volume(whole))
	if whole == 0 {
		for _, err := range []error{errDown, errUp, errNear} {
			require.ErrorIs(t, err, units.ErrRange)
		}
		return
	}
	exact := new(big.Rat).SetFrac(new(big.Int).Mul(big.NewInt(q), big.NewInt(part)), big.NewInt(whole))
	floor := new(big.Int).Div(exact.Num(), exact.Denom()) // Euclidean, and the denominator is above zero
	ceil := new(big.Int).Neg(new(big.Int).Div(new(big.Int).Neg(exact.Num()), exact.Denom()))
	for _, c := range []struct {
		name string
		want *big.Int
		got  units.Mass
		err  error
	}{{"down", floor, down, errDown}, {"up", ceil, up, errUp}, {"near", nearest(exact).Num(), near, errNear}} {
		if !c.want.IsInt64() {
			require.ErrorIs(t, c.err, units.ErrRange, "%s: %d·%d/%d", c.name, q, part, whole)
			continue
		}
		require.NoError(t, c.err, "%s: %d·%d/%d", c.name, q, part, whole)
		require.Equal(t, c.want.Int64(), int64(c.got), "%s: %d·%d/%d", c.name, q, part, whole)
	}
}
