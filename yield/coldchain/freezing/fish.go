package freezing

import (
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Fish is what a table prints on the freezing of one fish: where it begins, the specific heat before and after, and the
// latent heat, which is that of all its water. What a table leaves out is zero. Comparable.
type Fish struct {
	Name          string
	FreezesAt     units.Temperature
	Before, After units.SpecificHeat
	Latent        units.SpecificEnergy
	Note          string
	Citation      cite.Citation
}

// Fishes returns the printed rows; the slice is the caller's own. They do not agree on where fish begins to freeze, and
// only an analysis of the fish at hand would tell: the colder figure makes freezing longer.
func Fishes() []Fish { return append([]Fish(nil), fishTable[:]...) }

// FindFish returns the row of a fish by its printed name, in capitals or not; anything else is a units.UnknownError
// that lists the names.
func FindFish(name string) (Fish, error) {
	names := make([]string, len(fishTable))
	for i, f := range fishTable {
		if strings.EqualFold(f.Name, strings.TrimSpace(name)) {
			return f, nil
		}
		names[i] = f.Name
	}
	return Fish{}, units.UnknownError{What: "fish with a freezing point", Got: name, Known: names}
}
