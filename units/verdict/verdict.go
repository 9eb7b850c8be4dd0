package verdict

import (
	"strconv"

	"example.org/lakelarder/units"
)

// Verdict is the outcome of a judgement. The zero Verdict is CannotTell, which is no pass. A greater Verdict is worse.
type Verdict int8

// The verdicts, from the best to the worst.
const (
	Met          Verdict = -2 // everything that decides is there, and as published
	More         Verdict = -1 // met, and something is more than published, which is not better
	CannotTell   Verdict = 0  // something that decides is missing, or contradicts the rest
	Differs      Verdict = 1  // another figure than published, which a person must look at
	NotMet       Verdict = 2  // less than published, or warmer, or longer
	NotPublished Verdict = 3  // nothing is published to judge by
)

var words = [...]string{"met", "more", "cannot tell", "differs", "not met", "not published"}

// String is the verdict in words: "not met".
func (v Verdict) String() string {
	if Met <= v && v <= NotPublished {
		return words[v-Met]
	}
	return "verdict(" + strconv.Itoa(int(v)) + ")"
}

// Passes reports whether the verdict is a pass: Met or More.
func (v Verdict) Passes() bool { return v == Met || v == More }

// Worst returns the worst of the verdicts.
func Worst(first Verdict, more ...Verdict) Verdict {
	for _, v := range more {
		first = max(first, v)
	}
	return first
}

// Parse reads the words that String writes; anything else, the empty text included, is a units.UnknownError.
func Parse(s string) (Verdict, error) {
	for i, word := range words {
		if word == s {
			return Met + Verdict(i), nil
		}
	}
	return CannotTell, units.UnknownError{What: "verdict", Got: s, Known: words[:]}
}

// MarshalText is String as bytes; a value that is no verdict is a units.UnknownError.
func (v Verdict) MarshalText() ([]byte, error) {
	if v < Met || v > NotPublished {
		return nil, units.UnknownError{What: "verdict", Got: v.String(), Known: words[:]}
	}
	return []byte(v.String()), nil
}

// UnmarshalText is Parse; on an error the value stays as it was.
func (v *Verdict) UnmarshalText(text []byte) error {
	read, err := Parse(string(text))
	if err == nil {
		*v = read
	}
	return err
}
