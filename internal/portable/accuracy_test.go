package portable

import (
	"math"
	"math/big"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"
)

// accuracy is one function beside its reference: where it is tried, and the bound that its doc comment states.
type accuracy struct {
	name  string
	of    func(float64) float64
	ref   func(*big.Float) *big.Float
	tries [][2]float64 // ranges from which arguments are drawn evenly
	bound float64      // ulp
	worst []float64    // the arguments of the greatest errors found among hundreds of thousands
}

func accuracies() []accuracy {
	one := func(x *big.Float) *big.Float { return whatIs(1, x.Prec()) }
	ten := refLog(zero(700).SetInt64(10))
	exp10 := func(x *big.Float) *big.Float { return refExp(mul(zero(700).Set(x), ten)) }
	sin := func(x *big.Float) *big.Float { s, _ := refSincos(x); return s }
	cos := func(x *big.Float) *big.Float { _, c := refSincos(x); return c }
	turns := [][2]float64{{-math.Pi, math.Pi}, {-0.8, 0.8}, {-4000, 4000}, {-1e7, 1e7}, {-1e300, 1e300}}
	return []accuracy{
		{"Exp", Exp, refExp, [][2]float64{{-708.3, 709.7}, {-1, 1}, {-30, 5}, {-0.01, 0.01}}, 0.51, nil},
		{"Exp, subnormal", Exp, refExp, [][2]float64{{-745, -708.3}}, 0.75, []float64{-708.8446979144419, -708.7115122223256}},
		{"Exp10", Exp10, exp10, [][2]float64{{-307.6, 308}, {-2, 2}, {-10, 1}}, 0.51, nil},
		{"Exp10, subnormal", Exp10, exp10, [][2]float64{{-323, -307.6}}, 0.75, []float64{-307.73077141244767, -307.66715143117966}},
		{"Expm1", Expm1, func(x *big.Float) *big.Float { return sub(refExp(x), one(x)) }, [][2]float64{{-50, 700}, {-1, 1}, {-0.0625, 0.0625},
			{-0.2, 0.2}, {0.6, 0.8}, {-1e-9, 1e-9}}, 0.58, []float64{0.11104033536478686, 0.10015146855813678, 0.05454896904332131}},
		{"Log", Log, refLog, [][2]float64{{0, 1e-300}, {0, 2}, {0.9, 1.1}, {0.99, 1.01}, {0, 1e6}, {0, math.MaxFloat64}}, 0.51,
			[]float64{1.0044441873168628, 1.0062640585638376, 1.0022344107676833}},
		{"Log10", Log10, func(x *big.Float) *big.Float { return quo(refLog(x), zero(x.Prec()).Set(ten)) }, [][2]float64{{0, 1e-300}, {0, 2},
			{0.99, 1.01}, {0, 1e6}, {0, math.MaxFloat64}}, 0.501, nil},
		{"Log1p", Log1p, func(x *big.Float) *big.Float { return refLog(add(x, one(x))) }, [][2]float64{{-1, 1}, {-0.0625, 0.0625}, {-0.004, 0.008},
			{-1e-9, 1e-9}, {1, 1e9}, {0, 1e300}}, 0.51, []float64{0.007339114648277925, -0.00349228307856856, 0.0031965788182472202}},
		{"Pow 10.7", func(x float64) float64 { return Pow(x, 10.7) }, func(x *big.Float) *big.Float { return refExp(mul(refLog(x), number(10.7))) },
			[][2]float64{{0, 2}, {0.9, 1.1}, {0, 1e20}}, 0.51, nil},
		{"Pow of 1.001", func(y float64) float64 { return Pow(1.001, y) }, func(y *big.Float) *big.Float { return refExp(mul(refLog(number(1.001)), y)) },
			[][2]float64{{-700_000, 700_000}}, 0.55, nil},
		{"Sin", Sin, sin, turns, 0.78, []float64{2.36041581752215, -0.7868171441583255, 401.278463898052}},
		{"Cos", Cos, cos, turns, 0.78, []float64{1251.1540788906386, 8.291070646335971e+06, 3125.1039836427144}},
		{"J0", J0, func(x *big.Float) *big.Float { return refBessel(0, x) }, [][2]float64{{-1.6, 1.6}, {1.5, 25}}, 2.8,
			[]float64{2.522807328695499, 2.5203085185026253, 23.558967533645962}},
		{"J1", J1, func(x *big.Float) *big.Float { return refBessel(1, x) }, [][2]float64{{-1.6, 1.6}, {1.5, 25}}, 2.9,
			[]float64{7.225249143098767, 17.173896901049343, 21.999059294213986}},
		{"Erfc", Erfc, refErfc, [][2]float64{{-0.6, 0.6}, {-6, 0}, {0, 6}, {0, 26.5}}, 2.7, []float64{0.5180546951552718, 0.8212871925949606, 0.5709787425790341}},
	}
}

// Evenly drawn arguments, and those that were found to be worst.
func TestAccuracy(t *testing.T) {
	for _, a := range accuracies() {
		a := a
		t.Run(a.name, func(t *testing.T) {
			rng := rand.New(rand.NewSource(1))
			arguments := append([]float64{}, a.worst...)
			for _, try := range a.tries {
				for i := 0; i < 250; i++ {
					arguments = append(arguments, try[0]+(try[1]-try[0])*rng.Float64())
				}
			}
			worst, at := 0., 0.
			for _, x := range arguments {
				if off := ulps(a.of(x), a.ref(number(x))); !(off <= worst) {
					worst, at = off, x
				}
			}
			require.LessOrEqual(t, worst, a.bound, "%s(%v) = %v", a.name, at, a.of(at))
			t.Logf("%s: %.4f ulp at %v", a.name, worst, at)
		})
	}
}

// Beyond the table the error is counted in the height of the waves: near a zero it is not the last place of what is
// left.
func TestBesselFar(t *testing.T) {
	rng := rand.New(rand.NewSource(2))
	worst := 0.
	for i := 0; i < 300; i++ {
		x := 8*math.Pi - 0.5 + 120*rng.Float64()*rng.Float64()
		j0, j1 := Bessel(x)
		for order, got := range []float64{j0, j1} {
			unit := math.Ldexp(1, number(math.Sqrt(2/math.Pi/x)).MantExp(nil)-53)
			off, _ := sub(number(got), refBessel(int64(order), number(x))).Float64()
			worst = max(worst, math.Abs(off)/unit)
		}
	}
	require.LessOrEqual(t, worst, 2.8)
	t.Logf("%.4f of the last place of a wave", worst)
}

// Arguments so near a multiple of π/2 that the usual reduction has no digit left: the nearest float64 of all is
// 6381956970095103·2^797.
func TestSinesNearTheirZeros(t *testing.T) {
	for _, x := range []float64{math.Pi, math.Pi / 2, 355, 710, 5 * math.Pi, 103993, 1e5 * math.Pi, math.Ldexp(6381956970095103, 797), math.MaxFloat64, 1 << 20} {
		sin, cos := refSincos(zero(1400).SetFloat64(x))
		require.LessOrEqual(t, ulps(Sin(x), sin), 0.78, "%v", x)
		require.LessOrEqual(t, ulps(Cos(x), cos), 0.78, "%v", x)
		s, c := Sincos(x)
		require.Equal(t, []float64{Sin(x), Cos(x)}, []float64{s, c})
		s, c = Sincos(-x)
		require.Equal(t, []float64{-Sin(x), Cos(x)}, []float64{s, c})
	}
}

// Powers of ten are whole both ways.
func TestPowersOfTen(t *testing.T) {
	power := 1.
	for n := 0; n <= 22; n++ {
		require.Equal(t, power, Exp10(float64(n)))
		require.Equal(t, float64(n), Log10(power))
		require.Equal(t, power, Pow(10, float64(n)))
		power *= 10
	}
}
