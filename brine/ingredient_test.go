package brine

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// USDA SR28 weights and one writer's flakes: what the same cups come to by weight.
func TestMixesByVolume(t *testing.T) {
	printed.Table(t, "brine/volume-mixes.csv").Each(t, func(t *testing.T, r printed.Row) {
		perCup, err := units.Of(r.Decimal("salt_g_per_cup"), units.Gram)
		require.NoError(t, err)
		salt, err := WeighedSalt("salt of the row", units.Cup, perCup)
		require.NoError(t, err)
		sugar, err := FindIngredient(r.Text("sugar"))
		require.NoError(t, err)

		s, err := salt.MassOf(units.Volume(r.Int("salt_cups")) * units.Cup)
		require.NoError(t, err)
		b, err := sugar.MassOf(units.Volume(r.Int("sugar_cups")) * units.Cup)
		require.NoError(t, err)
		ratio, err := units.RatioOf(b, s)
		require.NoError(t, err)
		share, err := units.RatioOf(s, s+b)
		require.NoError(t, err)
		printed.Within(t, r, "sugar_to_salt", units.In(ratio, units.One, 6))
		printed.Within(t, r, "salt_share_pct", units.In(share, units.Percent, 6))
	})
}

func TestMassAndVolumeAreInverse(t *testing.T) {
	for _, w := range Weighings() {
		for _, v := range []units.Volume{0, 1, units.Teaspoon / 4, units.Cup, 3*units.Litre + 7} {
			m, err := w.MassOf(v)
			require.NoError(t, err)
			back, err := w.VolumeOf(m)
			require.NoError(t, err)
			require.InDelta(t, 0, int64(back-v), 1, "%s: %v", w.Name, v)
		}
		m, err := w.MassOf(w.Volume)
		require.NoError(t, err)
		require.Equal(t, w.Mass, m, "the printed measure gives the printed weight")
	}
}

func TestOwnWeighingSaysSo(t *testing.T) {
	own, err := WeighedSalt("coarse flake salt", units.Cup, 180*units.Gram)
	require.NoError(t, err)
	require.NoError(t, own.Citation.Check())
	require.Equal(t, cite.Practice, own.Citation.Basis)
	require.True(t, own.Citation.Unverified())
	require.Equal(t, Salt, own.Substance)
	honey, err := WeighedSugar("honey", units.Cup, 340*units.Gram)
	require.NoError(t, err)
	require.Equal(t, Sugar, honey.Substance)
}

func TestWeighingsRefused(t *testing.T) {
	for name, w := range map[string]struct {
		name   string
		volume units.Volume
		mass   units.Mass
	}{
		"no volume":              {"flakes", 0, 250 * units.Gram},
		"negative volume":        {"flakes", -units.Cup, 250 * units.Gram},
		"no mass":                {"flakes", units.Cup, 0},
		"negative mass":          {"flakes", units.Cup, -250 * units.Gram},
		"milligrams for grams":   {"flakes", units.Cup, 250 * units.Milligram},
		"kilograms for grams":    {"flakes", units.Cup, 250 * units.Kilogram},
		"millilitre for a litre": {"flakes", units.Millilitre, 1200 * units.Gram},
		"denser than solid salt": {"flakes", units.Litre, 2201 * units.Gram},
		"lighter than any flake": {"flakes", units.Litre, 199 * units.Gram},
		"past the range":         {"flakes", 1, 500 * units.Tonne},
	} {
		_, err := WeighedSalt(w.name, w.volume, w.mass)
		require.ErrorIs(t, err, units.ErrRange, name)
		_, err = WeighedSugar(w.name, w.volume, w.mass)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	for _, mass := range []units.Mass{200 * units.Gram, 2200 * units.Gram} {
		_, err := WeighedSalt("at the limit", units.Litre, mass)
		require.NoError(t, err)
	}
}

func TestIngredientRefusesWhatItCannotMeasure(t *testing.T) {
	salt, err := FindIngredient("table salt")
	require.NoError(t, err)
	_, err = salt.MassOf(-units.Millilitre)
	require.EqualError(t, err, "volume of table salt -1 mL is out of range: expected at least 0 mL")
	_, err = salt.VolumeOf(-units.Gram)
	require.EqualError(t, err, "mass of table salt -1 g is out of range: expected at least 0 g")
	_, err = salt.MassOf(units.Volume(1) << 62)
	require.ErrorIs(t, err, units.ErrRange)

	var refusal units.RangeError
	var noSubstance units.UnsetError
	var unknown units.UnknownError
	for name, broken := range map[string]struct {
		Ingredient
		as any
	}{
		"zero":              {Ingredient{}, &noSubstance},
		"without substance": {Ingredient{Name: "x", Volume: units.Cup, Mass: 250 * units.Gram}, &noSubstance},
		"no such substance": {Ingredient{Name: "x", Substance: 9, Volume: units.Cup, Mass: 250 * units.Gram}, &unknown},
		"without volume":    {Ingredient{Name: "x", Substance: Salt, Mass: 250 * units.Gram}, &refusal},
		"without mass":      {Ingredient{Name: "x", Substance: Salt, Volume: units.Cup}, &refusal},
		"absurd":            {Ingredient{Name: "x", Substance: Sugar, Volume: units.Cup, Mass: units.Kilogram}, &refusal},
	} {
		_, err := broken.Density()
		require.ErrorAs(t, err, broken.as, name)
		_, err = broken.MassOf(units.Cup)
		require.ErrorAs(t, err, broken.as, name)
		_, err = broken.VolumeOf(units.Gram)
		require.ErrorAs(t, err, broken.as, name)
	}
	_, err = Ingredient{Name: "x"}.MassOf(1)
	require.EqualError(t, err, "substance is not stated")
}

func TestSubstanceText(t *testing.T) {
	require.Equal(t, []string{"not stated", "salt", "sugar", "substance(3)"},
		[]string{Substance(0).String(), Salt.String(), Sugar.String(), Substance(3).String()})
}
