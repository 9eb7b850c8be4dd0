package cite

import (
	"fmt"
	"strings"
)

// IncompleteError says what a citation lacks.
type IncompleteError struct {
	Citation Citation
	Reason   string // what was expected
}

// Error repeats the citation and says what was expected of it.
func (e IncompleteError) Error() string {
	return fmt.Sprintf("citation %q is incomplete: %s", shortened(e.Citation.String()), e.Reason)
}

// longestQuoted is how many bytes of a faulty text an error repeats.
const longestQuoted = 120

// shortened cuts a faulty text to what an error message can bear.
func shortened(s string) string {
	if len(s) <= longestQuoted {
		return s
	}
	return strings.ToValidUTF8(s[:longestQuoted], "") + "..."
}

// ContradictionError says that a citation names one document by its key and another in words.
type ContradictionError struct {
	Source   Source
	Document string // the words
}

// Error quotes the words, and says which document the source is.
func (e ContradictionError) Error() string {
	if e.Source == 0 {
		return fmt.Sprintf("the document %q stands without the key of its source", shortened(e.Document))
	}
	return fmt.Sprintf("the document %q is not that of the source %s, which is %q",
		shortened(e.Document), e.Source.Key(), shortened(e.Source.String()))
}
