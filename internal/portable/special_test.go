package portable

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"
)

var edges = []float64{
	0, math.Copysign(0, -1), 1, -1, 0.5, -0.5, 2, -2, 3, -3, 1e-320, -1e-320, math.SmallestNonzeroFloat64, -math.SmallestNonzeroFloat64, 0x1p-1022,
	math.MaxFloat64, -math.MaxFloat64, math.Inf(1), math.Inf(-1), math.NaN(), 709, 709.7827128933841,
	-745.1332191019412, -745.2, 308.3, 309, -323.4, -324, -400, 1e17, 1<<53 - 1, 1 << 53, 26.6, 27.5, -27.5, 1e300, -1e300, 1e-300, 1e-17, 1 - 0x1p-53, 1 + 0x1p-52,
}

var pairs = map[string][2]func(float64) float64{
	"Exp":   {Exp, math.Exp},
	"Exp10": {Exp10, func(x float64) float64 { return math.Pow(10, x) }},
	"Expm1": {Expm1, math.Expm1},
	"Log":   {Log, math.Log},
	"Log10": {Log10, math.Log10},
	"Log1p": {Log1p, math.Log1p},
	"Sin":   {Sin, math.Sin},
	"Cos":   {Cos, math.Cos},
	"J0":    {J0, math.J0},
	"J1":    {J1, math.J1},
	"Erfc":  {Erfc, math.Erfc},
}

// requireAlike: the same kind of value with the same sign, and a number within a few last places of package math,
// which is no better itself.
func requireAlike(t *testing.T, want, got, slack float64, what string, args ...float64) {
	t.Helper()
	switch {
	case want != want:
		require.True(t, got != got, "%s(%v) = %v, want NaN", what, args, got)
	case math.IsInf(want, 0) || want == 0:
		require.Equal(t, math.Float64bits(want), math.Float64bits(got), "%s(%v) = %v, want %v", what, args, got, want)
	default:
		require.InDelta(t, want, got, slack*math.Abs(want)+3*math.SmallestNonzeroFloat64, "%s(%v)", what, args)
	}
}

func TestSpecialValues(t *testing.T) {
	for name, pair := range pairs {
		for _, x := range edges {
			if (name == "J0" || name == "J1") && (math.Abs(x) > 1e100 && !math.IsInf(x, 0) || math.Abs(x) < 1e-300) {
				continue // there package math rounds an eighth of a turn off, and loses the sign
			}
			if (name == "Log" || name == "Log10") && x > 0 && x < 0x1p-1022 {
				require.LessOrEqual(t, ulps(Log(x), refLog(number(x))), 0.51, "the logarithms of package math are wrong in the third digit of a subnormal number on some machines")
				continue
			}
			requireAlike(t, pair[1](x), pair[0](x), 2e-13, name, x)
		}
	}
	for _, x := range edges {
		for _, y := range edges {
			want, got := math.Pow(x, y), Pow(x, y)
			requireAlike(t, want, got, 1e-6, "Pow", x, y) // package math loses half of its digits in great powers
			if size := math.Abs(got); size > 0 && size <= math.MaxFloat64 && size != 1 {
				require.LessOrEqual(t, ulps(size, refExp(mul(refLog(number(math.Abs(x))), number(y)))), 0.75, "Pow(%v, %v)", x, y)
			}
		}
	}
	require.Equal(t, []float64{5e-324, 0}, []float64{Exp(-745.1332191019411), Exp(-745.1332191019412)}, "2^-1075 lies between")
	require.LessOrEqual(t, ulps(Exp(overflow), refExp(number(overflow))), 0.51, "the last that is finite")
	require.InDelta(t, 0, J0(1e300), 1e-150)
	require.Equal(t, []float64{-5e-321, 1}, []float64{J1(-1e-320), J0(-1e-320)})
}

// Any bits at all give the same kind of answer as package math.
func TestAnyBits(t *testing.T) {
	rng := rand.New(rand.NewSource(3))
	for i := 0; i < 20_000; i++ {
		x := math.Float64frombits(rng.Uint64())
		for name, pair := range pairs {
			if name == "J0" || name == "J1" || (name == "Sin" || name == "Cos") && math.Abs(x) > 1e15 {
				continue // near zeros and far out package math has few digits
			}
			want := pair[1](x)
			if math.Abs(want) < 1e-300 || math.Abs(x) < 0x1p-1022 {
				continue // the logarithms of package math are wrong in the third digit of a subnormal number on some machines
			}
			requireAlike(t, want, pair[0](x), 1e-13, name, x)
		}
	}
}

// What rises keeps rising from one float64 to the next, over the joints of the tables and of the ways they are used.
func TestMonotonicAtTheJoints(t *testing.T) {
	for name, at := range map[string][]float64{
		"Exp":   {lowest, highest, math.Ln2 / 256, -math.Ln2 / 256, 1, -1},
		"Expm1": {1. / 16, -1. / 16, 40, -40, math.Ln2, -math.Ln2},
		"Log":   {0.6875, 1.375, 1, 1 + 1./128, 1 - 1./256, 0x1p-1022},
		"Log1p": {1. / 128, -1. / 256, 1, 1 << 60},
		"Log10": {1, 10, 1 + 1./128},
	} {
		of := pairs[name][0]
		for _, x := range at {
			before := x
			for i := 0; i < 50; i++ {
				before = math.Nextafter(before, math.Inf(-1))
			}
			for i := 0; i < 100; i++ {
				after := math.Nextafter(before, math.Inf(1))
				require.LessOrEqual(t, of(before), of(after), "%s at %v", name, before)
				before = after
			}
		}
	}
}
