package season_test

import (
	"bytes"
	"encoding/json"
	"math/rand"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/season"
)

func TestLedgerGolden(t *testing.T) {
	l := halfYear(t)
	golden(t, "ledger", l)
	golden(t, "state", audit(t, l, day(t, "2026-05-02")))
	y := twoDays()
	y.Rule = l.Rule
	rest, err := audit(t, l, day(t, "2026-04-26")).YearFrom(y)
	require.NoError(t, err)
	golden(t, "start", rest.Start)
}

// The same entries as CSV and as JSON are the same, and a ledger and its state survive being saved.
func TestLedgersComeBack(t *testing.T) {
	l := halfYear(t)
	text, err := os.ReadFile("../../testdata/golden/season-ledger.json")
	require.NoError(t, err)
	var saved season.Ledger
	require.NoError(t, json.Unmarshal(text, &saved))
	require.Empty(t, cmp.Diff(l.Entries, saved.Entries))
	rng := rand.New(rand.NewSource(45))
	for i := 0; i < 40; i++ {
		l := randomLedger(t, rng, 30)
		requireBack(t, l)
		requireBack(t, audit(t, l, l.Start+10))
	}
}

func TestLedgerJSONRefuses(t *testing.T) {
	const head = `"unsealed": "until failed", "start": "2026-04-06", "fresh": ` + keeps
	for text, field := range map[string]string{
		`{` + rule + `, ` + head + `, "days": 3}`:                            "days",
		`{` + rule + `, "unsealed": "until failed", "fresh": ` + keeps + `}`: "start",
		`{` + rule + `, "start": "2026-04-06", "fresh": ` + keeps + `}`:      "unsealed",
		`{` + head + `}`:                "rule",
		`{"unsealed": "never"}`:         "unsealed",
		`{"start": "6 April"}`:          "start",
		`{"start": 20260406}`:           "start",
		`{"entries": null}`:             "entries",
		`{"products": [{"name": "a"}]}`: "products[0].keeps",
		`{"entries": [{"day": "2026-04-06", "event": "eaten", "batch": "P1", "count": 2.5}]}`:                      "entries[0].count",
		`{"entries": [{"day": "2026-04-06", "event": "eaten", "batch": "P1", "count": 2, "audit": "passed"}]}`:     "entries[0].audit",
		`{"entries": [{"day": "2026-04-06", "event": "lost", "batch": "P1", "count": 2}]}`:                         "entries[0].event",
		`{"entries": [{"day": "2026-04-31", "event": "eaten", "batch": "P1", "count": 2}]}`:                        "entries[0].day",
		`{"entries": [{"day": "2026-04-06", "event": "kept", "batch": "C1", "count": 2, "round": "5"}]}`:           "entries[0].round",
		`{"entries": [{"day": "2026-04-06", "event": "eaten", "batch": "P1", "count": 2, "day": "2026-04-06"}]}`:   "entries[0].day",
		`{"entries": [{"day": "2026-04-06", "event": "eaten", "batch": "P1", "count": 2, "after": "3"}]}`:          "entries[0].after",
		`{"entries": [{"day": "2026-04-06", "event": "eaten", "batch": "P1", "count": 2, "reason": "forgotten"}]}`: "entries[0].reason",
	} {
		var l season.Ledger
		err := json.Unmarshal([]byte(text), &l)
		var fault units.FieldError
		require.ErrorAs(t, err, &fault, text)
		require.Equal(t, field, fault.Field, text)
		require.Empty(t, cmp.Diff(season.Ledger{}, l))
	}
}

// TestParseEntriesRefuses: one fault at a time in a good file; the error says where.
func TestParseEntriesRefuses(t *testing.T) {
	const good = "day,event,batch,from,taken,count,product,round,audit,after\n2026-04-06,kept,C1,,,5,,15 kg,,\n2026-04-07,canned,P1,C1,3,18,pints,,met,\n"
	all, err := season.ParseEntries([]byte(good))
	require.NoError(t, err)
	require.Len(t, all, 2)
	all, err = season.ParseEntries([]byte(strings.ReplaceAll(good, "\n", "\r\n")))
	require.NoError(t, err, "line ends of another system")
	require.Len(t, all, 2)
	for _, c := range []struct {
		name, old, now, field string
		line                  int
	}{
		{"nothing", good, "", "", 1},
		{"a header without entries", good[strings.Index(good, "2026"):], "", "", 1},
		{"a column that is not known", "taken", "used", "header", 1},
		{"a column in capitals", "taken", "Taken", "header", 1},
		{"a column twice", "taken", "from", "header", 1},
		{"no day", "day,", "", "header", 1},
		{"no count", ",count", "", "header", 1},
		{"semicolons", ",", ";", "header", 1},
		{"a byte order mark", "day", "\ufeffday", "", 1},
		{"no UTF-8", "pints", "p\xefnts", "", 3},
		{"a cell too few", ",,15 kg,,", ",,15 kg,", "", 2},
		{"a cell too many", ",,15 kg,,", ",,15 kg,,,", "", 2},
		{"a quote in the midst", "15 kg", "15\" kg", "", 2},
		{"no day in a line", "2026-04-07", "", "day", 3},
		{"another date", "2026-04-07", "07/04/2026", "day", 3},
		{"a date without zeros", "2026-04-07", "2026-4-7", "day", 3},
		{"a time", "2026-04-07", "2026-04-07T10:00", "day", 3},
		{"the year 26", "2026-04-07", "0026-04-07", "day", 3},
		{"no event", "canned", "", "event", 3},
		{"an event that is not known", "canned", "bottled", "event", 3},
		{"no batch", "P1,", ",", "batch", 3},
		{"a batch with space", "P1", " P1", "", 3},
		{"a batch in two lines", "P1", "\"P\n1\"", "", 3},
		{"half a jar", "18", "17.5", "count", 3},
		{"no jar", "18", "0", "", 3},
		{"fewer than none", "18", "-18", "", 3},
		{"a plus", "18", "+18", "count", 3},
		{"thousands", "18", "\"18,000\"", "count", 3},
		{"too many", "18", "100000", "", 3},
		{"no count in a line", ",18,", ",,", "count", 3},
		{"a mass without a unit", "15 kg", "15", "round", 2},
		{"no mass of fish kept", "15 kg", "", "", 2},
		{"a mass below a gram", "15 kg", "4 g", "", 2},
		{"a mass of jars", "pints,", "pints,9 kg", "", 3},
		{"an audit of fish", "15 kg,", "15 kg,met", "", 2},
		{"an audit in other words", "met", "passed", "audit", 3},
		{"no origin", "C1,3", ",3", "", 3},
		{"nothing taken", "C1,3", "C1,", "", 3},
		{"no product", "pints", "", "", 3},
		{"an origin of fish", "C1,,", "C1,C0,", "", 2},
		{"taken for fish", "C1,,,", "C1,,5,", "", 2},
		{"hours for fish", "15 kg,,", "15 kg,,3 h", "", 2},
		{"hours without a unit", "met,", "met,3", "after", 3},
		{"hours before the heat was off", "met,", "met,-3 h", "", 3},
	} {
		text := strings.Replace(good, c.old, c.now, 1)
		if c.name == "semicolons" {
			text = strings.ReplaceAll(good, ",", ";")
		}
		_, err := season.ParseEntries([]byte(text))
		var fault units.FieldError
		require.ErrorAs(t, err, &fault, c.name)
		require.Equal(t, c.field, fault.Field, "%s: %v", c.name, err)
		require.Equal(t, c.line, fault.Line, "%s: %v", c.name, err)
		require.NotEmpty(t, fault.Err.Error())
	}
}

// TestAuditRefuses: one fault at a time in a good ledger.
func TestAuditRefuses(t *testing.T) {
	good := halfYear(t)
	on := day(t, "2026-05-01")
	audit(t, good, on)
	for name, spoil := range map[string]func(l *season.Ledger){
		"no rule":                func(l *season.Ledger) { l.Rule = season.Rule{} },
		"no counting":            func(l *season.Ledger) { l.Unsealed = 0 },
		"no start":               func(l *season.Ledger) { l.Start = 0 },
		"a start long ago":       func(l *season.Ledger) { l.Start = 5 },
		"no keeping of fish":     func(l *season.Ledger) { l.Fresh.Time = 0 },
		"a product without one":  func(l *season.Ledger) { l.Products[0].Keeps.Time = 0 },
		"a product twice":        func(l *season.Ledger) { l.Products[1].Name = "pints" },
		"a product without name": func(l *season.Ledger) { l.Products[1].Name = "" },
		"too many products":      func(l *season.Ledger) { l.Products = make([]season.Product, 201) },
		"too many entries":       func(l *season.Ledger) { l.Entries = make([]season.Entry, 100_001) },
		"no day":                 func(l *season.Ledger) { l.Entries[3].Day = 0 },
		"a day before 1900":      func(l *season.Ledger) { l.Entries[3].Day = -4 },
		"no event":               func(l *season.Ledger) { l.Entries[3].Event = 0 },
		"no count":               func(l *season.Ledger) { l.Entries[3].Count = 0 },
		"no batch":               func(l *season.Ledger) { l.Entries[3].Batch = "" },
		"no fish taken":          func(l *season.Ledger) { l.Entries[3].Taken = 0 },
		"a tonne of fish":        func(l *season.Ledger) { l.Entries[1].Round = 2 * units.Tonne },
		"hours of years":         func(l *season.Ledger) { l.Entries[3].After = units.State(1 << 62 * time.Nanosecond) },
	} {
		l := good
		l.Entries = append([]season.Entry(nil), good.Entries...)
		l.Products = append([]season.Product(nil), good.Products...)
		spoil(&l)
		_, err := season.Audit(l, on)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	for name, spoil := range map[string]func(l *season.Ledger){
		"an event that is not known":   func(l *season.Ledger) { l.Entries[3].Event = 99 },
		"a counting that is not known": func(l *season.Ledger) { l.Unsealed = 9 },
		"a product that is not known":  func(l *season.Ledger) { l.Entries[3].Product = "quarts" },
		"an audit that is none":        func(l *season.Ledger) { l.Entries[3].Audit = units.State(verdict.Verdict(44)) },
		"a name in two lines":          func(l *season.Ledger) { l.Entries[3].Batch = "P\n1" },
	} {
		l := good
		l.Entries = append([]season.Entry(nil), good.Entries...)
		spoil(&l)
		_, err := season.Audit(l, on)
		require.ErrorIs(t, err, units.ErrSyntax, name)
	}
	for _, on := range []season.Day{0, -1, 5, 900_000} {
		_, err := season.Audit(good, on)
		require.ErrorIs(t, err, units.ErrRange)
	}
}

// FuzzParseEntries: no text makes it fail otherwise than by an error that says where, and every ledger that is read
// has a state.
func FuzzParseEntries(f *testing.F) {
	f.Add(printed.File(f, "season/records/ledger-year.csv"))
	for _, text := range ledgerCases(f) {
		f.Add(text)
	}
	l := kitchen(f)
	f.Fuzz(func(t *testing.T, text []byte) {
		var err error
		if l.Entries, err = season.ParseEntries(text); err != nil {
			var fault units.FieldError
			require.ErrorAs(t, err, &fault)
			require.Positive(t, fault.Line)
			require.Positive(t, fault.Column)
			return
		}
		s, err := season.Audit(l, l.Start+40)
		if err != nil {
			return // a product that this kitchen does not make
		}
		conserves(t, l, s)
		again, err := season.ParseEntries(bytes.ReplaceAll(text, []byte("\r\n"), []byte("\n")))
		require.NoError(t, err)
		require.Equal(t, l.Entries, again)
	})
}

// FuzzLedgerJSON: no text makes it fail otherwise than by an error, and what is read is written as it was.
func FuzzLedgerJSON(f *testing.F) {
	text, err := json.Marshal(halfYear(f))
	require.NoError(f, err)
	f.Add(text)
	f.Add([]byte(`{"entries": [{"day": "2026-04-06", "event": "eaten", "batch": "P1", "count": 2}]}`))
	f.Fuzz(func(t *testing.T, text []byte) {
		var l season.Ledger
		if json.Unmarshal(text, &l) != nil {
			return
		}
		requireBack(t, l)
		if s, err := season.Audit(l, l.Start); err == nil {
			conserves(t, l, s)
			requireBack(t, s)
		}
	})
}
