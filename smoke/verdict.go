package smoke

import "strconv"

// Verdict is what a record says about a hold. The zero Verdict is CannotTell.
type Verdict uint8

// The verdicts. Only Met is a pass: CannotTell means that the hold would be long enough if nothing happened while
// nobody looked.
const (
	CannotTell Verdict = iota
	NotMet
	Met
)

// String is the verdict in words: "cannot tell".
func (v Verdict) String() string {
	switch v {
	case CannotTell:
		return "cannot tell"
	case NotMet:
		return "not met"
	case Met:
		return "met"
	}
	return "Verdict(" + strconv.Itoa(int(v)) + ")"
}
