// Brinetable shows brine on every scale: its strength by mass, on the salometer, in degrees Baumé and to the volume,
// what makes a batch of it, its water activity and freezing point, and which organisms it holds back. With -math it
// works out the first strength by hand. The demo input is invented and says so.
//
//	go run ./examples/brinetable [-in FILE] [-units us|metric|both] [-math] [-sources]
package main

import (
	"fmt"
	"io"

	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

func main() { command.Main("brinetable", run) }

// file is the strengths that are asked for.
type file struct {
	About       string            `wire:"required" help:"what this list is, and that it is invented if it is"`
	Title       string            `wire:"required" help:"its name"`
	Temperature units.Temperature `wire:"required" help:"of the brine, 0 to 25 °C"`
	Volume      units.Volume      `wire:"required" help:"of brine to make"`
	Strengths   []units.Ratio     `wire:"required" help:"salt by mass of the brine"`
}

// brine is one strength worked out.
type brine struct {
	solution.Strength
	makeup   solution.Makeup
	activity units.Ratio
	ice      units.Stated[units.Temperature] // where it begins to freeze, unless salt comes first
	from     cite.Citation                   // of ice
}

func run(args []string, out io.Writer) error {
	line := command.New("brinetable", form.Beside("brines.json"), "the `file` of the strengths", file{})
	if err := line.Parse(args, out); err != nil {
		return err
	}
	var f file
	if err := form.Read(line.In(), &f); err != nil {
		return err
	}
	all, err := f.work()
	if err != nil {
		return fmt.Errorf("%s: %w", line.In(), err)
	}
	if line.Math() {
		return all[0].byHand(out)
	}
	f.print(&sheet.Sheet{W: out, System: line.System(), Sources: line.Sources()}, all)
	return nil
}

func (f file) work() (all []brine, err error) {
	if len(f.Strengths) == 0 {
		return nil, fmt.Errorf("strengths: expected at least one")
	}
	for i, share := range f.Strengths {
		b := brine{}
		if b.Strength, err = solution.StrengthOf(share, f.Temperature); err != nil {
			return nil, fmt.Errorf("strengths[%d]: %w", i, err)
		}
		if b.makeup, err = solution.MakeBrine(f.Volume, share, f.Temperature); err != nil {
			return nil, fmt.Errorf("strengths[%d]: %w", i, err)
		}
		if b.activity, err = solution.Activity(share); err != nil {
			return nil, fmt.Errorf("strengths[%d]: %w", i, err)
		}
		if at, from, err := solution.FreezingPoint(share); err == nil { // a stronger one gives salt and no ice
			b.ice, b.from = units.State(at), from
		}
		all = append(all, b)
	}
	return all, nil
}
