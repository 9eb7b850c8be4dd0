package freezing

import (
	"math"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Shape is the form heat leaves the fish by. The zero Shape is not set.
type Shape uint8

// The shapes. Edges and ends are left out, which makes freezing longer: fillets and flat packs are slabs, whole fish
// cylinders.
const (
	Slab Shape = iota + 1
	Cylinder
	Sphere
)

var freezingShapes = word.List[Shape]{What: "shape of what freezes", Words: []string{"slab", "cylinder", "sphere"}}

// ParseShape reads "slab", "cylinder" or "sphere", in capitals or not; anything else is a units.UnknownError that lists
// them.
func ParseShape(s string) (Shape, error) {
	return freezingShapes.Parse(s)
}

// String is the name that ParseShape reads; "not stated" when it is not set.
func (s Shape) String() string { return freezingShapes.Of(s) }

// MarshalText is String as bytes, empty when the shape is not set; an unknown one is an error.
func (s Shape) MarshalText() ([]byte, error) { return freezingShapes.Marshal(s) }

// UnmarshalText is ParseShape, and the empty text is a shape that is not set.
func (s *Shape) UnmarshalText(text []byte) error {
	return freezingShapes.Unmarshal(text, s)
}

// Piece is one piece put into the cold. Flesh.Freezing fills in its last five from a composition.
type Piece struct {
	Shape     Shape
	Thickness units.Length          // of a slab cooled on both sides, or the diameter
	Start     units.Temperature     // of the whole piece, from its freezing point to 40 °C
	Core      units.Temperature     // of the middle at the end, -25 to -10 °C, 3 K or more above Medium; not for Plank
	Medium    units.Temperature     // the warmest the air or brine gets, -80 °C or above and below the freezing point
	Film      units.FilmCoefficient // from the surface, wrapping included

	FreezesAt    units.Temperature
	Density      units.Density
	Latent       units.SpecificEnergy
	HeatBefore   units.SpecificHeat // unfrozen
	HeatAfter    units.SpecificHeat // frozen
	Conductivity units.Conductivity // frozen
}

// Time is how long a piece takes to freeze, rounded up to the millisecond. Biot is h(a/2)/k, Stefan the cold below the
// freezing point and Above the heat above it, each against the latent heat.
type Time struct {
	Time                time.Duration
	Biot, Stefan, Above units.Ratio
	Cautions            []cite.Caution
	Citation            cite.Citation
}

// Range is a freezing time for a film that is not known well. High is the safe one.
type Range struct {
	Low, Likely, High Time
}

// MarshalJSON writes the range as an app shows it.
func (r Range) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *Range) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// Freezing returns a piece of this flesh put into the cold: density and latent heat of all its water at the freezing
// point, specific heats at 0 °C and at the core's end temperature, and the middle conductivity there. What is out of
// range is a units.RangeError.
func (f Flesh) Piece(
	shape Shape, thickness units.Length, start, core, medium units.Temperature, film units.FilmCoefficient,
) (Piece, error) {
	if err := checkCore(core, medium); err != nil {
		return Piece{}, err
	}
	fresh, err := f.Thermal(f.FreezesAt)
	if err != nil {
		return Piece{}, err
	}
	liquid, err := f.Thermal(units.Celsius(0))
	if err != nil {
		return Piece{}, err
	}
	frozen, err := f.Thermal(core)
	if err != nil {
		return Piece{}, err
	}
	b, err := f.whole()
	if err != nil {
		return Piece{}, err
	}
	latent, err := units.OfFloat(fusion*b.water, units.JoulePerKilogram)
	if err != nil {
		return Piece{}, err
	}
	piece := Piece{
		Shape: shape, Thickness: thickness, Start: start, Core: core, Medium: medium, Film: film,
		FreezesAt: f.FreezesAt, Density: fresh.Density, Latent: latent,
		HeatBefore: liquid.SpecificHeat, HeatAfter: frozen.SpecificHeat, Conductivity: frozen.ConductivityMiddle,
	}
	return piece, piece.check()
}

// Between returns Pham's time for the piece's own film as Likely, and for the strongest and weakest film as Low and
// High. Least must not lie above the piece's Film, nor most below it: otherwise, and for what Pham refuses, a
// units.RangeError.
func (f Piece) Between(least, most units.FilmCoefficient) (Range, error) {
	if err := units.Check("film", f.Film, least, most); err != nil {
		return Range{}, err
	}
	var r Range
	for _, part := range [...]struct {
		film units.FilmCoefficient
		time *Time
	}{{most, &r.Low}, {f.Film, &r.Likely}, {least, &r.High}} {
		piece := f
		piece.Film = part.film
		t, err := piece.Pham()
		if err != nil {
			return Range{}, err
		}
		*part.time = t
	}
	return r, nil
}

// timed rounds seconds up to the millisecond and adds the numbers that say what the equation is good for.
func (f Piece) timed(seconds float64, citation cite.Citation) (Time, error) {
	milliseconds := math.Ceil(seconds * 1000)
	if !(milliseconds < 1e12) { // 31 years
		return Time{}, units.RangeError{What: "freezing time", Got: "more than 31 years", High: "31 years"}
	}
	t := Time{Time: time.Duration(milliseconds) * time.Millisecond, Citation: citation}
	n := f.numbers()
	var faults [3]error
	t.Biot, faults[0] = units.OfFloat(n.biot(), units.One)
	t.Stefan, faults[1] = units.OfFloat(n.stefan(), units.One)
	t.Above, faults[2] = units.OfFloat(n.above(), units.One)
	for _, err := range faults {
		if err != nil {
			return Time{}, err
		}
	}
	return t, nil
}
