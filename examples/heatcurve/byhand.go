package main

import (
	"io"
	"math"

	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// coefficients are the c0, c1 and c2 of Choi and Okos for conductivity, density and specific heat of a part.
var coefficients = []struct {
	name, letter  string
	k, density, c [3]string
}{
	{"water", "w", [3]string{"0.57109", "0.0017625", "(-6.7036e-06)"}, [3]string{"997.18", "0.0031439",
		"(-0.0037574)"}, [3]string{"4176.2", "(-0.090864)", "0.0054731"}},
	{"protein", "p", [3]string{"0.17881", "0.0011958", "(-2.7178e-06)"}, [3]string{"1329.9", "(-0.5184)", ""},
		[3]string{"2008.2", "1.2089", "(-0.0013129)"}},
	{"fat", "f", [3]string{"0.18071", "(-0.00027604)", "(-1.7749e-07)"}, [3]string{"925.59", "(-0.41757)", ""},
		[3]string{"1984.2", "1.4733", "(-0.0048008)"}},
	{"ash", "a", [3]string{"0.32962", "0.0014011", "(-2.9069e-06)"}, [3]string{"2423.8", "(-0.28063)", ""},
		[3]string{"1092.6", "1.8896", "(-0.0036817)"}},
}

// byHand is the way from the composition to the temperature of the middle when the heat goes off, and one step of F0.
func (s study) byHand(w io.Writer) error {
	p := byhand.New(w, "the middle of the jar when the heat goes off, and one step of its F0")
	s.foodByHand(p)
	s.biotByHand(p)
	if err := s.rootsByHand(p); err != nil {
		return err
	}
	s.seriesByHand(p)
	if err := s.stepByHand(p); err != nil {
		return err
	}
	return p.Close()
}

func plain[Q units.Quantity](q, unit Q, places int32) string {
	return units.In(q, unit, places).String()
}

// foodByHand is the food's conductivity and diffusivity from its parts.
func (s study) foodByHand(p *byhand.Page) {
	p.Step("The fish at 80 °C from its parts: c0 + c1 t + c2 t², volumes m/ρ", s.food.Citation)
	p.Let("t", "80", "°C", "near that of the fish halfway in time")
	shares := map[string]units.Ratio{"w": s.jar.Fish.Water, "p": s.jar.Fish.Protein, "f": s.jar.Fish.Fat,
		"a": s.jar.Fish.Ash}
	for _, c := range coefficients {
		p.Let("m_"+c.letter, plain(shares[c.letter], units.One, 8), "", "share of "+c.name+" as stated")
	}
	p.Work("m", "m_w + m_p + m_f + m_a", "", 8)
	for _, c := range coefficients {
		for _, property := range []struct {
			symbol, unit string
			c            [3]string
		}{{"k_", "W/(m K), " + c.name, c.k}, {"ρ_", "kg/m³", c.density}, {"c_", "J/(kg K)", c.c}} {
			formula := property.c[0] + " + " + property.c[1] + " × t"
			if property.c[2] != "" {
				formula += " + " + property.c[2] + " × t^2"
			}
			p.Work(property.symbol+c.letter, formula, property.unit, 8)
		}
		p.Work("v_"+c.letter, "m_"+c.letter+" / m / ρ_"+c.letter, "m³ in a kilogram", 8)
	}
	p.Work("v", "v_w + v_p + v_f + v_a", "m³ in a kilogram", 8)
	p.Work("C", "(m_w × c_w + m_p × c_p + m_f × c_f + m_a × c_a) / m", "J/(kg K)", 8)
	p.Work("k_low", "v / (v_w / k_w + v_p / k_p + v_f / k_f + v_a / k_a)", "W/(m K), the parts one behind the other", 7)
	p.Work("k_high", "(v_w × k_w + v_p × k_p + v_f × k_f + v_a × k_a) / v", "W/(m K), the parts side by side", 7)
	p.Work("k", "exp((v_w × ln(k_w) + v_p × ln(k_p) + v_f × ln(k_f) + v_a × ln(k_a)) / v)", "W/(m K), between them", 7)
	p.Meets("k", units.Float(s.pack.Conductivity, units.WattPerMetreKelvin), 1e-6,
		"the conductivity that the curve takes")
	p.Work("α_low", "k_low × v / C", "m²/s", 6)
	p.Work("α_high", "k_high × v / C", "m²/s", 6)
	p.Work("α", "(α_low + α_high) / 2", "m²/s", 6)
	p.Meets("α", units.Float(s.pack.Diffusivity, units.SquareMetrePerSecond), 2e-6,
		"the diffusivity that the curve takes")
}

// biotByHand is the film of steam and glass, and what it is to the fish.
func (s study) biotByHand(p *byhand.Page) {
	p.Step("Film of the steam and the glass behind it, 1/h = 1/hs + d/kg; Biot numbers h R/k and h l/k",
		s.base.Citation)
	p.Let("hs", plain(s.jar.Film.Likely, units.WattPerSquareMetreKelvin, 6), "W/(m² K)", "film of the steam")
	p.Let("d", plain(s.jar.Glass.Thickness, units.Metre, 8), "m", "glass")
	p.Let("kg", plain(s.jar.Glass.Conductivity, units.WattPerMetreKelvin, 6), "W/(m K)", "conductivity of the glass")
	p.Work("h", "1 / (1 / hs + d / kg)", "W/(m² K)", 8)
	p.Let("R", plain(s.pack.Radius, units.Metre, 8), "m", "radius of the fish inside the glass")
	p.Let("H", plain(s.pack.Height, units.Metre, 8), "m", "height of the fish")
	p.Work("l", "H / 2", "m", 8)
	p.Work("Bi_r", "h × R / k", "", 8)
	p.Work("Bi_z", "h × l / k", "", 8)
}

// rootsByHand are the first roots of both shapes, each shown to be one, and their coefficients.
func (s study) rootsByHand(p *byhand.Page) error {
	biot := func(length units.Length) lethality.Number {
		h := units.Float(s.pack.Film, units.WattPerSquareMetreKelvin) * units.Float(length, units.Metre)
		return lethality.Number(math.Round(h / units.Float(s.pack.Conductivity,
			units.WattPerMetreKelvin) * float64(lethality.One)))
	}
	p.Step("Roots of ζ J1(ζ) = Bi J0(ζ) for the radius and ζ tan ζ = Bi for the height, found by trying; coefficients of the middle", s.base.Citation)
	for _, shape := range []struct {
		body             lethality.Transient
		letter, is, back string
		share            string
	}{
		{lethality.Transient{Shape: lethality.InfiniteCylinder, Biot: biot(s.pack.Radius)}, "r", "Z × J1(Z) / J0(Z)",
			"the Biot number of the radius", "2 / Z × J1(Z) / (J0(Z)^2 + J1(Z)^2)"},
		{lethality.Transient{Shape: lethality.Slab, Biot: biot(s.pack.Height / 2)}, "z", "Z × tan(Z)",
			"the Biot number of the height", "4 × sin(Z) / (2 × Z + sin(2 × Z))"},
	} {
		roots, err := shape.body.Eigenvalues(2)
		if err != nil {
			return err
		}
		for n, root := range roots {
			name := shape.letter + []string{"1", "2"}[n]
			p.Let("ζ"+name, plain(units.Ratio(root), units.One, 10), "", "root "+[]string{"1",
				"2"}[n]+" of the "+map[string]string{"r": "radius", "z": "height"}[shape.letter])
			p.Work("b"+name, replaced(shape.is, "ζ"+name), "", 6)
			p.Meets("b"+name, units.Float(units.Ratio(shape.body.Biot), units.One), 1e-5,
				shape.back+" again, so that it is a root")
			p.Work("C"+name, replaced(shape.share, "ζ"+name), "", 8)
		}
	}
	return nil
}

// replaced puts a symbol in place of Z.
func replaced(formula, symbol string) string {
	var out []rune
	for _, r := range formula {
		if r == 'Z' {
			out = append(out, []rune(symbol)...)
			continue
		}
		out = append(out, r)
	}
	return string(out)
}

// seriesByHand is the middle when the heat goes off: what the come-up left behind in each part of the double series,
// and how it decays.
func (s study) seriesByHand(p *byhand.Page) {
	p.Step("The middle when the heat goes off: each part of the double series lags behind the ramp and then decays",
		s.base.Citation)
	p.Let("T0", s.run.Start.In(units.CelsiusScale, 6).String(), "°C", "of the fish at the start")
	p.Let("Ts", s.run.Steam.In(units.CelsiusScale, 6).String(), "°C", "steam")
	p.Let("tc", byhand.Digits(s.run.ComeUp.Seconds(), 6), "s", "come-up")
	p.Let("th", byhand.Digits(s.run.Hold.Seconds(), 6), "s", "hold")
	p.Work("slope", "(Ts − T0) / tc", "K/s", 9)
	lag := ""
	for _, part := range []string{"11", "12", "21", "22"} {
		r, z := part[:1], part[1:]
		p.Work("λ"+part, "α × (ζr"+r+"^2 / R^2 + ζz"+z+"^2 / l^2)", "1/s", 9)
		p.Work("u"+part, "-Cr"+r+" × Cz"+z+" × slope × (1 − exp(-λ"+part+" × tc)) / λ"+part+" × exp(-λ"+part+" × th)",
			"K", 8)
		lag += " + u" + part
	}
	p.Work("Tc", "Ts"+lag, "°C", 7)
	p.Meets("Tc", s.base.AtSteamOff.Celsius(), 5e-5, "the middle at steam off; the further parts are gone by then")
	p.Work("Tf", "Tc × 9 / 5 + 32", "°F", 6)
}

// stepByHand is the exact integral over one straight line of the centre.
func (s study) stepByHand(p *byhand.Page) error {
	i := 0
	for ; i < s.base.Centre.Len()-1; i++ {
		if r, _ := s.base.Centre.At(i); r.At >= s.base.SteamOff {
			break
		}
	}
	from, _ := s.base.Centre.At(i)
	to, _ := s.base.Centre.At(min(i+30, s.base.Centre.Len()-1))
	line, err := series.New([]series.Reading[units.Temperature]{from, to})
	if err != nil {
		return err
	}
	step, err := lethality.F(line, s.base.Reference)
	if err != nil {
		return err
	}
	p.Step("One step of F0: on a straight line from x1 to x2 decades, Δt (10^x2 − 10^x1) / (ln 10 (x2 − x1)); all steps together are F0", s.base.Citation)
	p.Let("Ta", from.Value.In(units.CelsiusScale, 8).String(), "°C",
		"the middle after "+byhand.Digits(from.At.Minutes(), 7)+" min")
	p.Let("Tb", to.Value.In(units.CelsiusScale, 8).String(), "°C", "the middle after "+byhand.Digits(to.At.Minutes(),
		7)+" min")
	p.Let("Tr", s.base.Reference.Temperature.In(units.CelsiusScale, 6).String(), "°C", "reference")
	p.Let("zr", plain(s.base.Reference.Z, units.Kelvins, 6), "K", "z")
	p.Let("Δt", byhand.Digits((to.At-from.At).Minutes(), 9), "min", "between them")
	p.Work("x1", "(Ta − Tr) / zr", "", 9)
	p.Work("x2", "(Tb − Tr) / zr", "", 9)
	p.Work("ΔF", "Δt × (10^x2 − 10^x1) / (ln(10) × (x2 − x1))", "min", 4)
	p.Meets("ΔF", step.F.Minutes(), 2e-4, "what the library adds for that line")
	return nil
}
