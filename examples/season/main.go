// Season prints the plan of a catch, from the dock to jars, schedule, cure and the verdicts on the recorded logs, and of the whole year: what
// the larder needs, which fish to keep under the possession rule, the stock of every week, the calendar, the shopping and a sheet for each batch. The
// demo input is invented and says so.
//
//	go run ./examples/season [-in FILE] [-units metric|us] [-svg FILE]
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
		fmt.Fprintln(os.Stderr, "season:", err)
		os.Exit(1)
	}
}

func run(args []string, out io.Writer) error {
	flags := flag.NewFlagSet("season", flag.ContinueOnError)
	in := flags.String("in", form.Beside("season.json"), "the season's file")
	system := flags.String("units", "us", "units of the printed plan: metric or us")
	svg := flags.String("svg", "", "a file for the picture of the year's stock; none if empty")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if *system != "metric" && *system != "us" {
		return fmt.Errorf("-units %s: expected metric or us", *system)
	}
	s, err := load(*in)
	if err != nil {
		return err
	}
	held, err := s.print(newPage(out, *system == "us"))
	if err != nil || *svg == "" {
		return err
	}
	return os.WriteFile(*svg, []byte(s.draw(held)), 0o644)
}
