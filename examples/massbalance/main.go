// Massbalance walks one fillet from raw to smoked with every number shown: what it is made of after each step, where each gram
// went, what a target would take, what an analysis says of the yield, and what a serving holds. The demo input is
// invented and says so.
//
//	go run ./examples/massbalance [-in FILE] [-units metric|us]
package main

import (
	"flag"
	"fmt"
	"io"
	"os"

	"example.org/lakelarder/examples/internal/form"
)

func main() {
	if err := run(os.Args[1:], os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, "massbalance:", err)
		os.Exit(1)
	}
}

func run(args []string, out io.Writer) error {
	flags := flag.NewFlagSet("massbalance", flag.ContinueOnError)
	in := flags.String("in", form.Beside("fillet.json"), "the file of the fillet")
	system := flags.String("units", "us", "units of the printed walk: metric or us")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if flags.NArg() > 0 {
		return fmt.Errorf("%s: expected flags alone", flags.Arg(0))
	}
	if *system != "metric" && *system != "us" {
		return fmt.Errorf("-units %s: expected metric or us", *system)
	}
	i, err := load(*in)
	if err != nil {
		return err
	}
	w, err := i.walk()
	if err != nil {
		return err
	}
	w.print(newPage(out, *system == "us"))
	return nil
}
