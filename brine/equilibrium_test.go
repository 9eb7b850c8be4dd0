package brine

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

func TestEquilibriumCures(t *testing.T) {
	printed.Table(t, "brine/equilibrium-cure.csv").Each(t, func(t *testing.T, r printed.Row) {
		c := Curing{Raw: units.Kilogram, Water: grams(t, r, "water_g"), Salt: grams(t, r, "salt_g"), Drip: grams(t, r, "drip_g"), Drying: grams(t, r, "drying_g")}
		e, err := c.Equilibrium()
		require.NoError(t, err)
		printed.Within(t, r, "wps_equilibrium_pct", units.In(e.Cured, units.Percent, 10))
		printed.Within(t, r, "salt_kept_g", units.In(e.Kept, units.Gram, 10))
		printed.Within(t, r, "wps_final_pct", units.In(e.Final, units.Percent, 10))
		printed.Within(t, r, "mass_after_cure_g", units.In(e.CuredMass, units.Gram, 10))
		printed.Within(t, r, "final_mass_g", units.In(e.FinalMass, units.Gram, 10))
		require.Equal(t, c.Salt, e.Kept+e.InDrip+e.LeftOver)
		require.Zero(t, e.LeftOver)
	})
	printed.Table(t, "brine/salt-needed.csv").Each(t, func(t *testing.T, r printed.Row) {
		loss, err := units.RatioOf(grams(t, r, "water_lost_g"), units.Kilogram)
		require.NoError(t, err)
		salt, err := SaltBeforeLoss(share(t, r, "target_pct"), units.Kilogram, grams(t, r, "water_g"), loss)
		require.NoError(t, err)
		printed.Within(t, r, "salt_g", units.In(salt, units.Gram, 6))
	})
	printed.Table(t, "brine/water-and-saturation.csv").Each(t, func(t *testing.T, r printed.Row) {
		c, err := BuryCure(units.Kilogram, share1000(t, r, "water_g"), 0, Mix{Salt: 1})
		require.NoError(t, err)
		printed.Within(t, r, "salt_g", units.In(c.Salt, units.Gram, 6))
		e, err := Curing{Raw: units.Kilogram, Water: grams(t, r, "water_g"), Salt: units.Kilogram / 3}.Equilibrium()
		require.NoError(t, err)
		require.Equal(t, "76", units.In(e.LeftOver, units.Gram, 0).String(), "one part to three")
		printed.Within(t, r, "salt_pct", units.In(e.Cured, units.Percent, 10))
	})
}

func share1000(t testing.TB, r printed.Row, col string) units.Ratio {
	t.Helper()
	x, err := units.Of(r.Decimal(col), units.PerMille)
	require.NoError(t, err)
	return x
}

// Salt is conserved to the quantum; more salt and more drying never lower the water phase salt; the dose meets its target.
func FuzzEquilibrium(f *testing.F) {
	f.Add(int64(716*units.Gram), int64(30*units.Gram), int64(80*units.Gram), int64(100*units.Gram), int64(units.Gram))
	f.Add(int64(716*units.Gram), int64(30*units.Gram), int64(700*units.Gram), int64(0), int64(1))
	f.Add(int64(716*units.Gram), int64(30*units.Gram), int64(1), int64(0), int64(1))
	f.Add(int64(2), int64(0), int64(0), int64(1), int64(1))
	f.Fuzz(func(t *testing.T, water, salt, drip, drying, more int64) {
		c := Curing{Raw: units.Kilogram, Water: units.Mass(water), Salt: units.Mass(salt), Drip: units.Mass(drip), Drying: units.Mass(drying)}
		e, err := c.Equilibrium()
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		require.Equal(t, c.Salt, e.Kept+e.InDrip+e.LeftOver)
		require.Equal(t, c.Raw+c.Salt, e.FinalMass+c.Drying+c.Drip+e.InDrip+e.LeftOver, "nothing is lost or made")
		for _, part := range []units.Mass{e.Kept, e.InDrip, e.LeftOver} {
			require.GreaterOrEqual(t, part, units.Mass(0))
		}
		if more > 0 && more < int64(units.Kilogram) {
			saltier, drier := c, c
			saltier.Salt += units.Mass(more)
			drier.Drying += units.Mass(more)
			for _, other := range []Curing{saltier, drier} {
				if o, err := other.Equilibrium(); err == nil {
					require.GreaterOrEqual(t, o.Final, e.Final)
					require.GreaterOrEqual(t, o.Cured, e.Cured)
				}
			}
		}
		for _, target := range []units.Ratio{35 * units.PerMille, 26_395 * units.Percent / 1000} {
			dose, err := c.SaltToEnd(target)
			if err != nil {
				require.ErrorIs(t, err, units.ErrRange)
				require.Zero(t, dose)
				continue
			}
			c.Salt = dose
			back, err := c.Equilibrium()
			require.NoError(t, err)
			require.GreaterOrEqual(t, back.Final, target)
		}
	})
}

func TestCuringRefused(t *testing.T) {
	good := Curing{Raw: units.Kilogram, Water: 700 * units.Gram, Salt: 30 * units.Gram}
	for name, change := range map[string]func(*Curing){
		"no fish":        func(c *Curing) { c.Raw = 0 },
		"all water":      func(c *Curing) { c.Water = c.Raw },
		"no water":       func(c *Curing) { c.Water = 0 },
		"negative salt":  func(c *Curing) { c.Salt = -1 },
		"negative drip":  func(c *Curing) { c.Drip = -1 },
		"all drips":      func(c *Curing) { c.Drip = c.Water },
		"water returns":  func(c *Curing) { c.Drying = -1 },
		"dry as a bone":  func(c *Curing) { c.Drying = c.Water },
		"past saturated": func(c *Curing) { c.Drying = 650 * units.Gram },
	} {
		c := good
		change(&c)
		e, err := c.Equilibrium()
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Zero(t, e, name)
	}
	for _, c := range []struct {
		target       units.Ratio
		piece, water units.Mass
		loss         units.Ratio
	}{
		{0, 10, 5, 0}, {units.Percent, 0, 5, 0}, {units.Percent, 10, 0, 0}, {units.Percent, 10, 11, 0}, {units.Percent, 10, 5, -1},
		{units.Percent, 10, 5, units.One / 2}, {27 * units.Percent, 10, 5, 0},
	} {
		_, err := SaltBeforeLoss(c.target, c.piece, c.water, c.loss)
		require.ErrorIs(t, err, units.ErrRange)
	}
	_, err := good.SaltToEnd(0)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = Curing{Raw: 1, Water: 2}.SaltToEnd(units.Percent)
	require.ErrorIs(t, err, units.ErrRange)
}
