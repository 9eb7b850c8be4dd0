package keeping

import (
	"time"

	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
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

var jarSigns = word.List[JarSign]{What: "sign of a jar", Words: []string{
	"the lid is not sealed", "the lid bulges", "streaks of dried food from the top of the jar", "bubbles rise",
	"liquid spurts when it is opened", "it smells unnatural", "mould", "it leaks",
	"the liquid is low after the processing",
	"crystals like glass: magnesium ammonium phosphate",
}}

// ParseJarSign reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseJarSign(s string) (JarSign, error) { return jarSigns.Parse(s) }

// String is the sign in words: "the lid bulges"; "not stated" when it is not set.
func (s JarSign) String() string { return jarSigns.Of(s) }

// MarshalText is String as bytes, empty when the sign is not set; an unknown one is a units.UnknownError.
func (s JarSign) MarshalText() ([]byte, error) { return jarSigns.Marshal(s) }

// UnmarshalText is ParseJarSign, and the empty text is a sign that is not set.
func (s *JarSign) UnmarshalText(text []byte) error { return jarSigns.Unmarshal(text, s) }

// JarAction is what a sign demands. The zero JarAction is not set.
type JarAction uint8

// The actions, from the least. NoAction is that nothing wrong is to be seen, and no proof that nothing is.
const (
	NoAction        JarAction = iota + 1
	ProcessOrChill            // within 24 h of the canning: process again in full, freeze, or chill and eat soon
	DiscardShut               // untasted and unopened, bagged, in the bin
	BoilThenDiscard           // untasted: open or leaking, boil 30 min under an inch of water, then discard
)

var jarActions = word.List[JarAction]{What: "action on a jar", Words: []string{
	"no action", "process again or chill", "discard shut", "boil, then discard",
}}

// ParseJarAction reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseJarAction(s string) (JarAction, error) { return jarActions.Parse(s) }

// String is the action in a few words: "discard shut"; "not stated" when it is not set.
func (a JarAction) String() string { return jarActions.Of(a) }

// MarshalText is String as bytes, empty when the action is not set; an unknown one is a units.UnknownError.
func (a JarAction) MarshalText() ([]byte, error) { return jarActions.Marshal(a) }

// UnmarshalText is ParseJarAction, and the empty text is an action that is not set.
func (a *JarAction) UnmarshalText(text []byte) error { return jarActions.Unmarshal(text, a) }

// Instruction is the action in a whole sentence for whoever holds the jar; empty for one that is not known.
func (a JarAction) Instruction() string {
	switch a {
	case NoAction:
		return "Nothing is to be done for this sign."
	case ProcessOrChill:
		return "Process it again with a new lid for the full time, or freeze it, " +
			"or refrigerate it and eat it within several days."
	case DiscardShut:
		return "Do not open or taste it: bag the jar and put it in the bin, out of reach of people and animals."
	case BoilThenDiscard:
		return "Do not taste it: boil jar and food for 30 min under an inch (2.5 cm) of water, then discard both."
	}
	return ""
}

// The rules of the signs.
const (
	RuleLidUnsealed    verdict.Rule = "keeping.jar.lid-unsealed"
	RuleLidBulging     verdict.Rule = "keeping.jar.lid-bulging"
	RuleDriedFood      verdict.Rule = "keeping.jar.dried-food"
	RuleRisingBubbles  verdict.Rule = "keeping.jar.rising-bubbles"
	RuleSpurtingLiquid verdict.Rule = "keeping.jar.spurting-liquid"
	RuleOffOdour       verdict.Rule = "keeping.jar.off-odour"
	RuleMould          verdict.Rule = "keeping.jar.mould"
	RuleLeaking        verdict.Rule = "keeping.jar.leaking"
	RuleLowLiquid      verdict.Rule = "keeping.jar.low-liquid"
	RuleCrystals       verdict.Rule = "keeping.jar.crystals"
)

// SpoilageSign is one sign and what it demands. ID is the Rule of the finding about it.
type SpoilageSign struct {
	ID       verdict.Rule
	Sign     JarSign
	Action   JarAction
	Citation cite.Citation
}

// SpoilageSigns returns every published sign, what to look for before a jar is opened, while it is and after; and two
// that are harmless. The slice is the caller's own.
func SpoilageSigns() []SpoilageSign { return append([]SpoilageSign(nil), jarSignTable[:]...) }

// processAgain is how long after its canning a jar may be processed again.
const processAgain = 24 * time.Hour

var (
	spoiledFood  = chain.ReadIn(cite.USDAGuide1Rev1994, "spoiled food")
	unsealedLate = chain.ReadIn(cite.AskExtension889422, "unsealed jars after 24 hours; also answer 475755")
	unsealed     = chain.ReadIn(cite.MSUEPreservingFoodSafely1997, "item 01600593")
	lowLiquid    = chain.ReadIn(cite.MSUEPreservingFoodSafely1997, "item 01600950")
	crystals     = chain.ReadIn(cite.USDAGuide5Rev1994, "Fish")
)

// jarSignTable has the signs in the order of JarSign.
var jarSignTable = [...]SpoilageSign{
	{RuleLidUnsealed, LidUnsealed, ProcessOrChill, unsealed},
	{RuleLidBulging, LidBulging, DiscardShut, spoiledFood},
	{RuleDriedFood, DriedFood, DiscardShut, spoiledFood},
	{RuleRisingBubbles, RisingBubbles, DiscardShut, spoiledFood},
	{RuleSpurtingLiquid, SpurtingLiquid, BoilThenDiscard, spoiledFood},
	{RuleOffOdour, OffOdour, BoilThenDiscard, spoiledFood},
	{RuleMould, Mould, BoilThenDiscard, spoiledFood},
	{RuleLeaking, Leaking, BoilThenDiscard, spoiledFood},
	{RuleLowLiquid, LowLiquid, NoAction, lowLiquid},
	{RuleCrystals, Crystals, NoAction, crystals},
}
