package canner

import (
	"strconv"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Load is what one load of jars is. Spare is the room across the layer that nothing uses: by so much more clearance
// the same jars still stand. LayersBy is what keeps another layer out. Loads are comparable.
type Load struct {
	Jars     int
	PerLayer int
	Layers   int
	LayersBy LayerLimit
	Packing  Packing
	Spare    units.Length
	Product  process.Product // of the schedule
}

// MarshalJSON writes the load as an app shows it.
func (l Load) MarshalJSON() ([]byte, error) { return wire.Marshal(l) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (l *Load) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, l) }

// Fit returns how many jars of a size stand in a vessel for a schedule: per layer the densest packing in print, in
// layers as published, a divider between. The clearance is taken off the inside diameter, once: jars that touch have
// zero. A third of the diameter exactly gives 7 jars; the ratios' last digit shifts such an edge by less than a
// thousandth of a nanometre.
//
// Sizes are 10 mm to 1 m, the clearance from zero to the diameter, and there must be room for a jar and no more than
// the 40 of the table in a layer: otherwise a units.RangeError. A jar that is not the schedule's is a
// ContradictionError. A vessel that does not hold four quarts upright, and for smoked fish one not of 16 to 22
// quarts, is an UnsuitableError. Source: Birgin and Gentil 2009; USDA Complete Guide, Guide 1, p. 1-17, and Guide 5,
// p. 5-13, rev. 2015.
func Fit(s process.Schedule, v Vessel, jar JarSize, clearance units.Length) (Load, error) {
	if err := checkFit(s, v, jar, clearance); err != nil {
		return Load{}, err
	}
	if err := suitable(s, v, jar); err != nil {
		return Load{}, err
	}
	n, beyond := across(v.Diameter-clearance, jar.Diameter)
	switch {
	case n == 0:
		return Load{}, units.RangeError{
			What: "jar diameter", Got: jar.Diameter.String(), High: (v.Diameter - clearance).String(),
		}
	case beyond:
		return Load{}, units.RangeError{
			What: "jars in a layer", Got: "more than " + strconv.Itoa(n), High: strconv.Itoa(n),
		}
	}
	l := Load{PerLayer: n, Product: s.Product, Spare: v.Diameter - clearance - room(n, jar.Diameter)}
	l.Packing, _ = FindPacking(n) // 1 to 40
	l.Layers, l.LayersBy = v.layers(jar)
	if l.Layers == 0 {
		return Load{}, units.RangeError{
			What: "jar height above the rack", Got: jar.Height.String(), High: (v.Height - v.Rack).String(),
		}
	}
	l.Jars = n * l.Layers
	return l, nil
}

func checkFit(s process.Schedule, v Vessel, jar JarSize, clearance units.Length) error {
	if s.Process <= 0 || jar.Jar != s.Jar {
		return ContradictionError{
			What: "jar", Got: jar.Jar.String(), Expected: "a schedule and its jar, " + s.Jar.String(),
		}
	}
	if err := v.check(); err != nil {
		return err
	}
	if err := jar.check(); err != nil {
		return err
	}
	return units.Check("clearance", clearance, 0, v.Diameter)
}

// Batch is how many loads some jars take. Last is the number of jars in the last load, which may be as many as in
// every other.
type Batch struct {
	Loads int
	Last  int
}

// MarshalJSON writes the batch as an app shows it.
func (b Batch) MarshalJSON() ([]byte, error) { return wire.Marshal(b) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (b *Batch) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, b) }

// Loads returns how many loads of this kind so many jars take, and how many jars the last one has. The number of
// jars must be 1 to a million: otherwise a units.RangeError. USDA sets no least number of jars for a load.
func (l Load) Loads(jars int) (Batch, error) {
	if jars < 1 || jars > 1_000_000 {
		return Batch{}, units.RangeError{What: "jars", Got: strconv.Itoa(jars), Low: "1", High: "1,000,000"}
	}
	if l.Jars < 1 {
		return Batch{}, units.RangeError{What: "jars in a load", Got: strconv.Itoa(l.Jars), Low: "1"}
	}
	loads := (jars + l.Jars - 1) / l.Jars
	return Batch{Loads: loads, Last: jars - (loads-1)*l.Jars}, nil
}

// Cautions returns what must be known beside the number of jars. It is never empty; the slice is the caller's own.
func (l Load) Cautions() []cite.Caution {
	all := append(make([]cite.Caution, 0, 5), uprightOnRack, smallLoad)
	if l.Layers > 1 {
		all = append(all, rackBetween, notInThree)
	}
	if l.Product == process.SmokedFish {
		all = append(all, smokedLoad)
	}
	return all
}
