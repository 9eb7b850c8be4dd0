package timetable

import (
	"fmt"
	"strings"

	"example.org/lakelarder/units"
)

// String says in lines what the search came to, then each slot, or each part of the conflict.
func (t Timetable) String() string {
	var b strings.Builder
	b.WriteString(t.Answer.String())
	steps := fmt.Sprintf("%d steps", t.Steps)
	switch {
	case t.Answer == Undecided:
		fmt.Fprintf(&b, " within %s", steps)
	case t.Least():
		fmt.Fprintf(&b, ": all has ended by %s, and no fixed starts end sooner (%s)", units.Lasting(t.Finish), steps)
	case t.Answer == Possible:
		fmt.Fprintf(&b, ": all has ended by %s, the best found; ", units.Lasting(t.Finish))
		fmt.Fprintf(&b, "none end before %s (%s)", units.Lasting(t.NoSooner), steps)
	case t.Answer == Impossible:
		fmt.Fprintf(&b, ": proven (%s)\n%s", steps, t.Conflict)
	}
	for _, s := range t.Slots {
		b.WriteString("\n" + s.String())
	}
	if t.Spare.Task != "" {
		b.WriteString("\n" + t.Spare.String())
	}
	return b.String()
}

// String is the slot in a line: "smoke: not before 4 h, ends at 6 h to 7 h".
func (s Slot) String() string {
	line := s.Task + ": not before " + units.Lasting(s.Start) + ", ends at " + units.Lasting(s.Soonest)
	if s.Soonest == s.Latest {
		return line
	}
	return line + " to " + units.Lasting(s.Latest)
}

// String says in lines which parts cannot hold together, and what of each would do; "no conflict" without parts.
func (c Conflict) String() string {
	if len(c.Parts) == 0 {
		return "no conflict"
	}
	lines := []string{"these cannot hold together, and any one less can:"}
	if !c.Minimal {
		lines[0] = "these cannot hold together, and there may be some too many:"
	}
	for _, p := range c.Parts {
		lines = append(lines, "- "+p.String())
	}
	return strings.Join(lines, "\n")
}

// String is the part, and what of it would do: "capacity of canner: 1 more would do".
func (p Part) String() string {
	what := p.Kind.String()
	switch p.Kind {
	case OfBound:
		what = p.Bound.String()
	case OfCapacity, OfHours:
		what += " of " + p.Resource
	}
	if p.Relief.Answer == 0 {
		return what
	}
	return what + ": " + p.Relief.words(p.Kind)
}

func (r Relief) words(kind PartKind) string {
	least := ""
	if !r.Least {
		least = "at most " // less of it may do
	}
	switch {
	case r.Answer == Undecided:
		return "undecided whether giving way here would do"
	case r.Answer == Impossible:
		return "giving way here would not do by itself"
	case kind == OfCapacity:
		return fmt.Sprintf("%s%d more would do", least, r.Units)
	case kind == OfHours:
		return "keeping it open would do"
	case kind == OfRestart:
		return "doing without would do"
	}
	return least + units.Lasting(r.By) + " more would do"
}
