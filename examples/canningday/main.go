// Canningday judges one run of a canner by its record, as a person would want it at midnight: the verdict first, then why, then what
// to do now; after that the gauge, the load and the rest of the batch. The demo input is invented and says so.
//
//	go run ./examples/canningday [-in FILE] [-units metric|us]
package main

import (
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
)

func main() { command.Main("canningday", run) }

func run(args []string, out io.Writer) error {
	line := command.New("canningday", form.Beside("night.json"), "the run's file")
	if err := line.Parse(args, out); err != nil {
		return err
	}
	n, err := load(line.In())
	if err != nil {
		return err
	}
	return n.print(newPage(out, line.US()))
}
