package process

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// Check holds what a recipe states against the official tables and says which row governs, what falls short, differs,
// exceeds or is left out, by how much and where the published figure is printed. Where the recipe leaves the row open, a
// figure is short only if it is short in every row it may mean. Product, pack, jar, gauge, altitude, pressure, minutes
// and venting decide, and for quarts and smoked fish come-up and water as far as they are printed; headspace is judged
// only when it is stated. No process published is a verdict, not an error; a figure below zero is a units.RangeError.
// Nothing is rounded: a second short is short. Only 25 mm of headspace counts as the inch, and 2.84 L of water as no more
// than the 3 quarts.
func Check(c Claim) (Assessment, error) {
	if err := c.check(); err != nil {
		return Assessment{}, err
	}
	published, refusal := c.candidates(nil)
	if refusal != nil {
		a := Assessment{Report: verdict.Of(extended(c), cautionsOf(Schedule{})), Refusal: *refusal}
		a.Verdict = verdict.NotPublished
		return a, nil
	}
	var findings []verdict.Finding
	for _, judge := range judges {
		findings = judge(findings, c, published)
	}
	var a Assessment
	if len(published) == 1 {
		a.Governing = published[0]
	}
	a.Report = verdict.Of(findings, cautionsOf(a.Governing))
	return a, nil
}

// judges add to the findings, in the order of Claim.
var judges = [...]func([]verdict.Finding, Claim, []Schedule) []verdict.Finding{
	judgeRequest, judgePressure, judgeTimes, judgeWater, judgeHeadspace,
}

// judgeRequest finds the parts of a request that the claim leaves out.
func judgeRequest(all []verdict.Finding, c Claim, _ []Schedule) []verdict.Finding {
	missing := func(m Missing) {
		all = append(all, verdict.Finding{Rule: m.rule(), What: m.String(), Kind: verdict.Missing, Verdict: verdict.CannotTell})
	}
	for m := MissingProduct; m <= MissingGauge; m++ {
		if m.asked(c.request()) == 0 {
			missing(m)
		}
	}
	if !c.Altitude.Given {
		missing(MissingAltitude)
	}
	return all
}

// figure is one published figure to hold a stated one against.
type figure[T units.Quantity | time.Duration] struct {
	rule verdict.Rule
	what string
	of   func(*Schedule) (T, cite.Citation)
	may  bool // may be more than published
}

// spread is the least and the greatest of a figure that the published rows have, each with its citation, and the least
// of those that print it.
type spread[T units.Quantity | time.Duration] struct {
	low, high, printed   T
	lowSource, topSource cite.Citation
}

func (f figure[T]) over(published []Schedule) spread[T] {
	var s spread[T]
	for i := range published {
		v, from := f.of(&published[i])
		if i == 0 || v < s.low {
			s.low, s.lowSource = v, from
		}
		if i == 0 || v > s.high {
			s.high, s.topSource = v, from
		}
		if s.printed == 0 || v > 0 && v < s.printed {
			s.printed = v
		}
	}
	return s
}

// wanted is the figure as the rows print it: the least there may be, or for what is over that figure. One that some rows
// do not print is no figure of zero.
func (s spread[T]) wanted(over bool) units.Figure {
	w := units.AtLeast(s.printed)
	switch {
	case s.printed != s.high:
		w = units.Between(s.printed, s.high)
	case over:
		w = units.Exactly(s.printed)
	}
	if s.low == 0 {
		w = w.With("for some of these loads")
	}
	return w
}

// against holds a stated figure against the published rows, and adds what it finds. A figure that no row prints is not
// judged.
func against[T units.Quantity | time.Duration](all []verdict.Finding, f figure[T], stated units.Stated[T], published []Schedule) []verdict.Finding {
	s := f.over(published)
	found := verdict.Finding{Rule: f.rule, What: f.what, Stated: units.Exactly(stated.Value), Citation: s.lowSource}
	if s.low == 0 {
		found.Citation = s.topSource
	}
	switch {
	case s.high == 0:
		return all
	case !stated.Given:
		found.Kind, found.Stated = verdict.Missing, units.Figure{}
	case stated.Value < s.low:
		found.Kind, found.By = verdict.Short, units.AmountOf(s.low-stated.Value)
	case stated.Value > s.high && !f.may:
		found.Kind, found.By, found.Citation = verdict.Over, units.AmountOf(stated.Value-s.high), s.topSource
	default:
		return all
	}
	found.Wanted, found.Verdict = s.wanted(found.Kind == verdict.Over), found.Kind.Verdict()
	return append(all, found)
}
