package chain

import (
	"example.org/lakelarder/units"
)

// Quanta is a temperature as a whole number above absolute zero, to count with.
func Quanta(t units.Temperature) int64 { return int64(t.AboveAbsoluteZero()) }

// Part is dt·num/den rounded down, for num from zero up to den and den above zero.
func Part(dt, num, den int64) int64 {
	part, _ := units.ProrateDown(units.Ratio(dt), units.Ratio(num), units.Ratio(den)) // no more than dt: in range
	return int64(part)
}
