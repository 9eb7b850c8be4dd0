package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// SaltLimit is one published least water phase salt of refrigerated smoked fish, measured in the loin. A limit with
// Nitrite holds only in a licensed process that doses and measures sodium nitrite; nothing here doses it.
type SaltLimit struct {
	ID       SaltLimitID
	Least    units.Ratio
	Pack     Pack
	Smoked   Smoking
	Nitrite  bool
	Fish     string // what it applies to
	Place    string // where, or who says so
	Citation cite.Citation
}

// SaltLimitID names a SaltLimit.
type SaltLimitID string

// The limits of SaltLimits.
const (
	FDALetter          SaltLimitID = "WPS-US-VAC"
	FDAGuide           SaltLimitID = "WPS-FDA-CH13"
	MaineVacuum        SaltLimitID = "WPS-ME-VAC"
	TorryAdvice        SaltLimitID = "WPS-TORRY"
	MichiganAir        SaltLimitID = "WPS-MI-AIR"
	GreatLakesModel    SaltLimitID = "WPS-GL-MODEL"
	MaineAir           SaltLimitID = "WPS-ME-AIR"
	FDALetterNitrite   SaltLimitID = "WPS-US-VAC-NIT"
	FDAGuideNitrite    SaltLimitID = "WPS-FDA-CH13-NIT"
	MaineVacuumNitrite SaltLimitID = "WPS-ME-VAC-NIT"
)

// FindSaltLimit returns the limit with an ID; any other is a units.UnknownError.
func FindSaltLimit(id SaltLimitID) (SaltLimit, error) {
	unknown := units.UnknownError{What: "limit of water phase salt", Got: string(id)}
	for _, l := range saltLimits {
		if l.ID == id {
			return l, nil
		}
		unknown.Known = append(unknown.Known, string(l.ID))
	}
	return SaltLimit{}, unknown
}

// SaltLimits returns the published limits, the strictest without nitrite first. Air-pack figures differ from place
// to place and are never merged with those for low-oxygen packs. The slice is the caller's own.
func SaltLimits() []SaltLimit { return append([]SaltLimit(nil), saltLimits[:]...) }

// DefaultSaltLimit returns 3.5 % without nitrite, the strictest of SaltLimits and the only target this library takes
// by itself, whatever the pack. It does not make fish keep without cold, and local rules go before it.
func DefaultSaltLimit() SaltLimit { return saltLimits[0] }

// StrictestSaltLimit returns the highest published limit without nitrite that can apply to fish smoked and packed
// so; what is not stated, by the fish or by the rule, can apply, and what is unknown counts as not stated. A limit
// for hot-smoked fish counts for cold-smoked fish too, which is raw. With both open it is 3.5 %, the
// DefaultSaltLimit. A limit with nitrite never comes out of it: a factor of ten in nitrite is dangerous, and fish
// at home needs none. A weaker limit is for CheckAgainst to name.
func StrictestSaltLimit(smoked Smoking, pack Pack) SaltLimit {
	strictest := 0
	for i, l := range saltLimits {
		packed := l.Pack == pack || l.Pack == 0 || !packs.Known(pack)
		applies := packed && (l.Smoked == smoked || l.Smoked != ColdSmoked || !smokings.Known(smoked))
		if applies && !l.Nitrite && (strictest == 0 || l.Least > saltLimits[strictest-1].Least) {
			strictest = i + 1
		}
	}
	return saltLimits[strictest-1]
}
