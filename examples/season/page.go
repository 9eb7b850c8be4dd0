package main

import (
	"fmt"
	"io"
	"time"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
)

// page prints in metric or US units what the sheet of every example prints, and this one's quantities.
type page struct{ sheet.Sheet }

func newPage(w io.Writer, us bool) *page { return &page{sheet.Sheet{W: w, US: us}} }

func (s *page) mass(m units.Mass) string {
	switch {
	case s.US && m < units.Pound:
		return units.Kitchen(m, 4, units.Ounce)
	case s.US:
		return units.Kitchen(m, 1, units.Pound, units.Ounce)
	case m < units.Kilogram:
		return units.Text(m, units.Gram, 0)
	}
	return units.Text(m, units.Kilogram, 2)
}

func (s *page) length(l units.Length) string {
	switch {
	case s.US && l < units.Foot:
		return units.Kitchen(l, 4, units.Inch)
	case s.US:
		return units.Text(l, units.Foot, 0)
	case l < units.Metre:
		return units.Text(l, units.Millimetre, 0)
	}
	return units.Text(l, units.Metre, 0)
}

func (s *page) pressure(p units.Pressure) string {
	if s.US {
		return units.Text(p, units.PSI, 0)
	}
	return units.Text(p, units.PSI, 0) + " (" + units.Text(p, units.Kilopascal, 0) + ")"
}

func (s *page) volume(v units.Volume) string {
	if s.US {
		return units.Kitchen(v, 4, units.Quart, units.Cup, units.Tablespoon, units.Teaspoon)
	}
	return units.Text(v, units.Millilitre, 0)
}

// minutes prints a duration in whole minutes, cut: what is still owed is never hidden by rounding up.
func minutes(d time.Duration) string { return fmt.Sprintf("%d min", d/time.Minute) }
