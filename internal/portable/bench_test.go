package portable_test

import (
	"math"
	"testing"

	"example.org/lakelarder/internal/portable"
)

// Each function beside that of package math, on arguments in its usual range.
func BenchmarkFunctions(b *testing.B) {
	for _, f := range []struct {
		name      string
		of, other func(float64) float64
		low, high float64
	}{
		{"Exp", portable.Exp, math.Exp, -30, 5},
		{"Exp10", portable.Exp10, func(x float64) float64 { return math.Pow(10, x) }, -12, 2},
		{"Expm1", portable.Expm1, math.Expm1, -3, 3},
		{"Log", portable.Log, math.Log, 0.1, 10},
		{"Log10", portable.Log10, math.Log10, 0.1, 10},
		{"Log1p", portable.Log1p, math.Log1p, -0.5, 2},
		{"Pow", func(x float64) float64 { return portable.Pow(x, 2.138) }, func(x float64) float64 { return math.Pow(x, 2.138) }, 0.1, 10},
		{"Sin", portable.Sin, math.Sin, -100, 100},
		{"Cos", portable.Cos, math.Cos, -100, 100},
		{"J0", portable.J0, math.J0, 0, 60},
		{"J1", portable.J1, math.J1, 0, 60},
		{"Erfc", portable.Erfc, math.Erfc, -1, 5},
	} {
		for _, one := range []struct {
			name string
			of   func(float64) float64
		}{{"portable", f.of}, {"math", f.other}} {
			b.Run(f.name+"/"+one.name, func(b *testing.B) {
				sum, step := 0., (f.high-f.low)/1024
				for i := 0; i < b.N; i++ {
					sum += one.of(f.low + step*(float64(i&1023)+0.37))
				}
				if sum != sum {
					b.Fatal("no number")
				}
			})
		}
	}
}
