package spoilage

import "example.org/lakelarder/units/cite"

// belly is whether a source says that the fish was gutted.
type belly uint8

const (
	notStated belly = iota
	gutted
	whole
)

// lifeRow is one printed life on ice, in tenths of a day.
type lifeRow struct {
	fish      string
	waters    string
	belly     belly
	low, high int64
	citation  cite.Citation
	note      string
}

var (
	livesBySpecies = cite.Citation{Source: cite.FAO348, Where: "species table", Basis: cite.Recalled}
	livesByStore   = cite.Citation{Source: cite.FAO348, Where: "table 6.1", Basis: cite.Recalled}
	livesAsTaught  = cite.Citation{
		Source: cite.FAO348, Where: "as paraphrased in a textbook chapter", Basis: cite.Read,
	}
	livesOfTrout     = cite.Citation{Source: cite.Erikson2018, Where: "abstract", Basis: cite.Read}
	livesOfRedfish   = cite.Citation{Source: cite.GermanRedfishStudy, Where: "abstract", Basis: cite.Read}
	livesAsInIceland = cite.Citation{Source: cite.IcelandicFishHandling, Where: "ice rules", Basis: cite.Read}
)

const (
	temperate = "temperate"
	tropical  = "tropical"
)

// lifeTable is the days in ice until fish is no longer eaten.
var lifeTable = [...]lifeRow{
	{"salmon", "", notStated, 118, 118, livesByStore, "at 0 °C; 8.0 days at 5 °C and 3.0 at 10 °C beside it"},
	{"sea bream", "", notStated, 320, 320, livesByStore, "at 0 °C; 8.0 days at 10 °C beside it"},
	{"packed cod", "", notStated, 140, 140, livesByStore, "at 0 °C; 6 days at 5 °C and 3 at 10 °C beside it"},
	{"trout", temperate, notStated, 90, 110, livesBySpecies, ""},
	{"trout", tropical, notStated, 160, 240, livesBySpecies, ""},
	{"perch", temperate, notStated, 80, 170, livesBySpecies, ""},
	{"perch", tropical, notStated, 130, 320, livesBySpecies, ""},
	{"catfish", temperate, notStated, 120, 130, livesBySpecies, ""},
	{"catfish", tropical, notStated, 150, 270, livesBySpecies, ""},
	{"carp", tropical, notStated, 160, 210, livesBySpecies, ""},
	{"cod", temperate, notStated, 90, 150, livesBySpecies, ""},
	{"haddock", temperate, notStated, 90, 150, livesBySpecies, ""},
	{"whiting", temperate, notStated, 70, 90, livesBySpecies, ""},
	{"mackerel", temperate, notStated, 40, 190, livesBySpecies, ""},
	{"herring", "", notStated, 20, 60, livesBySpecies, "of summer"},
	{"herring", "", notStated, 70, 120, livesBySpecies, "of winter"},
	{"halibut", "", notStated, 210, 240, livesBySpecies, ""},
	{"marine fish", temperate, notStated, 20, 210, livesAsTaught, "of all species"},
	{"freshwater fish", temperate, notStated, 90, 200, livesAsTaught, "of all species"},
	{"marine fish", tropical, notStated, 120, 350, livesAsTaught, "of all species"},
	{"freshwater fish", tropical, notStated, 60, 400, livesAsTaught, "of all species"},
	{"rainbow trout", "", gutted, 210, 210, livesOfTrout, "three weeks"},
	{"rainbow trout", "", whole, 140, 140, livesOfTrout, "two weeks"},
	{"redfish", "", notStated, 160, 190, livesOfRedfish, "in ice, in a store of 4 to 5 °C"},
	{"redfish", "", notStated, 220, 220, livesOfRedfish, "in ice, in a hold of 0.5 °C"},
	{"cod", "", gutted, 150, 150, livesAsInIceland, "fresh for the first 8 to 9 days"},
}
