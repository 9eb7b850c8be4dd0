// Coolerlog follows fish from the boat to the jar by the record of its probes: the verdict first, why, and what to do
// now; then what was used of every published limit and when it ran out, and how far the fish has aged; and draws the
// records with the limits. The demo input is invented and says so.
//
//	go run ./examples/coolerlog [-in FILE] [-units us|metric|both] [-svg FILE] [-math] [-sources]
package main

import (
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/examples/internal/sheet"
)

func main() { command.Main("coolerlog", run) }

func run(args []string, out io.Writer) error {
	line := command.New("coolerlog", form.Beside("cooler.json"), "the `file` of the log", file{}).Drawing("the records")
	if err := line.Parse(args, out); err != nil {
		return err
	}
	l, err := load(line.In())
	if err != nil {
		return err
	}
	v, err := l.judge()
	if err != nil {
		return err
	}
	if err := line.Draw(func() (string, error) { return v.draw(line.System()), nil }); err != nil {
		return err
	}
	if line.Math() {
		return v.byHand(out, line.System())
	}
	v.print(&sheet.Sheet{W: out, System: line.System(), Sources: line.Sources()})
	return nil
}
