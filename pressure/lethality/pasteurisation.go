package lethality

import (
	"strconv"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Pasteurisation is a target of mild heat: a time at a reference temperature for six log10 reductions, with one z below
// that temperature and one from it up. Take one of NonProteolytic, NonProteolyticUK and Listeria.
type Pasteurisation struct {
	name         string
	reference    units.Temperature
	below, above units.TemperatureChange
	sixD         time.Duration
	spores       bool
	citation     cite.Citation
}

// NonProteolytic returns the target for spores of non-proteolytic C. botulinum, 90 °C for 10 minutes, with the stricter z of 7 K
// below 90 °C (US FDA table A-4, recalled). It assumes moist heat and no lysozyme; A-4 starts at 85 °C, and lower is extrapolation.
func NonProteolytic() Pasteurisation {
	return Pasteurisation{"non-proteolytic botulinum, z 7 K below 90 °C", units.Celsius(90), 7 * units.Kelvins, 10 * units.Kelvins,
		10 * time.Minute, true, BotulinumA4.Citation()}
}

// NonProteolyticUK returns the UK form of NonProteolytic: z of 9 K below 90 °C, read off a table that does not print z. Below 90 °C it
// asks for less time than the US table: 28 against 37 minutes at 86 °C.
func NonProteolyticUK() Pasteurisation {
	return Pasteurisation{"non-proteolytic botulinum, z 9 K below 90 °C", units.Celsius(90), 9 * units.Kelvins, 10 * units.Kelvins,
		10 * time.Minute, true, BotulinumUK.Citation()}
}

// Listeria returns the target for L. monocytogenes, 70 °C for 2 minutes with z = 7.5 K (US FDA table A-3, recalled).
func Listeria() Pasteurisation {
	z := 15 * units.Kelvins / 2
	return Pasteurisation{"Listeria, z 7.5 K", units.Celsius(70), z, z, 2 * time.Minute, false, ListeriaA3.Citation()}
}

// String names the target.
func (p Pasteurisation) String() string { return p.name }

// SixD returns the time at the reference temperature for six reductions.
func (p Pasteurisation) SixD() (units.Temperature, time.Duration) { return p.reference, p.sixD }

// Citation returns where the target is from.
func (p Pasteurisation) Citation() cite.Citation { return p.citation }

// Heat is how the record's food was heated.
type Heat uint8

// The kinds of heat. The zero Heat is unstated and refused.
const (
	Moist    Heat = iota + 1 // in water, in steam or sealed in its own moisture
	DrySmoke                 // in a smokehouse or oven
)

// String is the word for the heat.
func (h Heat) String() string {
	switch h {
	case Moist:
		return "moist heat"
	case DrySmoke:
		return "dry smoke"
	}
	return "heat " + strconv.Itoa(int(h))
}

// DrySmokeError says that a core temperature in dry smoke is no measure of what happened to spores.
type DrySmokeError struct {
	Target   string
	Citation cite.Citation
}

// Error says what was asked and why there is no answer.
func (e DrySmokeError) Error() string {
	return e.Target + ": a core temperature in dry smoke does not tell what spores survived; dry heat and lysozyme protect them (" +
		e.Citation.String() + ")"
}

// Value is the pasteurisation value of a record.
type Value struct {
	P          time.Duration // minutes at the reference temperature
	Reductions units.Ratio   // log10, by the target's six for its time
	LongestGap series.Stretch
	Cautions   []cite.Caution
	Citation   cite.Citation
}

// Value returns what a record was worth, exact on straight lines, which are split where they cross the reference temperature; P
// and Reductions are rounded down. The record must be of the coldest spot, with a reading and none above 150 °C; the heat must be
// stated, otherwise a RangeError. Spores in dry smoke are a DrySmokeError: there is no figure for them.
func (p Pasteurisation) Value(record series.Series[units.Temperature], heat Heat) (Value, error) {
	if p.sixD == 0 {
		return Value{}, units.RangeError{What: "pasteurisation target", Got: "not set"}
	}
	if heat != Moist && heat != DrySmoke {
		return Value{}, units.RangeError{What: "kind of heat", Got: heat.String(), Low: Moist.String(), High: DrySmoke.String()}
	}
	if p.spores && heat == DrySmoke {
		return Value{}, DrySmokeError{p.name, drySmokeCitation()}
	}
	low, high := Reference{p.reference, p.below}.scale(), Reference{p.reference, p.above}.scale()
	if record.Len() == 0 {
		return Value{}, series.ErrEmpty
	}
	sum := 0.
	a, _ := record.First()
	for i := 0; i < record.Len(); i++ {
		b, _ := record.At(i)
		if b.Value.Above(hottest) {
			return Value{}, tooHot(i, b)
		}
		sum += split(low, high, float64(b.At-a.At), quanta(a.Value), quanta(b.Value))
		a = b
	}
	total, err := floored("P", sum)
	if err != nil {
		return Value{}, err
	}
	reductions, err := Reductions(6*min(total, longest/6), p.sixD)
	if err != nil {
		return Value{}, err
	}
	return Value{total, reductions, record.LongestGap(), p.cautions(heat), p.citation}, nil
}

// split is the integral along a straight line with one z below the reference and one above it.
func split(low, high scale, dt float64, from, to int64) float64 {
	switch knee := low.ref; {
	case from <= knee && to <= knee:
		return low.over(dt, from, to)
	case from >= knee && to >= knee:
		return high.over(dt, from, to)
	case from < knee:
		share := float64(knee-from) / float64(to-from)
		return low.over(dt*share, from, knee) + high.over(dt*(1-share), knee, to)
	default:
		share := float64(from-knee) / float64(from-to)
		return high.over(dt*share, from, knee) + low.over(dt*(1-share), knee, to)
	}
}

// TimeAt returns the time at a held temperature for six reductions by the formula, rounded up to the nanosecond: 10^((Tref − T)/z) times
// that at the reference. The printed tables (KillTimesAt) are rounded and depart from it in a few rows. The temperature must be
// -60 to 150 °C; otherwise a RangeError.
func (p Pasteurisation) TimeAt(t units.Temperature) (time.Duration, error) {
	z := p.below
	if t.AtLeast(p.reference) {
		z = p.above
	}
	return Reference{p.reference, z}.TimeAt(t, p.sixD)
}

func (p Pasteurisation) cautions(heat Heat) []cite.Caution {
	cautions := []cite.Caution{{Text: "A pasteurised food is not shelf-stable: keep it cold or frozen."}}
	if p.spores {
		cautions = append(cautions,
			cite.Caution{Text: "Counted for spores without lysozyme. Fish may hold lysozyme, and then D is tens of times longer.", Citation: drySmokeCitation()},
			cite.Caution{Text: "Below 85 °C the table ends and this is extrapolation.", Citation: BotulinumA4.Citation()})
	}
	if heat == DrySmoke {
		cautions = append(cautions, cite.Caution{Text: "Dry smoke protects the surface. Published hot-smoking rules hold a core temperature for a time; go by them."})
	}
	return cautions
}

func drySmokeCitation() cite.Citation {
	return cite.Citation{Source: cite.Lindstrom2003, Where: "abstract", Basis: cite.Read}
}
