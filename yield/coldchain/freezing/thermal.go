package freezing

import (
	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
)

func (p polynomial) at(t float64) float64 { return p.c0 + float64(t*(p.c1+float64(t*p.c2))) }

// gained is the integral from 0 °C to t.
func (p polynomial) gained(t float64) float64 {
	return float64(t * (p.c0 + float64(t*(float64(p.c1/2)+float64(t*p.c2/3)))))
}

// parts are the components with their shares at a temperature; between the freezing point and 0 °C, and for what stays
// unfrozen, water has the specific heat of water below 0 °C.
func (b blend) parts(t float64) [6]portion {
	ice := b.ice(t)
	water := liquidWater
	if t < 0 {
		water.heat = coldWaterHeat
	}
	return [...]portion{
		{b.water - ice, water}, {ice, iceItself}, {b.protein, protein}, {b.fat, fat},
		{b.carbohydrate, carbohydrate}, {b.ash, ash},
	}
}

// portion is one component of the flesh and its share.
type portion struct {
	share float64
	of    constituent
}

// Thermal returns the thermal properties of the flesh at a temperature of -40 to 150 °C, without voids, by the
// equations of Choi and Okos (1986), each to the nearest quantum of its type. Diffusivity is k/(ρ cp). A composition or
// temperature out of range is a units.RangeError. Below the freezing point it rests on the share of ice: see IceAt.
func (f Flesh) Thermal(t units.Temperature) (Thermal, error) {
	if err := checkFlesh(t); err != nil {
		return Thermal{}, err
	}
	b, err := f.whole()
	if err != nil {
		return Thermal{}, err
	}
	return b.thermal(t.Celsius())
}

func (b blend) thermal(t float64) (Thermal, error) {
	var volume, heat, parallel, series, logarithmic float64 // m³/kg, J/(kg K); Σ v k, Σ v/k, Σ v ln k
	for _, p := range b.parts(t) {
		v, k := p.share/p.of.density.at(t), p.of.conductivity.at(t)
		volume += v // 1/ρ = Σ x/ρi
		heat += float64(p.share * p.of.heat.at(t))
		parallel += float64(v * k)
		series += v / k
		logarithmic += float64(v * portable.Log(k))
	}
	low, high, spread := volume/series, parallel/volume, volume/heat // 1/(ρ cp)
	th := Thermal{Citation: fleshCitation}
	if b.ice(t) > 0 {
		th.Citation = b.law.Citation()
	}
	var faults [8]error
	th.Ice, faults[0] = units.OfFloat(b.ice(t), units.One)
	th.Density, faults[1] = units.OfFloat(1/volume, units.KilogramPerCubicMetre)
	th.SpecificHeat, faults[2] = units.OfFloat(heat, units.JoulePerKilogramKelvin)
	th.ConductivityLow, faults[3] = units.OfFloat(low, units.WattPerMetreKelvin)
	th.ConductivityMiddle, faults[4] = units.OfFloat(portable.Exp(logarithmic/volume), units.WattPerMetreKelvin)
	th.ConductivityHigh, faults[5] = units.OfFloat(high, units.WattPerMetreKelvin)
	th.DiffusivityLow, faults[6] = units.OfFloat(low*spread, units.SquareMetrePerSecond)
	th.DiffusivityHigh, faults[7] = units.OfFloat(high*spread, units.SquareMetrePerSecond)
	for _, err := range faults {
		if err != nil {
			return Thermal{}, err
		}
	}
	return th, nil
}

// enthalpy in J/kg counts from 0 °C unfrozen: what melts does so at 0 °C, where the heat of fusion is known.
func (b blend) enthalpy(t float64) float64 {
	sum := -float64(fusion * b.ice(t))
	for _, p := range b.parts(t) {
		sum += float64(p.share * p.of.heat.gained(t))
	}
	return sum
}

// Heat returns how much heat a mass of the flesh gives off from one temperature to another, both -40 to 150 °C, ice and
// all, to the nearest quantum; negative when it warms. It is exact for the equations of Thermal and IceAt; against the
// FAO's tables of white fish see testdata. A composition or temperature out of range is a units.RangeError.
func (f Flesh) Heat(from, to units.Temperature) (units.SpecificEnergy, error) {
	for _, t := range [...]units.Temperature{from, to} {
		if err := checkFlesh(t); err != nil {
			return 0, err
		}
	}
	b, err := f.whole()
	if err != nil {
		return 0, err
	}
	return units.OfFloat(b.enthalpy(from.Celsius())-b.enthalpy(to.Celsius()), units.JoulePerKilogram)
}
