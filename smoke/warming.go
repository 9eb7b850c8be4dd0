package smoke

import (
	"math"
	"time"

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
	ToLimit  Times // zero: not within the phases
	Reached  bool  // in every case, the slowest as well
	End      Temperatures
	Citation cite.Citation
}

// Temperatures is an estimate of a temperature as a range: Low is the coldest of the three cases, in a cooling that of the fastest.
type Temperatures struct{ Low, Likely, High units.Temperature }

// WetThenDry returns the two phases of a fillet in one air: its surface wet for a time, and so at the wet bulb, then dry, for the rest of the
// total. Wet may be zero or the total, and then there is one phase. The times must be in 0 to 48 h, wet no more than total: otherwise a
// units.RangeError, as for an Air that is not set.
func WetThenDry(air Air, wet, total time.Duration) ([]Phase, error) {
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
		phases = append(phases, Phase{air.dryBulb, total - wet})
	}
	return phases, nil
}

const longestSmoking = 48 * time.Hour

// WarmCore returns when the core of a fillet comes to a limit, as a range: High is the thick fillet in the least film, Low the thin one
// in the greatest, Likely the mean thickness in the likely film. WarmCautions says what the model assumes. Phases must be one or more, each above zero and together at most
// 48 h, media in -20 to 200 °C; the limit from 1 K above the start to 100 °C; slab and film must be in order (2 mm to 20 cm, start -1 to 60 °C): otherwise a
// units.RangeError. Times are rounded up to the second. Source: slab with convection, the full series.
func WarmCore(slab Slab, film Film, limit units.Temperature, phases ...Phase) (Warming, error) {
	if err := checkWarming(slab, film, phases); err != nil {
		return Warming{}, err
	}
	if err := units.CheckTemperature("core limit", limit, slab.Start.Add(units.Kelvins), boiling); err != nil {
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
	w.End = Temperatures{ends[1], ends[1], ends[1]}.around(ends[0]).around(ends[2])
	return w, nil
}

// around is the range with a further case in it: what warms fastest cools fastest.
func (t Temperatures) around(end units.Temperature) Temperatures {
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
func CoreCurve(slab Slab, film Film, every time.Duration, phases ...Phase) (series.Series[units.Temperature], error) {
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

func checkWarming(slab Slab, film Film, phases []Phase) error {
	if err := slab.check(); err != nil {
		return err
	}
	if err := film.check(); err != nil {
		return err
	}
	if len(phases) == 0 {
		return units.RangeError{What: "phases", Got: "none", Low: "one"}
	}
	var total time.Duration
	for _, p := range phases {
		if err := units.CheckTemperature("medium", p.Medium, units.Celsius(-20), hottestAir); err != nil {
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
func (s Slab) cases(film Film) [3]slabModes {
	thin, thick := units.Float(s.Thin, units.Metre), units.Float(s.Thick, units.Metre)
	if s.Faces == BothFaces {
		thin, thick = thin/2, thick/2
	}
	k, alpha := units.Float(s.Conductivity, units.WattPerMetreKelvin), units.Float(s.Diffusivity, units.SquareMetrePerSecond)
	h := func(f units.FilmCoefficient) float64 { return units.Float(f, units.WattPerSquareMetreKelvin) }
	start := s.Start.Celsius()
	return [3]slabModes{
		newSlab(thick, k, alpha, h(film.Low), start), newSlab((thin+thick)/2, k, alpha, h(film.Likely), start), newSlab(thin, k, alpha, h(film.High), start),
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

// WarmCautions returns what WarmCore and CoreCurve assume and what must be shown beside them. The slice is the caller's own.
func WarmCautions() []cite.Caution {
	model := func(text string) cite.Caution { return cite.Caution{Text: text, Citation: conductionCitation} }
	return []cite.Caution{
		model("a model, never a substitute for a probe in the core of the thickest piece"),
		model("it takes the fillet for a slab of one material, of one temperature at the start, that neither shrinks nor renders fat"),
		model("while the surface is wet it takes heat as from air at the wet bulb, once it is dry as from the air: the change is sudden and when it comes is the caller's assumption"),
		probeInCore,
	}
}
