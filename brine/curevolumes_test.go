package brine

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

func ingredient(t testing.TB, name string) Ingredient {
	t.Helper()
	i, err := FindIngredient(name)
	require.NoError(t, err)
	return i
}

func TestVolumesOfACure(t *testing.T) {
	cure, err := DryCure(units.Kilogram, 36*units.PerMille, Mix{Salt: 36, Sugar: 110})
	require.NoError(t, err)
	salt, sugar := ingredient(t, "table salt"), ingredient(t, "packed brown sugar")
	v, err := cure.Volumes(salt, sugar)
	require.NoError(t, err)
	require.Equal(t, 6*units.Teaspoon, v.Salt, "36 g at 6.0 g a teaspoon")
	require.Equal(t, units.Cup/2, v.Sugar, "110 g at 220 g a cup")
	require.Equal(t, salt, v.SaltAs)
	require.Equal(t, sugar, v.SugarAs)
	require.Equal(t, append(append([]cite.Caution{}, cure.Cautions...), weighIt), v.Cautions)

	flakes, err := WeighedSalt("flakes", units.Cup, 144*units.Gram)
	require.NoError(t, err)
	v, err = cure.Volumes(flakes, sugar)
	require.NoError(t, err)
	require.Equal(t, 12*units.Teaspoon, v.Salt, "half as dense, twice the spoons")
}

func TestVolumesWithoutSugar(t *testing.T) {
	cure, err := DryCure(units.Kilogram, 36*units.PerMille, Mix{Salt: 1})
	require.NoError(t, err)
	v, err := cure.Volumes(ingredient(t, "table salt"), Ingredient{})
	require.NoError(t, err)
	require.Zero(t, v.Sugar)
	require.Zero(t, v.SugarAs)
}

func TestVolumesRefused(t *testing.T) {
	cure, err := DryCure(units.Kilogram, 36*units.PerMille, Mix{Salt: 1, Sugar: 1})
	require.NoError(t, err)
	salt, sugar := ingredient(t, "table salt"), ingredient(t, "white sugar")
	_, err = cure.Volumes(sugar, salt)
	require.EqualError(t, err, `ingredient "white sugar" is sugar: expected salt`)
	for name, pair := range map[string][2]Ingredient{
		"two salts":  {salt, salt},
		"two sugars": {sugar, sugar},
		"no salt":    {{}, sugar},
		"no sugar":   {salt, {}},
	} {
		v, err := cure.Volumes(pair[0], pair[1])
		require.ErrorAs(t, err, &SubstanceError{}, name)
		require.Zero(t, v, name)
	}
	for name, pair := range map[string][2]Ingredient{
		"empty salt":       {{Name: "x", Substance: Salt}, sugar},
		"weightless sugar": {salt, {Name: "x", Substance: Sugar, Volume: units.Cup, Mass: 1}},
	} {
		v, err := cure.Volumes(pair[0], pair[1])
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Zero(t, v, name)
	}
	_, err = Cure{Salt: -1}.Volumes(salt, sugar)
	require.ErrorIs(t, err, units.ErrRange)
}

func BenchmarkVolumes(b *testing.B) {
	salt, sugar := ingredient(b, "table salt"), ingredient(b, "white sugar")
	cure, err := DryCure(units.Kilogram, 36*units.PerMille, Mix{Salt: 1, Sugar: 1})
	require.NoError(b, err)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := cure.Volumes(salt, sugar); err != nil {
			b.Fatal(err)
		}
	}
}
