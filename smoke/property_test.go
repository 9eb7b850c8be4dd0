package smoke

import (
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

const step = 3 * time.Minute

var pnwLimit = coreLimits[Hot160PNW-1]

// drawn makes a record from bytes: a reading from 140 to 180 °F every few minutes, some left out.
func drawn(t testing.TB, bytes []byte) []reading {
	t.Helper()
	var readings []reading
	at := time.Duration(0)
	for i, b := range bytes {
		at += time.Duration(1+i*7%5) * step / 2
		if b < 230 { // the rest: the logger slept
			readings = append(readings, reading{At: at, Value: units.Fahrenheit(140 + 40*float64(b)/230)})
		}
	}
	return readings
}

func held(t testing.TB, probes ...[]reading) Hold {
	t.Helper()
	var cores []core
	for _, p := range probes {
		cores = append(cores, record(t, p...))
	}
	h, err := AuditHold(pnwLimit, recorded(4*step, cores...))
	require.NoError(t, err)
	return h
}

// doubts reports whether a hold has readings that are not believed.
func doubts(h Hold) bool {
	return slices.ContainsFunc(h.Findings, func(f verdict.Finding) bool { return f.Kind == verdict.Impossible })
}

func FuzzAuditHold(f *testing.F) {
	f.Add([]byte{10, 120, 130, 140, 150, 160, 170, 180, 190, 200, 210, 220, 118}, []byte{200, 200, 200, 200, 200, 200, 255, 255, 200, 200, 200, 200, 200}, uint8(3))
	f.Add([]byte{115, 115, 115, 115, 115, 115, 115, 115, 115, 115, 115, 115}, []byte{255, 115, 115}, uint8(0))
	f.Add([]byte{200, 0, 200, 0, 200, 0, 200}, []byte{0, 200, 0, 200, 0, 200}, uint8(5))
	f.Fuzz(func(t *testing.T, one, two []byte, at uint8) {
		a, b := drawn(t, one), drawn(t, two)
		if len(a) == 0 || len(b) == 0 || len(a)+len(b) > 200 {
			return
		}
		alone, both := held(t, a), held(t, a, b)
		i := int(at) % len(a)

		// The sweep over several probes agrees with the pass over one.
		require.Equal(t, alone.Held, held(t, a, a).Held)
		require.Equal(t, alone.Bridged, held(t, a, a).Bridged)

		// One more probe never helps.
		require.LessOrEqual(t, both.Held, alone.Held)
		require.LessOrEqual(t, both.Bridged, alone.Bridged)

		// The verdict follows from the two lengths; what is owed, from the end of the record.
		doubted := both.Held >= pnwLimit.Hold && doubts(both)
		require.Equal(t, both.Held >= pnwLimit.Hold && !doubted, both.Verdict == verdict.Met)
		require.Equal(t, doubted || both.Held < pnwLimit.Hold && both.Bridged >= pnwLimit.Hold, both.Verdict == verdict.CannotTell)
		require.Equal(t, both.Verdict == verdict.Met, both.Owed == 0 && !doubted)
		require.Equal(t, both.Verdict == verdict.Met, both.Findings == nil)
		require.LessOrEqual(t, both.Held, both.Bridged)

		// All along the hold both cores are at the limit, but for half a quantum of the line.
		for k := time.Duration(0); both.Held > 0 && k <= 16; k++ {
			now := both.Began + both.Held*k/16
			for _, p := range [][]reading{a, b} {
				v, err := record(t, p...).ValueAt(now)
				require.NoError(t, err)
				require.True(t, v.Add(1).AtLeast(pnwLimit.AtLeast), "%v at %v", v, now)
			}
		}

		// A warmer reading never undoes a hold.
		warmer := append([]reading{}, a...)
		warmer[i].Value = warmer[i].Value.Add(20 * units.FahrenheitDegrees)
		require.GreaterOrEqual(t, held(t, warmer, b).Held, both.Held)

		// Nor does a longer one: whatever comes after.
		for _, f := range []float64{140, 160, 180} {
			last := a[len(a)-1].At
			longer := append(append([]reading{}, a...), reading{At: last + step, Value: units.Fahrenheit(f)})
			require.GreaterOrEqual(t, held(t, longer).Held, alone.Held)
		}

		// What is owed is enough: go on at the limit for that long.
		if last := a[len(a)-1]; last.Value.AtLeast(pnwLimit.AtLeast) && alone.Owed > 0 && !doubts(alone) {
			done := append([]reading{}, a...)
			for quarter := time.Duration(1); quarter <= 4; quarter++ {
				done = append(done, reading{At: last.At + alone.Owed*quarter/4, Value: pnwLimit.AtLeast})
			}
			whole := held(t, done)
			require.GreaterOrEqual(t, whole.Held, pnwLimit.Hold)
			require.True(t, whole.Verdict == verdict.Met || doubts(whole), "%v", whole.Findings)
		}
	})
}

// A reading put exactly on the line changes nothing but the gap: two readings an even number of quanta and of
// nanoseconds apart have such a middle.
func TestReadingOnTheLineChangesNothing(t *testing.T) {
	for _, degrees := range [][]float64{
		{150, 170, 170, 158, 168, 172, 170}, {160, 160, 160, 160}, {150, 150, 160, 150}, {170, 172, 168, 166, 164},
	} {
		whole := fahrenheit(t, 2*step, degrees...).Readings()
		split := []reading{whole[0]}
		for i := 1; i < len(whole); i++ {
			a, b := whole[i-1], whole[i]
			rise, err := b.Value.Sub(a.Value)
			require.NoError(t, err)
			require.Zero(t, rise%2)
			split = append(split, reading{At: (a.At + b.At) / 2, Value: a.Value.Add(rise / 2)}, b)
		}
		want, got := held(t, whole), held(t, split)
		require.Equal(t, 2*step, want.LargestGap.Length())
		require.Equal(t, step, got.LargestGap.Length())
		want.LargestGap = got.LargestGap
		require.Equal(t, want, got)
	}
}

func BenchmarkAuditHold(b *testing.B) {
	kiln := func(n int, top, dip float64) core {
		readings := make([]reading, n)
		for i := range readings {
			f := 40 + (top-40)*float64(min(i, n*3/4))/float64(n*3/4)
			if i > n*3/4 && i%300 == 0 {
				f -= dip
			}
			readings[i] = reading{At: time.Duration(i) * 5 * time.Second, Value: units.Fahrenheit(f)}
		}
		return record(b, readings...)
	}
	met, short := kiln(10_000, 190, 0), kiln(10_000, 190, 30)
	gappy := record(b, append(met.Readings(), reading{At: 24 * time.Hour, Value: units.Fahrenheit(185)})...)
	for _, c := range []struct {
		name   string
		probes []core
	}{
		{"10000 readings met", []core{met}},
		{"10000 readings not met, dips", []core{short}},
		{"10000 readings with a long gap", []core{gappy}},
		{"2 probes of 10000 readings", []core{met, short}},
	} {
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			for i := 0; i < b.N; i++ {
				if _, err := AuditHold(DefaultCoreLimit(), recorded(time.Minute, c.probes...)); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
