// Recipecheck holds whole recipes against what is published: the process in jars, the cure and the smoking, step by step. For each it prints a verdict, what
// governs, what falls short and by how much, and where that is printed; then the worst verdict, which is the recipe's. A verdict is no error: the program ends with 1
// only when a recipe cannot be read. Smoking is held against the strictest home rule, or against the home rule that the recipe names ("rule": "HOT-160-PNW"). The three demo recipes are invented and say so. Figures that a recipe is held against are quoted in the units of their tables.
//
//	go run ./examples/recipecheck [-in FILE] [-units metric|us] [-json]
package main

import (
	"fmt"
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
)

func main() { command.Main("recipecheck", run) }

func run(args []string, out io.Writer) error {
	line := command.New("recipecheck", "", "a recipe's file; without it the three demo recipes")
	asJSON := line.Bool("json", false, "print the verdicts as JSON")
	if err := line.Parse(args, out); err != nil {
		return err
	}
	paths := []string{line.In()}
	if line.In() == "" {
		paths = []string{form.Beside("sound.json"), form.Beside("short.json"), form.Beside("unpublished.json")}
	}
	var all []result
	for _, path := range paths {
		r, err := load(path)
		if err != nil {
			return err
		}
		judged, err := r.judge(measure{us: line.US()})
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
