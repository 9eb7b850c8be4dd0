package yield

import "example.org/lakelarder/internal/word"

// Stage is how far a fish has been dressed, or a part that was taken off it. The zero Stage is not set.
type Stage uint8

// The stages with a published figure here, and after them the parts. A word means what its source means by
// it; where that is not told, the note of the share says so.
const (
	Live           Stage = iota + 1 // swimming: more than the round weight by what starving and bleeding take
	Round                           // whole, as caught
	Bled                            // whole, bled
	Gutted                          // head on
	Headed                          // gutted, head off
	Dressed                         // gutted and usually headed; sources differ
	CanningReady                    // head, tail, fins and collar off, bones in
	Steaks                          // cut across, bones and skin in
	Fillet                          // the source does not say whether the skin is on
	SkinOnFillet                    // skin on, off the bone
	SkinlessFillet                  // skin off
	BonelessFillet                  // skin and pin bones out
	Edible                          // what the source calls edible
	Salted                          // wet salted or brined
	Head                            // a part
	Viscera                         // a part
	Gonad                           // a part: roe or milt
)

var stageNames = word.List[Stage]{What: "stage", Words: []string{
	"live", "round", "bled", "gutted", "headed", "dressed", "canning-ready", "steaks", "fillet", "skin-on fillet",
	"skinless fillet", "boneless fillet", "edible", "salted", "head", "viscera", "gonad",
}}

// ParseStage reads the word that String writes, in capitals or not; anything else is a
// units.UnknownError that lists the words.
func ParseStage(s string) (Stage, error) {
	return stageNames.Parse(s)
}

// String is the word that ParseStage reads; "not stated" when it is not set.
func (s Stage) String() string { return stageNames.Of(s) }

// MarshalText is String as bytes, empty when the stage is not set; an unknown one is an error.
func (s Stage) MarshalText() ([]byte, error) { return stageNames.Marshal(s) }

// UnmarshalText is ParseStage, and the empty text is a stage that is not set.
func (s *Stage) UnmarshalText(text []byte) error { return stageNames.Unmarshal(text, s) }

// IsPart reports whether it is a part taken off the fish, whose share is not of what is left.
func (s Stage) IsPart() bool { return s >= Head && s <= Gonad }
