package growth

import (
	"math"
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

var toxinGrowth = cite.Citation{
	Source: cite.FDAHazardsGuide2022, Where: "Appendix 4, table A-1, pp. 419-420, as quoted in a public note",
	Basis: cite.Read,
}

// Toxin is a record measured by the envelope of TimeToToxin. Share is the part used up of the time to
// toxin, one at its end. It is never a verdict: a small share of a long time does not make fish safe.
type Toxin struct {
	MaxGap     time.Duration
	Span       time.Duration
	Share      units.Ratio   `wire:"always"`
	Unknown    time.Duration // in gaps longer than MaxGap: not counted in Share
	LongestGap series.Stretch
	Highest    series.Reading[units.Temperature]
	Citation   cite.Citation
	Cautions   []cite.Caution
}

// MarshalJSON writes the share as an app shows it.
func (t Toxin) MarshalJSON() ([]byte, error) { return wire.Marshal(t) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (t *Toxin) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, t) }

// ToxinShare returns how much of the time to toxin a record has used up: the integral of time over TimeToToxin
// at each temperature, along straight lines, from 3 to 45 °C included and nothing outside, though type A and
// proteolytic strains grow up to 48 °C. Each line is integrated numerically to within 1e-8 of itself and rounded up
// to 1e-12; their order makes no difference. Gaps longer than maxGap are reported and not bridged. Record and
// maxGap must be as for coldchain.Audit, with its errors. Source: Skinner and Larkin 1998, from memory.
func ToxinShare(record series.Series[units.Temperature], maxGap time.Duration) (Toxin, error) {
	if err := chain.CheckRecord(record, maxGap); err != nil {
		return Toxin{}, err
	}
	t := Toxin{MaxGap: maxGap, Span: record.Span(), LongestGap: record.LongestGap(), Citation: anyFoodCitation}
	t.Highest, _ = record.Max()
	before, _ := record.First()
	for i, n := 1, record.Len(); i < n; i++ {
		next, _ := record.At(i)
		if dt := next.At - before.At; dt > maxGap {
			t.Unknown += dt
		} else {
			used := toxinLine(dt, before.Value, next.Value)
			t.Share += units.Ratio(math.Ceil(used * float64(units.One))) // 292 years at 45 °C are 4.8 million of 9.2
		}
		before = next
	}
	t.Cautions = t.cautionsOf()
	return t, nil
}

// toxinLine is the share that a straight line of temperature uses up.
func toxinLine(dt time.Duration, from, to units.Temperature) float64 {
	if from.Above(to) {
		from, to = to, from
	}
	low, high := units.Celsius(toxinLow), units.Celsius(toxinHigh)
	if to.Below(low) || from.Above(high) {
		return 0
	}
	days := float64(dt) / float64(chain.Day)
	if from == to {
		return days * toxinRate(from.Celsius())
	}
	a, b := math.Max(from.Celsius(), toxinLow), math.Min(to.Celsius(), toxinHigh)
	return days * toxinIntegral(a, b) / (to.Celsius() - from.Celsius())
}

// toxinRate is the share used up in a day at T °C.
func toxinRate(c float64) float64 { return portable.Exp(-math.Ln10 * anyFoodLog(c)) }

// The five points and weights of Gauss and Legendre on -1 to 1, the middle one first.
var (
	gaussPoints  = [...]float64{0, 0.5384693101056831, 0.9061798459386640}
	gaussWeights = [...]float64{0.5688888888888889, 0.4786286704993665, 0.2369268850561891}
)

// toxinIntegral is the integral of toxinRate over °C, in panels of at most one degree: to within 1e-9 of
// itself.
func toxinIntegral(a, b float64) float64 {
	panels := math.Max(1, math.Ceil(b-a))
	half := (b - a) / (2 * panels)
	total := 0.0
	for i := 0.0; i < panels; i++ {
		middle := a + float64((2*i+1)*half)
		sum := float64(gaussWeights[0] * toxinRate(middle))
		for k := 1; k < len(gaussPoints); k++ {
			off := float64(gaussPoints[k] * half)
			sum += float64(gaussWeights[k] * (toxinRate(middle-off) + toxinRate(middle+off)))
		}
		total += float64(sum * half)
	}
	return total
}

// cautionsOf are what must be known of the answer.
func (t Toxin) cautionsOf() []cite.Caution {
	all := toxinCautions(t.Citation)
	if t.Share >= units.One {
		all = append(all, mayBeToxin)
	}
	if t.Unknown > 0 {
		all = append(all, gapsNotCounted)
	}
	if t.Highest.Value.Above(units.Celsius(toxinHigh)) {
		all = append(all, hotNotCounted)
	}
	return all
}

var (
	mayBeToxin = cite.Caution{
		ID: "growth.may-be-toxin", Deciding: true,
		Text: "By this envelope there may be toxin in the fish: do not eat it.",
	}
	gapsNotCounted = cite.Caution{
		ID: "growth.gaps", Deciding: true,
		Text: "Time between readings that are too far apart is not counted: more of the time to toxin may be used up.",
	}
	hotNotCounted = cite.Caution{
		ID: "growth.hot-time",
		Text: "Time above 45 °C (113 °F) is not counted, though type A and proteolytic strains grow up to 48 °C " +
			"(118.4 °F). It takes nothing back: toxin formed before stays.",
		Citation: toxinGrowth,
	}
)
