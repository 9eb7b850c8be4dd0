package main

import (
	"fmt"
	"io"
	"strings"
	"time"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
)

// page prints in metric or US units what the sheet of every example prints, and this one's quantities.
type page struct{ sheet.Sheet }

func newPage(w io.Writer, us bool) *page { return &page{sheet.Sheet{W: w, US: us}} }

// hours prints a duration in hours and whole minutes, rounded up: what a limit counts is never hidden.
func hours(d time.Duration) string {
	d = (d + time.Minute - 1) / time.Minute * time.Minute
	return fmt.Sprintf("%d h %02d min", d/time.Hour, d%time.Hour/time.Minute)
}

// left prints what remains, cut to whole minutes.
func left(d time.Duration) string {
	return fmt.Sprintf("%d h %02d min", d/time.Hour, d%time.Hour/time.Minute)
}

// mass rounds up: ice is better left over.
func (s *page) mass(m units.Mass) string {
	if s.US {
		return units.Kitchen(units.CeilTo(m, units.Ounce), 1, units.Pound, units.Ounce)
	}
	return units.Text(units.CeilTo(m, 10*units.Gram), units.Kilogram, 2)
}

const tenth = 24 * time.Hour / 10 // of a day

// aged is a time in days and tenths, rounded up: a fish is no younger than it says.
func aged(d time.Duration) string { return days(d + tenth - 1) }

// days is a time in days and tenths, cut: there is no more left than it says.
func days(d time.Duration) string {
	sign := ""
	if d < 0 {
		sign, d = "-", -d+tenth-1
	}
	return fmt.Sprintf("%s%d.%d days", sign, d/tenth/10, d/tenth%10)
}

// span is one time or two.
func span(low, high time.Duration) string {
	if low == high {
		return days(low)
	}
	return days(low) + " to " + days(high)
}

// bar is a share of an allowance as marks, twenty for all of it; what goes past it is cut and marked.
func bar(used units.Ratio) string {
	const whole = 20
	marks := int((used + units.One/whole - 1) / (units.One / whole))
	if marks > whole {
		return strings.Repeat("#", whole) + ">"
	}
	return strings.Repeat("#", marks) + strings.Repeat(".", whole-marks) + " "
}
