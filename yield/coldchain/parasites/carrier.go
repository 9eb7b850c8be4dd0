package parasites

import (
	"strings"

	"example.org/lakelarder/units/cite"
)

// Carrier is one published statement that a fish carries a parasite harmful to people. Comparable.
type Carrier struct {
	Fish     string // empty: several families, not named fish by fish
	Parasite string
	Waters   string
	Note     string
	Citation cite.Citation
}

// Carriers returns the statements in the order of the sources; the slice is the caller's own. That a fish or a water is
// not among them does not say that it is free of parasites.
func Carriers() []Carrier { return append([]Carrier(nil), carrierTable[:]...) }

// FindCarriers returns the statements about a fish, by its name in capitals or not, first those that name it, then
// those of the Great Lakes that name no fish and so may mean any. It is never empty: no lake fish is known here to be
// free of parasites.
func FindCarriers(fish string) []Carrier {
	var named, general []Carrier
	for _, c := range carrierTable {
		switch {
		case c.Fish == "":
			general = append(general, c)
		case strings.EqualFold(c.Fish, strings.TrimSpace(fish)):
			named = append(named, c)
		}
	}
	return append(named, general...)
}
