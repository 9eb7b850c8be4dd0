package process

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Ceiling is the altitude above which nothing is looked up. The weighted-gauge tables are printed without an
// upper limit, but a few hundred feet above 10,000 ft steam under 15 lb falls below 240 °F (computed from
// the US Standard Atmosphere 1976 and IAPWS-IF97), and no source speaks of canning fish up there.
const Ceiling = 10_000 * units.Foot

// lastDial is where the dial-gauge tables end.
const lastDial = 8_000 * units.Foot

// Find returns the official process for the request: the printed row in the altitude band that holds the
// altitude. What the tables do not have is a NotPublishedError that names the part missing: any altitude
// below 0 ft (no table has one, and a lost sign must not give the lowest setting), above 8,000 ft on a
// dial gauge, above Ceiling on a weighted one. Nothing is rounded. Source: USDA Complete Guide to Home
// Canning, Guide 5, rev. 2015.
func Find(r Request) (Schedule, error) {
	line := find(r)
	if line == nil {
		return Schedule{}, refusal(r)
	}
	if r.Altitude <= Ceiling {
		for i := range line.settings {
			if line.settings[i].band.Contains(r.Altitude) {
				return line.schedule(line.settings[i]), nil
			}
		}
	}
	return Schedule{}, NotPublishedError{Request: r, Missing: MissingAltitude, Stated: altitudes(r)}
}

// extensionSetting is the dial rule of 1 psi more for each further 2,000 ft, carried on by one band.
var (
	extensionSetting  = setting{band: Band{Over: lastDial, UpTo: Ceiling}, pressure: 15 * units.PSI}
	extensionCitation = cite.Citation{
		Source: cite.MinnesotaCanningGuides2024,
		Where:  "its rule, 11 psi to 2,000 ft and 1 psi more for each further 2,000 ft, carried on to 10,000 ft",
		Basis:  cite.Computed,
	}
)

// FindExtension returns the process with 15 psi on a dial gauge above 8,000 ft up to Ceiling. It is in no
// USDA table: an extension service's rule (University of Minnesota, reviewed 2024) carried on by one band, with
// the minutes of the official row. Find never returns it, and the result says Extension. Any other altitude or
// gauge is a NotPublishedError. Ask the local extension service before relying on it.
func FindExtension(r Request) (Schedule, error) {
	line := find(r)
	switch {
	case line == nil:
		return Schedule{}, refusal(r)
	case r.Gauge != Dial:
		return Schedule{}, NotPublishedError{Request: r, Missing: MissingGauge,
			Stated: "the extension rule is for dial gauges; the weighted-gauge tables are official and have no upper limit"}
	case !extensionSetting.band.Contains(r.Altitude):
		return Schedule{}, NotPublishedError{Request: r, Missing: MissingAltitude,
			Stated: "the extension rule is for altitudes " + extensionSetting.band.String() + "; up to 8,000 ft there are official tables"}
	}
	s := line.schedule(extensionSetting)
	s.Citation, s.Extension = extensionCitation, true
	return s, nil
}

// find returns the printed row for the request, or nil.
func find(r Request) *row {
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

// refusal names the first part of the request that no row has.
func refusal(r Request) error {
	e := NotPublishedError{Request: r}
	switch {
	case len(have(r, 0)) == 0:
		e.Missing, e.Stated = MissingProduct, "the tables are for "+list(productNames.words[1:], "and")
	case len(have(r, 1)) == 0:
		e.Missing, e.Stated = MissingPack, r.Product.String()+" is packed "+list(have(r, 0), "or")
	case len(have(r, 2)) == 0:
		e.Missing, e.Stated = MissingJar, "the jars with a process for it are "+list(have(r, 1), "and")
	default:
		e.Missing, e.Stated = MissingGauge, "the tables are for "+list(have(r, 2), "and")+" gauges"
	}
	return e
}

// have returns the words found one level below the part of the request that is matched: with 0 the packs
// of the product, with 1 the jars of product and pack, with 2 the gauges of the jar too.
func have(r Request, depth int) []string {
	var words []string
	add := func(word string) {
		for _, w := range words {
			if w == word {
				return
			}
		}
		words = append(words, word)
	}
	for _, table := range tables {
		for i := range table {
			line := &table[i]
			switch {
			case line.product != r.Product || depth > 0 && line.pack != r.Pack || depth > 1 && line.jar != r.Jar:
			case depth == 0:
				add(line.pack.String())
			case depth == 1:
				add(line.jar.String())
			default:
				add(line.gauge.String())
			}
		}
	}
	return words
}

// altitudes says in words where the tables end.
func altitudes(r Request) string {
	switch {
	case r.Altitude < 0:
		return "the tables start at 0 ft"
	case r.Gauge == Weighted:
		return "the tables are not carried above 10,000 ft, where 15 lb no longer gives 240 °F with any margin"
	}
	return "the dial-gauge tables end at 8,000 ft"
}
