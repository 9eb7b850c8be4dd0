package brine

import (
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// NitriteError says that a mix asks for nitrite, nitrate or a curing salt that holds them. Nothing here doses them:
// a factor of ten is dangerous, a kitchen scale makes one easily, and fish at home needs none: it is held to the
// limits without.
type NitriteError struct {
	Name string
}

// Error names the ingredient and the reason.
func (e NitriteError) Error() string {
	return "\"" + e.Name + "\" is not dosed here: " +
		"nitrite and nitrate wrong by a factor of ten are dangerous, and fish at home needs none"
}

// nitriteWords are what such an ingredient is called, in lower case.
var nitriteWords = [...]string{
	"nitrite", "nitrate", "saltpeter", "saltpetre", "curing salt", "pink salt", "cure #", "cure no",
	"e250", "e251", "e252",
}

func isNitrite(name string) bool {
	for _, w := range nitriteWords {
		if strings.Contains(fold(name), w) {
			return true
		}
	}
	return false
}

// NitriteLimit is a published limit of sodium nitrite or nitrate in finished fish, for reading a label; none is a
// dose. Least is 0 where only a most is printed.
type NitriteLimit struct {
	ID          string
	Salt        string // "sodium nitrite"
	Least, Most units.Ratio
	Fish        string
	Citation    cite.Citation
}

// NitriteLimits returns the published limits. Trout is in none of them. The slice is the caller's own.
func NitriteLimits() []NitriteLimit { return append([]NitriteLimit(nil), nitriteLimits[:]...) }
