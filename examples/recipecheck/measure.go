package main

import (
	"fmt"
	"time"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// measure writes governing figures in metric or US units. What a conversion cuts off goes to the safe side: a least figure is rounded up, a greatest down.
type measure struct{ us bool }

func (m measure) pressure(p units.Pressure) string {
	text := units.Text(p, units.PSI, 0)
	if !m.us {
		text += " (" + units.Text(units.CeilTo(p, units.Kilopascal/10), units.Kilopascal, 1) + ")"
	}
	return text
}

func (m measure) length(l units.Length) string {
	if m.us {
		return units.Kitchen(l, 16, units.Inch)
	}
	return units.Text(l, units.Millimetre, 0)
}

// band in metres ends a little early and starts a little early: an altitude between belongs to the stricter band.
func (m measure) band(b process.Band) string {
	switch {
	case m.us:
		return b.String()
	case b.UpTo == process.NoLimit:
		return "above " + units.Text(units.FloorTo(b.Over, units.Metre), units.Metre, 0)
	}
	return fmt.Sprintf("%s to %s", units.Text(units.FloorTo(b.Over, units.Metre), units.Metre, 0), units.Text(units.FloorTo(b.UpTo, units.Metre), units.Metre, 0))
}

func (m measure) water(w process.Water) string {
	if w.Volume == 0 {
		return m.length(w.Shallow) + " to " + m.length(w.Deep)
	}
	text := units.Text(w.Volume, units.Quart, 0)
	if !m.us {
		text = units.Text(units.CeilTo(w.Volume, units.Litre/100), units.Litre, 2)
	}
	if w.AtLeast {
		return "at least " + text
	}
	return text
}

func (m measure) least(t units.Temperature) string {
	return "at least " + t.In(m.scale(), 6).RoundCeil(1).String() + m.degree()
}

func (m measure) most(t units.Temperature) string {
	return "at most " + t.In(m.scale(), 6).RoundFloor(1).String() + m.degree()
}

func (m measure) scale() units.Scale {
	if m.us {
		return units.FahrenheitScale
	}
	return units.CelsiusScale
}

func (m measure) degree() string { return " " + m.scale().String() }

func percent(r units.Ratio) string { return units.Text(r, units.Percent, 2) }

// span is whole minutes as the tables print them, or hours.
func span(d time.Duration) string { return fmt.Sprintf("%d min", d/time.Minute) }
