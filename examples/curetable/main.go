// Curetable prints, for a list of fillets, what to weigh for each, how long it lies in salt by its thickness, and the water phase salt to expect before
// and after smoking as a range, with the numbers filled into the formulas so that a learner can follow each line by hand. The demo input is
// invented and says so.
//
//	go run ./examples/curetable [-in FILE] [-units metric|us]
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
		fmt.Fprintln(os.Stderr, "curetable:", err)
		os.Exit(1)
	}
}

func run(args []string, out io.Writer) error {
	flags := flag.NewFlagSet("curetable", flag.ContinueOnError)
	in := flags.String("in", form.Beside("fillets.json"), "the file of the fillets")
	system := flags.String("units", "us", "units of the printed table: metric or us")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if flags.NArg() > 0 {
		return fmt.Errorf("%s: expected flags alone", flags.Arg(0))
	}
	if *system != "metric" && *system != "us" {
		return fmt.Errorf("-units %s: expected metric or us", *system)
	}
	l, err := load(*in)
	if err != nil {
		return err
	}
	p, err := l.plan()
	if err != nil {
		return err
	}
	p.print(newPage(out, *system == "us"))
	return nil
}
