package brine

import (
	"strconv"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Pack is how smoked fish is packed, as far as a rule says so. The zero Pack is not stated.
type Pack uint8

// The packs. A film that breathes is an air pack; a vacuum or a modified atmosphere is low in oxygen, where
// Clostridium botulinum grows.
const (
	PackNotStated Pack = iota
	AirPack
	LowOxygenPack
)

// String is the pack in words: "air pack".
func (p Pack) String() string {
	switch p {
	case PackNotStated:
		return "pack not stated"
	case AirPack:
		return "air pack"
	case LowOxygenPack:
		return "low-oxygen pack"
	}
	return "Pack(" + strconv.Itoa(int(p)) + ")"
}

// SaltLimit is one published least water phase salt of refrigerated smoked fish, measured in the loin. A limit
// with Nitrite holds only in a licensed process that doses and measures sodium nitrite; nothing here doses it.
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

// SaltLimits returns the published limits, the strictest without nitrite first. Air-pack figures differ from
// place to place and are never merged with those for low-oxygen packs. The slice is the caller's own.
func SaltLimits() []SaltLimit { return append([]SaltLimit(nil), saltLimits[:]...) }

// DefaultSaltLimit returns 3.5 % without nitrite, the strictest of SaltLimits and the only target this library
// takes by itself, whatever the pack. It does not make fish keep without cold, and local rules go before it.
func DefaultSaltLimit() SaltLimit { return saltLimits[0] }

// StrictestSaltLimit returns the highest published limit without nitrite that can apply to fish smoked and packed so; what is not stated,
// by the fish or by the rule, can apply, and what is unknown counts as not stated. With both open it is 3.5 %, the DefaultSaltLimit. A limit with nitrite never comes out
// of it: a factor of ten in nitrite is dangerous, and fish at home needs none.
func StrictestSaltLimit(smoked Smoking, pack Pack) SaltLimit {
	if smoked > ColdSmoked {
		smoked = SmokingNotStated
	}
	if pack > LowOxygenPack {
		pack = PackNotStated
	}
	var strictest SaltLimit
	for _, l := range saltLimits {
		applies := (l.Pack == pack || l.Pack == PackNotStated || pack == PackNotStated) &&
			(l.Smoked == smoked || l.Smoked == SmokingNotStated || smoked == SmokingNotStated)
		if applies && !l.Nitrite && l.Least > strictest.Least {
			strictest = l
		}
	}
	return strictest
}
