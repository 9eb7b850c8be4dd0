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

func (s *page) altitude(l units.Length) string {
	if s.US {
		return units.Text(l, units.Foot, 0)
	}
	return units.Text(l, units.Metre, 0)
}

func minutes(d time.Duration) string { return fmt.Sprintf("%.0f min", d.Minutes()) }
