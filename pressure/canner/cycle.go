package canner

import (
	"strconv"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Span is how long a part of a load takes, from published figures. Open: it may take longer than Most, and the print
// says no upper figure.
type Span struct {
	Least, Most time.Duration
	Open        bool
	Citation    cite.Citation
}

func (s Span) plus(t Span) Span {
	return Span{Least: s.Least + t.Least, Most: s.Most + t.Most, Open: s.Open || t.Open}
}

// MarshalJSON writes the span as an app shows it.
func (s Span) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (s *Span) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// Cycle is the time of one load from turning on the heat to lifting the lid, in its parts. It is for planning a day:
// the schedule and the gauge decide, not the clock on the wall.
type Cycle struct {
	HeatUp, Vent, Pressurize, Process, CoolDown, Wait Span
	Total                                             Span
}

// MarshalJSON writes the cycle as an app shows it.
func (c Cycle) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (c *Cycle) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// CycleOf returns how long a load of a schedule takes. Heating, pressurizing and cooling are the print's usual
// figures; with quarts heating takes what the least come-up leaves beside venting, and with smoked fish on 4 quarts
// of cold water it may take longer: both are Open. Heavy old canners take 30 min to cool with pints and 45 min with
// quarts. A schedule that is none of process is a ContradictionError, one whose times are below zero, longer than a
// day or shorter together than venting a units.RangeError. Source: USDA Complete Guide, Guide 1, rev. 2015, pp. 1-17
// and 1-22.
func CycleOf(s process.Schedule) (Cycle, error) {
	if err := checkTimes(s); err != nil {
		return Cycle{}, err
	}
	c := Cycle{
		HeatUp: Span{
			Least: 12 * time.Minute, Most: 15 * time.Minute, Open: s.Product == process.SmokedFish,
			Citation: coolingSource,
		},
		Vent: Span{Least: s.Vent, Most: s.Vent, Citation: s.VentCitation},
		Pressurize: Span{
			Least: 3 * time.Minute, Most: 5 * time.Minute,
			Citation: guide1("Using pressure canners, step 3, p. 1-22"),
		},
		Process:  Span{Least: s.Process, Most: s.Process, Citation: s.Citation},
		CoolDown: Span{Least: leastCooling, Most: 60 * time.Minute, Citation: coolingSource},
		Wait:     Span{Least: lidWait, Most: lidWait, Citation: coolSource},
	}
	if s.ComeUp > 0 {
		heat := s.ComeUp - s.Vent
		c.HeatUp = Span{Least: heat, Most: heat, Open: true, Citation: s.ComeUpCitation}
	}
	for _, part := range [...]Span{c.HeatUp, c.Vent, c.Pressurize, c.Process, c.CoolDown, c.Wait} {
		c.Total = c.Total.plus(part)
	}
	c.Total.Citation = cite.Citation{Source: cite.USDAGuide1Rev2015, Where: "sum of the parts", Basis: cite.Computed}
	return c, nil
}

// checkTimes refuses the times of a schedule that process does not return.
func checkTimes(s process.Schedule) error {
	if s.Process <= 0 {
		return ContradictionError{What: "schedule", Got: "of no process", Expected: "one that process returned"}
	}
	if err := units.CheckDuration("time of the process", s.Process, 1, longestPart); err != nil {
		return err
	}
	if err := units.CheckDuration("venting", s.Vent, 0, longestPart); err != nil || s.ComeUp == 0 {
		return err
	}
	return units.CheckDuration("heating and venting", s.ComeUp, s.Vent, longestPart)
}

// longestPart is longer than any part of a load takes.
const longestPart = 24 * time.Hour

// Day returns how long some loads take with one canner or with two side by side, emptying and filling a canner
// between its loads taking as long as said. Loads must be 1 to 100, canners 1 or 2, refilling 0 to 4 h, the Total of
// the cycle above zero and at most a week: otherwise a units.RangeError. Somebody stays with the canners all the time.
// Exact sum of the parts.
func (c Cycle) Day(loads, canners int, refill time.Duration) (Span, error) {
	if err := units.CheckDuration("least time of a load", c.Total.Least, 1, c.Total.Most); err != nil {
		return Span{}, err
	}
	if err := units.CheckDuration("most time of a load", c.Total.Most, c.Total.Least, 7*longestPart); err != nil {
		return Span{}, err
	}
	if loads < 1 || loads > 100 {
		return Span{}, units.RangeError{What: "loads", Got: strconv.Itoa(loads), Low: "1", High: "100"}
	}
	if canners < 1 || canners > 2 {
		return Span{}, units.RangeError{What: "canners", Got: strconv.Itoa(canners), Low: "1", High: "2"}
	}
	if err := units.CheckDuration("refilling", refill, 0, 4*time.Hour); err != nil {
		return Span{}, err
	}
	rounds := time.Duration((loads + canners - 1) / canners)
	pause := (rounds - 1) * refill
	return Span{Least: rounds*c.Total.Least + pause, Most: rounds*c.Total.Most + pause, Open: c.Total.Open,
		Citation: cite.Citation{
			Where: "loads one after the other, refilling as the caller says", Basis: cite.Computed,
		}}, nil
}
