package canner

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// Both is what two records of one run say, one of pressures and one of temperatures: the worst of either, and whether
// the steam was as hot as its pressure says.
type Both struct {
	verdict.Report
	ByPressure, BySteam Report
}

// MarshalJSON writes it as an app shows it.
func (b Both) MarshalJSON() ([]byte, error) { return wire.Marshal(b) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (b *Both) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, b) }

// AuditBoth audits both records of a run, and holds them against each other while the pressure was held: steam that
// is colder than saturated steam at that pressure, beyond the stated errors of the recorder, is mixed with air that
// was left in, and the verdict is NotMet. An error that is not stated is taken as 0.5 psi and 1 °C, practice. Where
// no temperature was recorded in the hold the two cannot be compared, which is CannotTell. Errors as of Audit. Source
// of the steam: IAPWS-IF97, region 4.
func AuditBoth(
	run Run, pressures series.Series[units.Pressure], temperatures series.Series[units.Temperature],
) (Both, error) {
	byPressure, err := Audit(run, pressures)
	if err != nil {
		return Both{}, err
	}
	bySteam, err := Audit(run, temperatures)
	if err != nil {
		return Both{}, err
	}
	reports := []verdict.Report{byPressure.Report, bySteam.Report}
	held := byPressure.Held
	if bySteam.Held.Length() > 0 { // before it was as hot, the probe may lag
		held = series.Stretch{From: max(held.From, bySteam.Held.From), To: min(held.To, bySteam.Held.To)}
	}
	if held.Length() > 0 {
		found, err := airIn(&run, pressures, temperatures, held)
		if err != nil {
			return Both{}, err
		}
		if found.Kind != 0 {
			reports = append(reports, verdict.Of([]verdict.Finding{found}, nil))
		}
	}
	return Both{Report: verdict.Join(reports...), ByPressure: byPressure, BySteam: bySteam}, nil
}

var airSource = cite.Citation{
	Source: cite.IAPWSR797, Where: "region 4, at the recorded pressure less the stated errors", Basis: cite.Computed,
}

// airIn is the worst reading in a stretch that is colder than its pressure says. Its Kind is zero when there is none.
func airIn(
	run *Run, pressures series.Series[units.Pressure], temperatures series.Series[units.Temperature], held series.Stretch,
) (verdict.Finding, error) {
	around, err := run.around()
	if err != nil {
		return verdict.Finding{}, err
	}
	off, thermometer := run.errors()
	var worst units.TemperatureChange
	var found verdict.Finding
	seen := false
	for i := 0; i < temperatures.Len(); i++ {
		r, _ := temperatures.At(i)
		if r.At < held.From || r.At > held.To {
			continue
		}
		seen = true
		p, err := pressures.ValueAt(r.At)
		if err != nil {
			return verdict.Finding{}, err
		}
		steam, err := around.air.SteamUnder(max(0, p-off))
		if err != nil {
			return verdict.Finding{}, err
		}
		least := steam.Add(-thermometer)
		if by, err := least.Sub(r.Value); err == nil && by > worst {
			worst, found = by, colder(r, least, by)
		}
	}
	if !seen {
		return verdict.Finding{
			Rule: RuleAir, What: "steam temperature while the pressure was held", Kind: verdict.Missing,
			Verdict: verdict.CannotTell,
			When:    units.State(held), Citation: airSource,
		}, nil
	}
	return found, nil
}

// errors are by how much a recorded pressure and temperature may be too high and too low; what is not stated is the usual.
func (r *Run) errors() (units.Pressure, units.TemperatureChange) {
	off, thermometer := r.Recorder.Pressure, r.Recorder.Temperature
	if off == 0 {
		off = usualPressure
	}
	if thermometer == 0 {
		thermometer = usualTemperature
	}
	return r.Gauge.ReadsHigh + off, thermometer
}

func colder(r series.Reading[units.Temperature], least units.Temperature, by units.TemperatureChange) verdict.Finding {
	return verdict.Finding{
		Rule: RuleAir, What: "steam, for its pressure: air was left in", Kind: verdict.TooCold,
		Verdict: verdict.NotMet, When: when(r.At, r.At),
		Stated: units.Exactly(r.Value), Wanted: units.AtLeast(least), By: units.AmountOf(by), Citation: airSource,
	}
}
