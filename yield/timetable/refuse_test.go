package timetable_test

import (
	"errors"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/timetable"
)

// sound is a problem that Plan accepts, for the refusals to spoil.
func sound() timetable.Problem {
	return timetable.Problem{
		Until:     10 * time.Hour,
		Resources: []timetable.Resource{{Name: "canner", Capacity: 2, Closed: []timetable.Window{{From: 8 * time.Hour, To: 9 * time.Hour, Left: 1}}}},
		Tasks: []timetable.Task{
			{Name: "cut", Steps: []timetable.Step{{Takes: timetable.Exactly(time.Hour)}}},
			{Name: "can", Steps: []timetable.Step{{Name: "vent", Takes: between(10, 20)}, {Name: "hold", Takes: between(100, 100)}},
				Uses: []timetable.Use{{Resource: "canner", Count: 1}}},
		},
		Bounds:  []timetable.Bound{timetable.After("can", "cut"), timetable.By("can", 5*time.Hour)},
		Restart: timetable.Restart{Tasks: []string{"can"}, Within: units.State(9 * time.Hour)},
	}
}

func TestSoundIsAccepted(t *testing.T) {
	p := sound()
	table, err := timetable.Plan(p)
	require.NoError(t, err)
	require.Equal(t, timetable.Possible, table.Answer)
}

// Each problem is refused with its value and what was expected.
func TestRefused(t *testing.T) {
	second := time.Second
	for name, c := range map[string]struct {
		spoil func(p *timetable.Problem)
		want  string
	}{
		"nothing":               {func(p *timetable.Problem) { *p = timetable.Problem{} }, "number of tasks 0 is out of range: expected 1 to 120"},
		"too many tasks":        {func(p *timetable.Problem) { p.Tasks = make([]timetable.Task, 121) }, "number of tasks 121"},
		"too many resources":    {func(p *timetable.Problem) { p.Resources = make([]timetable.Resource, 17) }, "number of resources 17"},
		"too many bounds":       {func(p *timetable.Problem) { p.Bounds = make([]timetable.Bound, 1001) }, "number of bounds 1001"},
		"no end":                {func(p *timetable.Problem) { p.Until = 0 }, "end of the plan 0 min is out of range: expected 1 s to 744 h"},
		"end too far":           {func(p *timetable.Problem) { p.Until = 745 * time.Hour }, "end of the plan 745 h"},
		"end not whole":         {func(p *timetable.Problem) { p.Until = time.Hour + 1 }, `end of the plan "1h0m0.000000001s": expected whole seconds`},
		"steps below zero":      {func(p *timetable.Problem) { p.Steps = -1 }, "steps of the search -1"},
		"too many search steps": {func(p *timetable.Problem) { p.Steps = timetable.MostSteps + 1 }, "expected 0 to 5000000"},
		"task without name":     {func(p *timetable.Problem) { p.Tasks[0].Name = "" }, `task 1 "": expected a name of one line`},
		"task in two lines":     {func(p *timetable.Problem) { p.Tasks[0].Name = "cut\nfish" }, `task 1 "cut\nfish": expected a name of one line`},
		"task twice":            {func(p *timetable.Problem) { p.Tasks[1].Name = "cut" }, `task 2 "cut": expected a name of its own`},
		"long name":             {func(p *timetable.Problem) { p.Tasks[0].Name = strings.Repeat("a", 201) }, "1 to 200 bytes"},
		"no steps":              {func(p *timetable.Problem) { p.Tasks[0].Steps = nil }, `task "cut": number of steps 0`},
		"nine steps":            {func(p *timetable.Problem) { p.Tasks[0].Steps = make([]timetable.Step, 9) }, `task "cut": number of steps 9`},
		"step twice":            {func(p *timetable.Problem) { p.Tasks[1].Steps[1].Name = "vent" }, `task "can": step 2 "vent": expected a name of its own`},
		"no duration":           {func(p *timetable.Problem) { p.Tasks[0].Steps[0].Takes = timetable.Times{} }, `task "cut": step 1: most 0 min is out of range: expected 1 s to 744 h`},
		"no least":              {func(p *timetable.Problem) { p.Tasks[0].Steps[0].Takes.Least = 0 }, "step 1: least 0 min is out of range: expected 1 s to 1 h"},
		"least above most":      {func(p *timetable.Problem) { p.Tasks[0].Steps[0].Takes.Least = 2 * time.Hour }, "step 1: least 2 h is out of range: expected 1 s to 1 h"},
		"unlikely":              {func(p *timetable.Problem) { p.Tasks[0].Steps[0].Takes.Likely = time.Minute }, "step 1: likely 1 min is out of range: expected 1 h to 1 h"},
		"a month of salt":       {func(p *timetable.Problem) { p.Tasks[0].Steps[0].Takes = timetable.Exactly(800 * time.Hour) }, "step 1: most 800 h"},
		"half a second":         {func(p *timetable.Problem) { p.Tasks[0].Steps[0].Takes = timetable.Exactly(second / 2) }, `step 1: most "500ms": expected whole seconds`},
		"unknown resource":      {func(p *timetable.Problem) { p.Tasks[1].Uses[0].Resource = "smoker" }, `task "can": resource "smoker": expected one that the problem has`},
		"unknown in a step": {func(p *timetable.Problem) { p.Tasks[0].Steps[0].Uses = []timetable.Use{{Resource: "smoker", Count: 1}} },
			`task "cut": step 1: resource "smoker"`},
		"used twice":            {func(p *timetable.Problem) { p.Tasks[1].Uses = append(p.Tasks[1].Uses, p.Tasks[1].Uses[0]) }, `resource used "canner": expected a name of its own`},
		"none used":             {func(p *timetable.Problem) { p.Tasks[1].Uses[0].Count = 0 }, "count of canner 0 is out of range: expected 1 to 1000"},
		"resource without name": {func(p *timetable.Problem) { p.Resources[0].Name = " canner" }, `resource 1 " canner"`},
		"no capacity":           {func(p *timetable.Problem) { p.Resources[0].Capacity = 0 }, `resource "canner": capacity 0`},
		"window backwards":      {func(p *timetable.Problem) { p.Resources[0].Closed[0].To = 8 * time.Hour }, `window 1: to 8 h is out of range: expected 8 h 1 s to`},
		"window before":         {func(p *timetable.Problem) { p.Resources[0].Closed[0].From = -time.Hour }, `window 1: from -1 h`},
		"closed to none":        {func(p *timetable.Problem) { p.Resources[0].Closed[0].Left = 2 }, `window 1: left 2 is out of range: expected 0 to 1`},
		"bound to nobody":       {func(p *timetable.Problem) { p.Bounds[0].To.Task = "smoke" }, `bound 1: to: task "smoke": expected one that the problem has`},
		"bound by a name":       {func(p *timetable.Problem) { p.Bounds[0].Name, p.Bounds[0].From.Task = "first cut", "gut" }, `bound "first cut": from: task "gut"`},
		"bound to no step":      {func(p *timetable.Problem) { p.Bounds[0].To.Step = "cool" }, `bound 1: to "can": step "cool"`},
		"bound without edge":    {func(p *timetable.Problem) { p.Bounds[0].To.Edge = 0 }, `bound 1: to "can": edge "not stated": expected start or end`},
		"edge of the plan":      {func(p *timetable.Problem) { p.Bounds[0].From = timetable.Moment{Edge: timetable.Start} }, "expected a task, or nothing for the start of the plan"},
		"bound without sense":   {func(p *timetable.Problem) { p.Bounds[0].Sense = 0 }, `bound 1: sense "not stated": expected not before or not after`},
		"bound of one task":     {func(p *timetable.Problem) { p.Bounds[0].From.Task = "can" }, "expected moments of two tasks, or of a task and the plan"},
		"bound of no task":      {func(p *timetable.Problem) { p.Bounds[0].From, p.Bounds[0].To = timetable.Moment{}, timetable.Moment{} }, "expected moments of two tasks"},
		"gap too far":           {func(p *timetable.Problem) { p.Bounds[0].Gap = -745 * time.Hour }, "bound 1: gap -745 h is out of range: expected -744 h to 744 h"},
		"half a citation":       {func(p *timetable.Problem) { p.Bounds[0].Citation = cite.Citation{Where: "page 3"} }, "bound 1: "},
		"bound in two lines":    {func(p *timetable.Problem) { p.Bounds[0].Name = "a\nb" }, `expected a name of one line`},
		"restart nobody":        {func(p *timetable.Problem) { p.Restart.Tasks[0] = "smoke" }, `room to restart: task "smoke"`},
		"restart twice":         {func(p *timetable.Problem) { p.Restart.Tasks = []string{"can", "can"} }, `room to restart: task "can": expected a name of its own`},
		"restart within none":   {func(p *timetable.Problem) { p.Restart.Within = units.State(time.Duration(0)) }, "room to restart: within 0 min"},
		"within of no restart":  {func(p *timetable.Problem) { p.Restart.Tasks = nil }, `room to restart: within "9 h": expected tasks that it holds for`},
	} {
		p := sound()
		c.spoil(&p)
		table, err := timetable.Plan(p)
		require.ErrorContains(t, err, c.want, name)
		require.Zero(t, table.Answer, name)
		var input timetable.InputError
		var incomplete cite.IncompleteError
		require.True(t, errors.Is(err, units.ErrRange) || errors.As(err, &input) || errors.As(err, &incomplete), name)
	}
}

func TestWords(t *testing.T) {
	for s := timetable.NotBefore; s <= timetable.NotAfter; s++ {
		back, err := timetable.ParseSense(s.String())
		require.NoError(t, err)
		require.Equal(t, s, back)
	}
	for a := timetable.Possible; a <= timetable.Undecided; a++ {
		var back timetable.Answer
		text, err := a.MarshalText()
		require.NoError(t, err)
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, a, back)
	}
	for k := timetable.OfBound; k <= timetable.OfRestart; k++ {
		var back timetable.PartKind
		text, err := k.MarshalText()
		require.NoError(t, err)
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, k, back)
	}
	var e timetable.Edge
	require.NoError(t, e.UnmarshalText([]byte("END")))
	require.Equal(t, timetable.End, e)
	for _, bad := range []string{"no answer", "answer(1)", "maybe", "not asked"} {
		a := timetable.Possible
		require.ErrorIs(t, a.UnmarshalText([]byte(bad)), units.ErrSyntax)
		require.Equal(t, timetable.Possible, a)
	}
	for _, err := range []error{
		func() error { _, err := timetable.ParseSense("after"); return err }(),
		func() error { _, err := timetable.ParseEdge("middle"); return err }(),
		func() error { _, err := timetable.ParsePartKind("person"); return err }(),
		func() error { _, err := timetable.Sense(9).MarshalText(); return err }(),
	} {
		require.ErrorIs(t, err, units.ErrSyntax)
	}
}
