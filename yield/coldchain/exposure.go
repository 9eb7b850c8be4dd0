package coldchain

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// Exposure holds a record of the temperature inside the fish against published limits and returns what was
// used of each, what is left, when it was passed and the worst verdict. The record is read as straight
// lines, except across gaps longer than terms.MaxGap: their time counts nowhere and no verdict is Within.
// Times at a crossing round to the warmer side, by less than 1 ns; a limit reached and not passed is kept.
// A record of fewer than two readings, or terms that name no known rule, hazard, product or reading, or a
// MaxGap not above zero, is a units.RangeError; an empty record is series.ErrEmpty.
func Exposure(record series.Series[units.Temperature], terms Terms) (Report, error) {
	if record.Len() == 0 {
		return Report{}, series.ErrEmpty
	}
	if record.Len() < 2 {
		return Report{}, units.RangeError{What: "number of readings", Got: "1", Low: "2"}
	}
	if err := terms.check(); err != nil {
		return Report{}, err
	}
	w := walked(record, terms.MaxGap)
	r := Report{
		Terms: terms, Verdict: Within, Span: record.Span(), Unknown: w.unknown, LongestGap: record.LongestGap(),
		Highest: w.highest, Hours: w.hours(),
	}
	judges := terms.judges()
	r.Findings = make([]Finding, 0, len(judges))
	lines := make([]Line, 0, len(countedLimits))
	inPrint := false // whether a limit that was read is exceeded
	for _, j := range judges {
		var f Finding
		f, lines = w.finding(j, lines)
		r.Findings = append(r.Findings, f)
		r.Verdict = worse(r.Verdict, f.Verdict)
		inPrint = inPrint || f.Verdict == Exceeded && !f.FromMemory
	}
	r.FromMemory = r.Verdict == Exceeded && !inPrint
	r.Next = r.next()
	first, _ := record.First()
	r.Cautions = r.cautions(first.At)
	return r, nil
}

// worse is the worse of two verdicts: a passed limit is passed whatever lies in a gap.
func worse(a, b Verdict) Verdict {
	if a == Exceeded || b == Exceeded {
		return Exceeded
	}
	if a == CannotTell || b == CannotTell {
		return CannotTell
	}
	return Within
}

// finding is what one judge finds; its lines are appended to those of the report.
func (w *walk) finding(j judge, lines []Line) (Finding, []Line) {
	f := Finding{Rule: j.rule, Hazard: j.hazard, Used: j.share(w.total), Verdict: Within}
	switch {
	case !j.met(w.total):
		f.Verdict = Exceeded
		f.ExceededAt = w.lastKept(j.met)
	case w.unknown > 0:
		f.Verdict = CannotTell
	}
	n := len(lines)
	for i := range j.limits {
		if c := &j.limits[i]; j.applies(w.total, c) {
			lines = append(lines, w.line(j, c, f.Used))
		}
	}
	f.Lines = lines[n:len(lines):len(lines)]
	f.FromMemory = f.Verdict == Exceeded && !j.readExceeded(f.Lines)
	return f, lines
}

func (w *walk) line(j judge, c *counted, share units.Ratio) Line {
	line := Line{Limit: c.Limit, Used: j.used(w.total, c)}
	switch {
	case line.Used > c.Allowed:
		line.Passed = true
		line.PassedAt = w.lastKept(func(l ledger) bool { return j.used(l, c) <= c.Allowed })
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
	return time.Duration(part(int64(allowed), int64(units.One-used), int64(units.One)))
}

// hours is the time above each threshold.
func (w *walk) hours() []Hours {
	all := make([]Hours, 0, len(thresholds))
	top := cellAt(units.Fahrenheit(guideTop))
	for _, t := range thresholds {
		h := Hours{Above: units.Fahrenheit(t.over), Citation: t.citation}
		first := firstAbove(h.Above)
		h.Time = w.total.in(span{first, top})
		if w.total.above(first) > 0 {
			h.Ever = true
			h.First = w.lastKept(func(l ledger) bool { return l.above(first) == 0 })
		}
		all = append(all, h)
	}
	return all
}
