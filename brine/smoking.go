package brine

import "strconv"

// Smoking is how fish is smoked, as far as a rule says so. The zero Smoking is not stated, and a rule with it holds for both.
type Smoking uint8

// Hot-smoked fish is cooked in the smoke, cold-smoked fish stays raw.
const (
	SmokingNotStated Smoking = iota
	HotSmoked
	ColdSmoked
)

// String is the smoking in words: "hot-smoked".
func (s Smoking) String() string {
	switch s {
	case SmokingNotStated:
		return "smoking not stated"
	case HotSmoked:
		return "hot-smoked"
	case ColdSmoked:
		return "cold-smoked"
	}
	return "Smoking(" + strconv.Itoa(int(s)) + ")"
}
