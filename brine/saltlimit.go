package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// SaltLimit is one published least water phase salt of refrigerated smoked fish, measured in the loin. A limit with
// Nitrite holds only in a licensed process that doses and measures sodium nitrite; nothing here doses it.
type SaltLimit struct {
	ID       string
	Least    units.Ratio
	Pack     Pack
	Smoked   Smoking
	Nitrite  bool
	Fish     string // what it applies to
	Place    string // where, or who says so
	Citation cite.Citation
}

// SaltLimits returns the published limits, the strictest without nitrite first. Air-pack figures differ from place to
// place and are never merged with those for low-oxygen packs. The slice is the caller's own.
func SaltLimits() []SaltLimit { return append([]SaltLimit(nil), saltLimits[:]...) }

// DefaultSaltLimit returns 3.5 % without nitrite, the strictest of SaltLimits and the only target this library takes
// by itself, whatever the pack. It does not make fish keep without cold, and local rules go before it.
func DefaultSaltLimit() SaltLimit { return saltLimits[0] }

// StrictestSaltLimit returns the highest published limit without nitrite that can apply to fish smoked and packed so;
// what is not stated, by the fish or by the rule, can apply, and what is unknown counts as not stated. With both open
// it is 3.5 %, the DefaultSaltLimit. A limit with nitrite never comes out of it: a factor of ten in nitrite is
// dangerous, and fish at home needs none.
func StrictestSaltLimit(smoked Smoking, pack Pack) SaltLimit {
	strictest := 0
	for i, l := range saltLimits {
		packed := l.Pack == pack || l.Pack == 0 || !packs.Known(pack)
		applies := packed && (l.Smoked == smoked || l.Smoked == 0 || !smokings.Known(smoked))
		if applies && !l.Nitrite && (strictest == 0 || l.Least > saltLimits[strictest-1].Least) {
			strictest = i + 1
		}
	}
	return saltLimits[strictest-1]
}
