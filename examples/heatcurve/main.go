// Heatcurve shows why the time is what it is: the steam, the middle of a jar and its growing lethality through a
// published process at the altitude of the season, and what a degree, a thousand feet or some trapped air would
// change. It explains and decides nothing; none of it shortens a published process. The demo input is invented and
// says so.
//
//	go run ./examples/heatcurve [-in FILE] [-units us|metric|both] [-svg FILE] [-math] [-sources]
package main

import (
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/examples/internal/sheet"
)

func main() { command.Main("heatcurve", run) }

func run(args []string, out io.Writer) error {
	line := command.New("heatcurve", form.Beside("heatcurve.json"), "the jar's `file`", jar{}).Drawing("the curves")
	if err := line.Parse(args, out); err != nil {
		return err
	}
	j, err := load(line.In())
	if err != nil {
		return err
	}
	s, err := j.study()
	if err != nil {
		return err
	}
	rows, err := s.samples()
	if err != nil {
		return err
	}
	beside, err := s.formula()
	if err != nil {
		return err
	}
	if err := line.Draw(func() (string, error) { return s.draw(rows, line.System()), nil }); err != nil {
		return err
	}
	if line.Math() {
		return s.byHand(out)
	}
	s.print(&sheet.Sheet{W: out, System: line.System(), Sources: line.Sources()}, rows, beside)
	return nil
}
