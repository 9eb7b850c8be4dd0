package main

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// TestLanes: everything that occupies a resource is drawn in as many of its lanes as it occupies, and nothing over anything.
func TestLanes(t *testing.T) {
	for name, k := range kitchens(t) {
		most, err := k.most()
		require.NoError(t, err)
		w, err := k.plan(most.fish)
		require.NoError(t, err)
		a := answer{kitchen: k, work: w}
		drawn := map[string]time.Duration{}
		for _, l := range a.lanes() {
			for i, b := range l.blocks {
				drawn[strings.Fields(l.name)[0]] += b.latest - b.start
				require.True(t, i == 0 || l.blocks[i-1].latest <= b.start, "%s: %s: %s", name, l.name, b.name)
			}
		}
		want := map[string]time.Duration{}
		for _, s := range w.table.Slots {
			for _, r := range w.problem.Resources {
				for _, b := range occupied(s, taskOf(w.problem, s.Task), r.Name) {
					occupied := time.Duration(b.count) * (b.latest - b.start)
					want[laneOf(r.Name)] += occupied
				}
			}
		}
		if w.loads > 0 {
			spare := w.table.Spare.Latest - w.table.Spare.Start
			want[laneOf(people)] += spare
			want[laneOf(canned)] += spare
		}
		require.Equal(t, want, drawn, name)
	}
}

func laneOf(resource string) string { return strings.Replace(resource, people, "person", 1) }
