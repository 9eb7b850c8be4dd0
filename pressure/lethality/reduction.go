package lethality

import (
	"math"
	"strconv"
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
)

// Reductions returns how many log10 reductions an F is for a D at the same reference: F/D, rounded down to 1e-12. F
// must not be negative and D be above zero; otherwise, or beyond 9.2 million, a RangeError.
func Reductions(f, d time.Duration) (Kill, error) {
	logs, err := reductions(f, d)
	if err != nil {
		return Kill{}, err
	}
	return Kill{logs, explainsModel()}, nil
}

func reductions(f, d time.Duration) (Logs, error) {
	if err := units.CheckDuration("F", f, 0, longest); err != nil {
		return 0, err
	}
	if err := aboveZero("D", d); err != nil {
		return 0, err
	}
	logs, err := units.ProrateDown(units.One, units.Ratio(f), units.Ratio(d))
	if err != nil {
		return 0, units.RangeError{
			What: "F at a D of " + units.Lasting(d), Got: units.Lasting(f), High: units.Lasting(mostLogs * d),
		}
	}
	return Logs(logs), nil
}

// mostLogs is how many whole reductions Logs hold.
const mostLogs = math.MaxInt64 / time.Duration(One)

// The least D and the least reductions that anybody means: smaller ones are bare numbers. Practice, no source.
const (
	leastD    = time.Microsecond
	leastLogs = Logs(One / 1_000_000)
)

// aboveZero returns a RangeError unless a time is more than nothing and within what this package counts.
func aboveZero(what string, d time.Duration) error {
	if d > 0 && d <= longest {
		return nil
	}
	return units.RangeError{What: what, Got: units.Lasting(d), Low: units.Lasting(0), LowExclusive: true}
}

// Target returns the F for so many log10 reductions at a D: reductions·D, rounded up to the nanosecond. Target(D,
// Logs(12*One)) is the 12-D of canning. D must be above zero and the reductions 0 to 1,000; otherwise a RangeError. A D
// below a microsecond and reductions between zero and a millionth are bare numbers, and a UnitError.
func Target(d time.Duration, reductions Logs) (Equivalent, error) {
	if err := aboveZero("D", d); err != nil {
		return Equivalent{}, err
	}
	if d < leastD {
		return Equivalent{}, units.UnitError{
			What: "D", Got: strconv.FormatInt(int64(d), 10) + " (" + units.Lasting(d) + ")", Least: units.Lasting(leastD),
		}
	}
	if reductions > 0 && reductions < leastLogs {
		return Equivalent{}, units.UnitError{
			What: "log reductions", Got: strconv.FormatInt(int64(reductions), 10) + " (" + Number(reductions).String() + ")",
			Least: Number(leastLogs).String(),
		}
	}
	if err := Number(reductions).check("log reductions", 0, 1_000*One); err != nil {
		return Equivalent{}, err
	}
	f, err := units.ProrateUp(units.Ratio(d), units.Ratio(reductions), units.One)
	if err != nil {
		whole := time.Duration((reductions + Logs(One) - 1) / Logs(One))
		return Equivalent{}, units.RangeError{
			What: "D for " + reductions.String() + " log reductions", Got: units.Lasting(d), High: units.Lasting(longest / whole),
		}
	}
	return Equivalent{time.Duration(f), explainsModel()}, nil
}

// Survivors returns how many are left on average of a count after log10 reductions: count·10^-reductions, rounded up
// to 1e-12. The count must be 1 or more and the reductions 0 to 1,000; otherwise, or when more than 9.2 million are
// left, a RangeError.
func Survivors(count int64, reductions Logs) (Survival, error) {
	if err := counted(count); err != nil {
		return Survival{}, err
	}
	if err := Number(reductions).check("log reductions", 0, 1_000*One); err != nil {
		return Survival{}, err
	}
	left := float64(float64(count) * portable.Exp(-math.Ln10*Number(reductions).float()) * float64(One))
	if near := math.Round(left); math.Abs(near-left) <= 1e-13*near {
		left = near
	}
	n, err := units.OfFloat(math.Ceil(left), units.Ratio(1))
	if err != nil {
		return Survival{}, err
	}
	return Survival{Number(n), explainsModel()}, nil
}

// LogCount returns the log10 of a count of 1 or more, to the nearest 1e-12; a smaller count is a RangeError.
// LogCount(n) + Logs(3*One) are the reductions that leave one in a thousand containers spoiled.
func LogCount(count int64) (Logs, error) {
	if err := counted(count); err != nil {
		return 0, err
	}
	n, err := numberOf(portable.Log10(float64(count)))
	return Logs(n), err
}

// DFromCounts returns the D at one temperature from two counts and the time between them: t/log10(N1/N2), rounded up
// to the nanosecond, the side of more resistance. The counts must fall and the last be 1 or more, the time above
// zero; otherwise a RangeError.
func DFromCounts(before, after int64, between time.Duration) (Equivalent, error) {
	if err := counted(after); err != nil {
		return Equivalent{}, err
	}
	if before <= after {
		return Equivalent{}, units.RangeError{
			What: "count before", Got: strconv.FormatInt(before, 10), Low: strconv.FormatInt(after, 10), LowExclusive: true,
		}
	}
	if err := aboveZero("time between counts", between); err != nil {
		return Equivalent{}, err
	}
	d, err := ceiled("D", float64(between)/portable.Log10(float64(before)/float64(after)))
	if err != nil {
		return Equivalent{}, err
	}
	return Equivalent{d, explainsModel()}, nil
}

func counted(count int64) error {
	if count < 1 {
		return units.RangeError{What: "count", Got: strconv.FormatInt(count, 10), Low: "1"}
	}
	return nil
}
