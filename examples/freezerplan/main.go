// Freezerplan answers for fish that goes into a home freezer: whether its time there kills parasites, how long it takes
// to chill in ice and to freeze through, and in how many daily loads it goes in. With -math it does it by hand. The
// demo input is invented and says so.
//
//	go run ./examples/freezerplan [-in FILE] [-units us|metric|both] [-math] [-sources]
package main

import (
	"fmt"
	"io"
	"time"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/freezing"
	"example.org/lakelarder/yield/coldchain/ice"
	"example.org/lakelarder/yield/coldchain/parasites"
)

func main() { command.Main("freezerplan", run) }

// file is the fish, the ice and the freezer.
type file struct {
	About     string            `wire:"required" help:"what this is, and that it is invented if it is"`
	Title     string            `wire:"required" help:"its name"`
	Flesh     freezing.Flesh    `wire:"required"`
	Thickness units.Length      `wire:"required" help:"of the thickest fillet, cooled on both sides"`
	Caught    units.Temperature `wire:"required" help:"of the fish when it goes into the ice"`
	Chilled   units.Temperature `wire:"required" help:"of its middle when it leaves the ice for the freezer"`
	Freezer   units.Temperature `wire:"required" help:"the warmest it gets while the fish freezes, by a thermometer in it"`
	Core      units.Temperature `wire:"required" help:"of the middle when it counts as frozen, -25 to -10 °C"`
	Film      film              `wire:"required" help:"of the freezer's air and the wrapping"`
	Stored    time.Duration     `wire:"required" help:"from loading the last of the fish to taking it out"`
	Load      freezing.Load     `wire:"required"`
}

type film struct {
	Low    units.FilmCoefficient `wire:"required"`
	Likely units.FilmCoefficient `wire:"required"`
	High   units.FilmCoefficient `wire:"required"`
}

// planned is everything worked out.
type planned struct {
	file
	chill   ice.ChillTimes
	piece   freezing.Piece
	through freezing.Range
	loads   freezing.Loads
	raw     parasites.Report
}

func run(args []string, out io.Writer) error {
	line := command.New("freezerplan", form.Beside("freezer.json"), "the `file` of the fish and the freezer", file{})
	if err := line.Parse(args, out); err != nil {
		return err
	}
	var f file
	if err := form.Read(line.In(), &f); err != nil {
		return err
	}
	d, err := f.work()
	if err != nil {
		return fmt.Errorf("%s: %w", line.In(), err)
	}
	if line.Math() {
		return d.byHand(out)
	}
	d.print(&sheet.Sheet{W: out, System: line.System(), Sources: line.Sources()})
	return nil
}

func (f file) fish() ice.Fish { return ice.FishOf(ice.Slab, f.Thickness, f.Thickness, f.Caught) }

func (f file) work() (d planned, err error) {
	d.file = f
	if d.chill, err = ice.ChillTime(f.fish(), ice.CrushedFilm(), units.Celsius(0), f.Chilled); err != nil {
		return d, fmt.Errorf("chilled: %w", err)
	}
	if d.piece, err = f.Flesh.Piece(freezing.Slab, f.Thickness, f.Chilled, f.Core, f.Freezer,
		f.Film.Likely); err != nil {
		return d, fmt.Errorf("freezer: %w", err)
	}
	if d.through, err = d.piece.Between(f.Film.Low, f.Film.High); err != nil {
		return d, fmt.Errorf("film: %w", err)
	}
	if d.loads, err = freezing.Plan(f.Load); err != nil {
		return d, fmt.Errorf("load: %w", err)
	}
	plan := parasites.Plan{Freezer: f.Freezer, Stored: f.Stored, Core: f.Core, Thickness: units.State(f.Thickness)}
	if d.through.High.Time <= f.Stored {
		plan.Through = units.State(d.through.High.Time)
	}
	d.raw, err = parasites.Check(plan)
	return d, err
}
