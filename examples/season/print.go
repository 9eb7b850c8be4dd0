package main

import (
	"fmt"
	"strings"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
	larder "example.org/lakelarder/yield/season"
)

// print is the verdict of the records, what to do, what is left to eat and whether the year can be had; behind the
// cautions the details.
func (w worked) print(p *sheet.Sheet) {
	p.Verdict(w.Verdict, "the catch at "+w.Place+", by its three records")
	w.printRecord(p, w.cold.Judgement(), fmt.Sprintf("Cooler: %s over %s, warmest %s", w.cold.Verdict,
		units.Lasting(w.cold.Span), sheet.Up(p, w.cold.Highest.Value)))
	w.printRecord(p, w.hold.Judgement(), fmt.Sprintf("Smoker: %s, %s by %s%s: %s without a break, %s owed",
		w.hold.Verdict, w.limitText(p), w.limit.ID, p.From(w.limit.Citation),
		sheet.Down(p, w.hold.Held), sheet.Up(p, w.hold.Owed)))
	w.printRecord(p, w.run.Judgement(), fmt.Sprintf("Canner: %s, %s at %s or above without a break, of %s%s",
		w.run.Verdict, sheet.Down(p, w.run.Held.Length()),
		w.run.Required.Text(p.System, units.Up), units.Lasting(w.run.Process), p.From(w.schedule.Citation)))
	for _, step := range w.cold.Next {
		p.Do("%s", step.Text(p.System))
	}
	for _, step := range w.run.Next {
		p.Do("%s%s", step.Text, p.From(step.Citation))
	}
	p.Line("%s", w.About)
	w.printFood(p)
	w.printYear(p)
	w.warn(p)
	p.Cautions()
	w.printDetails(p)
	p.Close()
}

// printRecord is one record's outcome, and why where there is more to say than that.
func (w worked) printRecord(p *sheet.Sheet, r verdict.Report, headline string) {
	p.Line("%s", headline)
	if len(r.Findings) > 0 {
		p.Findings(verdict.Report{Findings: r.Findings}, nil, nil)
	}
}

// warn keeps the cautions of everything that was worked out.
func (w worked) warn(p *sheet.Sheet) {
	p.Warn(w.Report.Cautions...)
	p.Warn(w.plan.Cautions...)
	p.Warn(w.wanted.Cautions...)
	p.Warn(w.schedule.Cautions()...)
	p.Warn(w.load.Cautions()...)
	p.Warn(w.cure.Cautions...)
	p.Warn(w.volumes.Cautions...)
}

func (w worked) limitText(p *sheet.Sheet) string {
	return w.limit.Printed.Text(p.System) + " for " + units.Lasting(w.limit.Hold)
}

// practice is a citation of what the households do.
func practice(what string) cite.Citation { return cite.Citation{Where: what, Basis: cite.Practice} }

// printFood says what is left to eat. Fish that no record vouches for is not counted.
func (w worked) printFood(p *sheet.Sheet) {
	p.Heading("What is left to eat")
	if !w.cold.Verdict.Passes() {
		p.Line("Nothing is counted: the record does not show that the catch was cold enough.")
		return
	}
	if w.run.Verdict.Passes() {
		p.Line("Canned: %d jars packed with %s of raw fish, %s of it eaten: %s, if every load meets its process",
			w.jarCount, sheet.Text(p, w.food.packed),
			sheet.Text(p, w.year.jars.Served), sheet.Down(p, w.food.canned))
	} else {
		p.Line("Canned: not counted, for the recorded run does not show that the process was met")
	}
	if w.hold.Verdict.Passes() {
		p.Line("Smoked: %s to %s, after a loss of %s to %s%s, if it was cooled at once to %s: no record here shows that", sheet.Down(p, w.food.low), sheet.Down(p, w.food.high),
			sheet.Text(p, w.SmokingLoss.Low), sheet.Text(p, w.SmokingLoss.High),
			p.From(practice("the households' own weighings before and after the smoker")),
			units.AtMost(units.Fahrenheit(38)).Text(p.System))
	} else {
		p.Line("Smoked: not counted, for the record does not show that the core was hot enough for long enough")
	}
	p.Line("Together, by the lower figures: %s, %d servings of %s, %d for each of %d people",
		sheet.Down(p, w.food.together), w.food.servings, sheet.Text(p, w.Serving),
		w.food.servings/int64(w.People), w.People)
}

func (w worked) printYear(p *sheet.Sheet) {
	y, r := w.plan.Year, w.plan.Year.Rule
	p.Heading("Can the year be held?")
	p.Line("With the expected catch: %s", outcome(p, w.plan))
	p.Line("With the best possible catch: %s", outcome(p, w.best))
	p.Line("By the rule stated, of the shape %q%s: %d a day and %s, for each of %d anglers. The local rules decide.",
		r.Shape, p.From(r.Shape.Citation()), r.Daily, held(r), r.Anglers)
	if w.steady > 0 && !w.plan.Feasible() {
		p.Line("Every week of the year could be had with %s of what is wanted: %s whole a week, from %d fish",
			sheet.Down(p, w.steady), sheet.Down(p, w.less.Year.Weekly), w.less.Fish())
	}
	p.Line("Peak: %d held before eating (%d fresh, %d preserved at most)%s", w.plan.Peak.All, w.plan.Peak.Fresh,
		w.plan.Peak.Preserved, limits(w.plan.Limits))
	p.Line("Eaten: %s whole, %d fish on %d of %d trips; the oldest %d weeks after the week of its catch, %s",
		sheet.Down(p, w.plan.Eaten), w.plan.Fish(), w.plan.Trips(),
		len(y.Trips), w.plan.Oldest(), w.plan.Order)
	young, smoked := w.plan.EatenWithin(w.year.smoked.Keeps.Time), w.supplyOf(w.year.smoked)
	p.Line("Of that %s young enough for smoked and frozen fish, which keeps %s%s; the rest of the year is jars",
		sheet.Down(p, young), sheet.Text(p, w.year.smoked.Keeps.Time),
		p.From(w.year.smoked.Keeps.Citation))
	if young < smoked.Round {
		p.Line("That is less than the %s wanted smoked: make fewer, and more jars", sheet.Up(p, smoked.Round))
	}
}

// outcome says whether a year can be held, and if not, how much of it.
func outcome(p *sheet.Sheet, plan larder.Plan) string {
	if plan.Feasible() {
		return plan.String() // counts only
	}
	return fmt.Sprintf("infeasible: short %s, the first of them %d; at most %s whole can be eaten, of %s wanted, "+
		"from %d fish", count(len(plan.Short), "week"), plan.Short[0],
		sheet.Down(p, plan.Eaten), sheet.Up(p, plan.Eaten+plan.Missing()), plan.Fish())
}

// held is what a rule lets an angler hold, in words.
func held(r larder.Rule) string {
	switch r.Shape {
	case larder.OneDay:
		return "no more held"
	case larder.ProcessedQuota:
		return fmt.Sprintf("as many fresh, and %d processed", r.Processed)
	}
	return fmt.Sprintf("%d held", r.Possession)
}

func limits(l larder.Stock) string {
	var all []string
	for _, one := range []struct {
		what  string
		limit int
	}{{"together", l.All}, {"fresh", l.Fresh}, {"preserved", l.Preserved}} {
		if one.limit > 0 {
			all = append(all, fmt.Sprintf("%d %s", one.limit, one.what))
		}
	}
	return "; the limit is " + strings.Join(all, ", ")
}

// count is "1 load" or "3 loads".
func count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
