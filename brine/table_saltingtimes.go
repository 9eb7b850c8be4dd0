package brine

import "time"

// saltingTimes are the printed rows: thickness in hundredths of an inch, half hours for fat and for lean fish.
var saltingTimes = [...]saltingRow{
	{75, 18, 10},
	{100, 24, 14},
	{125, 30, 17},
	{150, 36, 20},
	{200, 48, 26},
	{250, 60, 34},
	{300, 72, 40},
}

type saltingRow struct {
	hundredths, fat, lean int64
}

func (r saltingRow) time(f Fatness) time.Duration {
	if f == FatFish {
		return time.Duration(r.fat) * 30 * time.Minute
	}
	return time.Duration(r.lean) * 30 * time.Minute
}
