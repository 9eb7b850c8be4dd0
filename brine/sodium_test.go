package brine

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

// The factor in print is 2.5421, 2.54212 with one digit more; the molar masses are 58.4428 and 22.98977.
func TestSaltFromSodium(t *testing.T) {
	salt, err := SaltFromSodium(units.Kilogram)
	require.NoError(t, err)
	require.Equal(t, "2.54212", units.In(salt, units.Kilogram, 5).String())
	mole, err := SaltFromSodium(22_989_770 * units.Microgram)
	require.NoError(t, err)
	require.Equal(t, 58_442_800*units.Microgram, mole)
	none, err := SaltFromSodium(0)
	require.NoError(t, err)
	require.Zero(t, none)
}

func TestSodiumRefused(t *testing.T) {
	for _, sodium := range []units.Mass{-1, math.MinInt64, math.MaxInt64, math.MaxInt64 / 2} {
		_, err := SaltFromSodium(sodium)
		require.ErrorIs(t, err, units.ErrRange)
	}
}
