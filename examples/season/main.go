// Season prints the plan of a catch, from the dock to jars, schedule, cure and the verdicts on the recorded logs, and of the whole year: what
// the larder needs, which fish to keep under the possession rule, the stock of every week, the calendar, the shopping and a sheet for each batch. The
// demo input is invented and says so.
//
//	go run ./examples/season [-in FILE] [-units metric|us] [-svg FILE]
package main

import (
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
)

func main() { command.Main("season", run) }

func run(args []string, out io.Writer) error {
	line := command.New("season", form.Beside("season.json"), "the season's file").Drawing("the year's stock")
	if err := line.Parse(args, out); err != nil {
		return err
	}
	s, err := load(line.In())
	if err != nil {
		return err
	}
	held, err := s.print(newPage(out, line.US()))
	if err != nil {
		return err
	}
	return line.Draw(func() (string, error) { return s.draw(held), nil })
}
