package spoilage_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/spoilage"
)

// An age that no record has is refused like any input.
func TestHandBuiltAge(t *testing.T) {
	life := spoilage.Lives()[0]
	_, err := spoilage.Age{Used: -1}.Left(life)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = spoilage.Age{Used: math.MinInt64}.Left(life)
	require.ErrorIs(t, err, units.ErrRange)
	left, err := spoilage.Age{Used: math.MaxInt64}.Left(life)
	require.NoError(t, err)
	require.Negative(t, left.High, "long overdue")
	left, err = spoilage.Age{}.Left(life)
	require.NoError(t, err)
	require.Equal(t, life.Low, left.Low)
}
