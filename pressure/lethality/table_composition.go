package lethality

import "example.org/lakelarder/units/cite"

// quadratic is c0 + c1 T + c2 T², T in °C.
type quadratic struct{ c0, c1, c2 float64 }

// component is one part of a food: conductivity in W/(m K), density in kg/m³, specific heat in J/(kg K).
type component struct {
	name                        string
	conductivity, density, heat quadratic
}

// components are good from 0 to 150 °C, the range of the specific heat of liquid water. That is 4176.2 as in the print read; another
// print has 4128.9, 1.1 % low against real water. The conductivity of fat falls by 2.7604e-4 a kelvin; one appendix prints the exponent as -3.
var components = [...]component{
	{"water",
		quadratic{0.57109, 0.0017625, -6.7036e-06},
		quadratic{997.18, 0.0031439, -0.0037574},
		quadratic{4176.2, -0.090864, 0.0054731},
	},
	{"protein",
		quadratic{0.17881, 0.0011958, -2.7178e-06},
		quadratic{1329.9, -0.5184, 0},
		quadratic{2008.2, 1.2089, -0.0013129},
	},
	{"fat",
		quadratic{0.18071, -0.00027604, -1.7749e-07},
		quadratic{925.59, -0.41757, 0},
		quadratic{1984.2, 1.4733, -0.0048008},
	},
	{"carbohydrate",
		quadratic{0.20141, 0.0013874, -4.3312e-06},
		quadratic{1599.1, -0.31046, 0},
		quadratic{1548.8, 1.9625, -0.0059399},
	},
	{"fibre",
		quadratic{0.18331, 0.0012497, -3.1683e-06},
		quadratic{1311.5, -0.36589, 0},
		quadratic{1845.9, 1.8306, -0.0046509},
	},
	{"ash",
		quadratic{0.32962, 0.0014011, -2.9069e-06},
		quadratic{2423.8, -0.28063, 0},
		quadratic{1092.6, 1.8896, -0.0036817},
	},
}

func compositionCitation() cite.Citation {
	return cite.Citation{Source: cite.ChoiOkos1986, Where: "appendix of Ibarz and Barbosa-Canovas", Basis: cite.Computed}
}
