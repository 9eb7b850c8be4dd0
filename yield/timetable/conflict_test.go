package timetable_test

import (
	"math/rand"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/yield/timetable"
)

// TestConflictsAgainstEnumeration: the parts of a conflict by themselves leave no starts, and with any one of them less some
// are left; a relief is enough, and one minute or one unit less is not.
func TestConflictsAgainstEnumeration(t *testing.T) {
	rng := rand.New(rand.NewSource(3))
	seen := map[timetable.PartKind]int{}
	reliefs := map[timetable.Answer]int{}
	for i := 0; i < 500; i++ {
		p := small(rng)
		if len(p.Tasks) > 3 || endless(p) > 24*time.Minute { // too many starts to try
			continue
		}
		table, err := timetable.Plan(p)
		require.NoError(t, err)
		if table.Answer != timetable.Impossible {
			continue
		}
		c := table.Conflict
		require.True(t, c.Minimal, "%d: %s", i, shown(p))
		require.False(t, startable(only(p, c.Parts)), "%d: %s\n%s", i, shown(p), c)
		for k, part := range c.Parts {
			others := append(append([]timetable.Part(nil), c.Parts[:k]...), c.Parts[k+1:]...)
			require.True(t, startable(only(p, others)), "%d: without %s: %s\n%s", i, part, shown(p), c)
			seen[part.Kind]++
			reliefs[part.Relief.Answer]++
			switch part.Relief.Answer {
			case timetable.Possible:
				require.True(t, part.Relief.Least)
				require.True(t, startable(relieved(p, part, 0)), "%d: %s: %s", i, part, shown(p))
				require.False(t, startable(relieved(p, part, 1)), "%d: %s: %s", i, part, shown(p))
			case timetable.Impossible:
				require.False(t, startable(without(p, part)), "%d: %s: %s", i, part, shown(p))
			}
		}
	}
	for kind := timetable.OfBound; kind <= timetable.OfRestart; kind++ {
		require.Greater(t, seen[kind], 2, kind)
	}
	require.Greater(t, reliefs[timetable.Possible], 30)
	require.Greater(t, reliefs[timetable.Impossible], 30)
	require.Zero(t, reliefs[timetable.Undecided])
}

// only is the problem with nothing but some parts of it.
func only(p timetable.Problem, parts []timetable.Part) timetable.Problem {
	none := p
	for _, kind := range []timetable.PartKind{timetable.OfEnd, timetable.OfRestart} {
		if !has(parts, timetable.Part{Kind: kind}) {
			none = without(none, timetable.Part{Kind: kind})
		}
	}
	for _, r := range p.Resources {
		for _, kind := range []timetable.PartKind{timetable.OfHours, timetable.OfCapacity} {
			if part := (timetable.Part{Kind: kind, Resource: r.Name}); !has(parts, part) {
				none = without(none, part)
			}
		}
	}
	for _, b := range p.Bounds {
		if part := (timetable.Part{Kind: timetable.OfBound, Bound: b}); !has(parts, part) {
			none = without(none, part)
		}
	}
	return none
}

func has(parts []timetable.Part, part timetable.Part) bool {
	for _, p := range parts {
		if p.Kind == part.Kind && p.Resource == part.Resource && p.Bound == part.Bound {
			return true
		}
	}
	return false
}

// without is the problem without a part of it.
func without(p timetable.Problem, part timetable.Part) timetable.Problem {
	resources, bounds := p.Resources, p.Bounds
	p.Resources, p.Bounds = nil, nil
	for _, r := range resources {
		switch {
		case part.Kind == timetable.OfHours && part.Resource == r.Name:
			r.Closed = nil
		case part.Kind == timetable.OfCapacity && part.Resource == r.Name:
			r.Capacity += 50
		}
		p.Resources = append(p.Resources, r)
	}
	for _, b := range bounds {
		if part.Kind != timetable.OfBound || b != part.Bound {
			p.Bounds = append(p.Bounds, b)
		}
	}
	switch part.Kind {
	case timetable.OfEnd:
		p.Until = endless(p)
	case timetable.OfRestart:
		p.Restart = timetable.Restart{}
	}
	return p
}

// relieved is the problem after a part has given way, by so many minutes or units less than its relief says.
func relieved(p timetable.Problem, part timetable.Part, less int) timetable.Problem {
	switch by := part.Relief.By - time.Duration(less)*time.Minute; part.Kind {
	case timetable.OfHours, timetable.OfRestart:
		if less == 0 {
			return without(p, part)
		}
	case timetable.OfEnd:
		p.Until += by
	case timetable.OfCapacity:
		p.Resources = append([]timetable.Resource(nil), p.Resources...)
		for i := range p.Resources {
			if p.Resources[i].Name == part.Resource {
				p.Resources[i].Capacity += part.Relief.Units - less
			}
		}
	case timetable.OfBound:
		p.Bounds = append([]timetable.Bound(nil), p.Bounds...)
		for i := range p.Bounds {
			if p.Bounds[i] == part.Bound {
				p.Bounds[i].Gap += by
			}
		}
	}
	return p
}

// endless is time enough for any problem that can be done at all: what is open, one after the other.
func endless(p timetable.Problem) time.Duration {
	var end time.Duration
	for _, r := range p.Resources {
		for _, w := range r.Closed {
			end = max(end, w.To)
		}
	}
	for _, t := range p.Tasks {
		for _, s := range t.Steps {
			end += s.Takes.Most
			if again(p, t.Name) {
				end += s.Takes.Most
			}
		}
	}
	for _, b := range p.Bounds {
		if b.Sense == timetable.NotBefore {
			end += max(b.Gap, 0)
		}
	}
	return end
}
