package main

import (
	"bytes"
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/trial"
	"example.org/lakelarder/units"
)

var program = trial.Program(run)

func TestPages(t *testing.T) {
	for _, system := range []string{"us", "metric", "both"} {
		page := program.Printed(t, "-units", system)
		trial.Page(t, page, 40)
		trial.Golden(t, trial.Answer(page), "testdata/"+system+".txt")
		if system != "both" {
			trial.System(t, page, system, "reservoir at 4,350 ft")
		}
		trial.Contains(t, page, "Invented for demonstration", "asked for by the limit", "at or below 38 °F",
			"1.43 % (2.51 %) 4.38 %")
	}
	trial.Contains(t, program.Printed(t, "-units", "metric"), "36.8 g", "of only these ingredients")
	trial.Contains(t, program.Printed(t, "-sources"), "\nSOURCES\n[1] ")
}

func TestByHand(t *testing.T) {
	page := program.Printed(t, "-math")
	trial.ByHand(t, page, 22)
	trial.Contains(t, page, "S = M × d / 100 = 1020.582833 × 3.6 / 100 = 36.741 g", "= 19.115 g", "= 1.430 %",
		"= 5.590 %")
	long, err := program.Changed(t, []string{"fillets.json"}, []string{"-math"},
		trial.Change{"fillets.json", `"36 h"`, `"240 h"`})
	require.NoError(t, err)
	trial.ByHand(t, long, 22)
	trial.Contains(t, long, "All of the salt is in before")
}

func TestHelp(t *testing.T) { trial.Help(t, program) }

func TestPicture(t *testing.T) {
	for _, system := range []string{"us", "metric"} {
		picture := trial.Picture(t, program, "-units", system)
		trial.Contains(t, picture, "Salt in chinook A, left", "after 9 h: ", "after 36 h: 2.5 % on average")
	}
}

// The picture's profile is the library's: at the skin its CoreUptake, on average its Uptake.
func TestProfile(t *testing.T) {
	slab := brine.Slab{Thickness: 20 * units.Millimetre, Faces: brine.OneFace}
	d := brine.FleshDiffusivity().High
	for _, after := range []time.Duration{2 * time.Hour, 12 * time.Hour, 200 * time.Hour} {
		fo := fourier(d, after, slab.Thickness)
		core, err := slab.CoreUptake(d, after)
		require.NoError(t, err)
		require.InDelta(t, units.Float(core, units.One), profile(fo, 0), 1e-9)
		mean, err := slab.Uptake(d, after)
		require.NoError(t, err)
		sum := 0.0
		for i := 0; i < 10_000; i++ {
			sum += profile(fo, (float64(i)+0.5)/10_000)
		}
		require.InDelta(t, units.Float(mean, units.One), sum/10_000, 1e-6)
		require.InDelta(t, 1, profile(fo, 1), 1e-9)
	}
	require.InDelta(t, 26.395, share(1), 1e-9)
	require.False(t, math.IsNaN(share(0)))
}

// A dose that cannot reach the limit, however long the fish lies, is named.
func TestNotEnough(t *testing.T) {
	out, err := program.Changed(t, []string{"fillets.json"}, []string{"-units", "metric"},
		trial.Change{"fillets.json", `"36 g/kg"`, `"15 g/kg"`})
	require.NoError(t, err)
	trial.Contains(t, out,
		"chinook A, left: 14.2 g of salt kept, 19.2 g asked for by the limit: NOT ENOUGH, however long it lies")
}

// TestBroken: one clear message naming the field or the line, and nothing printed before it.
func TestBroken(t *testing.T) {
	for _, c := range []struct{ old, new, message string }{
		{`"2 lb 4 oz"`, `"2 lb 4"`, "cannot read \"2 lb 4\" as a mass"},
		{`"2 lb 4 oz"`, `"0 lb"`, "fillet 1: fillet 0"},
		{`"1 1/4 in"`, `"40 in"`, "fillets[0] (chinook A, left): thickness"},
		{`"71.64 %"`, `"100 %"`, "fillets[0] (chinook A, left): water of the raw fish"},
		{`"36 g/kg"`, `"36"`, "cannot read \"36\" as a ratio"},
		{`"36 g/kg"`, `"200 %"`, "salt to fish 200 % is out of range"},
		{`"36 h"`, `"0 h"`, "cure.time: expected more than 0 h"},
		{`"36 h"`, `"241 h"`, "no more than 240 h"},
		{`"36 h"`, `36`, "fillets.json: line 10: cure.time: expected text with a unit"},
		{`"perLayer": 2`, `"perLayer": 0`, "fillets to a layer 0"},
		{`"table salt"`, `"sea salt"`, "salt: "},
		{`"15 %"`, `"80 %"`, "fillets[0] (chinook A, left): water lost in drying"},
		{`"200 %"`, `"-1 %"`, "cure.sugarToSalt: "},
		{`"title"`, `"headline"`, "headline: unknown field"},
		{`"name": "chinook A, left", `, ``, "fillets[0].name: it is required"},
		{`"perLayer": 2`, `"perLayer": 2,`, "fillets.json: line"},
	} {
		out, err := program.Changed(t, []string{"fillets.json"}, nil, trial.Change{"fillets.json", c.old, c.new})
		require.ErrorContains(t, err, c.message)
		require.NotContains(t, err.Error(), "\n")
		require.Empty(t, out)
	}
	for _, args := range [][]string{{"-units", "furlongs"}, {"-in", "none.json"}, {"stray"}} {
		var out bytes.Buffer
		require.Error(t, run(args, &out))
		require.Empty(t, out.String())
	}
}
