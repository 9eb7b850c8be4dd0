package brine

import (
	"strings"

	"example.org/lakelarder/units"
)

// Weighings returns every printed weighing, in printed order, the ones in use first for each name. The rows of one
// name do not agree with each other: 48 teaspoons of table salt weigh 288 g, the cup 292 g. The slice is the
// caller's own. Source: USDA SR28, weight table.
func Weighings() []Ingredient { return append([]Ingredient(nil), weighings[:]...) }

// Ingredients returns the weighing in use for each published name. Table salt goes by the teaspoon, its lightest
// row, which is the safe side both ways: a dose measured out is never short, a volume already used is never
// overrated. Sugars and honey go by the cup, which carries the most digits. Source: USDA SR28, weight table.
func Ingredients() []Ingredient {
	var used []Ingredient
	for _, w := range weighings {
		if n := len(used); n == 0 || used[n-1].Name != w.Name {
			used = append(used, w)
		}
	}
	return used
}

// FindIngredient returns the weighing in use for exactly this name, letter case and outer space aside; Ingredients
// has the names. Any other name, every coarse, flaked, sea or pickling salt among them, is a units.UnknownError: no
// weight per volume is published for it, and a quarter cup of seven salts weighed from 33.2 g to 76.0 g. Weigh it:
// WeighedSalt.
func FindIngredient(name string) (Ingredient, error) {
	for _, w := range weighings {
		if w.Name == fold(name) {
			return w, nil
		}
	}
	unknown := units.UnknownError{What: "ingredient with a published weight", Got: name}
	for _, used := range Ingredients() {
		unknown.Known = append(unknown.Known, used.Name)
	}
	return Ingredient{}, unknown
}

func fold(name string) string { return strings.ToLower(strings.TrimSpace(name)) }
