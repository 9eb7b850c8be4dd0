package lethality

import (
	"strconv"
	"time"

	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Rule is a way to add up lethal rates that textbooks use. The zero Rule is not stated.
type Rule uint8

// The rules. Exact is that of F.
const (
	Exact Rule = iota + 1
	Trapezoid
	Simpson
)

var rules = word.List[Rule]{What: "rule of integration", Words: []string{"exact on straight lines", "trapezoid", "Simpson"}}

// ParseRule reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseRule(s string) (Rule, error) { return rules.Parse(s) }

// String is the rule's name: "trapezoid".
func (r Rule) String() string { return rules.Of(r) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (r Rule) MarshalText() ([]byte, error) { return rules.Marshal(r) }

// UnmarshalText is ParseRule, and the empty text is one that is not set.
func (r *Rule) UnmarshalText(text []byte) error { return rules.Unmarshal(text, r) }

// Which way a rule leans against the exact integral over the same straight lines.
var (
	trapezoidLeans = cite.Caution{
		ID: "lethality.trapezoid",
		Text: "The trapezoid rule reads at or above the exact rule, " +
			"which is to the unsafe side on readings far apart.",
	}
	simpsonLeans = cite.Caution{
		ID: "lethality.simpson",
		Text: "Simpson's rule wants an even number of equal steps and a smooth curve. " +
			"It errs either way at a bend such as steam going off.",
	}
)

// FBy returns the lethality of a record by a textbook's rule, to compare with its printed answer; F is the one to
// use. Simpson needs an even number of steps of one length, otherwise a RangeError. A rule that is not stated is a
// units.UnsetError. Arguments and rounding as for F.
func FBy(record series.Series[units.Temperature], r Reference, rule Rule) (Lethality, error) {
	if err := rules.Check(rule); err != nil {
		return Lethality{}, err
	}
	out, err := F(record, r)
	if err != nil || rule == Exact {
		return out, err
	}
	out.F, err = byRule(record, r.scale(), rule)
	if err != nil {
		return Lethality{}, err
	}
	leans := trapezoidLeans
	if rule == Simpson {
		leans = simpsonLeans
	}
	out.Cautions = append(out.Cautions, leans)
	return out, nil
}

func byRule(record series.Series[units.Temperature], s scale, rule Rule) (time.Duration, error) {
	rates := make([]float64, record.Len())
	times := make([]time.Duration, record.Len())
	for i := range rates {
		reading, _ := record.At(i)
		rates[i], times[i] = s.rate(quanta(reading.Value)), reading.At
	}
	if rule == Trapezoid {
		return floored("F", trapezoid(times, rates))
	}
	if err := evenSteps(times); err != nil {
		return 0, err
	}
	return floored("F", simpson(times, rates))
}

func trapezoid(times []time.Duration, rates []float64) (sum float64) {
	for i := 1; i < len(rates); i++ {
		sum += float64(float64(times[i]-times[i-1]) * (rates[i-1] + rates[i]) / 2)
	}
	return sum
}

func simpson(times []time.Duration, rates []float64) (sum float64) {
	for i := 2; i < len(rates); i += 2 {
		sum += float64(float64(times[i]-times[i-2]) * (rates[i-2] + float64(4*rates[i-1]) + rates[i]) / 6)
	}
	return sum
}

func evenSteps(times []time.Duration) error {
	if steps := len(times) - 1; steps%2 != 0 {
		return units.RangeError{
			What: "number of steps left over from the pairs of Simpson's rule", Got: strconv.Itoa(steps % 2), High: "0",
		}
	}
	for i := 2; i < len(times); i++ {
		step := times[1] - times[0]
		if err := units.CheckDuration("step for Simpson's rule", times[i]-times[i-1], step, step); err != nil {
			return err
		}
	}
	return nil
}
