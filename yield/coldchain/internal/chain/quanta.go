package chain

import (
	"math/bits"

	"example.org/lakelarder/units"
)

// Quanta is a temperature as a whole number above absolute zero, to count with.
func Quanta(t units.Temperature) int64 { return int64(t.AboveAbsoluteZero()) }

// Part is dt·num/den rounded down, for num below den.
func Part(dt, num, den int64) int64 {
	hi, lo := bits.Mul64(uint64(dt), uint64(num))
	q, _ := bits.Div64(hi, lo, uint64(den))
	return int64(q)
}
