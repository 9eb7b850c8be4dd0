package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Audit holds a record of the temperature inside the fish against published limits and returns what was used of each,
// what is left, when it was passed and the worst verdict. The record is read as straight lines, except across gaps
// longer than terms.MaxGap: their time counts nowhere and no verdict is Within. Times at a crossing round to the warmer
// side, by less than 1 ns; a limit reached and not passed is kept. A record of fewer than two readings or with one
// below -80 or above 100 °C, which is a fault of the probe, or terms that name no known rule, hazard, product or
// reading, or a MaxGap not above zero, is a units.RangeError; an empty record is series.ErrEmpty.
func Audit(record series.Series[units.Temperature], terms Terms) (Report, error) {
	if err := chain.CheckCount(record.Len()); err != nil {
		return Report{}, err
	}
	if err := terms.check(); err != nil {
		return Report{}, err
	}
	terms = terms.filled()
	w := walked(record, terms.MaxGap)
	if err := chain.CheckExtremes(w.lowest, w.highest.Value); err != nil {
		return Report{}, err
	}
	first, _ := record.First()
	r := Report{Terms: terms, Span: record.Span(), Unknown: w.unknown, LongestGap: record.LongestGap(), Highest: w.highest}
	last, _ := record.Last()
	r.judge(terms.judges(), w.total, w, first.At, last)
	return r, nil
}

// moments says when what a ledger no longer keeps was last kept.
type moments interface {
	aboveAt(threshold int) time.Duration
	exceededAt(j judge) time.Duration
	passedAt(j judge, limit int) time.Duration
}

// judge holds a ledger against the rules, for a record that begins at a time and ends with a reading.
func (r *Report) judge(
	judges []judge, l ledger, m moments, start time.Duration, last series.Reading[units.Temperature],
) {
	r.Hours = hoursAbove(l, m)
	r.Allowances = make([]Allowance, 0, len(judges))
	lines := make([]Line, 0, len(countedLimits))
	inPrint := false // whether a limit that was read is exceeded
	for _, j := range judges {
		a := Allowance{ID: j.id(), Rule: j.rule, Hazard: j.hazard, Used: j.share(l), Verdict: verdict.Met}
		switch {
		case !j.met(l):
			a.Verdict, a.ExceededAt = verdict.NotMet, m.exceededAt(j)
		case r.Unknown > 0:
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
		inPrint = inPrint || a.Verdict == verdict.NotMet && !a.FromMemory
	}
	r.Report = verdict.Of(r.findings(last.At), r.cautionsOf(start))
	r.FromMemory = r.Verdict == verdict.NotMet && !inPrint
	r.Next = r.next(r.Verdict == verdict.NotMet && r.iced(l, last.Value))
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
