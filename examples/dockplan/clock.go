package main

import (
	"time"
)

// at is a moment of the plan as the clock there has it.
func (k *kitchen) at(t time.Duration) time.Time { return k.day.Add(k.Dock.Value + t) }

// when is the day and the hour of a moment.
func (k *kitchen) when(t time.Duration) string { return k.at(t).Format("Mon 15:04") }

// until is the hour of a later moment, with its day where that is another one.
func (k *kitchen) until(from, t time.Duration) string {
	if k.at(from).YearDay() == k.at(t).YearDay() {
		return k.at(t).Format("15:04")
	}
	return k.when(t)
}

// clockOf is a time of day.
func (k *kitchen) clockOf(t time.Duration) string { return k.day.Add(t).Format("15:04") }
