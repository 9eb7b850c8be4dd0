package conformance

import (
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

var processExempt = map[string]string{"NotPublishedError.Is": faults, "Schedule.Cautions": sources, "Schedule.Unverified": sources}

func processGrid(r *results) {
	r.sweep("Schedules", process.Schedules)
	r.sweep("BoilBeforeEating", process.BoilBeforeEating, stepped(0, 10_000, 700, units.Foot))
	r.sweep("Jar.Volume", process.Jar.Volume, kinds(process.Quart))
	for feet := units.Length(8_100); feet <= 10_000; feet += 400 {
		r.sweep("FindExtension", process.FindExtension, these(process.Request{
			Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial, Altitude: units.State(feet * units.Foot),
		}))
	}
	for _, s := range process.Schedules() {
		for feet := units.Length(0); feet <= 10_000; feet += 1_234 {
			altitude := feet*units.Foot + 7*units.Foot/10
			r.sweep("Band.Contains", process.Band.Contains, these(s.Band), these(altitude))
			if !s.Band.Contains(altitude) {
				continue
			}
			request := process.Request{Product: s.Product, Pack: s.Pack, Jar: s.Jar, Gauge: s.Gauge, Altitude: units.State(altitude)}
			found := r.sweep("Find", process.Find, these(request))
			r.sweep("Schedule.Request", process.Schedule.Request, found)
			r.sweep("Schedule.IsPublished", process.Schedule.IsPublished, found)
			air, err := pressure.AirAt(altitude)
			require.NoError(r.t, err)
			r.sweep("Schedule.Margin", process.Schedule.Margin, found, these(air))
			r.sweep("Check", process.Check, these(process.Claim{
				Product: s.Product, Pack: s.Pack, Jar: s.Jar, Gauge: s.Gauge, Altitude: units.State(altitude), Pressure: units.State(s.Pressure - units.PSI),
				Process: units.State(s.Process + 7*time.Second), Vent: units.State(10 * time.Minute),
			}))
		}
	}
}
