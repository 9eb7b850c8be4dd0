package canner

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// AuditAbsolute is Audit for the record of an absolute sensor, which reads the pressure of the air when the pot is
// open: the air's pressure is subtracted from every reading. With a Barometer of station pressure that is exact;
// otherwise the air is that of the standard at the altitude, and so much as the weather may have more of it counts as
// an error of the recorder, on the safe side. A dial has no absolute readings: Gauge.ReadsHigh must be zero, else it
// is a ContradictionError. Other errors as of Audit. The weather's range is that of San Francisco State University's
// page.
func AuditAbsolute(run Run, record series.Series[units.Pressure]) (Report, error) {
	if run.Gauge.ReadsHigh != 0 {
		return Report{}, ContradictionError{
			What: "gauge error", Got: run.Gauge.ReadsHigh.String(),
			Expected: "none: no dial wrote an absolute record",
		}
	}
	around, err := run.around()
	if err != nil {
		return Report{}, err
	}
	air := around.air.Pressure()
	if run.Barometer.Kind != Station || around.barometer.Kind != 0 {
		run.Recorder.Pressure += max(0, around.heavy-air)
	}
	readings := record.Readings()
	for i := range readings {
		readings[i].Value -= air
	}
	gauge, err := series.New(readings)
	if err != nil {
		return Report{}, err
	}
	return Audit(run, gauge)
}
