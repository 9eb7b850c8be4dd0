// Canningday judges one run of a canner by its record, as a person would want it at midnight: the verdict first, then why, then what
// to do now; after that the gauge, the load and the rest of the batch. The demo input is invented and says so.
//
//	go run ./examples/canningday [-in FILE] [-units metric|us]
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
		fmt.Fprintln(os.Stderr, "canningday:", err)
		os.Exit(1)
	}
}

func run(args []string, out io.Writer) error {
	flags := flag.NewFlagSet("canningday", flag.ContinueOnError)
	in := flags.String("in", form.Beside("night.json"), "the run's file")
	system := flags.String("units", "us", "units of the printed sheet: metric or us")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if *system != "metric" && *system != "us" {
		return fmt.Errorf("-units %s: expected metric or us", *system)
	}
	n, err := load(*in)
	if err != nil {
		return err
	}
	return n.print(newPage(out, *system == "us"))
}
