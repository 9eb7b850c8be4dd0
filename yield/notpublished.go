package yield

import (
	"errors"
	"strings"

	"example.org/lakelarder/internal/word"
)

// ErrNotPublished is what errors.Is finds in every NotPublishedError and in every CompositionError.
var ErrNotPublished = errors.New("no figure is published")

// Missing is the part of a request for which nothing is published. The zero Missing is not stated.
type Missing uint8

// The parts of a request.
const (
	MissingSpecies Missing = iota + 1
	MissingStage
	MissingWeight
	MissingLengthWeight
)

var missings = word.List[Missing]{
	What: "part of a request", Words: []string{"species", "stage", "mean weight", "weight at a length"},
}

// ParseMissing reads the word that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseMissing(s string) (Missing, error) { return missings.Parse(s) }

// String is the part in few words: "mean weight".
func (m Missing) String() string { return missings.Of(m) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (m Missing) MarshalText() ([]byte, error) { return missings.Marshal(m) }

// UnmarshalText is ParseMissing, and the empty text is one that is not set.
func (m *Missing) UnmarshalText(text []byte) error { return missings.Unmarshal(text, m) }

// NotPublishedError says that no figure is published here for what was asked. Missing is the part that ran
// out, Stated what is published there: the stages of the species, or the species. No other species or
// stage is offered in its place.
type NotPublishedError struct {
	Species Species
	Stage   Stage
	Missing Missing
	Stated  []string
}

// Error says what is not published and what is.
func (e NotPublishedError) Error() string {
	stated := "published are: " + strings.Join(e.Stated, ", ")
	if len(e.Stated) == 0 {
		stated = "nothing is published here"
	}
	switch e.Missing {
	case MissingWeight, MissingLengthWeight:
		return "no " + e.Missing.String() + " is published for " + e.Species.String() + "; " + stated
	case MissingStage:
		return "no share of the whole fish is published for " + e.Species.String() + ", " + e.Stage.String() + "; " + stated
	}
	return "no share is published for " + e.Species.String() + "; " + stated
}

// Is reports whether target is ErrNotPublished.
func (e NotPublishedError) Is(target error) bool { return target == ErrNotPublished }
