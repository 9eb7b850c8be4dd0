// Recipecheck holds whole recipes against what is published: the process in jars, the cure and the smoking, and the
// parts against each other. Of each recipe it prints the worst verdict first, then why, what to do and which published
// figures govern. A verdict is no error: the program ends with 1 only when a recipe cannot be read. Without a file it
// judges three recipes that are invented and say so.
//
//	go run ./examples/recipecheck [-in FILE] [-units us|metric|both] [-math] [-json] [-sources]
package main

import (
	"flag"
	"fmt"
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/internal/wire"
)

func main() { command.Main("recipecheck", run) }

func run(args []string, out io.Writer) error {
	line := command.New("recipecheck", form.Beside("sound.json"), "a recipe's `file`; without it this one and two more",
		file{}).Writing()
	if err := line.Parse(args, out); err != nil {
		return err
	}
	paths := []string{form.Beside("sound.json"), form.Beside("short.json"), form.Beside("unpublished.json")}
	line.Visit(func(f *flag.Flag) {
		if f.Name == "in" {
			paths = []string{line.In()}
		}
	})
	var all []judged
	for _, path := range paths {
		r, err := load(path)
		if err != nil {
			return err
		}
		j, err := r.judge()
		if err != nil {
			return fmt.Errorf("%s: %w", path, err)
		}
		all = append(all, j)
	}
	if line.JSON() {
		return writeJSON(out, all)
	}
	for i, j := range all {
		if i > 0 {
			fmt.Fprintf(out, "\n\n")
		}
		if line.Math() {
			if err := j.byHand(out, line.System()); err != nil {
				return err
			}
			continue
		}
		j.print(&sheet.Sheet{W: out, System: line.System(), Sources: line.Sources()})
	}
	return nil
}

func writeJSON(out io.Writer, all []judged) error {
	text, err := wire.Marshal(all)
	if err != nil {
		return err
	}
	if text, err = wire.Indent(text); err != nil {
		return err
	}
	_, err = fmt.Fprintf(out, "%s\n", text)
	return err
}
