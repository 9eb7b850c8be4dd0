package main

import (
	"io"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield"
)

// page prints in metric or US units what the sheet of every example prints, and this one's quantities.
type page struct{ sheet.Sheet }

func newPage(w io.Writer, us bool) *page { return &page{sheet.Sheet{W: w, US: us}} }

// mass shows enough digits to add the columns up by hand.
func (s *page) mass(m units.Mass) string {
	if s.US {
		return units.Text(m, units.Ounce, 3)
	}
	return units.Text(m, units.Gram, 2)
}

// parts is the five components of a makeup and their total, in columns.
func (s *page) parts(name string, m yield.Makeup) {
	s.Line("%-22s %11s %10s %10s %10s %10s %12s", name, s.mass(m.Water), s.mass(m.Salt), s.mass(m.Protein), s.mass(m.Fat), s.mass(m.Ash), s.mass(total(m)))
}

func (s *page) columns(first string) {
	s.Line("%-22s %11s %10s %10s %10s %10s %12s", first, "water", "salt", "protein", "fat", "ash", "in all")
}

// total is of a makeup that was checked when it was worked out.
func total(m yield.Makeup) units.Mass {
	t, _ := m.Total()
	return t
}

func percent(r units.Ratio, places int32) string { return units.Text(r, units.Percent, places) }

// saltiness is a water phase salt rounded down: a fillet a hair below a limit is not told as at it.
func saltiness(wps units.Ratio, places int32) string {
	step := units.Percent
	for n := int32(0); n < places; n++ {
		step /= 10
	}
	return percent(units.FloorTo(wps, step), places)
}
