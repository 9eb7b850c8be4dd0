package keeping_test

import (
	"math"
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"example.org/lakelarder/yield/coldchain/keeping"
	"github.com/stretchr/testify/require"
)

func store(t *testing.T, readings ...series.Reading[units.Temperature]) series.Series[units.Temperature] {
	t.Helper()
	s, err := series.New(readings)
	require.NoError(t, err)
	return s
}

func reading(at time.Duration, celsius float64) series.Reading[units.Temperature] {
	return series.Reading[units.Temperature]{At: at, Value: units.Celsius(celsius)}
}

func lifeNamed(t *testing.T, name string) keeping.FrozenLife {
	t.Helper()
	for _, l := range keeping.FrozenLives() {
		if l.Name == name {
			return l
		}
	}
	t.Fatalf("no storage life %q", name)
	return keeping.FrozenLife{}
}

// Both ways; every printed life comes back from At to the nanosecond. Sources: see the rows, all from memory.
func TestStorageLives(t *testing.T) {
	points := 0
	for _, l := range keeping.FrozenLives() {
		points += len(l.Points)
	}
	rows := printed.Table(t, "coldchain/storage-life-frozen.csv")
	require.Len(t, rows, points)
	for _, r := range rows {
		l := lifeNamed(t, r.Text("product"))
		got, err := l.At(logged.Celsius(t, r, "at_c"))
		require.NoError(t, err)
		require.Equal(t, time.Duration(r.Int("months"))*chain.Month, got, r.String())
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(l.Citation))
		require.NoError(t, l.Citation.Check())
		found := false
		for _, p := range l.Points {
			if p.At == logged.Celsius(t, r, "at_c") {
				found = true
				require.Equal(t, r.Has("over"), p.Over, r.String())
			}
		}
		require.True(t, found, r.String())
	}
}

// Between two points the life is their geometric mean half way, and the record uses one share of it in that time.
func TestLogarithmBetweenPoints(t *testing.T) {
	l := lifeNamed(t, "lean fish (1986)")
	half, err := l.At(units.Celsius(-15))
	require.NoError(t, err)
	exact := math.Sqrt(4*9) * chain.Month.Hours()
	require.LessOrEqual(t, half.Hours(), exact)
	require.InDelta(t, exact, half.Hours(), 1, "rounded down to the hour")

	for _, at := range []float64{-12, -15, -18, -20.5, -24} {
		life, err := l.At(units.Celsius(at))
		require.NoError(t, err)
		u, err := l.Audit(store(t, reading(0, at), reading(life, at)), life)
		require.NoError(t, err)
		require.InDelta(t, 1, units.Float(u.Used, units.One), 1/life.Hours(), "the life is rounded down to the hour")
		require.Zero(t, u.TooWarm)
	}
}

// A ramp between two points: the integral has a closed form, the logarithmic mean of the two rates.
func TestRampInClosedForm(t *testing.T) {
	l := lifeNamed(t, "fatty fish (1972)")
	u, err := l.Audit(store(t, reading(0, -25), reading(chain.Month, -18)), chain.Year)
	require.NoError(t, err)
	r1, r2 := 1./8, 1./4 // shares a month
	require.InDelta(t, (r2-r1)/math.Log(r2/r1), units.Float(u.Used, units.One), 1e-9)
	require.Equal(t, verdict.Met, u.Verdict)
}

// A midpoint sum of a rate written down here agrees with the exact integral, over every point and both ends of the
// table.
func TestUseAgainstASum(t *testing.T) {
	for _, l := range keeping.FrozenLives() {
		cold, warm := l.Points[len(l.Points)-1], l.Points[0]
		from, to := cold.At.Celsius()-3, warm.At.Celsius()+2
		u, err := l.Audit(store(t, reading(0, from), reading(10*chain.Day, to), reading(20*chain.Day, from)), chain.Year)
		require.NoError(t, err)
		const steps = 50_000
		sum := 0.
		for i := 0; i < steps; i++ {
			at := from + (to-from)*(float64(i)+0.5)/steps
			at = math.Min(math.Max(at, cold.At.Celsius()), warm.At.Celsius())
			for p := len(l.Points) - 1; p > 0; p-- {
				a, b := l.Points[p], l.Points[p-1]
				if at <= b.At.Celsius() {
					part := (at - a.At.Celsius()) / (b.At.Celsius() - a.At.Celsius())
					sum += math.Pow(a.Life.Hours(), part-1) * math.Pow(b.Life.Hours(), -part)
					break
				}
			}
		}
		require.InEpsilon(t, sum/steps*(20*chain.Day).Hours(), units.Float(u.Used, units.One), 1e-7, l.Name)
		require.InDelta(t, 3/(to-from)*(20*chain.Day).Hours(), u.Colder.Hours(), 1e-6)
		require.InDelta(t, 2/(to-from)*(20*chain.Day).Hours(), u.TooWarm.Hours(), 1e-6)
		require.Equal(t, verdict.CannotTell, u.Verdict, "part of it is warmer than the table")
	}
}

// Warmer or longer never uses less and never turns the verdict better; a reading more on the line changes nothing.
func TestFrozenUseSafeDirection(t *testing.T) {
	l := lifeNamed(t, "fatty fish, glazed (1986)")
	times := []time.Duration{0, 9 * chain.Day, 30 * chain.Day, 31 * chain.Day, 80 * chain.Day}
	temperatures := []float64{-22, -18, -11.5, -17, -27}
	use := func(values []float64, maxGap time.Duration) keeping.FrozenReport {
		var all []series.Reading[units.Temperature]
		for i, v := range values {
			all = append(all, reading(times[i], v))
		}
		u, err := l.Audit(store(t, all...), maxGap)
		require.NoError(t, err)
		return u
	}
	base := use(temperatures, chain.Year)
	rank := map[verdict.Verdict]int{verdict.Met: 0, verdict.CannotTell: 1, verdict.NotMet: 2}
	for i := range temperatures {
		for _, warmer := range []float64{1e-6, 0.3, 2, 9, 40} {
			changed := append([]float64(nil), temperatures...)
			changed[i] += warmer
			u := use(changed, chain.Year)
			require.GreaterOrEqual(t, u.Used, base.Used)
			require.GreaterOrEqual(t, rank[u.Verdict], rank[base.Verdict])
		}
	}
	middle := -22 + (-18+22)*4./9
	split := store(t, reading(0, -22), reading(4*chain.Day, middle), reading(9*chain.Day, -18), reading(30*chain.Day, -11.5), reading(31*chain.Day, -17), reading(80*chain.Day, -27))
	u, err := l.Audit(split, chain.Year)
	require.NoError(t, err)
	require.InDelta(t, units.Float(base.Used, units.One), units.Float(u.Used, units.One), 1e-9)
	gapped := use(temperatures, 30*chain.Day)
	require.Equal(t, 49*chain.Day, gapped.Unknown)
	require.Less(t, gapped.Used, base.Used)
	require.Equal(t, verdict.CannotTell, gapped.Verdict)
}

func TestFrozenVerdicts(t *testing.T) {
	l := lifeNamed(t, "lean fish (1986)")
	for name, c := range map[string]struct {
		at   float64
		held time.Duration
		want verdict.Verdict
	}{
		"within":                     {-18, 9*chain.Month - chain.Day, verdict.Met},
		"exceeded":                   {-18, 9*chain.Month + chain.Day, verdict.NotMet},
		"exactly the warmest point":  {-12, chain.Month, verdict.Met},
		"a little warmer than that":  {-11.9, chain.Day, verdict.CannotTell},
		"warm for all of its life":   {-11, 4*chain.Month + chain.Day, verdict.NotMet},
		"colder than the table":      {-40, 11 * chain.Month, verdict.Met},
		"colder, and past its life":  {-40, 12*chain.Month + chain.Day, verdict.NotMet},
		"thawed for an afternoon":    {4, 4 * time.Hour, verdict.CannotTell},
		"between the coldest points": {-23, 9 * chain.Month, verdict.Met},
	} {
		u, err := l.Audit(store(t, reading(0, c.at), reading(c.held, c.at)), 2*chain.Year)
		require.NoError(t, err)
		require.Equal(t, c.want, u.Verdict, name)
		logged.Back(t, u)
		require.NotEmpty(t, u.Cautions)
	}
}

func TestFrozenRefuses(t *testing.T) {
	l := lifeNamed(t, "lean fish (1986)")
	ok := store(t, reading(0, -18), reading(chain.Day, -18))
	of := func(_ any, err error) error { return err }
	broken := func(change func(*keeping.FrozenLife)) keeping.FrozenLife {
		life := lifeNamed(t, "lean fish (1986)")
		change(&life)
		return life
	}
	for name, err := range map[string]error{
		"warmer than the table": of(l.At(units.Celsius(-11.999))),
		"not measured":          of(l.At(units.Temperature{})),
		"no table":              of(keeping.FrozenLife{}.At(units.Celsius(-18))),
		"no gap":                of(l.Audit(ok, 0)),
		"negative gap":          of(l.Audit(ok, -1)),
		"one reading":           of(l.Audit(store(t, reading(0, -18)), chain.Day)),
		"a loose probe":         of(l.Audit(store(t, reading(0, -18), reading(chain.Day, -127)), chain.Day)),
		"use of no table":       of(keeping.FrozenLife{}.Audit(ok, chain.Day)),
		"one point":             of(broken(func(s *keeping.FrozenLife) { s.Points = s.Points[:1] }).Audit(ok, chain.Day)),
		"upside down":           of(broken(func(s *keeping.FrozenLife) { s.Points[0], s.Points[2] = s.Points[2], s.Points[0] }).Audit(ok, chain.Day)),
		"shorter when colder":   of(broken(func(s *keeping.FrozenLife) { s.Points[2].Life = chain.Month }).Audit(ok, chain.Day)),
		"no life":               of(broken(func(s *keeping.FrozenLife) { s.Points[0].Life = 0 }).Audit(ok, chain.Day)),
		"a point not set":       of(broken(func(s *keeping.FrozenLife) { s.Points[1].At = units.Temperature{} }).Audit(ok, chain.Day)),
	} {
		logged.Refused(t, err, name)
	}
	_, err := l.Audit(series.Series[units.Temperature]{}, chain.Day)
	require.ErrorIs(t, err, series.ErrEmpty)
}
