package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// jar is heatcurve.json as it is written.
type jar struct {
	About    string                     `wire:"required" help:"what this is, and that it is invented if it is"`
	Place    string                     `wire:"required" help:"where"`
	Altitude units.Stated[units.Length] `wire:"required" help:"of the stove"`
	Gauge    process.Gauge              `wire:"required" help:"dial or weighted"`
	Jar      process.Jar                `wire:"required" help:"size of the jar"`
	Radius   units.Length               `wire:"required" help:"of the fish inside the glass"`
	Height   units.Length               `wire:"required" help:"whole height of the fish"`
	Glass    struct {
		Thickness    units.Length       `wire:"required" help:"of the wall"`
		Conductivity units.Conductivity `wire:"required" help:"of the glass"`
	} `wire:"required"`
	Film             units.Range[units.FilmCoefficient] `wire:"required" help:"of the steam on the glass: the least, the likely, the greatest that it may be"`
	Fish             composition                        `wire:"required"`
	Start            units.Temperature                  `wire:"required" help:"of the fish when the heat is turned on"`
	ComeUp           time.Duration                      `wire:"required" help:"from there to the full temperature of the steam, a straight line"`
	CoolingPerMinute units.TemperatureChange            `wire:"required" help:"how fast the canner cools when the heat is off"`
	End              units.Temperature                  `wire:"required" help:"to which it cools"`
}

// composition is what the fish is made of.
type composition struct {
	Water   units.Ratio `wire:"required" help:"share by mass"`
	Protein units.Ratio `wire:"required"`
	Fat     units.Ratio `wire:"required"`
	Ash     units.Ratio `wire:"required"`
}

func (c composition) lethal() lethality.Composition {
	return lethality.Composition{Water: c.Water, Protein: c.Protein, Fat: c.Fat, Ash: c.Ash}
}

// load reads the file; an error names it and the field or line.
func load(path string) (jar, error) {
	var j jar
	if err := form.Read(path, &j); err != nil {
		return jar{}, err
	}
	if _, err := units.RangeOf("film", j.Film.Low, j.Film.Likely, j.Film.High); err != nil {
		return jar{}, fmt.Errorf("%s: film: %w", path, err)
	}
	return j, nil
}
