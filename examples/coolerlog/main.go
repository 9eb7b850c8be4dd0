// Coolerlog follows fish from the boat to the jar by the record of its probes: the verdict first, what was used of every published
// limit and when it ran out, how far the fish has aged, and what to do now; and draws the records with the limits. The demo
// input is invented and says so.
//
//	go run ./examples/coolerlog [-in FILE] [-units metric|us] [-svg FILE]
package main

import (
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
)

func main() { command.Main("coolerlog", run) }

func run(args []string, out io.Writer) error {
	line := command.New("coolerlog", form.Beside("cooler.json"), "the file of the log").Drawing("the records")
	if err := line.Parse(args, out); err != nil {
		return err
	}
	l, err := load(line.In())
	if err != nil {
		return err
	}
	j, err := l.judge()
	if err != nil {
		return err
	}
	p := newPage(out, line.US())
	j.print(p)
	return line.Draw(func() (string, error) { return j.draw(p), nil })
}
