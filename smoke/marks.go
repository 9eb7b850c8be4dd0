package smoke

import (
	"time"

	"example.org/lakelarder/units"
)

// Marks are what was noted beside a record, on its clock; what was not noted stays zero. Handled is when the fish was first
// boned, sliced, wrapped or bagged after the heat, warm or cold. Pack is what it was stored in.
type Marks struct {
	OutOfSmoker units.Stated[time.Duration]
	InOven      units.Stated[time.Duration]
	Handled     units.Stated[time.Duration]
	Pack        Pack
}

// check refuses marks before the record and out of order.
func (m Marks) check() error {
	for _, t := range []struct {
		what string
		at   units.Stated[time.Duration]
	}{{"mark of the end in the smoker", m.OutOfSmoker}, {"mark of the oven", m.InOven}, {"mark of the first handling", m.Handled}} {
		if err := checkStatedTime(t.what, t.at.Value); err != nil {
			return err
		}
	}
	if m.OutOfSmoker.Given && m.InOven.Given && m.InOven.Value < m.OutOfSmoker.Value {
		return units.RangeError{What: "mark of the oven", Got: units.Lasting(m.InOven.Value), Low: "the end in the smoker, " + units.Lasting(m.OutOfSmoker.Value)}
	}
	return packs.CheckIfSet(m.Pack)
}
