package growth

import (
	"math"
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// The envelopes of the time to toxin in days, T in °C: log10(days) = constant + slope T + pole/T, and the
// second with spores times their log10.
const (
	anyFoodConstant = 0.65
	anyFoodSlope    = -0.0525
	anyFoodPole     = 2.74

	fishConstant = 0.974
	fishSlope    = -0.042
	fishPole     = 2.74
	fishSpores   = -0.091

	toxinLow  = 3  // °C, where non-proteolytic strains begin to grow
	toxinHigh = 45 // °C, where they cease; type A and proteolytic strains grow on, up to 48 °C
	mostLogs  = 6  // log10 spores
)

var (
	exposureSummary = chain.ReadIn(cite.FDAHazardsGuide2020, "Appendix 4, summary")
	anyFoodCitation = cite.Citation{Source: cite.SkinnerLarkin1998, Where: "equation", Basis: cite.Recalled}
	fishCitation    = cite.Citation{Source: cite.BakerGenigeorgis1990, Where: "equation", Basis: cite.Recalled}
)

// ToxinTime is the shortest time after which an envelope has botulinum toxin in food that stays at
// Temperature; AnyFood that of the envelope of any food, where it is shorter. It is no permission: the limits of
// coldchain.Audit and the dates of tested recipes hold wherever they are stricter.
type ToxinTime struct {
	Temperature units.Temperature
	Time        time.Duration
	AnyFood     units.Stated[time.Duration]
	Citation    cite.Citation
	Cautions    []cite.Caution
}

// MarshalJSON writes the time as an app shows it.
func (t ToxinTime) MarshalJSON() ([]byte, error) { return wire.Marshal(t) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (t *ToxinTime) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, t) }

// TimeToToxin returns the envelope around all published times to toxin of botulinum in any food without air:
// 8.6 days at 5 °C. It is rounded down to the nanosecond. The temperature must lie in 3 to 45 °C, else it is a
// units.RangeError: towards 0 °C the equation runs to infinity, below it turns over and gives minutes, and
// neither is an answer. The equation is from memory, and the result says so. Source: Skinner and Larkin 1998.
func TimeToToxin(t units.Temperature) (ToxinTime, error) {
	if err := checkToxin(t); err != nil {
		return ToxinTime{}, err
	}
	c := t.Celsius()
	return toxinTime(t, anyFoodLog(c), anyFoodCitation), nil
}

// TimeToToxinInFish is the envelope found on fresh fish packed without air, by the number of spores in it: logs is the
// log10 of that, from 0 for one spore to 6 for a million. From about ten thousand up it is shorter than TimeToToxin in
// a refrigerator: go by the shorter of both, which a caution names. Temperature, rounding and errors are those of
// TimeToToxin; logs out of range is a units.RangeError. From memory as well. Source: Baker and Genigeorgis 1990.
func TimeToToxinInFish(t units.Temperature, logs units.Ratio) (ToxinTime, error) {
	if err := checkToxin(t); err != nil {
		return ToxinTime{}, err
	}
	if err := units.Check("log10 of spores", logs, 0, mostLogs*units.One); err != nil {
		return ToxinTime{}, err
	}
	c := t.Celsius()
	log := fishConstant + float64(fishSlope*c) + fishPole/c + float64(fishSpores*units.Float(logs, units.One))
	in := toxinTime(t, log, fishCitation)
	if food := toxinTime(t, anyFoodLog(c), anyFoodCitation); food.Time < in.Time {
		in.AnyFood = units.State(food.Time)
		in.Cautions = append(in.Cautions, anyFoodShorter)
	}
	return in, nil
}

// anyFoodLog is the log10 of the days at T °C.
func anyFoodLog(c float64) float64 { return anyFoodConstant + float64(anyFoodSlope*c) + anyFoodPole/c }

// toxinTime is at most 58 days, in fish with one spore at 3 °C, and so within a time.Duration.
func toxinTime(t units.Temperature, log float64, citation cite.Citation) ToxinTime {
	return ToxinTime{
		Temperature: t, Time: time.Duration(math.Floor(portable.Exp10(log) * float64(chain.Day))),
		Citation: citation, Cautions: toxinCautions(citation),
	}
}

// checkToxin refuses what the envelopes do not speak of.
func checkToxin(t units.Temperature) error {
	low, high := units.Celsius(toxinLow), units.Celsius(toxinHigh)
	return units.CheckTemperature("temperature of an envelope for botulinum toxin", t, low, high)
}

// mostCautions is room for those of every answer by an envelope.
const mostCautions = 6

// toxinCautions are what must be known of every answer by an envelope.
func toxinCautions(citation cite.Citation) []cite.Caution {
	memory := envelopeFromMemory
	memory.Citation = citation
	return append(make([]cite.Caution, 0, mostCautions), noPermission, memory, toxinWithoutSmell)
}

var (
	noPermission = cite.Caution{
		ID: "growth.no-permission", Deciding: true,
		Text: "This is no permission to keep fish so long: hold its record against the exposure limits and go by what is " +
			"stricter.",
		Citation: exposureSummary,
	}
	envelopeFromMemory = cite.Caution{
		ID:   "growth.envelope-from-memory",
		Text: "The envelope is from memory: check the document before relying on it.",
	}
	toxinWithoutSmell = cite.Caution{
		ID: "growth.toxin-without-smell", Deciding: true,
		Text: "Toxin has no smell and no taste, and reheating a little does not destroy it. " +
			"When in doubt, discard the fish where neither people nor animals get at it.",
	}
	anyFoodShorter = cite.Caution{
		ID: "growth.any-food-shorter", Deciding: true,
		Text:     "The envelope of any food is shorter here: go by that.",
		Citation: anyFoodCitation,
	}
)
