package keeping

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// JarSign is what can be seen, heard or smelt of a home-canned jar. The zero JarSign is not set.
type JarSign uint8

// The signs.
const (
	LidUnsealed JarSign = iota + 1
	LidBulging
	DriedFood // streaks that start at the top of the jar
	RisingBubbles
	SpurtingLiquid // on opening
	OffOdour
	Mould
	Leaking
	LowLiquid // after the processing
	Crystals  // like glass
)

// JarAction is what a sign demands. The zero JarAction is none: that nothing is wrong to be seen, and no proof that
// nothing is.
type JarAction uint8

// The actions, from the least.
const (
	NoAction        JarAction = iota
	ProcessOrChill            // within 24 h of the canning: process again in full, freeze, or refrigerate and eat within several days
	DiscardShut               // untasted and unopened, bagged, in the bin
	BoilThenDiscard           // untasted: open or leaking, boil 30 min under an inch of water, then discard
)

// processAgain is how long after its canning a jar may be processed again.
const processAgain = 24 * time.Hour

// String is the action in words.
func (a JarAction) String() string {
	switch a {
	case NoAction:
		return "no action"
	case ProcessOrChill:
		return "process again with a new lid for the full time, or freeze, or refrigerate and eat within several days"
	case DiscardShut:
		return "do not open or taste: bag the jar and put it in the bin, out of reach of people and animals"
	case BoilThenDiscard:
		return "do not taste: boil jar and food for 30 min under an inch of water, then discard both"
	}
	return "unknown action"
}

// SpoilageSign is one sign, in words, and what it demands.
type SpoilageSign struct {
	Sign     JarSign
	Text     string
	Action   JarAction
	Citation cite.Citation
}

// SpoilageSigns returns every published sign, what to look for before a jar is opened, while it is and after; and two
// that are harmless. The slice is the caller's own.
func SpoilageSigns() []SpoilageSign { return append([]SpoilageSign(nil), jarSignTable[:]...) }

// String is the sign in words.
func (s JarSign) String() string {
	for _, row := range jarSignTable {
		if row.Sign == s {
			return row.Text
		}
	}
	return "unknown sign"
}

// JarReport is what the signs of a jar demand together: the gravest of them. Signs are those that were given, as
// published.
type JarReport struct {
	Action   JarAction
	Signs    []SpoilageSign
	Cautions []cite.Caution
}

// CheckJar returns what the signs on a home-canned jar demand together. SinceCanned is the time since its process
// ended, 0 to 20 years: within 24 h a lid that did not seal may be processed again, later, or where the time is left
// out, the jar is discarded. A sign that is not known and a time out of range are a units.RangeError. No sign demands
// nothing and proves nothing: botulinum toxin shows none. How long to boil before anyone tastes, at an altitude, is
// answered by BoilBeforeEating of pressure/process.
func CheckJar(sinceCanned units.Stated[time.Duration], signs ...JarSign) (JarReport, error) {
	if err := units.CheckDuration("time since the canning", sinceCanned.Value, 0, 20*chain.Year); err != nil {
		return JarReport{}, err
	}
	var j JarReport
	for _, sign := range signs {
		if sign == 0 || int(sign) > len(jarSignTable) {
			return JarReport{}, units.RangeError{What: "sign of a jar", Got: sign.String(), Low: jarSignTable[0].Text, High: jarSignTable[len(jarSignTable)-1].Text}
		}
		row := jarSignTable[sign-1]
		if sign == LidUnsealed && (!sinceCanned.Given || sinceCanned.Value > processAgain) {
			row.Action, row.Citation = BoilThenDiscard, unsealedLate
		}
		j.Signs = append(j.Signs, row)
		j.Action = max(j.Action, row.Action)
	}
	j.Cautions = append(j.Cautions, noSign, boilBefore)
	if j.Action >= DiscardShut {
		j.Cautions = append(j.Cautions, discardClean)
	}
	return j, nil
}

var (
	spoiledFood  = chain.ReadIn(cite.USDAGuide1Rev1994, "spoiled food")
	unsealedLate = chain.ReadIn(cite.AskExtension889422, "unsealed jars after 24 hours; also answer 475755")
)

// jarSignTable has the signs in the order of JarSign.
var jarSignTable = [...]SpoilageSign{
	{LidUnsealed, "the lid is not sealed", ProcessOrChill, chain.ReadIn(cite.MSUEPreservingFoodSafely1997, "item 01600593")},
	{LidBulging, "the lid bulges", DiscardShut, spoiledFood},
	{DriedFood, "streaks of dried food from the top of the jar", DiscardShut, spoiledFood},
	{RisingBubbles, "bubbles rise", DiscardShut, spoiledFood},
	{SpurtingLiquid, "liquid spurts when it is opened", BoilThenDiscard, spoiledFood},
	{OffOdour, "it smells unnatural", BoilThenDiscard, spoiledFood},
	{Mould, "mould", BoilThenDiscard, spoiledFood},
	{Leaking, "it leaks", BoilThenDiscard, spoiledFood},
	{LowLiquid, "the liquid is low after the processing", NoAction, chain.ReadIn(cite.MSUEPreservingFoodSafely1997, "item 01600950")},
	{Crystals, "crystals like glass: magnesium ammonium phosphate", NoAction, chain.ReadIn(cite.USDAGuide5Rev1994, "Fish")},
}

var (
	noSign = cite.Caution{
		Text:     "botulinum toxin has neither smell, taste nor sight: a jar without a sign is safe only by its process and its record",
		Citation: cite.Citation{Where: "jars without a sign", Basis: cite.Practice},
	}
	boilBefore = cite.Caution{
		Text:     "where any step of the canning is in doubt, boil before anyone tastes, for the minutes that the canning guide prints for the altitude; it does not mend a jar with a sign",
		Citation: chain.ReadIn(cite.USDAGuide1Rev1994, "For Safety's Sake"),
	}
	discardClean = cite.Caution{
		Text:     "wear gloves; whatever the food touched is cleaned with a solution of bleach, as the guide describes",
		Citation: cite.Citation{Source: cite.USDAGuide1Rev2015, Where: "spoiled food, bleach method", Basis: cite.Recalled},
	}
)
