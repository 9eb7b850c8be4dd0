package yield

import (
	"math"
	"math/big"
	"math/rand"
	"testing"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"github.com/stretchr/testify/require"
)

// rawCoho is 1 kg of the row of wild coho, raw (NDB 15081), normalised.
func rawCoho(t testing.TB) Makeup {
	t.Helper()
	row, err := FindComposition(15081, cite.USDASR26)
	require.NoError(t, err)
	m, err := row.Makeup(units.Kilogram)
	require.NoError(t, err)
	return m
}

func of(t testing.TB, m Makeup) units.Mass {
	t.Helper()
	total, err := m.Total()
	require.NoError(t, err)
	return total
}

func TestForwardMassBalance(t *testing.T) {
	printed.Table(t, "yield/mass-balance.csv").Each(t, func(t *testing.T, r printed.Row) {
		raw := rawCoho(t)
		salt, err := units.Of(r.Decimal("salt_gain_g_100g_raw"), 10*units.Gram)
		require.NoError(t, err)
		moisture, err := units.Of(r.Decimal("target_moisture_pct"), units.Percent)
		require.NoError(t, err)
		x, err := raw.ToMoisture(salt, moisture)
		require.NoError(t, err)
		final, err := raw.After(x)
		require.NoError(t, err)

		printed.Within(t, r, "yield_final_over_raw", units.In(of(t, final), units.Kilogram, 12))
		in100 := func(part units.Mass) units.Ratio {
			share, err := units.RatioOf(part, of(t, final))
			require.NoError(t, err)
			return share
		}
		printed.Within(t, r, "protein_g_100g", units.In(in100(final.Protein), units.Percent, 9))
		printed.Within(t, r, "fat_g_100g", units.In(in100(final.Fat), units.Percent, 9))
		printed.Within(t, r, "salt_g_100g", units.In(in100(final.Salt), units.Percent, 9))
		wps, err := final.WaterPhaseSalt()
		require.NoError(t, err)
		printed.Within(t, r, "wps_pct", units.In(wps, units.Percent, 9))

		// The same fish, told by its final mass.
		weighed, err := raw.ToWeight(salt, of(t, final))
		require.NoError(t, err)
		require.Equal(t, x, weighed)
	})
}

func TestInverseMassBalance(t *testing.T) {
	printed.Table(t, "yield/mass-balance-inverse.csv").Each(t, func(t *testing.T, r printed.Row) {
		raw := rawCoho(t)
		moisture, err := units.Of(r.Decimal("target_moisture_pct"), units.Percent)
		require.NoError(t, err)
		target, err := units.Of(r.Decimal("target_wps_pct"), units.Percent)
		require.NoError(t, err)
		x, err := raw.ToMoistureAndSalt(moisture, target)
		require.NoError(t, err)
		printed.Within(t, r, "salt_gain_g_100g_raw", units.In(x.Gained.Salt, 10*units.Gram, 9))
		final, err := raw.After(x)
		require.NoError(t, err)
		printed.Within(t, r, "yield_final_over_raw", units.In(of(t, final), units.Kilogram, 12))
		share, err := units.RatioOf(final.Salt, of(t, final))
		require.NoError(t, err)
		printed.Within(t, r, "final_salt_pct", units.In(share, units.Percent, 9))

		// Told forward from the salt that came out, the same water leaves, but for the rounding to the safe side.
		forward, err := raw.ToMoisture(x.Gained.Salt, moisture)
		require.NoError(t, err)
		require.InDelta(t, float64(x.Lost.Water), float64(forward.Lost.Water), 4)
	})
}

// The loss of water in four steps (LL-YIEL-04) leaves the product of what each keeps, and every component but water stays.
func TestStepsOfWaterMultiplyInAMakeup(t *testing.T) {
	r := printed.Table(t, "yield/step-losses.csv")[0]
	raw := rawCoho(t)
	piece := raw
	for _, col := range []string{"loss1_percent", "loss2_percent", "loss3_percent", "loss4_percent"} {
		loss, err := units.Of(r.Decimal(col), units.Percent)
		require.NoError(t, err)
		kept, err := AfterLoss(of(t, piece), loss)
		require.NoError(t, err)
		x, err := piece.ToWeight(0, kept)
		require.NoError(t, err)
		piece, err = piece.After(x)
		require.NoError(t, err)
	}
	printed.Within(t, r, "remaining", units.In(of(t, piece), units.Kilogram, 12))
	piece.Water = raw.Water
	require.Equal(t, raw, piece)
}

func TestTargetsAreMetOnTheSafeSide(t *testing.T) {
	random := rand.New(rand.NewSource(7))
	met := 0
	for i := 0; i < 3000; i++ {
		raw := someMakeup(random)
		moisture := units.Ratio(random.Int63n(int64(units.One-1))) + 1
		target := units.Ratio(random.Int63n(int64(20*units.Percent))) + 1
		x, err := raw.ToMoistureAndSalt(moisture, target)
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			continue
		}
		met++
		final, err := raw.After(x)
		require.NoError(t, err)
		// salt ≥ T·(salt + water) and water ≤ M·total, in whole numbers
		require.False(t, less(final.Salt, final.Salt+final.Water, target), "%v %v %v", raw, moisture, target)
		require.False(t, less(moistureOf(moisture, of(t, final)), final.Water, units.One), "%v %v %v", raw, moisture, target)
		wps, err := final.WaterPhaseSalt()
		require.NoError(t, err)
		require.GreaterOrEqual(t, wps, target)
		// Towards a moisture alone the water kept is the most that meets it.
		if dry, err := raw.ToMoisture(x.Gained.Salt, moisture); err == nil {
			dried, err := raw.After(dry)
			require.NoError(t, err)
			require.LessOrEqual(t, dried.Water, moistureOf(moisture, of(t, dried)))
			require.Greater(t, dried.Water+1, moistureOf(moisture, of(t, dried)+1))
		}
	}
	require.Greater(t, met, 100)
}

// less reports part < share·whole, exactly: the products are compared, and nothing is rounded.
func less(part, whole units.Mass, share units.Ratio) bool {
	return new(big.Int).Mul(big.NewInt(int64(part)), big.NewInt(int64(units.One))).
		Cmp(new(big.Int).Mul(big.NewInt(int64(whole)), big.NewInt(int64(share)))) < 0
}

func moistureOf(share units.Ratio, total units.Mass) units.Mass {
	floor, _ := units.ProrateDown(total, share, units.One)
	return floor
}

func someMakeup(random *rand.Rand) Makeup {
	part := func() units.Mass { return units.Mass(random.Int63n(int64(units.Kilogram))) }
	return Makeup{Water: 3 * part(), Salt: part() / 50, Protein: part(), Fat: part(), Ash: part() / 30}
}

// A chain of random exchanges loses nothing: the piece, with all that left it and without all that came in, is the
// raw piece, component by component, and backwards through the chain it is so again.
func TestChainsOfExchangesConserve(t *testing.T) {
	random := rand.New(rand.NewSource(11))
	for i := 0; i < 500; i++ {
		raw := someMakeup(random)
		piece, lost, gained := raw, Makeup{}, Makeup{}
		var chain []Exchange
		for step := 0; step < 12; step++ {
			x := Exchange{Lost: someShareOf(random, piece), Gained: Makeup{Salt: units.Mass(random.Int63n(1e9)), Water: units.Mass(random.Int63n(1e9))}}
			before := piece
			var err error
			piece, err = piece.After(x)
			require.NoError(t, err)
			back, err := piece.Before(x)
			require.NoError(t, err)
			require.Equal(t, before, back)
			lost, err = lost.Plus(x.Lost)
			require.NoError(t, err)
			gained, err = gained.Plus(x.Gained)
			require.NoError(t, err)
			chain = append(chain, x)
		}
		with, err := piece.Plus(lost)
		require.NoError(t, err)
		without, err := with.Less(gained)
		require.NoError(t, err)
		require.Equal(t, raw, without)
		require.Equal(t, of(t, raw), of(t, piece)+of(t, lost)-of(t, gained))
		for step := len(chain) - 1; step >= 0; step-- {
			piece, err = piece.Before(chain[step])
			require.NoError(t, err)
		}
		require.Equal(t, raw, piece)
	}
}

func someShareOf(random *rand.Rand, m Makeup) Makeup {
	some := func(mass units.Mass) units.Mass { return units.Mass(random.Int63n(int64(mass)/3 + 1)) }
	return Makeup{some(m.Water), some(m.Salt), some(m.Protein), some(m.Fat), some(m.Ash)}
}

func TestMakeupRefuses(t *testing.T) {
	good := Makeup{Water: 700, Salt: 1, Protein: 200, Fat: 80, Ash: 12}
	for name, bad := range map[string]Makeup{
		"negative water": {Water: -1}, "negative salt": {Salt: -1}, "negative protein": {Protein: -1}, "negative fat": {Fat: -1}, "negative ash": {Ash: -1},
		"most negative": {Fat: math.MinInt64}, "too much": {Water: math.MaxInt64, Fat: 1}, "far too much": {math.MaxInt64, math.MaxInt64, math.MaxInt64, math.MaxInt64, math.MaxInt64},
	} {
		refused := func(err error) { t.Helper(); require.ErrorIs(t, err, units.ErrRange, name) }
		_, err := bad.Total()
		refused(err)
		_, err = bad.Plus(good)
		refused(err)
		_, err = good.Plus(bad)
		refused(err)
		_, err = bad.Less(Makeup{})
		refused(err)
		_, err = good.Less(bad)
		refused(err)
		_, err = bad.Moisture()
		refused(err)
		_, err = bad.WaterPhaseSalt()
		refused(err)
		_, err = good.After(Exchange{Lost: bad})
		refused(err)
		_, err = good.Before(Exchange{Gained: bad})
		refused(err)
		_, err = bad.ToMoisture(0, units.Percent)
		refused(err)
		_, err = bad.ToWeight(0, 1)
		refused(err)
		_, err = bad.ToMoistureAndSalt(60*units.Percent, units.Percent)
		refused(err)
	}
	_, err := good.Less(Makeup{Salt: 2})
	require.ErrorContains(t, err, "salt")
	_, err = (Makeup{Water: math.MaxInt64}).Plus(good)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = Makeup{}.Moisture()
	require.ErrorIs(t, err, units.ErrRange)
	_, err = Makeup{Fat: 1}.WaterPhaseSalt()
	require.ErrorIs(t, err, units.ErrRange)
	require.NoError(t, Makeup{}.negative())
}

// A piece a quantum of water past 3.5 % has not reached it, one that is all salt has all of it.
func TestWaterPhaseSaltRoundsDown(t *testing.T) {
	for _, c := range []struct {
		piece Makeup
		want  units.Ratio
	}{
		{Makeup{Water: 9_650_000_000_000_001, Salt: 350_000_000_000_000}, 35*units.PerMille - 1},
		{Makeup{Water: 9_650_000_000_000_000, Salt: 350_000_000_000_000}, 35 * units.PerMille},
		{Makeup{Salt: 1}, units.One}, {Makeup{Water: 1}, 0},
	} {
		got, err := c.piece.WaterPhaseSalt()
		require.NoError(t, err)
		require.Equal(t, c.want, got)
	}
}

func TestTargetsAreRefused(t *testing.T) {
	raw := rawCoho(t)
	gram := units.Gram
	for name, f := range map[string]func() (Exchange, error){
		"moister than it is":          func() (Exchange, error) { return raw.ToMoisture(0, 72*units.Percent) },
		"negative moisture":           func() (Exchange, error) { return raw.ToMoisture(0, -1) },
		"all water":                   func() (Exchange, error) { return raw.ToMoisture(0, units.One) },
		"a percentage as 1":           func() (Exchange, error) { return raw.ToMoisture(0, 60*units.One) },
		"negative salt":               func() (Exchange, error) { return raw.ToMoisture(-gram, 60*units.Percent) },
		"heavier than it is":          func() (Exchange, error) { return raw.ToWeight(20*gram, 1021*gram) },
		"lighter than its solids":     func() (Exchange, error) { return raw.ToWeight(0, 280*gram) },
		"negative salt by weight":     func() (Exchange, error) { return raw.ToWeight(-gram, 900*gram) },
		"more salt than a mass holds": func() (Exchange, error) { return raw.ToWeight(math.MaxInt64, 900*gram) },
		"salted already":              func() (Exchange, error) { return raw.ToMoistureAndSalt(60*units.Percent, units.PerMille) },
		"no salt asked":               func() (Exchange, error) { return raw.ToMoistureAndSalt(60*units.Percent, 0) },
		"no moisture asked":           func() (Exchange, error) { return raw.ToMoistureAndSalt(0, 3*units.Percent) },
		"nothing but brine":           func() (Exchange, error) { return raw.ToMoistureAndSalt(60*units.Percent, 40*units.Percent) },
		"moister and saltier":         func() (Exchange, error) { return raw.ToMoistureAndSalt(75*units.Percent, 3*units.Percent) },
		"no fish at all":              func() (Exchange, error) { return Makeup{}.ToMoisture(0, 60*units.Percent) },
		"nothing but water":           func() (Exchange, error) { return Makeup{Water: units.Kilogram}.ToMoisture(0, 60*units.Percent) },
		"no fish to salt":             func() (Exchange, error) { return Makeup{}.ToMoistureAndSalt(60*units.Percent, 35*units.PerMille) },
		"nothing but water to salt": func() (Exchange, error) {
			return Makeup{Water: units.Kilogram}.ToMoistureAndSalt(60*units.Percent, 35*units.PerMille)
		},
		"nearly nothing but brine": func() (Exchange, error) { return raw.ToMoistureAndSalt(60*units.Percent, 40*units.Percent-1) },
	} {
		_, err := f()
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}

// FuzzExchange: whatever the masses, an exchange is refused or undone to the quantum, and nothing is made or lost.
func FuzzExchange(f *testing.F) {
	f.Add(int64(7e12), int64(2e10), int64(2e12), int64(2e11), int64(3e10), int64(6e11))
	f.Add(int64(math.MaxInt64), int64(1), int64(0), int64(-1), int64(5), int64(math.MinInt64))
	f.Fuzz(func(t *testing.T, water, salt, protein, fat, lost, gained int64) {
		m := Makeup{Water: units.Mass(water), Salt: units.Mass(salt), Protein: units.Mass(protein), Fat: units.Mass(fat)}
		x := Exchange{Lost: Makeup{Water: units.Mass(lost)}, Gained: Makeup{Salt: units.Mass(gained)}}
		after, err := m.After(x)
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		back, err := after.Before(x)
		if err == nil { // the piece and what it lost may be more together than a mass can hold
			require.Equal(t, m, back)
		}
		require.Equal(t, m.Water-after.Water, x.Lost.Water)
		require.Equal(t, after.Salt-m.Salt, x.Gained.Salt)
	})
}

func BenchmarkStep(b *testing.B) {
	raw := rawCoho(b)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		x, err := raw.ToMoisture(20*units.Gram, 60*units.Percent)
		if err != nil {
			b.Fatal(err)
		}
		if _, err = raw.After(x); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkInverse(b *testing.B) {
	raw := rawCoho(b)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := raw.ToMoistureAndSalt(60*units.Percent, 35*units.PerMille); err != nil {
			b.Fatal(err)
		}
	}
}
