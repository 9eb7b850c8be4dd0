package main

import (
	"fmt"
	"io"
	"math"
	"time"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

var balance = cite.Citation{Where: "mass balance: the salt stays, the water goes", Basis: cite.Computed}

// page prints in metric or US units what the sheet of every example prints, and this one's quantities.
type page struct{ sheet.Sheet }

func newPage(w io.Writer, us bool) *page { return &page{sheet.Sheet{W: w, US: us}} }

// limit is a temperature to reach or to stay below, to a hundredth: 180 °F is 82.22 °C, and a core at 82.20 °C is not there.
func (s *page) limit(t units.Temperature) string { return t.Text(s.Scale(), 2) }

// bare is a core's reading without its unit, cut: 179.97 never looks like 180.
func (s *page) bare(t units.Temperature) string {
	return t.In(s.Scale(), 4).RoundFloor(1).StringFixed(1)
}

func (s *page) mass(m units.Mass) string {
	if s.US {
		return units.Kitchen(m, 1, units.Pound, units.Ounce)
	}
	return units.Text(m, units.Kilogram, 2)
}

// little is a mass of salt or of water in small figures.
func (s *page) little(m units.Mass) string {
	if s.US {
		return units.Text(m, units.Ounce, 2)
	}
	return units.Text(m, units.Gram, 0)
}

func (s *page) length(l units.Length) string {
	if s.US {
		return units.Text(l, units.Foot, 0)
	}
	return units.Text(l, units.Metre, 0)
}

func (s *page) pressure(p units.Pressure) string {
	if s.US {
		return units.Text(p, units.PSI, 0)
	}
	return units.Text(p, units.PSI, 0) + " (" + units.Text(p, units.Kilopascal, 0) + ")"
}

func percent(r units.Ratio, places int32) string { return units.Text(r, units.Percent, places) }

// cut is a water phase salt, never rounded up to a limit.
func cut(r units.Ratio) string { return percent(units.FloorTo(r, units.PerMille), 1) }

// share is part of a whole that was checked not to be zero.
func share(part, whole units.Mass) string {
	r, _ := units.RatioOf(part, whole)
	return percent(r, 0)
}

// held prints a time in hours and whole minutes, cut: what was held is never rounded up.
func held(d time.Duration) string {
	if d < time.Hour {
		return fmt.Sprintf("%d min", d/time.Minute)
	}
	return fmt.Sprintf("%d h %02d min", d/time.Hour, d%time.Hour/time.Minute)
}

// owed prints a time with a started minute counted whole: what is owed or was too long is never rounded down.
func owed(d time.Duration) string { return held(d + time.Minute - 1) }

// clock is a time after the start on the kitchen's clock.
func (d day) clock(at time.Duration) string {
	t := d.started + at.Round(time.Minute)
	days := ""
	if t >= 24*time.Hour {
		days = fmt.Sprintf(" (+%d d)", t/(24*time.Hour))
	}
	t %= 24 * time.Hour
	return fmt.Sprintf("%02d:%02d%s", t/time.Hour, t%time.Hour/time.Minute, days)
}

// degrees is a temperature as a number to draw.
func (s *page) degrees(t units.Temperature) float64 {
	f, _ := t.In(s.Scale(), 3).Float64()
	return f
}

// tens is a temperature cut to whole tens of degrees.
func (s *page) tens(t units.Temperature) int { return 10 * int(math.Floor(s.degrees(t)/10)) }

func (s *page) whole(degrees float64) string { return fmt.Sprintf("%.0f %s", degrees, s.Scale()) }
