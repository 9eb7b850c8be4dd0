// Dryingair follows the air from outside through a warm smoker: what water it holds, how warm a wet surface gets in it
// at this altitude, how fast that surface dries and when a pellicle stands. With -math it does it by hand. The demo
// input is invented and says so.
//
//	go run ./examples/dryingair [-in FILE] [-units us|metric|both] [-math] [-sources]
package main

import (
	"fmt"
	"io"
	"time"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
)

func main() { command.Main("dryingair", run) }

// file is the air, the smoker and the fish.
type file struct {
	About    string                     `wire:"required" help:"what this is, and that it is invented if it is"`
	Title    string                     `wire:"required" help:"its name"`
	Altitude units.Stated[units.Length] `wire:"required" help:"of the smoker"`
	Outside  outside                    `wire:"required"`
	Dryer    units.Temperature          `wire:"required" help:"the air around the fish, heated without adding water"`
	Activity units.Ratio                `wire:"required" help:"water activity of the surface: 100 % for water, about 98 % at 3.5 % of salt in it"`
	Speed    units.Stated[units.Speed]  `help:"of the air along the fish; left out: natural draught" example:"\"1 m/s\""`
	Fillet   units.Mass                 `wire:"required"`
	Area     units.Area                 `wire:"required" help:"of it that is open to the air"`
	During   time.Duration              `wire:"required" help:"how long it dries, for the loss"`
}

type outside struct {
	DryBulb  units.Temperature `wire:"required"`
	Humidity units.Ratio       `wire:"required" help:"relative"`
}

// dried is everything worked out.
type dried struct {
	file
	air, heated, low moistair.Air // outside, in the dryer, and what the dryer would be at sea level
	film             moistair.Film
	drying           moistair.Evaporation
	lost             units.Range[units.Mass]
	pellicle         smoke.Pellicle
}

func run(args []string, out io.Writer) error {
	line := command.New("dryingair", form.Beside("drying.json"), "the `file` of the air and the fish", file{})
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

func (f file) work() (d dried, err error) {
	d.file = f
	if d.air, d.heated, err = f.at(f.Altitude.Value); err != nil {
		return d, err
	}
	if _, d.low, err = f.at(0); err != nil {
		return d, err
	}
	d.film = moistair.SmokerFilm()
	if f.Speed.Given {
		if d.film, err = moistair.FilmAlong(d.heated, f.Speed.Value); err != nil {
			return d, fmt.Errorf("speed: %w", err)
		}
	}
	if d.drying, err = moistair.Evaporate(d.heated, d.film, f.Activity); err != nil {
		return d, err
	}
	if d.lost, err = d.drying.Lost(f.Area, f.During); err != nil {
		return d, err
	}
	d.pellicle, err = smoke.DryPellicle(f.Fillet, f.Area, d.heated, d.film, f.Activity)
	return d, err
}

// at is the outside air and that of the dryer at an altitude.
func (f file) at(altitude units.Length) (air, heated moistair.Air, err error) {
	around, err := pressure.AirAt(altitude)
	if err != nil {
		return air, heated, fmt.Errorf("altitude: %w", err)
	}
	if air, err = moistair.ByRelativeHumidity(f.Outside.DryBulb, f.Outside.Humidity, around.Pressure()); err != nil {
		return air, heated, fmt.Errorf("outside: %w", err)
	}
	if heated, err = air.Heated(f.Dryer); err != nil {
		return air, heated, fmt.Errorf("dryer: %w", err)
	}
	return air, heated, nil
}
