package main

import (
	"io"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
)

// page prints in metric or US units what the sheet of every example prints, and this one's quantities.
type page struct{ sheet.Sheet }

func newPage(w io.Writer, us bool) *page { return &page{sheet.Sheet{W: w, US: us}} }

// mass is for a kitchen scale: 0.1 g, or hundredths of an ounce; a pound and more of fish goes in pounds and ounces.
func (s *page) mass(m units.Mass) string {
	switch {
	case s.US && m < units.Pound:
		return units.Text(m, units.Ounce, 2)
	case s.US:
		return units.Kitchen(m, 4, units.Pound, units.Ounce)
	case m < units.Kilogram:
		return units.Text(m, units.Gram, 1)
	}
	return units.Text(m, units.Kilogram, 3)
}

func (s *page) length(l units.Length) string {
	if s.US {
		return units.Kitchen(l, 8, units.Inch)
	}
	return units.Text(l, units.Millimetre, 0)
}

func (s *page) volume(v units.Volume) string {
	if s.US {
		return units.Kitchen(v, 4, units.Quart, units.Cup, units.Tablespoon, units.Teaspoon)
	}
	return units.Text(v, units.Millilitre, 0)
}
