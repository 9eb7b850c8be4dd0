package coldchain

import (
	"math/big"
	"testing"
	"time"

	"example.org/lakelarder/units"
	"github.com/stretchr/testify/require"
)

// Ice is never less than the exact product, and never a gram more.
func FuzzIceIsNeverShort(f *testing.F) {
	f.Add(int64(25*units.Kilogram), int64(11_400*units.PartsPerMillion), int64(14*units.CelsiusDegrees))
	f.Add(int64(1), int64(units.Percent), int64(1))
	f.Fuzz(func(t *testing.T, fish, constant, change int64) {
		ice, err := ChillIce(units.Mass(fish), units.Celsius(0).Add(units.TemperatureChange(change)), units.Celsius(0), IceConstant{PerDegree: units.Ratio(constant)})
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		if constant == 0 {
			constant = int64(IceConstants()[0].PerDegree)
		}
		exact := new(big.Rat).SetInt(new(big.Int).Mul(new(big.Int).Mul(big.NewInt(fish), big.NewInt(constant)), big.NewInt(change)))
		exact.Quo(exact, new(big.Rat).SetInt(new(big.Int).Mul(big.NewInt(int64(units.One)), big.NewInt(int64(units.CelsiusDegrees)))))
		got := new(big.Rat).SetInt64(int64(ice.Mass))
		require.True(t, got.Cmp(exact) >= 0)
		require.True(t, new(big.Rat).Sub(got, exact).Cmp(new(big.Rat).SetInt64(int64(units.Gram))) < 0)
		require.Zero(t, ice.Mass%units.Gram)
	})
}

// A longer or warmer time in storage never stands better, and no input is left without a standing or an error.
func FuzzCheckKeeping(f *testing.F) {
	f.Add(uint8(Smoked), uint8(InRefrigerator), 3.0, int64(9*day), 0.5, int64(day))
	f.Add(uint8(RawTrout), uint8(InFreezer), -18.0, int64(3*month), 0.3, int64(1))
	f.Fuzz(func(t *testing.T, food, storage uint8, celsius float64, held int64, warmer float64, longer int64) {
		base, err := CheckKeeping(Food(food), Storage(storage), units.Celsius(celsius), time.Duration(held))
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		if !(warmer >= 0) || longer < 0 || held > int64(20*year)-min(longer, int64(20*year)) {
			return
		}
		worse, err := CheckKeeping(Food(food), Storage(storage), units.Celsius(celsius+warmer), time.Duration(held+longer))
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		require.GreaterOrEqual(t, worse.Safety, base.Safety)
		require.GreaterOrEqual(t, worse.Quality, base.Quality)
	})
}

// A stretch split anywhere uses what it used whole, and a warmer end never less.
func FuzzFrozenStretch(f *testing.F) {
	f.Add(uint8(0), -30.0, -10.0, 0.3, 1.0)
	f.Add(uint8(4), -18.0, -18.0, 0.5, 0.0)
	f.Fuzz(func(t *testing.T, which uint8, a, b, at, warmer float64) {
		if !(a > -100 && a < 30 && b > -100 && b < 30 && at > 0 && at < 1 && warmer >= 0 && warmer < 50) {
			return
		}
		knots := storageLives[int(which)%len(storageLives)].knots()
		var whole, split, more frozenSum
		whole.add(knots, 1e6, a, b)
		middle := a + float64((b-a)*at)
		split.add(knots, 1e6*at, a, middle)
		split.add(knots, 1e6*(1-at), middle, b)
		require.InDelta(t, whole.share, split.share, 1e-9)
		require.InDelta(t, whole.warm+whole.cold, split.warm+split.cold, 1e-3)
		more.add(knots, 1e6, a, b+warmer)
		require.GreaterOrEqual(t, more.share, whole.share-1e-12)
	})
}

func FuzzParseFood(f *testing.F) {
	for food := Raw; food < anyFood; food++ {
		f.Add(food.String())
	}
	f.Add("freezer")
	f.Fuzz(func(t *testing.T, text string) {
		if food, err := ParseFood(text); err == nil {
			back, err := ParseFood(food.String())
			require.NoError(t, err)
			require.Equal(t, food, back)
		} else {
			require.ErrorIs(t, err, units.ErrSyntax)
		}
		if storage, err := ParseStorage(text); err == nil {
			back, err := ParseStorage(storage.String())
			require.NoError(t, err)
			require.Equal(t, storage, back)
		} else {
			require.ErrorIs(t, err, units.ErrSyntax)
		}
	})
}
