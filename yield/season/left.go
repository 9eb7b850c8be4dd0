package season

import (
	"cmp"
	"slices"
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// state is what is left at the end.
func (r *replay) state() State {
	s := State{
		Day: r.on, Start: r.ledger.Start, Rule: r.ledger.Rule, Held: r.held, Limits: r.limits, Used: r.used,
		Kept: r.in, Eaten: r.eaten, GivenAway: r.given, ThrownOut: r.thrown, Weeks: r.weeks,
		Left: r.in - r.eaten - r.given - r.thrown,
	}
	for _, i := range r.inOrder() {
		x := &r.lots[i]
		r.judgeLoad(x)
		if x.left() == 0 {
			continue
		}
		l := r.lot(x)
		s.Lots = append(s.Lots, l)
		s.sort(l)
	}
	slices.SortStableFunc(s.EatFirst, func(a, b Food) int { return cmp.Compare(a.Until, b.Until) })
	cautions := s.cautions()
	if slices.ContainsFunc(r.findings, contradicts) {
		cautions = append(cautions, asEntered)
	}
	s.Report = verdict.Of(r.findings, cautions)
	return s
}

// inOrder are the lots that were begun, by the day and the name of their catch, then by how often they were made,
// their day and name.
func (r *replay) inOrder() []int {
	all := make([]int, 0, len(r.lots))
	for i := range r.lots {
		if r.lots[i].begun {
			all = append(all, i)
		}
	}
	slices.SortFunc(all, func(a, b int) int {
		x, y := &r.lots[a], &r.lots[b]
		first, second := r.lots[x.root].entry, r.lots[y.root].entry
		switch {
		case first.Day != second.Day:
			return cmp.Compare(first.Day, second.Day)
		case first.Batch != second.Batch:
			return strings.Compare(first.Batch, second.Batch)
		case x.depth != y.depth:
			return cmp.Compare(x.depth, y.depth)
		case x.entry.Day != y.entry.Day:
			return cmp.Compare(x.entry.Day, y.entry.Day)
		}
		return strings.Compare(x.entry.Batch, y.entry.Batch)
	})
	return all
}

// judgeLoad adds a load whose audit is missing or no pass. It is made good once none of it is left and none was eaten.
func (r *replay) judgeLoad(x *stored) {
	if !x.entry.Event.heats() || x.load.Passes() {
		return
	}
	f := verdict.Finding{Rule: RuleAudit, What: "audit of " + x.entry.Batch, Kind: verdict.Missing, Verdict: x.load}
	if x.entry.Audit.Given {
		f.Kind, f.Stated, f.Wanted = verdict.Different, units.InWords(x.load.String()), units.InWords("a pass")
	}
	if x.left() == 0 && !x.eatenBad {
		f.Verdict = verdict.Met
	}
	r.findings = append(r.findings, f)
}

func (r *replay) lot(x *stored) Lot {
	root := r.lots[x.root].entry
	l := Lot{
		Batch: x.entry.Batch, Event: x.entry.Event, From: x.entry.From, Made: x.entry.Day,
		Catch: root.Batch, Caught: root.Day, OfFish: root.Count, OfRound: root.Round,
		Product: x.entry.Product, Count: x.entry.Count, Left: x.left(), Unchecked: x.unchecked, Failed: x.failed,
		Round: x.there, Held: x.counted, Until: x.until, Quality: x.quality, Verdict: x.verdict(),
	}
	if !x.entry.Event.makes() {
		l.Held = l.Round
	}
	if l.Verdict.Passes() {
		l.Food = x.good
	}
	return l
}

// sort puts what is left of a lot under what to eat and what is no food.
func (s *State) sort(l Lot) {
	aside := func(n int, why Why) {
		if n > 0 {
			s.Aside = append(s.Aside, NoFood{Batch: l.Batch, Count: n, Why: why})
		}
	}
	good := l.Left - l.Unchecked - l.Failed
	switch {
	case !l.Verdict.Passes():
		aside(good+l.Unchecked, NotProven)
		aside(l.Failed, DidNotSeal)
		return
	case s.Day > l.Until:
		aside(good, PastKeeping)
	case good > 0:
		f := Food{Batch: l.Batch, Product: l.Product, Count: good, Until: l.Until, Days: int(l.Until - s.Day)}
		s.EatFirst = append(s.EatFirst, f)
	}
	aside(l.Failed, DidNotSeal)
	aside(l.Unchecked, NotChecked)
}

var (
	setAside = cite.Caution{
		ID: "season.set-aside", Deciding: true,
		Text: "What is set aside is not food, whatever it looks and smells like. " +
			"A jar found unsealed more than 24 hours after the heat is thrown out without tasting.",
		Citation: reprocessing,
	}
	asEntered = cite.Caution{
		ID: "season.as-entered", Deciding: true,
		Text: "A contradicting entry was not counted, so what is held may be more or less than shown. " +
			"Count the shelf and put the entry right.",
	}
	givenAway = cite.Caution{
		ID:   "season.given-away",
		Text: "Fish given away is not counted here. It counts for whoever holds it, and some rules ask for a note with it.",
	}
	jarSigns = cite.Caution{
		ID: "season.look-before-eating", Deciding: true,
		Text: "Look at every jar before it is opened. " +
			"Boil its food before anyone tastes it where any step is in doubt.",
		Citation: cite.Citation{Source: cite.USDAGuide1Rev1994, Where: "For Safety's Sake", Basis: cite.Read},
	}
	keepsAsStated = cite.Caution{
		ID: "season.keeps-as-stated", Deciding: true,
		Text: "Days left are by the keeping times put in, and hold for food stored as their source says and no longer.",
	}
)

// cautions are what must be shown beside a state.
func (s *State) cautions() []cite.Caution {
	shape := s.Rule.Shape.Citation()
	limits, recalled, reported := limitsChange, shapeRecalled, shapeReported
	limits.Citation, recalled.Citation, reported.Citation = shape, shape, shape
	all := []cite.Caution{limits, keepsAsStated, countedWhole}
	if s.Rule.Shape == Unpreserved {
		all = append(all, recalled)
	}
	if s.Rule.Shape == ProcessedQuota {
		all = append(all, reported)
	}
	if len(s.Aside) > 0 {
		all = append(all, setAside)
	}
	if slices.ContainsFunc(s.Lots, func(l Lot) bool { return l.Event.heats() && l.Food > 0 }) {
		all = append(all, jarSigns)
	}
	if s.GivenAway > 0 {
		all = append(all, givenAway)
	}
	return all
}

// contradicts reports whether the entry of a finding was not counted.
func contradicts(f verdict.Finding) bool {
	switch f.Rule {
	case RuleBatch, RuleOrder, RuleAmount:
		return true
	}
	return f.Rule == RuleNotFood && f.Verdict == verdict.CannotTell
}
