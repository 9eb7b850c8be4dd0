// Smokeday lays a day at the hot smoker, as it was planned and expected, beside what the probes in the fish recorded:
// the timetable with its basting, the core against the air and its wet bulb, the verdicts on hold and cooling, what
// is still owed, the loss and the salt, and what to do with the fish tonight. The records count from the start of the
// first stage. A hot smoker is not hot fish: that is what the demo shows. Its input is invented and says so.
//
//	go run ./examples/smokeday [-in FILE] [-units us|metric|both] [-svg FILE] [-math] [-sources]
package main

import (
	"fmt"
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/examples/internal/sheet"
)

func main() { command.Main("smokeday", run) }

func run(args []string, out io.Writer) error {
	line := command.New("smokeday", form.Beside("smokeday.json"), "the day's `file`", file{}).Drawing("the day")
	if err := line.Parse(args, out); err != nil {
		return err
	}
	d, err := load(line.In())
	if err != nil {
		return err
	}
	s, err := d.study()
	if err != nil {
		return fmt.Errorf("%s: %w", line.In(), err)
	}
	if err := line.Draw(func() (string, error) { return s.draw(line.System()), nil }); err != nil {
		return err
	}
	if line.Math() {
		return s.byHand(out, line.System())
	}
	s.print(&sheet.Sheet{W: out, System: line.System(), Sources: line.Sources()})
	return nil
}
