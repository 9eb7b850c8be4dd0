package canner

import (
	"strconv"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

const (
	leastQuarts  = 4
	smokedLeast  = 16 * units.Quart
	smokedMost   = 22 * units.Quart
	quartAcross  = 38 * units.Inch / 10
	quartUpright = 71 * units.Inch / 10
)

var (
	fourQuarts   = guide1("Recommended canners, p. 1-17")
	smokedCanner = cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, p. 5-13", Basis: cite.Read}
)

// suitable reports whether the published processes are for this vessel: it holds at least four quarts upright,
// measured by the slimmer quart of the usual two, and for smoked fish it is sold as 16 to 22 quarts.
func suitable(s process.Schedule, v Vessel, jar JarSize) error {
	diameter, height := quartAcross, quartUpright
	if jar.Jar == process.Quart {
		diameter, height = jar.Diameter, jar.Height
	}
	if under := v.Rack+height <= v.Height; !under || v.Diameter < room(leastQuarts, diameter) {
		quarts := 0
		if under {
			quarts, _ = across(v.Diameter, diameter)
		}
		return UnsuitableError{
			What: "vessel", Got: strconv.Itoa(quarts) + " quart jars upright on the rack under the lid", Required: "at least 4",
			Citation: fourQuarts,
		}
	}
	if s.Product == process.SmokedFish && (v.Capacity < smokedLeast || v.Capacity > smokedMost) {
		got := "a capacity that is not stated"
		if v.Capacity != 0 {
			got = "a canner of " + units.Text(v.Capacity, units.Quart, 1)
		}
		return UnsuitableError{
			What: "vessel", Got: got, Required: "16 to 22 quarts for smoked fish", Citation: smokedCanner,
		}
	}
	return nil
}
