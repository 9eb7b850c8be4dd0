package solution

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

func grams(t testing.TB, r printed.Row, col string) units.Mass {
	t.Helper()
	m, err := units.Of(r.Decimal(col), units.Gram)
	require.NoError(t, err)
	return m
}
