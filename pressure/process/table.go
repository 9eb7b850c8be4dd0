package process

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// head is the head of an altitude column, in feet as printed.
type head struct{ low, high int }

// above is the high of a column headed "Above".
const above = -1

var (
	dialHeads     = []head{{0, 2000}, {2001, 4000}, {4001, 6000}, {6001, 8000}}
	weightedHeads = []head{{0, 1000}, {1001, above}} // "Above 1,000 ft"
)

// setting is one cell of a printed row: a pressure and the band it holds in.
type setting struct {
	band     Band
	pressure units.Pressure
}

// row is one printed row: a load on one kind of gauge, its minutes, and its pressure in every band.
type row struct {
	product  Product
	pack     Pack
	jar      Jar
	gauge    Gauge
	process  time.Duration
	settings []setting
	citation cite.Citation
}

// printed turns the bare integers of a printed row into a row: minutes, then pounds under each head.
func printed(product Product, pack Pack, jar Jar, gauge Gauge, minutes int, pounds []int, citation cite.Citation) row {
	heads := dialHeads
	if gauge == Weighted {
		heads = weightedHeads
	}
	r := row{
		product: product, pack: pack, jar: jar, gauge: gauge,
		process: time.Duration(minutes) * time.Minute, citation: citation,
	}
	for i, lb := range pounds {
		r.settings = append(r.settings, setting{band: heads[i].band(), pressure: units.Pressure(lb) * units.PSI})
	}
	return r
}

// band closes the gap of a foot that the printed heads leave: 2,001 ft starts above 2,000 ft.
func (h head) band() Band {
	b := Band{UpTo: NoLimit}
	if h.high != above {
		b.UpTo = units.Length(h.high) * units.Foot
	}
	if h.low > 0 {
		b.Over = units.Length(h.low-1) * units.Foot
	}
	return b
}

// tables are the printed tables, in the order of the guide.
var tables = [...][]row{fishTable, quartTable, smokedTable, tunaTable}
