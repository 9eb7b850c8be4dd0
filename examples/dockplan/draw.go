package main

import (
	"fmt"
	"sort"
	"strings"
	"time"

	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/yield/timetable"
)

// block is a time in which something is occupied: until soonest for certain, until latest if it takes its longest.
type block struct {
	name                   string
	start, soonest, latest time.Duration
	count                  int
}

// lane is one unit of a resource.
type lane struct {
	name   string
	blocks []block
}

const (
	hourHigh = 17.0 // pixels
	laneTop  = 78.0
	laneLeft = 44.0
)

// draw is the timetable from the top down, one lane a resource: dark while a step takes at least, light while it may
// still go on.
func (a answer) draw() (string, error) {
	if a.keep == 0 {
		return "", fmt.Errorf("no picture: no fish are kept today, so there is no timetable")
	}
	lanes := a.lanes()
	bottom := below(a.work.table.Finish)
	title := fmt.Sprintf("%s: timetable of %s", a.Place, fish(a.keep))
	p := chart.New(title, a.described(lanes), int(bottom)+78)
	p.Text(10, 20, "start", chart.Bold, title)
	p.Text(10, 36, "start", chart.Note, a.Date+": "+a.decides())
	wide := (chart.Width - laneLeft - 8) / float64(len(lanes))
	a.drawHours(p, bottom)
	for i, l := range lanes {
		x := laneLeft + float64(float64(i)*wide)
		p.Text(x+float64(wide*0.5), laneTop-8, "middle", chart.Small, l.name)
		p.Line(x, laneTop, x, bottom, chart.Thin)
		for _, b := range l.blocks {
			drawBlock(p, b, x, wide)
		}
	}
	p.Line(chart.Width-8, laneTop, chart.Width-8, bottom, chart.Thin)
	y := bottom + 20
	for _, key := range [...]struct{ style, words string }{
		{chart.Dark, "takes at least; starts not before its upper edge"},
		{chart.Shade, "may take as long as this; spare: a load begun again"}, {night, "everybody sleeps"},
	} {
		p.Rect(laneLeft, y-9, 22, 10, key.style)
		p.Text(laneLeft+30, y, "start", chart.Note, key.words)
		y += 18
	}
	return p.String(), nil
}

// below is how far down a moment stands.
func below(t time.Duration) float64 { return laneTop + float64(t.Hours()*hourHigh) }

const night = `fill="#eee"`

// drawHours is the clock at the left, and the nights.
func (a answer) drawHours(p *chart.Picture, bottom float64) {
	for _, w := range a.nights() {
		if w.From < a.work.table.Finish {
			p.Rect(laneLeft, below(w.From), chart.Width-laneLeft-8, min(below(w.To), bottom)-below(w.From), night)
		}
	}
	first := (3*time.Hour - a.Dock.Value%(3*time.Hour)) % (3 * time.Hour)
	for t := first; t <= a.work.table.Finish; t += 3 * time.Hour {
		text := a.at(t).Format("15:04")
		if a.at(t).Hour() < 3 {
			text = a.at(t).Format("Mon")
		}
		p.Line(laneLeft, below(t), chart.Width-8, below(t), chart.Grid)
		p.Text(laneLeft-5, below(t)+4, "end", chart.Small, text)
	}
}

func drawBlock(p *chart.Picture, b block, x, wide float64) {
	p.Rect(x+2, below(b.start), wide-4, below(b.latest)-below(b.start), chart.Shade)
	if b.soonest > b.start {
		p.Rect(x+2, below(b.start), wide-4, below(b.soonest)-below(b.start), chart.Dark)
	}
	p.Line(x+2, below(b.start), x+wide-2, below(b.start), chart.Thin)
	if below(b.latest)-below(b.start) >= 6 {
		p.Text(x+float64(wide*0.5), min(below(b.start)+10, below(b.latest)-0.5), "middle", chart.Halo, b.name)
	}
}

// lanes are the resources, each unit by itself, with what occupies it in the plan.
func (a answer) lanes() (all []lane) {
	slots := append([]timetable.Slot(nil), a.work.table.Slots...)
	tasks := map[string]timetable.Task{}
	for _, t := range a.work.problem.Tasks {
		tasks[t.Name] = t
	}
	for _, r := range a.work.problem.Resources {
		units := make([]lane, r.Capacity)
		for i := range units {
			units[i].name = strings.Replace(r.Name, people, "person", 1)
			if r.Capacity > 1 {
				units[i].name += fmt.Sprintf(" %d", i+1)
			}
		}
		var blocks []block
		for _, s := range slots {
			blocks = append(blocks, occupied(s, tasks[s.Task], r.Name)...)
		}
		if spare := a.work.table.Spare; spare.Task != "" && (r.Name == people || r.Name == canned) {
			blocks = append(blocks, block{"spare", spare.Start, spare.Start, spare.Latest, 1})
		}
		sort.SliceStable(blocks, func(i, j int) bool { return blocks[i].start < blocks[j].start })
		for _, b := range blocks {
			put(units, b)
		}
		all = append(all, units...)
	}
	return all
}

// occupied is when a slot occupies a resource: steps that do and follow each other are one block.
func occupied(s timetable.Slot, t timetable.Task, resource string) (all []block) {
	for i, step := range t.Steps {
		n := 0
		for _, u := range append(append([]timetable.Use(nil), t.Uses...), step.Uses...) {
			if u.Resource == resource {
				n += u.Count
			}
		}
		if n == 0 || i >= len(s.Steps) {
			continue
		}
		span := s.Steps[i]
		if last := len(all) - 1; last >= 0 && i > 0 && all[last].latest == s.Steps[i-1].End {
			all[last].name, all[last].soonest, all[last].latest = s.Task, span.Soonest, span.End
			continue
		}
		name := s.Task
		if i > 0 {
			name = step.Name // the step that is elsewhere than the task began
		}
		all = append(all, block{name, span.Earliest, span.Soonest, span.End, n})
	}
	return all
}

// put gives a block to the first units that are free. Blocks come in the order of their starts, and no more are occupied
// than there are.
func put(units []lane, b block) {
	for i := range units {
		if b.count == 0 {
			return
		}
		free := true
		for _, o := range units[i].blocks {
			free = free && (o.latest <= b.start || b.latest <= o.start)
		}
		if free {
			units[i].blocks = append(units[i].blocks, b)
			b.count--
		}
	}
}

// described is the picture in words.
func (a answer) described(lanes []lane) string {
	text := "Time runs down, one lane a resource. " +
		"Dark is the least that a step takes, light the most; the nights are grey."
	for _, l := range lanes {
		for i, b := range l.blocks {
			if i == 0 {
				text += " " + l.name + ":"
			}
			text += fmt.Sprintf(" %s not before %s, ended by %s;", b.name, a.when(b.start),
				a.until(b.start, b.latest))
		}
	}
	return text
}
