package answers

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

// example is the invented example of a section, with changes.
func example(t *testing.T, name string, changes ...string) Request {
	t.Helper()
	for _, s := range Sections() {
		if s.Name != name {
			continue
		}
		values := map[string]string{}
		for field, text := range s.Example {
			values[field] = text
		}
		for i := 0; i < len(changes); i += 2 {
			values[changes[i]] = changes[i+1]
		}
		return Request{Section: name, Values: values}
	}
	t.Fatalf("no section %s", name)
	return Request{}
}

// TestExamples: every section answers its invented example without a fault, in one system of units throughout.
func TestExamples(t *testing.T) {
	for _, s := range Sections() {
		r := example(t, s.Name)
		require.Empty(t, Of(r).Faults, s.Name)
		require.NotEmpty(t, Of(r).Lines(), s.Name)
		for system, others := range map[units.System][]string{units.US: {" kPa", " °C", " mm"}, units.Metric: {" psi", " °F", " ft"}} {
			r.System = system
			a := Of(r)
			for _, b := range a.Blocks {
				for _, l := range b.Lines {
					for _, other := range others {
						require.NotContains(t, l.Text, other, s.Name)
					}
				}
			}
		}
	}
}

// TestRun: a run is judged only when the way that its record is read was confirmed.
func TestRun(t *testing.T) {
	data, err := os.ReadFile(filepath.Join("..", "..", "canningday", "night.csv"))
	require.NoError(t, err)
	r := example(t, "canner")
	r.Files = map[string]File{"run": {Name: "night.csv", Data: data}}
	a := Of(r)
	require.Empty(t, a.Faults)
	require.Empty(t, a.Verdict)
	require.Len(t, a.Asks, 1)
	require.Equal(t, Reading, a.Asks[0].Ask)
	r.Files["run"] = File{Name: "night.csv", Data: data, Confirmed: true}
	a = Of(r)
	require.Equal(t, "not met", a.Verdict)
	require.Contains(t, a.Picture, "<svg")
}

func library(t *testing.T) []Table {
	t.Helper()
	dir := filepath.Join("..", "..", "..", "testdata")
	index, err := os.ReadFile(filepath.Join(dir, "README.md"))
	require.NoError(t, err)
	all, err := ReadTables(string(index), func(name string) ([]byte, error) { return os.ReadFile(filepath.Join(dir, filepath.FromSlash(name))) })
	require.NoError(t, err)
	return all
}

// TestTables: every table of the index is there, every row of it is found by its own name, and by the words in it.
func TestTables(t *testing.T) {
	all := library(t)
	require.Greater(t, len(all), 190)
	rows := 0
	for _, table := range all {
		rows += len(table.Rows)
		for i, row := range table.Rows {
			require.Len(t, row, len(table.Head), table.ID)
			if i%7 != 0 {
				continue
			}
			a := Of(Request{Section: "tables", Tables: all, Values: map[string]string{"table": table.ID, "row": table.named(row)}})
			require.Empty(t, a.Faults, table.ID)
			require.Len(t, a.Blocks, 2, "%s %s", table.ID, table.named(row))
		}
	}
	require.Greater(t, rows, 5000)
	a := Of(Request{Section: "tables", Tables: all, Values: map[string]string{"search": "fish pint dial 2001 LL-PROC-03"}})
	require.Contains(t, a.Lines(), "LL-PROC-03, fish / raw / pint / dial / 2001")
	for _, values := range []map[string]string{{"table": "LL-PROC-99"}, {"row": "fish"}, {"table": "LL-PROC-03", "row": "pike"}} {
		require.NotEmpty(t, Of(Request{Section: "tables", Tables: all, Values: values}).Faults)
	}
	require.Equal(t, "0 rows found", Of(Request{Section: "tables", Tables: all, Values: map[string]string{"search": "zzzz"}}).Headline)
}

// dropped is the example of a section with a confirmed record of another example beside it.
func dropped(t *testing.T, section, drop string, place ...string) Request {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(append([]string{"..", ".."}, place...)...))
	require.NoError(t, err)
	r := example(t, section)
	r.Files = map[string]File{drop: {Name: place[len(place)-1], Data: data, Confirmed: true}}
	return r
}

// TestRecords: the invented records are judged as the programs that they come from judge them.
func TestRecords(t *testing.T) {
	a := Of(dropped(t, "water", "log", "coolerlog", "coho.csv"))
	require.Empty(t, a.Faults)
	require.Equal(t, "not met", a.Verdict)
	require.Contains(t, a.Picture, "<svg")
	r := dropped(t, "cure", "core", "smokeday", "core.csv")
	a = Of(r)
	require.NotEmpty(t, a.Asks, "a logger with two probes is asked about")
	f := r.Files["core"]
	f.Replies = []Reply{{Ask: a.Asks[0].Ask, Answer: a.Asks[0].Choices[0].Answer}}
	r.Files["core"] = f
	a = Of(r)
	require.Empty(t, a.Faults)
	require.Empty(t, a.Asks)
	require.NotEmpty(t, a.Verdict)
}

// TestRecipe: parts that pass one by one are no recipe that passes, and what falls short is not met.
func TestRecipe(t *testing.T) {
	require.Equal(t, "not met", Of(example(t, "recipe")).Verdict)
	mended := example(t, "recipe", "pressure", "13 psi", "process", "100 min")
	require.NotEqual(t, "met", Of(mended).Verdict)
	for _, f := range recipeSection().Fields {
		if f.Group != "Its process in jars" {
			delete(mended.Values, f.Name)
		}
	}
	require.Equal(t, "met", Of(mended).Verdict)
	mended.Values["jar"] = "half-gallon"
	require.Equal(t, "not published", Of(mended).Verdict)
	for field, text := range map[string]string{"altitude": "4350", "pressure": "13", "salt": "60 mL", "core": "hot", "days": "two", "smokeTime": "six", "gauge": "bath"} {
		require.NotEmpty(t, Of(example(t, "recipe", field, text)).Faults, field)
	}
}

// TestYear: the year of the example cannot be held, and says so; trips and limits that cannot be are refused.
func TestYear(t *testing.T) {
	a := Of(example(t, "year"))
	require.Contains(t, a.Headline, "feasible")
	require.Len(t, a.Blocks[2].Rows, 20)
	for field, text := range map[string]string{
		"people": "0", "weeks": "many", "meals": "22", "serving": "4", "fish": "3 ft", "served": "790 %", "yield": "70", "shape": "all", "anglers": "-1",
		"daily": "", "trips": "first", "catch": "5 fish",
	} {
		require.NotEmpty(t, Of(example(t, "year", field, text)).Faults, field)
	}
}

// TestRefusedElsewhere: what cannot be is refused in the other sections too.
func TestRefusedElsewhere(t *testing.T) {
	for _, c := range [][3]string{
		{"jar", "altitude", "4350"}, {"jar", "jar", ""}, {"jar", "radius", "0 mm"}, {"jar", "height", "tall"}, {"jar", "start", "10"}, {"jar", "trapped", "120 %"},
		{"jar", "low", "99 psi"}, {"cure", "mass", "0 lb"}, {"cure", "thickness", "1"}, {"cure", "water", "140 %"}, {"cure", "saltToFish", "-1 %"},
		{"cure", "time", "1:40"}, {"cure", "salt", "sea"}, {"water", "fish", "68"}, {"water", "to", "90 °F"}, {"water", "gutted", "soon"}, {"water", "stood", "0 h"},
	} {
		require.NotEmpty(t, Of(example(t, c[0], c[1], c[2])).Faults, c)
	}
}

// TestLinks: no pressure is shown of a link before altitude, jar and gauge are confirmed.
func TestLinks(t *testing.T) {
	for _, name := range []string{"canner", "jar", "recipe"} {
		r := example(t, name)
		r.FromLink = true
		a := Of(r)
		require.GreaterOrEqual(t, len(a.Confirm), 3, name)
		require.Empty(t, a.Blocks, name)
		require.Empty(t, a.Verdict, name)
		require.Empty(t, a.Picture, name)
	}
}
