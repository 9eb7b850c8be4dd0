package conformance

import (
	"encoding/json"
	"fmt"
	"reflect"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/keeping"
	"example.org/lakelarder/yield/coldchain/parasites"
)

// judged is the result of any judge.
type judged interface{ Judgement() verdict.Report }

// show prints any judgement in one system of units: this one function is what an app needs.
func show(result judged, system units.System) string {
	r := result.Judgement()
	var page strings.Builder
	fmt.Fprintln(&page, r.Verdict)
	for _, f := range r.Findings {
		fmt.Fprintln(&page, "-", f.Text(system))
	}
	for _, c := range r.Cautions {
		fmt.Fprintln(&page, "!", c.Text)
	}
	for i, c := range r.Citations() {
		fmt.Fprintf(&page, "[%d] %v\n", i+1, c)
	}
	return page.String()
}

// ramp is an invented record of a temperature, a reading every ten minutes.
func ramp(t *testing.T, celsius ...float64) series.Series[units.Temperature] {
	t.Helper()
	var readings []series.Reading[units.Temperature]
	for i, c := range celsius {
		readings = append(readings, series.Reading[units.Temperature]{At: time.Duration(i) * 10 * time.Minute, Value: units.Celsius(c)})
	}
	s, err := series.New(readings)
	require.NoError(t, err)
	return s
}

// run is an invented run of the canner that was four minutes short.
func run(t *testing.T) canner.Report {
	t.Helper()
	schedule, err := process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial,
		Altitude: units.State(800 * units.Foot)})
	require.NoError(t, err)
	var readings []series.Reading[units.Pressure]
	for minute := 0; minute <= 150; minute += 5 {
		p := 11 * units.PSI
		switch {
		case minute < 20:
			p = 0
		case minute > 120:
			p = max(0, 11*units.PSI-units.Pressure(minute-120)*units.PSI/2)
		}
		readings = append(readings, series.Reading[units.Pressure]{At: time.Duration(minute) * time.Minute, Value: p})
	}
	record, err := series.New(readings)
	require.NoError(t, err)
	minute := func(n int) units.Stated[time.Duration] { return units.State(time.Duration(n) * time.Minute) }
	report, err := canner.Audit(canner.Run{
		Schedule: schedule, Altitude: schedule.Altitude, MaxGap: 6 * time.Minute,
		Marks: canner.Marks{SteadySteam: minute(5), VentClosed: minute(15), HeatOff: minute(116)},
	}, record)
	require.NoError(t, err)
	return report
}

// results are judgements of every judge, none of them a pass.
func judgements(t *testing.T) map[string]judged {
	t.Helper()
	all := map[string]judged{"canner": run(t)}
	keep := func(name string, result judged, err error) {
		t.Helper()
		require.NoError(t, err, name)
		all[name] = result
	}
	recipe, err := process.Check(process.Claim{Product: process.Fish, Jar: process.Pint, Gauge: process.Dial,
		Altitude: units.State(4350 * units.Foot), Pressure: units.State(11 * units.PSI), Process: units.State(90 * time.Minute)})
	keep("process", recipe, err)
	cure, err := brine.Check(brine.Claim{Fish: units.State(2 * units.Kilogram), Salt: units.State(40 * units.Gram),
		Temperature: units.State(units.Fahrenheit(45)), Time: units.State(8 * time.Hour)})
	keep("brine", cure, err)
	smoked, err := smoke.Check(smoke.Claim{Smoking: smoke.HotSmoked, Core: units.State(units.Fahrenheit(155)), Hold: units.State(20 * time.Minute)})
	keep("smoke", smoked, err)
	cores := []series.Series[units.Temperature]{ramp(t, 20, 30, 40, 50, 58, 64, 68, 70, 69, 66)}
	hold, err := smoke.AuditHold(smoke.DefaultCoreLimit(), smoke.Record{Cores: cores, MaxGap: 10 * time.Minute})
	keep("hold", hold, err)
	cooling, err := smoke.AuditCooling(smoke.DefaultCoolingRule(), smoke.Record{Cores: []series.Series[units.Temperature]{ramp(t, 85, 80, 76, 73, 70, 68, 66, 64, 62, 60, 58,
		56, 54, 52, 50, 48)}, MaxGap: 10 * time.Minute})
	keep("cooling", cooling, err)
	warm, err := coldchain.Audit(ramp(t, 20, 21, 21.5, 22, 22.5, 23, 23.5, 24, 24.5, 25, 25.5, 26, 26.5, 27, 27, 27.5, 28, 28.5), coldchain.Terms{MaxGap: 10 * time.Minute})
	keep("exposure", warm, err)
	landing, err := coldchain.CheckLanding(coldchain.Landing{Gutted: units.State(3 * time.Hour), ForCanning: true})
	keep("landing", landing, err)
	kept, err := keeping.Check(keeping.Smoked, keeping.InRefrigerator, units.Fahrenheit(45), 30*24*time.Hour)
	keep("keeping", kept, err)
	store, err := keeping.CheckStore(keeping.InRefrigerator, units.Fahrenheit(47))
	keep("store", store, err)
	jar, err := keeping.CheckJar(units.State(30*24*time.Hour), keeping.LidUnsealed)
	keep("jar", jar, err)
	cut, err := keeping.CheckPowerCut(keeping.InFreezer, false, 40*time.Hour)
	keep("power cut", cut, err)
	thaw, err := keeping.CheckThaw(keeping.ThawPlan{Method: keeping.ThawInRefrigerator, Medium: units.Fahrenheit(45)})
	keep("thawing", thaw, err)
	raw, err := parasites.Check(parasites.Plan{Freezer: units.Celsius(-15), Stored: 24 * time.Hour})
	keep("parasites", raw, err)
	return all
}

// One function shows the judgement of every judge, in one system of units, and each survives being saved.
func TestEveryJudgementSpeaksOneLanguage(t *testing.T) {
	for name, result := range judgements(t) {
		r := result.Judgement()
		require.False(t, r.Verdict.Passes(), "%s: %v", name, r.Verdict)
		require.NotEmpty(t, r.Findings, name)
		require.NotEmpty(t, r.Cautions, name)
		require.Equal(t, verdict.Worst(r.Verdict, r.Findings[0].Verdict), r.Verdict, name)
		for _, f := range r.Findings {
			require.NotEmpty(t, f.Rule, "%s: %v", name, f)
			require.NotZero(t, f.Kind, "%s: %v", name, f)
			f.Known.Text = "" // words of a caution: their figures are printed in both systems
			metric, us := f.Text(units.Metric), f.Text(units.US)
			require.NotRegexp(t, `[0-9] (psi|°F|F°|lb|oz|ft|in|qt)\b`, metric, "%s in metric", name)
			require.NotRegexp(t, `[0-9] (kPa|°C|C°|kg|g|mm|cm|L)\b`, us, "%s in US units", name)
		}
		for _, c := range r.Citations() {
			require.NoError(t, c.Check(), "%s: %v", name, c)
		}
		require.Contains(t, show(result, units.Metric), r.Verdict.String())
		saved, err := json.Marshal(result)
		require.NoError(t, err, name)
		back := reflect.New(reflect.TypeOf(result))
		require.NoError(t, json.Unmarshal(saved, back.Interface()), "%s: %s", name, saved)
		require.Empty(t, cmp.Diff(result, back.Elem().Interface()), name)
	}
}

// What an app adds up from several judges is as bad as the worst of them, and says each caution once.
func TestJudgementsJoin(t *testing.T) {
	var reports []verdict.Report
	for _, result := range judgements(t) {
		reports = append(reports, result.Judgement())
	}
	joined := verdict.Join(reports...)
	require.Equal(t, verdict.NotMet, joined.Verdict)
	seen := map[string]bool{}
	for _, c := range joined.Cautions {
		require.False(t, seen[string(c.ID)+c.Text], c.ID)
		seen[string(c.ID)+c.Text] = true
	}
}
