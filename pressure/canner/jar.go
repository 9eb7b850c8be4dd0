package canner

import (
	"math"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// JarSize is a jar as it is measured. The nominal volume is that of its Jar, exact. The other figures of a listed
// size are typical and Practice: no standard was read. Measure your own and replace them.
type JarSize struct {
	Name     string
	Jar      process.Jar
	Diameter units.Length // outside, the larger of body and band
	Height   units.Length // outside, with the lid
	Glass    units.Length // outside, without the lid
	Bore     units.Length // inside of the mouth
	Citation cite.Citation
}

// MarshalJSON writes the jar in the words that UnmarshalJSON reads.
func (j JarSize) MarshalJSON() ([]byte, error) { return wire.Marshal(j) }

// UnmarshalJSON reads a jar strictly.
func (j *JarSize) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, j) }

// JarSizes returns the typical sizes, by volume. The slice is the caller's own.
func JarSizes() []JarSize {
	sizes := make([]JarSize, 0, len(jarRows))
	for i := range jarRows {
		sizes = append(sizes, jarRows[i].size())
	}
	return sizes
}

// FindJarSize returns the typical size of that name, such as "pint wide"; an unknown name is a units.UnknownError.
// Source: size charts of the trade, Practice.
func FindJarSize(name string) (JarSize, error) {
	var known []string
	for i := range jarRows {
		if jarRows[i].name == name {
			return jarRows[i].size(), nil
		}
		known = append(known, jarRows[i].name)
	}
	return JarSize{}, units.UnknownError{What: "jar size", Got: name, Known: known}
}

func (j JarSize) check() error {
	if err := units.Check("jar diameter", j.Diameter, smallest, largest); err != nil {
		return err
	}
	return units.Check("jar height", j.Height, smallest, largest)
}

// Fill is how a stated weight of fish stands to what the jar can hold below the headspace. Over is what is too
// much, zero when it is Possible.
type Fill struct {
	Possible bool `wire:"always"`
	Most     units.Mass
	Over     units.Mass
	Citation cite.Citation // of Most
}

// MarshalJSON writes the fill as an app shows it.
func (f Fill) MarshalJSON() ([]byte, error) { return wire.Marshal(f) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (f *Fill) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, f) }

// CheckFill returns whether a weight of fish can be in the jar below a headspace, at a density, such as FleshDensity.
// It is geometry, a solid fill without voids, rounded down to 0.1 g; real packs hold less. The brimful volume is
// taken as 1.05 times the nominal one, and makers' run from 1.03 to 1.07: near the edge, weigh water. The fill must
// be 0 to 100 kg, the headspace 0 to 2 in, the bore 10 mm to 1 m, the density 0.9 to 1.3 g/mL: otherwise a
// units.RangeError. Source: Most = density (1.05 V - bore area × headspace).
func (j JarSize) CheckFill(fill units.Mass, headspace units.Length, density units.Density) (Fill, error) {
	if err := units.CheckUnit("fill", fill, leastMass); err != nil {
		return Fill{}, err
	}
	if err := units.CheckUnit("headspace", headspace, leastLength); err != nil {
		return Fill{}, err
	}
	if err := units.Check("fill", fill, 0, 100*units.Kilogram); err != nil {
		return Fill{}, err
	}
	if err := units.Check("headspace", headspace, 0, 2*units.Inch); err != nil {
		return Fill{}, err
	}
	if err := units.Check("bore", j.Bore, smallest, largest); err != nil {
		return Fill{}, err
	}
	const least, densest = 900 * units.KilogramPerCubicMetre, 1300 * units.KilogramPerCubicMetre
	if err := units.Check("density", density, least, densest); err != nil {
		return Fill{}, err
	}
	bore := units.Float(j.Bore, units.Millimetre)
	area := float64(math.Pi/4) * float64(bore*bore)
	above := float64(area*units.Float(headspace, units.Millimetre)) / 1000
	usable := float64(brimful*units.Float(j.Jar.Volume(), units.Millilitre)) - above
	grams := float64(usable * units.Float(density, units.GramPerMillilitre))
	if grams <= 0 {
		return Fill{}, j.noRoom(headspace, area)
	}
	most, err := units.OfFloat(math.Floor(float64(grams*10)+1e-6), units.Gram/10)
	if err != nil {
		return Fill{}, err
	}
	return Fill{Possible: fill <= most, Most: most, Over: max(0, fill-most), Citation: ceilingSource}, nil
}

// noRoom is the refusal of a headspace that leaves no room for fish, area being that of the mouth in mm².
func (j JarSize) noRoom(headspace units.Length, area float64) error {
	full := float64(brimful * units.Float(j.Jar.Volume(), units.Millilitre))
	deepest, err := units.OfFloat(math.Floor(full*1000/area), units.Millimetre)
	if err != nil {
		return err
	}
	return units.RangeError{What: "headspace", Got: headspace.String(), Low: "0 mm", High: deepest.String()}
}

// FleshDensity is that of raw salmon and trout, 1.052 g/mL, computed from their composition at about 20 °C by a model
// whose coefficients are from memory.
const FleshDensity = 1052 * units.KilogramPerCubicMetre

// brimful is the brimful volume over the nominal one.
const brimful = 1.05

var ceilingSource = cite.Citation{
	Where: "geometry of the jar; its bore and the brimful factor 1.05 are of the trade", Basis: cite.Practice,
}
