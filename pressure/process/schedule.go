package process

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Schedule is one published process: what it is for, the altitudes it holds at, and its figures, each
// with its citation. Find returns it, nothing builds it. Schedules are comparable; the zero Schedule is
// no process.
type Schedule struct {
	Product Product
	Pack    Pack
	Jar     Jar
	Gauge   Gauge
	Band    Band

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

// Request is what finds this schedule at the given altitude.
func (s Schedule) Request(altitude units.Length) Request {
	return Request{Product: s.Product, Pack: s.Pack, Jar: s.Jar, Gauge: s.Gauge, Altitude: altitude}
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
				all = append(all, table[i].schedule(cell))
			}
		}
	}
	return all
}

// schedule is the row in one of its bands, with the procedure that belongs to its load.
func (r *row) schedule(cell setting) Schedule {
	s := Schedule{
		Product: r.product, Pack: r.pack, Jar: r.jar, Gauge: r.gauge, Band: cell.band,
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
