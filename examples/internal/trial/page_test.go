package trial

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const sound = "VERDICT: MET\n11 psi at 4350 ft\n\nCAUTIONS\n- Boil it. (demo.boil)\n- At 240 °F (116 °C). (demo.heat) [1]\n\nSources: 1 document\n"

func TestPage(t *testing.T) {
	Page(t, sound, 4)
	System(t, sound, "us")
	System(t, "RESULT: 1 kPa, a pint jar, 14 in the last\n", "metric")
	System(t, "RESULT: read as value in °F\n3 in a layer, column 2 in psi\n", "metric", "3 in a layer", "column 2 in")
	ByHand(t, "    x: 2 m, given\n    y = x + 1 = 2 + 1 = 3 m\n", 1)
	Golden(t, strings.Repeat("x\n", 50), written(t, strings.Repeat("x\n", 40)))
	Golden(t, "a\nb", written(t, "a\nb"))
}

func TestPageRefuses(t *testing.T) {
	for want, what := range map[string]func(t testing.TB){
		"5 lines before":        func(t testing.TB) { Page(t, strings.Replace(sound, "\n\n", "\na\nb\nc\n\n", 1), 4) },
		`the first line is "11`: func(t testing.TB) { Page(t, strings.TrimPrefix(sound, "VERDICT: MET\n"), 4) },
		"101 columns":           func(t testing.TB) { Page(t, sound+strings.Repeat("x", 101), 4) },
		"demo.boil stands":      func(t testing.TB) { Page(t, strings.Replace(sound, "demo.heat", "demo.boil", 1), 4) },
		"no caution has":        func(t testing.TB) { Page(t, "VERDICT: MET\n\nCAUTIONS\nnone\n\nSources: 1\n", 4) },
		"0 lines of sources":    func(t testing.TB) { Page(t, "VERDICT: MET\n", 4) },
		`prints "4 in"`:         func(t testing.TB) { System(t, "14 in and 3 jars", "metric") },
		`prints "1 psi"`:        func(t testing.TB) { System(t, "11 psi", "metric") },
		`prints "1 kPa"`:        func(t testing.TB) { System(t, "11 kPa", "us") },
		`prints "7 F°"`:         func(t testing.TB) { System(t, "7 F° more", "metric") },
		`prints "4 °C"`:         func(t testing.TB) { System(t, "4 °C", "us") },
		"by hand: ":             func(t testing.TB) { ByHand(t, "    y = 2 + 1 = 4 m\n", 1) },
		"1 lines by hand":       func(t testing.TB) { ByHand(t, "    y = 2 + 1 = 2 + 1 = 3 m\n", 2) },
		"wanted:":               func(t testing.TB) { Golden(t, "a", written(t, "b")) },
	} {
		require.Contains(t, fails(t, what), want)
	}
}
