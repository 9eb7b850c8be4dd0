package lethality

import (
	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Composition is what a food is made of, by mass.
type Composition struct {
	Water, Protein, Fat, Carbohydrate, Fibre, Ash units.Ratio
}

// Properties are the thermal properties of a food at one temperature. Heat runs through its parts neither all side by
// side nor all one behind the other: the true conductivity lies between those two bounds, and so does the
// diffusivity.
type Properties struct {
	Density                         units.Density
	SpecificHeat                    units.SpecificHeat
	ConductivityLow                 units.Conductivity // parts one behind the other
	ConductivityMiddle              units.Conductivity // geometric mean of the parts
	ConductivityHigh                units.Conductivity // parts side by side
	DiffusivityLow, DiffusivityHigh units.Diffusivity  // of the two bounds
	Citation                        cite.Citation
}

// At returns the thermal properties of a composition at a temperature of 0 to 150 °C, not frozen and without voids,
// by the equations of Choi and Okos (1986), each to the nearest quantum of its type. The shares must be 0 or more and
// make up 95 to 105 %, which is evened out to the whole, as composition tables seldom add up; otherwise a RangeError.
// Diffusivity is k/(ρ cp); the authors' own equations for it differ by up to 9 %.
func (c Composition) At(t units.Temperature) (Properties, error) {
	if err := units.CheckTemperature("temperature", t, units.Celsius(0), hottest); err != nil {
		return Properties{}, err
	}
	shares := [...]units.Ratio{c.Water, c.Protein, c.Fat, c.Carbohydrate, c.Fibre, c.Ash}
	var sum units.Ratio
	for i, share := range shares {
		if err := units.Check(components[i].name, share, 0, 105*units.Percent); err != nil {
			return Properties{}, err
		}
		sum += share
	}
	if err := units.Check("sum of the composition", sum, 95*units.Percent, 105*units.Percent); err != nil {
		return Properties{}, err
	}
	m := mixture{celsius: t.Celsius()}
	for i, share := range shares {
		m.add(components[i], units.Float(share, sum))
	}
	return m.properties()
}

func (q quadratic) at(t float64) float64 { return q.c0 + float64(t*(q.c1+float64(t*q.c2))) }

// mixture sums up the parts of a kilogram.
type mixture struct {
	celsius                       float64
	volume, heat                  float64 // m³/kg, J/(kg K)
	parallel, series, logarithmic float64 // Σ v k, Σ v/k, Σ v ln k, over volumes
}

func (m *mixture) add(part component, share float64) {
	volume := share / part.density.at(m.celsius)
	k := part.conductivity.at(m.celsius)
	m.volume += volume // 1/ρ = Σ x/ρi
	m.heat += float64(share * part.heat.at(m.celsius))
	m.parallel += float64(volume * k)
	m.series += volume / k
	m.logarithmic += float64(volume * portable.Log(k))
}

func (m mixture) properties() (Properties, error) {
	low, high := m.volume/m.series, m.parallel/m.volume
	p := Properties{Citation: compositionCitation()}
	toDiffusivity := m.volume / m.heat // 1/(ρ cp)
	var faults [7]error
	p.Density, faults[0] = units.OfFloat(1/m.volume, units.KilogramPerCubicMetre)
	p.SpecificHeat, faults[1] = units.OfFloat(m.heat, units.JoulePerKilogramKelvin)
	p.ConductivityLow, faults[2] = units.OfFloat(low, units.WattPerMetreKelvin)
	p.ConductivityMiddle, faults[3] = units.OfFloat(portable.Exp(m.logarithmic/m.volume), units.WattPerMetreKelvin)
	p.ConductivityHigh, faults[4] = units.OfFloat(high, units.WattPerMetreKelvin)
	p.DiffusivityLow, faults[5] = units.OfFloat(low*toDiffusivity, units.SquareMetrePerSecond)
	p.DiffusivityHigh, faults[6] = units.OfFloat(high*toDiffusivity, units.SquareMetrePerSecond)
	for _, err := range faults {
		if err != nil {
			return Properties{}, err
		}
	}
	return p, nil
}
