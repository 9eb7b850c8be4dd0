package keeping_test

import (
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"example.org/lakelarder/yield/coldchain/keeping"
	"github.com/stretchr/testify/require"
)

// A longer or warmer time in storage never stands better, and no input is left without a standing or an error.
func FuzzCheckKeeping(f *testing.F) {
	f.Add(uint8(keeping.Smoked), uint8(keeping.InRefrigerator), 3.0, int64(9*chain.Day), 0.5, int64(chain.Day))
	f.Add(uint8(keeping.RawTrout), uint8(keeping.InFreezer), -18.0, int64(3*chain.Month), 0.3, int64(1))
	f.Fuzz(func(t *testing.T, food, storage uint8, celsius float64, held int64, warmer float64, longer int64) {
		base, err := keeping.Check(keeping.Food(food), keeping.Storage(storage), units.Celsius(celsius), time.Duration(held))
		if err != nil {
			logged.Refused(t, err, "base")
			return
		}
		if !(warmer >= 0) || longer < 0 || held > int64(20*chain.Year)-min(longer, int64(20*chain.Year)) {
			return
		}
		worse, err := keeping.Check(keeping.Food(food), keeping.Storage(storage), units.Celsius(celsius+warmer), time.Duration(held+longer))
		if err != nil {
			logged.Refused(t, err, "worse")
			return
		}
		require.GreaterOrEqual(t, worse.Verdict, base.Verdict)
		require.GreaterOrEqual(t, worse.Quality.Verdict, base.Quality.Verdict)
	})
}

func FuzzParseFood(f *testing.F) {
	for food := keeping.Raw; food <= keeping.Opened; food++ {
		f.Add(food.String())
	}
	f.Add("freezer")
	f.Fuzz(func(t *testing.T, text string) {
		if food, err := keeping.ParseFood(text); err == nil {
			back, err := keeping.ParseFood(food.String())
			require.NoError(t, err)
			require.Equal(t, food, back)
		} else {
			require.ErrorIs(t, err, units.ErrSyntax)
		}
		if storage, err := keeping.ParseStorage(text); err == nil {
			back, err := keeping.ParseStorage(storage.String())
			require.NoError(t, err)
			require.Equal(t, storage, back)
		} else {
			require.ErrorIs(t, err, units.ErrSyntax)
		}
	})
}
