package smoke_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

func ExampleClaim_UnmarshalJSON() {
	var c smoke.Claim
	err := json.Unmarshal([]byte(`{"smoking": "hot-smoked", "core": "180 °F", "hold": "30 min", "pack": "air pack", "keep": "36 °F", "days": 10}`), &c)
	fmt.Println(c.Smoking, c.Core.Value, c.Time.Given, err)
	err = json.Unmarshal([]byte(`{"smoking": "hot-smoked", "core": 180}`), &c)
	fmt.Println(err)
	// Output:
	// hot-smoked 180 °F false <nil>
	// core (line 1, column 35): expected text with a unit, such as "121.1 °C", not the number 180
}

func ExampleClaim_MarshalJSON() {
	text, err := json.Marshal(smoke.Claim{Smoking: smoke.HotSmoked, Core: units.State(units.Fahrenheit(160)), Hold: units.State(30 * time.Minute), Days: units.State(0)})
	fmt.Println(string(text), err)
	// Output:
	// {"smoking":"hot-smoked","core":"160 °F","hold":"30 min","days":0} <nil>
}

func ExampleAssessment_MarshalJSON() {
	a, _ := smoke.Check(smoke.Claim{Smoking: smoke.HotSmoked, ForJars: true, Loss: units.State(20 * units.Percent)})
	text, err := json.Marshal(a)
	fmt.Println(string(text[:60]), err)
	// Output:
	// {"verdict":"met","cautions":[{"id":"smoke.air-is-not-core"," <nil>
}

func ExampleAssessment_UnmarshalJSON() {
	var a smoke.Assessment
	err := json.Unmarshal([]byte(`{"verdict": "not met", "governing": {"id": "HOT-160-PNW"}}`), &a)
	fmt.Println(a.Verdict, a.Governing.ID, err)
	// Output:
	// not met HOT-160-PNW <nil>
}

func ExampleHold_MarshalJSON() {
	hold, _ := smoke.AuditHold(smoke.DefaultCoreLimit(), recorded(10*time.Minute, core(90, 118, 131)))
	hold.Report, hold.Limit = verdict.Report{Verdict: hold.Verdict}, smoke.CoreLimit{}
	text, err := json.Marshal(hold)
	fmt.Println(string(text), err)
	// Output:
	// {"verdict":"not met","maxGap":"10 min","owed":"30 min","largestGap":{"to":"10 min"}} <nil>
}

func ExampleHold_UnmarshalJSON() {
	var hold smoke.Hold
	err := json.Unmarshal([]byte(`{"verdict": "met", "held": "34 min"}`), &hold)
	fmt.Println(hold.Verdict, hold.Held, err)
	// Output:
	// met 34m0s <nil>
}

func ExampleCooling_MarshalJSON() {
	cooling, _ := smoke.AuditCooling(smoke.DefaultCoolingRule(), recorded(time.Hour, core(180, 120, 60, 39)))
	cooling.Report, cooling.Rule = verdict.Report{Verdict: cooling.Verdict}, smoke.CoolingRule{}
	text, err := json.Marshal(cooling)
	fmt.Println(string(text), err)
	// Output:
	// {"verdict":"met","steps":[{"step":{"from":"60 °C","to":"21 °C","within":"2 h"},"verdict":"met","took":"11m42.000000001s"},{"step":{"from":"21 °C","to":"4 °C","within":"4 h"},"verdict":"met","took":"11m32.285714286s"}]} <nil>
}

func ExampleCooling_UnmarshalJSON() {
	var cooling smoke.Cooling
	err := json.Unmarshal([]byte(`{"verdict": "met", "rule": {"id": "COOL-2-4"}}`), &cooling)
	fmt.Println(cooling.Verdict, cooling.Rule.ID, err)
	// Output:
	// met COOL-2-4 <nil>
}

// A watch goes on where it was saved.
func ExampleRunningHold_MarshalJSON() {
	h, _ := smoke.WatchHold(smoke.DefaultCoreLimit(), smoke.Record{MaxGap: 10 * time.Minute})
	h, _ = h.Next(0, units.Fahrenheit(181))
	h, _ = h.Next(9*time.Minute, units.Fahrenheit(182))
	text, _ := json.Marshal(h)
	var again smoke.RunningHold
	err := json.Unmarshal(text, &again)
	fmt.Println(again == h, again, err)
	// Output:
	// true 21 minutes still owed <nil>
}

func ExampleRunningHold_UnmarshalJSON() {
	var h smoke.RunningHold
	err := json.Unmarshal([]byte(`{"limit": {"atLeast": "180 °F", "hold": "30 min"}, "maxGap": "1 h"}`), &h)
	fmt.Println(err)
	// Output:
	// longest gap 1 h is out of range: expected 1 s to 15 min
}

func ExampleSchedule_MarshalJSON() {
	s := planned(smoke.Stage{Kind: smoke.Cook, Air: units.Fahrenheit(225), For: 4 * time.Hour})
	text, err := json.Marshal(smoke.Schedule{Stages: s.Stages[2:3]})
	fmt.Println(string(text), err)
	// Output:
	// {"stages":[{"kind":"cook","air":"225 °F","for":"4 h"}]} <nil>
}

func ExampleSchedule_UnmarshalJSON() {
	var s smoke.Schedule
	err := json.Unmarshal([]byte(`{"stages": [{"kind": "cook", "air": "225 °F", "for": "4 h"}], "smoker": "iron"}`), &s)
	fmt.Println(err)
	// Output:
	// smoker (line 1, column 63): unknown field; expected batch, stages, outside, film, limit
}

func ExamplePlan_MarshalJSON() {
	p, _ := planned(smoke.Stage{Kind: smoke.Cook, Air: units.Fahrenheit(225), For: 4 * time.Hour, DryAfter: units.State(30 * time.Minute)}).Plan()
	text, err := json.Marshal(smoke.Plan{Timetable: p.Timetable[:2], Total: p.Total, Fits: p.Fits})
	fmt.Println(string(text), err)
	// Output:
	// {"timetable":[{"at":"0 min","event":"begin","stage":0},{"at":"30 min","event":"begin","stage":1}],"total":"9 h 30 min","fits":true} <nil>
}

func ExamplePlan_UnmarshalJSON() {
	var p smoke.Plan
	err := json.Unmarshal([]byte(`{"total": "9 h", "fits": true}`), &p)
	fmt.Println(p.Total, p.Fits, err)
	// Output:
	// 9h0m0s true <nil>
}

func ExampleStorage_MarshalJSON() {
	s, _ := smoke.FindStorage(smoke.AirPack)
	s.Cautions = nil
	text, err := json.Marshal(s)
	fmt.Println(string(text), err)
	// Output:
	// {"pack":"air pack","atMost":"36 °F","days":14,"temperature":{"id":"STORE-36","atMost":"36 °F","printed":{"high":"36 °F","highAlso":"2.2 °C"},"home":true,"fish":"home smoked fish","place":"Michigan (1997)","citation":{"document":"Michigan State University Extension, Preserving Food Safely, data base of numbered items (1997)","source":"MSUEPreservingFoodSafely1997","place":"item 01600579","basis":"read"}},"time":{"id":"LIFE-14","days":14,"home":true,"fish":"home smoked fish","place":"Michigan (1997)","citation":{"document":"Michigan State University Extension, Preserving Food Safely, data base of numbered items (1997)","source":"MSUEPreservingFoodSafely1997","place":"items 01600579 and 01600580","basis":"read"}}} <nil>
}

func ExampleStorage_UnmarshalJSON() {
	var s smoke.Storage
	err := json.Unmarshal([]byte(`{"pack": "air pack", "days": 14}`), &s)
	fmt.Println(s.Pack, s.Days, err)
	// Output:
	// air pack 14 <nil>
}

func ExampleJarLoss_MarshalJSON() {
	j, _ := smoke.CheckJarLoss(20 * units.Percent)
	j.Cautions = nil
	text, err := json.Marshal(j)
	fmt.Println(string(text), err)
	// Output:
	// {"verdict":"met","loss":"20 %","least":"10 %","most":"30 %","citation":{"document":"Raab and Hilderbrand, home-canned smoked fish (Journal of Food Protection 56(7):619, 1993)","source":"RaabHilderbrand1993","place":"abstract: chum salmon smoked to losses of 10, 20 and 30 %","basis":"read"}} <nil>
}

func ExampleJarLoss_UnmarshalJSON() {
	var j smoke.JarLoss
	err := json.Unmarshal([]byte(`{"verdict": "met", "loss": "20 %"}`), &j)
	fmt.Println(j.Verdict, j.Loss, err)
	// Output:
	// met 20 % <nil>
}

func ExamplePasteurisation_MarshalJSON() {
	p, _ := smoke.Pasteurise(core(158, 158))
	p.Cautions = nil
	text, err := json.Marshal(p)
	fmt.Println(string(text), err)
	// Output:
	// {"equivalent":"10 min","sixLog":"2 min","reference":"70 °C","citation":{"document":"US FDA, Fish and Fishery Products Hazards and Controls Guidance (4th ed., March 2020)","source":"FDAHazardsGuide2020","place":"Appendix 4, table A-3, p. 422","basis":"read"}} <nil>
}

func ExamplePasteurisation_UnmarshalJSON() {
	var p smoke.Pasteurisation
	err := json.Unmarshal([]byte(`{"equivalent": "2 min", "reference": "70 °C"}`), &p)
	fmt.Println(p.Equivalent, p.Reference, err)
	// Output:
	// 2m0s 70 °C <nil>
}

func ExamplePellicle_MarshalJSON() {
	a, _ := moistair.ByRelativeHumidity(units.Celsius(30), 50*units.Percent, 86_300*units.Pascal)
	p, _ := smoke.DryPellicle(units.Kilogram, 800*units.SquareCentimetre, a, moistair.SmokerFilm(), 98*units.Percent)
	text, err := json.Marshal(smoke.Pellicle{Surface: p.Surface, Tacky: p.Tacky})
	fmt.Println(string(text), err)
	// Output:
	// {"surface":"21.882602 °C","tacky":{"low":"10m28.819s","likely":"15m43.229s","high":"31m26.458s"}} <nil>
}

func ExamplePellicle_UnmarshalJSON() {
	var p smoke.Pellicle
	err := json.Unmarshal([]byte(`{"tacky": {"low": "10 min", "likely": "15 min", "high": "31 min"}}`), &p)
	fmt.Println(p.Tacky, err)
	// Output:
	// 10 min to 31 min, likely 15 min <nil>
}

func ExampleDryingLoss_MarshalJSON() {
	d, _ := smoke.LossForWaterPhaseSalt(100*units.Gram, 2*units.Gram, 70*units.Gram, 35*units.PerMille)
	d.Cautions = nil
	text, err := json.Marshal(d)
	fmt.Println(string(text), err)
	// Output:
	// {"mass":"14.857143 g","share":"14.857143 %"} <nil>
}

func ExampleDryingLoss_UnmarshalJSON() {
	var d smoke.DryingLoss
	err := json.Unmarshal([]byte(`{"mass": "14.857143 g", "share": "14.9 %"}`), &d)
	fmt.Println(d.Mass, d.Share, err)
	// Output:
	// 14.857143 g 14.9 % <nil>
}

func ExampleWarming_MarshalJSON() {
	slab := smoke.FilletSlab(20*units.Millimetre, 25*units.Millimetre, smoke.TwoFaces, units.Celsius(4))
	w, _ := smoke.WarmCore(slab, moistair.SmokerFilm(), units.Fahrenheit(160), smoke.Phase{Medium: units.Fahrenheit(225), For: 4 * time.Hour})
	text, err := json.Marshal(smoke.Warming{Limit: w.Limit, ToLimit: w.ToLimit, Reached: w.Reached})
	fmt.Println(string(text), err)
	// Output:
	// {"limit":"160 °F","toLimit":{"low":"28 min 2 s","likely":"44 min 35 s","high":"91 min 3 s"},"reached":true} <nil>
}

func ExampleWarming_UnmarshalJSON() {
	var w smoke.Warming
	err := json.Unmarshal([]byte(`{"limit": "160 °F", "reached": true}`), &w)
	fmt.Println(w.Limit, w.Reached, err)
	// Output:
	// 160 °F true <nil>
}

func ExampleRecord_MarshalJSON() {
	text, err := json.Marshal(recorded(10*time.Minute, core(150, 182)))
	fmt.Println(string(text), err)
	// Output:
	// {"cores":[{"readings":[{"at":"0 min","value":"150 °F"},{"at":"10 min","value":"182 °F"}]}],"maxGap":"10 min"} <nil>
}

func ExampleRecord_UnmarshalJSON() {
	var r smoke.Record
	err := json.Unmarshal([]byte(`{"maxGap": "10 min", "site": "near bone", "marks": {"outOfSmoker": "4 h", "pack": "air pack"}}`), &r)
	fmt.Println(r.MaxGap, r.Site, r.Marks.Pack, err)
	// Output:
	// 10m0s near bone air pack <nil>
}

func ExampleDay_MarshalJSON() {
	d, _ := smoke.Audit(smoke.Rules{}, recorded(10*time.Minute, core(40, 90, 140, 170, 185, 186, 186, 186)))
	text, err := json.Marshal(smoke.Day{Report: verdict.Report{Verdict: d.Verdict}, Reached: d.Reached})
	fmt.Println(string(text), err)
	// Output:
	// {"verdict":"cannot tell","reached":"26 min 40 s"} <nil>
}

func ExampleDay_UnmarshalJSON() {
	var d smoke.Day
	err := json.Unmarshal([]byte(`{"verdict": "not met", "reached": "5 h"}`), &d)
	fmt.Println(d.Verdict, d.Reached.Value, err)
	// Output:
	// not met 5h0m0s <nil>
}

// requireBack holds a value to come back from JSON equal.
func requireBack[T any](t *testing.T, v T) {
	t.Helper()
	text, err := json.Marshal(v)
	require.NoError(t, err)
	var back T
	require.NoError(t, json.Unmarshal(text, &back), string(text))
	require.Empty(t, cmp.Diff(v, back, cmp.Comparer(func(a, b moistair.Air) bool { return a == b }), cmp.Comparer(func(a, b smoke.RunningHold) bool { return a == b })), string(text))
}

// Every kind of result and input survives being saved.
func TestJSONComesBack(t *testing.T) {
	for _, l := range smoke.CoreLimits() {
		hold, err := smoke.AuditHold(l, recorded(10*time.Minute, core(150, 190, 190, 190, 190), core(140, 158, 164, 170, 150)))
		require.NoError(t, err)
		requireBack(t, hold)
		running, err := smoke.WatchHold(l, smoke.Record{MaxGap: 10 * time.Minute})
		require.NoError(t, err)
		requireBack(t, running)
		for i, f := range []float64{150, 190, 190, 150, 190} {
			running, err = running.Next(time.Duration(i)*7*time.Minute, units.Fahrenheit(f), units.Fahrenheit(f+1))
			require.NoError(t, err)
			requireBack(t, running)
		}
		a, err := smoke.CheckAgainst(l, smoke.Claim{Smoking: smoke.HotSmoked, Core: units.State(units.Fahrenheit(155)), Keep: units.State(units.Fahrenheit(36))})
		require.NoError(t, err)
		requireBack(t, a)
	}
	for _, rule := range smoke.CoolingRules() {
		c, err := smoke.AuditCooling(rule, recorded(20*time.Minute, core(180, 150, 100, 60, 50, 45)))
		require.NoError(t, err)
		requireBack(t, c)
	}
	for _, c := range []smoke.Claim{
		{}, {Smoking: smoke.ColdSmoked, Air: units.State(units.Celsius(25)), Time: units.State(20 * time.Hour), Pack: smoke.LowOxygenPack, Days: units.State(0)},
		{Smoking: smoke.HotSmoked, ForJars: true, Loss: units.State(units.Ratio(0)), Core: units.State(units.Celsius(82.22)), Hold: units.State(time.Second)},
	} {
		requireBack(t, c)
		a, err := smoke.Check(c)
		require.NoError(t, err)
		requireBack(t, a)
	}
	s := planned(smoke.Stage{Kind: smoke.Cook, Air: units.Fahrenheit(225), For: 4 * time.Hour, DryAfter: units.State(time.Duration(0)), Humidity: units.State(3 * units.Percent)})
	requireBack(t, s)
	p, err := s.Plan()
	require.NoError(t, err)
	requireBack(t, p)
	requireBack(t, p.Core)
	rec := recorded(15*time.Minute, core(40, 90, 140, 170, 185, 186, 186, 186, 150, 90, 50, 34))
	rec.Air, rec.Site = core(60, 225, 225), smoke.InThickest
	rec.Piece = units.State(smoke.FilletSlab(20*units.Millimetre, 25*units.Millimetre, smoke.TwoFaces, units.Celsius(4)))
	rec.Marks = smoke.Marks{OutOfSmoker: units.State(time.Hour), InOven: units.State(70 * time.Minute), Pack: smoke.AirPack}
	requireBack(t, rec)
	d, err := smoke.Audit(smoke.Rules{}, rec)
	require.NoError(t, err)
	requireBack(t, d)
	for _, pack := range []smoke.Pack{0, smoke.AirPack, smoke.LowOxygenPack} {
		keep, err := smoke.FindStorage(pack)
		require.NoError(t, err)
		requireBack(t, keep)
	}
	for _, loss := range []units.Ratio{0, 20 * units.Percent, units.One} {
		j, err := smoke.CheckJarLoss(loss)
		require.NoError(t, err)
		requireBack(t, j)
	}
}

// A saved watch that no watch could have come to is refused, and so is a claim with what it does not know.
func TestJSONRefuses(t *testing.T) {
	const limit = `"limit": {"atLeast": "180 °F", "hold": "30 min"}, "maxGap": "10 min"`
	for _, text := range []string{
		`{}`, `null`, `{"limit": {"atLeast": "180 °F", "hold": "30 min"}}`, `{` + limit + `, "steps": 1}`, `{` + limit + `, "cores": ["180 °F"]}`,
		`{` + limit + `, "at": "10 min", "steps": 1, "cores": ["225 °F"]}`, `{` + limit + `, "at": "10 min", "steps": 2, "cores": ["185 °F"], "longest": {"to": "40 min"}}`,
		`{` + limit + `, "at": "10 min", "steps": 2, "cores": ["185 °F"], "from": "11 min"}`, `{` + limit + `, "met": true}`,
	} {
		h, _ := smoke.WatchHold(smoke.DefaultCoreLimit(), smoke.Record{MaxGap: time.Minute})
		before := h
		require.Error(t, json.Unmarshal([]byte(text), &h), text)
		require.Equal(t, before, h, "stays as it was")
	}
	for text, field := range map[string]string{
		`{"smoking": "warm"}`: "smoking", `{"core": "180"}`: "core", `{"core": null}`: "core", `{"hold": 30}`: "hold", `{"days": "10"}`: "days",
		`{"core": "180 °F", "core": "180 °F"}`: "core", `{"kore": "180 °F"}`: "kore", `{"pack": "foil"}`: "pack",
	} {
		var c smoke.Claim
		err := json.Unmarshal([]byte(text), &c)
		var fault units.FieldError
		require.True(t, errors.As(err, &fault), "%s: %v", text, err)
		require.Equal(t, field, fault.Field, text)
		require.Zero(t, c)
	}
}

// golden compares what a result is saved as with the reviewed file.
func golden(t *testing.T, name string, v any) {
	t.Helper()
	text, err := json.Marshal(v)
	require.NoError(t, err)
	got, err := wire.Indent(text)
	require.NoError(t, err)
	want, err := os.ReadFile(filepath.Join("..", "testdata", "golden", "smoke-"+name+".json"))
	require.NoError(t, err, "%s", got)
	require.Equal(t, string(want), string(got)+"\n")
}

func TestGolden(t *testing.T) {
	a, err := smoke.Check(smoke.Claim{
		Smoking: smoke.HotSmoked, Air: units.State(units.Fahrenheit(200)), Core: units.State(units.Fahrenheit(160)), Hold: units.State(10 * time.Minute),
		Pack: smoke.AirPack, Keep: units.State(units.Fahrenheit(36.5)), Days: units.State(21),
	})
	require.NoError(t, err)
	golden(t, "assessment", a)
	hold, err := smoke.AuditHold(smoke.DefaultCoreLimit(), recorded(10*time.Minute, core(150, 182, 184, 179, 184), core(140, 181, 182, 181, 182)))
	require.NoError(t, err)
	golden(t, "hold", hold)
	cooling, err := smoke.AuditCooling(smoke.DefaultCoolingRule(), recorded(10*time.Minute, core(180, 160, 140, 120, 100, 69, 60)))
	require.NoError(t, err)
	golden(t, "cooling", cooling)
	day, err := smoke.Audit(smoke.Rules{}, recorded(15*time.Minute, core(40, 90, 140, 170, 185, 186, 186, 186, 150, 90, 50, 34, 34, 41)))
	require.NoError(t, err)
	golden(t, "day", day)
	s := planned(smoke.Stage{Kind: smoke.Cook, Air: units.Fahrenheit(225), For: 4 * time.Hour, DryAfter: units.State(30 * time.Minute)})
	golden(t, "schedule", s)
	p, err := s.Plan()
	require.NoError(t, err)
	golden(t, "plan", p)
}
