package lethality

// Root is an eigenvalue before it is rounded.
func Root(b Transient, n int) float64 { return b.Shape.root(b.biot(), n) }

// ScaledI are the modified Bessel functions that no exported figure shows by itself.
func ScaledI(x float64) (i0, i1 float64) { return scaledI(x) }

// GRows is how many points the table of g has.
const GRows = len(gTable)

// Coefficients are the property equations by component and property.
func Coefficients() map[string][3]float64 {
	all := map[string][3]float64{}
	for _, c := range components {
		for name, q := range map[string]quadratic{"thermal conductivity": c.conductivity, "density": c.density, "specific heat": c.heat} {
			all[c.name+", "+name] = [3]float64{q.c0, q.c1, q.c2}
		}
	}
	return all
}

// Growth is (eˣ − 1)/x as F has it.
func Growth(x float64) float64 { return growth(x) }
