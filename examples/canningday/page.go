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

func (s *page) length(l units.Length) string {
	switch {
	case s.US && l < 10*units.Foot:
		return units.Kitchen(l, 16, units.Inch)
	case s.US:
		return units.Text(l, units.Foot, 0)
	case l < units.Metre:
		return units.Text(l, units.Millimetre, 0)
	}
	return units.Text(l, units.Metre, 0)
}

func (s *page) mass(m units.Mass) string {
	if s.US {
		return units.Text(m, units.Ounce, 1)
	}
	return units.Text(m, units.Gram, 0)
}

func (s *page) pressure(p units.Pressure) string {
	if s.US {
		return units.Text(p, units.PSI, 1)
	}
	return units.Text(p, units.PSI, 1) + " (" + units.Text(p, units.Kilopascal, 0) + ")"
}

// hours prints a duration in hours and whole minutes, cut: what is held is never rounded up.
func hours(d time.Duration) string {
	if d < time.Hour {
		return fmt.Sprintf("%d min", d/time.Minute)
	}
	return fmt.Sprintf("%d h %02d min", d/time.Hour, d%time.Hour/time.Minute)
}
