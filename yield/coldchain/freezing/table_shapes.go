package freezing

import "example.org/lakelarder/units"

// plankTable has P and R of Plank and E of Pham: of a slab by its whole thickness, of cylinder and sphere by the
// diameter.
var plankTable = [...]struct{ p, r, e float64 }{
	{1. / 2, 1. / 8, 1},
	{1. / 4, 1. / 16, 2},
	{1. / 6, 1. / 24, 3},
}

// phamMean are the constants of Pham's mean freezing temperature: 1.8 + 0.263 Tc + 0.105 Ta, °C.
var phamMean = [...]float64{1.8, 0.263, 0.105}

// ratios is what a number must lie between.
type ratios struct{ low, high units.Ratio }

// What Pham's method was made for, from memory.
var (
	phamBiot   = ratios{2 * units.Percent, 11 * units.One}
	phamStefan = ratios{11 * units.Percent, 36 * units.Percent}
	phamAbove  = ratios{3 * units.Percent, 61 * units.Percent}
)

// printedFreezing is the colder of the printed freezing points, see Fishes.
var printedFreezing = units.Fahrenheit(28)

// leastPhamLatent is the latent heat, of about 67 % of water, from which up Pham's time was not short.
const leastPhamLatent = 225 * units.KilojoulePerKilogram
