package verdict_test

import (
	"fmt"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

const ruleTime verdict.Rule = "example.process-time"

// tooShort is a process of 90 minutes where 100 are published.
func tooShort() verdict.Finding {
	return verdict.Finding{
		Rule: ruleTime, What: "process time", Kind: verdict.Short, Verdict: verdict.NotMet,
		Stated: units.Exactly(90 * time.Minute), Wanted: units.AtLeast(100 * time.Minute), By: units.AmountOf(10 * time.Minute),
		Citation: cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Fish in Pint Jars, p. 5-10", Basis: cite.Read},
	}
}

func caution(id cite.CautionID, deciding bool) cite.Caution {
	return cite.Caution{ID: id, Text: "Say so.", Deciding: deciding, Citation: cite.Citation{Where: "usual caution", Basis: cite.Practice}}
}

func ExampleOf() {
	r := verdict.Of([]verdict.Finding{tooShort()}, nil)
	fmt.Println(r.Verdict, r.Verdict.Passes())
	fmt.Println(r.Findings[0])
	// Output:
	// not met false
	// process time: 90 min stated, at least 100 min published, short by 10 min
}

func ExampleFinding_Text() {
	f := verdict.Finding{
		What: "core", Kind: verdict.Short, Verdict: verdict.NotMet, When: units.State(series.Stretch{From: 90 * time.Minute, To: 95*time.Minute + 20*time.Second}),
		Stated: units.Exactly(units.Fahrenheit(176)), Wanted: units.AtLeast(units.Fahrenheit(180)), By: units.AmountOf(4 * units.FahrenheitDegrees),
	}
	fmt.Println(f.Text(units.US))
	fmt.Println(f.Text(units.Metric))
	// Output:
	// core: 176 °F recorded, at least 180 °F wanted, short by 4 F°, from minute 90 to 95:20
	// core: 80 °C recorded, at least 82.3 °C wanted, short by 2.3 C°, from minute 90 to 95:20
}

func ExampleJoin() {
	brine := verdict.Of(nil, []cite.Caution{caution("example.keep-cold", false), caution("example.toxin", true)})
	process := verdict.Of([]verdict.Finding{tooShort()}, []cite.Caution{caution("example.keep-cold", false)})
	whole := verdict.Join(brine, process)
	fmt.Println(whole.Verdict, len(whole.Findings), len(whole.Cautions), whole.Cautions[0].ID)
	fmt.Println(verdict.Join().Verdict)
	// Output:
	// not met 1 2 example.toxin
	// cannot tell
}

// What embeds a Report is shown by one function.
func ExampleReport_Judgement() {
	type load struct {
		Jars int
		verdict.Report
	}
	var judged interface{ Judgement() verdict.Report } = load{12, verdict.Of([]verdict.Finding{tooShort()}, nil)}
	fmt.Println(judged.Judgement().Verdict)
	// Output: not met
}

func ExampleReport_Citations() {
	r := verdict.Of([]verdict.Finding{tooShort(), tooShort()}, []cite.Caution{caution("example.keep-cold", false)})
	for _, c := range r.Citations() {
		fmt.Println(c.Basis, c.Where)
	}
	// Output:
	// read Fish in Pint Jars, p. 5-10
	// practice usual caution
}

// The worst finding decides, whatever the order; doubt does not hide a failure, and a failure is no doubt.
func TestOfSortsAndDecides(t *testing.T) {
	at := func(v verdict.Verdict, minute int) verdict.Finding {
		from := time.Duration(minute) * time.Minute
		return verdict.Finding{Verdict: v, When: units.State(series.Stretch{From: from, To: from})}
	}
	a, b, c, d := at(verdict.CannotTell, 1), at(verdict.NotMet, 9), at(verdict.NotMet, 5), at(verdict.Met, 0)
	for _, findings := range [][]verdict.Finding{{a, b, c, d}, {d, c, b, a}, {b, d, a, c}} {
		r := verdict.Of(findings, []cite.Caution{caution("a", false), caution("b", true), caution("c", false), caution("d", true)})
		require.Equal(t, verdict.NotMet, r.Verdict)
		require.Empty(t, cmp.Diff([]verdict.Finding{c, b, a, d}, r.Findings))
		require.Equal(t, []cite.CautionID{"b", "d", "a", "c"}, []cite.CautionID{r.Cautions[0].ID, r.Cautions[1].ID, r.Cautions[2].ID, r.Cautions[3].ID})
	}
	require.Equal(t, verdict.Met, verdict.Of(nil, nil).Verdict)
	require.Equal(t, verdict.CannotTell, verdict.Report{}.Verdict)
}

// A report that is worse than its findings, such as one of a run that still goes on, stays so when it is joined.
func TestJoinKeepsTheWorst(t *testing.T) {
	goesOn := verdict.Report{Verdict: verdict.CannotTell}
	require.Equal(t, verdict.CannotTell, verdict.Join(goesOn, verdict.Of(nil, nil)).Verdict)
	require.Equal(t, verdict.Met, verdict.Join(verdict.Of(nil, nil)).Verdict)
}

// A finding that has no figure says its kind; a practice is wanted, not published.
func TestFindingText(t *testing.T) {
	read := cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "p. 5-10", Basis: cite.Read}
	moment := units.State(series.Stretch{From: 12*time.Minute + 5*time.Second, To: 12*time.Minute + 5*time.Second})
	for want, f := range map[string]verdict.Finding{
		"altitude: missing":                             {What: "altitude", Kind: verdict.Missing},
		"vent time: missing, at least 10 min published": {What: "vent time", Kind: verdict.Missing, Wanted: units.AtLeast(10 * time.Minute), Citation: read},
		"headspace: 0.5 in stated, 1 in published, different by 0.5 in": {What: "headspace", Kind: verdict.Different, Stated: units.Exactly(units.Inch / 2),
			Wanted: units.Exactly(units.Inch), By: units.AmountOf(units.Inch / 2), Citation: read},
		"method: dry salted, with a brine stated, one method wanted": {What: "method", Kind: verdict.Different, Stated: units.InWords("dry salted, with a brine"),
			Wanted: units.InWords("one method")},
		"pressure: 12 psi stated, 11 psi published, over by 1 psi (an older rule)": {What: "pressure", Kind: verdict.Over, Stated: units.Exactly(12 * units.PSI),
			Wanted: units.Exactly(11 * units.PSI), By: units.AmountOf(units.PSI), Citation: read, Known: cite.Caution{Text: "an older rule"}},
		"readings: not observed, at minute 12:05":             {What: "readings", Kind: verdict.Unobserved, When: moment},
		"steam: 200 °F recorded, impossible, at minute 12:05": {What: "steam", Kind: verdict.Impossible, Stated: units.Exactly(units.Fahrenheit(200)), When: moment},
	} {
		require.Equal(t, want, f.Text(units.US))
	}
	f := tooShort()
	require.Equal(t, f.Text(units.Both), f.String())
}

func BenchmarkOf(b *testing.B) {
	b.ReportAllocs()
	findings, cautions := []verdict.Finding{tooShort(), tooShort()}, []cite.Caution{caution("a", true), caution("b", false)}
	for i := 0; i < b.N; i++ {
		verdict.Of(findings, cautions)
	}
}
