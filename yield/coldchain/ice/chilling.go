package ice

import (
	"math"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Shape is how a fish is taken to lie in the ice. The zero Shape is not set.
type Shape uint8

// The shapes. The heat goes out only through the sides, so that a real fish, with ends, is a little faster.
const (
	Slab     Shape = iota + 1 // a fillet or a flat fish, ice on both faces; its thickness
	Cylinder                  // a round fish; its diameter
)

var shapes = word.List[Shape]{What: "shape", Words: []string{"slab", "cylinder"}}

// ParseShape reads "slab" or "cylinder", in capitals or not; anything else is a units.UnknownError.
func ParseShape(s string) (Shape, error) { return shapes.Parse(s) }

// String is the shape in a word: "slab"; "not stated" when it is not set.
func (s Shape) String() string { return shapes.Of(s) }

// MarshalText is String as bytes, empty when the shape is not set; an unknown one is a units.UnknownError.
func (s Shape) MarshalText() ([]byte, error) { return shapes.Marshal(s) }

// UnmarshalText is ParseShape, and the empty text is a shape that is not set.
func (s *Shape) UnmarshalText(text []byte) error { return shapes.Unmarshal(text, s) }

// Fish is a fish as its heat leaves it. Thin and Thick are the least and the greatest that its thickness or diameter
// may be, at its thickest place; the same where it was measured once.
type Fish struct {
	Shape        Shape
	Thin, Thick  units.Length
	From         units.Temperature
	Conductivity units.Conductivity
	Diffusivity  units.Diffusivity
}

// FishOf returns a fish with a conductivity of 0.5 W/(m K) and a diffusivity of 1.2e-7 m²/s: choices inside the band
// computed for salmon, the diffusivity near its slow end, not measurements. ChillTime checks the limits.
func FishOf(shape Shape, thin, thick units.Length, from units.Temperature) Fish {
	return Fish{
		Shape: shape, Thin: thin, Thick: thick, From: from,
		Conductivity: units.WattPerMetreKelvin / 2, Diffusivity: 12 * units.SquareMillimetrePerSecond / 100,
	}
}

// Film is how well the ice takes heat from a surface, as a range.
type Film struct {
	Low, Likely, High units.FilmCoefficient
	Citation          cite.Citation
}

// CrushedFilm returns the film of melting crushed ice packed around fish: 50 to 200 W/(m² K), likely 100. An assumption
// of such estimates, without a source: a fish with a pocket of air around it is near the low end, or below.
func CrushedFilm() Film {
	return Film{
		Low: 50 * units.WattPerSquareMetreKelvin, Likely: 100 * units.WattPerSquareMetreKelvin,
		High:     200 * units.WattPerSquareMetreKelvin,
		Citation: cite.Citation{Where: "film coefficient assumed for melting ice around fish", Basis: cite.Practice},
	}
}

// ChillTimes is how long the middle of a fish takes, as a range: High is the thick fish in the least film, Low the thin
// one in the greatest, Likely the mean of both thicknesses in the likely film.
type ChillTimes struct {
	Low, Likely, High time.Duration
	Citation          cite.Citation
	Cautions          []cite.Caution
}

// MarshalJSON writes the times as an app shows it.
func (t ChillTimes) MarshalJSON() ([]byte, error) { return wire.Marshal(t) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (t *ChillTimes) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, t) }

// ChillTime returns how long the middle of a fish takes to come down to a temperature in ice. Thicknesses must be 2 mm
// to 30 cm; the fish at -1 to 40 °C; the medium -1 to 10 °C, since the model knows no freezing; to at least 0.1 K above
// the medium and below the start: otherwise a units.RangeError. Rounded up to the second; what cools sooner than a
// Fourier number of 0.02 counts as taking that long. Plan with High. Source: slab and cylinder with convection, twelve
// terms of the series.
func ChillTime(fish Fish, film Film, medium, to units.Temperature) (ChillTimes, error) {
	if err := fish.check(); err != nil {
		return ChillTimes{}, err
	}
	if err := film.check(); err != nil {
		return ChillTimes{}, err
	}
	const least = units.CelsiusDegrees / 10
	for _, err := range [...]error{
		units.CheckTemperature("ice or water around the fish", medium, units.Celsius(-1), units.Celsius(10)),
		units.CheckTemperature("middle of the fish at the end", to, medium.Add(least), fish.From.Add(-least)),
	} {
		if err != nil {
			return ChillTimes{}, err
		}
	}
	away := (to.Celsius() - medium.Celsius()) / (fish.From.Celsius() - medium.Celsius())
	return ChillTimes{
		Low: fish.time(fish.Thin, film.High, away), Likely: fish.time(fish.Thin+(fish.Thick-fish.Thin)/2, film.Likely, away),
		High: fish.time(fish.Thick, film.Low, away), Citation: conduction,
		Cautions: []cite.Caution{modelOfOnePiece, film.assumed()},
	}, nil
}

// time is how long the middle takes until it is a share away of its start from the medium.
func (f Fish) time(thickness units.Length, film units.FilmCoefficient, away float64) time.Duration {
	half := units.Float(thickness, units.Metre) / 2
	conductivity := units.Float(f.Conductivity, units.WattPerMetreKelvin)
	diffusivity := units.Float(f.Diffusivity, units.SquareMetrePerSecond)
	biot := units.Float(film, units.WattPerSquareMetreKelvin) * half / conductivity
	seconds := newConduction(f.Shape, biot).fourier(away) * half * half / diffusivity
	return time.Duration(math.Ceil(seconds)) * time.Second
}

func (f Fish) check() error {
	if err := shapes.Check(f.Shape); err != nil {
		return err
	}
	if err := units.Check("least thickness", f.Thin, 2*units.Millimetre, f.Thick); err != nil {
		return err
	}
	if err := units.Check("greatest thickness", f.Thick, f.Thin, 30*units.Centimetre); err != nil {
		return err
	}
	if err := units.CheckTemperature("fish before", f.From, units.Celsius(-1), units.Celsius(warmestFish)); err != nil {
		return err
	}
	const poorest, best = units.WattPerMetreKelvin / 10, 2 * units.WattPerMetreKelvin
	if err := units.Check("conductivity", f.Conductivity, poorest, best); err != nil {
		return err
	}
	const least, most = 5 * units.SquareMillimetrePerSecond / 100, units.SquareMillimetrePerSecond / 2
	return units.Check("diffusivity", f.Diffusivity, least, most)
}

func (f Film) check() error {
	const least, most = units.WattPerSquareMetreKelvin, 10_000 * units.WattPerSquareMetreKelvin
	if err := units.Check("least film coefficient", f.Low, least, f.Likely); err != nil {
		return err
	}
	if err := units.Check("likely film coefficient", f.Likely, f.Low, f.High); err != nil {
		return err
	}
	return units.Check("greatest film coefficient", f.High, f.Likely, most)
}

// assumed is the caution that a film is an assumption.
func (f Film) assumed() cite.Caution {
	c := filmAssumed
	c.Citation = f.Citation
	return c
}

var (
	modelOfOnePiece = cite.Caution{
		ID:       "ice.model-of-one-piece",
		Text:     "A model of one piece with ice all around it is never a substitute for a thermometer in the thickest fish.",
		Citation: conduction,
	}
	filmAssumed = cite.Caution{
		ID:   "ice.film-assumed",
		Text: "The film of the ice is an assumption: plan with the longest time.",
	}
)
