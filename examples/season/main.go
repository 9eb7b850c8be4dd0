// Season judges a catch by its records and plans the year: whether the fish was kept cold, smoked hot and canned as
// published, what is left to eat, and whether the larder of a year can be had under the possession rule. Behind the
// cautions it has the catch step by step, the stock of every week, the shopping and a sheet for each batch. The demo
// input is invented and says so.
//
//	go run ./examples/season [-in FILE] [-units us|metric|both] [-svg FILE] [-math] [-sources]
package main

import (
	"fmt"
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/examples/internal/sheet"
)

func main() { command.Main("season", run) }

func run(args []string, out io.Writer) error {
	line := command.New("season", form.Beside("season.json"), "the season's `file`", file{}).Drawing("the year's stock")
	if err := line.Parse(args, out); err != nil {
		return err
	}
	s, err := load(line.In())
	if err != nil {
		return err
	}
	w, err := s.work()
	if err != nil {
		return fmt.Errorf("%s: %w", line.In(), err)
	}
	if err := line.Draw(func() (string, error) { return w.draw(), nil }); err != nil {
		return err
	}
	if line.Math() {
		return w.byHand(out)
	}
	w.print(&sheet.Sheet{W: out, System: line.System(), Sources: line.Sources()})
	return nil
}
