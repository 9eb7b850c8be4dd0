package solution

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

// coefficient reads one coefficient of an equation.
func coefficient(t testing.TB, equation, name string) float64 {
	t.Helper()
	for _, r := range printed.Table(t, "brine/activity-coefficients.csv") {
		if r.Text("equation") == equation && r.Text("name") == name {
			return r.Float("value")
		}
	}
	require.Fail(t, "no coefficient", "%s of %s", name, equation)
	return 0
}

func TestCoefficients(t *testing.T) {
	require.Len(t, printed.Table(t, "brine/activity-coefficients.csv"), 15)
	for name, value := range map[string]float64{"A": hamerA, "B": hamerB, "beta": hamerBeta, "C": hamerC, "D": hamerD} {
		require.Equal(t, coefficient(t, "Hamer and Wu", name), value, name)
	}
	require.Equal(t, coefficient(t, "Norrish", "K"), norrishSucrose)
	require.InEpsilon(t, 1000/coefficient(t, "molar mass", "sucrose"), sucrosePerKilogram, 1e-12)
	require.InEpsilon(t, 1000/coefficient(t, "molar mass", "water"), waterPerKilogram, 1e-12)
	require.InEpsilon(t, coefficient(t, "molar mass", "water")/500, waterMolality, 1e-12)
	require.InEpsilon(t, 1000/coefficient(t, "molar mass", "salt"), molality(0.5), 1e-12)
}

// pitzer is another equation for the same thing, Pitzer and Mayorga 1973, as an oracle:
//
//	φ = 1 − A √m/(1 + b √m) + m (β0 + β1 exp(−α √m)) + C m²
func pitzer(t testing.TB) func(m float64) float64 {
	of := func(name string) float64 { return coefficient(t, "Pitzer and Mayorga", name) }
	a, b, alpha, beta0, beta1, c := of("Aphi"), of("b"), of("alpha"), of("beta0"), of("beta1"), of("Cphi")
	return func(m float64) float64 {
		root := math.Sqrt(m)
		return 1 - a*root/(1+b*root) + m*(beta0+beta1*math.Exp(-alpha*root)) + c*m*m
	}
}

func TestActivities(t *testing.T) {
	other := pitzer(t)
	printed.Table(t, "brine/activities.csv").Each(t, func(t *testing.T, r printed.Row) {
		m := r.Float("molality_mol_kg")
		printed.WithinFloat(t, r, "phi_hamer_wu", osmotic(m))
		printed.WithinFloat(t, r, "aw_hamer_wu", activity(m))
		printed.WithinFloat(t, r, "phi_pitzer", other(m))
		printed.WithinFloat(t, r, "aw_pitzer", math.Exp(-waterMolality*m*other(m)))
		for _, col := range []string{"aw_clegg", "aw_steiger", "aw_tang"} {
			printed.WithinFloat(t, r, col, activity(m))
		}
		x := m * 0.0584428 / (1 + m*0.0584428)
		printed.WithinFloat(t, r, "salt_pct", 100*x)
		at, err := units.OfFloat(x, units.One)
		require.NoError(t, err)
		aw, err := Activity(at)
		require.NoError(t, err)
		printed.Within(t, r, "aw_hamer_wu", units.In(aw, units.One, 12))
	})
	printed.Table(t, "brine/osmotic.csv").Each(t, func(t *testing.T, r printed.Row) {
		m := r.Float("molality_mol_kg")
		printed.WithinFloat(t, r, "phi", osmotic(m))
		printed.WithinFloat(t, r, "aw", activity(m))
	})
	printed.Table(t, "brine/activities-by-strength.csv").Each(t, func(t *testing.T, r printed.Row) {
		x := share(t, r, "wps_pct")
		m := molality(units.Float(x, units.One))
		printed.WithinFloat(t, r, "molality_mol_kg", m)
		aw, err := Activity(x)
		require.NoError(t, err)
		printed.Within(t, r, "aw_hamer_wu", units.In(aw, units.One, 12))
		printed.WithinFloat(t, r, "aw_pitzer", math.Exp(-waterMolality*m*other(m)))
		require.Less(t, r.Float("aw_salted_fish"), units.Float(aw, units.One)+0.0005, "flesh is never higher")
	})
}

func TestShareAt(t *testing.T) {
	printed.Table(t, "brine/equivalents.csv").Each(t, func(t *testing.T, r printed.Row) {
		wanted, err := units.Of(r.Decimal("least_activity"), units.One)
		require.NoError(t, err)
		x, err := ShareAt(wanted)
		require.NoError(t, err)
		printed.Within(t, r, "salt_pct", units.In(x, units.Percent, 10))
	})
	none, err := ShareAt(units.One)
	require.NoError(t, err)
	require.Zero(t, none)
	for _, aw := range []units.Ratio{0, -1, units.One + 1, 753 * units.PerMille} {
		_, err := ShareAt(aw)
		require.ErrorIs(t, err, units.ErrRange)
	}
}

// More salt is never a higher activity, the inverse meets it and a quantum less does not; the other equation is close everywhere.
func FuzzActivity(f *testing.F) {
	f.Add(int64(35*units.PerMille), int64(36*units.PerMille))
	f.Add(int64(0), int64(1))
	f.Add(int64(263_950_000_000), int64(263_949_999_999))
	other := pitzer(f)
	f.Fuzz(func(t *testing.T, a, b int64) {
		first, err1 := Activity(units.Ratio(a))
		second, err2 := Activity(units.Ratio(b))
		if err1 != nil || err2 != nil {
			return
		}
		if a <= b {
			require.GreaterOrEqual(t, first, second)
		}
		m := molality(float64(a) / 1e12)
		require.InDelta(t, math.Exp(-waterMolality*m*other(m)), units.Float(first, units.One), 0.0007)
		back, err := ShareAt(first)
		require.NoError(t, err)
		require.LessOrEqual(t, int64(back), a)
		got, err := Activity(back)
		require.NoError(t, err)
		require.LessOrEqual(t, got, first)
	})
}

func TestSugar(t *testing.T) {
	printed.Table(t, "brine/sugar-activities.csv").Each(t, func(t *testing.T, r printed.Row) {
		perWater, err := units.OfFloat(r.Float("sugar_mol_kg")/sucrosePerKilogram, units.One)
		require.NoError(t, err)
		aw, err := SugarActivity(perWater)
		require.NoError(t, err)
		printed.Within(t, r, "aw_norrish", units.In(aw, units.One, 12))
		printed.Within(t, r, "aw_table", units.In(aw, units.One, 12))
	})
	printed.Table(t, "brine/mixed-activities.csv").Each(t, func(t *testing.T, r printed.Row) {
		salt, sugar := grams(t, r, "salt_g"), grams(t, r, "sugar_g")
		aw, err := MixedActivity(salt, sugar, 100*units.Gram)
		require.NoError(t, err)
		printed.Within(t, r, "aw", units.In(aw, units.One, 12))
		x, err := units.RatioOf(salt, salt+100*units.Gram)
		require.NoError(t, err)
		printed.Within(t, r, "salt_pct", units.In(x, units.Percent, 10))
		of, err := Activity(x)
		require.NoError(t, err)
		printed.Within(t, r, "aw_salt", units.In(of, units.One, 12))
		of, err = SugarActivity(50 * units.PerMille)
		require.NoError(t, err)
		printed.Within(t, r, "aw_sugar", units.In(of, units.One, 12))
	})
	one, err := SugarActivity(0)
	require.NoError(t, err)
	require.Equal(t, units.One, one)
	for _, perWater := range []units.Ratio{-1, mostSugar + 1} {
		_, err := SugarActivity(perWater)
		require.ErrorIs(t, err, units.ErrRange)
	}
	for _, m := range [][3]units.Mass{{-1, 0, units.Gram}, {0, -1, units.Gram}, {0, 0, 0}, {0, 3 * units.Gram, units.Gram}, {units.Gram, 0, units.Gram}} {
		_, err := MixedActivity(m[0], m[1], m[2])
		require.ErrorIs(t, err, units.ErrRange)
	}
	before := units.One + 1
	for perWater := units.Ratio(0); perWater <= mostSugar; perWater += 13 * units.PerMille {
		aw, err := SugarActivity(perWater)
		require.NoError(t, err)
		require.Less(t, aw, before)
		before = aw
	}
}

func BenchmarkActivity(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := Activity(35 * units.PerMille); err != nil {
			b.Fatal(err)
		}
	}
}
