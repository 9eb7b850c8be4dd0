// Heatcurve shows why the time is what it is: the steam, the middle of a jar and its growing lethality through a published
// process at the altitude of the season, and what a degree, a thousand feet or some trapped air would change. It explains and decides
// nothing; none of it shortens a published process. The demo input is invented and says so.
//
//	go run ./examples/heatcurve [-in FILE] [-units metric|us] [-svg FILE]
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
		fmt.Fprintln(os.Stderr, "heatcurve:", err)
		os.Exit(1)
	}
}

func run(args []string, out io.Writer) error {
	flags := flag.NewFlagSet("heatcurve", flag.ContinueOnError)
	in := flags.String("in", form.Beside("heatcurve.json"), "the jar's file")
	system := flags.String("units", "us", "units of what is printed and drawn: metric or us")
	svg := flags.String("svg", "", "a file to draw the curves into")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if *system != "metric" && *system != "us" {
		return fmt.Errorf("-units %s: expected metric or us", *system)
	}
	j, err := load(*in)
	if err != nil {
		return err
	}
	s, err := j.study()
	if err != nil {
		return err
	}
	p := newPage(out, *system == "us")
	if err := s.print(p); err != nil {
		return err
	}
	if *svg == "" {
		return nil
	}
	picture, err := s.draw(p)
	if err != nil {
		return err
	}
	return os.WriteFile(*svg, []byte(picture), 0o644)
}
