package smoke

import (
	"math"
	"time"

	"example.org/lakelarder/internal/portable"
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
	probeNoise    = 5. * float64(units.Kelvins)
	airTolerance  = 2. * float64(units.Kelvins)
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
	p.dt, p.warmShare, p.coldShare = dt, share(p.warming, dt), share(p.cooling, dt)
}

// share is how much of the way to a medium a core can go in a time.
func share(rate float64, dt time.Duration) float64 { return -portable.Expm1(-rate * dt.Seconds()) }

// envelope is the warmest and the coldest that a core can be, from its believed readings on, in whole quanta of temperature:
// a watch that was saved goes on alike.
type envelope struct {
	at        time.Duration
	high, low float64
	begun     bool
	is        belief // of the last reading, but for one that swings, which is within the bounds
	swing     swing
}

// belief is what an envelope makes of a reading.
type belief uint8

const (
	believed belief = iota
	tooHot          // warmer than the core can be: the probe is not in it
	outside         // colder than the core can be: the probe was taken out
	still           // one value from the start on: the probe is not read
	swinging        // up and down faster than any core: the probe is in the air
)

// step takes in a reading. most is the hottest that the core has met until then. A reading that is not believed
// does not move the envelope. After one that is too hot, the upper bound waits until a reading is back below it, and after
// one that is too cold the lower bound: a probe that lies in the air does not become a core by lying there.
func (e *envelope) step(p *pace, at time.Duration, core, most float64) belief {
	if !e.begun {
		*e = envelope{at: at, high: core + probeNoise, low: core - probeNoise, begun: true, swing: swing{extreme: core}}
		if !p.start.IsSet() {
			return believed
		}
		e.at, e.high, e.low = 0, quanta(p.start)+probeNoise, quanta(p.start)-probeNoise
	}
	if dt := at - e.at; dt != p.dt {
		p.over(dt)
	}
	e.at = at
	high, low := e.high, e.low
	if e.is != tooHot && most > high {
		high = math.Floor(high + float64((most-high)*p.warmShare))
	}
	if e.is != outside && low > coldest {
		low = math.Ceil(low - float64((low-coldest)*p.coldShare))
	}
	switch {
	case core > high:
		e.is = tooHot
	case core < low:
		e.is = outside
	default:
		e.is = believed
		high, low = min(high, core+probeNoise), max(low, core-probeNoise)
	}
	e.high, e.low = high, low
	if e.is == believed && e.swing.swings(at, core) {
		return swinging
	}
	return e.is
}

// quanta is a temperature in its quanta above absolute zero, a whole number that a float64 holds.
func quanta(t units.Temperature) float64 { return float64(t.AboveAbsoluteZero()) }

// ofQuanta is the way back.
func ofQuanta(q float64) units.Temperature { return units.FromAbsoluteZero(units.TemperatureChange(q)) }

// The hottest and the coldest in quanta.
var hottest, coldest = quanta(units.Celsius(hottestOven)), quanta(units.Celsius(coldestPlace))

// bound is what the core can be at most, or at least, where the last reading is not that.
func (e envelope) bound() units.Temperature {
	if e.is == tooHot {
		return ofQuanta(e.high)
	}
	return ofQuanta(e.low)
}

var (
	beliefCitation = cite.Citation{Where: "thinnest bare slab in the hottest air: first term of the series", Basis: cite.Computed}
	notInCore      = cite.Caution{
		ID: "smoke.probe-not-in-core", Deciding: true,
		Text:     "Put the probe into the middle of the thickest piece, and begin the record when it sits there.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.7(1)", Basis: cite.Read},
	}
)
