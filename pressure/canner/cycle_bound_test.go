package canner_test

import (
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// A schedule and a cycle that no function returned are refused like any input.
func TestHandBuiltCycle(t *testing.T) {
	good := raw(process.Quart, process.Dial)
	_, err := canner.CycleOf(good)
	require.NoError(t, err)
	for name, change := range map[string]func(*process.Schedule){
		"heats for less than it vents": func(s *process.Schedule) { s.ComeUp = s.Vent - 9*time.Minute },
		"vents below zero":             func(s *process.Schedule) { s.Vent = -1 },
		"vents for centuries":          func(s *process.Schedule) { s.Vent = math.MaxInt64 },
		"heats below zero":             func(s *process.Schedule) { s.ComeUp = math.MinInt64 },
		"heats for centuries":          func(s *process.Schedule) { s.ComeUp = math.MaxInt64 },
		"lasts for centuries":          func(s *process.Schedule) { s.Process = math.MaxInt64 },
	} {
		s := good
		change(&s)
		_, err := canner.CycleOf(s)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	for _, total := range []canner.Span{
		{}, {Least: -time.Hour, Most: time.Hour}, {Least: 2 * time.Hour, Most: time.Hour}, {Least: time.Hour, Most: math.MaxInt64}, {Least: time.Hour, Most: 8 * 24 * time.Hour},
	} {
		_, err := canner.Cycle{Total: total}.Day(2, 1, 0)
		require.ErrorIs(t, err, units.ErrRange, "%v", total)
	}
	day, err := canner.Cycle{Total: canner.Span{Least: time.Hour, Most: 2 * time.Hour}}.Day(2, 1, 0)
	require.NoError(t, err)
	require.Equal(t, 4*time.Hour, day.Most)
}
