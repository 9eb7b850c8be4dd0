package lethality

import (
	"strconv"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Rule is a way to add up lethal rates that textbooks use.
type Rule uint8

// The rules. Exact is that of F.
const (
	Exact Rule = iota
	Trapezoid
	Simpson
)

// String is the rule's name.
func (r Rule) String() string {
	switch r {
	case Exact:
		return "exact on straight lines"
	case Trapezoid:
		return "trapezoid"
	case Simpson:
		return "Simpson"
	}
	return "rule " + strconv.Itoa(int(r))
}

// Bias says which way the rule leans against the exact integral over the same straight lines.
func (r Rule) Bias() string {
	switch r {
	case Exact:
		return "none while the temperature runs straight between readings"
	case Trapezoid:
		return "reads at or above the exact rule, which is to the unsafe side on readings far apart"
	case Simpson:
		return "wants an even number of equal steps and a smooth curve; errs either way at a bend such as steam going off"
	}
	return ""
}

// FBy returns the lethality of a record by a textbook's rule, to compare with its printed answer; F is the one to use. Simpson
// needs an even number of steps of one length, otherwise a RangeError. Arguments and rounding as for F.
func FBy(record series.Series[units.Temperature], r Reference, rule Rule) (Lethality, error) {
	out, err := F(record, r)
	if err != nil || rule == Exact {
		return out, err
	}
	out.F, err = byRule(record, r.scale(), rule)
	if err != nil {
		return Lethality{}, err
	}
	out.Cautions = append(out.Cautions, cite.Caution{Text: "The " + rule.String() + " rule " + rule.Bias() + "."})
	return out, nil
}

func byRule(record series.Series[units.Temperature], s scale, rule Rule) (time.Duration, error) {
	rates := make([]float64, record.Len())
	times := make([]time.Duration, record.Len())
	for i := range rates {
		reading, _ := record.At(i)
		rates[i], times[i] = s.rate(quanta(reading.Value)), reading.At
	}
	switch rule {
	case Trapezoid:
		return floored("F", trapezoid(times, rates))
	case Simpson:
		if err := evenSteps(times); err != nil {
			return 0, err
		}
		return floored("F", simpson(times, rates))
	}
	return 0, units.RangeError{What: "rule", Got: rule.String(), High: Simpson.String()}
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
		return units.RangeError{What: "number of steps for Simpson's rule", Got: strconv.Itoa(steps), Low: "an even number"}
	}
	for i := 2; i < len(times); i++ {
		step := times[1] - times[0]
		if err := units.CheckDuration("step for Simpson's rule", times[i]-times[i-1], step, step); err != nil {
			return err
		}
	}
	return nil
}
