package root_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/root"
)

type power struct{ n, less float64 }

func (p power) At(x float64) (value, slope float64) {
	return math.Pow(x, p.n) - p.less, p.n * math.Pow(x, p.n-1)
}

// A root is found from any guess, also where Newton's first step leaves the bracket and where the root is an end.
func TestRootsAreFound(t *testing.T) {
	for _, c := range []struct{ low, high, guess, want float64 }{
		{0, 10, 5, 2}, {0, 10, 0.001, 2}, {0, 10, 9.99, 2}, {2, 10, 6, 2}, {0, 2, 1, 2}, {1.9, 2.1, 2, 2},
	} {
		require.InDelta(t, c.want, root.Of(c.low, c.high, c.guess, power{3, 8}), 1e-8, "%v", c)
	}
	require.Equal(t, 1., root.Of(1, 1, 1, power{3, 8}), "a bracket of nothing is its own answer")
}

// line is nearly straight: its curvature is a tenth of its slope.
type line struct{ zero float64 }

func (l line) At(x float64) (value, slope float64) {
	d := x - l.zero
	return d + d*d/20, 1 + d/10
}

// A function that runs nearly straight ends one step sooner, as exactly.
func TestStraightRootsAreFound(t *testing.T) {
	for _, guess := range []float64{0, 1, 1.99, 2, 2.00001, 2.2, 5} {
		require.InDelta(t, 2, root.OfStraight(0, 5, guess, line{2}), 1e-11, "from %v", guess)
	}
	require.Equal(t, 1., root.OfStraight(1, 1, 1, line{1}), "a bracket of nothing is its own answer")
}
