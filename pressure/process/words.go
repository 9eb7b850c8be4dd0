package process

import (
	"strconv"
	"time"

	"example.org/lakelarder/units"
)

// exact is a quantity in the unit of the tables where it has at most two decimals there, else exact in another: a
// shortfall is never rounded away.
func exact[Q units.Quantity](q, unit Q) string {
	step := unit
	for places := int32(0); places <= 2; places++ {
		if q%step == 0 {
			return units.Text(q, unit, places)
		}
		if step%10 != 0 {
			break
		}
		step /= 10
	}
	return units.Text(q, 0, 0)
}

// minutes is a time as the tables print it, and exact when it is not whole minutes.
func minutes(d time.Duration) string {
	if d%time.Minute == 0 {
		return strconv.FormatInt(int64(d/time.Minute), 10) + " min"
	}
	return d.String()
}

func pounds(p units.Pressure) string { return exact(p, units.PSI) }

// poundsOff is a difference of pressures: a stated one in kPa is told to the next thousandth of a pound, never as nothing.
func poundsOff(p units.Pressure) string {
	if p%(units.PSI/100) == 0 {
		return pounds(p)
	}
	return units.Text(units.CeilTo(p, units.PSI/1000), units.PSI, 3)
}

func inches(l units.Length) string { return exact(l, units.Inch) }

func quarts(v units.Volume) string { return exact(v, units.Quart) }

func height(l units.Length) string { return exact(l, units.Foot) }
