package brine

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// The doses that are in print: each gives its own salt, and the cautions that belong to it.
func TestPublishedDoses(t *testing.T) {
	printed.Table(t, "brine/published-doses.csv").Each(t, func(t *testing.T, r printed.Row) {
		parts, fish := r.Int("salt_parts"), r.Int("fish_parts")
		dose, err := units.RatioOf(units.Ratio(parts), units.Ratio(fish))
		require.NoError(t, err)
		c, err := DryCure(units.Mass(fish)*units.Gram, dose, Mix{Salt: 1})
		require.NoError(t, err)
		require.InDelta(t, parts*int64(units.Gram), int64(c.Salt), 24, "1e-12 of the fish")
		require.NotContains(t, c.Cautions, lowDose)
		require.NotContains(t, c.Cautions, untested)
		require.NotContains(t, c.Cautions, overThird)
		require.NotContains(t, c.Cautions, sugarNote)
		require.Equal(t, 4*parts >= fish, holds(c.Cautions, excess))
	})
}

func holds(all []cite.Caution, one cite.Caution) bool {
	for _, c := range all {
		if c == one {
			return true
		}
	}
	return false
}

func TestCureByHand(t *testing.T) {
	c, err := DryCure(1_250*units.Gram, 30*units.PerMille, Mix{Salt: 2, Sugar: 3})
	require.NoError(t, err)
	require.Equal(t, 37_500*units.Milligram, c.Salt)
	require.Equal(t, 56_250*units.Milligram, c.Sugar)
	require.Equal(t, 93_750*units.Milligram, c.Total)
	require.Equal(t, 1_250*units.Gram, c.Fillet)
	require.Equal(t, 30*units.PerMille, c.Ratio)

	same, err := DryCure(1_250*units.Gram, 30*units.PerMille, Mix{Salt: 20, Sugar: 30})
	require.NoError(t, err)
	require.Equal(t, c, same, "only the proportion of the parts counts")

	// A home cure by weight in circulation: 1/2 oz of salt and 2 oz of brown sugar to a pound, 31.25 g and 125 g per kg.
	mix, err := MixOf(units.Ounce/2, 2*units.Ounce)
	require.NoError(t, err)
	require.Equal(t, Mix{Salt: 1, Sugar: 4}, mix)
	c, err = DryCure(units.Kilogram, 31_250*units.PartsPerMillion, mix)
	require.NoError(t, err)
	require.Equal(t, 31_250*units.Milligram, c.Salt)
	require.Equal(t, 125*units.Gram, c.Sugar)
}

func TestCureCautions(t *testing.T) {
	for _, c := range []struct {
		salt  units.Ratio
		sugar int64
		want  []cite.Caution
	}{
		{30*units.PerMille - 1, 0, []cite.Caution{measureIt, keepCold, lowDose}},
		{30 * units.PerMille, 1, []cite.Caution{measureIt, keepCold, sugarNote}},
		{30*units.PerMille + 1, 0, []cite.Caution{measureIt, keepCold, untested}},
		{units.One/4 - 1, 0, []cite.Caution{measureIt, keepCold, untested}},
		{units.One / 4, 0, []cite.Caution{measureIt, keepCold, excess}},
		{units.One / 3, 0, []cite.Caution{measureIt, keepCold, excess}},
		{units.One/3 + 1, 1, []cite.Caution{measureIt, keepCold, excess, overThird, sugarNote}},
	} {
		cure, err := DryCure(units.Kilogram, c.salt, Mix{Salt: 1, Sugar: c.sugar})
		require.NoError(t, err)
		require.Equal(t, c.want, cure.Cautions, c.salt.String())
		for _, caution := range cure.Cautions {
			require.NoError(t, caution.Citation.Check(), caution.Text)
		}
	}
}

func TestCuresRefused(t *testing.T) {
	one := Mix{Salt: 1, Sugar: 1}
	for name, c := range map[string]struct {
		fillet units.Mass
		salt   units.Ratio
		mix    Mix
		want   string
	}{
		"no fish":                {0, units.Percent, one, "fillet 0 g is out of range: expected 1 g to 100 kg"},
		"negative fish":          {-units.Gram, units.Percent, one, "fillet -1 g is out of range: expected 1 g to 100 kg"},
		"grams typed as kilos":   {450 * units.Kilogram, units.Percent, one, "fillet 450 kg is out of range: expected 1 g to 100 kg"},
		"a quantum too heavy":    {100*units.Kilogram + 1, units.Percent, one, ""},
		"no salt":                {units.Kilogram, 0, one, "salt to fish 0 % is out of range: expected 0.01 % to 100 %"},
		"negative salt":          {units.Kilogram, -units.Percent, one, ""},
		"three to one":           {units.Kilogram, 3 * units.One, one, "salt to fish 300 % is out of range: expected 0.01 % to 100 %"},
		"a quantum over all":     {units.Kilogram, units.One + 1, one, ""},
		"only sugar":             {units.Kilogram, units.Percent, Mix{Sugar: 1}, "salt of the mix is not stated"},
		"a bare 450":             {450, units.Percent, one, "fillet 0.000000028125 g (was the unit left out?) is out of range: expected 1 g to 100 kg"},
		"a bare 3":               {units.Kilogram, 3, one, "salt to fish 0.0000000003 % (was the unit left out?) is out of range: expected 0.01 % to 100 %"},
		"a little under a gram":  {units.Gram - 1, units.Percent, one, ""},
		"a little salt":          {units.Kilogram, units.Percent/100 - 1, one, ""},
		"41 of sugar":            {units.Kilogram, units.Percent, Mix{Salt: 1, Sugar: 41}, "sugar 41 parts to 1 of salt is out of range: expected 0 to 20 parts to 1 of salt"},
		"82 of sugar to 2":       {units.Kilogram, units.Percent, Mix{Salt: 2, Sugar: 82}, "sugar 41 parts to 1 of salt is out of range: expected 0 to 20 parts to 1 of salt"},
		"83 of sugar to 2":       {units.Kilogram, units.Percent, Mix{Salt: 2, Sugar: 83}, "sugar 83 parts to 2 of salt is out of range: expected 0 to 20 parts to 1 of salt"},
		"negative parts":         {units.Kilogram, units.Percent, Mix{Salt: -1, Sugar: 1}, "salt of the mix -1 parts is out of range: expected at least 1 part"},
		"negative sugar":         {units.Kilogram, units.Percent, Mix{Salt: 1, Sugar: -1}, ""},
		"twenty-one to one":      {units.Kilogram, units.Percent, Mix{Salt: 1_000, Sugar: 20_001}, ""},
		"the emptiest of orders": {0, 0, Mix{}, ""},
	} {
		got, err := DryCure(c.fillet, c.salt, c.mix)
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Zero(t, got, name)
		if c.want != "" {
			require.EqualError(t, err, c.want, name)
		}
	}
	for _, mix := range []Mix{{Salt: 1}, {Salt: 1, Sugar: 20}, {Salt: 1 << 62, Sugar: 1<<63 - 1}} {
		_, err := DryCure(100*units.Kilogram, units.One, mix)
		require.NoError(t, err)
	}
}

// Salt and sugar are never lost or made, more fish never takes less salt, and two fillets cured apart take what
// they take together.
func FuzzDryCure(f *testing.F) {
	f.Add(int64(20*units.Kilogram), int64(7*units.Gram), int64(30*units.PerMille), int64(1), int64(3))
	f.Add(int64(units.Gram), int64(units.Gram), int64(units.Percent/100), int64(1), int64(0))
	f.Add(int64(1), int64(1), int64(1), int64(1), int64(0))
	f.Add(int64(50*units.Kilogram), int64(50*units.Kilogram), int64(units.One), int64(1), int64(20))
	f.Fuzz(func(t *testing.T, a, b, salt, parts, sugar int64) {
		mix := Mix{Salt: parts, Sugar: sugar}
		first, err1 := DryCure(units.Mass(a), units.Ratio(salt), mix)
		second, err2 := DryCure(units.Mass(b), units.Ratio(salt), mix)
		if err1 != nil || err2 != nil {
			return
		}
		for _, c := range []Cure{first, second} {
			require.Equal(t, c.Total, c.Salt+c.Sugar)
			require.GreaterOrEqual(t, c.Salt, units.Mass(0))
			require.LessOrEqual(t, c.Salt, c.Fillet)
			require.GreaterOrEqual(t, c.Sugar, units.Mass(0))
		}
		if a <= b {
			require.LessOrEqual(t, first.Salt, second.Salt)
			require.LessOrEqual(t, first.Sugar, second.Sugar)
		}
		both, err := DryCure(units.Mass(a+b), units.Ratio(salt), mix)
		if err == nil {
			require.InDelta(t, int64(both.Salt), int64(first.Salt+second.Salt), 1)
			require.InDelta(t, int64(both.Sugar), int64(first.Sugar+second.Sugar), 22, "a quantum of salt is 20 of sugar")
		}
	})
}

func BenchmarkDryCure(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := DryCure(1_250*units.Gram, 30*units.PerMille, Mix{Salt: 1, Sugar: 2}); err != nil {
			b.Fatal(err)
		}
	}
}
