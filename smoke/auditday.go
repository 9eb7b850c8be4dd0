package smoke

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// Day is what one record says of a day at the smoker, on one clock: the warming, the hold, the cooling and the storage, each
// by its own published rule, and the worst of them. Times count from the start of the record. Reached is when the slowest
// probe was at 160 °F, or at a lower limit; Cold when the slowest was at the temperature of its storage; ReadyFrom when the
// limits of cooked ready-to-eat fish begin to count: when it was cold or first handled, whichever came first.
type Day struct {
	verdict.Report
	Hold      Hold
	Cooling   Cooling
	Storage   Storage
	Reached   units.Stated[time.Duration]
	Cold      units.Stated[time.Duration]
	ReadyFrom units.Stated[time.Duration]
}

// MarshalJSON writes the day as an app shows it.
func (d Day) MarshalJSON() ([]byte, error) { return wire.Marshal(d) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (d *Day) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, d) }

// Audit judges a record of the whole day by the rules; those that are zero are the strictest home rules that were read. The
// record begins when the fish goes into the smoker: one that begins warmer than any raw fish cannot tell how it warmed.
// What was too long or too warm stays so, whatever came after: heat does not undo the hours before it. Readings in
// which a probe dropped out and came back are gaps, but end a hold. It says nothing of
// the exposure before and during the day, which package coldchain has, from the same record. Errors are those of AuditHold
// and AuditCooling, and a units.RangeError for marks out of order. Sources: those of the rules.
func Audit(by Rules, r Record) (Day, error) {
	storage, err := by.complete(r.Marks.Pack)
	if err != nil {
		return Day{}, err
	}
	if err := r.Marks.check(); err != nil {
		return Day{}, err
	}
	d := Day{Storage: storage}
	if d.Hold, err = AuditHold(by.Core, r); err != nil {
		return Day{}, err
	}
	if r, err = r.withoutDropouts(); err != nil {
		return Day{}, err
	}
	if d.Cooling, err = AuditCooling(by.Cooling, r); err != nil {
		return Day{}, err
	}
	found := d.judgeWarming(nil, by.Core, r)
	found = r.judgeWay(found)
	found = d.judgeStore(found, r)
	own := verdict.Of(found, d.cautions(r.Marks))
	d.Report = verdict.Join(d.Hold.Report, d.Cooling.Report, own)
	return d, nil
}

func (d Day) cautions(m Marks) []cite.Caution {
	all := make([]cite.Caution, 0, 12)
	if m.Handled.Given && !d.Cold.Given || m.Handled.Value < d.Cold.Value && m.Handled.Given {
		all = append(all, handledWarm)
	}
	return append(append(all, heatUndoesNothing), d.Storage.Cautions...)
}

// judgeWarming judges how long the slowest probe took to 160 °F, or to the limit where that is lower.
func (d *Day) judgeWarming(all []verdict.Finding, limit CoreLimit, r Record) []verdict.Finding {
	rule, target := chamberRules[ReachIn6-1], warmSoon
	if limit.AtLeast.Below(target) {
		target = limit.AtLeast
	}
	for i, core := range r.Cores {
		first, _ := core.First()
		last, _ := core.Last()
		from := first.At
		if r.Piece.Given {
			from = 0
		}
		at, found, _ := core.FirstAtOrAbove(target) // cannot fail: readings and a limit that is set
		took, stated := at-from, units.Exactly(at-from)
		if !found {
			took = last.At - from
			stated = units.AtLeast(took)
		}
		f := verdict.Finding{
			Rule: RuleWarmUp, What: r.named("time to the core", i), When: units.State(series.Stretch{From: from, To: from + took}),
			Wanted: units.AtMost(rule.OrWithin), Citation: rule.Citation,
		}
		switch {
		case first.Value.Celsius() > warmRoom && !r.Piece.Given:
			f.Kind, f.Verdict, f.When = verdict.Missing, verdict.CannotTell, units.State(moment(first.At))
			all = append(all, f)
		case took > rule.OrWithin:
			f.Kind, f.Verdict, f.Stated, f.By = verdict.TooLong, verdict.NotMet, stated, units.AmountOf(took-rule.OrWithin)
			all = append(all, f)
		}
		d.Reached.Given = found && (i == 0 || d.Reached.Given)
		d.Reached.Value = max(d.Reached.Value, at)
	}
	if !d.Reached.Given {
		d.Reached.Value = 0
	}
	return all
}

// judgeWay judges the marks of smoker and oven: 12 h in the smoker at most, and 2 h on the way to the oven.
func (r Record) judgeWay(all []verdict.Finding) []verdict.Finding {
	first, _ := r.Cores[0].First()
	oven, longest := chamberRules[ToOven-1], chamberRules[WholeFish12-1]
	out, in := r.Marks.OutOfSmoker, r.Marks.InOven
	if inSmoker := out.Value - first.At; out.Given && inSmoker > longest.Within {
		f := longest.tooLong(inSmoker)
		f.When = units.State(series.Stretch{From: first.At, To: out.Value})
		all = append(all, f)
	}
	switch {
	case in.Given && !out.Given:
		f := missing(RuleOven, "mark of the end in the smoker")
		f.Wanted, f.Citation = units.AtMost(oven.Within).With("to the oven"), oven.Citation
		all = append(all, f)
	case in.Given && in.Value-out.Value > oven.Within:
		between := in.Value - out.Value
		f := told(RuleOven, "time from the smoker to the oven", verdict.TooLong, units.Exactly(between), units.AtMost(oven.Within), units.AmountOf(between-oven.Within), oven.Citation)
		f.When = units.State(series.Stretch{From: out.Value, To: in.Value})
		all = append(all, f)
	}
	return all
}

var (
	handledWarm = cite.Caution{
		ID: "smoke.handled-warm", Deciding: true,
		Text:     "Boning, slicing or bagging fish that is still warm starts the limits of cooked ready-to-eat fish at once.",
		Citation: cite.Citation{Source: cite.FDAHazardsGuide2020, Where: "ch. 12, p. 234", Basis: cite.Read},
	}
	heatUndoesNothing = cite.Caution{
		ID: "smoke.heat-undoes-nothing", Deciding: true,
		Text: "Heat does not undo what grew before it: some toxins survive cooking. The hours of the raw fish out of the cold " +
			"are judged by the exposure of the same record.",
		Citation: cite.Citation{Source: cite.FDAHazardsGuide2020, Where: "ch. 12, pp. 214-215", Basis: cite.Read},
	}
)
