package main

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/trial"
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units/verdict"
)

var program = trial.Program(run)

// changed is a demo recipe with one text replaced, in a file of its own.
func changed(t *testing.T, name, old, new string) string {
	t.Helper()
	data, err := os.ReadFile(name)
	require.NoError(t, err)
	require.Equal(t, 1, strings.Count(string(data), old), "%s: %s", name, old)
	return written(t, strings.Replace(string(data), old, new, 1))
}

func written(t *testing.T, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "recipe.json")
	require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
	return path
}

// judgedAs runs a recipe in US units and looks for its verdict and one thing that is said.
func judgedAs(t *testing.T, path, verdict, line string) {
	t.Helper()
	page := program.Printed(t, "-in", path, "-units", "us")
	before, _, _ := strings.Cut(page, "\nSources: ")
	if !strings.HasPrefix(page, "VERDICT: "+strings.ToUpper(verdict)+": ") {
		t.Errorf("not %s: %s", verdict, line)
	}
	trial.Contains(t, before, line)
}

// TestPages: what is alike in every program, in both systems, of all three recipes.
func TestPages(t *testing.T) {
	for _, recipe := range []string{"sound.json", "short.json", "unpublished.json"} {
		for _, system := range []string{"us", "metric", "both"} {
			page := program.Printed(t, "-in", recipe, "-units", system)
			trial.Page(t, page, 42)
			require.Contains(t, page, "Invented for demonstration")
			if system != "both" {
				trial.System(t, page, system)
			}
		}
		trial.ByHand(t, program.Printed(t, "-in", recipe, "-math"), 12)
		trial.ByHand(t, program.Printed(t, "-in", recipe, "-math", "-units", "metric"), 11)
	}
	trial.Contains(t, program.Printed(t, "-in", "sound.json", "-sources"),
		"[1] USDA, Complete Guide to Home Canning, Guide 5 (AIB 539, rev. 2015), Fish in Pint Jars, p. 5-10")
}

// The figures are those of the USDA Complete Guide, Guide 5, rev. 2015, p. 5-10 (13 lb and 100 min at 4,001 to 6,000 ft
// on a dial gauge), and of the Michigan data base of 1997 (180 °F for 30 min, below 36 °F, 14 days).
func TestGolden(t *testing.T) {
	for _, recipe := range []string{"sound", "short", "unpublished"} {
		for _, system := range []string{"us", "metric", "both"} {
			trial.Golden(t, trial.Answer(program.Printed(t, "-in", recipe+".json", "-units", system)),
				"testdata/"+recipe+"-"+system+".txt")
		}
	}
}

func TestHelp(t *testing.T) { trial.Help(t, program) }

func TestAllThree(t *testing.T) {
	all := program.Printed(t)
	for _, verdict := range []string{"VERDICT: MET: ", "VERDICT: NOT MET: ", "VERDICT: NOT PUBLISHED: "} {
		require.Equal(t, 1, strings.Count(all, verdict), verdict)
	}
	require.Equal(t, 3, strings.Count(all, "Invented for demonstration"))
	require.Equal(t, 3, strings.Count(program.Printed(t, "-math"), "BY HAND: "))
}

// The words that the cure takes over from the smoking must stay the same in both packages.
func TestWordsAgree(t *testing.T) {
	for v := smoke.HotSmoked; v <= smoke.ColdSmoked; v++ {
		require.Equal(t, v.String(), brine.Smoking(v).String())
	}
	for v := smoke.AirPack; v <= smoke.LowOxygenPack; v++ {
		require.Equal(t, v.String(), brine.Pack(v).String())
	}
	for v := verdict.Met; v <= verdict.NotPublished; v++ {
		require.NotEmpty(t, meaning(v))
	}
}

// One change to the sound recipe changes its verdict, and the finding names the figure that governs; those that change
// nothing are there to show where the edges lie. Figures of process: the guide as above; vent, p. 1-20; 30 g of salt
// per kg, Foods 9:1048, table 2; 38 °F, 1 NYCRR 262.5(a).
func TestOneChange(t *testing.T) {
	for _, c := range []struct{ old, new, verdict, line string }{
		{`"13 psi"`, `"12 psi"`, "not met", "pressure: 12 psi stated, at least 13 psi published, short by 1 psi"},
		{`"13 psi"`, `"12.99 psi"`, "not met", "short by 0.01 psi"},
		{`"13 psi"`, `"89.6 kPa"`, "not met", "pressure: 12.99"},
		{`"process": "100 min"`, `"process": "1 h 40 min"`, "met", ""},
		{`"13 psi"`, `"14 psi"`, "more", "pressure: 14 psi stated, 13 psi published, over by 1 psi"},
		{`"13 psi"`, `"16 psi"`, "differs", "pressure: 16 psi stated, at most 15 psi published"},
		{`"13 psi"`, `"0 psi"`, "not met", "pressure: 0 psi stated, at least 13 psi published"},
		{`"pressure": "13 psi",`, ``, "cannot tell", "pressure: missing, at least 13 psi published"},
		{`"100 min"`, `"99 min"`, "not met", "process time: 99 min stated, at least 100 min published, short by 1 min"},
		{`"100 min"`, `"1 h 50 min"`, "more", "process time: 110 min stated, 100 min published, over by 10 min"},
		{`"vent": "10 min"`, `"vent": "9 min"`, "not met", "vent time: 9 min stated, at least 10 min published, short by 1 min"},
		{`"vent": "10 min",`, ``, "cannot tell", "vent time: missing, at least 10 min published"},
		{`"headspace": "1 in"`, `"headspace": "1/2 in"`, "differs", "headspace: 0.5 in stated, 1 in published"},
		{`"4350 ft"`, `"6000 ft"`, "met", ""},
		{`"4350 ft"`, `"6001 ft"`, "not met", "pressure: 13 psi stated, at least 14 psi published, short by 1 psi"},
		{`"4350 ft"`, `"4000 ft"`, "more", "pressure: 13 psi stated, 12 psi published"},
		{`"4350 ft"`, `"8001 ft"`, "not published", "the dial-gauge tables end at 8,000 ft"},
		{`"4350 ft"`, `"-1 ft"`, "not published", "the tables start at 0 ft"},
		{`"altitude": "4350 ft",`, ``, "cannot tell", "altitude: missing"},
		{`"pint"`, `"quart"`, "not met", "process time: 100 min stated, at least 160 min published, short by 1 h"},
		{`"pint"`, `"1½ pint"`, "not published", "fish in 1½ pint jars; its tables are for jars"},
		{`"pint"`, `"half-pint"`, "met", ""},
		{`"dial"`, `"weighted"`, "not met", "pressure: 13 psi stated, at least 15 psi published, short by 2 psi"},
		{`"60 g"`, `"59 g"`, "not met", "salt to fish: 2.95 % stated, at least 3 % published, short by 0.05 %"},
		{`"60 g"`, `"100 g"`, "differs", "no dose between 3 % and 1:4 published"},
		{`"salt": "60 g",`, ``, "cannot tell", "salt to fish: missing"},
		{`"2 kg"`, `"2100 g"`, "not met", "salt to fish: 2.85"},
		{`"4.2 %"`, `"3.4 %"`, "not met", "water phase salt: 3.4 % stated, at least 3.5 % published, short by 0.1 %"},
		{"\"fat fish\",\n    \"waterPhaseSalt\": \"4.2 %\"", `"fat fish"`, "cannot tell",
			"water phase salt: missing, at least 3.5 % published"},
		{`"time": "48 h",`, ``, "cannot tell", "time: missing"},
		{`"37 °F"`, `"39 °F"`, "not met", "temperature: 39 °F stated, at most 38 °F published, too warm by 1 F°"},
		{`"180 °F"`, `"179 °F"`, "not met", "core: 179 °F stated, at least 180 °F published, short by 1 F°"},
		{`"core": "180 °F",`, ``, "cannot tell", "core: missing, at least 180 °F published"},
		{`"30 min"`, `"29 min"`, "not met", "hold: 29 min stated, at least 30 min published, short by 1 min"},
		{`"215 °F"`, `"180 °F"`, "not met",
			"air of the smoker: 180 °F stated, more than 180 °F for the core published"},
		{`"6 h"`, `"13 h"`, "not met", "time in the smoker: 13 h stated, at most 12 h published, too long by 1 h"},
		{`14`, `15`, "not met", "days: 15 days stated, at most 14"},
		{`"35 °F"`, `"37 °F"`, "not met", "storage: 37 °F stated, at most 36 °F published, too warm by 1 F°"},
		{`"35 °F"`, `"36 °F"`, "met", ""},
		{`"35 °F"`, `"0 °F"`, "met", ""},
		{`"air pack"`, `"low-oxygen pack"`, "not met", "days: 14 days stated, frozen published, too long"},
		{`"pack": "air pack",`, ``, "cannot tell", "pack: missing"},
		{`"hot-smoked"`, `"cold-smoked"`, "not published", "No home process is published for cold-smoked fish"},
		{`"smoking": "hot-smoked",`, ``, "cannot tell", "smoking: missing"},
		{`"salt": "60 g"`, `"salt": "60 g", "saltToFish": "2.9 %"`, "not met", "salt to fish: 2.9 % stated"},
		{`"salt": "60 g"`, `"salt": "60 g", "water": "1 gal"`, "differs", "dry salted, with a brine"},
		{`"30 min"`, `"7 h"`, "not met", "hold"},
		{`"eating"`, `"jars"`, "not published",
			"product in the jars: fish stated, only smoked fish by its own process"},
		{`"for": "eating",`, ``, "cannot tell", "smoked fish is never canned as raw fish"},
		{`"product": "fish"`, `"product": "smoked fish"`, "not published", "smoked fish in the pack raw"},
		{`"product": "fish"`, `"product": "tuna"`, "met", "raw tuna in pint jars"},
		{`"raw"`, `"as smoked"`, "not published", "its tables are for packs: raw"},
	} {
		judgedAs(t, changed(t, "sound.json", c.old, c.new), c.verdict, c.line)
	}
}

// Recipes of one part, or of parts that do not belong together.
func TestParts(t *testing.T) {
	const (
		head  = `{"about": "Invented.", "title": "t"`
		cure  = `, "cure": {"saltToFish": "3 %", "time": "24 h", "temperature": "3 °C", "waterPhaseSalt": "3.5 %"}`
		hot   = `, "smoke": {"smoking": "hot-smoked", "core": "83 °C", "hold": "30 min", "pack": "air pack", "keep": "2 °C", "days": 14}`
		jars  = `, "process": {"product": "smoked fish", "pack": "as smoked", "jar": "pint", "gauge": "weighted", "altitude": "1326 m", "pressure": "15 psi", "process": "110 min", "vent": "10 min", "water": "4 qt"}`
		raw   = `, "process": {"product": "fish", "pack": "raw", "jar": "pint", "gauge": "weighted", "altitude": "1326 m", "pressure": "15 psi", "process": "100 min", "vent": "10 min"}`
		light = `, "smoke": {"smoking": "hot-smoked", "loss": "10 %"}`
	)
	with := func(part, old, new string) string {
		require.Contains(t, part, old)
		return strings.Replace(part, old, new, 1)
	}
	lightly := func(more string) string { return `, "smoke": {"smoking": "hot-smoked", "loss": "20 %", ` + more + `}` }
	for _, c := range []struct{ parts, verdict, line string }{
		{cure + hot, "met", "Process in jars: absent"},
		{cure, "cannot tell",
			"smoking of the salted fish: missing, at least 180 °F in hot smoke: salt cooks nothing published"},
		{hot, "cannot tell", "cure of the smoked fish: missing, at least 3.5 % of water phase salt published"},
		{jars, "cannot tell", "smoking of what the jars hold: missing"},
		{jars + light, "met", "for jars: smoked lightly, not cooked"},
		{jars + light, "met", "met: smoked fish in pint jars, weighted gauge"},
		{jars + light + cure, "met", "how much salt is not judged"},
		{jars + `, "smoke": {"smoking": "hot-smoked"}`, "cannot tell", "loss: missing, 10 % to 30 % published"},
		{jars + `, "smoke": {"smoking": "cold-smoked", "loss": "20 %"}`, "not published",
			"No home process is published for cold-smoked fish"},
		{jars + lightly(`"air": "100 °F", "time": "2 h"`), "differs", "air of the smoker: 100 °F"},
		{jars + lightly(`"air": "150 °F", "time": "121 min"`), "not met", "at most 2 h published, too long by 1 min"},
		{jars + `, "smoke": {"loss": "20 %"}`, "cannot tell", "smoking: missing"},
		{jars + light + `, "cure": {"saltToFish": "3 %", "time": "2 h", "temperature": "3 °C"}`, "met",
			"how much salt is not judged"},
		{jars + light + `, "cure": {"saltToFish": "2 %", "time": "2 h", "temperature": "3 °C"}`, "met",
			"as only the process makes what is in the jar keep"},
		{jars + light + `, "cure": {"saltToFish": "2 %", "time": "2 h", "temperature": "5 °C"}`, "not met",
			"temperature: 41 °F stated"},
		{jars + lightly(`"for": "jars"`), "met", "smoked lightly"},
		{jars + lightly(`"forJars": true`), "met", "smoked lightly"},
		{jars + cure + with(hot, `"hot-smoked"`, `"hot-smoked", "for": "eating"`), "cannot tell",
			"smoking for jars of what the jars hold: missing"},
		{raw + cure + hot, "cannot tell", "what the fish is smoked for: missing, eating or jars"},
		{raw + cure + with(hot, `"hot-smoked"`, `"hot-smoked", "for": "eating"`), "met", "raw fish in pint jars"},
		{raw + with(light, `"hot-smoked"`, `"hot-smoked", "for": "jars"`), "not published",
			"only smoked fish by its own process"},
		{with(light, `"hot-smoked"`, `"hot-smoked", "for": "jars"`), "cannot tell",
			"process of the fish smoked for jars: missing"},
		{raw, "met", "Smoke: absent"},
		{jars + `, "smoke": {"loss": "9.9 %"}`, "not published", "loss: 9.9 % stated"},
		{jars + `, "smoke": {"loss": "30.1 %"}`, "not published", "Do not can this fish"},
		{jars + lightly(`"core": "180 °F"`), "differs", "not cooked published"},
		{jars + lightly(`"days": 2`), "not met",
			"days: 2 days stated, at most 1 day before canning published, too long"},
		{jars + lightly(`"days": 1`), "cannot tell", "storage: missing, at most 36 °F published"},
		{jars + lightly(`"days": 1, "keep": "35 °F"`), "met", "smoked lightly"},
		{with(jars, "4 qt", "3 qt") + light, "not met", "water: 3 qt stated, at least 4 qt published, short by 1 qt"},
		{with(jars, "110 min", "100 min") + light, "not met", "process time: 100 min stated, at least 110 min published"},
		{cure + with(hot, `"83 °C"`, `"160 °F", "rule": "HOT-160-PNW"`), "met", "this limit is lower"},
		{cure + with(hot, `"83 °C"`, `"159 °F", "rule": "HOT-160-PNW"`), "not met", "short by 1 F°"},
		{cure + with(hot, `"83 °C"`, `"160 °F"`), "not met", "short by 20 F°"},
		{`, "process": {}` + lightly(`"for": "jars"`), "cannot tell", "product: missing"},
		{`, "smoke": {}`, "cannot tell", "core: missing, at least 180 °F published"},
		{`, "process": {}`, "cannot tell", "product: missing"},
		{`, "cure": {"saltVolume": "1 cup", "saltName": "coarse sea salt", "fish": "2 kg"}` + hot, "cannot tell",
			"weight of the salt: missing"},
		{`, "cure": {"saltVolume": "1/4 cup", "saltName": "table salt", "fish": "2 kg", "time": "24 h", "temperature": "3 °C", "waterPhaseSalt": "3.5 %"}` + hot, "differs", "salt to fish: 3.6 % stated"},
		{`, "cure": {"nitrite": true}`, "differs", "nitrite stated, only licensed processes"},
		{`, "process": {"product": "fish", "pack": "raw", "jar": "pint", "gauge": "dial", "altitude": "9000 ft"}`,
			"not published", "9,000 ft"},
	} {
		judgedAs(t, written(t, head+c.parts+"}"), c.verdict, c.line)
	}
}

// TestJSON: what is written is the library's own form of its results, and comes back as them.
func TestJSON(t *testing.T) {
	text := program.Printed(t, "-json")
	require.True(t, json.Valid([]byte(text)))
	var all []judged
	require.NoError(t, wire.Unmarshal([]byte(text), &all))
	require.Len(t, all, 3)
	for i, want := range []verdict.Verdict{verdict.Met, verdict.NotMet, verdict.NotPublished} {
		require.Equal(t, want, all[i].Verdict)
		require.NotEmpty(t, all[i].Cautions)
	}
	f := all[1].Process.Findings[0]
	require.Equal(t, process.RulePressure, f.Rule)
	require.Equal(t,
		"USDA, Complete Guide to Home Canning, Guide 5 (AIB 539, rev. 2015), Fish in Pint Jars, p. 5-10 (read)",
		f.Citation.String())
	require.Contains(t, all[1].Smoke.Findings[0].Known.Text, "HOT-160-PNW")
	require.Nil(t, all[2].Cure)
	require.Equal(t, process.Pint, all[1].Process.Governing.Jar)
	require.Contains(t, all[2].Process.Refusal.Error(), "quart jars")
	r, err := load("short.json")
	require.NoError(t, err)
	again, err := r.judge()
	require.NoError(t, err)
	require.Equal(t, again.Report, all[1].Report)
}

// TestBroken: one clear message naming the field or the line, and nothing printed before it.
func TestBroken(t *testing.T) {
	for _, c := range []struct{ old, new, message string }{
		{`"13 psi"`, `"13"`, `process.pressure: cannot read "13" as a pressure`},
		{`"13 psi"`, `"-1 psi"`, "process: pressure -1 psi is out of range"},
		{`"13 psi"`, `13`, "recipe.json: line 10: process.pressure: expected text with a unit"},
		{`"4350 ft"`, `"4350 lb"`, `process.altitude: cannot read "4350 lb"`},
		{`"100 min"`, `"100"`, `process.process: cannot read "100" as a time`},
		{`"100 min"`, `"-100 min"`, "process: process time -100 min is out of range"},
		{`"dial"`, `"water bath"`, `process.gauge: `},
		{`"pint"`, `"500 mL"`, `process.jar: `},
		{`"product": "fish"`, `"product": "pike"`, `process.product: `},
		{`"dry salted"`, `"rubbed"`, `cure.method: `},
		{`"2 kg"`, `"2"`, `cure.fish: cannot read "2" as a mass`},
		{`"2 kg"`, `"0 kg"`, "cure: fish 0 g is out of range"},
		{`"60 g"`, `"60 mL"`, "cure.salt"},
		{`"48 h"`, `"0 h"`, "cure: time 0 min"},
		{`"two faces"`, `"three"`, `cure.faces: `},
		{`"37 °F"`, `"37"`, `cure.temperature: cannot read "37"`},
		{`"180 °F"`, `"230 °F"`, "smoke: core 230 °F (110 °C) is out of range"},
		{`14`, `"14"`, `smoke.days: `},
		{`14`, `"two weeks"`, "smoke.days: "},
		{`"eating"`, `"gifts"`, `smoke.for: `},
		{`"eating"`, `"eating", "forJars": true`, `smoke.forJars: the fish is smoked for eating`},
		{`"6 h"`, `"6 h", "rule": "HOT-145-MI"`, "smoke.rule: HOT-145-MI is not a home rule that was read in print"},
		{`"6 h"`, `"6 h", "rule": "HOT-160-CHUB"`, "smoke.rule: HOT-160-CHUB is not a home rule"},
		{`"6 h"`, `"6 h", "rule": "160"`, `smoke.rule: `},
		{`"hot-smoked"`, `"warm"`, `smoke.smoking: `},
		{`"20 %"`, `"190 %"`, "cure: loss 190 % is out of range"},
		{`"two faces"`, `"two faces", "loss": "10 %"`, "cure.loss: stated elsewhere too, and otherwise"},
		{`"two faces"`, `"two faces", "pack": "low-oxygen pack"`, "cure.pack: stated elsewhere too, and otherwise"},
		{`"two faces"`, `"two faces", "smoked": "cold-smoked"`, "cure.smoked: stated elsewhere too, and otherwise"},
		{`"two faces"`, `"two faces", "forJars": true`, "cure.forJars: the recipe does not say so"},
		{`"dial",`, `"dial", "pressure": "11 psi",`, `process.pressure: `},
		{`"vent"`, `"venting"`, `process.venting: unknown field`},
		{`"smoke"`, `"smoker"`, `smoker: unknown field`},
		{`"title": "Half to jars, half to the smoker, at Tamarack Reservoir"`, `"title": ""`, "title: "},
		{`"Invented for demonstration: no such water, household or recipe exists."`, `""`, "about: "},
		{`14`, `14,`, "recipe.json: line"},
	} {
		broken(t, c.message, "-in", changed(t, "sound.json", c.old, c.new))
	}
	broken(t, "expected at least one of process, cure and smoke", "-in",
		written(t, `{"about": "Invented.", "title": "nothing"}`))
	broken(t, "recipe.json: line 1", "-in", written(t, `{} {}`))
	broken(t, "line 1", "-in", written(t, ""))
	broken(t, "none.json", "-in", "none.json")
	broken(t, "invalid value", "-units", "stone")
	broken(t, "expected only flags", "sound.json")
}

func broken(t *testing.T, message string, args ...string) {
	t.Helper()
	var out bytes.Buffer
	err := run(args, &out)
	require.ErrorContains(t, err, message)
	require.NotContains(t, err.Error(), "\n")
	require.Empty(t, out.String())
}

// A figure left out of the sound recipe leaves it open, whatever it is; those that decide nothing are named.
func TestLeftOut(t *testing.T) {
	data, err := os.ReadFile("sound.json")
	require.NoError(t, err)
	decidesNothing := map[string]bool{"process.headspace": true, "smoke.air": true, "smoke.time": true,
		"smoke.loss":  true,
		"cure.method": true, // the salt and the fish say it
		"cure.sugar":  true, "cure.thickness": true, "cure.faces": true, "cure.fatness": true}
	for _, part := range []string{"process", "cure", "smoke"} {
		var whole map[string]any
		require.NoError(t, json.Unmarshal(data, &whole))
		fields := whole[part].(map[string]any)
		for name, value := range fields {
			delete(fields, name)
			text, err := json.Marshal(whole)
			require.NoError(t, err)
			fields[name] = value
			out := program.Printed(t, "-in", written(t, string(text)))
			require.Equal(t, decidesNothing[part+"."+name], strings.HasPrefix(out, "VERDICT: MET: "), "%s.%s", part,
				name)
		}
	}
}
