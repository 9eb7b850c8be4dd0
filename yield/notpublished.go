package yield

import "strings"

// Missing is the part of a request for which nothing is published. The zero Missing is none.
type Missing uint8

// The parts of a request.
const (
	MissingSpecies Missing = iota + 1
	MissingStage
	MissingWeight
	MissingLengthWeight
)

// String is the part in few words: "species", "stage", "mean weight" or "weight at a length".
func (m Missing) String() string {
	switch m {
	case MissingSpecies:
		return "species"
	case MissingStage:
		return "stage"
	case MissingWeight:
		return "mean weight"
	case MissingLengthWeight:
		return "weight at a length"
	}
	return "nothing"
}

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
