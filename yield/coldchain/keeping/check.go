package keeping

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// The rules that food in storage is held against. Each published time is a rule of the one or the other; its line says
// which.
const (
	RuleSafetyTime  verdict.Rule = "keeping.safety-time"
	RuleQualityTime verdict.Rule = "keeping.quality-time"
)

// Report is a food held against every published time. Its verdict and findings are of safety, the strictest source
// deciding: Met within the shorter end of every printed time, Differs between the ends of one (use it now), NotMet past
// the longer end or warmer than a time is printed for, NotPublished where there is none. Quality is the same of
// quality, apart: it never says whether to eat the food. Lines are all the rules.
type Report struct {
	verdict.Report
	Quality verdict.Report
	Food    Food
	Storage Storage
	At      units.Temperature
	Held    time.Duration `wire:"always"`
	Lines   []Line
}

// MarshalJSON writes the report as an app shows it.
func (r Report) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *Report) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// Line is one rule held against the food. Kind says of a verdict that is not Met whether it was kept too warm or too
// long; Left is what remains to the shorter end, zero when nothing does, when it was too warm, or where there is no
// end.
type Line struct {
	Concern Concern
	Rule    Rule
	Verdict verdict.Verdict `wire:"always"`
	Kind    verdict.Kind
	Left    time.Duration
}

// Check holds a food that was kept at a temperature for a time against every published rule. At is the warmest it was
// kept; the temperature must be -60 to 60 °C and the time 0 to 20 years: otherwise a units.RangeError; food and storage
// as for Find. A time exactly at a printed end is still within it. Warmer or longer never stands better.
func Check(food Food, storage Storage, at units.Temperature, held time.Duration) (Report, error) {
	times, err := Find(food, storage)
	if err != nil {
		return Report{}, err
	}
	if err := units.CheckTemperature("warmest in storage", at, units.Celsius(-60), units.Celsius(60)); err != nil {
		return Report{}, err
	}
	if err := units.CheckDuration("time kept", held, 0, 20*chain.Year); err != nil {
		return Report{}, err
	}
	r := Report{Food: food, Storage: storage, At: at, Held: held}
	if n := len(times.Safety) + len(times.Quality); n > 0 {
		r.Lines = make([]Line, 0, n)
	}
	var safety, quality []verdict.Finding
	for i := range times.Safety {
		safety = r.hold(safety, Safety, &times.Safety[i].Rule)
	}
	for i := range times.Quality {
		quality = r.hold(quality, Quality, &times.Quality[i].Rule)
	}
	r.Report = verdict.Of(safety, r.standingCautions(times.Cautions))
	r.Quality = verdict.Of(quality, nil)
	if len(times.Safety) == 0 {
		r.Verdict = verdict.NotPublished
	}
	if len(times.Quality) == 0 {
		r.Quality.Verdict = verdict.NotPublished
	}
	return r, nil
}

// hold holds the food against a rule, and adds what it finds.
func (r *Report) hold(all []verdict.Finding, concern Concern, rule *Rule) []verdict.Finding {
	f := verdict.Finding{Rule: RuleSafetyTime, What: "time kept", Citation: rule.Citation}
	if concern == Quality {
		f.Rule = RuleQualityTime
	}
	line := Line{Concern: concern, Rule: *rule, Verdict: verdict.Met}
	switch {
	case !rule.NoEnd && r.Held > rule.High:
		line.Verdict, line.Kind = verdict.NotMet, verdict.TooLong
		f.Wanted, f.By = units.AtMost(rule.High), units.AmountOf(r.Held-rule.High)
	case r.At.Above(rule.AtMost) || rule.Under && r.At == rule.AtMost:
		line.Verdict, line.Kind = verdict.NotMet, verdict.TooWarm
		f.What, f.Wanted = "warmest in storage", atMost(rule.AtMost, rule.Under)
		if r.At.Above(rule.AtMost) {
			f.By = units.AmountOf(r.At).Minus(units.AmountOf(rule.AtMost))
		}
	case !rule.NoEnd && r.Held > rule.Low:
		line.Verdict, line.Kind = verdict.Differs, verdict.TooLong
		f.Wanted, f.By = units.AtMost(rule.Low), units.AmountOf(r.Held-rule.Low)
	case !rule.NoEnd:
		line.Left = rule.Low - r.Held
	}
	r.Lines = append(r.Lines, line)
	if line.Verdict == verdict.Met {
		return all
	}
	f.Kind, f.Verdict, f.Stated = line.Kind, line.Verdict, units.Exactly(r.Held)
	if line.Kind == verdict.TooWarm {
		f.Stated = units.Exactly(r.At)
	}
	return chain.SayOnce(all, f)
}

// atMost is the figure of a limit upward, which itself may be too warm already.
func atMost(t units.Temperature, under bool) units.Figure {
	if under {
		return units.LessThan(t)
	}
	return units.AtMost(t)
}

// standingCautions are the cautions of the rules and those of how the food stands in them.
func (r *Report) standingCautions(all []cite.Caution) []cite.Caution {
	worst := r.worst()
	switch {
	case worst == keptBeyond:
		all = append(all, pastKeeping)
	case worst == keptTooWarm && r.Storage == InFreezer && !r.At.Above(fishThaws):
		all = append(all, warmFreezerKept)
	case worst == keptTooWarm && r.coldEnoughForSome():
		all = append(all, strictestColder)
	case worst == keptTooWarm:
		all = append(all, tooWarmToKeep)
	}
	if r.decidedFromMemory(worst) {
		all = append(all, keptFromMemory)
	}
	if r.Food != HomeCanned {
		return all
	}
	switch {
	case !r.At.Above(freezingPoint):
		all = append(all, jarFrozen)
	case r.At.Above(hottestShelf):
		all = append(all, hotShelf)
	}
	return all
}

// standing is how food stands in a keeping time, the worse the greater; zero where none is published.
type standing uint8

const (
	keptWithin   standing = iota + 1
	keptToTheEnd          // past the shorter end and not the longer
	keptTooWarm           // warmer than the time is printed for, whatever the time
	keptBeyond            // past the longer end
)

func (l *Line) standing() standing {
	switch {
	case l.Verdict == verdict.Met:
		return keptWithin
	case l.Verdict == verdict.Differs:
		return keptToTheEnd
	case l.Kind == verdict.TooWarm:
		return keptTooWarm
	}
	return keptBeyond
}

// worst is how the food stands in the worst of the rules of safety.
func (r *Report) worst() (worst standing) {
	for i := range r.Lines {
		if r.Lines[i].Concern == Safety {
			worst = max(worst, r.Lines[i].standing())
		}
	}
	return worst
}

// decidedFromMemory reports whether every rule of safety that stands worst is one that was not read.
func (r *Report) decidedFromMemory(worst standing) bool {
	for i := range r.Lines {
		l := &r.Lines[i]
		if l.Concern == Safety && l.standing() == worst && !l.Rule.Citation.Unverified() {
			return false
		}
	}
	return worst != 0
}

// coldEnoughForSome reports whether a rule of safety is kept that others were too warm for.
func (r *Report) coldEnoughForSome() bool {
	for i := range r.Lines {
		if r.Lines[i].Concern == Safety && r.Lines[i].standing() <= keptToTheEnd {
			return true
		}
	}
	return false
}

var (
	freezingPoint = units.Celsius(0)
	fishThaws     = units.Fahrenheit(28) // the colder of the printed figures, see freezing.Fishes
	hottestShelf  = units.Fahrenheit(95)
)
