package yield

import "example.org/lakelarder/internal/word"

// Species is the fish that a source speaks of, as narrowly as it does: a share printed for salmon is not
// one for coho. The zero Species is not set.
type Species uint8

// The species with a published figure here.
const (
	Salmon Species = iota + 1 // all salmon together, as statistics count them
	Chinook
	Chum
	Coho
	Pink
	Sockeye
	AtlanticSalmon
	Steelhead
	RainbowTrout
	BrownTrout
	BrookTrout
	LakeTrout
	LakeWhitefish
	Cisco // also called chub
	RainbowSmelt
	Walleye
	YellowPerch
	Pike // northern pike and pike-perch are not told apart in the source
	Bluegill
	BlackCrappie
	Bass // smallmouth and largemouth
	Sablefish
	Fish      // fish in general
	FattyFish // fat-rich fish, salmon and trout among them
	OtherFish // other fish, perch and freshwater fish among them
)

var speciesNames = word.List[Species]{What: "species", Words: []string{
	"salmon", "chinook", "chum", "coho", "pink", "sockeye", "Atlantic salmon", "steelhead", "rainbow trout",
	"brown trout", "brook trout", "lake trout", "lake whitefish", "cisco", "rainbow smelt", "walleye", "yellow perch", "pike",
	"bluegill", "black crappie", "bass", "sablefish", "fish", "fatty fish", "other fish",
}}

// ParseSpecies reads the word that String writes, in capitals or not; anything else is a
// units.UnknownError that lists the words.
func ParseSpecies(s string) (Species, error) {
	return speciesNames.Parse(s)
}

// String is the word that ParseSpecies reads; "not stated" when it is not set.
func (s Species) String() string { return speciesNames.Of(s) }

// MarshalText is String as bytes, empty when the species is not set; an unknown one is an error.
func (s Species) MarshalText() ([]byte, error) { return speciesNames.Marshal(s) }

// UnmarshalText is ParseSpecies, and the empty text is a species that is not set.
func (s *Species) UnmarshalText(text []byte) error { return speciesNames.Unmarshal(text, s) }
