package growth_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/growth"
	"example.org/lakelarder/yield/coldchain/internal/logged"
)

func TestRatesComeBack(t *testing.T) {
	for _, c := range []float64{-3, 0, 1.3, 5, 25} {
		raw, err := growth.ListeriaInRawSalmon(units.Celsius(c))
		require.NoError(t, err)
		logged.Back(t, raw)
		fish := smoked()
		fish.Temperature = units.Celsius(c)
		logged.Back(t, fish)
		inFish, err := growth.ListeriaInSeafood(fish)
		require.NoError(t, err)
		logged.Back(t, inFish)
		rate, err := growth.ListeriaRate(units.One, units.Celsius(5), units.Celsius(c))
		require.NoError(t, err)
		logged.Back(t, rate)
	}
}

func TestSeafoodJSONRefuses(t *testing.T) {
	logged.Unreadable(t, growth.Seafood{Lactic: units.Percent}, map[string]string{
		`{"waterActivity": "97 %", "ph": "6.2"}`:                                    "temperature",
		`{"temperature": "5 °C", "ph": "6.2"}`:                                      "waterActivity",
		`{"temperature": "5 °C", "waterActivity": "97 %"}`:                          "ph",
		`{"temperature": 5, "waterActivity": "97 %", "ph": "6.2"}`:                  "temperature",
		`{"temperature": "5 °C", "waterActivity": 0.97, "ph": "6.2"}`:               "waterActivity",
		`{"temperature": "5 °C", "waterActivity": "97 %", "ph": "6.2", "salt": ""}`: "salt",
	})
}

func TestGolden(t *testing.T) {
	fish := smoked()
	rate, err := growth.ListeriaInSeafood(fish)
	require.NoError(t, err)
	logged.Golden(t, "growth-seafood", fish)
	logged.Golden(t, "growth-seafood-rate", rate)
	at, err := growth.TimeToToxinInFish(units.Celsius(5), 0)
	require.NoError(t, err)
	logged.Golden(t, "growth-toxin-time", at)
	share, err := growth.ToxinShare(logged.Record(t, logged.Flat(20*hour, 50)), 40*hour)
	require.NoError(t, err)
	logged.Golden(t, "growth-toxin-share", share)
}
