package keeping

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Standing is where food stands in a keeping time. The zero Standing is that nobody has published one.
type Standing uint8

// The standings, from the best that can be said.
const (
	NotPublished Standing = iota
	KeptWithin            // not past the shorter end of the printed time
	KeptToTheEnd          // past the shorter end and not the longer: use it now
	KeptTooWarm           // warmer than the time is printed for, whatever the time
	KeptBeyond            // past the longer end
)

// String is the standing in words.
func (s Standing) String() string {
	switch s {
	case NotPublished:
		return "not published"
	case KeptWithin:
		return "within"
	case KeptToTheEnd:
		return "past the shorter end"
	case KeptTooWarm:
		return "too warm for the rule"
	case KeptBeyond:
		return "beyond"
	}
	return "unknown standing"
}

// Line is one rule held against the food. Left is what remains to the shorter end, zero when nothing does, when it was
// too warm, or where there is no end.
type Line struct {
	Concern  Concern
	Rule     Rule
	Standing Standing
	Left     time.Duration
}

// Report is a food held against every rule. Safety and Quality are the worst standing among their own lines, so that
// the strictest source decides; the lines name the others. Only Safety says whether to eat it, and only KeptWithin is a
// yes.
type Report struct {
	Keeping  Times
	At       units.Temperature
	Held     time.Duration
	Safety   Standing
	Quality  Standing
	Lines    []Line
	Cautions []cite.Caution
}

// Check holds a food that was kept at a temperature for a time against every published rule. At is the warmest it was
// kept; the temperature must be -60 to 60 °C and the time 0 to 20 years: otherwise a units.RangeError, as for Find. A
// time exactly at a printed end is still within it. Warmer or longer never stands better.
func Check(food Food, storage Storage, at units.Temperature, held time.Duration) (Report, error) {
	k, err := Find(food, storage)
	if err != nil {
		return Report{}, err
	}
	if err := units.CheckTemperature("warmest in storage", at, units.Celsius(-60), units.Celsius(60)); err != nil {
		return Report{}, err
	}
	if err := units.CheckDuration("time kept", held, 0, 20*chain.Year); err != nil {
		return Report{}, err
	}
	c := Report{Keeping: k, At: at, Held: held, Cautions: append([]cite.Caution(nil), k.Cautions...)}
	for _, r := range k.Safety {
		c.Safety = max(c.Safety, c.add(Safety, r.Rule))
	}
	for _, r := range k.Quality {
		c.Quality = max(c.Quality, c.add(Quality, r.Rule))
	}
	c.Cautions = append(c.Cautions, c.verdictCautions()...)
	return c, nil
}

// verdictCautions are what must be known of the standing, beside those of the rules.
func (c Report) verdictCautions() (all []cite.Caution) {
	switch {
	case c.Safety == KeptBeyond:
		all = append(all, pastKeeping)
	case c.Safety == KeptTooWarm && c.Keeping.Storage == InFreezer && !c.At.Above(fishThaws):
		all = append(all, warmFreezerKept)
	case c.Safety == KeptTooWarm && c.coldEnoughForSome():
		all = append(all, strictestColder)
	case c.Safety == KeptTooWarm:
		all = append(all, tooWarmToKeep)
	}
	if c.decidedFromMemory() {
		all = append(all, keptFromMemory)
	}
	if c.Keeping.Food != HomeCanned {
		return all
	}
	switch {
	case !c.At.Above(freezingPoint):
		all = append(all, jarFrozen)
	case c.At.Above(hottestShelf):
		all = append(all, hotShelf)
	}
	return all
}

// decidedFromMemory reports whether every rule of safety that stands worst is one that nobody read.
func (c Report) decidedFromMemory() bool {
	for _, l := range c.Lines {
		if l.Concern == Safety && l.Standing == c.Safety && !l.Rule.Citation.Unverified() {
			return false
		}
	}
	return c.Safety != NotPublished
}

// coldEnoughForSome reports whether a rule of safety is kept that others were too warm for.
func (c Report) coldEnoughForSome() bool {
	for _, l := range c.Lines {
		if l.Concern == Safety && (l.Standing == KeptWithin || l.Standing == KeptToTheEnd) {
			return true
		}
	}
	return false
}

func (c *Report) add(concern Concern, r Rule) Standing {
	line := Line{Concern: concern, Rule: r, Standing: r.standing(c.At, c.Held)}
	if line.Standing == KeptWithin && !r.NoEnd {
		line.Left = r.Low - c.Held
	}
	c.Lines = append(c.Lines, line)
	return line.Standing
}

func (r Rule) standing(at units.Temperature, held time.Duration) Standing {
	switch {
	case !r.NoEnd && held > r.High:
		return KeptBeyond
	case at.Above(r.AtMost) || r.Under && at == r.AtMost:
		return KeptTooWarm
	case !r.NoEnd && held > r.Low:
		return KeptToTheEnd
	}
	return KeptWithin
}

var (
	freezingPoint = units.Celsius(0)
	fishThaws     = units.Fahrenheit(28) // the colder of the printed figures, see freezing.Fishes
	hottestShelf  = units.Fahrenheit(95)
)

var (
	pastKeeping = cite.Caution{
		Text:     "past the longest time of a published rule: do not eat it; neither smell nor taste tells whether it is safe, and heat does not mend it",
		Citation: cite.Citation{Where: "food past its keeping time", Basis: cite.Practice},
	}
	tooWarmToKeep = cite.Caution{
		Text:     "warmer than the keeping times are printed for: the hours above that temperature count by Exposure, and where no record of them exists discard it",
		Citation: kitchenRule,
	}
	warmFreezerKept = cite.Caution{
		Text:     "warmer than the 0 °F (-17.8 °C) that the times of the freezer are printed for: make it colder; the quality goes sooner, as JudgeStore says, and what thawed counts by Exposure",
		Citation: federalFrozen,
	}
	strictestColder = cite.Caution{
		Text:     "too warm for the strictest source and not for the others: make it colder, and go by the shortest time",
		Citation: cite.Citation{Where: "sources that differ in temperature", Basis: cite.Practice},
	}
	keptFromMemory = cite.Caution{Text: "the rule that decides here is from memory, as its line says: the rules that were read allow more"}
	jarFrozen      = cite.Caution{
		Text:     "freezing does a jar no harm unless its seal breaks: let it thaw, look at the seal, and treat a broken one as SpoilageSigns says; it softens the fish",
		Citation: chain.ReadIn(cite.USDAGuide1Rev1994, "Storing"),
	}
)
