package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// ChamberRule is one published figure on the air of the smoker or the time in it. What a rule does not say is not set: AtLeast and AtMost are
// air temperatures, Within the longest time.
type ChamberRule struct {
	ID              string
	AtLeast, AtMost units.Temperature
	Within          time.Duration
	Of              string // what it is a rule of
	Place           string
	Citation        cite.Citation
}

// ChamberRules returns the published figures. The slice is the caller's own.
func ChamberRules() []ChamberRule { return append([]ChamberRule(nil), chamberRules[:]...) }

// chamber is a rule of the table by its ID.
func chamber(id string) ChamberRule {
	for _, r := range chamberRules {
		if r.ID == id {
			return r
		}
	}
	return ChamberRule{}
}
