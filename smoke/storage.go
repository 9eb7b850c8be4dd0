package smoke

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Storage is what to do with smoked fish by its pack: in the refrigerator at or below AtMost for at most Days, or, when
// Days is zero, frozen. Temperature and Time are the rules that AtMost and Days are from; Time is zero when there is none.
type Storage struct {
	Pack        Pack
	AtMost      units.Temperature
	Days        int
	Temperature StorageRule
	Time        StorageRule
	Cautions    []cite.Caution
}

// MarshalJSON writes the storage as an app shows it.
func (s Storage) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (s *Storage) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// FindStorage returns the strictest home storage for a pack that was read in print. In an air pack that is 36 °F (2.2 °C)
// and 14 days. For a low-oxygen pack no home guidance for the refrigerator was found: it is frozen (Days is zero, AtMost
// that of thawing and serving), whatever its salt, which is not measured at home. A stricter rule from memory is among the
// cautions. A Pack that is not stated counts as a low-oxygen pack; an unknown one is a units.UnknownError.
func FindStorage(pack Pack) (Storage, error) {
	if err := packs.CheckIfSet(pack); err != nil {
		return Storage{}, err
	}
	s := Storage{Pack: pack}
	for _, r := range storageRules {
		if !r.Home || r.Citation.Unverified() {
			continue
		}
		if r.AtMost.IsSet() && (!s.AtMost.IsSet() || r.AtMost.Below(s.AtMost)) {
			s.AtMost, s.Temperature = r.AtMost, r
		}
		if pack == AirPack && r.Days > 0 && (s.Days == 0 || r.Days < s.Days) {
			s.Days, s.Time = r.Days, r
		}
	}
	if pack != AirPack {
		s.Cautions = append(s.Cautions, vacuumVariance, vacuumThaw, vacuumService, vacuumSalt)
	}
	s.Cautions = append(s.Cautions, stateLaw, tenDays, frozenMonths, listeriaWeek, atRisk)
	return s, nil
}

// wanted is the temperature as a recipe meets it: as printed, in both scales.
func (s Storage) wanted() units.Figure {
	return printedOr(s.Temperature.Printed, units.AtMost(s.AtMost))
}

var (
	vacuumVariance = cite.Caution{
		ID: "smoke.vacuum-freeze", Deciding: true,
		Text:     "Freeze smoked fish in a vacuum or sealed pack. No home guidance keeps it in the refrigerator, and the trade needs a variance to pack it so.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.18", Basis: cite.Read},
	}
	vacuumThaw = cite.Caution{
		ID: "smoke.vacuum-thaw", Deciding: true,
		Text:     "Open the pack before it thaws: without air, above 38 °F (3.3 °C) the time to botulinum toxin falls sharply.",
		Citation: cite.Citation{Source: cite.MSUEThawing, Where: "as summarised in a trade magazine", Basis: cite.Read},
	}
	vacuumService = cite.Caution{
		ID:       "smoke.vacuum-service",
		Text:     "Oxygen-free packs of smoked fish are not allowed in food service unless heat-processed in the pack.",
		Citation: cite.Citation{Source: cite.NewYork10NYCRR141, Where: "14-1.35", Basis: cite.Read},
	}
	vacuumSalt = cite.Caution{
		ID: "smoke.vacuum-salt",
		Text: "Where the trade sells it chilled, the water phase salt is at least 3.5 % by measurement in the loin " +
			"and the fish stays at or below 38 °F (3.3 °C).",
		Citation: cite.Citation{Source: cite.MaineRules01001Ch359, Where: "s. 2(C)(1)-(2) and s. 3(A)", Basis: cite.Read},
	}
	stateLaw = cite.Caution{
		ID:       "smoke.state-law",
		Text:     "38 °F (3.3 °C) is the law of four states for smoked fish; the home figure is colder still.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.8(1); also Maine ch. 359 s. 3(A), 10 NYCRR 14-1.35, Wisconsin ATCP 70.18(2)", Basis: cite.Read},
	}
	tenDays = cite.Caution{
		ID:       "smoke.ten-days",
		Text:     "Some extension sheets say 10 days.",
		Citation: cite.Citation{Source: cite.ExtensionSmokedKeeping, Basis: cite.Recalled},
	}
	frozenMonths = cite.Caution{
		ID:       "smoke.frozen-months",
		Text:     "Frozen it keeps its quality for 2 to 3 months.",
		Citation: cite.Citation{Source: cite.MSUEPreservingFoodSafely1997, Where: "item 01600816", Basis: cite.Read},
	}
	listeriaWeek = cite.Caution{
		ID:       "smoke.listeria-week",
		Text:     "Listeria grows in the refrigerator: a table for the trade limits ready-to-eat fish to seven days, even just above freezing.",
		Citation: cite.Citation{Source: cite.FDAHazardsGuide2020, Where: "Appendix 4, table A-2, as quoted in a secondary note", Basis: cite.Read},
	}
	atRisk = cite.Caution{
		ID: "smoke.at-risk", Deciding: true,
		Text:     "Whoever is pregnant, old or of weak immunity does not eat refrigerated smoked fish uncooked.",
		Citation: cite.Citation{Source: cite.FederalAdviceAtRisk, Where: "refrigerated smoked fish", Basis: cite.Recalled},
	}
)
