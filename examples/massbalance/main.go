// Massbalance walks one fillet from raw to smoked with every number shown: what it is made of after each step, where each gram
// went, what a target would take, what an analysis says of the yield, and what a serving holds. The demo input is
// invented and says so.
//
//	go run ./examples/massbalance [-in FILE] [-units metric|us]
package main

import (
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
)

func main() { command.Main("massbalance", run) }

func run(args []string, out io.Writer) error {
	line := command.New("massbalance", form.Beside("fillet.json"), "the file of the fillet")
	if err := line.Parse(args, out); err != nil {
		return err
	}
	i, err := load(line.In())
	if err != nil {
		return err
	}
	w, err := i.walk()
	if err != nil {
		return err
	}
	w.print(newPage(out, line.US()))
	return nil
}
