// Canningday judges one run of a canner by its record, as a person would want it at midnight: the verdict first, then
// why, then what to do now; after that the gauge, the load and the rest of the batch. The demo input is invented and
// says so.
//
//	go run ./examples/canningday [-in FILE] [-units us|metric|both] [-svg FILE] [-math] [-sources]
package main

import (
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/examples/internal/sheet"
)

func main() { command.Main("canningday", run) }

func run(args []string, out io.Writer) error {
	line := command.New("canningday", form.Beside("night.json"), "the run's `file`",
		file{}).Drawing("the pressure against the clock")
	if err := line.Parse(args, out); err != nil {
		return err
	}
	n, err := load(line.In())
	if err != nil {
		return err
	}
	j, err := n.judge()
	if err != nil {
		return err
	}
	if err := line.Draw(func() (string, error) { return j.draw(line.System()), nil }); err != nil {
		return err
	}
	if line.Math() {
		return j.byHand(out, line.System())
	}
	j.print(&sheet.Sheet{W: out, System: line.System(), Sources: line.Sources()})
	return nil
}
