// Curetable prints, for a list of fillets, what to weigh for each, how long it lies in salt by its thickness, and the water phase salt to expect before
// and after smoking as a range, with the numbers filled into the formulas so that a learner can follow each line by hand. The demo input is
// invented and says so.
//
//	go run ./examples/curetable [-in FILE] [-units metric|us]
package main

import (
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
)

func main() { command.Main("curetable", run) }

func run(args []string, out io.Writer) error {
	line := command.New("curetable", form.Beside("fillets.json"), "the file of the fillets")
	if err := line.Parse(args, out); err != nil {
		return err
	}
	l, err := load(line.In())
	if err != nil {
		return err
	}
	p, err := l.plan()
	if err != nil {
		return err
	}
	p.print(newPage(out, line.US()))
	return nil
}
