package conformance

import (
	"math"

	"example.org/lakelarder/internal/portable"
)

// spread are numbers from one to another, evenly apart, and some that are far out.
func spread(low, high float64, n int) []float64 {
	xs := []float64{0, math.Copysign(0, -1), 1, -1, 1e-300, -1e-300, 5e-324, 1e300, -1e300, math.Inf(1), math.Inf(-1)}
	for i := 0; i <= n; i++ {
		xs = append(xs, low+float64(float64(high-low)*(float64(float64(i)+0.25)/float64(n+1))))
	}
	return xs
}

func portableGrid(r *results) {
	for _, f := range []struct {
		name      string
		of        func(float64) float64
		low, high float64
	}{
		{"Exp", portable.Exp, -745, 710},
		{"Exp", portable.Exp, -3, 3},
		{"Exp10", portable.Exp10, -323, 309},
		{"Exp10", portable.Exp10, -3, 3},
		{"Expm1", portable.Expm1, -40, 60},
		{"Expm1", portable.Expm1, -0.5, 0.5},
		{"Log", portable.Log, 0, 3},
		{"Log", portable.Log, 0, 1e6},
		{"Log10", portable.Log10, 0, 3},
		{"Log10", portable.Log10, 0, 1e6},
		{"Log1p", portable.Log1p, -1, 1},
		{"Log1p", portable.Log1p, -0.02, 0.02},
		{"Sin", portable.Sin, -10, 10},
		{"Sin", portable.Sin, -1e6, 1e7},
		{"Cos", portable.Cos, -10, 10},
		{"Cos", portable.Cos, -1e6, 1e7},
		{"J0", portable.J0, -3, 60},
		{"J1", portable.J1, -3, 60},
		{"Erfc", portable.Erfc, -6, 27},
	} {
		for _, x := range spread(f.low, f.high, 130) {
			r.add(f.name, nil, one(f.of(x)), x)
		}
	}
	for _, x := range spread(0, 12, 12) {
		for _, y := range spread(-9, 9, 18) {
			r.add("Pow", nil, one(portable.Pow(x, y)), x, y)
		}
		sin, cos := portable.Sincos(x)
		r.add("Sincos", nil, []any{sin, cos}, x)
		j0, j1 := portable.Bessel(x)
		r.add("Bessel", nil, []any{j0, j1}, x)
	}
}
