package smoke

import (
	"time"

	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// ChamberRuleID names a published figure on the smoker. The zero ChamberRuleID is not stated.
type ChamberRuleID uint8

// The published figures, in the order of ChamberRules.
const (
	Cold90 ChamberRuleID = iota + 1 // cold smoke up to 90 °F for 20 h
	Cold50                          // cold smoke up to 50 °F for 24 h
	ColdOntario
	ColdUK
	DryCold     // drying before cold smoke
	ToOven      // from the smoker to the finishing oven
	FinishAir   // air that finishes the fish
	ReachIn6    // the core at 160 °F
	WholeFish12 // the longest hot smoke
	LightSmoke  // of fish for jars
)

var chamberRuleIDs = word.List[ChamberRuleID]{What: "chamber rule", Words: []string{
	"COLD-90-20", "COLD-50-24", "COLD-ON", "COLD-UK", "DRY-COLD", "HOLD-2H", "AIR-200-225", "REACH-6-8", "TIME-12", "LIGHT-140-160",
}}

// ParseChamberRuleID reads a name that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseChamberRuleID(s string) (ChamberRuleID, error) { return chamberRuleIDs.Parse(s) }

// String is the name of the rule: "COLD-90-20".
func (id ChamberRuleID) String() string { return chamberRuleIDs.Of(id) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (id ChamberRuleID) MarshalText() ([]byte, error) { return chamberRuleIDs.Marshal(id) }

// UnmarshalText is ParseChamberRuleID, and the empty text is one that is not set.
func (id *ChamberRuleID) UnmarshalText(text []byte) error { return chamberRuleIDs.Unmarshal(text, id) }

// ChamberRule is one published figure on the air of the smoker or the time in it. What a rule does not say is not set:
// AtLeast and AtMost are air temperatures in the source's own
// scale, Within the longest time.
type ChamberRule struct {
	ID              ChamberRuleID
	AtLeast, AtMost units.Temperature
	Printed         units.Figure // AtLeast and AtMost as they are printed, in both scales
	Within          time.Duration
	OrWithin        time.Duration // the longer time, where the source prints two
	Of              string        // what it is a rule of
	Place           string
	Citation        cite.Citation
}

// ChamberRules returns the published figures. The slice is the caller's own.
func ChamberRules() []ChamberRule { return append([]ChamberRule(nil), chamberRules[:]...) }

// FindChamberRule returns the published figure with this name. One that is not stated is a units.UnsetError, any other
// unknown one a units.UnknownError.
func FindChamberRule(id ChamberRuleID) (ChamberRule, error) {
	if err := chamberRuleIDs.Check(id); err != nil {
		return ChamberRule{}, err
	}
	return chamberRules[id-1], nil
}
