package freezing

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

var (
	plankCitation = cite.Citation{Source: cite.Geankoplis, Where: "sec. 5.5, Plank's equation", Basis: cite.Computed}
	phamCitation  = cite.Citation{
		Source: cite.Pham1986, Where: "constants from memory, form from a course outline", Basis: cite.Recalled,
	}
	modelCitation = cite.Citation{
		Where: "finite differences of the whole enthalpy, pieces of 15 to 150 mm, core -25 to -10 °C",
		Basis: cite.Computed,
	}
)

// numbers are a Freezing in SI and °C.
type numbers struct {
	a, h, rho, latent, before, after, k float64
	start, core, medium, freezes        float64
}

func (f Piece) numbers() numbers {
	return numbers{
		a: units.Float(f.Thickness, units.Metre), h: units.Float(f.Film, units.WattPerSquareMetreKelvin),
		rho: units.Float(f.Density, units.KilogramPerCubicMetre), latent: units.Float(f.Latent, units.JoulePerKilogram),
		before: units.Float(f.HeatBefore, units.JoulePerKilogramKelvin),
		after:  units.Float(f.HeatAfter, units.JoulePerKilogramKelvin),
		k:      units.Float(f.Conductivity, units.WattPerMetreKelvin),
		start:  f.Start.Celsius(), core: f.Core.Celsius(), medium: f.Medium.Celsius(), freezes: f.FreezesAt.Celsius(),
	}
}

func (n numbers) biot() float64   { return n.h * n.a / 2 / n.k }
func (n numbers) stefan() float64 { return n.after * (n.freezes - n.medium) / n.latent }
func (n numbers) above() float64  { return n.before * (n.start - n.freezes) / n.latent }

// mean is Pham's mean temperature of freezing, °C.
func (n numbers) mean() float64 {
	return phamMean[0] + float64(phamMean[1]*n.core) + float64(phamMean[2]*n.medium)
}

// Plank returns the freezing time by Plank's equation: from the freezing point until the last ice forms. It leaves out
// the heat above and below that, so against a model of the whole heat it came out from 39 % short to 17 % long: for
// comparison with books, not for a plan. The piece must be as its fields say, Core apart: otherwise a units.RangeError.
func (f Piece) Plank() (Time, error) {
	if err := f.check(); err != nil {
		return Time{}, err
	}
	n, c := f.numbers(), plankTable[f.Shape-1]
	conducted := float64(c.p*n.a/n.h) + float64(c.r*n.a*n.a/n.k)
	t, err := f.timed(n.rho*n.latent/(n.freezes-n.medium)*conducted, plankCitation) // t = ρ L/(TF - Ta) (P a/h + R a²/k)
	if err != nil {
		return Time{}, err
	}
	t.Cautions = []cite.Caution{estimateOnly, worseThanTheyLook, plankLeavesOut}
	return t, nil
}

// Pham returns the time until the core is at its end temperature by Pham's method of 1986. The piece must be as its
// fields say and start above Pham's mean freezing temperature, and Core be -25 to -10 °C and 3 K or more above Medium:
// otherwise a units.RangeError, for nearer the medium the method turns short. Within that, with the figures of
// Flesh.Freezing, it was 0 to 42 % long against a model of the whole heat for fish put in at 15 °C or colder that
// freezes at 28 °F (-2.2 °C) or above and is not very fatty, in a medium of -60 °C or above. Put in warmer it came out
// up to 2 % short; of less than 67 % water or freezing at a lower temperature, up to 13 %. Those, and numbers outside
// of those it was made for, are cautions. Its constants are from memory.
func (f Piece) Pham() (Time, error) {
	if err := f.check(); err != nil {
		return Time{}, err
	}
	if err := checkCore(f.Core, f.Medium); err != nil {
		return Time{}, err
	}
	n := f.numbers()
	mean := n.mean()
	if n.start < mean {
		return Time{}, units.RangeError{
			What: "start", Got: f.Start.String(), Low: units.Celsius(mean).Text(units.CelsiusScale, 2),
		}
	}
	e := plankTable[f.Shape-1].e
	sensible := n.rho * n.before * (n.start - mean)                             // ΔH1
	frozen := n.rho * (n.latent + float64(n.after*(mean-n.core)))               // ΔH2
	first, second := float64((n.start+mean)/2)-n.medium, mean-n.medium          // ΔT1, ΔT2
	heat := float64(sensible/first) + float64(frozen/second)                    // ΔH1/ΔT1 + ΔH2/ΔT2
	t, err := f.timed(n.a/2/(e*n.h)*heat*(1+float64(n.biot()/2)), phamCitation) // t = (a/2)/(E h) (…) (1 + Bi/2)
	if err != nil {
		return Time{}, err
	}
	t.Cautions = append(make([]cite.Caution, 0, 4), estimateOnly, worseThanTheyLook, f.phamError())
	for _, number := range [...]struct {
		got     units.Ratio
		in      ratios
		outside cite.Caution
	}{{t.Biot, phamBiot, biotOutside}, {t.Stefan, phamStefan, stefanOutside}, {t.Above, phamAbove, plankOutside}} {
		if number.got < number.in.low || number.got > number.in.high {
			t.Cautions = append(t.Cautions, number.outside)
		}
	}
	if f.Start.Above(units.Celsius(15)) {
		t.Cautions = append(t.Cautions, chillFirst)
	}
	return t, nil
}

// phamError is to which side Pham's time errs for this fish. Its latent heat tells how much water it has.
func (f Piece) phamError() cite.Caution {
	if f.FreezesAt.Below(printedFreezing) || f.Latent < leastPhamLatent {
		return phamShort
	}
	return phamLong
}

func (f Piece) check() error {
	const leastHeat = units.KilojoulePerKilogramKelvin
	if err := freezingShapes.Check(f.Shape); err != nil {
		return err
	}
	for _, err := range [...]error{
		units.Check("thickness", f.Thickness, units.Millimetre, units.Metre),
		units.Check("film", f.Film, units.WattPerSquareMetreKelvin, 2000*units.WattPerSquareMetreKelvin),
		units.Check("density", f.Density, 500*units.KilogramPerCubicMetre, 1500*units.KilogramPerCubicMetre),
		units.Check("latent heat", f.Latent, 50*units.KilojoulePerKilogram, 340*units.KilojoulePerKilogram),
		units.Check("specific heat unfrozen", f.HeatBefore, leastHeat, 45*units.KilojoulePerKilogramKelvin/10),
		units.Check("specific heat frozen", f.HeatAfter, leastHeat, 4*units.KilojoulePerKilogramKelvin),
		units.Check("conductivity frozen", f.Conductivity, units.WattPerMetreKelvin/5, 3*units.WattPerMetreKelvin),
		units.CheckTemperature("freezing point", f.FreezesAt, units.Celsius(-5), units.Celsius(-0.1)),
		units.CheckTemperature("start", f.Start, f.FreezesAt, units.Celsius(40)),
		units.CheckTemperature("medium", f.Medium, units.Celsius(-80), f.FreezesAt.Add(-units.Kelvins)),
	} {
		if err != nil {
			return err
		}
	}
	return nil
}

// checkCore holds the core's end to where Pham's method was tried.
func checkCore(core, medium units.Temperature) error {
	low := units.Celsius(-25)
	if above := medium.Add(3 * units.Kelvins); above.Above(low) {
		low = above
	}
	return units.CheckTemperature("end temperature of the core", core, low, units.Celsius(-10))
}
