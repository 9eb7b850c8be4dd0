package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Audit holds a record of the temperature inside the fish against published limits and returns what was used of each,
// what is left, when it was passed and the worst verdict of those that govern. The record is read as straight lines, except
// across gaps longer than terms.MaxGap: their time counts nowhere and no verdict is Met. Times at a crossing round to the
// warmer side, by less than 1 ns; a limit reached and not passed is kept. What a broken probe shows is a gap; what no fish
// does, and a core that warms in nobody knows what, is CannotTell where it could decide. A record of fewer than two believed
// readings or with one below -80 or above 100 °C that is no code of a broken probe, or terms that are not as their fields
// say, is a units.RangeError; an empty record is series.ErrEmpty.
func Audit(record series.Series[units.Temperature], terms Terms) (Report, error) {
	if err := chain.CheckCount(record.Len()); err != nil {
		return Report{}, err
	}
	if err := terms.check(); err != nil {
		return Report{}, err
	}
	terms = terms.filled()
	w, err := terms.walked(record)
	if err != nil {
		return Report{}, err
	}
	start, _ := w.record.First()
	r := Report{Terms: terms, Unknown: w.unknown, LongestGap: w.longest, Highest: w.highest}
	r.judge(terms.judges(), w.total, w, &w.seen, start)
	return r, nil
}

// moments says when what a ledger no longer keeps was last kept.
type moments interface {
	aboveAt(threshold int) time.Duration
	exceededAt(j judge) time.Duration
	passedAt(j judge, limit int) time.Duration
}

// judge holds a ledger against the rules, for a record that begins with a reading and of which so much was seen.
func (r *Report) judge(judges []judge, l ledger, m moments, seen *followed, start series.Reading[units.Temperature]) {
	r.Span, r.Dropouts, r.Doubted, r.Unseen = seen.End-seen.Start, seen.Dropouts, seen.Doubted, seen.Blind
	r.Unknown += seen.edges(start, r.Terms.MaxGap, &r.LongestGap)
	blind := l.blind(seen)
	r.Hours = hoursAbove(l, m)
	r.Allowances = make([]Allowance, 0, len(judges))
	lines := make([]Line, 0, len(countedLimits))
	inPrint := false // whether a limit that was read is exceeded
	for _, j := range judges {
		a := Allowance{ID: j.id(), Rule: j.rule, Hazard: j.hazard, Used: j.share(l), Verdict: verdict.Met, Spared: j.spared}
		switch {
		case !j.met(l):
			a.Verdict, a.ExceededAt = verdict.NotMet, m.exceededAt(j)
		case r.Unknown > 0 || blind != nil && !j.met(blind):
			a.Verdict = verdict.CannotTell
		}
		n := len(lines)
		for i := range j.limits {
			if j.applies(l, &j.limits[i]) {
				lines = append(lines, j.line(l, i, a.Used, m))
			}
		}
		a.Lines = lines[n:len(lines):len(lines)]
		a.FromMemory = a.Verdict == verdict.NotMet && !j.readExceeded(a.Lines)
		r.Allowances = append(r.Allowances, a)
		inPrint = inPrint || a.Verdict == verdict.NotMet && !a.FromMemory && a.Spared == 0
	}
	r.Report = verdict.Of(r.findings(seen), r.cautionsOf(start.At))
	r.FromMemory = r.Verdict == verdict.NotMet && !inPrint
	r.Next = r.next(r.Verdict == verdict.NotMet && r.iced(l, seen.Last.Value))
}

// blind is the ledger if the time in which the core warmed unseen was as hot as the guide counts, nil where there was none.
func (l ledger) blind(seen *followed) ledger {
	if seen.Blind == 0 {
		return nil
	}
	worst := append(ledger(nil), l...)
	hottest := cellAt(units.Fahrenheit(guideTop))
	worst.enter(hottest, int64(seen.Cooled), inCold)
	worst.enter(hottest, int64(seen.Blind-seen.Cooled), byCore)
	return worst
}

// line is what one limit finds.
func (j judge) line(l ledger, limit int, share units.Ratio, m moments) Line {
	c := &j.limits[limit]
	line := Line{Limit: c.Limit, Used: j.used(l, c)}
	switch {
	case !j.allows(l, c):
		line.Passed, line.PassedAt = true, m.passedAt(j, limit)
	case j.rule == TableA2 && j.reading == SumOfFractions && !c.single:
		line.Remaining = left(c.Allowed, share)
	default:
		line.Remaining = c.Allowed - line.Used
	}
	return line
}

// left is the part of an allowance that a share used of it leaves, rounded down.
func left(allowed time.Duration, used units.Ratio) time.Duration {
	switch {
	case used <= 0:
		return allowed
	case used >= units.One:
		return 0
	}
	return time.Duration(chain.Part(int64(allowed), int64(units.One-used), int64(units.One)))
}

// hoursAbove is the time above each threshold.
func hoursAbove(l ledger, m moments) []Hours {
	all := make([]Hours, 0, len(thresholds))
	top := cellAt(units.Fahrenheit(guideTop))
	for i, t := range thresholds {
		h := Hours{Above: units.Fahrenheit(t.over), Citation: t.citation}
		h.Time = l.in(span{firstAbove(h.Above), top})
		if !neverAbove(l, i) {
			h.Ever, h.First = true, m.aboveAt(i)
		}
		all = append(all, h)
	}
	return all
}

func neverAbove(l ledger, threshold int) bool {
	return l.above(firstAbove(units.Fahrenheit(thresholds[threshold].over))) == 0
}
