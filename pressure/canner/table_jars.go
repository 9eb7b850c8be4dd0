package canner

import (
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// jarRow is a typical size in hundredths of an inch.
type jarRow struct {
	name                          string
	jar                           process.Jar
	diameter, height, glass, bore units.Length
}

var jarRows = [...]jarRow{
	{"half-pint regular", process.HalfPint, 275, 390, 375, 236},
	{"half-pint wide squat", process.HalfPint, 360, 270, 260, 300},
	{"12 oz regular", process.TwelveOunce, 275, 530, 525, 236},
	{"pint regular", process.Pint, 320, 520, 500, 236},
	{"pint wide", process.Pint, 350, 500, 490, 300},
	{"1.5 pint wide", process.PintAndHalf, 350, 700, 690, 300},
	{"quart regular", process.Quart, 380, 710, 675, 236},
	{"quart wide", process.Quart, 385, 710, 675, 300},
}

func (r *jarRow) size() JarSize {
	const hundredth = units.Inch / 100
	return JarSize{
		Name: r.name, Jar: r.jar, Diameter: r.diameter * hundredth, Height: r.height * hundredth,
		Glass: r.glass * hundredth, Bore: r.bore * hundredth,
		Citation: cite.Citation{
			Source: cite.TradeJarSizes, Where: "typical size of a " + r.name + " jar, not measured",
			Basis: cite.Practice,
		},
	}
}
