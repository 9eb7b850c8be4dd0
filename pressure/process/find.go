package process

import "example.org/lakelarder/units"

// Find returns the official process for the request: the printed row, in the altitude band that holds the altitude. An
// altitude that is not stated is a units.UnsetError, one above zero and below a millimetre (a bare number) a
// units.UnitError; what the tables do not have is a NotPublishedError that names the part missing. No altitude below 0 ft
// is in a table (and a lost sign must not give the lowest setting), none above 8,000 ft on a dial gauge; a weighted one
// is followed up to Ceiling. Nothing is rounded. Source: USDA Complete Guide to Home Canning, Guide 5, rev. 2015.
func Find(r Request) (Schedule, error) {
	line, err := lookUp(r)
	if err != nil {
		return Schedule{}, err
	}
	if cell := line.at(r.Altitude.Value); cell != nil {
		return line.schedule(cell, r.Altitude), nil
	}
	return Schedule{}, noBand(r)
}

// FindExtension returns the process with 15 psi on a dial gauge above 8,000 ft up to Ceiling. It is in no USDA table: an
// extension service's rule (University of Minnesota, reviewed 2024) carried on by one band, with the minutes of the
// official row. Find never returns it, and the result says Extension. Any other altitude or gauge is a
// NotPublishedError, an altitude that is not stated a units.UnsetError. Ask the local extension service before relying
// on it.
func FindExtension(r Request) (Schedule, error) {
	line, err := lookUp(r)
	if err != nil {
		return Schedule{}, err
	}
	switch {
	case r.Gauge != Dial:
		return Schedule{}, NotPublishedError{Request: r, Missing: MissingGauge,
			Stated: "the extension rule is for dial gauges; weighted gauges have official tables"}
	case !extension.band.Contains(r.Altitude.Value):
		return Schedule{}, NotPublishedError{Request: r, Missing: MissingAltitude,
			Stated: "the extension rule is for altitudes " + extension.band.String() + "; up to there Find has the official tables"}
	}
	cell := extension
	s := line.schedule(&cell, r.Altitude)
	s.Citation, s.Extension = extensionRule, true
	return s, nil
}

// lookUp returns the printed row for the request. The altitude must be stated; whether the row has it is for the caller.
func lookUp(r Request) (*row, error) {
	for _, table := range tables {
		for i := range table {
			line := &table[i]
			if line.product != r.Product || line.pack != r.Pack || line.jar != r.Jar || line.gauge != r.Gauge {
				continue
			}
			if !r.Altitude.Given {
				return nil, units.UnsetError{What: "altitude"}
			}
			return line, units.CheckUnit("altitude", max(0, r.Altitude.Value), leastAltitude)
		}
	}
	_, refusal := narrow(nil, r, false)
	return nil, *refusal
}

// at returns the cell of the row whose band holds the altitude, or nil.
func (r *row) at(altitude units.Length) *setting {
	if altitude > Ceiling {
		return nil
	}
	for i := range r.settings {
		if r.settings[i].band.Contains(altitude) {
			return &r.settings[i]
		}
	}
	return nil
}
