package units_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

func ExampleCheckUnit() {
	fmt.Println(units.CheckUnit("altitude", 4350, units.Millimetre))
	fmt.Println(units.CheckUnit("altitude", 4350*units.Foot, units.Millimetre))
	// Output:
	// altitude 4350 (0.00435 mm): was the unit left out? Expected 0 or at least 1 mm
	// <nil>
}

func ExampleUnitError() {
	fmt.Println(units.UnitError{What: "dose", Got: "3 (0.0000000003 %)", Least: "0.001 %"})
	// Output: dose 3 (0.0000000003 %): was the unit left out? Expected 0 or at least 0.001 %
}

// The least is shown in the unit in which it is a plain figure.
func TestCheckUnitIsPlain(t *testing.T) {
	require.EqualError(t, units.CheckUnit[units.Pressure]("error of the dial", 5, units.PSI/1000),
		"error of the dial 5 (0.000000000000039 kPa): was the unit left out? Expected 0 or at least 0.001 psi")
}

// Zero is stated, and a sign changes nothing: only the size says that a unit is missing.
func TestCheckUnit(t *testing.T) {
	for _, q := range []units.Length{0, units.Millimetre, -units.Millimetre, math.MaxInt64, math.MinInt64} {
		require.NoError(t, units.CheckUnit("length", q, units.Millimetre))
	}
	for _, q := range []units.Length{1, -1, 4350, -4350, units.Millimetre - 1, 1 - units.Millimetre} {
		require.ErrorIs(t, units.CheckUnit("length", q, units.Millimetre), units.ErrRange)
	}
}
