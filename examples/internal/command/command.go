// Package command reads the command line of an example: the flags that all of them have, and what is wrong with one
// in one line.
package command

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/units"
)

// Line is a command line: -in, -units, -math and -sources, -svg where a program draws and -json where it writes its
// result, and what else a program adds to the FlagSet before Parse.
type Line struct {
	*flag.FlagSet
	in, svg             *string
	math, sources, json *bool
	system              units.System
	demo                string
	input               any
}

// New is the command line of a program whose input is in a file, that of the demo if none is given. Input is a value of
// the type that the file is read into: -h lists its fields.
func New(name, demo, what string, input any) *Line {
	l := &Line{FlagSet: flag.NewFlagSet(name, flag.ContinueOnError), demo: demo, input: input}
	l.SetOutput(io.Discard) // one line says what is wrong
	l.in = l.String("in", demo, what)
	l.TextVar(&l.system, "units", units.Both, "`system` of units of what is printed: us, metric or both")
	l.math = l.Bool("math", false, "print the whole way to the result by hand")
	l.sources = l.Bool("sources", false, "list the sources")
	return l
}

// Drawing adds -svg.
func (l *Line) Drawing(what string) *Line {
	l.svg = l.String("svg", "", "a `file` to draw "+what+" into; none if empty")
	return l
}

// Writing adds -json.
func (l *Line) Writing() *Line {
	l.json = l.Bool("json", false, "write the result as JSON")
	return l
}

// Parse reads the arguments, which are all flags. For -h it writes the flags and the fields of the input file to out
// and returns flag.ErrHelp.
func (l *Line) Parse(args []string, out io.Writer) error {
	err := l.FlagSet.Parse(args)
	switch {
	case errors.Is(err, flag.ErrHelp):
		return errors.Join(l.help(out), err)
	case err != nil:
		return err
	case l.NArg() > 0:
		return fmt.Errorf("%s: expected only flags", l.Arg(0))
	}
	return nil
}

// help writes what -h asks for.
func (l *Line) help(out io.Writer) error {
	fmt.Fprintf(out, "flags of %s:\n", l.Name())
	l.SetOutput(out)
	l.PrintDefaults()
	fields, err := form.Fields(l.demo, l.input)
	if err != nil {
		return err
	}
	fmt.Fprintf(out, "\nfields of the input file, what each holds, and the value in the demo or another example:\n")
	for _, f := range fields {
		fmt.Fprint(out, f)
	}
	return nil
}

// In is the input's file.
func (l *Line) In() string { return *l.in }

// System is the system of units to print in.
func (l *Line) System() units.System { return l.system }

// Math reports whether the way by hand is wanted.
func (l *Line) Math() bool { return *l.math }

// Sources reports whether the list of sources is wanted.
func (l *Line) Sources() bool { return *l.sources }

// JSON reports whether the result is wanted as JSON.
func (l *Line) JSON() bool { return l.json != nil && *l.json }

// Draw writes the picture where one is wanted; picture is not asked for otherwise.
func (l *Line) Draw(picture func() (string, error)) error {
	if l.svg == nil || *l.svg == "" {
		return nil
	}
	svg, err := picture()
	if err != nil {
		return err
	}
	return os.WriteFile(*l.svg, []byte(svg), 0o644)
}

// Main runs a program: an error is one line, and the exit code 1.
func Main(name string, run func(args []string, out io.Writer) error) {
	if err := run(os.Args[1:], os.Stdout); err != nil && !errors.Is(err, flag.ErrHelp) {
		fmt.Fprintf(os.Stderr, "%s: %v\n", name, err)
		os.Exit(1)
	}
}
