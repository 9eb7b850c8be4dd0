// Coolerlog follows fish from the boat to the jar by the record of its probes: the verdict first, what was used of every published
// limit and when it ran out, how far the fish has aged, and what to do now; and draws the records with the limits. The demo
// input is invented and says so.
//
//	go run ./examples/coolerlog [-in FILE] [-units metric|us] [-svg FILE]
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
		fmt.Fprintln(os.Stderr, "coolerlog:", err)
		os.Exit(1)
	}
}

func run(args []string, out io.Writer) error {
	flags := flag.NewFlagSet("coolerlog", flag.ContinueOnError)
	in := flags.String("in", form.Beside("cooler.json"), "the file of the log")
	system := flags.String("units", "us", "units of what is printed and drawn: metric or us")
	svg := flags.String("svg", "", "a file for the picture; none if empty")
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
	j, err := l.judge()
	if err != nil {
		return err
	}
	p := newPage(out, *system == "us")
	j.print(p)
	if *svg == "" {
		return nil
	}
	return os.WriteFile(*svg, []byte(j.draw(p)), 0o644)
}
