package coldchain

import (
	"math"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Forecast is how long a rule, for table A-2 one hazard, still holds if the fish stays exactly as warm as
// it was at the last reading. Runs is true where time at that temperature counts: then the rule is last
// kept after Left, at At. Without Runs this temperature never uses it up, and Left and At mean
// nothing. Where Verdict is NotMet, nothing is left, and At is when that was. CannotTell means that a gap
// may have used some or all of Left already.
type Forecast struct {
	Rule    Rule
	Hazard  Hazard
	Verdict verdict.Verdict `wire:"always"`
	Spared  Spared          // why the rule does not decide, where it does not
	// FromMemory tells that the rule has a limit that was not read in print: check it before relying on Left.
	FromMemory bool
	Runs       bool
	Left       time.Duration
	At         time.Duration
}

// MarshalJSON writes the forecast as an app shows it.
func (f Forecast) MarshalJSON() ([]byte, error) { return wire.Marshal(f) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (f *Forecast) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, f) }

// AtThisRate returns the forecast of every rule at the temperature of the last reading, in the order of
// Report's findings; nothing before the first reading. Left is rounded down to the nanosecond: a reading at At
// is within, one nanosecond later it is exceeded. Fish that grows warmer has less: ask again at each reading.
func (r Running) AtThisRate() []Forecast {
	if r.seen.Taken == 0 {
		return nil
	}
	last := r.seen.Last
	horizon := time.Duration(0)
	for i := range countedLimits {
		horizon = max(horizon, countedLimits[i].Allowed+1)
	}
	horizon = min(horizon, math.MaxInt64-last.At)
	here, _ := interval{int64(horizon), chain.Quanta(last.Value), chain.Quanta(last.Value)}.pieces(nil, 1)
	all := make([]Forecast, 0, len(r.judges))
	for _, j := range r.judges {
		all = append(all, r.forecast(j, last.At, here[0]))
	}
	return all
}

// forecast is that of one judge for a stretch to come.
func (r Running) forecast(j judge, now time.Duration, p piece) Forecast {
	f := Forecast{Rule: j.rule, Hazard: j.hazard, Verdict: verdict.Met, Spared: j.spared, FromMemory: j.fromMemory()}
	if at := r.exceededAt(j); at != stillKept {
		f.Verdict, f.At = verdict.NotMet, at
		return f
	}
	if worst := r.total.blind(&r.seen); r.unknown > 0 || r.seen.doubtful() || worst != nil && !j.met(worst) {
		f.Verdict = verdict.CannotTell
	}
	l, kitchen := append(ledger(nil), r.total...), r.terms.stayAt(now).kitchen()
	l.enter(p.cell, p.length, kitchen)
	if !j.met(l) {
		f.Runs, f.Left = true, l.kept(p, kitchen, j.met)
		f.At = now + f.Left
	}
	return f
}

// fromMemory reports whether a limit of the rule was not read in print.
func (j judge) fromMemory() bool {
	for i := range j.limits {
		if j.limits[i].Citation.Unverified() {
			return true
		}
	}
	return false
}
