// Package command reads the command line of an example: the flags that all of them have, and what is wrong with one in one line.
package command

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
)

// Line is a command line: -in and -units, -svg where a program draws, and what else a program adds to the FlagSet before Parse.
type Line struct {
	*flag.FlagSet
	in, units, svg *string
}

// New is the command line of a program whose input is in a file, that of the demo if none is given.
func New(name, demo, what string) *Line {
	l := &Line{FlagSet: flag.NewFlagSet(name, flag.ContinueOnError)}
	l.SetOutput(io.Discard) // one line says what is wrong
	l.in = l.String("in", demo, what)
	l.units = l.String("units", "us", "units of what is printed: metric or us")
	return l
}

// Drawing adds -svg.
func (l *Line) Drawing(what string) *Line {
	l.svg = l.String("svg", "", "a file to draw "+what+" into; none if empty")
	return l
}

// Parse reads the arguments. Flags alone are taken, and of units two words. For -h it writes the flags to out and returns flag.ErrHelp.
func (l *Line) Parse(args []string, out io.Writer) error {
	err := l.FlagSet.Parse(args)
	switch {
	case errors.Is(err, flag.ErrHelp):
		fmt.Fprintf(out, "flags of %s:\n", l.Name())
		l.SetOutput(out)
		l.PrintDefaults()
		return err
	case err != nil:
		return err
	case l.NArg() > 0:
		return fmt.Errorf("%s: expected flags alone", l.Arg(0))
	case *l.units != "metric" && *l.units != "us":
		return fmt.Errorf("-units %s: expected metric or us", *l.units)
	}
	return nil
}

// In is the input's file.
func (l *Line) In() string { return *l.in }

// US reports whether US units are wanted.
func (l *Line) US() bool { return *l.units == "us" }

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
