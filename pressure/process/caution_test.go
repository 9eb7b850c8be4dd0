package process_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/process"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// What the guide says of a load is among its cautions with the place it is printed at; what older or unofficial pages say is not.
func TestStatements(t *testing.T) {
	printed.Table(t, "process/statements.csv").Each(t, func(t *testing.T, r printed.Row) {
		q := process.Request{Altitude: units.State(feet(t, r, "alt_ft"))}
		require.NoError(t, q.Product.UnmarshalText([]byte(r.Text("product"))))
		require.NoError(t, q.Jar.UnmarshalText([]byte(r.Text("jar"))))
		require.NoError(t, q.Gauge.UnmarshalText([]byte(r.Text("gauge"))))
		q.Pack = usualPack(q.Product)
		s, err := process.Find(q)
		require.NoError(t, err)
		var said []cite.Caution
		for _, c := range s.Cautions() {
			if strings.Contains(c.Text, r.Text("words")) {
				said = append(said, c)
			}
		}
		if r.Text("expect") == "never" {
			require.Empty(t, said)
			return
		}
		require.Equal(t, "said", r.Text("expect"))
		require.NotEmpty(t, said, "%q", r.Text("words"))
		for _, c := range said {
			if c.Citation == citation(t, r) {
				return
			}
		}
		t.Errorf("%q is cited as %v, not as %v", r.Text("words"), said, citation(t, r))
	})
}

// The other way round: every caution of an official schedule is in the copy.
func TestEveryCautionIsInTheCopy(t *testing.T) {
	var said []printed.Row
	for _, r := range printed.Table(t, "process/statements.csv") {
		if r.Text("expect") == "said" {
			said = append(said, r)
		}
	}
	for _, s := range process.Schedules() {
	cautions:
		for _, c := range s.Cautions() {
			for _, r := range said {
				if strings.Contains(c.Text, r.Text("words")) && c.Citation == citation(t, r) {
					continue cautions
				}
			}
			t.Errorf("%q, %v: not in the copy", c.Text, c.Citation)
		}
	}
}

// The slice is the caller's own, and every load has cautions of its own and of every process.
func TestCautionsAreFresh(t *testing.T) {
	for _, s := range process.Schedules() {
		first := s.Cautions()
		whole := append([]cite.Caution(nil), first...)
		for i := range first {
			first[i] = cite.Caution{}
		}
		_ = append(first, cite.Caution{Text: "another"})
		require.Equal(t, whole, s.Cautions())
		require.Greater(t, len(whole), 12)
	}
}
