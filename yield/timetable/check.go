package timetable

import (
	"strconv"
	"strings"
	"time"
	"unicode"

	"example.org/lakelarder/units"
)

// What a Problem may hold. The longest time keeps every sum of the search far inside an int64.
const (
	mostTasks     = 120
	mostSteps     = 300 // of all tasks
	mostTaskSteps = 8
	mostResources = 16
	mostWindows   = 100
	mostBounds    = 1000
	mostCount     = 1000
	day           = 24 * time.Hour
	longest       = 31 * day
)

// names finds tasks, steps and resources by name.
type names map[string]int

// learn refuses a name that is empty, not one line, or there already.
func (n names) learn(what, name string) error {
	switch _, known := n[name]; {
	case known:
		return InputError{What: what, Got: name, Expected: "a name of its own"}
	case name == "" || name != strings.TrimSpace(name) || len(name) > 200 || strings.IndexFunc(name, unprintable) >= 0:
		return InputError{What: what, Got: name, Expected: "a name of one line, 1 to 200 bytes, no space around it"}
	}
	n[name] = len(n)
	return nil
}

func unprintable(r rune) bool { return !unicode.IsPrint(r) }

func (n names) find(what, name string) (int, error) {
	i, known := n[name]
	if !known {
		return 0, InputError{What: what, Got: name, Expected: "one that the problem has"}
	}
	return i, nil
}

func checkCount(what string, got, low, high int) error {
	if got < low || got > high {
		return units.RangeError{What: what, Got: strconv.Itoa(got), Low: strconv.Itoa(low), High: strconv.Itoa(high)}
	}
	return nil
}

func checkTime(what string, got, low, high time.Duration) error {
	if got%time.Second != 0 {
		return InputError{What: what, Got: got.String(), Expected: "whole seconds"}
	}
	return units.CheckDuration(what, got, low, high)
}

// first is the first error of some checks.
func first(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}

// check refuses a problem that cannot be planned with, and returns its tasks and resources by name.
func (p Problem) check() (tasks, resources names, err error) {
	tasks, resources = names{}, names{}
	err = first(
		checkCount("number of tasks", len(p.Tasks), 1, mostTasks),
		checkCount("number of resources", len(p.Resources), 0, mostResources),
		checkCount("number of bounds", len(p.Bounds), 0, mostBounds),
		checkCount("steps of the search", p.Steps, 0, MostSteps),
		checkTime("end of the plan", p.Until, time.Second, longest),
	)
	for i := 0; i < len(p.Resources) && err == nil; i++ {
		err = first(resources.learn("resource "+strconv.Itoa(i+1), p.Resources[i].Name), p.Resources[i].check())
	}
	steps := 0
	for i := 0; i < len(p.Tasks) && err == nil; i++ {
		err = first(tasks.learn("task "+strconv.Itoa(i+1), p.Tasks[i].Name), p.Tasks[i].check(resources))
		steps += len(p.Tasks[i].Steps)
	}
	if err == nil {
		err = checkCount("number of steps of all tasks", steps, 1, mostSteps)
	}
	for i := 0; i < len(p.Bounds) && err == nil; i++ {
		err = p.Bounds[i].check(p.Bounds[i].label(i), p.Tasks, tasks)
	}
	if err == nil {
		err = p.Restart.check(tasks)
	}
	return tasks, resources, err
}

func (r Resource) check() error {
	what := "resource " + strconv.Quote(r.Name) + ": "
	err := first(
		checkCount(what+"capacity", r.Capacity, 1, mostCount),
		checkCount(what+"number of windows", len(r.Closed), 0, mostWindows),
	)
	for i := 0; i < len(r.Closed) && err == nil; i++ {
		w, which := r.Closed[i], what+"window "+strconv.Itoa(i+1)+": "
		err = first(
			checkTime(which+"from", w.From, 0, 2*longest),
			checkTime(which+"to", w.To, w.From+time.Second, 2*longest),
			checkCount(which+"left", w.Left, 0, r.Capacity-1),
		)
	}
	return err
}

func (t Task) check(resources names) error {
	what := "task " + strconv.Quote(t.Name) + ": "
	err := first(checkCount(what+"number of steps", len(t.Steps), 1, mostTaskSteps), checkUses(what, t.Uses, resources))
	known := names{}
	for i := 0; i < len(t.Steps) && err == nil; i++ {
		s, which := t.Steps[i], what+"step "+strconv.Itoa(i+1)
		if s.Name != "" {
			err = known.learn(which, s.Name)
		}
		err = first(err,
			checkTime(which+": most", s.Takes.Most, time.Second, longest),
			checkTime(which+": least", s.Takes.Least, time.Second, s.Takes.Most),
			checkTime(which+": likely", s.Takes.Likely, s.Takes.Least, s.Takes.Most),
			checkUses(which+": ", s.Uses, resources))
	}
	return err
}

func checkUses(what string, uses []Use, resources names) error {
	seen := names{}
	for _, u := range uses {
		if _, err := resources.find(what+"resource", u.Resource); err != nil {
			return err
		}
		err := first(
			seen.learn(what+"resource used", u.Resource),
			checkCount(what+"count of "+u.Resource, u.Count, 1, mostCount),
		)
		if err != nil {
			return err
		}
	}
	return nil
}

func (r Restart) check(tasks names) error {
	seen := names{}
	for _, name := range r.Tasks {
		if _, err := tasks.find("room to restart: task", name); err != nil {
			return err
		}
		if err := seen.learn("room to restart: task", name); err != nil {
			return err
		}
	}
	switch {
	case !r.Within.Given:
		return nil
	case len(r.Tasks) == 0:
		within := units.Lasting(r.Within.Value)
		return InputError{What: "room to restart: within", Got: within, Expected: "tasks that it holds for"}
	}
	return checkTime("room to restart: within", r.Within.Value, time.Second, longest)
}
