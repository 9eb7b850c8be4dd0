package main

import (
	"fmt"
	"io"
	"math"

	"example.org/lakelarder/examples/internal/byhand"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/ice"
)

// byHand is the chilling by the first term of the series, the freezing by Pham's method, and the daily load.
func (d planned) byHand(out io.Writer) error {
	p := byhand.New(out, d.Title)
	d.chillByHand(p)
	d.freezeByHand(p)
	p.Step("Daily loads", fishRule().Citation)
	p.Let("q", units.In(fishRule().PerCubicFoot, units.Pound, 6).String(), "lb", "of fish to 1 ft³ of room in 24 h")
	p.Let("V", units.In(d.Load.Room, units.CubicFoot, 6).String(), "ft³", "room")
	p.Work("day", "q × V", "lb a day", 6)
	p.Meets("day", units.Float(d.loads.PerDay, units.Pound), 1e-6, "the daily load above")
	p.Let("C", units.In(d.Load.Catch, units.Pound, 6).String(), "lb", "to be frozen")
	p.Work("n", "C / day", "days; a started one counts whole", 5)
	return p.Close()
}

func celsius(t units.Temperature) string { return t.In(units.CelsiusScale, 6).String() }

// chillByHand is the longer of the chilling times: the thick fish in the weakest film.
func (d planned) chillByHand(p *byhand.Page) {
	fish, film := d.fish(), ice.CrushedFilm()
	p.Step("Chilling in ice, the weakest film: a slab cooled on both sides, first term of the series", d.chill.Citation)
	p.Let("L", units.In(d.Thickness/2, units.Metre, 6).String(), "m", "half the thickness")
	p.Let("h", units.In(film.Low, units.WattPerSquareMetreKelvin, 6).String(), "W/(m² K)", "film of the ice")
	p.Let("k", units.In(fish.Conductivity, units.WattPerMetreKelvin, 6).String(), "W/(m K)", "of the fish")
	p.Let("α", byhand.Digits(units.Float(fish.Diffusivity, units.SquareMetrePerSecond), 4), "m²/s", "of the fish")
	p.Work("Bi", "h × L / k", "(Biot number)", 6)
	p.Let("z", byhand.Digits(rootOf(p.Float("Bi")), 7), "", "first root of z tan z = Bi, by trial")
	p.Work("try", "z × tan(z)", "", 5)
	p.Meets("try", p.Float("Bi"), 1e-4, "the Biot number: the root is right")
	p.Work("c", "4 × sin(z) / (2 × z + sin(2 × z))", "", 6)
	p.Let("t0", celsius(d.Caught), "°C", "at the start")
	p.Let("t1", celsius(d.Chilled), "°C", "in the middle at the end; the ice is at 0 °C")
	p.Work("θ", "t1 / t0", "of the difference left", 6)
	p.Work("Fo", "ln(c / θ) / z^2", "(Fourier number; the other terms are gone above 0.5)", 6)
	p.Work("time", "Fo × L^2 / α / 60", "min", 5)
	if p.Float("Fo") > 0.5 {
		p.Meets("time", d.chill.High.Minutes(), 3e-3, "the longer chilling time above")
	}
}

// rootOf is the first root of z tan z = Bi.
func rootOf(bi float64) float64 {
	low, high := 0.0, math.Pi/2
	for i := 0; i < 60; i++ {
		middle := low + float64((high-low)/2)
		if middle*math.Tan(middle) < bi {
			low = middle
		} else {
			high = middle
		}
	}
	return low
}

// freezeByHand is Pham's method for the weakest and the strongest film.
func (d planned) freezeByHand(p *byhand.Page) {
	n := d.piece
	p.Step("Freezing by Pham's method of 1986, for a slab", d.through.High.Citation)
	p.Let("a", units.In(n.Thickness, units.Metre, 6).String(), "m", "thickness")
	p.Let("ts", celsius(n.Start), "°C", "at the start")
	p.Let("tc", celsius(n.Core), "°C", "in the middle at the end")
	p.Let("ta", celsius(n.Medium), "°C", "air of the freezer")
	p.Let("ρ", byhand.Digits(units.Float(n.Density, units.KilogramPerCubicMetre), 7), "kg/m³",
		"density, by Choi and Okos")
	p.Let("λ", byhand.Digits(units.Float(n.Latent, units.KilojoulePerKilogram), 7), "kJ/kg", "latent heat of its water")
	p.Let("c1", byhand.Digits(units.Float(n.HeatBefore, units.KilojoulePerKilogramKelvin), 7), "kJ/(kg K)", "unfrozen")
	p.Let("c2", byhand.Digits(units.Float(n.HeatAfter, units.KilojoulePerKilogramKelvin), 7), "kJ/(kg K)", "frozen")
	p.Let("kf", byhand.Digits(units.Float(n.Conductivity, units.WattPerMetreKelvin), 7), "W/(m K)", "frozen")
	p.Work("tm", "1.8 + 0.263 × tc + 0.105 × ta", "°C, mean temperature of freezing", 7)
	p.Work("H1", "ρ × c1 × (ts − tm)", "kJ/m³ down to it", 7)
	p.Work("H2", "ρ × (λ + c2 × (tm − tc))", "kJ/m³ from there", 7)
	p.Work("T1", "(ts + tm) / 2 − ta", "K", 7)
	p.Work("T2", "tm − ta", "K", 7)
	p.Work("S", "1000 × (H1 / T1 + H2 / T2)", "J/(m³ K)", 7)
	for _, film := range []struct {
		name  string
		h     units.FilmCoefficient
		found float64
	}{{"weakest", d.Film.Low, d.through.High.Time.Hours()}, {"strongest", d.Film.High, d.through.Low.Time.Hours()}} {
		p.Step(fmt.Sprintf("Freezing with the %s film", film.name), cite.Citation{})
		p.Let("h", units.In(film.h, units.WattPerSquareMetreKelvin, 6).String(), "W/(m² K)", "film")
		p.Work("Bi", "h × a / 2 / kf", "(Biot number)", 7)
		p.Work("time", "a / 2 / h × S × (1 + Bi / 2) / 3600", "h", 5)
		p.Meets("time", film.found, 1e-4, "the time in the freezer above")
	}
}
