package timetable_test

import (
	"math/rand"
	"strconv"
	"testing"
	"time"

	"example.org/lakelarder/yield/timetable"
)

// weekend is an invented kitchen of batches, each of five tasks, on a canner, a smoker, a refrigerator and two people
// who sleep.
func weekend(batches int) timetable.Problem {
	var nights []timetable.Window
	for from := 12 * time.Hour; from < 84*time.Hour; from += 24 * time.Hour {
		nights = append(nights, timetable.Window{From: from, To: from + 8*time.Hour})
	}
	p := timetable.Problem{
		Until: 84 * time.Hour,
		Resources: []timetable.Resource{
			{Name: "canner", Capacity: 1}, {Name: "racks", Capacity: 6}, {Name: "shelf", Capacity: 8},
			{Name: "people", Capacity: 2, Closed: nights},
		},
	}
	one := func(resource string, count int) []timetable.Use {
		return []timetable.Use{{Resource: resource, Count: count}}
	}
	task := func(name string, least, likely, most int, uses ...timetable.Use) {
		at := between(least, most)
		at.Likely = time.Duration(likely) * time.Minute
		p.Tasks = append(p.Tasks, timetable.Task{Name: name, Steps: []timetable.Step{{Takes: at}}, Uses: uses})
	}
	for i := 0; i < batches; i++ {
		n := strconv.Itoa(i + 1)
		task("cut "+n, 20, 30, 40+i, one("people", 1)...)
		task("salt "+n, 240, 240, 240, one("shelf", 1)...)
		task("smoke "+n, 120, 150, 180, one("racks", 2+i%2)...)
		task("pack "+n, 20, 25, 30, one("people", 1)...)
		task("can "+n, 170, 180, 200, append(one("canner", 1), one("people", 1)...)...)
		p.Bounds = append(p.Bounds,
			timetable.After("salt "+n, "cut "+n), timetable.Within("salt "+n, "cut "+n, 2*time.Hour),
			timetable.After("smoke "+n, "salt "+n), timetable.Within("smoke "+n, "salt "+n, 12*time.Hour),
			timetable.After("pack "+n, "smoke "+n), timetable.Within("pack "+n, "smoke "+n, 24*time.Hour),
			timetable.After("can "+n, "pack "+n), timetable.Within("can "+n, "pack "+n, 2*time.Hour),
		)
	}
	return p
}

// scattered is a random problem of some size that is likely to be possible.
func scattered(rng *rand.Rand, tasks int) timetable.Problem {
	p := timetable.Problem{Until: 100 * time.Hour}
	for i, capacity := range []int{1, 2, 4, 6} {
		r := timetable.Resource{Name: "r" + strconv.Itoa(i), Capacity: capacity}
		if i == 1 {
			r.Closed = []timetable.Window{
				{From: 12 * time.Hour, To: 20 * time.Hour, Left: rng.Intn(2)}, {From: 36 * time.Hour, To: 44 * time.Hour},
			}
		}
		p.Resources = append(p.Resources, r)
	}
	for i := 0; i < tasks; i++ {
		t := timetable.Task{Name: "t" + strconv.Itoa(i), Uses: someUses(rng, p.Resources)}
		least := 5 * (2 + rng.Intn(20))
		t.Steps = []timetable.Step{{Takes: between(least, least+5*rng.Intn(8))}}
		p.Tasks = append(p.Tasks, t)
		if i > 0 && rng.Intn(3) > 0 {
			before := p.Tasks[rng.Intn(i)].Name
			p.Bounds = append(p.Bounds, timetable.After(t.Name, before))
			if rng.Intn(2) == 0 {
				p.Bounds = append(p.Bounds, timetable.Within(t.Name, before, time.Duration(4+rng.Intn(20))*time.Hour))
			}
		}
	}
	return p
}

func benchmark(b *testing.B, p timetable.Problem, want timetable.Answer) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		table, err := timetable.Plan(p)
		if err != nil || table.Answer != want {
			b.Fatal(table, err)
		}
		b.ReportMetric(float64(table.Steps), "steps")
		b.ReportMetric(table.Finish.Hours(), "finish-h")
		b.ReportMetric(table.NoSooner.Hours(), "nosooner-h")
		b.ReportMetric(float64(len(table.Conflict.Parts)), "parts")
	}
}

func BenchmarkWeekend60(b *testing.B) { benchmark(b, weekend(12), timetable.Possible) }
func BenchmarkWeekend20(b *testing.B) { benchmark(b, weekend(4), timetable.Possible) }

func BenchmarkScattered60(b *testing.B) {
	benchmark(b, scattered(rand.New(rand.NewSource(3)), 60), timetable.Possible)
}

func BenchmarkTooMuch60(b *testing.B) {
	p := weekend(12)
	p.Until = 48 * time.Hour
	benchmark(b, p, timetable.Impossible)
}
