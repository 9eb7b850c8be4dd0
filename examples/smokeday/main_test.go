package main

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/examples/internal/trial"
	"example.org/lakelarder/units"
)

var program = trial.Program(run)

func TestDemo(t *testing.T) {
	us := program.Printed(t, "-units", "us")
	trial.Page(t, us, 40)
	trial.System(t, us, "us")
	trial.Contains(t, us, "VERDICT: NOT MET: core at least 180 °F for 30 min (HOT-180-MSU, the strictest home rule)\n", "Why: core, probe 2: 176.8 °F recorded, at least 180 °F published, too cold by 3.2 F°",
		"(13:58 to 14:13); not met", "not met; the longest hold was 23 min", "STILL OWED when it was taken out at 14:15: 29 min. Now it is out, all 30 min are owed again.",
		"By the alternative named, core at least 160 °F for 30 min (HOT-160-PNW)", ": met; the longest hold was 71 min", "Cooled in time (COOL-2-4) [10]: met",
		"Invented for demonstration", "at 4,350 ft", "Until 16:15 it may go into an oven", "Who goes by HOT-160-PNW keeps it, air pack: at or below 36 °F", "at most 14 days",
		"Not into jars", "15 psi for 110 min", "\n13:45         baste\n", "Before the smoke begins it loses 1.89 oz to 5.66 oz: no more than a pellicle takes", "surface taken to be dry after 1 h", "The plan fits",
		"Later than the slowest case of the plan, 13:14: A B.", "At 10:57 the air stood at 225 °F and the coldest core at 77.9 °F, 147.1 F° below it.", "A sum of separate spells is no hold",
		"69.8 °F to 39.2 °F: met", "one in a million left, 2.0 min there are published [", "THAT IS NO PASS", "Clostridium botulinum survives", "expects a loss of 2.86 lb to 6.67 lb", "Weighed: 8.63 lb, a loss of 28.1 %: within the range",
		"a water phase salt of 2.7 % before the smoking and 4.2 % to 13.5 % after it",
		// By hand: 68 % of 192 oz is 130.56 oz of water, 54 oz of it lost; 3.75/(3.75 + 76.56) is 4.67 %, cut.
		"By the weighing: 4.6 %.", "The strictest published least is 3.5 %", "core.csv read as time in column 1")
	metric := program.Printed(t, "-units", "metric", "-sources")
	trial.Page(t, metric, 40)
	trial.System(t, metric, "metric", "in °F", "(°F)", "13:14 in the")
	trial.Contains(t, metric, "1,325.9 m", "core at least 82.2 °C for 30 min", "81.7 C° below it", "Weighed: 3.91 kg",
		"103.5 kPa", "(recalled: check the document before relying on it)")
}

func TestGolden(t *testing.T) {
	for _, system := range []string{"us", "metric", "both"} {
		trial.Golden(t, trial.Answer(program.Printed(t, "-units", system)), "testdata/"+system+".txt")
	}
}

func TestByHand(t *testing.T) {
	trial.ByHand(t, program.Printed(t, "-math", "-units", "metric"), 13)
	text := program.Printed(t, "-math")
	trial.ByHand(t, text, 14)
	trial.Contains(t, text, "held = to − from", "so that it is the wet bulb", "wps = salt / (salt + water)")
}

func TestHelp(t *testing.T) { trial.Help(t, program) }

// TestContradiction: a core that is hotter than the smoker's air ever was is not believed.
func TestContradiction(t *testing.T) {
	good := cores(3, [2]float64{0, 40}, [2]float64{300, 183}, [2]float64{335, 190}, [2]float64{375, 184},
		[2]float64{455, 60}, [2]float64{600, 36}, [2]float64{700, 35})
	out, err := changed(t, nil, good, coldAir())
	require.NoError(t, err)
	trial.Page(t, out, 45)
	require.Contains(t, strings.SplitN(out, "\n", 2)[0], "VERDICT: CANNOT TELL")
	trial.Contains(t, out, "Why: core, probe 1: 190 °F (87.8 °C) recorded, at most", "impossible")
}

// coldAir is a record of the smoker in which nothing gets hot.
func coldAir() [3]string {
	text := "time (min),air (°F)\n"
	for at := 0; at <= 700; at += 5 {
		text += fmt.Sprintf("%d,%d\n", at, map[bool]int{true: 150, false: 36}[at < 400])
	}
	return [3]string{"air.csv", "", text}
}

// TestCut: what must be reached is never rounded up to its limit.
func TestCut(t *testing.T) {
	require.Equal(t, "179.9", bare(&sheet.Sheet{}, units.Fahrenheit(179.97)))
	require.Equal(t, "3.4 %", cut(3499*units.PerMille/100))
	require.Equal(t, "29 min", held(29*time.Minute+59*time.Second))
	require.Equal(t, "61 min", owed(time.Hour+time.Second))
}

// changed copies the demo input with texts replaced, a whole file where old is empty, and runs on it.
func changed(t *testing.T, args []string, replacements ...[3]string) (string, error) {
	t.Helper()
	return program.Changed(t, []string{"smokeday.json", "core.csv", "air.csv"}, args, replacements...)
}

// cores is a record of two probes in minutes and °F, the second as many degrees colder.
func cores(colder float64, points ...[2]float64) [3]string {
	text := "time (min),thick (°F),thin (°F)\n"
	for i, p := range points {
		for at := p[0]; i+1 < len(points) && at < points[i+1][0]; at += 5 {
			f := p[1] + (points[i+1][1]-p[1])*(at-p[0])/(points[i+1][0]-p[0])
			text += fmt.Sprintf("%g,%.2f,%.2f\n", at, f, f-colder)
		}
	}
	return [3]string{"core.csv", "", text}
}

var stillIn = [3]string{"smokeday.json", `"takenOut": "14:15"`, `"takenOut": ""`}

// noAir is for fish that goes where the smoker's air was not recorded.
var noAir = [3]string{"smokeday.json", `"air.csv"`, `""`}

// TestStillSmoking: the same program while the fish is in the smoker.
func TestStillSmoking(t *testing.T) {
	picture := filepath.Join(t.TempDir(), "now.svg")
	out, err := changed(t, []string{"-svg", picture}, stillIn, cores(2, [2]float64{0, 40}, [2]float64{330, 182},
		[2]float64{347, 190}))
	require.NoError(t, err)
	trial.Contains(t, out, "VERDICT: NOT MET", "STILL OWED: 15 min without a break, every probe at least 180 °F",
		"Leave it in the heat", "Not yet: the fish is still in the smoker",
		"Only once a hold is met and the fish has cooled in time is it kept", "Not into jars")
	wellFormed(t, picture, 6)
}

// TestGap: a straight line across a gap in which the fish was taken out owes no less.
func TestGap(t *testing.T) {
	out, err := changed(t, nil, [3]string{"core.csv", "",
		"time (min),core (°F)\n0,40\n300,170\n355,182\n360,184\n365,185\n385,186\n390,150\n"})
	require.NoError(t, err)
	trial.Contains(t, out, "VERDICT: CANNOT TELL", "STILL OWED when it was taken out at 14:15: 20 min.", "not observed")
}

// TestMet: the hold without the dip.
func TestMet(t *testing.T) {
	good := cores(3, [2]float64{0, 40}, [2]float64{300, 183}, [2]float64{335, 190}, [2]float64{375, 184},
		[2]float64{455, 60}, [2]float64{600, 36}, [2]float64{700, 35})
	out, err := changed(t, nil, good)
	require.NoError(t, err)
	trial.Contains(t, out, "VERDICT: MET: ", "Cooled in time (COOL-2-4)", "Do: Keep it, air pack: at or below 36 °F")
	require.NotContains(t, out, "STILL OWED")
	out, err = changed(t, nil, good, [3]string{"smokeday.json", `"pack": "air"`, `"pack": "vacuum"`})
	require.NoError(t, err)
	trial.Contains(t, out, "Do: Keep it, low-oxygen pack: frozen, tonight")
	out, err = changed(t, nil, good, [3]string{"smokeday.json", `"pack": "air"`, `"pack": ""`})
	require.NoError(t, err)
	trial.Contains(t, out, "Do: Keep it, not stated: frozen, tonight")
}

// TestStillCooling: taken out, and the record ends on the way down or before it.
func TestStillCooling(t *testing.T) {
	hot := [][2]float64{{0, 40}, {300, 183}, {375, 190}, {400, 141}, {450, 67.8}, {455, 66}}
	out, err := changed(t, nil, cores(0, hot...))
	require.NoError(t, err)
	trial.Contains(t, out, "VERDICT: CANNOT TELL: ", "Nobody can tell yet",
		"Only once a hold is met and the fish has cooled in time is it kept", "the record ends on the way, at 67.8 °F (19.9 °C): be there by 19:28")
	out, err = changed(t, nil, stillIn, cores(0, hot[0], hot[1], hot[2], [2]float64{380, 190}))
	require.NoError(t, err)
	trial.Contains(t, out, "VERDICT: MET: ", "The hold is met: take it out, and cool it at once",
		"Only once a hold is met and the fish has cooled in time is it kept")
	require.NotContains(t, out, "STILL OWED")
}

// TestWarmTooLong: hot enough, and then forgotten on the table.
func TestWarmTooLong(t *testing.T) {
	out, err := changed(t, nil, cores(3, [2]float64{0, 40}, [2]float64{300, 183}, [2]float64{375, 190},
		[2]float64{700, 75}, [2]float64{705, 70}))
	require.NoError(t, err)
	trial.Contains(t, out, "VERDICT: NOT MET: ", "It cooled too slowly (COOL-2-4)", "throw it out")
	require.NotContains(t, out, "Do: Keep it")
}

// TestOven: finished in an oven within two hours, or after an afternoon on the table.
func TestOven(t *testing.T) {
	day := func(table, top float64) [3]string {
		return cores(2, [2]float64{0, 40}, [2]float64{300, 150}, [2]float64{375, 155}, [2]float64{435, 147},
			[2]float64{435 + table, 144}, [2]float64{495 + table, top},
			[2]float64{540 + table, top + 4}, [2]float64{620 + table, 60}, [2]float64{760 + table,
				37}, [2]float64{770 + table, 36})
	}
	for top, keeps := range map[float64]string{184: "Do: Keep it, air pack",
		172: "Do: Who goes by HOT-160-PNW keeps it"} {
		out, err := changed(t, nil, day(30, top), noAir)
		require.NoError(t, err)
		trial.Contains(t, out, "Cooled in time", keeps)
		out, err = changed(t, nil, day(240, top), noAir)
		require.NoError(t, err)
		trial.Contains(t, out, "VERDICT: NOT MET", "time from the smoker to the oven",
			"Do: It was taken out at 14:15 and got warm again only after 19:", "it is not kept")
		require.NotContains(t, out, keeps)
	}
}

// TestOtherLimit: a rule for licensed processes is no permit at home.
func TestOtherLimit(t *testing.T) {
	out, err := changed(t, nil, [3]string{"smokeday.json", "HOT-160-PNW", "HOT-145-MI"})
	require.NoError(t, err)
	trial.Contains(t, out, "By the alternative named, core at least 145", "That HOT-145-MI is met is no help",
		"Only once a hold is met is it kept")
	require.NotContains(t, out, "Who goes by")
}

// TestJars: taken out before the cooking, the fish is lightly smoked, and its loss decides.
func TestJars(t *testing.T) {
	light := [][3]string{{"smokeday.json", `"takenOut": "14:15"`, `"takenOut": "10:15"`},
		cores(3, [2]float64{0, 40}, [2]float64{135, 72}, [2]float64{200, 36}, [2]float64{300, 36})}
	out, err := changed(t, nil, light...)
	require.NoError(t, err)
	trial.Contains(t, out, "VERDICT: NOT MET", "it is lightly smoked, raw fish, and no smoked fish to keep",
		"Not judged: the rules are for fish that was cooked", "Do: Into jars at 4,350 ft (1,325.9 m): pint jars, weighted gauge, 15 psi (103.5 kPa) for 110 min", "Its loss of 28.1 % lies within the tested 10 % to 30 %",
		"No jar larger than a pint", "4 quarts")
	out, err = changed(t, nil, append(light, [3]string{"smokeday.json", "8 lb 10 oz", "8 lb"})...)
	require.NoError(t, err)
	trial.Contains(t, out, "NOT THIS FISH: its loss of 33.3 % lies outside", "Do not can this fish")
	out, err = changed(t, nil, append(light, [3]string{"smokeday.json", `"weighed": "8 lb 10 oz",`, ``})...)
	require.NoError(t, err)
	trial.Contains(t, out, "Weigh it first")
	// Smoked longer than is remembered of a light smoke, the drying not counted; and cooked through by the smoke
	// itself.
	out, err = changed(t, nil, light[1], [3]string{"smokeday.json", `"takenOut": "14:15"`, `"takenOut": "11:15"`},
		[3]string{"smokeday.json", `"90 min"`, `"150 min"`})
	require.NoError(t, err)
	trial.Contains(t, out, "Do: Into jars", "NOT A LIGHT SMOKE: time in the smoker: 150 min stated, at most 2 h published, too long by 30 min")
	out, err = changed(t, nil, light[0], cores(3, [2]float64{0, 40}, [2]float64{130, 148}, [2]float64{300, 36}))
	require.NoError(t, err)
	trial.Contains(t, out, "Do: Not into jars", "this one was cooked")
	// Still in the smoke, it is not cooked yet.
	out, err = changed(t, nil, stillIn, cores(3, [2]float64{0, 40}, [2]float64{90, 60}))
	require.NoError(t, err)
	trial.Contains(t, out, "Leave it in the heat",
		"Do: It is not cooked yet. What is to go into jars is taken out before 10:15")
	require.NotContains(t, out, "was cooked")
}

// TestHumid: at 4,350 ft 225 °F air of 39 % humidity holds a wet surface below 180 °F, air of 40 % does not.
func TestHumid(t *testing.T) {
	wet := func(humidity string) [3]string {
		return [3]string{"smokeday.json", `"dryAfter": "1 h"`, `"humidity": "` + humidity + `"`}
	}
	_, err := changed(t, nil, wet("39 %"))
	require.ErrorContains(t, err, "stage 3 (cook): a wet surface in this air of 225 °F (107.2 °C) does not get above its wet bulb, 17")
	out, err := changed(t, nil, wet("40 %"))
	require.NoError(t, err)
	trial.Contains(t, out, "humidity measured 40 %", "THE PLAN DOES NOT FIT")
}

// TestLittleKnown: only the cores were recorded.
func TestLittleKnown(t *testing.T) {
	out, err := changed(t, nil, [3]string{"smokeday.json", `"air.csv"`, `""`}, [3]string{"smokeday.json",
		`"weighed": "8 lb 10 oz",`, ``}, [3]string{"smokeday.json", `"98 %",`, `"98 %"`}, [3]string{"smokeday.json", `"salt": "3.75 oz"`, ``},
		[3]string{"smokeday.json", `"pint"`, `""`}, [3]string{"smokeday.json", `"weighted"`,
			`""`}, [3]string{"smokeday.json", `"faces": "two faces"`, `"faces": "one face"`})
	require.NoError(t, err)
	trial.Contains(t, out, "VERDICT: NOT MET", "Air as planned", "By the model the core comes to 180 °F",
		"THE PLAN DOES NOT FIT")
	for _, absent := range []string{"jars", "Weighed", "water phase salt of", "the air stood at"} {
		day, _, _ := strings.Cut(out, "\nCAUTIONS")
		require.NotContains(t, day, absent)
	}
}

// TestLongDrying: two hours in the draught before the smoke.
func TestLongDrying(t *testing.T) {
	out, err := changed(t, nil, [3]string{"smokeday.json", `"for": "45 min"`, `"for": "2 h"`})
	require.NoError(t, err)
	trial.Contains(t, out, "THE SURFACE MAY SEAL")
}

// wellFormed reads the whole picture as XML and counts its curves.
func wellFormed(t *testing.T, path string, curves int) string {
	t.Helper()
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	decoder := xml.NewDecoder(bytes.NewReader(data))
	for err == nil {
		_, err = decoder.Token()
	}
	require.True(t, errors.Is(err, io.EOF), "not well-formed: %v", err)
	require.Equal(t, curves, strings.Count(string(data), "<polyline"))
	require.NotContains(t, string(data), "NaN")
	return string(data)
}

func TestPicture(t *testing.T) {
	for _, system := range []string{"us", "metric"} {
		path := filepath.Join(t.TempDir(), "day.svg")
		program.Printed(t, "-units", system, "-svg", path)
		trial.Contains(t, wellFormed(t, path, 6), "wet bulb: the most a wet surface reaches",
			"core expected, range and likely", "air, planned", "air, recorded", "A loin of the thickest fillet",
			"B fillet in the damp corner", "longest hold together, 23 min: not met", "HOT-180-MSU: at least this for 30 min", "temperature, °", "clock time", "Only probes in the cores tell")
	}
	require.Error(t, run([]string{"-svg", filepath.Join(t.TempDir(), "no", "where.svg")}, io.Discard))
}

// TestBroken: one clear message naming the field or the line, and nothing printed before it.
func TestBroken(t *testing.T) {
	for _, c := range []struct{ file, old, new, message string }{
		{"smokeday.json", `"4,350 ft"`, `"4350"`, `altitude: cannot read "4350" as a length`},
		{"smokeday.json", `"4,350 ft"`, `"60,000 ft"`, "altitude: "},
		{"smokeday.json", `"4,350 ft"`, `"11,000 ft"`, "no process is published"},
		{"smokeday.json", `"50 %"`, `"50"`, "outside.humidity: cannot read"},
		{"smokeday.json", `"50 %"`, `"150 %"`, "outside: relative humidity"},
		{"smokeday.json", `"12 lb"`, `"12 ft"`, "batch.mass: cannot read"},
		{"smokeday.json", `"12 lb"`, `"0 lb"`, "mass of the batch"},
		{"smokeday.json", `"7/8 in"`, `"7/8"`, "batch.thin: cannot read"},
		{"smokeday.json", `"7/8 in"`, `"2 in"`, "least thickness"},
		{"smokeday.json", `"two faces"`, `"two"`, "batch.faces: "},
		{"smokeday.json", `"4.5 ft²"`, `"4.5 ft"`, "batch.area: cannot read"},
		{"smokeday.json", `"waterActivity": "98 %"`, `"waterActivity": "9.8 %"`, "water activity"},
		{"smokeday.json", `"3.75 oz"`, `"4 lb"`, "batch.salt: "},
		{"smokeday.json", `"started": "08:00"`, `"started": "8 o'clock"`, "started: "},
		{"smokeday.json", `"kind": "cook"`, `"kind": "boil"`, "stages[2].kind: "},
		{"smokeday.json", `"kind": "cook"`, `"kind": "smoke"`, "cooks the fish to its core is not stated"},
		{"smokeday.json", `"damper": "open"`, `"damper": "ajar"`, "stages[0].damper: "},
		{"smokeday.json", `"for": "45 min"`, `"for": "45"`, "stages[0].for: "},
		{"smokeday.json", `, "dryAfter": "1 h"`, ``, "a relative humidity of 39.3 % would allow it"},
		{"smokeday.json", `"225 °F", "damper"`, `"175 °F", "damper"`, "no humidity helps, the air must be hotter"},
		{"smokeday.json", `"HOT-160-PNW"`, `"HOT-165"`, "alternative: "},
		{"smokeday.json", `  "maxGap": "10 min",` + "\n", ``, "maxGap: "},
		{"smokeday.json", `"10 min"`, `"1 h"`, "longest gap 1 h is out of range"},
		{"smokeday.json", `"takenOut": "14:15"`, `"takenOut": "quarter past two"`, "takenOut: "},
		{"smokeday.json", `"takenOut": "14:15"`, `"takenOut": "23:15"`, "takenOut: "},
		{"smokeday.json", `"8 lb 10 oz"`, `"13 lb"`, "weighed: "},
		{"smokeday.json", `"8 lb 10 oz"`, `"3 lb"`, "weighed: "},
		{"smokeday.json", `"pack": "air"`, `"pack": "foil"`, "pack: "},
		{"smokeday.json", `"pint"`, `"quart"`, "no process is published"},
		{"smokeday.json", `"weighted"`, `"clock"`, "gauge: "},
		{"smokeday.json", `"weighted"`, `""`, "jar and gauge: "},
		{"smokeday.json", `"about": "Invented for demonstration: no such water, households, smoker, fish or records exist."`, `"about": ""`, "about: it is required"},
		{"smokeday.json", `"place"`, `"plaice"`, "plaice: unknown field"},
		{"smokeday.json", `"core.csv"`, `"missing.csv"`, "missing.csv: no such file"},
		{"smokeday.json", "", "", "smokeday.json: line 1"},
		{"core.csv", "\n100,", "\n90,", "core.csv: "},
		{"core.csv", "\n100,", "\n100,hot", "core.csv: "},
		{"core.csv", "(°F)", "(°X)", "core.csv: "},
		{"core.csv", "", "time (min),steam (psi)\n0,1\n", "no column of temperature"},
		{"core.csv", "", "time (min),a (°F),b (°F),c (°F),d (°F),e (°F),f (°F),g (°F),h (°F),i (°F)\n0" +
			strings.Repeat(",40", 9) + "\n", "core.csv: 9 probes"},
		{"core.csv", "", "time (min),core (°F)\n0,40\n375,225\n", "the probe is in the air"},
		{"air.csv", "(°F)", "(lb)", "air.csv: wrong unit"},
	} {
		t.Run(c.message, func(t *testing.T) {
			out, err := changed(t, nil, [3]string{c.file, c.old, c.new})
			require.ErrorContains(t, err, c.message)
			require.Empty(t, out)
		})
	}
	require.ErrorContains(t, run([]string{"-units", "stone"}, io.Discard), "expected both, us or metric")
	require.ErrorContains(t, run([]string{"-in", "missing.json"}, io.Discard), "missing.json")
}
