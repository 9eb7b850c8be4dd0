package chain

import (
	"strconv"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// CheckCount refuses a record of fewer than two readings, which has no time.
func CheckCount(readings int) error {
	switch readings {
	case 0:
		return series.ErrEmpty
	case 1:
		return units.RangeError{What: "number of readings", Got: "1", Low: "2"}
	}
	return nil
}

// CheckRecord refuses a record of fewer than two readings or with one that no fish is, and a gap that trusts nothing.
func CheckRecord(record series.Series[units.Temperature], maxGap time.Duration) error {
	if err := CheckWalk(record, maxGap); err != nil {
		return err
	}
	low, _ := record.Min()
	high, _ := record.Max()
	return CheckExtremes(low.Value, high.Value)
}

// CheckWalk is CheckRecord for a walk that finds the extremes itself.
func CheckWalk(record series.Series[units.Temperature], maxGap time.Duration) error {
	if err := CheckCount(record.Len()); err != nil {
		return err
	}
	return CheckGap(maxGap)
}

// CheckGap refuses a longest gap that is not stated, or trusts nothing.
func CheckGap(maxGap time.Duration) error {
	switch {
	case maxGap == 0:
		return units.UnsetError{What: "longest gap trusted"}
	case maxGap > 0:
		return CheckTime("longest gap trusted", maxGap)
	case maxGap < 0:
		return units.RangeError{
			What: "longest gap trusted", Got: units.Lasting(maxGap), Low: units.Lasting(0), LowExclusive: true,
		}
	}
	return nil
}

// CheckTime refuses a time of less than a second, for which the unit was left out.
func CheckTime(what string, d time.Duration) error {
	if d == 0 || d >= time.Second || d <= -time.Second {
		return nil
	}
	return units.UnitError{What: what, Got: strconv.FormatInt(int64(d), 10) + " (" + d.String() + ")", Least: units.Lasting(time.Second)}
}

// CheckFish refuses what no fish is: not set, below -80 °C or above 100 °C.
func CheckFish(t units.Temperature) error {
	return units.CheckTemperature("temperature of the fish", t, coldest, boiling)
}

// CheckExtremes refuses a record that goes where no fish is.
func CheckExtremes(lowest, highest units.Temperature) error {
	if err := CheckFish(lowest); err != nil {
		return err
	}
	return CheckFish(highest)
}

// No fish at home is colder than dry ice or warmer than boiling water: such a reading is a fault of the probe, and -127
// °C of one that came loose must not count as cold.
var (
	coldest = units.Celsius(-80)
	boiling = units.Celsius(100)
)
