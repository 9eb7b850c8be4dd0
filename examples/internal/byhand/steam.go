package byhand

import (
	"fmt"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
)

// Air works out the air at an altitude, pa in pascal, by the standard atmosphere.
func (p *Page) Air(altitude units.Length, found units.Pressure) {
	p.Step("Air around the canner: US Standard Atmosphere 1976", pressure.AtmosphereSource())
	p.Let("Z", units.In(altitude, units.Metre, 6).String(), "m", "altitude of the stove (1 ft is 0.3048 m)")
	p.Work("H", "6356766 × Z / (6356766 + Z)", "m (geopotential altitude; equation 18)", 10)
	p.Work("q", "1 − 0.0065 × H / 288.15", "(temperature to that at sea level; equation 23)", 10)
	p.Work("n", "9.80665 × 28.9644 / (8314.32 × 0.0065)", "(exponent of equation 33a)", 10)
	p.Work("pa", "101325 × q^n", "Pa (equation 33a)", 8)
	p.Meets("pa", units.Float(found, units.Pascal), 0, "the air that the library takes")
}

// coefficients of the saturation line, table 34 of IAPWS-IF97.
var coefficients = []string{"1167.0521452767", "-724213.16703206", "-17.073846940092", "12020.824702470",
	"-3232555.0322333",
	"14.915108613530", "-4823.2657361591", "405113.40542057", "-0.23855557567849", "650.17534844798"}

// Steam works out the steam under a gauge pressure in air of pa pascal.
func (p *Page) Steam(gauge units.Pressure, what string, found units.Temperature, system units.System) {
	p.Step("Steam at that pressure: IAPWS-IF97, region 4, equation 31", pressure.SteamSource())
	if system == units.Metric {
		p.Let("pg", units.In(gauge, units.Kilopascal, 6).String(), "kPa", what)
		p.Work("p", "(pg × 1000 + pa) / 1000000", "MPa absolute", 10)
	} else {
		p.Let("pg", units.In(gauge, units.PSI, 6).String(), "psi", what)
		p.Work("p", "(pg × 6894.757293 + pa) / 1000000", "MPa absolute", 10)
	}
	for i, n := range coefficients {
		p.Let(fmt.Sprintf("n%d", i+1), n, "", "table 34")
	}
	p.Work("β", "p^0.25", "", 12)
	p.Work("E", "β^2 + n3 × β + n6", "", 12)
	p.Work("F", "n1 × β^2 + n4 × β + n7", "", 12)
	p.Work("G", "n2 × β^2 + n5 × β + n8", "", 12)
	p.Work("D", "2 × G / (-F − sqrt(F^2 − 4 × E × G))", "", 12)
	p.Work("T", "(n10 + D − sqrt((n10 + D)^2 − 4 × (n9 + n10 × D))) / 2", "K (equation 31)", 7)
	p.Meets("T", found.Kelvin(), 0, "the steam that the library finds")
	if system != units.US {
		p.Work("c", "T − 273.15", "°C", 5)
	}
	if system != units.Metric {
		p.Work("f", "(T − 273.15) × 9 / 5 + 32", "°F", 5)
	}
}
