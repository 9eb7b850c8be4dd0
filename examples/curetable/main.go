// Curetable answers, for a list of fillets, what to weigh for each, how long it lies in salt by its thickness, and
// which water phase salt to expect before and after smoking, as a range. With -math it fills the numbers of the first
// fillet into the formulas; with -svg it draws how the salt moves into the thickest one. The demo input is invented and
// says so.
//
//	go run ./examples/curetable [-in FILE] [-units us|metric|both] [-svg FILE] [-math] [-sources]
package main

import (
	"io"

	"example.org/lakelarder/examples/internal/command"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/examples/internal/sheet"
)

func main() { command.Main("curetable", run) }

func run(args []string, out io.Writer) error {
	line := command.New("curetable", form.Beside("fillets.json"), "the `file` of the fillets",
		list{}).Drawing("the salt by depth and time")
	if err := line.Parse(args, out); err != nil {
		return err
	}
	l, err := load(line.In())
	if err != nil {
		return err
	}
	p, err := l.plan()
	if err != nil {
		return err
	}
	if err := line.Draw(func() (string, error) { return p.draw(line.System()) }); err != nil {
		return err
	}
	if line.Math() {
		return p.byHand(out)
	}
	p.print(&sheet.Sheet{W: out, System: line.System(), Sources: line.Sources()})
	return nil
}
