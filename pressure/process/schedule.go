package process

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Schedule is one published process: what it is for, the altitudes it holds at, and its figures, each with its citation.
// Find returns it with the altitude that it was found for, nothing else builds it. Schedules are comparable; the zero
// Schedule is no process.
type Schedule struct {
	Product  Product
	Pack     Pack
	Jar      Jar
	Gauge    Gauge
	Altitude units.Stated[units.Length] // that it was found for, not given in Schedules
	Band     Band

	Pressure  units.Pressure // on the gauge, at least this during the whole process
	Process   time.Duration  // at pressure, without a break
	Citation  cite.Citation  // of Pressure and Process
	Extension bool           // not in the official tables: see FindExtension

	Vent           time.Duration // steady steam from the open vent, before closing it
	VentCitation   cite.Citation
	ComeUp         time.Duration // least time of heating and venting together; zero when none is printed
	ComeUpCitation cite.Citation

	Headspace         units.Length
	HeadspaceCitation cite.Citation
	Water             Water
	WaterCitation     cite.Citation
}

// Water is what goes into the canner under the jars. Where a volume is printed it is Volume; elsewhere
// the print gives a depth, from Shallow to Deep, and Volume is zero.
type Water struct {
	Volume  units.Volume
	AtLeast bool // never less than Volume, more is allowed; false: Volume whatever the number of jars
	Shallow units.Length
	Deep    units.Length
}

// MarshalJSON writes the schedule as an app shows it.
func (s Schedule) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads what MarshalJSON writes, strictly. Only IsPublished says whether a schedule that was read is one
// of the tables.
func (s *Schedule) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// Request is what finds this schedule.
func (s Schedule) Request() Request {
	return Request{Product: s.Product, Pack: s.Pack, Jar: s.Jar, Gauge: s.Gauge, Altitude: s.Altitude}
}

// IsPublished reports whether the schedule is, figure by figure, the one that Find or FindExtension returns for its
// Request: one that was built or changed by hand is not.
func (s Schedule) IsPublished() bool {
	find := Find
	if s.Extension {
		find = FindExtension
	}
	found, err := find(s.Request())
	return err == nil && found == s
}

// Unverified reports whether a figure of the schedule was not seen in print: one given from memory or
// from practice, or the setting of an Extension. Show it to whoever is going to can by it.
func (s Schedule) Unverified() bool {
	for _, c := range [...]cite.Citation{s.Citation, s.VentCitation, s.HeadspaceCitation, s.WaterCitation} {
		if c.Unverified() {
			return true
		}
	}
	return s.Extension || s.ComeUp != 0 && s.ComeUpCitation.Unverified()
}

// Schedules returns every process of the official tables, one for each printed row and altitude band, in
// the order of the guide. The slice is the caller's own.
func Schedules() []Schedule {
	var all []Schedule
	for _, table := range tables {
		for i := range table {
			for _, cell := range table[i].settings {
				cell := cell
				all = append(all, table[i].schedule(&cell, units.Stated[units.Length]{}))
			}
		}
	}
	return all
}

// schedule is the row in one of its bands, with the procedure that belongs to its load.
func (r *row) schedule(cell *setting, altitude units.Stated[units.Length]) Schedule {
	s := Schedule{
		Product: r.product, Pack: r.pack, Jar: r.jar, Gauge: r.gauge, Altitude: altitude, Band: cell.band,
		Pressure: cell.pressure, Process: r.process, Citation: r.citation,
		Vent: ventTime, VentCitation: ventSource,
		Headspace: headspace, HeadspaceCitation: packing(r.product, r.jar),
	}
	s.Water, s.WaterCitation = waterOf(r.product, r.jar)
	if r.jar == Quart {
		s.ComeUp, s.ComeUpCitation = quartComeUp, quartProcedure
	}
	return s
}
