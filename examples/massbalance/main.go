// Massbalance follows one fillet from raw to smoked: what it is made of after each step, where each gram went, what a
// target would take, what an analysis says of the yield, and what a serving holds. With -math it does all of it by
// hand, in grams. The demo input is invented and says so.
//
//	go run ./examples/massbalance [-in FILE] [-units us|metric|both] [-math] [-sources]
package main

import (
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/examples/internal/sheet"
)

func main() { command.Main("massbalance", run) }

func run(args []string, out io.Writer) error {
	line := command.New("massbalance", form.Beside("fillet.json"), "the `file` of the fillet", input{})
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
	if line.Math() {
		return w.byHand(out)
	}
	w.print(&sheet.Sheet{W: out, System: line.System(), Sources: line.Sources()})
	return nil
}
