package solution

import "example.org/lakelarder/units/cite"

// The densities of salt solutions in g/mL: one row a strength in percent by mass, one column a temperature in °C.
// The rows of salt are the printed ones; the first is pure water from a list of its own (Water, data page), which
// closes the table at 0 %.
var (
	densityTemperatures = [...]float64{0, 10, 20, 25}
	densityStrengths    = [...]float64{0, 2, 6, 10, 14, 18, 22, 26}
	densities           = [...][4]float64{
		{0.9998395, 0.9997026, 0.9982071, 0.9970479},
		{1.01509, 1.01442, 1.01246, 1.01112},
		{1.04575, 1.04408, 1.04127, 1.03963},
		{1.07677, 1.07419, 1.07068, 1.06879},
		{1.10824, 1.10491, 1.10085, 1.09872},
		{1.14031, 1.13643, 1.13190, 1.12954},
		{1.17318, 1.16891, 1.16395, 1.16140},
		{1.20709, 1.20254, 1.19717, 1.19443},
	}
)

var densityCitation = cite.Citation{
	Source: cite.InternationalCriticalTables, Where: "density of sodium chloride solutions", Basis: cite.Recalled,
}
