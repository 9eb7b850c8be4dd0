package ice_test

import (
	"math/big"
	"testing"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/ice"
	"github.com/stretchr/testify/require"
)

// Ice is never less than the exact product, and never a gram more.
func FuzzIceIsNeverShort(f *testing.F) {
	f.Add(int64(25*units.Kilogram), int64(11_400*units.PartsPerMillion), int64(14*units.CelsiusDegrees))
	f.Add(int64(1), int64(units.Percent), int64(1))
	f.Fuzz(func(t *testing.T, fish, constant, change int64) {
		need, err := ice.ToChill(units.Mass(fish), units.Celsius(0).Add(units.TemperatureChange(change)), units.Celsius(0), ice.Constant{PerDegree: units.Ratio(constant)})
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		if constant == 0 {
			constant = int64(ice.Constants()[0].PerDegree)
		}
		exact := new(big.Rat).SetInt(new(big.Int).Mul(new(big.Int).Mul(big.NewInt(fish), big.NewInt(constant)), big.NewInt(change)))
		exact.Quo(exact, new(big.Rat).SetInt(new(big.Int).Mul(big.NewInt(int64(units.One)), big.NewInt(int64(units.CelsiusDegrees)))))
		got := new(big.Rat).SetInt64(int64(need.Mass))
		require.True(t, got.Cmp(exact) >= 0)
		require.True(t, new(big.Rat).Sub(got, exact).Cmp(new(big.Rat).SetInt64(int64(units.Gram))) < 0)
		require.Zero(t, need.Mass%units.Gram)
	})
}
