package conformance

import (
	"strconv"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

var cannerExempt = map[string]string{"Load.Cautions": sources}

func cannerGrid(r *results) {
	jarGrid(r)
	for seed := int64(1); seed <= 24; seed++ {
		auditGrid(r, seed)
	}
}

func jarGrid(r *results) {
	r.sweep("FindPacking", canner.FindPacking, stepped(1, 40, 1, 1))
	r.sweep("JarSizes", canner.JarSizes)
	for _, jar := range canner.JarSizes() {
		of := these(jar)
		r.sweep("FindJarSize", canner.FindJarSize, these(jar.Name))
		cuts := r.sweep("JarSize.Cut", canner.JarSize.Cut, of, these(units.Inch, 3*units.Inch/4))
		r.sweep("Cut.Pieces", canner.Cut.Pieces, cuts, stepped(18, 33, 5, units.Inch), these(65*units.Percent))
		r.sweep("JarSize.CheckFill", canner.JarSize.CheckFill, of, these(8*units.Ounce, units.Pound), these(units.Inch), these(canner.FleshDensity))
		for _, gauge := range []process.Gauge{process.Dial, process.Weighted} {
			schedule, err := process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: jar.Jar, Gauge: gauge, Altitude: units.State(4_350 * units.Foot)})
			if err != nil {
				continue
			}
			cycles := r.sweep("CycleOf", canner.CycleOf, these(schedule))
			r.sweep("Cycle.Day", canner.Cycle.Day, cycles, these(2, 5), these(1, 2), these(20*time.Minute))
			r.sweep("Gauge.Setting", canner.Gauge.Setting, these(canner.Gauge{}, canner.Gauge{ReadsHigh: 3 * units.PSI / 2}), these(schedule))
			for inches := units.Length(10); inches <= 15; inches++ {
				loads := r.sweep("Fit", canner.Fit, these(schedule), these(canner.Vessel{
					Diameter: inches * units.Inch, Height: 12 * units.Inch, Rack: units.Inch / 2, Divider: units.Inch / 8, Capacity: 22 * units.Quart,
				}), of, these(units.Length(0), units.Millimetre))
				r.sweep("Load.Loads", canner.Load.Loads, loads, these(30, 71))
			}
		}
	}
}

// boiled is an invented run: pressures up, held with a wander, and down.
func boiled(r *results, seed int64) series.Series[units.Pressure] {
	var readings []series.Reading[units.Pressure]
	for minute, state := int64(0), seed; minute <= 170; minute += 2 {
		state = (state*1_103_515_245 + 12_345) % (1 << 31)
		p := 13*units.PSI + units.Pressure(state/1024%9-3)*units.PSI/10
		switch {
		case minute < 20:
			p = 0
		case minute < 30:
			p = units.Pressure(minute-20) * 13 * units.PSI / 10
		case minute > 132:
			p = max(0, 13*units.PSI-units.Pressure(minute-132)*units.PSI/3)
		}
		readings = append(readings, series.Reading[units.Pressure]{At: time.Duration(minute) * time.Minute, Value: p})
	}
	s, err := series.New(readings)
	require.NoError(r.t, err)
	return s
}

func auditGrid(r *results, seed int64) {
	gauge := process.Gauge(1 + seed%2)
	schedule, err := process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: gauge, Altitude: units.State(units.Length(100*seed) * units.Foot)})
	require.NoError(r.t, err)
	minute := func(n int64) units.Stated[time.Duration] { return units.State(time.Duration(n) * time.Minute) }
	run := canner.Run{
		Schedule: schedule, Altitude: schedule.Altitude, MaxGap: 5 * time.Minute,
		Marks: canner.Marks{SteadySteam: minute(5), VentClosed: minute(16), HeatOff: minute(131)},
	}
	pressures := boiled(r, seed)
	name := strconv.FormatInt(seed, 10)
	report, err := canner.Audit(run, pressures)
	r.add("Audit", err, one(report), name)
	for _, rule := range []verdict.Rule{"canner.hold", "canner.vent", "canner.sag"} {
		step, found := report.StepFor(rule)
		r.add("Report.StepFor", nil, []any{step.At, found}, name, rule)
	}
	temperatures, err := canner.Audit(run, zigzag(r, 60, seed))
	r.add("Audit", err, one(temperatures), name, "temperatures")
	var absolute []series.Reading[units.Pressure]
	var steam []series.Reading[units.Temperature]
	for i, reading := range pressures.Readings() {
		absolute = append(absolute, series.Reading[units.Pressure]{At: reading.At, Value: reading.Value + 14*units.PSI})
		steam = append(steam, series.Reading[units.Temperature]{At: reading.At, Value: units.Celsius(float64(90 + i%30))})
	}
	of, err := series.New(absolute)
	require.NoError(r.t, err)
	report, err = canner.AuditAbsolute(run, of)
	r.add("AuditAbsolute", err, one(report), name)
	inside, err := series.New(steam)
	require.NoError(r.t, err)
	both, err := canner.AuditBoth(run, pressures, inside)
	r.add("AuditBoth", err, one(both), name)
	liveGrid(r, run, pressures, name)
}

func liveGrid(r *results, run canner.Run, pressures series.Series[units.Pressure], name string) {
	marks := run.Marks
	run.Marks = canner.Marks{}
	live, err := canner.Watch[units.Pressure](run)
	r.add("Watch", err, one(live.Clock()), name)
	for i, reading := range pressures.Readings() {
		live, err = live.Next(reading)
		if i%20 == 19 {
			r.add("Live.Next", err, one(live.Clock()), name, reading)
			r.add("Live.Clock", nil, one(live.Clock()), name, reading)
			r.add("Live.Now", nil, one(live.Now()), name, reading)
			r.add("Live.LargestGap", nil, one(live.LargestGap()), name, reading)
			report, ok := live.Report()
			r.add("Live.Report", nil, []any{report, ok}, name, reading)
		}
		switch reading.At {
		case 4 * time.Minute:
			live, err = live.Mark(canner.Marks{SteadySteam: marks.SteadySteam})
			r.add("Live.Mark", err, one(live.Clock()), name, reading)
		case 16 * time.Minute:
			live, err = live.Mark(canner.Marks{SteadySteam: marks.SteadySteam, VentClosed: marks.VentClosed})
			r.add("Live.Mark", err, one(live.Clock()), name, reading)
		}
	}
}
