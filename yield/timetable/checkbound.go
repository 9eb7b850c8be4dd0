package timetable

import (
	"fmt"
	"strconv"
)

func (b Bound) check(what string, all []Task, tasks names) error {
	err := first(
		b.To.check(what+": to", all, tasks),
		b.From.check(what+": from", all, tasks),
		checkTime(what+": gap", b.Gap, -longest, longest),
	)
	switch {
	case err != nil:
		return err
	case b.Sense != NotBefore && b.Sense != NotAfter:
		return InputError{What: what + ": sense", Got: b.Sense.String(), Expected: "not before or not after"}
	case b.To.Task == b.From.Task:
		return InputError{What: what, Got: b.String(), Expected: "moments of two tasks, or of a task and the plan"}
	case b.Name != "":
		if err := (names{}).learn(what+": name", b.Name); err != nil {
			return err
		}
	}
	if b.Citation.IsZero() {
		return nil
	}
	if err := b.Citation.Check(); err != nil {
		return fmt.Errorf("%s: %w", what, err)
	}
	return nil
}

func (m Moment) check(what string, all []Task, tasks names) error {
	if m.Task == "" {
		if m != (Moment{}) {
			return InputError{What: what, Got: m.String(), Expected: "a task, or nothing for the start of the plan"}
		}
		return nil
	}
	i, err := tasks.find(what+": task", m.Task)
	switch {
	case err != nil:
		return err
	case m.Edge != Start && m.Edge != End:
		return InputError{What: what + " " + strconv.Quote(m.Task) + ": edge", Got: m.Edge.String(), Expected: "start or end"}
	case m.Step != "" && all[i].step(m.Step) < 0:
		return InputError{What: what + " " + strconv.Quote(m.Task) + ": step", Got: m.Step, Expected: "one that the task has"}
	}
	return nil
}

// step is the index of a step by its name, −1 where there is none.
func (t Task) step(name string) int {
	for i, s := range t.Steps {
		if s.Name == name {
			return i
		}
	}
	return -1
}
