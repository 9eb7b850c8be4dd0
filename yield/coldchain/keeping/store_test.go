package keeping_test

import (
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"example.org/lakelarder/yield/coldchain/keeping"
	"github.com/stretchr/testify/require"
)

// A refrigerator of 43 °F is 3 °F too warm: by table A-2 (recalled) Listeria then has a day instead of seven.
func TestWarmRefrigerator(t *testing.T) {
	j, err := keeping.CheckStore(keeping.InRefrigerator, units.Fahrenheit(43))
	require.NoError(t, err)
	require.Equal(t, 3*units.FahrenheitDegrees, j.Lines[2].TooWarm)
	require.Equal(t, "any food", j.Lines[2].Limit.For)
	costs := map[string][2]time.Duration{}
	for _, c := range j.Costs {
		require.Equal(t, keeping.Safety, c.Concern)
		require.True(t, c.AtLimit == 0 || c.Here < c.AtLimit)
		costs[c.What] = [2]time.Duration{c.AtLimit, c.Here}
	}
	require.Equal(t, [2]time.Duration{7 * chain.Day, chain.Day}, costs[coldchain.Listeria.String()])
	require.Equal(t, [2]time.Duration{7 * chain.Day, 2 * chain.Day}, costs[coldchain.BotulinumE.String()])
	require.Equal(t, [2]time.Duration{0, 2 * chain.Day}, costs[coldchain.Salmonella.String()], "it does not grow at 40 °F")
	for _, at := range []units.Temperature{units.Celsius(-2), units.Fahrenheit(36), units.Fahrenheit(40)} {
		cool, err := keeping.CheckStore(keeping.InRefrigerator, at)
		require.NoError(t, err)
		require.Empty(t, cool.Costs)
	}
}

func TestStoreRefuses(t *testing.T) {
	for name, c := range map[string]struct {
		storage keeping.Storage
		at      units.Temperature
	}{
		"no storage": {0, units.Celsius(3)}, "unknown storage": {9, units.Celsius(3)}, "not measured": {keeping.InFreezer, units.Temperature{}},
		"a refrigerator in °F read as °C": {keeping.InRefrigerator, units.Celsius(40)}, "a refrigerator that freezes": {keeping.InRefrigerator, units.Celsius(-5.1)},
		"a freezer of 32 °C": {keeping.InFreezer, units.Celsius(32)}, "liquid air": {keeping.InFreezer, units.Celsius(-61)}, "an oven": {keeping.InCupboard, units.Celsius(61)},
	} {
		_, err := keeping.CheckStore(c.storage, c.at)
		logged.Refused(t, err, name)
	}
}
