package lethality

// Root is an eigenvalue before it is rounded.
func Root(b Transient, n int) float64 { return b.Shape.root(b.biot(), n) }

// ScaledI are the modified Bessel functions that no exported figure shows by itself.
func ScaledI(x float64) (i0, i1 float64) { return scaledI(x) }
