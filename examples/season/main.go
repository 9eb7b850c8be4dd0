// Season prints the plan of a catch: from the dock to jars, schedule, cure and the verdicts on two recorded logs. The demo
// input is invented and says so.
//
//	go run ./examples/season [-in FILE] [-units metric|us]
package main

import (
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime"
)

func main() {
	if err := run(os.Args[1:], os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, "season:", err)
		os.Exit(1)
	}
}

func run(args []string, out io.Writer) error {
	flags := flag.NewFlagSet("season", flag.ContinueOnError)
	in := flags.String("in", demo(), "the season's file")
	system := flags.String("units", "us", "units of the printed plan: metric or us")
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
	return s.print(&sheet{w: out, us: *system == "us"})
}

// demo is the input that lies beside this file, wherever the program is run from.
func demo() string {
	_, file, _, _ := runtime.Caller(0)
	return filepath.Join(filepath.Dir(file), "season.json")
}
