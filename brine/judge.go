package brine

import (
	"time"

	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// leastBrine is the weakest brine for smoking in print: a cup of table salt, 48 printed teaspoons, to a gallon of
// water.
const (
	leastBrine     units.Ratio = 70_766_889_328
	leastBrineNote             = "(a cup of table salt to the gallon)"
)

var leastBrineCitation = cite.Citation{
	Source: cite.MSUEPreservingFoodSafely1997, Where: "item 01600579", Basis: cite.Read,
}

// ownFigures is where a figure is from that the recipe itself gives.
var ownFigures = cite.Citation{Where: "the recipe's own figures", Basis: cite.Computed}

// judgeMethod finds a recipe that is a dry cure and a brine at once: figures of the one say nothing of the other.
func (j *judgement) judgeMethod() {
	f := verdict.Finding{
		Rule: RuleMethod, What: "method", Kind: verdict.Different, Wanted: units.InWords("one method"), Citation: ownFigures,
	}
	switch {
	case j.found.Method == DrySalted && (j.Water.Given || j.Strength.Given):
		f.Stated = units.InWords("dry salted, with a brine")
	case j.found.Method == WetBrined && j.SaltToFish.Given:
		f.Stated = units.InWords("wet brined, with salt to fish")
	default:
		return
	}
	j.find(f)
}

// judgeHandling finds what a recipe does to the fish and the brine that no amount of salt makes good.
func (j *judgement) judgeHandling() {
	if j.Ungutted {
		j.find(verdict.Finding{
			Rule: RuleGutting, What: "gutting", Kind: verdict.Different, Verdict: verdict.NotMet, Citation: gutFirst.Citation,
			Stated: units.InWords("guts, roe or milt left in"), Wanted: units.InWords("all of them out before the salt"),
		})
	}
	if j.UsedBrine && j.found.Method != DrySalted {
		j.find(verdict.Finding{
			Rule: RuleFreshBrine, What: "brine", Kind: verdict.Different, Verdict: verdict.NotMet,
			Stated: units.InWords("a used brine"), Wanted: units.InWords("a fresh one, or one that was treated"),
			Citation: cite.Citation{
				Source: cite.MichiganRegulation569, Where: "brine used again; also 1 NYCRR 262", Basis: cite.Read,
			},
		})
	}
	if j.MixedLoad {
		j.find(verdict.Finding{
			Rule: RuleLoad, What: "load", Kind: verdict.Different, Citation: oneKind.Citation,
			Stated: units.InWords("a mixed load"), Wanted: units.InWords("one kind of fish in pieces of about one size"),
		})
	}
}

// judgeDose holds the salt of a dry cure or the strength of a brine against what is published.
func (j *judgement) judgeDose() {
	switch dose, strength := j.found.SaltToFish, j.found.Strength; {
	case j.found.Method == 0:
		j.missing(RuleMethod, "method", units.Figure{}, cite.Citation{})
	case j.found.Method == DrySalted && !dose.Given:
		j.missing(RuleSaltToFish, "salt to fish", units.AtLeast(handSalted), handSaltedCitation)
	case j.found.Method == DrySalted:
		j.judgeDryDose(dose.Value)
	case !strength.Given:
		j.missing(RuleStrength, "brine strength", units.AtLeast(leastBrine).With(leastBrineNote), leastBrineCitation)
	default:
		j.judgeStrength(strength.Value)
	}
}

func (j *judgement) judgeDryDose(dose units.Ratio) {
	f := verdict.Finding{Rule: RuleSaltToFish, What: "salt to fish", Stated: units.Exactly(dose)}
	switch {
	case dose < handSalted:
		f.Kind, f.Wanted, f.Citation = verdict.Short, units.AtLeast(handSalted), handSaltedCitation
		f.By = units.AmountOf(handSalted - dose)
	case dose > handSaltedUp && dose < quarter:
		f.Kind, f.Wanted, f.Citation = verdict.Different, units.InWords("no dose between 3 % and 1:4"), quarterCitation
	case dose > thirdUp:
		f.Kind, f.Wanted, f.Citation = verdict.Over, units.AtMost(third).With("(1:3)"), thirdCitation
		f.By = units.AmountOf(dose - third)
	default:
		return
	}
	j.find(f)
}

func (j *judgement) judgeStrength(strength units.Ratio) {
	saturated, citation := solution.Saturation()
	f := verdict.Finding{Rule: RuleStrength, What: "brine strength", Stated: units.Exactly(strength)}
	switch {
	case strength < leastBrine:
		f.Kind, f.Wanted, f.Citation = verdict.Short, units.AtLeast(leastBrine).With(leastBrineNote), leastBrineCitation
		f.By = units.AmountOf(leastBrine - strength)
	case strength > saturated:
		f.Kind, f.Wanted, f.Citation = verdict.Different, units.AtMost(saturated).With("(saturation)"), citation
		f.By = units.AmountOf(strength - saturated)
	default:
		return
	}
	j.find(f)
}

// judgeTime holds fish buried in salt against the dry-salting table; a measured dose and a brine are judged by what
// salt they can bring in.
func (j *judgement) judgeTime() {
	if !j.Time.Given {
		j.missing(RuleTime, "time", units.Figure{}, cite.Citation{})
		return
	}
	if j.found.SaltToFish.Value < quarter || !j.Thickness.Given {
		return
	}
	fatness := j.Fatness
	if fatness == 0 {
		fatness = FatFish // the longer time
	}
	f := verdict.Finding{Rule: RuleTime, What: "time", Kind: verdict.Different, Stated: units.Exactly(j.Time.Value)}
	published, from, err := saltingTime(j.Thickness.Value, fatness)
	if err != nil {
		f.Wanted, f.Citation = units.InWords("no time for this thickness"), saltingTimeCitation
		j.find(f)
		return
	}
	switch off := j.Time.Value - published; {
	case off < 0:
		f.Kind, f.By = verdict.Short, units.AmountOf(-off)
	case off > 0:
		f.Kind, f.By = verdict.Over, units.AmountOf(off)
	default:
		return
	}
	f.Wanted, f.Citation = units.Exactly(published).With("for "+fatness.String()), from
	j.find(f)
}

// The published temperatures, each printed in two scales and met by either reading: where dry-salted fish lies and
// where it brines for more than four hours, and the brine at its start.
var (
	at38              = units.AtMost(units.Fahrenheit(38)).Also(units.AtMost(units.Celsius(3.3)))
	at40              = units.AtMost(units.Fahrenheit(40)).Also(units.AtMost(units.Celsius(4.4)))
	at60              = units.AtMost(units.Fahrenheit(60)).Also(units.AtMost(units.Celsius(15.6)))
	brineTempCitation = cite.Citation{
		Source: cite.MichiganRegulation569, Where: "R 285.569.5(2); also 1 NYCRR 262.5(a)", Basis: cite.Read,
	}
)

const startLimitHolds = 4 * time.Hour

func (j *judgement) judgeTemperature() {
	limit, citation := at38, keepCold.Citation
	if j.found.Method == WetBrined {
		citation = brineTempCitation
		if j.Time.Given && j.Time.Value <= startLimitHolds {
			limit = at60
		}
	}
	if !j.Temperature.Given {
		j.missing(RuleTemperature, "temperature", limit, citation)
		return
	}
	stated := units.AmountOf(j.Temperature.Value)
	if limit.Admits(stated) {
		return
	}
	j.find(verdict.Finding{
		Rule: RuleTemperature, What: "temperature", Kind: verdict.TooWarm, Stated: units.Exactly(j.Temperature.Value),
		Wanted: limit, By: stated.Minus(limit.High), Citation: citation,
	})
}
