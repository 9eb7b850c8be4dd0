package yield

import (
	"errors"
	"math"
	"testing"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

// Source: the weight table of the composition data.
func TestPortionWeights(t *testing.T) {
	count := map[int]int{}
	rows := printed.Table(t, "yield/portion-weights.csv")
	rows.Each(t, func(t *testing.T, r printed.Row) {
		number := int(r.Int("ndb_no"))
		all := PortionWeights(number)
		require.Greater(t, len(all), count[number])
		w := all[count[number]]
		count[number]++
		require.NoError(t, w.Citation.Check())
		require.Equal(t, []string{r.Text("portion"), r.Text("source"), r.Text("basis")}, []string{w.Portion, w.Citation.Source.Key(), w.Citation.Basis.String()})
		require.True(t, units.In(w.Mean, units.Gram, 9).Equal(r.Decimal("weight_g")))
		require.Equal(t, r.Has("n"), w.Samples > 0)
		if w.Samples > 0 {
			require.Equal(t, int(r.Int("n")), w.Samples)
			require.True(t, units.In(w.Deviation, units.Gram, 9).Equal(r.Decimal("sd_g")))
		}
	})
	require.Len(t, portionWeightTable, len(rows))
	require.Nil(t, PortionWeights(15999))
}

// Sockeye cans, 417 g with 337 g of drained solids: rows 15253, 15087 and 15264.
func TestLiquidOfSockeyeCans(t *testing.T) {
	printed.Table(t, "yield/liquid-split.csv").Each(t, func(t *testing.T, r printed.Row) {
		can, solids := PortionWeights(15253)[0].Mean, PortionWeights(15087)[0].Mean
		whole, err := FindComposition(15253, cite.USDASR26)
		require.NoError(t, err)
		drained, err := FindComposition(15087, cite.USDASR26)
		require.NoError(t, err)
		l, err := SplitLiquid(whole, drained, can, solids)
		require.NoError(t, err)
		require.Empty(t, l.Cautions)
		within := func(col string, share, unit units.Ratio) {
			t.Helper()
			printed.Within(t, r, col, units.In(share, unit, 9))
		}
		within("drained_over_total", l.Drained, units.One)
		within("free_liquid_pct", units.One-l.Drained, units.Percent)
		within("liquid_water_g_100g", l.Proximate.Water, units.Percent)
		within("liquid_protein_g_100g", l.Proximate.Protein, units.Percent)
		within("liquid_fat_g_100g", l.Proximate.Fat, units.Percent)
		within("liquid_ash_g_100g", l.Proximate.Ash, units.Percent)
		within("proximate_sum_g_100g", units.One-l.Proximate.Residual(), units.Percent)
		within("liquid_sodium_mg_100g", l.Sodium.Value, units.Percent/1000)
		within("liquid_epa_g_100g", l.EPA.Value, units.Percent)
		within("liquid_dha_g_100g", l.DHA.Value, units.Percent)
		within("epa_dha_loss_pct", l.Lost.Omega3.Value, units.Percent)
		within("sodium_loss_pct", l.Lost.Sodium.Value, units.Percent)
		within("protein_loss_pct", l.Lost.Protein, units.Percent)
		skinless, err := units.RatioOf(PortionWeights(15264)[0].Mean, can)
		require.NoError(t, err)
		within("skinless_boneless_over_total", skinless, units.One)
		for col, p := range map[string]struct {
			row  Composition
			mass units.Mass
		}{"can_epa_dha_g": {whole, can}, "drained_epa_dha_g": {drained, solids}} {
			portion, err := p.row.Portion(p.mass)
			require.NoError(t, err)
			printed.Within(t, r, col, units.In(portion.EPA.Value+portion.DHA.Value, units.Gram, 9))
		}
	})
}

// Without skin and bone the protein of the solids is more than that of the can: the liquid comes out below nothing.
func TestLiquidBelowNothingIsSaid(t *testing.T) {
	whole := Composition{Proximate: Proximate{Water: 70 * units.Percent, Protein: 10 * units.Percent}, EPA: units.State(units.PerMille)}
	drained := Composition{Proximate: Proximate{Water: 60 * units.Percent, Protein: 30 * units.Percent}, EPA: units.State(units.Percent)}
	l, err := SplitLiquid(whole, drained, 400*units.Gram, 300*units.Gram)
	require.NoError(t, err)
	require.Zero(t, l.Proximate.Protein)
	require.Zero(t, l.Lost.Protein)
	require.Len(t, l.Cautions, 1)
	require.Contains(t, l.Cautions[0].Text, "protein, EPA")
	require.False(t, l.Sodium.Given || l.DHA.Given || l.Lost.Omega3.Given || l.Lost.Sodium.Given)
}

// What is wrong with a row is wrong with the liquid worked out from it: no samples known, EPA and DHA of two.
func TestLiquidKeepsTheCautionsOfItsRows(t *testing.T) {
	whole, err := FindComposition(15181, cite.USDASR26)
	require.NoError(t, err)
	drained, err := FindComposition(15182, cite.USDASR26)
	require.NoError(t, err)
	l, err := SplitLiquid(whole, drained, 454*units.Gram, 369*units.Gram)
	require.NoError(t, err)
	require.NotEmpty(t, whole.Cautions)
	require.NotEmpty(t, drained.Cautions)
	require.Subset(t, l.Cautions, whole.Cautions)
	require.Subset(t, l.Cautions, drained.Cautions)
}

func TestSplitLiquidRefuses(t *testing.T) {
	c, err := FindComposition(15253, cite.USDASR26)
	require.NoError(t, err)
	wet := c
	wet.Proximate.Water = units.One
	dry := c
	dry.Proximate.Water = 0
	bad := c
	bad.Sodium = units.State(units.Ratio(-1))
	for name, f := range map[string]func() (Liquid, error){
		"nothing drained off":  func() (Liquid, error) { return SplitLiquid(c, c, 400*units.Gram, 400*units.Gram) },
		"more solids than can": func() (Liquid, error) { return SplitLiquid(c, c, 400*units.Gram, 500*units.Gram) },
		"no solids":            func() (Liquid, error) { return SplitLiquid(c, c, 400*units.Gram, 0) },
		"no can":               func() (Liquid, error) { return SplitLiquid(c, c, 0, 0) },
		"negative":             func() (Liquid, error) { return SplitLiquid(c, c, -1, -2) },
		"more than all water":  func() (Liquid, error) { return SplitLiquid(wet, dry, 400*units.Gram, 300*units.Gram) },
		"negative sodium":      func() (Liquid, error) { return SplitLiquid(bad, c, 400*units.Gram, 300*units.Gram) },
		"negative in solids":   func() (Liquid, error) { return SplitLiquid(c, bad, 400*units.Gram, 300*units.Gram) },
	} {
		_, err := f()
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}

func TestServings(t *testing.T) {
	printed.Table(t, "yield/servings.csv").Each(t, func(t *testing.T, r printed.Row) {
		pack, err := units.Of(r.Decimal("pack_g"), units.Gram)
		require.NoError(t, err)
		serving, err := units.Of(r.Decimal("serving_oz"), units.Ounce)
		require.NoError(t, err)
		for drained, servings := range map[string]string{"drained_low_percent": "servings_low", "drained_high_percent": "servings_high"} {
			share, err := units.Of(r.Decimal(drained), units.Percent)
			require.NoError(t, err)
			j, err := Servings(pack, share, serving)
			require.NoError(t, err)
			require.Equal(t, pack, j.Drained+j.Liquid)
			printed.Within(t, r, servings, units.In(j.Servings, units.One, 12))
		}
	})
}

func TestServingsRefuse(t *testing.T) {
	for name, c := range map[string]struct {
		pack    units.Mass
		drained units.Ratio
		serving units.Mass
	}{
		"negative pack": {-1, units.One, units.Ounce}, "negative share": {units.Pound, -1, units.Ounce}, "more than all": {units.Pound, units.One + 1, units.Ounce},
		"no serving": {units.Pound, units.One, 0}, "negative serving": {units.Pound, units.One, -units.Ounce}, "too many": {math.MaxInt64, units.One, units.Gram},
	} {
		_, err := Servings(c.pack, c.drained, c.serving)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	j, err := Servings(2*units.Gram, units.One, 3*units.Gram)
	require.NoError(t, err)
	require.Equal(t, units.Ratio(666_666_666_666), j.Servings, "rounded down")
}

func TestPortions(t *testing.T) {
	for _, c := range Compositions() {
		p, err := c.Portion(100 * units.Gram)
		require.NoError(t, err)
		require.Equal(t, c.Energy, p.Energy)
		require.Equal(t, []bool{c.Sodium.Given, c.EPA.Given, c.DHA.Given}, []bool{p.Sodium.Given, p.EPA.Given, p.DHA.Given})
		require.Equal(t, []int{c.Samples, c.OmegaSamples}, []int{p.Samples, p.OmegaSamples})
		require.GreaterOrEqual(t, len(p.Cautions), len(c.Cautions))
		require.True(t, units.In(p.Protein, units.Gram, 9).Equal(units.In(c.Proximate.Protein, units.Percent, 9)), c.Name)
	}
	// 20 % protein and 5 % fat are 130.5 kcal by the fish factors: 0.51 from it they still fit, a quantum further not.
	fits := Composition{Proximate: Proximate{Protein: 20 * units.Percent, Fat: 5 * units.Percent}, Energy: (13050 - 51) * units.Kilocalorie / 100}
	require.Equal(t, FishFactors, fits.Factors())
	fits.Energy--
	require.Zero(t, fits.Factors())
	c := Compositions()[0]
	for _, mass := range []units.Mass{-1, units.Tonne + 1, math.MinInt64} {
		_, err := c.Portion(mass)
		require.ErrorIs(t, err, units.ErrRange)
	}
	for _, f := range []func() (units.Energy, error){
		func() (units.Energy, error) { return EnergyFactors(0).Energy(1, 1) },
		func() (units.Energy, error) { return FishFactors.Energy(-1, 1) },
		func() (units.Energy, error) { return FishFactors.Energy(1, -1) },
		func() (units.Energy, error) { return GeneralFactors.Energy(math.MaxInt64, 1) },
	} {
		_, err := f()
		require.ErrorIs(t, err, units.ErrRange)
	}
	_, err := EnergyFactors(9).Energy(1, 1)
	require.ErrorIs(t, err, units.ErrUnknown)
}

// What a caller does with a row or a portion does not change the next one.
func TestRowsAreTheCallersOwn(t *testing.T) {
	before := Compositions()
	changed := Compositions()
	for i := range changed {
		changed[i].Energy = 0
		for j := range changed[i].Cautions {
			changed[i].Cautions[j].Text = ""
		}
	}
	PortionWeights(15253)[0].Mean = 0
	require.Empty(t, cmp.Diff(before, Compositions()))
	require.NotZero(t, PortionWeights(15253)[0].Mean)
}

func TestWeightAtLength(t *testing.T) {
	printed.Table(t, "yield/length-weight-checks.csv").Each(t, func(t *testing.T, r printed.Row) {
		species, err := ParseSpecies(r.Text("species"))
		require.NoError(t, err)
		w, err := WeightAtLength(species, units.Length(r.Int("length_mm"))*units.Millimetre)
		require.NoError(t, err)
		require.Len(t, w.Cautions, 2)
		printed.Within(t, r, "mass_kg", units.In(w.Mean, units.Kilogram, 12))
	})
	rows := printed.Table(t, "yield/length-weight.csv")
	require.Len(t, lengthWeightTable, len(rows))
	for i, r := range rows {
		l := lengthWeightTable[i]
		require.Equal(t, []any{r.Text("species"), r.Float("a_kg_per_mm_b"), r.Float("b"), r.Text("source"), r.Text("basis")},
			[]any{l.species.String(), l.a, l.b, oceanLengths.Source.Key(), oceanLengths.Basis.String()})
	}
	for _, length := range []units.Length{0, -units.Metre, 99 * units.Millimetre, 1501 * units.Millimetre, 700, math.MaxInt64} {
		_, err := WeightAtLength(Coho, length)
		require.ErrorIs(t, err, units.ErrRange)
	}
	for _, species := range []Species{0, Pink, Salmon, Steelhead, LakeTrout, 200} {
		_, err := WeightAtLength(species, units.Metre)
		var none NotPublishedError
		require.True(t, errors.As(err, &none))
		require.Equal(t, MissingLengthWeight, none.Missing)
		require.Contains(t, err.Error(), "chinook")
	}
}

func TestCutAcross(t *testing.T) {
	printed.Table(t, "yield/cut-pieces.csv").Each(t, func(t *testing.T, r printed.Row) {
		usable, err := units.Of(r.Decimal("usable_percent"), units.Percent)
		require.NoError(t, err)
		cut, err := units.Of(r.Decimal("cut_in"), units.Inch)
		require.NoError(t, err)
		c, err := CutAcross(units.Length(r.Int("fish_length_in"))*units.Inch, usable, cut)
		require.NoError(t, err)
		require.Equal(t, int(r.Int("pieces")), c.Pieces)
		require.Equal(t, c.Fish, units.Length(c.Pieces)*c.Cut+c.Offcut+c.Ends)
		require.Less(t, c.Offcut, c.Cut)
	})
	fish, share, cut := 28*units.Inch, 65*units.Percent, 7*units.Inch/2
	for name, f := range map[string]func() (Cuts, error){
		"no fish":         func() (Cuts, error) { return CutAcross(0, share, cut) },
		"negative fish":   func() (Cuts, error) { return CutAcross(-fish, share, cut) },
		"too long":        func() (Cuts, error) { return CutAcross(4*units.Metre, share, cut) },
		"negative share":  func() (Cuts, error) { return CutAcross(fish, -1, cut) },
		"more than all":   func() (Cuts, error) { return CutAcross(fish, units.One+1, cut) },
		"no cut":          func() (Cuts, error) { return CutAcross(fish, share, 0) },
		"negative cut":    func() (Cuts, error) { return CutAcross(fish, share, -cut) },
		"paper-thin cuts": func() (Cuts, error) { return CutAcross(fish, share, units.Millimetre) },
	} {
		_, err := f()
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}
