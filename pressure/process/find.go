package process

import "example.org/lakelarder/units"

// Ceiling is the altitude above which nothing is looked up. The weighted-gauge tables are printed without an
// upper limit, but a few hundred feet above 10,000 ft steam under 15 lb falls below 240 °F (computed from
// the US Standard Atmosphere 1976 and IAPWS-IF97), and no source speaks of canning fish up there.
const Ceiling = 10_000 * units.Foot

// Find returns the official process for the request: the printed row, in the altitude band that holds the
// altitude. What the tables do not have is a NotPublishedError that names the part missing. No altitude
// below 0 ft is in a table (and a lost sign must not give the lowest setting), none above 8,000 ft on a dial
// gauge; a weighted one is followed up to Ceiling. Nothing is rounded. Source: USDA Complete Guide to Home
// Canning, Guide 5, rev. 2015.
func Find(r Request) (Schedule, error) {
	line := lookUp(r)
	if line == nil {
		_, refusal := narrow(r, false)
		return Schedule{}, *refusal
	}
	if r.Altitude <= Ceiling {
		for i := range line.settings {
			if line.settings[i].band.Contains(r.Altitude) {
				return line.schedule(line.settings[i]), nil
			}
		}
	}
	return Schedule{}, noBand(r)
}

// FindExtension returns the process with 15 psi on a dial gauge above 8,000 ft up to Ceiling. It is in no
// USDA table: an extension service's rule (University of Minnesota, reviewed 2024) carried on by one band, with
// the minutes of the official row. Find never returns it, and the result says Extension. Any other altitude or
// gauge is a NotPublishedError. Ask the local extension service before relying on it.
func FindExtension(r Request) (Schedule, error) {
	line := lookUp(r)
	switch {
	case line == nil:
		_, refusal := narrow(r, false)
		return Schedule{}, *refusal
	case r.Gauge != Dial:
		return Schedule{}, NotPublishedError{Request: r, Missing: MissingGauge,
			Stated: "the extension rule is for dial gauges; weighted gauges have official tables"}
	case !extension.band.Contains(r.Altitude):
		return Schedule{}, NotPublishedError{Request: r, Missing: MissingAltitude,
			Stated: "the extension rule is for altitudes " + extension.band.String() + "; up to there Find has the official tables"}
	}
	s := line.schedule(extension)
	s.Citation, s.Extension = extensionRule, true
	return s, nil
}

// lookUp returns the printed row for the request, or nil.
func lookUp(r Request) *row {
	for _, table := range tables {
		for i := range table {
			line := &table[i]
			if line.product == r.Product && line.pack == r.Pack && line.jar == r.Jar && line.gauge == r.Gauge {
				return line
			}
		}
	}
	return nil
}
