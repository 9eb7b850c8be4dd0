package answers

import (
	"time"

	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// moments are the marks of a run, each a time since the record began.
func moments(m *canner.Marks) []struct {
	name, label string
	at          *units.Stated[time.Duration]
} {
	return []struct {
		name, label string
		at          *units.Stated[time.Duration]
	}{
		{"heatOn", "heat on", &m.HeatOn}, {"steadySteam", "steady steam", &m.SteadySteam}, {"ventClosed", "vent closed", &m.VentClosed},
		{"timer", "timer started", &m.Timer}, {"heatOff", "heat off", &m.HeatOff}, {"gone", "pressure gone", &m.Gone},
		{"weightOff", "weight off", &m.WeightOff}, {"lidOff", "lid off", &m.LidOff},
	}
}

func markFields(group string) []Field {
	var all []Field
	for _, m := range moments(&canner.Marks{}) {
		all = append(all, Field{Name: m.name, Label: m.label, Group: group, Help: "since the record began, such as 25 min; empty: not written down"})
	}
	return all
}

// audited judges the record of a run that was dropped.
func (w *writer) audited(s process.Schedule, gauge canner.Gauge) {
	if _, dropped := w.request.Files["run"]; !dropped {
		return
	}
	run := canner.Run{Schedule: s, Altitude: s.Altitude, Gauge: gauge, MaxGap: typed[time.Duration](w, "maxGap").Value}
	for _, m := range moments(&run.Marks) {
		*m.at = typed[time.Duration](w, m.name)
	}
	var report canner.Report
	var points []chart.Point
	var unit string
	var err error
	switch w.request.Values["record"] {
	case "pressure":
		log, ok := record[units.Pressure](w, "run")
		if !ok {
			return
		}
		report, err = canner.Audit(run, log.Series)
		points, unit = curveOf(log.Series, w.request.System)
	case "temperature":
		log, ok := record[units.Temperature](w, "run")
		if !ok {
			return
		}
		report, err = canner.Audit(run, log.Series)
		points, unit = curveOf(log.Series, w.request.System)
	default:
		w.wrong("record", units.UnsetError{What: "what was recorded"})
		return
	}
	if err != nil {
		w.refuse(err, "maxGap")
		return
	}
	w.reported(report)
	w.drawRun(report, points, unit)
}

// reported writes the verdict of a run, the stretch that counts and what to do.
func (w *writer) reported(r canner.Report) {
	w.judge(r.Report, w.Headline)
	w.figure("held without a break", down(w, r.Held.Length())+" of "+units.Lasting(r.Process)+" at "+r.Required.Text(w.request.System, units.Up)+" or above")
	w.figure("the stretch that counts", minutesOf(r.Held))
	w.figure("largest gap between readings", up(w, r.LargestGap.Length())+", believed up to "+units.Lasting(r.MaxGap))
	if r.Clock != (canner.Clock{}) {
		w.figure("still owed", up(w, r.Clock.Owed))
	}
	for _, step := range r.Next {
		w.do(step.Text, step.Citation)
	}
}

// minutesOf is a stretch in minutes of the record.
func minutesOf(s series.Stretch) string {
	if s.From == s.To {
		return "none"
	}
	return "from " + units.Lasting(s.From.Round(time.Second)) + " to " + units.Lasting(s.To.Round(time.Second)) + " of the record"
}
