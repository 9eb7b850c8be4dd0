package timetable_test

import (
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/yield/timetable"
)

// TestCasesWorkedByHand: answer, finish, starts, parts of the conflict and first relief are those of the table.
func TestCasesWorkedByHand(t *testing.T) {
	printed.Table(t, "timetable/cases.csv").Each(t, func(t *testing.T, r printed.Row) {
		p := problemOf(t, r)
		table, err := timetable.Plan(p)
		require.NoError(t, err)
		require.Equal(t, r.Text("answer"), table.Answer.String(), "%s: %s", r.Text("case"), table)
		if table.Answer == timetable.Possible {
			require.Equal(t, wholeMinutes(r.Int("finish_min")), table.Finish, r.Text("case"))
			require.True(t, table.Least())
			starts := map[string]string{}
			for _, s := range table.Slots {
				starts[s.Task] = strconv.Itoa(minutes(s.Start))
			}
			for _, want := range list(r.Text("starts_min")) {
				task, start, _ := strings.Cut(want, " ")
				require.Equal(t, start, starts[task], "%s: %s", r.Text("case"), table)
			}
			return
		}
		require.Empty(t, cmp.Diff(list(r.Text("parts")), partsOf(p, table.Conflict)), "%s: %s", r.Text("case"), table)
		require.True(t, table.Conflict.Minimal)
		require.Equal(t, r.Text("relief"), reliefOf(table.Conflict.Parts[0].Relief), r.Text("case"))
	})
}

func wholeMinutes(n int64) time.Duration { return time.Duration(n) * time.Minute }

// partsOf are the parts of a conflict as the table names them: a bound by its number.
func partsOf(p timetable.Problem, c timetable.Conflict) []string {
	var parts []string
	for _, part := range c.Parts {
		switch part.Kind {
		case timetable.OfEnd:
			parts = append(parts, "end")
		case timetable.OfRestart:
			parts = append(parts, "restart")
		case timetable.OfBound:
			for i, b := range p.Bounds {
				if b == part.Bound {
					parts = append(parts, strconv.Itoa(i+1))
				}
			}
		default:
			parts = append(parts, part.Kind.String()+" of "+part.Resource)
		}
	}
	return parts
}

func reliefOf(r timetable.Relief) string {
	switch {
	case r.By > 0:
		return "+" + strconv.Itoa(minutes(r.By)) + " min"
	case r.Units > 0:
		return strconv.Itoa(r.Units) + " more"
	}
	return ""
}

// list are the parts of a cell.
func list(cell string) []string {
	if cell == "" {
		return nil
	}
	return strings.Split(cell, "; ")
}

func problemOf(t *testing.T, r printed.Row) timetable.Problem {
	t.Helper()
	p := timetable.Problem{Until: wholeMinutes(r.Int("until_min"))}
	p.Restart.Tasks = strings.Fields(r.Text("restart"))
	for _, cell := range list(r.Text("resources")) {
		p.Resources = append(p.Resources, resourceOf(t, strings.Fields(cell)))
	}
	for _, cell := range list(r.Text("tasks")) {
		words := strings.Fields(cell)
		task := timetable.Task{Name: words[0], Uses: usesOf(t, words[2:])}
		for _, step := range strings.Split(words[1], "+") {
			times, use, used := strings.Cut(step, ":")
			s := timetable.Step{Takes: timesOf(t, times)}
			if used {
				s.Uses = usesOf(t, []string{use})
			}
			task.Steps = append(task.Steps, s)
		}
		p.Tasks = append(p.Tasks, task)
	}
	for _, cell := range list(r.Text("bounds")) {
		p.Bounds = append(p.Bounds, boundOf(t, cell))
	}
	return p
}

// resourceOf reads "person 2 closed 3-8 left 1".
func resourceOf(t *testing.T, words []string) timetable.Resource {
	t.Helper()
	r := timetable.Resource{Name: words[0], Capacity: whole(t, words[1])}
	if len(words) > 3 {
		from, to, _ := strings.Cut(words[3], "-")
		w := timetable.Window{From: wholeMinutes(int64(whole(t, from))), To: wholeMinutes(int64(whole(t, to)))}
		if len(words) > 5 {
			w.Left = whole(t, words[5])
		}
		r.Closed = append(r.Closed, w)
	}
	return r
}

// timesOf reads "3" and "2..4".
func timesOf(t *testing.T, text string) timetable.Times {
	t.Helper()
	least, most, spread := strings.Cut(text, "..")
	if !spread {
		most = least
	}
	return between(whole(t, least), whole(t, most))
}

// usesOf reads "oven" and "racks*3".
func usesOf(t *testing.T, words []string) []timetable.Use {
	t.Helper()
	var uses []timetable.Use
	for _, word := range words {
		resource, count, counted := strings.Cut(word, "*")
		if !counted {
			count = "1"
		}
		uses = append(uses, timetable.Use{Resource: resource, Count: whole(t, count)})
	}
	return uses
}

// boundOf reads "B start not after A end + 1" and "B end not after plan + 5".
func boundOf(t *testing.T, cell string) timetable.Bound {
	t.Helper()
	for _, sense := range []timetable.Sense{timetable.NotBefore, timetable.NotAfter} {
		to, rest, found := strings.Cut(cell, " "+sense.String()+" ")
		if !found {
			continue
		}
		from, gap, _ := strings.Cut(rest, " + ")
		return timetable.Bound{To: momentOf(t, to), Sense: sense, From: momentOf(t, from), Gap: wholeMinutes(int64(whole(t, gap)))}
	}
	require.Fail(t, "no bound", cell)
	return timetable.Bound{}
}

func momentOf(t *testing.T, text string) timetable.Moment {
	t.Helper()
	if text == "plan" {
		return timetable.Moment{}
	}
	task, word, _ := strings.Cut(text, " ")
	edge, err := timetable.ParseEdge(word)
	require.NoError(t, err)
	return timetable.Moment{Task: task, Edge: edge}
}

func whole(t *testing.T, text string) int {
	t.Helper()
	n, err := strconv.Atoi(text)
	require.NoError(t, err)
	return n
}
