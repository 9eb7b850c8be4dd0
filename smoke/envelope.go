package smoke

import (
	"math"
	"time"

	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// What a core is believed to do when nothing else is stated; practice, with the reasons. A piece that holds a probe is not
// thinner than 6 mm. No smoker or oven that finishes fish is hotter than 150 °C, and nothing it cools in is colder than
// -20 °C. Two readings of a probe that does not move, in a core that does not change, are not 5 K apart, and the
// thermometers of air and core agree within 2 K. Ice water takes heat no faster than a film of 500 W/(m² K).
const (
	thinnestPiece = 6 * units.Millimetre
	hottestOven   = 150. // °C
	coldestPlace  = -20. // °C
	probeNoise    = 5.   // K
	airTolerance  = 2.   // K
	iceWaterFilm  = 500 * units.WattPerSquareMetreKelvin
)

// reach is how fast a core can follow what is around it: its rate to the hottest and to the coldest medium, per second.
// It is that of the first term of the thinnest bare slab in the greatest film, which no slab of fish exceeds: the core of
// one that was of one temperature warms more slowly at first.
type reach struct {
	warming, cooling float64
	start            units.Temperature // of the piece, at the start of the record; not set where it is not stated
}

// reachOf is the reach of a piece, of the thinnest where none is stated, that cools in a film.
func reachOf(piece units.Stated[Slab], cold units.FilmCoefficient) reach {
	s := piece.Value
	if !piece.Given {
		s = FilletSlab(thinnestPiece, thinnestPiece, TwoFaces, units.Temperature{})
	}
	l := units.Float(s.Thin, units.Metre)
	if s.Faces == TwoFaces {
		l /= 2
	}
	k, alpha := units.Float(s.Conductivity, units.WattPerMetreKelvin), units.Float(s.Diffusivity, units.SquareMetrePerSecond)
	rate := func(film units.FilmCoefficient) float64 {
		zeta := eigenvalue(0, units.Float(film, units.WattPerSquareMetreKelvin)*l/k)
		return float64(zeta*zeta) * alpha / float64(l*l)
	}
	return reach{warming: rate(moistair.SmokerFilm().Coefficient.High), cooling: rate(cold), start: s.Start}
}

// pace is a reach over one time, kept as long as the time between readings stays the same.
type pace struct {
	reach
	dt                   time.Duration
	warmShare, coldShare float64
}

// over sets the pace for a time.
func (p *pace) over(dt time.Duration) {
	if dt != p.dt {
		p.dt, p.warmShare, p.coldShare = dt, share(p.warming, dt), share(p.cooling, dt)
	}
}

// share is how much of the way to a medium a core can go in a time.
func share(rate float64, dt time.Duration) float64 { return -math.Expm1(-rate * dt.Seconds()) }

// envelope is the warmest and the coldest that a core can be, from its believed readings on.
type envelope struct {
	at        time.Duration
	high, low float64 // °C
	begun     bool
	above     bool // the last reading was warmer than the core can be
}

// belief is what an envelope makes of a reading.
type belief uint8

const (
	believed belief = iota
	tooHot          // warmer than the core can be: the probe is not in it
	outside         // colder than the core can be: the probe was taken out
)

// step takes in a reading. hottest is the hottest that the core has met until then, in °C. A reading that is not believed
// does not move the envelope. After one that is too hot, the upper bound waits until a reading is back below it: a probe
// that lies in the air does not become a core by lying there.
func (e envelope) step(p *pace, at time.Duration, core, hottest float64) (envelope, belief) {
	if !e.begun {
		e = envelope{at: at, high: core + probeNoise, low: core - probeNoise, begun: true}
		if !p.start.IsSet() {
			return e, believed
		}
		e.at, e.high, e.low = 0, p.start.Celsius()+probeNoise, p.start.Celsius()-probeNoise
	}
	p.over(at - e.at)
	e.at = at
	if !e.above && hottest > e.high {
		e.high += float64((hottest - e.high) * p.warmShare)
	}
	if e.low > coldestPlace {
		e.low -= float64((e.low - coldestPlace) * p.coldShare)
	}
	e.high, e.low = units.Celsius(e.high).Celsius(), units.Celsius(e.low).Celsius() // whole quanta, so that a saved watch goes on alike
	e.above = core > e.high
	switch {
	case e.above:
		return e, tooHot
	case core < e.low:
		return e, outside
	}
	e.high, e.low = min(e.high, core+probeNoise), max(e.low, core-probeNoise)
	return e, believed
}

// bound is what the core can be at most, or at least, where a reading is not that.
func (e envelope) bound(b belief) units.Temperature {
	if b == tooHot {
		return units.Celsius(e.high)
	}
	return units.Celsius(e.low)
}

var (
	beliefCitation = cite.Citation{Where: "thinnest bare slab in the hottest air: first term of the series", Basis: cite.Computed}
	notInCore      = cite.Caution{
		ID: "smoke.probe-not-in-core", Deciding: true,
		Text:     "Put the probe into the middle of the thickest piece, and begin the record when it sits there.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.7(1)", Basis: cite.Read},
	}
)
