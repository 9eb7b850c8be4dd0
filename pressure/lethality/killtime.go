package lethality

import (
	"math"
	"time"

	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// KillTable is a published table of times that give a number of log10 reductions at one held temperature.
type KillTable uint8

// The tables. The zero KillTable is not stated.
const (
	BotulinumA4    KillTable = iota + 1 // non-proteolytic C. botulinum, US FDA table A-4: z 7 K below 90 °C
	BotulinumUK                         // non-proteolytic C. botulinum, UK: z 9 K below 90 °C
	ListeriaA3                          // L. monocytogenes, US FDA table A-3
	ListeriaUK                          // L. monocytogenes, UK short list
	Salmonella1999                      // Salmonella in cooked beef, FSIS 1999, superseded: meat, not fish
)

var killTables = word.List[KillTable]{What: "kill table", Words: []string{
	"non-proteolytic botulinum, US FDA A-4", "non-proteolytic botulinum, UK", "Listeria, US FDA A-3",
	"Listeria, UK short list", "Salmonella in cooked beef, FSIS 1999",
}}

// ParseKillTable reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseKillTable(s string) (KillTable, error) { return killTables.Parse(s) }

// String is the table in words: "Listeria, US FDA A-3".
func (k KillTable) String() string { return killTables.Of(k) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (k KillTable) MarshalText() ([]byte, error) { return killTables.Marshal(k) }

// UnmarshalText is ParseKillTable, and the empty text is one that is not set.
func (k *KillTable) UnmarshalText(text []byte) error { return killTables.Unmarshal(text, k) }

// Citation is where the table is from, the zero Citation for none.
func (k KillTable) Citation() cite.Citation {
	switch k {
	case BotulinumA4:
		return cite.Citation{Source: cite.FDAHazardsGuide2020, Where: "Appendix 4, table A-4, p. 423", Basis: cite.Read}
	case BotulinumUK:
		return cite.Citation{Source: cite.FSAVacuumTraining, Where: "module 3, section 2", Basis: cite.Read}
	case ListeriaA3:
		return cite.Citation{Source: cite.FDAHazardsGuide2020, Where: "Appendix 4, table A-3, p. 422", Basis: cite.Read}
	case ListeriaUK:
		return cite.Citation{Source: cite.FSAListeriaShortList, Where: "equivalents of 70 C for 2 minutes, as quoted in training pages", Basis: cite.Quoted}
	case Salmonella1999:
		return cite.Citation{Source: cite.FSISAppendixA1999, Where: "compliance table", Basis: cite.Read}
	}
	return cite.Citation{}
}

// Cautions returns what must be known before a time of the table is used, in a fresh slice.
func (k KillTable) Cautions() []cite.Caution {
	switch k {
	case BotulinumA4, BotulinumUK:
		keepCold := cite.Caution{
			ID: "lethality.keep-cold", Text: "It is pasteurised, not sterile. " +
				"Keep it cold or frozen.", Deciding: true, Citation: k.Citation(),
		}
		cautions := []cite.Caution{moistOnly, keepCold}
		if k == BotulinumUK {
			cautions = append(cautions, strictTable)
		}
		return cautions
	case ListeriaA3, ListeriaUK:
		return []cite.Caution{{
			ID: "lethality.leaves-spores",
			Text: "This is for Listeria, at the coldest spot. " +
				"It leaves spores alive: keep the food cold or frozen.",
			Deciding: true, Citation: k.Citation(),
		}}
	case Salmonella1999:
		return []cite.Caution{{
			ID: "lethality.superseded",
			Text: "This is for cooked beef and not for fish. " +
				"Later revisions supersede it and ask for humidity as well.",
			Deciding: true, Citation: k.Citation(),
		}, {
			ID:       "lethality.at-once",
			Text:     "0 s means at once when that temperature is reached, which is not no heat.",
			Citation: k.Citation(),
		}}
	}
	return nil
}

var (
	moistOnly = cite.Caution{
		ID: "lethality.moist-only",
		Text: "This is for spores in moist heat and without lysozyme, at the coldest spot. " +
			"In dry smoke a core temperature says nothing of spores.",
		Deciding: true, Citation: drySmokeCitation(),
	}
	strictTable = cite.Caution{
		ID: "lethality.stricter-table", Text: "Below 90 °C the US table asks for more time. " +
			"Go by that.", Deciding: true,
		Citation: BotulinumA4.Citation(),
	}
)

// KillTime is one printed row: the time at a held temperature that gives the log10 reductions. A zero Time was
// printed as 0 s: the heat is instantaneous there, not nought.
type KillTime struct {
	Table       KillTable
	Temperature units.Temperature
	Time        time.Duration `wire:"always"`
	Reductions  Logs
	Citation    cite.Citation
	Cautions    []cite.Caution
}

type degree uint8

const (
	celsius degree = iota
	fahrenheit
)

const (
	minutes = float64(time.Minute)
	seconds = float64(time.Second)
)

type printedKill struct {
	table   KillTable
	degrees float64
	scale   degree
	time    float64
	unit    float64
	logs    float64
}

func (p printedKill) temperature() units.Temperature {
	if p.scale == fahrenheit {
		return units.Fahrenheit(p.degrees)
	}
	return units.Celsius(p.degrees)
}

func (p printedKill) row() KillTime {
	logs, _ := numberOf(p.logs)
	return KillTime{p.table, p.temperature(), time.Duration(math.Round(p.time * p.unit)), Logs(logs), p.table.Citation(), p.table.Cautions()}
}

// KillTimes returns every printed row of every table, in a fresh slice. Nothing lies between two rows: the tables are
// looked up, never interpolated.
func KillTimes() []KillTime {
	all := make([]KillTime, len(killTimes))
	for i, p := range killTimes {
		all[i] = p.row()
	}
	return all
}

// KillTimesAt returns the printed rows of exactly that temperature for a target, the longest time first, which is the
// one to go by: the UK and US figures differ. No row is an empty slice; the nearest row is never given instead.
func KillTimesAt(t units.Temperature, tables ...KillTable) []KillTime {
	found := []KillTime{}
	for _, p := range killTimes {
		if p.temperature() != t || !listed(tables, p.table) {
			continue
		}
		row := p.row()
		at := len(found)
		for at > 0 && found[at-1].Time < row.Time {
			at--
		}
		found = append(found, KillTime{})
		copy(found[at+1:], found[at:])
		found[at] = row
	}
	return found
}

func listed(tables []KillTable, table KillTable) bool {
	for _, one := range tables {
		if one == table {
			return true
		}
	}
	return false
}
