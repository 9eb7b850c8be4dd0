package solution

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// freezingPoints are the printed points: hundredths of a percent of salt, tenths of a °C below zero; the first is
// water.
var freezingPoints = [...]struct{ salt, below int64 }{
	{0, 0}, {700, 44}, {1_100, 75}, {1_360, 98}, {1_620, 122}, {1_880, 152}, {2_120, 182}, {2_310, 212},
}

// FreezingPoint returns where a brine begins to freeze and its citation. Share is salt/(salt + water) by mass, 0 %
// to 23.1 %: otherwise a RangeError, because a stronger brine gives salt and no ice. Printed points from 7 %,
// straight lines between them and to water; below 7 % up to 0.1 °C too low. Source: brine data of the VDI.
func FreezingPoint(share units.Ratio) (units.Temperature, cite.Citation, error) {
	const step, tenth = units.Percent / 100, units.CelsiusDegrees / 10
	last := freezingPoints[len(freezingPoints)-1]
	if err := units.Check(saltByMass, share, 0, units.Ratio(last.salt)*step); err != nil {
		return units.Temperature{}, cite.Citation{}, err
	}
	citation := cite.Citation{
		Source: cite.VDIBrine, Where: "freezing points as stored in a fluid-property library", Basis: cite.Read,
	}
	for i, p := range freezingPoints {
		at := units.Ratio(p.salt) * step
		if share > at {
			continue
		}
		below := units.TemperatureChange(p.below) * tenth
		if share < at {
			before := freezingPoints[i-1]
			from := units.Ratio(before.salt) * step
			part, err := units.Prorate(below-units.TemperatureChange(before.below)*tenth, share-from, at-from)
			if err != nil {
				return units.Temperature{}, cite.Citation{}, err
			}
			below = units.TemperatureChange(before.below)*tenth + part
			citation.Basis = cite.Computed
		}
		return units.Celsius(0).Add(-below), citation, nil
	}
	return units.Temperature{}, cite.Citation{}, nil // not reached: the range is checked above
}
