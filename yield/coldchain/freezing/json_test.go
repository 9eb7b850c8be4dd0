package freezing_test

import (
	"encoding/json"
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/freezing"
	"example.org/lakelarder/yield/coldchain/internal/logged"
)

func TestResultsComeBack(t *testing.T) {
	for _, c := range []float64{-40, -2, 0, 20} {
		thermal, err := leanFish().Thermal(units.Celsius(c))
		require.NoError(t, err)
		logged.Back(t, thermal)
	}
	flesh := leanFish()
	logged.Back(t, flesh)
	flesh.Law, flesh.Bound = freezing.TchigeovIce, units.State(5*units.Percent)
	logged.Back(t, flesh)
	piece := filletPack(t)
	logged.Back(t, piece)
	plank, err := piece.Plank()
	require.NoError(t, err)
	logged.Back(t, plank)
	times, err := piece.Between(piece.Film/2, 2*piece.Film)
	require.NoError(t, err)
	logged.Back(t, times)
	for _, f := range freezing.Fishes() {
		require.NotEmpty(t, f.Name)
	}
}

// A law that is not stated counts as the ideal one, and says so.
func TestLawNotStated(t *testing.T) {
	flesh := leanFish()
	flesh.Law = 0
	not, err := flesh.Thermal(units.Celsius(-18))
	require.NoError(t, err)
	flesh.Law = freezing.IdealIce
	ideal, err := flesh.Thermal(units.Celsius(-18))
	require.NoError(t, err)
	require.Equal(t, ideal, not)
}

func TestFleshJSONRefuses(t *testing.T) {
	const lean = `"water": "80 %", "protein": "18 %", "fat": "1 %"`
	logged.Unreadable(t, freezing.Flesh{Ash: units.Percent}, map[string]string{
		`{` + lean + `}`:                                        "freezesAt",
		`{` + lean + `, "freezesAt": "-1"}`:                     "freezesAt",
		`{` + lean + `, "freezesAt": "-1 °C", "law": "Raoult"}`: "law",
		`{` + lean + `, "freezesAt": "-1 °C", "salt": "1 %"}`:   "salt",
		`{"water": 80, "protein": "18 %", "fat": "1 %"}`:        "water",
		`{` + lean + `, "water": "79 %", "freezesAt": "-1 °C"}`: "water",
		`{` + lean + `, "freezesAt": null}`:                     "freezesAt",
	})
	logged.Unreadable(t, freezing.Load{Held: units.Pound}, map[string]string{
		`{"room": "15 gal"}`:             "catch",
		`{"catch": "40 lb"}`:             "room",
		`{"room": 15, "catch": "40 lb"}`: "room",
	})
}

func TestGolden(t *testing.T) {
	piece := filletPack(t)
	times, err := piece.Between(piece.Film/2, 2*piece.Film)
	require.NoError(t, err)
	logged.Golden(t, "freezing-flesh", leanFish())
	logged.Golden(t, "freezing-piece", piece)
	logged.Golden(t, "freezing-range", times)
	thermal, err := leanFish().Thermal(units.Celsius(-18))
	require.NoError(t, err)
	logged.Golden(t, "freezing-thermal", thermal)
	loads, err := freezing.Plan(freezing.Load{Room: 7 * units.CubicFoot, Catch: 40 * units.Pound})
	require.NoError(t, err)
	logged.Golden(t, "freezing-loads", loads)
}

// A number without a unit is a few sixteenths of a nanogram.
func TestUnitLeftOut(t *testing.T) {
	room := 7 * units.CubicFoot
	for name, load := range map[string]freezing.Load{
		"catch": {Room: room, Catch: 40}, "catch a hair below a gram": {Room: room, Catch: units.Gram - 1},
		"held": {Room: room, Held: 40, Catch: units.Pound}, "room": {Room: 7, Catch: units.Pound},
	} {
		_, err := freezing.Plan(load)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	_, err := freezing.Plan(freezing.Load{Room: room, Held: units.Gram, Catch: units.Gram})
	require.NoError(t, err)
}

func ExampleRange() {
	saved, err := json.Marshal(freezing.Range{High: freezing.Time{Time: 5 * time.Hour}})
	fmt.Println(string(saved), err)
	// Output: {"high":{"time":"5 h"}} <nil>
}
