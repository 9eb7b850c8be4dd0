package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/yield/timetable"
)

// smokes is each batch for the smoker: filleted, salted, and from the rinse to the cold without a pause.
func (k *kitchen) smokes(p *timetable.Problem, w *work, guts []string) {
	if w.smoked == 0 {
		return
	}
	s := k.Smoker
	hot := one(smoker)
	if s.StandBy > 0 {
		hot = append(hot, timetable.Use{Resource: people, Count: s.StandBy})
	}
	for left := w.smoked; left > 0; left -= s.Batch {
		w.batches++
		n := w.batches
		fillet, salt, smoke := fmt.Sprintf("fillet %d", n), fmt.Sprintf("salt %d", n), fmt.Sprintf("smoke %d", n)
		p.Tasks = append(p.Tasks,
			timetable.Task{Name: fillet, Uses: one(people), Steps: []timetable.Step{
				{Name: "fillet", Takes: s.Fillet.times(min(left, s.Batch))},
			}},
			timetable.Task{Name: salt, Uses: one(fridge), Steps: []timetable.Step{
				{Name: "bury in salt", Takes: s.LayIn.times(1), Uses: one(people)},
				{Name: "salt", Takes: timetable.Exactly(k.salting.Time)},
			}},
			timetable.Task{Name: smoke, Steps: []timetable.Step{
				{Name: "rinse", Takes: s.Rinse.times(1), Uses: one(people)},
				{Name: "pellicle", Takes: k.pellicle(), Uses: hot},
				{Name: "smoke", Takes: timetable.Exactly(s.Stages[1].For), Uses: hot},
				{Name: "cook and hold", Takes: k.cook(), Uses: hot},
				{Name: "take out", Takes: s.TakeOut.times(1), Uses: one(people)},
				{Name: "cool", Takes: timetable.Exactly(k.cooled() - s.TakeOut.Most), Uses: one(fridge)},
			}})
		after(p, fillet, guts...)
		after(p, salt, fillet)
		after(p, smoke, salt)
		late := timetable.Within(smoke, salt, s.MayLie)
		late.Name = "no longer in salt than you stated"
		cook := timetable.Moment{Task: smoke, Step: "cook and hold", Edge: timetable.Start}
		p.Bounds = append(p.Bounds, late, k.deadline("raw in the refrigerator", cook, k.limits.raw))
	}
}

// pellicle is from when the surface may be tacky to the end of the stage.
func (k *kitchen) pellicle() timetable.Times {
	most := k.Smoker.Stages[0].For
	least := min(most, max(time.Minute, k.tacky.Tacky.Low.Truncate(time.Minute)))
	return timetable.Times{Least: least, Likely: min(most, max(least, k.tacky.Tacky.High.Truncate(time.Minute))),
		Most: most}
}

// cook is from the quickest core that the model knows, and its hold, to the end of the stage.
func (k *kitchen) cook() timetable.Times {
	before := k.Smoker.Stages[0].For + k.Smoker.Stages[1].For
	hold, most := k.smoking.Limit.Hold, k.Smoker.Stages[2].For
	to := k.smoked.Core.ToLimit
	at := func(t time.Duration) time.Duration { return min(most, max(0, t-before).Truncate(time.Minute)+hold) }
	return timetable.Times{Least: at(to.Low), Likely: at(to.Likely), Most: most}
}

// cooled is by when the cooling rule has the fish cold.
func (k *kitchen) cooled() time.Duration {
	var all time.Duration
	for _, s := range k.cooling.Steps {
		if s.InAll {
			return s.Within
		}
		all += s.Within
	}
	return all
}
