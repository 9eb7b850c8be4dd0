package yield

import (
	"errors"
	"math"
	"strconv"
	"testing"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

func release(t *testing.T, r printed.Row) cite.Source {
	t.Helper()
	source, err := cite.ParseSource(r.Text("source"))
	require.NoError(t, err)
	return source
}

func listed(t *testing.T, r printed.Row) Composition {
	t.Helper()
	c, err := FindComposition(int(r.Int("ndb_no")), release(t, r))
	require.NoError(t, err)
	return c
}

// Source: the composition data of the USDA, releases 26 and 28.
func TestEveryCompositionComesOut(t *testing.T) {
	rows := printed.Table(t, "yield/composition.csv")
	all := Compositions()
	require.Len(t, all, len(rows))
	seen := map[string]bool{}
	for i, r := range rows {
		c := listed(t, r)
		require.Empty(t, cmp.Diff(all[i], c), r.String())
		seen[c.Citation.String()] = true
		require.NoError(t, c.Citation.Check())
		require.Equal(t, r.Text("food"), c.Name)
		require.Equal(t, r.Text("basis"), c.Citation.Basis.String())
		for col, share := range map[string]units.Ratio{"water_g": c.Proximate.Water, "protein_g": c.Proximate.Protein, "fat_g": c.Proximate.Fat, "ash_g": c.Proximate.Ash} {
			require.True(t, units.In(share, units.Percent, 10).Equal(r.Decimal(col)), "%s %s", r, col)
		}
		require.Equal(t, units.Energy(r.Int("energy_kcal"))*units.Kilocalorie, c.Energy, r.String())
		for col, f := range map[string]units.Stated[units.Ratio]{"sodium_mg": c.Sodium, "epa_g": c.EPA, "dha_g": c.DHA} {
			require.Equal(t, r.Has(col), f.Given, "%s %s", r, col)
			unit := units.Percent
			if col == "sodium_mg" {
				unit /= 1000
			}
			if f.Given {
				require.True(t, units.In(f.Value, unit, 10).Equal(r.Decimal(col)), "%s %s", r, col)
			}
		}
		for col, n := range map[string]int{"n_water": c.Samples, "n_epa": c.OmegaSamples} {
			want := 0
			if r.Has(col) {
				want = int(r.Int(col))
			}
			require.Equal(t, want, n, "%s %s", r, col)
		}
	}
	require.Len(t, seen, len(rows), "a number is twice in one release")
}

// The sums, and the energies that either set of factors gives, worked out apart from the library.
func TestCompositionsClose(t *testing.T) {
	rows := printed.Table(t, "yield/composition-checks.csv")
	require.Len(t, rows, len(Compositions()))
	words := map[EnergyFactors]string{FishFactors: "fish", GeneralFactors: "general", 0: "none"}
	rows.Each(t, func(t *testing.T, r printed.Row) {
		c := listed(t, r)
		require.True(t, units.In(units.One-c.Proximate.Residual(), units.Percent, 10).Equal(r.Decimal("sum_g")))
		protein, err := c.Proximate.Protein.Of(100 * units.Gram)
		require.NoError(t, err)
		fat, err := c.Proximate.Fat.Of(100 * units.Gram)
		require.NoError(t, err)
		for set, col := range map[EnergyFactors]string{FishFactors: "energy_fish_factors_kcal", GeneralFactors: "energy_general_factors_kcal"} {
			energy, err := set.Energy(protein, fat)
			require.NoError(t, err)
			printed.Within(t, r, col, units.In(energy, units.Kilocalorie, 8))
		}
		require.Equal(t, r.Text("factors"), words[c.Factors()])
	})
}

// A normalised piece weighs what was asked, to the quantum, and its solids stand to each other as printed.
func TestNormalisedPiecesAddUp(t *testing.T) {
	refused := map[int]bool{}
	for _, c := range Compositions() {
		for _, mass := range []units.Mass{0, 1, 7, units.Gram, 1234567890123, 100 * units.Tonne} {
			m, err := c.Makeup(mass)
			if err != nil {
				refused[c.Number] = true
				continue
			}
			require.Equal(t, mass, of(t, m), c.Name)
			require.GreaterOrEqual(t, m.Ash, units.Mass(0))
			protein, err := units.Prorate(m.Fat, c.Proximate.Protein, c.Proximate.Fat)
			require.NoError(t, err)
			require.InDelta(t, float64(m.Protein), float64(protein), 1+float64(c.Proximate.Protein)/float64(c.Proximate.Fat)+float64(mass)/1e15)
		}
	}
	// Lox has more sodium as salt than ash; two rows have no sodium.
	require.Equal(t, map[int]bool{15179: true, 35065: true, 35066: true}, refused)
}

func TestFindCompositionRefuses(t *testing.T) {
	for name, c := range map[string]struct {
		number  int
		release cite.Source
		listed  int
	}{
		"no number":                     {0, cite.USDASR26, 0},
		"no release":                    {15085, 0, 2},
		"lake trout is not in the data": {15999, cite.USDASR26, 0},
		"the later release was not all": {15081, cite.USDASR28, 1},
		"another document":              {15081, cite.FAOCWPHandbook, 1},
		"negative":                      {-15081, cite.USDASR26, 0},
	} {
		_, err := FindComposition(c.number, c.release)
		var none CompositionError
		require.True(t, errors.As(err, &none), name)
		require.Len(t, none.Releases, c.listed, name)
		require.Contains(t, err.Error(), strconv.Itoa(c.number), name)
	}
	kippered, err := FindComposition(35065, cite.USDASR26)
	require.NoError(t, err)
	_, err = kippered.Makeup(units.Kilogram)
	require.ErrorContains(t, err, "no sodium")
	lox, err := FindComposition(15179, cite.USDASR26)
	require.NoError(t, err)
	_, err = lox.Makeup(units.Kilogram)
	require.ErrorIs(t, err, units.ErrRange)
}

func TestProximateRefuses(t *testing.T) {
	good := Proximate{Water: 72 * units.Percent, Protein: 21 * units.Percent, Fat: 6 * units.Percent, Ash: units.Percent}
	change := func(by func(*Proximate)) Proximate { p := good; by(&p); return p }
	for name, p := range map[string]Proximate{
		"nothing stated":      {},
		"negative water":      change(func(p *Proximate) { p.Water = -1 }),
		"negative ash":        change(func(p *Proximate) { p.Ash = -1 }),
		"a percentage as 1":   change(func(p *Proximate) { p.Fat = 6 * units.One }),
		"fat forgotten twice": change(func(p *Proximate) { p.Fat, p.Protein = 0, 10*units.Percent }),
		"more than all":       change(func(p *Proximate) { p.Water = 83 * units.Percent }),
		"past all sense":      change(func(p *Proximate) { p.Protein = math.MaxInt64 }),
	} {
		_, err := p.Makeup(units.Kilogram, 0)
		require.ErrorIs(t, err, units.ErrRange, name)
		_, err = TieSubstance(p, good)
		require.ErrorIs(t, err, units.ErrRange, name)
		_, err = TieSubstance(good, p)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	for name, sodium := range map[string]units.Ratio{"negative": -1, "more than the ash": units.Percent / 2, "all": units.One, "largest": math.MaxInt64} {
		_, err := good.Makeup(units.Kilogram, sodium)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	_, err := good.Makeup(-1, 0)
	require.ErrorIs(t, err, units.ErrRange)
	for name, p := range map[string]Proximate{
		"no fat":     change(func(p *Proximate) { p.Fat = 0 }),
		"no protein": change(func(p *Proximate) { p.Protein, p.Water = 0, 93*units.Percent }),
		"all water":  {Water: units.One - 1, Protein: 1, Fat: 1},
	} {
		_, err := TieSubstance(good, p)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}

// Chinook raw to kippered with skin, rows 35153 and 35168.
func TestTieSubstance(t *testing.T) {
	printed.Table(t, "yield/tie-substance.csv").Each(t, func(t *testing.T, r printed.Row) {
		raw, err := FindComposition(35153, cite.USDASR26)
		require.NoError(t, err)
		kippered, err := FindComposition(35168, cite.USDASR26)
		require.NoError(t, err)
		require.True(t, units.In(raw.Proximate.Water, units.Percent, 9).Equal(r.Decimal("water_raw_g_100g")))
		require.True(t, units.In(kippered.Proximate.Water, units.Percent, 9).Equal(r.Decimal("water_product_g_100g")))
		y, err := TieSubstance(raw.Proximate, kippered.Proximate)
		require.NoError(t, err)
		printed.Within(t, r, "protein_tie_yield", units.In(y.Protein, units.One, 12))
		printed.Within(t, r, "dry_matter_yield", units.In(y.DryMatter, units.One, 12))
		printed.Within(t, r, "fat_yield", units.In(y.Fat, units.One, 12))
		printed.Within(t, r, "weight_loss_by_protein_pct", units.In(units.One-y.Protein, units.Percent, 10))
		require.Empty(t, y.Cautions, "they agree within 5 %")
	})
}

// Rows of different lots disagree: chinook raw (15078) against chinook smoked (15077).
func TestTieSubstanceWarns(t *testing.T) {
	raw, err := FindComposition(15078, cite.USDASR26)
	require.NoError(t, err)
	smoked, err := FindComposition(15077, cite.USDASR26)
	require.NoError(t, err)
	y, err := TieSubstance(raw.Proximate, smoked.Proximate)
	require.NoError(t, err)
	require.Len(t, y.Cautions, 2)
	require.Contains(t, y.Cautions[1].Text, "grew heavier")
	require.Greater(t, y.Difference, units.One)

	// A piece that took up a tenth of its weight in water holds less of everything: the yield is 110 % by all three.
	plump := Proximate{Water: 70 * units.Percent, Protein: 20 * units.Percent, Fat: 8 * units.Percent, Ash: 2 * units.Percent}
	y, err = TieSubstance(Proximate{Water: 67 * units.Percent, Protein: 22 * units.Percent, Fat: 88 * units.PerMille, Ash: 22 * units.PerMille}, plump)
	require.NoError(t, err)
	require.Equal(t, []units.Ratio{110 * units.Percent, 110 * units.Percent, 110 * units.Percent}, []units.Ratio{y.Protein, y.DryMatter, y.Fat})
	require.Len(t, y.Cautions, 1)
	require.Contains(t, y.Cautions[0].Text, "grew heavier")

	// At 5 % the estimates still agree, one step above they do not.
	product := Proximate{Water: 60 * units.Percent, Protein: 25 * units.Percent, Fat: 10 * units.Percent, Ash: 5 * units.Percent}
	before := Proximate{Water: 64 * units.Percent, Protein: 225 * units.PerMille, Fat: 945 * units.PerMille / 10, Ash: 5 * units.Percent}
	y, err = TieSubstance(before, product) // 0.9, 0.9, 0.945
	require.NoError(t, err)
	require.Equal(t, 5*units.Percent, y.Difference)
	require.Empty(t, y.Cautions)
	before.Fat++
	y, err = TieSubstance(before, product)
	require.NoError(t, err)
	require.Len(t, y.Cautions, 1)
}

// What nothing but a loss of water leaves has the true yield by all three tie substances.
func TestTieSubstancesAgreeOnWaterAlone(t *testing.T) {
	raw := Proximate{Water: 70 * units.Percent, Protein: 20 * units.Percent, Fat: 8 * units.Percent, Ash: 2 * units.Percent}
	dried := Proximate{Water: 62_500_000_000 * 10, Protein: 25 * units.Percent, Fat: 10 * units.Percent, Ash: 25 * units.PerMille}
	y, err := TieSubstance(raw, dried)
	require.NoError(t, err)
	require.Equal(t, []units.Ratio{80 * units.Percent, 80 * units.Percent, 80 * units.Percent, 0}, []units.Ratio{y.Protein, y.DryMatter, y.Fat, y.Difference})
}

// The cooked rows said to be calculated are raw rows in another concentration, and the measured ones are not.
func TestCalculatedRows(t *testing.T) {
	measured := [...]struct{ cooked, raw int }{{15247, 15081}, {15116, 15115}, {15210, 15078}, {15237, 15236}, {15239, 15238}, {15273, 15272}}
	difference := func(cooked, raw int) units.Ratio {
		a, err := FindComposition(raw, cite.USDASR26)
		require.NoError(t, err)
		b, err := FindComposition(cooked, cite.USDASR26)
		require.NoError(t, err)
		y, err := TieSubstance(a.Proximate, b.Proximate)
		require.NoError(t, err)
		return y.Difference
	}
	for _, c := range calculated {
		require.Less(t, difference(c.cooked, c.raw), 4*units.PerMille, "%d", c.cooked) // what the rounding of lean rows makes
		row, err := FindComposition(c.cooked, cite.USDASR26)
		require.NoError(t, err)
		require.Contains(t, row.Cautions[0].Citation.Where, strconv.Itoa(c.raw))
		require.Zero(t, row.Samples)
		require.Equal(t, cite.USDASR26, row.Cautions[0].Citation.Source)
	}
	// The later release has the sockeye pair anew, again in one ratio: 22.25/26.48, 4.69/5.57 and 27.46/32.67.
	row, err := FindComposition(15086, cite.USDASR28)
	require.NoError(t, err)
	require.Equal(t, cite.USDASR28, row.Cautions[0].Citation.Source)
	for _, c := range measured {
		require.Greater(t, difference(c.cooked, c.raw), 5*units.Percent, "%d", c.cooked)
	}
}

// Fewer than four samples earn a caution, four do not: rows of SR26 with three, and with four.
func TestFewSamples(t *testing.T) {
	for number, cautions := range map[int]int{15274: 2, 15238: 2, 15236: 0, 15085: 0} {
		row, err := FindComposition(number, cite.USDASR26)
		require.NoError(t, err)
		require.Len(t, row.Cautions, cautions, "%d", number)
	}
}
