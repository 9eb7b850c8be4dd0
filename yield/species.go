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

var speciesNames = word.List{What: "species", Words: []string{
	"no species", "salmon", "chinook", "chum", "coho", "pink", "sockeye", "Atlantic salmon", "steelhead", "rainbow trout",
	"brown trout", "brook trout", "lake trout", "lake whitefish", "cisco", "rainbow smelt", "walleye", "yellow perch", "pike",
	"bluegill", "black crappie", "bass", "sablefish", "fish", "fatty fish", "other fish",
}}

// ParseSpecies reads the word that String writes, in capitals or not; anything else is a
// units.ParseError that lists the words.
func ParseSpecies(s string) (Species, error) {
	v, err := speciesNames.Parse(s)
	return Species(v), err
}

// String is the word that ParseSpecies reads; "no species" when it is not set.
func (s Species) String() string { return speciesNames.Of(uint8(s)) }

// MarshalText is String as bytes, empty when the species is not set; an unknown one is an error.
func (s Species) MarshalText() ([]byte, error) { return speciesNames.Marshal(uint8(s)) }

// UnmarshalText is ParseSpecies, and the empty text is a species that is not set.
func (s *Species) UnmarshalText(text []byte) error { return speciesNames.Unmarshal(text, (*uint8)(s)) }
