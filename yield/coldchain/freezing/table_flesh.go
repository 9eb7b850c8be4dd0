package freezing

// polynomial is c0 + c1 T + c2 T², T in °C.
type polynomial struct{ c0, c1, c2 float64 }

// constituent is one part of fish: conductivity in W/(m K), density in kg/m³, specific heat in J/(kg K).
type constituent struct{ conductivity, density, heat polynomial }

// The parts are good from -40 to 150 °C, ice from -40 to 0 °C. The specific heat of water is 4176.2 at 0 °C as in the
// print read; another print has 4128.9, 1.1 % low against real water. The conductivity of fat falls by 2.7604e-4 a
// kelvin; one appendix prints -3.
var (
	liquidWater = constituent{
		conductivity: polynomial{0.57109, 0.0017625, -6.7036e-06},
		density:      polynomial{997.18, 0.0031439, -0.0037574},
		heat:         polynomial{4176.2, -0.090864, 0.0054731},
	}
	coldWaterHeat = polynomial{4081.7, -5.3062, 0.99516} // -40 to 0 °C
	iceItself     = constituent{
		conductivity: polynomial{2.2196, -0.0062489, 0.00010154},
		density:      polynomial{916.89, -0.13071, 0},
		heat:         polynomial{2062.3, 6.0769, 0},
	}
	protein = constituent{
		conductivity: polynomial{0.17881, 0.0011958, -2.7178e-06},
		density:      polynomial{1329.9, -0.5184, 0},
		heat:         polynomial{2008.2, 1.2089, -0.0013129},
	}
	fat = constituent{
		conductivity: polynomial{0.18071, -0.00027604, -1.7749e-07},
		density:      polynomial{925.59, -0.41757, 0},
		heat:         polynomial{1984.2, 1.4733, -0.0048008},
	}
	carbohydrate = constituent{
		conductivity: polynomial{0.20141, 0.0013874, -4.3312e-06},
		density:      polynomial{1599.1, -0.31046, 0},
		heat:         polynomial{1548.8, 1.9625, -0.0059399},
	}
	ash = constituent{
		conductivity: polynomial{0.32962, 0.0014011, -2.9069e-06},
		density:      polynomial{2423.8, -0.28063, 0},
		heat:         polynomial{1092.6, 1.8896, -0.0036817},
	}
)
