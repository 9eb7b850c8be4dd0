// Package timetable plans the hours after a catch, or of any other day of work: when each task starts, so that no
// deadline is passed and no resource holds more than it can. It knows no canner and no fish: tasks, resources and
// bounds are the caller's.
//
// Plan takes a Problem and returns a Timetable with one fixed start for each task. These starts keep every Bound, the
// hours and the capacity of every Resource and the end of the plan for every duration of every step between its Least
// and its Most, whatever the others take. For that a bound "not before" is held against the longest that can come
// before it, and a bound "not after" against the shortest: where a task may start at most 30 min after another has
// ended, and that other takes 2 to 3 h, no fixed start can do, and Plan says so. The steps of one task follow each
// other at once, whenever the one before has ended: tasks between which nothing may wait are the steps of one task.
//
// A Timetable is Possible; or Impossible, which is proven: no fixed starts exist, and Conflict says which bounds and
// resources cannot hold together and how far one of them would have to give way; or Undecided within the steps
// allowed. Starting tasks by what the day brings, and not at fixed times, may do where fixed starts cannot: that is
// not planned here. Finish is the least possible where the search was completed, else the best found; NoSooner is
// proven either way.
//
// The plan is computed: it overrides no published time and ends no step. A start is "not before"; the gauge, the
// probe or the scale says when a step has ended, and if it takes longer than its Most the plan no longer holds and is
// to be made again.
package timetable
