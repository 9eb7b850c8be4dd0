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
