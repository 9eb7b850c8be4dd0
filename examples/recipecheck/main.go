// Recipecheck holds whole recipes against what is published: the process in jars, the cure and the smoking, step by step. For each it prints a verdict, what
// governs, what falls short and by how much, and where that is printed; then the worst verdict, which is the recipe's. A verdict is no error: the program ends with 1
// only when a recipe cannot be read. Smoking is held against the strictest home rule, or against the home rule that the recipe names ("rule": "HOT-160-PNW"). The three demo recipes are invented and say so. Figures that a recipe is held against are quoted in the units of their tables.
//
//	go run ./examples/recipecheck [-in FILE] [-units metric|us] [-json]
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
		fmt.Fprintln(os.Stderr, "recipecheck:", err)
		os.Exit(1)
	}
}

func run(args []string, out io.Writer) error {
	flags := flag.NewFlagSet("recipecheck", flag.ContinueOnError)
	in := flags.String("in", "", "a recipe's file; without it the three demo recipes")
	system := flags.String("units", "us", "units of the governing figures: metric or us")
	asJSON := flags.Bool("json", false, "print the verdicts as JSON")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if flags.NArg() > 0 {
		return fmt.Errorf("%s: expected flags alone", flags.Arg(0))
	}
	if *system != "metric" && *system != "us" {
		return fmt.Errorf("-units %s: expected metric or us", *system)
	}
	paths := []string{*in}
	if *in == "" {
		paths = []string{form.Beside("sound.json"), form.Beside("short.json"), form.Beside("unpublished.json")}
	}
	var all []result
	for _, path := range paths {
		r, err := load(path)
		if err != nil {
			return err
		}
		judged, err := r.judge(measure{us: *system == "us"})
		if err != nil {
			return fmt.Errorf("%s: %w", path, err)
		}
		all = append(all, judged)
	}
	if *asJSON {
		return writeJSON(out, all)
	}
	for i, judged := range all {
		if i > 0 {
			fmt.Fprintf(out, "\n\n")
		}
		judged.print(out)
	}
	return nil
}
