package coldchain

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

// Both ways. Sources: see the rows.
func TestStoreTemperatures(t *testing.T) {
	rows := printed.Table(t, "coldchain/store-temperatures.csv")
	require.Len(t, storeTable, len(rows))
	for _, r := range rows {
		storage, err := ParseStorage(r.Text("storage"))
		require.NoError(t, err)
		want := StoreLimit{Storage: storage, For: r.Text("for"), AtLeast: fahrenheit(t, r, "at_least_f"), AtMost: fahrenheit(t, r, "at_most_f"), Under: r.Text("at") == "below"}
		if r.Has("at_most_c") {
			want.AtMost = celsius(t, r, "at_most_c")
		}
		found := false
		for _, l := range StoreLimits(storage) {
			if l.For == want.For {
				found = true
				require.Equal(t, provenance(r), provenanceOf(l.Citation))
				require.NoError(t, l.Citation.Check())
				want.Citation = l.Citation
				require.Empty(t, cmp.Diff(want, l))
			}
		}
		require.True(t, found, r.String())
	}
	for storage := InRefrigerator; storage <= InCupboard; storage++ {
		all := StoreLimits(storage)
		require.NotEmpty(t, all)
		for i, l := range all {
			require.True(t, i == 0 || !l.AtMost.Below(all[i-1].AtMost), "coldest first: %v", l)
		}
	}
	require.Empty(t, StoreLimits(0))
}

// A refrigerator of 43 °F is 3 °F too warm: by table A-2 (recalled) Listeria then has a day instead of seven.
func TestWarmRefrigerator(t *testing.T) {
	j, err := JudgeStore(InRefrigerator, units.Fahrenheit(43))
	require.NoError(t, err)
	require.Equal(t, 3*units.FahrenheitDegrees, j.Lines[2].TooWarm)
	require.Equal(t, "any food", j.Lines[2].Limit.For)
	costs := map[string][2]time.Duration{}
	for _, c := range j.Costs {
		require.Equal(t, Safety, c.Concern)
		require.True(t, c.AtLimit == 0 || c.Here < c.AtLimit)
		costs[c.What] = [2]time.Duration{c.AtLimit, c.Here}
	}
	require.Equal(t, [2]time.Duration{7 * day, day}, costs[Listeria.String()])
	require.Equal(t, [2]time.Duration{7 * day, 2 * day}, costs[BotulinumE.String()])
	require.Equal(t, [2]time.Duration{0, 2 * day}, costs[Salmonella.String()], "it does not grow at 40 °F")
	for _, at := range []units.Temperature{units.Celsius(-2), units.Fahrenheit(36), units.Fahrenheit(40)} {
		cool, err := JudgeStore(InRefrigerator, at)
		require.NoError(t, err)
		require.Empty(t, cool.Costs)
	}
}

func TestWarmFreezer(t *testing.T) {
	j, err := JudgeStore(InFreezer, units.Fahrenheit(5))
	require.NoError(t, err)
	require.NotEmpty(t, j.Costs)
	for _, c := range j.Costs {
		require.Equal(t, Quality, c.Concern)
		require.True(t, c.Here > 0 && c.Here < c.AtLimit, c.What)
		require.True(t, c.Citation.Unverified())
	}
	// Warmer than the tables, and thawed.
	j, err = JudgeStore(InFreezer, units.Celsius(2))
	require.NoError(t, err)
	for _, c := range j.Costs {
		require.Zero(t, c.Here)
	}
	require.Contains(t, j.Cautions, thawedStore)
	// Fish freezes below 0 °C: ASHRAE, table 3, 28 °F for every fish in it.
	for at, thaws := range map[units.Temperature]bool{units.Fahrenheit(28): false, units.Fahrenheit(28).Add(1): true, units.Celsius(-0.5): true} {
		j, err = JudgeStore(InFreezer, at)
		require.NoError(t, err)
		if thaws {
			require.Contains(t, j.Cautions, thawedStore)
		} else {
			require.NotContains(t, j.Cautions, thawedStore)
		}
	}
	j, err = JudgeStore(InFreezer, units.Fahrenheit(0))
	require.NoError(t, err)
	require.Empty(t, j.Costs)
	require.True(t, j.Lines[len(j.Lines)-1].Met)
	// 0 °F is a little warmer than the -18 °C that is quoted for lean fish.
	require.Equal(t, "lean fish", j.Lines[3].Limit.For)
	require.False(t, j.Lines[3].Met)
	require.Equal(t, 2*units.CelsiusDegrees/9, j.Lines[3].TooWarm)
}

func TestStoreEdges(t *testing.T) {
	met := func(storage Storage, at units.Temperature, line int) bool {
		j, err := JudgeStore(storage, at)
		require.NoError(t, err)
		return j.Lines[line].Met
	}
	for name, c := range map[string]struct {
		storage Storage
		at      units.Temperature
		line    int
		want    bool
	}{
		"below 36 means below":      {InRefrigerator, units.Fahrenheit(36), 0, false},
		"a quantum below 36":        {InRefrigerator, units.Fahrenheit(36).Add(-1), 0, true},
		"38 is still 38":            {InRefrigerator, units.Fahrenheit(38), 1, true},
		"a quantum above 38":        {InRefrigerator, units.Fahrenheit(38).Add(1), 1, false},
		"40 °F said as 4.4 °C":      {InRefrigerator, units.Celsius(4.4), 2, true},
		"a quantum above 40":        {InRefrigerator, units.Fahrenheit(40).Add(1), 2, false},
		"jars at 50":                {InCupboard, units.Fahrenheit(50), 0, true},
		"jars below 50":             {InCupboard, units.Fahrenheit(50).Add(-1), 0, false},
		"jars at 70":                {InCupboard, units.Celsius(21.1), 0, true},
		"jars above 70":             {InCupboard, units.Fahrenheit(70).Add(1), 0, false},
		"jars at 95 °F, or 35 °C":   {InCupboard, units.Celsius(35), 1, true},
		"a quantum above 95":        {InCupboard, units.Fahrenheit(95).Add(1), 1, false},
		"a freezer of -18 °C":       {InFreezer, units.Celsius(-18), 3, true},
		"the same for fatty fish":   {InFreezer, units.Celsius(-18), 1, false},
		"a freezer of -30 for long": {InFreezer, units.Celsius(-30), 0, true},
	} {
		require.Equal(t, c.want, met(c.storage, c.at, c.line), name)
	}
	for at, caution := range map[float64]any{36: hotShelf, -1: jarFrozen} {
		j, err := JudgeStore(InCupboard, units.Celsius(at))
		require.NoError(t, err)
		require.Contains(t, j.Cautions, caution)
	}
	j, err := JudgeStore(InRefrigerator, units.Fahrenheit(39))
	require.NoError(t, err)
	require.Contains(t, j.Cautions, vacuumAt38)
}

func TestStoreRefuses(t *testing.T) {
	for name, c := range map[string]struct {
		storage Storage
		at      units.Temperature
	}{
		"no storage": {0, units.Celsius(3)}, "unknown storage": {9, units.Celsius(3)}, "not measured": {InFreezer, units.Temperature{}},
		"a refrigerator in °F read as °C": {InRefrigerator, units.Celsius(40)}, "a refrigerator that freezes": {InRefrigerator, units.Celsius(-5.1)},
		"a freezer of 32 °C": {InFreezer, units.Celsius(32)}, "liquid air": {InFreezer, units.Celsius(-61)}, "an oven": {InCupboard, units.Celsius(61)},
	} {
		_, err := JudgeStore(c.storage, c.at)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}
