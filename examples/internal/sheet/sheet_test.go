package sheet

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

func report() verdict.Report {
	from := cite.Citation{Source: cite.NISTSP811, Where: "B.8", Basis: cite.Read}
	return verdict.Of([]verdict.Finding{{
		Rule: "demo.hold", What: "hold", Kind: verdict.Short, Verdict: verdict.NotMet, When: units.State(series.Stretch{From: time.Minute, To: time.Hour}),
		Stated: units.Exactly(10 * units.PSI), Wanted: units.AtLeast(11 * units.PSI), By: units.AmountOf(1 * units.PSI), Citation: from,
	}}, []cite.Caution{{ID: "demo.later", Text: "Shown last."}, {ID: "demo.first", Text: "Shown first.", Deciding: true}, {ID: "demo.later", Text: "Shown last."}})
}

func printed(s units.System, sources bool) string {
	var out bytes.Buffer
	p := &Sheet{W: &out, System: s, Sources: sources}
	r := report()
	p.Verdict(r.Verdict, "an invented hold")
	p.Findings(r, func(series.Stretch) string { return "21:01 to 22:00" },
		func(rule verdict.Rule) string { return "answer to " + string(rule) })
	p.Do("hold again for %s", Text(p, 100*time.Minute))
	p.Line("%s, held %s, owed %s", Text(p, 11*units.PSI), Down(p, units.PSI/3), Up(p, units.PSI/3))
	p.Warn(report().Cautions...)
	p.Close()
	return out.String()
}

func TestSheet(t *testing.T) {
	require.Equal(t, `VERDICT: NOT MET: an invented hold
Why: hold: 10 psi recorded, at least 11 psi published, short by 1 psi, from minute 1 to 60 (21:01 to
  22:00); not met [1]
    answer to demo.hold
Do: hold again for 100 min
11 psi, held 0.33 psi, owed 0.34 psi

CAUTIONS
- Shown first. (demo.first)
- Shown last. (demo.later)

Sources: 1 document, 1 place in all; -sources lists them.
`, printed(units.US, false))
	metric := printed(units.Metric, true)
	require.NotContains(t, metric, "psi")
	require.Contains(t, metric, "kPa")
	require.Contains(t, metric, "\nSOURCES\n[1] ")
	require.NotContains(t, metric, "-sources lists")
}

// TestWrap: no part is longer than Width but a word that is, and no word is lost.
func TestWrap(t *testing.T) {
	for _, text := range []string{"", "short", strings.Repeat("word ", 100) + "end", strings.Repeat("x", 120) + " " +
		strings.Repeat("ö", 130), "    " + strings.Repeat("12 + ", 60) + "1"} {
		wrapped := Wrap(text, 4)
		require.Equal(t, strings.Fields(text), strings.Fields(wrapped))
		for _, line := range strings.Split(wrapped, "\n") {
			if len([]rune(line)) > Width {
				require.Len(t, strings.Fields(line), 1)
			}
		}
	}
	require.Equal(t, "a\n", Wrap("a", 2))
}

func TestFindingsOfNone(t *testing.T) {
	var out bytes.Buffer
	p := &Sheet{W: &out}
	p.Findings(verdict.Of(nil, nil), nil, nil)
	p.Close()
	require.Equal(t, "Why: nothing was found against it.\n", out.String())
}

func TestTable(t *testing.T) {
	var out bytes.Buffer
	p := &Sheet{W: &out}
	p.Table([]string{"fish", "°F"}, []string{"coho", "38", "x"}, []string{"ö"}, nil)
	require.Equal(t, "fish  °F\ncoho  38  x\nö\n\n", out.String())
}
