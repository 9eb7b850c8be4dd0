package timetable_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/timetable"
)

// An invented evening: two loads for one canner, and one person who goes to bed at 8 h.
func evening() timetable.Problem {
	load := func(name string) timetable.Task {
		return timetable.Task{
			Name: name,
			Steps: []timetable.Step{
				{Name: "heat and vent", Takes: timetable.Times{Least: 20 * time.Minute, Likely: 25 * time.Minute, Most: 30 * time.Minute}},
				{Name: "process", Takes: timetable.Exactly(100 * time.Minute)},
				{Name: "cool", Takes: timetable.Times{Least: 40 * time.Minute, Likely: 45 * time.Minute, Most: time.Hour}},
			},
			Uses: []timetable.Use{{Resource: "canner", Count: 1}, {Resource: "cook", Count: 1}},
		}
	}
	cut := timetable.Task{
		Name:  "cut and pack",
		Steps: []timetable.Step{{Takes: timetable.Times{Least: 30 * time.Minute, Likely: 45 * time.Minute, Most: time.Hour}}},
		Uses:  []timetable.Use{{Resource: "cook", Count: 1}},
	}
	return timetable.Problem{
		Until: 24 * time.Hour,
		Resources: []timetable.Resource{
			{Name: "canner", Capacity: 1},
			{Name: "cook", Capacity: 1, Closed: []timetable.Window{{From: 8 * time.Hour, To: 16 * time.Hour}}},
		},
		Tasks: []timetable.Task{cut, load("load 1"), load("load 2")},
		Bounds: []timetable.Bound{
			timetable.After("load 1", "cut and pack"), timetable.After("load 2", "cut and pack"),
			timetable.Within("load 1", "cut and pack", 2*time.Hour),
		},
	}
}

func ExamplePlan() {
	table, err := timetable.Plan(evening())
	fmt.Println(table, err)
	for _, step := range table.Slots[1].Steps {
		fmt.Println(step.Step, "starts between", units.Lasting(step.Earliest), "and", units.Lasting(step.Latest))
	}
	// Output:
	// possible: all has ended by 7 h 20 min, and no fixed starts end sooner (0 steps)
	// cut and pack: not before 0 min, ends at 30 min to 1 h
	// load 1: not before 1 h, ends at 3 h 40 min to 4 h 10 min
	// load 2: not before 4 h 10 min, ends at 6 h 50 min to 7 h 20 min <nil>
	// heat and vent starts between 1 h and 1 h
	// process starts between 80 min and 90 min
	// cool starts between 3 h and 3 h 10 min
}

// Both loads are wanted by 6 h. The second can be later; the first cannot, as its fish has been cut and waits for 2 h
// at most.
func ExamplePlan_impossible() {
	p := evening()
	p.Bounds = append(p.Bounds, timetable.By("load 1", 6*time.Hour), timetable.By("load 2", 6*time.Hour))
	table, err := timetable.Plan(p)
	fmt.Println(table, err)
	// Output:
	// impossible: proven (10 steps)
	// these cannot hold together, and any one less can:
	// - the end of load 2 not after the start of the plan + 6 h: 80 min more would do
	// - the end of load 1 not after the start of the plan + 6 h: giving way here would not do by itself
	// - capacity of cook: giving way here would not do by itself <nil>
}

// Room for either load to be run again: nobody stands by at night, so the spare is in the morning.
func ExampleRestart() {
	p := evening()
	p.Restart = timetable.Restart{Tasks: []string{"load 1", "load 2"}, Within: units.State(24 * time.Hour)}
	table, err := timetable.Plan(p)
	fmt.Println(table.Spare, err)
	// Output:
	// spare: not before 16 h, ends at 18 h 40 min to 19 h 10 min <nil>
}

// A fixed start cannot follow within 10 min of what may take an hour more or less.
func ExampleWithin() {
	p := timetable.Problem{
		Until: 12 * time.Hour,
		Tasks: []timetable.Task{
			{Name: "smoke", Steps: []timetable.Step{{Takes: timetable.Times{Least: 2 * time.Hour, Likely: 2 * time.Hour, Most: 3 * time.Hour}}}},
			{Name: "chill", Steps: []timetable.Step{{Takes: timetable.Exactly(time.Hour)}}},
		},
		Bounds: []timetable.Bound{timetable.After("chill", "smoke"), timetable.Within("chill", "smoke", 10*time.Minute)},
	}
	table, err := timetable.Plan(p)
	fmt.Println(table, err)
	// Output:
	// impossible: proven (0 steps)
	// these cannot hold together, and any one less can:
	// - the start of chill not after the end of smoke + 10 min: 50 min more would do
	// - the start of chill not before the end of smoke <nil>
}

func ExampleAfter() {
	fmt.Println(timetable.After("rinse", "salt"))
	// Output: the start of rinse not before the end of salt
}

func ExampleBy() {
	fmt.Println(timetable.By("ice", 2*time.Hour))
	// Output: the end of ice not after the start of the plan + 2 h
}

func ExampleBound() {
	fmt.Println(timetable.Bound{
		Name: "smoked before packing", To: timetable.Moment{Task: "pack", Edge: timetable.Start}, Sense: timetable.NotBefore,
		From: timetable.Moment{Task: "smoke", Step: "hold", Edge: timetable.End}, Gap: 30 * time.Minute,
	})
	// Output: smoked before packing: the start of pack not before the end of hold in smoke + 30 min
}

func ExampleExactly() {
	fmt.Println(timetable.Exactly(100 * time.Minute))
	// Output: {1h40m0s 1h40m0s 1h40m0s}
}

func ExampleStartOf() {
	fmt.Println(timetable.StartOf("smoke"))
	// Output: the start of smoke
}

func ExampleEndOf() {
	fmt.Println(timetable.EndOf("smoke"))
	// Output: the end of smoke
}

func ExampleMoment() {
	fmt.Println(timetable.Moment{}, "and", timetable.Moment{Task: "load 1", Step: "process", Edge: timetable.Start})
	// Output: the start of the plan and the start of process in load 1
}

func ExampleTimetable_Least() {
	table, err := timetable.Plan(evening())
	fmt.Println(table.Least(), table.Finish == table.NoSooner, err)
	// Output: true true <nil>
}

func ExampleTimetable() {
	fmt.Println(timetable.Timetable{}, timetable.Timetable{Answer: timetable.Undecided, Steps: 3000})
	// Output:
	// not stated undecided within 3000 steps
}

func ExampleSlot() {
	table, err := timetable.Plan(evening())
	fmt.Println(table.Slots[0], err)
	// Output: cut and pack: not before 0 min, ends at 30 min to 1 h <nil>
}

func ExampleConflict() {
	fmt.Println(timetable.Conflict{})
	// Output: no conflict
}

func ExamplePart() {
	fmt.Println(timetable.Part{Kind: timetable.OfCapacity, Resource: "canner", Relief: timetable.Relief{Answer: timetable.Possible, Units: 1, Least: true}})
	// Output: capacity of canner: 1 more would do
}

func ExampleInputError() {
	p := evening()
	p.Bounds[0].From.Task = "gut"
	_, err := timetable.Plan(p)
	fmt.Println(err)
	// Output: bound 1: from: task "gut": expected one that the problem has
}

func ExampleParseSense() {
	s, err := timetable.ParseSense("not after")
	fmt.Println(s, err)
	_, err = timetable.ParseSense("before")
	fmt.Println(err)
	// Output:
	// not after <nil>
	// unknown sense "before": expected not before or not after
}

func ExampleSense() {
	text, err := timetable.NotBefore.MarshalText()
	fmt.Println(string(text), err)
	// Output: not before <nil>
}

func ExampleParseEdge() {
	e, err := timetable.ParseEdge("End")
	fmt.Println(e, err)
	// Output: end <nil>
}

func ExampleEdge() {
	text, err := timetable.Start.MarshalText()
	fmt.Println(string(text), err)
	// Output: start <nil>
}

func ExampleParseAnswer() {
	a, err := timetable.ParseAnswer("undecided")
	fmt.Println(a, err)
	// Output: undecided <nil>
}

func ExampleAnswer() {
	text, err := timetable.Impossible.MarshalText()
	fmt.Println(string(text), err)
	// Output: impossible <nil>
}

func ExampleParsePartKind() {
	k, err := timetable.ParsePartKind("hours")
	fmt.Println(k, err)
	// Output: hours <nil>
}

func ExamplePartKind() {
	text, err := timetable.OfEnd.MarshalText()
	fmt.Println(string(text), err)
	// Output: end of the plan <nil>
}
