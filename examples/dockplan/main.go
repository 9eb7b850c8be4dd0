// Dockplan says on the dock how many fish can be kept today, and makes a timetable by the clock of them for the two
// days
// that follow: gutting and ice, salt, smoke and canner loads, for one kitchen and the people in it who also sleep.
// The
// demo input is invented and says so.
//
//	go run ./examples/dockplan [-in FILE] [-units us|metric|both] [-svg FILE] [-ics FILE] [-math] [-sources]
package main

import (
	"io"
	"os"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/examples/internal/sheet"
)

func main() { command.Main("dockplan", run) }

func run(args []string, out io.Writer) error {
	line := command.New("dockplan", form.Beside("dock.json"), "the day's `file`",
		file{}).Drawing("the timetable, one lane a resource,")
	ics := line.String("ics", "",
		"a `file` to write the timetable into as a calendar that a phone opens; none if empty")
	if err := line.Parse(args, out); err != nil {
		return err
	}
	k, err := load(line.In())
	if err != nil {
		return err
	}
	a, err := k.answer()
	if err != nil {
		return err
	}
	if err := line.Draw(func() (string, error) { return a.draw() }); err != nil {
		return err
	}
	if *ics != "" {
		text, err := a.calendar()
		if err != nil {
			return err
		}
		if err := os.WriteFile(*ics, []byte(text), 0o644); err != nil {
			return err
		}
	}
	if line.Math() {
		return a.byHand(out)
	}
	a.print(&sheet.Sheet{W: out, System: line.System(), Sources: line.Sources()})
	return nil
}
