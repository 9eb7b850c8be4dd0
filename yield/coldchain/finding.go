package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// The rules that a record is held against. Each hazard of table A-2 has a rule of its own, such as
// "coldchain.table-a2.listeria", which Hazard.Rule names.
const (
	RuleRecorded           verdict.Rule = "coldchain.recorded" // no gap longer than the one trusted
	RuleRawReadyToEat      verdict.Rule = "coldchain.raw-ready-to-eat"
	RuleRawReadyToEatOlder verdict.Rule = "coldchain.raw-ready-to-eat-older"
	RuleCookedReadyToEat   verdict.Rule = "coldchain.cooked-ready-to-eat"
	RuleKitchenTwoHours    verdict.Rule = "coldchain.kitchen-two-hours"
)

// hazardRules are the rules of table A-2 by hazard.
var hazardRules = [...]verdict.Rule{
	BacillusCereus:         "coldchain.table-a2.bacillus-cereus",
	Campylobacter:          "coldchain.table-a2.campylobacter",
	BotulinumA:             "coldchain.table-a2.botulinum-a",
	BotulinumE:             "coldchain.table-a2.botulinum-e",
	Perfringens:            "coldchain.table-a2.perfringens",
	EscherichiaColi:        "coldchain.table-a2.escherichia-coli",
	Listeria:               "coldchain.table-a2.listeria",
	Salmonella:             "coldchain.table-a2.salmonella",
	Shigella:               "coldchain.table-a2.shigella",
	StaphylococcusAureus:   "coldchain.table-a2.staphylococcus-aureus",
	VibrioCholerae:         "coldchain.table-a2.vibrio-cholerae",
	VibrioParahaemolyticus: "coldchain.table-a2.vibrio-parahaemolyticus",
	VibrioVulnificus:       "coldchain.table-a2.vibrio-vulnificus",
	Yersinia:               "coldchain.table-a2.yersinia",
}

// Rule returns the rule of the findings about a hazard of table A-2, empty for one that is not known.
func (h Hazard) Rule() verdict.Rule {
	if int(h) < len(hazardRules) {
		return hazardRules[h]
	}
	return ""
}

// ruleIDs are the rules of the others.
var ruleIDs = [...]verdict.Rule{
	RawReadyToEat: RuleRawReadyToEat, RawReadyToEatOlder: RuleRawReadyToEatOlder,
	CookedReadyToEat: RuleCookedReadyToEat, KitchenTwoHours: RuleKitchenTwoHours,
}

func (j judge) id() verdict.Rule {
	if j.rule == TableA2 {
		return j.hazard.Rule()
	}
	return ruleIDs[j.rule]
}

// findings says what of the rules that decide the record is not within, and what cannot be told.
func (r *Report) findings(seen *followed) []verdict.Finding {
	var all []verdict.Finding
	for i := range r.Allowances {
		if a := &r.Allowances[i]; a.Verdict == verdict.NotMet && a.Spared == 0 {
			if all == nil {
				all = make([]verdict.Finding, 0, len(r.Allowances)+1)
			}
			all = append(all, a.exceeded(seen.Last.At))
		}
	}
	if r.Unknown > 0 {
		all = append(all, r.unobserved(r.LongestGap.Length()))
	}
	all = r.doubts(all, seen)
	if f, ok := r.condition(); ok {
		all = append(all, f)
	}
	return all
}

// exceeded is the finding about an allowance that ran out: the limit that is passed by the greatest share of itself,
// and where only the bands together are too long, their sum.
func (a *Allowance) exceeded(end time.Duration) verdict.Finding {
	f := verdict.Finding{
		Rule: a.ID, What: a.what(), Kind: verdict.TooLong, Verdict: verdict.NotMet,
		When: units.State(series.Stretch{From: a.ExceededAt, To: end}),
	}
	var most *Line
	for i := range a.Lines {
		l := &a.Lines[i]
		if l.Passed && (most == nil || l.share() > most.share()) {
			most = l
		}
	}
	if most != nil {
		f.Stated, f.Wanted = units.Exactly(most.Used), units.AtMost(most.Limit.Allowed)
		f.By, f.Citation = units.AmountOf(most.Used-most.Limit.Allowed), most.Limit.Citation
		return f
	}
	f.Stated, f.Wanted = units.Exactly(a.Used), units.AtMost(units.One).With("of the time allowed")
	f.By, f.Citation = units.AmountOf(a.Used-units.One), a.fullest()
	return f
}

func (l *Line) share() float64 { return float64(l.Used) / float64(l.Limit.Allowed) }

// fullest is where the limit is printed of which most is used.
func (a *Allowance) fullest() cite.Citation {
	most := 0
	for i := range a.Lines {
		if a.Lines[i].share() > a.Lines[most].share() {
			most = i
		}
	}
	return a.Lines[most].Limit.Citation
}

// what names the allowance for a person.
func (a *Allowance) what() string {
	if a.Hazard != 0 {
		return a.Hazard.String()
	}
	return a.Rule.String()
}
