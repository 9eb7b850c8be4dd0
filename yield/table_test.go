package yield

import (
	"strings"
	"testing"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

// key is what tells one row of shares from another.
func key(s Share) string {
	return strings.Join([]string{s.Species.String(), s.Stock, s.From.String(), s.To.String(), s.Citation.Source.Key(), s.Citation.Where, s.Citation.Basis.String()}, "|")
}

func printedKey(r printed.Row) string {
	return strings.Join([]string{r.Text("species"), r.Text("stock"), r.Text("from"), r.Text("to"), r.Text("source"), r.Text("place"), r.Text("basis")}, "|")
}

func allShares() map[string][]Share {
	byUse := map[string][]Share{"default": PlanningDefaults()}
	for s := Salmon; s <= OtherFish; s++ {
		byUse["table"] = append(byUse["table"], Shares(s)...)
	}
	return byUse
}

// Sources: the documents named in each row. The print's percentages are checked within half of their last digit,
// so that 100/1.13 must agree with 88.5.
func TestEveryPrintedShareComesOut(t *testing.T) {
	byUse := allShares()
	printed.Table(t, "yield/shares.csv").Each(t, func(t *testing.T, r printed.Row) {
		if r.Text("use") == "none" {
			require.NotEmpty(t, r.Text("note"), "a row left out says why")
			for _, s := range append(byUse["table"], byUse["default"]...) {
				require.NotEqual(t, printedKey(r), key(s), "a row left out came out")
			}
			return
		}
		var found []Share
		for _, s := range byUse[r.Text("use")] {
			if key(s) == printedKey(r) {
				found = append(found, s)
			}
		}
		require.Len(t, found, 1, "rows for %s", printedKey(r))
		checkFigures(t, r, found[0])
	})
}

func checkFigures(t *testing.T, r printed.Row, s Share) {
	t.Helper()
	in := func(share units.Ratio) float64 { return units.Float(share, units.Percent) }
	switch {
	case r.Has("low_percent"):
		require.Equal(t, map[string]Spread{"table": PrintedRange, "default": JudgedRange}[r.Text("use")], s.Spread)
		printed.WithinFloat(t, r, "low_percent", in(s.Low))
		printed.WithinFloat(t, r, "high_percent", in(s.High))
		require.Equal(t, s.Likely-s.Low, s.High-s.Likely)
		return
	case r.Has("sd_percent"):
		require.Equal(t, StandardDeviation, s.Spread)
		printed.WithinFloat(t, r, "sd_percent", in(s.High-s.Likely))
		printed.WithinFloat(t, r, "sd_percent", in(s.Likely-s.Low))
	default:
		require.Equal(t, Share{Low: s.Likely, High: s.Likely}, Share{Spread: s.Spread, Low: s.Low, High: s.High})
	}
	printed.Within(t, r, "percent", units.In(s.Likely, units.Percent, 10))
	if r.Has("factor") {
		require.True(t, units.In(s.Factor, units.One, 12).Equal(r.Decimal("factor")))
	} else {
		require.Zero(t, s.Factor)
	}
	if r.Has("part") {
		want, err := units.RatioOf(units.Mass(r.Int("part")), units.Mass(r.Int("whole")))
		require.NoError(t, err)
		require.Equal(t, want, s.Likely)
	}
}

func TestEveryShareIsInAPrintedCopy(t *testing.T) {
	copies := map[string]string{}
	for _, r := range printed.Table(t, "yield/shares.csv") {
		if r.Text("use") != "none" {
			copies[printedKey(r)] = r.Text("use")
		}
	}
	count := 0
	for use, shares := range allShares() {
		for _, s := range shares {
			require.Equal(t, use, copies[key(s)], key(s))
			count++
		}
	}
	require.Len(t, copies, count)
}

func TestEveryFigureIsCitedAndMarked(t *testing.T) {
	for _, shares := range allShares() {
		for _, s := range shares {
			require.NoError(t, s.Citation.Check(), key(s))
			require.True(t, 0 < s.Low && s.Low <= s.Likely && s.Likely <= s.High && s.High <= units.One, key(s))
			if s.Citation.Unverified() {
				require.NotEmpty(t, s.Cautions, key(s))
			}
		}
	}
	for _, l := range SmokingLosses() {
		require.NoError(t, l.Citation.Check(), l.Product)
		require.True(t, l.Low <= l.High)
	}
}

func TestSmokingLosses(t *testing.T) {
	var want []string
	rows := printed.Table(t, "yield/smoking-losses.csv")
	losses := SmokingLosses()
	for _, r := range rows {
		if r.Text("use") != "table" {
			require.NotEmpty(t, r.Text("note"))
			continue
		}
		require.Less(t, len(want), len(losses), "%s has no row in the code", r)
		l := losses[len(want)]
		got := []string{l.Product, l.Step, l.Citation.Source.Key(), l.Citation.Where, l.Citation.Basis.String()}
		require.Empty(t, cmp.Diff([]string{r.Text("product"), r.Text("step"), r.Text("source"), r.Text("place"), r.Text("basis")}, got), r.String())
		printed.WithinFloat(t, r, "low_percent", units.Float(l.Low, units.Percent))
		printed.WithinFloat(t, r, "high_percent", units.Float(l.High, units.Percent))
		want = append(want, l.Product)
	}
	require.Len(t, losses, len(want))
}

// The loss in salting is what the loss in smoking (7 to 9 %) leaves of the loss of both (16 to 18 %); steps multiply.
func TestImpliedSaltingLoss(t *testing.T) {
	losses := SmokingLosses()
	both, smoking := losses[0], losses[1]
	for _, r := range printed.Table(t, "yield/smoking-losses.csv") {
		if r.Text("basis") != cite.Computed.String() {
			continue
		}
		for column, end := range map[string][2]units.Ratio{"low_percent": {both.Low, smoking.Low}, "high_percent": {both.High, smoking.High}} {
			kept, err := units.RatioOf(units.One-end[0], units.One-end[1])
			require.NoError(t, err)
			printed.WithinFloat(t, r, column, units.Float(units.One-kept, units.Percent))
		}
		return
	}
	t.Fatal("the implied row is missing")
}

// Source: NPAFC statistical yearbook, table 26.
func TestMeanWeights(t *testing.T) {
	rows := printed.Table(t, "yield/mean-weights.csv")
	rows.Each(t, func(t *testing.T, r printed.Row) {
		species, err := ParseSpecies(r.Text("species"))
		require.NoError(t, err)
		w, err := MeanWeight(species)
		require.NoError(t, err)
		require.NoError(t, w.Citation.Check())
		require.Equal(t, []string{r.Text("source"), r.Text("place"), r.Text("basis")}, []string{w.Citation.Source.Key(), w.Citation.Where, w.Citation.Basis.String()})
		printed.Within(t, r, "mean_weight_kg", units.In(w.Mean, units.Kilogram, 16))
	})
	require.Len(t, weightTable, len(rows))
}
