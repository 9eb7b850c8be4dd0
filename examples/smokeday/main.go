// Smokeday lays a day at the hot smoker, as it was planned and expected, beside what the probes in the fish recorded: the timetable with its basting, the
// core against the air and its wet bulb, the verdicts on hold and cooling, what is still owed, the loss and the salt, and what to do with the fish
// tonight. The records count from the start of the first stage. A hot smoker is not hot fish: that is what the demo shows. Its input is invented and says so.
//
//	go run ./examples/smokeday [-in FILE] [-units metric|us] [-svg FILE]
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
		fmt.Fprintln(os.Stderr, "smokeday:", err)
		os.Exit(1)
	}
}

func run(args []string, out io.Writer) error {
	flags := flag.NewFlagSet("smokeday", flag.ContinueOnError)
	in := flags.String("in", form.Beside("smokeday.json"), "the day's file")
	system := flags.String("units", "us", "units of what is printed and drawn: metric or us")
	svg := flags.String("svg", "", "a file to draw the day into")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if *system != "metric" && *system != "us" {
		return fmt.Errorf("-units %s: expected metric or us", *system)
	}
	d, err := load(*in)
	if err != nil {
		return err
	}
	s, err := d.study()
	if err != nil {
		return fmt.Errorf("%s: %w", *in, err)
	}
	p := newPage(out, *system == "us")
	s.print(p)
	if *svg == "" {
		return nil
	}
	return os.WriteFile(*svg, []byte(s.draw(p)), 0o644)
}
