package lethality

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Pasteurisation is a target of mild heat: a time at a reference temperature for six log10 reductions, with one z
// below that temperature and one from it up, over the temperatures that its table prints. Take one of NonProteolytic,
// NonProteolyticUK and Listeria.
type Pasteurisation struct {
	name         string
	reference    units.Temperature
	below, above units.TemperatureChange
	sixD         time.Duration
	spores       bool
	table        KillTable
}

// NonProteolytic returns the target for spores of non-proteolytic C. botulinum, 90 °C for 10 minutes, with the
// stricter z of 7 K below 90 °C (US FDA table A-4, recalled), from 85 to 100 °C as printed. It assumes moist heat and
// no lysozyme.
func NonProteolytic() Pasteurisation {
	return Pasteurisation{"non-proteolytic botulinum, z 7 K below 90 °C", units.Celsius(90), 7 * units.Kelvins, 10 * units.Kelvins,
		10 * time.Minute, true, BotulinumA4}
}

// NonProteolyticUK returns the UK form of NonProteolytic: z of 9 K below 90 °C, read off a table that does not print
// z, from 80 to 100 °C. Below 90 °C it asks for less time than the US table: 28 against 37 minutes at 86 °C.
func NonProteolyticUK() Pasteurisation {
	return Pasteurisation{"non-proteolytic botulinum, z 9 K below 90 °C", units.Celsius(90), 9 * units.Kelvins, 10 * units.Kelvins,
		10 * time.Minute, true, BotulinumUK}
}

// Listeria returns the target for L. monocytogenes, 70 °C for 2 minutes with z = 7.5 K (US FDA table A-3, recalled),
// from 63 to 85 °C as printed.
func Listeria() Pasteurisation {
	z := 15 * units.Kelvins / 2
	return Pasteurisation{"Listeria, z 7.5 K", units.Celsius(70), z, z, 2 * time.Minute, false, ListeriaA3}
}

// String names the target.
func (p Pasteurisation) String() string { return p.name }

// SixD returns the time at the reference temperature for six reductions.
func (p Pasteurisation) SixD() (units.Temperature, time.Duration) { return p.reference, p.sixD }

// Citation returns where the target is from.
func (p Pasteurisation) Citation() cite.Citation { return p.table.Citation() }

// Span is a range of temperatures, both ends included.
type Span struct {
	From, To units.Temperature
}

// Span returns the temperatures of the target's printed table, from its first row to its last. Outside it nothing is
// counted.
func (p Pasteurisation) Span() Span {
	var span Span
	for _, row := range killTimes {
		if row.table != p.table {
			continue
		}
		at := row.temperature()
		if !span.From.IsSet() || at.Below(span.From) {
			span.From = at
		}
		if !span.To.IsSet() || at.Above(span.To) {
			span.To = at
		}
	}
	return span
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

// TimeAt returns the time at a held temperature for six reductions by the formula, rounded up to the nanosecond:
// 10^((Tref − T)/z) times that at the reference. The printed tables (KillTimesAt) are rounded and depart from it in a
// few rows. A temperature outside Span is a RangeError.
func (p Pasteurisation) TimeAt(t units.Temperature) (Equivalent, error) {
	if p.sixD == 0 {
		return Equivalent{}, units.UnsetError{What: "pasteurisation target"}
	}
	span := p.Span()
	if err := units.CheckTemperature("temperature", t, span.From, span.To); err != nil {
		return Equivalent{}, err
	}
	z := p.below
	if t.AtLeast(p.reference) {
		z = p.above
	}
	held, err := Reference{p.reference, z}.timeAt(t, p.sixD)
	if err != nil {
		return Equivalent{}, err
	}
	return Equivalent{held, p.cautions(Moist)}, nil
}

func (p Pasteurisation) cautions(heat Heat) []cite.Caution {
	published := cite.Caution{
		ID: "lethality.published-decide",
		Text: "This is worked out from a formula at one place of the food. " +
			"The published time and temperature decide.",
		Deciding: true, Citation: p.Citation(),
	}
	cautions := []cite.Caution{published, notShelfStable}
	if p.spores {
		cautions = append(cautions, noLysozyme)
	}
	if heat == DrySmoke {
		cautions = append(cautions, drySurface)
	}
	return cautions
}

var (
	notShelfStable = cite.Caution{
		ID: "lethality.not-shelf-stable", Text: "A pasteurised food is not shelf-stable. " +
			"Keep it cold or frozen.", Deciding: true,
	}
	noLysozyme = cite.Caution{
		ID: "lethality.no-lysozyme",
		Text: "This counts for spores without lysozyme. " +
			"Fish may hold lysozyme, and then D is tens of times longer.",
		Deciding: true, Citation: drySmokeCitation(),
	}
	drySurface = cite.Caution{
		ID: "lethality.dry-surface",
		Text: "Dry smoke protects the surface. " +
			"Published hot-smoking rules hold a core temperature for a time: go by them.",
		Deciding: true,
	}
)

func drySmokeCitation() cite.Citation {
	return cite.Citation{Source: cite.Lindstrom2003, Where: "abstract", Basis: cite.Read}
}
