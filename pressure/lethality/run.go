package lethality

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// Run is a run of a canner drawn with straight lines: everything at Start, up to Steam during ComeUp, held, and after
// the heat goes off down by Cooling each minute to End.
type Run struct {
	Start   units.Temperature       `wire:"required"`
	Steam   units.Temperature       `wire:"required"`
	End     units.Temperature       `wire:"required"`
	ComeUp  time.Duration           `wire:"required"`
	Hold    time.Duration           `wire:"required"`
	Cooling units.TemperatureChange `wire:"required"` // a minute
}

// SteamOff returns when the heat goes off, from the start of the come-up.
func (r Run) SteamOff() time.Duration { return r.ComeUp + r.Hold }

func (r Run) check() error {
	if err := units.CheckTemperature("start", r.Start, units.Celsius(-1), hottest); err != nil {
		return err
	}
	if err := units.CheckTemperature("steam", r.Steam, r.Start, hottest); err != nil {
		return err
	}
	if err := units.CheckTemperature("end of cooling", r.End, units.Celsius(-1), r.Steam); err != nil {
		return err
	}
	if err := units.CheckDuration("come-up", r.ComeUp, time.Second, 24*time.Hour); err != nil {
		return err
	}
	if err := units.CheckDuration("hold", r.Hold, time.Second, 24*time.Hour); err != nil {
		return err
	}
	return units.Check("cooling a minute", r.Cooling, units.Kelvins/10, 150*units.Kelvins)
}

// Medium returns the temperature around the jar, followed for a time after it has cooled to End. Start must be -1 to
// 150 °C, Steam from there to 150 °C, End -1 °C to Steam, come-up and hold 1 s to a day, Cooling 0.1 to 150 K a
// minute; otherwise a RangeError.
func (r Run) Medium(after time.Duration) (series.Series[units.Temperature], error) {
	var none series.Series[units.Temperature]
	if err := r.check(); err != nil {
		return none, err
	}
	if err := units.CheckDuration("time after cooling", after, time.Second, 7*24*time.Hour); err != nil {
		return none, err
	}
	fall, err := r.Steam.Sub(r.End)
	if err != nil {
		return none, err
	}
	readings := []series.Reading[units.Temperature]{
		{At: 0, Value: r.Start}, {At: r.ComeUp, Value: r.Steam}, {At: r.SteamOff(), Value: r.Steam},
	}
	end := r.SteamOff()
	if fall > 0 {
		end += max(time.Second, time.Duration(units.Float(fall, r.Cooling)*float64(time.Minute)))
		readings = append(readings, series.Reading[units.Temperature]{At: end, Value: r.End})
	}
	return series.New(append(readings, series.Reading[units.Temperature]{At: end + after, Value: r.End}))
}
