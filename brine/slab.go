package brine

import (
	"math"
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Slab is a piece of fish as diffusion sees it: wide, of one thickness.
type Slab struct {
	Thickness units.Length `wire:"required"`
	Faces     Faces        `wire:"required"`
}

// MarshalJSON writes the piece in the words that UnmarshalJSON reads.
func (s Slab) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads a piece strictly; both fields are required.
func (s *Slab) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// What a fillet can be, to catch slips of units, and how long a cure; practice, no source.
const (
	thinnest   = units.Millimetre
	thickest   = 300 * units.Millimetre
	longest    = 60 * 24 * time.Hour
	slowest    = units.Diffusivity(1)
	quickest   = 10 * units.SquareMillimetrePerSecond / 1_000 // 1e-8 m²/s, six times salt in water
	shortUntil = 0.2
)

// Uptake returns the average uptake of the piece as a share of what it takes up in the end, with its surface held at
// one strength: 0 at the start, 1 in the end. Faces must be stated, the thickness 1 to 300 mm, D above 0 to 1e-8
// m²/s, time 0 to 60 days: otherwise an UnsetError or a RangeError. Exact to 1e-10 at every time: both forms of the
// solution of Fick's law are summed until nothing is left. It is physics of a bare slab: a warning how slow salt is,
// never a proof that it has arrived.
func (s Slab) Uptake(d units.Diffusivity, t time.Duration) (units.Ratio, error) {
	fo, err := s.fourier(d, t)
	if err != nil {
		return 0, err
	}
	return units.OfFloat(meanUptake(fo), units.One)
}

// CoreUptake is Uptake where salt arrives last: at the skin of a piece with one open face, in the middle of one with
// two.
func (s Slab) CoreUptake(d units.Diffusivity, t time.Duration) (units.Ratio, error) {
	fo, err := s.fourier(d, t)
	if err != nil {
		return 0, err
	}
	return units.OfFloat(coreUptake(fo), units.One)
}

// fourier is Fo = D t/L², L the whole thickness with one face open and half of it with two.
func (s Slab) fourier(d units.Diffusivity, t time.Duration) (float64, error) {
	if s.Faces != OneFace && s.Faces != TwoFaces {
		return 0, faces.Check(s.Faces)
	}
	if err := checkFigure("thickness", s.Thickness, thinnest, thickest); err != nil {
		return 0, err
	}
	if err := units.Check("diffusivity", d, slowest, quickest); err != nil {
		return 0, err
	}
	if err := units.CheckDuration("time", t, 0, longest); err != nil {
		return 0, err
	}
	l := units.Float(s.Thickness, units.Metre) / float64(s.Faces)
	return units.Float(d, units.SquareMetrePerSecond) * t.Seconds() / (l * l), nil
}

// meanUptake is E of Fo. Both forms are the same function; each is summed where it takes few terms.
//
//	long   E = 1 − (8/π²) Σ exp(−(2n+1)² π² Fo/4)/(2n+1)²
//	short  E = 2 √Fo [1/√π + 2 Σ (−1)ⁿ ierfc(n/√Fo)]; its first term alone is 2 √(Fo/π)
func meanUptake(fo float64) float64 {
	if fo <= 0 {
		return 0
	}
	if fo < shortUntil {
		root, sum, sign := math.Sqrt(fo), 1/math.SqrtPi, -1.0
		for n := 1.0; n <= 4; n++ {
			term := float64(sign * 2 * ierfc(n/root))
			sum, sign = sum+term, -sign
		}
		return 2 * root * sum
	}
	sum := 0.0
	for n := 1.0; n < 12; n += 2 {
		term := portable.Exp(-n*n*math.Pi*math.Pi*fo/4) / (n * n)
		sum += term
	}
	rest := float64(8 / (math.Pi * math.Pi) * sum)
	return 1 - rest
}

// ierfc is the integral of erfc from x up.
func ierfc(x float64) float64 {
	bell := portable.Exp(-x*x) / math.SqrtPi
	tail := float64(x * portable.Erfc(x))
	return bell - tail
}

// coreUptake is the blocked face:
//
//	long   1 − (4/π) Σ (−1)ⁿ exp(−(2n+1)² π² Fo/4)/(2n+1)
//	short  2 Σ (−1)ⁿ erfc((2n+1)/(2 √Fo))
func coreUptake(fo float64) float64 {
	if fo <= 0 {
		return 0
	}
	sum, sign := 0.0, 1.0
	if fo < shortUntil {
		for n := 1.0; n < 10; n += 2 {
			term := float64(sign * portable.Erfc(n/(2*math.Sqrt(fo))))
			sum, sign = sum+term, -sign
		}
		return 2 * sum
	}
	for n := 1.0; n < 12; n += 2 {
		term := sign * portable.Exp(-n*n*math.Pi*math.Pi*fo/4) / n
		sum, sign = sum+term, -sign
	}
	rest := float64(4 / math.Pi * sum)
	return 1 - rest
}

// Diffusivities are the least, a likely and the greatest diffusivity of salt in fish.
type Diffusivities struct {
	units.Range[units.Diffusivity]
	Citation cite.Citation
}

// FleshDiffusivity returns the published range of salt in fish from the flesh side, 1e-11 to 1e-10 m²/s; between
// them the geometric mean, 3.16e-11, which is not published. The temperature is not stated there, and the figures
// of salmon itself were not read. Source: Journal of Cookery Science of Japan 25(4), 1992, abstract.
func FleshDiffusivity() Diffusivities {
	const least = 10 * units.SquareMillimetrePerSecond / 1_000_000
	return Diffusivities{
		Range:    units.Range[units.Diffusivity]{Low: least, Likely: 31_622_777, High: 10 * least},
		Citation: cite.Citation{Source: cite.SaltDiffusivityJapan1992, Where: "abstract, flesh side", Basis: cite.Read},
	}
}
