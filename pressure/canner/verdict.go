package canner

import "strconv"

// Verdict is what a record says about a run. The zero Verdict is CannotTell.
type Verdict uint8

// The verdicts. Only Met is a pass: what the record does not show counts as not done.
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

// worse returns the graver of two verdicts: NotMet, then CannotTell, then Met.
func (v Verdict) worse(u Verdict) Verdict {
	switch {
	case v == NotMet || u == NotMet:
		return NotMet
	case v == Met:
		return u
	}
	return v
}
