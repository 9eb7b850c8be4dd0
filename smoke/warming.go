package smoke

import (
	"math"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Phase is a part of the smoking in which the fillet gives and takes heat as if the air were at Medium: the wet bulb while its surface
// is wet, the air once it is dry.
type Phase struct {
	Medium units.Temperature
	For    time.Duration
}

// Warming is what the model says of a core, never a substitute for a probe in it. Reached tells whether the core comes to the limit
// within the phases, slowest case first: when it is false in that case, ToLimit.High is zero, and so with the others.
type Warming struct {
	Limit    units.Temperature
	ToLimit  units.Range[time.Duration] // zero: not within the phases
	Reached  bool                       // in every case, the slowest as well
	End      units.Range[units.Temperature]
	Citation cite.Citation
}

// MarshalJSON writes the warming as an app shows it.
func (w Warming) MarshalJSON() ([]byte, error) { return wire.Marshal(w) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (w *Warming) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, w) }

// WetThenDry returns the two phases of a fillet in one air: its surface wet for a time, and so at the wet bulb, then dry, for the rest of the
// total. Wet may be zero or the total, and then there is one phase. The times must be in 0 to 48 h, wet no more than total: otherwise a
// units.RangeError, as for an Air that is not set.
func WetThenDry(air moistair.Air, wet, total time.Duration) ([]Phase, error) {
	wetBulb, err := air.WetBulb()
	if err != nil {
		return nil, err
	}
	if err := units.CheckDuration("time in the smoker", total, time.Second, longestSmoking); err != nil {
		return nil, err
	}
	if err := units.CheckDuration("time with a wet surface", wet, 0, total); err != nil {
		return nil, err
	}
	var phases []Phase
	if wet > 0 {
		phases = append(phases, Phase{wetBulb, wet})
	}
	if wet < total {
		phases = append(phases, Phase{air.DryBulb(), total - wet})
	}
	return phases, nil
}

const longestSmoking = 48 * time.Hour

// hottestMedium is the hottest air that moistair has.
var hottestMedium = units.Celsius(200)

// WarmCore returns when the core of a fillet comes to a limit, as a range: High is the thick fillet in the least film, Low the thin one
// in the greatest, Likely the mean thickness in the likely film. Warming.Cautions says what the model assumes. Phases must be one or more, each above zero and together at most
// 48 h, media in -20 to 200 °C; the limit from 1 K above the start to 100 °C; slab and film must be in order (2 mm to 20 cm, start -1 to 60 °C): otherwise a
// units.RangeError. Times are rounded up to the second. Source: slab with convection, the full series.
func WarmCore(slab Slab, film moistair.Film, limit units.Temperature, phases ...Phase) (Warming, error) {
	if err := checkWarming(slab, film, phases); err != nil {
		return Warming{}, err
	}
	if err := checkWarmth("core limit", limit, slab.Start.Add(units.Kelvins), boiling); err != nil {
		return Warming{}, err
	}
	w := Warming{Limit: limit, Citation: conductionCitation, Reached: true}
	var ends [3]units.Temperature
	for i, s := range slab.cases(film) {
		at, end, reached := s.warm(limit.Celsius(), phases)
		*[...]*time.Duration{&w.ToLimit.High, &w.ToLimit.Likely, &w.ToLimit.Low}[i] = at
		ends[i] = units.Celsius(end)
		w.Reached = w.Reached && reached
	}
	w.End = around(around(units.Range[units.Temperature]{Low: ends[1], Likely: ends[1], High: ends[1]}, ends[0]), ends[2])
	return w, nil
}

// around is the range with a further case in it: what warms fastest cools fastest.
func around(t units.Range[units.Temperature], end units.Temperature) units.Range[units.Temperature] {
	if end.Below(t.Low) {
		t.Low = end
	}
	if end.Above(t.High) {
		t.High = end
	}
	return t
}

// CoreCurve returns the likely core of WarmCore as a series, a reading at the start, every so often and at the end of the phases. Limits as
// for WarmCore; every must give at most 10,000 readings. It is a picture to lay beside a record, not a record.
func CoreCurve(slab Slab, film moistair.Film, every time.Duration, phases ...Phase) (series.Series[units.Temperature], error) {
	var none series.Series[units.Temperature]
	if err := checkWarming(slab, film, phases); err != nil {
		return none, err
	}
	var total time.Duration
	for _, p := range phases {
		total += p.For
	}
	if err := units.CheckDuration("time between readings", every, total/10_000+1, total); err != nil {
		return none, err
	}
	s := slab.cases(film)[1]
	readings := make([]series.Reading[units.Temperature], 0, int(total/every)+2)
	readings = append(readings, series.Reading[units.Temperature]{Value: slab.Start})
	var began, now time.Duration
	next := every
	for _, p := range phases {
		s.into(p.Medium.Celsius())
		began += p.For
		for ; next < began; next += every {
			s.rest((next - now).Seconds())
			now = next
			readings = append(readings, series.Reading[units.Temperature]{At: now, Value: units.Celsius(s.core())})
		}
		s.rest((began - now).Seconds())
		now = began
	}
	readings = append(readings, series.Reading[units.Temperature]{At: total, Value: units.Celsius(s.core())})
	return series.New(readings)
}

func checkWarming(slab Slab, film moistair.Film, phases []Phase) error {
	if err := slab.check(); err != nil {
		return err
	}
	if err := film.Check(); err != nil {
		return err
	}
	if len(phases) == 0 {
		return units.UnsetError{What: "phase of the warming"}
	}
	var total time.Duration
	for _, p := range phases {
		if err := checkWarmth("medium", p.Medium, units.Celsius(-20), hottestMedium); err != nil {
			return err
		}
		if err := units.CheckDuration("phase", p.For, time.Second, longestSmoking-total); err != nil {
			return err
		}
		total += p.For
	}
	return nil
}

// cases are the slowest slab, the likely one and the fastest.
func (s Slab) cases(film moistair.Film) [3]slabModes {
	thin, thick := units.Float(s.Thin, units.Metre), units.Float(s.Thick, units.Metre)
	if s.Faces == TwoFaces {
		thin, thick = thin/2, thick/2
	}
	k, alpha := units.Float(s.Conductivity, units.WattPerMetreKelvin), units.Float(s.Diffusivity, units.SquareMetrePerSecond)
	h := func(f units.FilmCoefficient) float64 { return units.Float(f, units.WattPerSquareMetreKelvin) }
	start := s.Start.Celsius()
	return [3]slabModes{
		newSlab(thick, k, alpha, h(film.Coefficient.Low), start), newSlab((thin+thick)/2, k, alpha, h(film.Coefficient.Likely), start), newSlab(thin, k, alpha, h(film.Coefficient.High), start),
	}
}

// warm runs through the phases: the first time, in whole seconds rounded up, at which the core is at the limit, and its temperature at the end.
func (s slabModes) warm(limit float64, phases []Phase) (at time.Duration, end float64, reached bool) {
	var now time.Duration
	reached = s.medium >= limit
	for _, p := range phases {
		s.into(p.Medium.Celsius())
		if !reached {
			// In one medium the core goes toward it; look for the crossing in steps of a minute, then of a second.
			at, reached = s.crossing(limit, now, p.For)
		}
		s.rest(p.For.Seconds())
		now += p.For
	}
	return at, s.core(), reached
}

// holds reports whether the core is at or above a limit for a time without a break, looked at every minute and at the ends of the phases.
func (s slabModes) holds(limit float64, hold time.Duration, phases []Phase) bool {
	var held time.Duration
	warm := s.medium >= limit
	for _, p := range phases {
		s.into(p.Medium.Celsius())
		for gone, step := time.Duration(0), time.Duration(0); gone < p.For; gone += step {
			step = min(time.Minute, p.For-gone)
			s.rest(step.Seconds())
			before := warm
			if warm = s.core() >= limit; !warm || !before {
				held = 0
				continue
			}
			if held += step; held >= hold {
				return true
			}
		}
	}
	return false
}

func (s slabModes) crossing(limit float64, from, length time.Duration) (time.Duration, bool) {
	step := time.Minute
	for gone := time.Duration(0); gone < length; {
		next := s
		step = min(step, length-gone)
		next.rest(step.Seconds())
		switch {
		case next.core() < limit:
			s, gone = next, gone+step
		case step > time.Second:
			step = time.Second
		default:
			return time.Duration(math.Ceil((from + gone + step).Seconds())) * time.Second, true
		}
	}
	return 0, false
}

// Cautions returns what the model assumes and what must be shown beside it. The slice is the caller's own.
func (w Warming) Cautions() []cite.Caution {
	return []cite.Caution{probeInCore, modelOnly, oneSlab, wetBulbFirst}
}

var (
	modelOnly = cite.Caution{
		ID: "smoke.model-only", Deciding: true,
		Text: "This is a model, never a substitute for a probe in the core of the thickest piece.", Citation: conductionCitation,
	}
	oneSlab = cite.Caution{
		ID:       "smoke.one-slab",
		Text:     "It takes the fillet for a slab of one material, of one temperature at the start, that neither shrinks nor renders fat.",
		Citation: conductionCitation,
	}
	wetBulbFirst = cite.Caution{
		ID: "smoke.wet-bulb-first",
		Text: "While the surface is wet it takes heat as from air at the wet bulb, once it is dry as from the air. " +
			"The change is sudden, and when it comes is the caller's assumption.",
		Citation: conductionCitation,
	}
)
