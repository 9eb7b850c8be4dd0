package smoke

import (
	"math"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/internal/root"
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Faces is through how many faces the heat reaches a fillet. The zero Faces is not stated.
type Faces uint8

// The ways a fillet lies.
const (
	OneFace  Faces = iota + 1 // on a board, or on a skin that is counted as one
	TwoFaces                  // on a rack, air above and below
)

var facesWords = word.List[Faces]{What: "faces", Words: []string{"one face", "two faces"}, Also: map[string]Faces{"both faces": TwoFaces}}

// ParseFaces reads "one face" or "two faces", in capitals or not; anything else is a units.UnknownError.
func ParseFaces(s string) (Faces, error) { return facesWords.Parse(s) }

// String is the faces in words: "two faces".
func (f Faces) String() string { return facesWords.Of(f) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (f Faces) MarshalText() ([]byte, error) { return facesWords.Marshal(f) }

// UnmarshalText is ParseFaces, and the empty text is one that is not set.
func (f *Faces) UnmarshalText(text []byte) error { return facesWords.Unmarshal(text, f) }

// Slab is a fillet as the heat sees it: a slab as thick as its thickest part, of one temperature at the start. Thin and Thick
// are the least and the greatest that its thickness may be; the same where it was measured once.
type Slab struct {
	Thin, Thick  units.Length
	Faces        Faces
	Start        units.Temperature
	Conductivity units.Conductivity
	Diffusivity  units.Diffusivity
}

// FilletSlab returns a slab of fish with a conductivity of 0.5 W/(m K) and a diffusivity of 1.35e-7 m²/s: choices inside the
// band of what is measured and computed for salmon (0.43 to 0.57, 1.0e-7 to 1.6e-7), not measurements. Its limits are those of
// WarmCore, which checks them.
func FilletSlab(thin, thick units.Length, faces Faces, start units.Temperature) Slab {
	return Slab{
		Thin: thin, Thick: thick, Faces: faces, Start: start,
		Conductivity: units.WattPerMetreKelvin / 2, Diffusivity: 135 * units.SquareMillimetrePerSecond / 1000,
	}
}

func (s Slab) check() error {
	if err := facesWords.Check(s.Faces); err != nil {
		return err
	}
	if err := units.Check("least thickness", s.Thin, 2*units.Millimetre, s.Thick); err != nil {
		return err
	}
	if err := units.Check("greatest thickness", s.Thick, s.Thin, 20*units.Centimetre); err != nil {
		return err
	}
	if err := checkWarmth("start of the core", s.Start, units.Celsius(-1), units.Celsius(60)); err != nil {
		return err
	}
	if err := units.Check("conductivity", s.Conductivity, units.WattPerMetreKelvin/10, 2*units.WattPerMetreKelvin); err != nil {
		return err
	}
	return units.Check("diffusivity", s.Diffusivity, 5*units.SquareMillimetrePerSecond/100, units.SquareMillimetrePerSecond/2)
}

// modes are the terms of the series that are carried; those left out matter for the first seconds alone.
const modes = 24

// slabModes is a slab in air of one film: for each term of the series ζ², its share of the centre and how far from the
// medium it still is. The centre is that of a slab heated on both sides, or the covered face of one heated on one.
type slabModes struct {
	rate   [modes]float64 // 1/s
	centre [modes]float64 // C
	away   [modes]float64 // K
	medium float64        // °C
}

// newSlab is a slab of half thickness l, or thickness l heated on one face.
func newSlab(l, conductivity, diffusivity, film, start float64) slabModes {
	s := slabModes{medium: start}
	biot := film * l / conductivity
	for n := range s.rate {
		zeta := eigenvalue(n, biot)
		s.rate[n] = float64(zeta*zeta) * diffusivity / float64(l*l)
		s.centre[n] = amplitude(zeta)
	}
	return s
}

// eigenvalue is root n, from 0, of ζ tan ζ = Bi, written so that both sides stay finite: ζ sin ζ - Bi cos ζ = 0. The root lies in
// nπ to (n+1/2)π.
func eigenvalue(n int, biot float64) float64 {
	e := eigen{biot: biot, sign: 1}
	if n%2 == 1 {
		e.sign = -1
	}
	return root.Of(float64(n)*math.Pi, (float64(n)+0.5)*math.Pi, (float64(n)+0.25)*math.Pi, e)
}

type eigen struct{ biot, sign float64 }

func (e eigen) At(zeta float64) (value, slope float64) {
	sin, cos := portable.Sincos(zeta)
	return e.sign * (float64(zeta*sin) - float64(e.biot*cos)), e.sign * (float64((1+e.biot)*sin) + float64(zeta*cos))
}

// amplitude is C = 4 sin ζ/(2ζ + sin 2ζ).
func amplitude(zeta float64) float64 {
	return 4 * portable.Sin(zeta) / (float64(2*zeta) + portable.Sin(2*zeta))
}

// into moves the slab into a medium of another temperature: every term is that much farther from it.
func (s *slabModes) into(medium float64) {
	for n := range s.away {
		s.away[n] += medium - s.medium
	}
	s.medium = medium
}

// rest lets the slab stay in the medium for some seconds.
func (s *slabModes) rest(seconds float64) {
	for n := range s.away {
		if s.away[n] != 0 {
			s.away[n] *= portable.Exp(-s.rate[n] * seconds)
		}
	}
}

// core is the temperature of the centre in °C.
func (s *slabModes) core() float64 {
	sum := 0.
	for n := modes - 1; n >= 0; n-- {
		sum += float64(s.centre[n] * s.away[n])
	}
	return s.medium - sum
}

var conductionCitation = cite.Citation{Source: cite.Cengel, Where: "slab with convection, all terms of the series", Basis: cite.Computed}
