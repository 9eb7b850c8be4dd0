package smoke

import (
	"strconv"
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Pack is what smoked fish is wrapped in. The zero Pack is not stated.
type Pack uint8

// The packs. What keeps air away lets Clostridium botulinum grow.
const (
	PackNotStated Pack = iota
	AirPack            // open, paper, a loose bag: air gets in
	VacuumPack         // vacuum, any sealed or oxygen-free pack
)

// String is the pack in words: "air pack".
func (p Pack) String() string {
	switch p {
	case PackNotStated:
		return "pack not stated"
	case AirPack:
		return "air pack"
	case VacuumPack:
		return "vacuum pack"
	}
	return "Pack(" + strconv.Itoa(int(p)) + ")"
}

// ParsePack reads "air" or "vacuum", in capitals or not; anything else is a units.ParseError.
func ParsePack(s string) (Pack, error) {
	switch strings.ToLower(strings.TrimSpace(s)) {
	case "air", "air pack":
		return AirPack, nil
	case "vacuum", "vacuum pack":
		return VacuumPack, nil
	}
	return 0, units.ParseError{Quantity: "pack", Text: s, Reason: "expected air or vacuum"}
}

// StorageRule is one published limit on how cold smoked fish is kept, or how long, or both. Pack is PackNotStated where a rule names none.
// AtMost is not set and Days zero where the rule does not say. Home tells home guidance from what licensed processors go by.
type StorageRule struct {
	ID       string
	Pack     Pack
	AtMost   units.Temperature
	Days     int
	Home     bool
	Fish     string
	Place    string
	Citation cite.Citation
}

// StorageRules returns the published limits, coldest first and then shortest. The slice is the caller's own.
func StorageRules() []StorageRule { return append([]StorageRule(nil), storageRules[:]...) }

// Storage is what to do with smoked fish by its pack: in the refrigerator at or below AtMost for at most Days, or, when Days is zero, frozen.
type Storage struct {
	Pack        Pack
	AtMost      units.Temperature
	Days        int
	Temperature StorageRule // that AtMost is from
	Time        StorageRule // that Days is from, zero when there is none
	Cautions    []cite.Caution
}

// Keep returns the strictest home storage for a pack that was read in print. In an air pack that is 36 °F (2.2 °C) and 14 days. For a vacuum pack
// no home guidance for the refrigerator was found: it is frozen (Days is zero, AtMost that of thawing and serving), whatever its salt, which
// nobody measures at home. A stricter rule from memory is among the cautions. A Pack that is not stated counts as a vacuum pack; an unknown one is a units.RangeError.
func Keep(pack Pack) (Storage, error) {
	if pack > VacuumPack {
		return Storage{}, units.RangeError{What: "pack", Got: pack.String(), Low: AirPack.String(), High: VacuumPack.String()}
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
	s.Cautions = []cite.Caution{stateLaw, tenDays, frozenMonths, listeriaWeek, atRisk}
	if pack != AirPack {
		s.Cautions = append([]cite.Caution{vacuumVariance, vacuumThaw, vacuumService, vacuumSalt}, s.Cautions...)
	}
	return s, nil
}

var (
	vacuumVariance = cite.Caution{
		Text:     "freeze smoked fish in a vacuum or sealed pack: no home guidance keeps it in the refrigerator, and the trade needs a variance to pack it so",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.18", Basis: cite.Read},
	}
	vacuumThaw = cite.Caution{
		Text:     "open the pack before it thaws: without air, above 38 °F (3.3 °C) the time to botulinum toxin falls sharply",
		Citation: cite.Citation{Source: cite.MSUEThawing, Where: "as summarised in a trade magazine", Basis: cite.Read},
	}
	vacuumService = cite.Caution{
		Text:     "oxygen-free packs of smoked fish are not allowed in food service unless heat-processed in the pack",
		Citation: cite.Citation{Source: cite.NewYork10NYCRR141, Where: "14-1.35", Basis: cite.Read},
	}
	vacuumSalt = cite.Caution{
		Text:     "where the trade sells it chilled, the water phase salt is at least 3.5 % by measurement in the loin and the fish stays at or below 38 °F (3.3 °C)",
		Citation: cite.Citation{Source: cite.MaineRules01001Ch359, Where: "s. 2(C)(1)-(2) and s. 3(A)", Basis: cite.Read},
	}
	stateLaw = cite.Caution{
		Text:     "38 °F (3.3 °C) is the law of four states for smoked fish; the home figure is colder still",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.8(1); also Maine ch. 359 s. 3(A), 10 NYCRR 14-1.35, Wisconsin ATCP 70.18(2)", Basis: cite.Read},
	}
	tenDays = cite.Caution{
		Text:     "some extension sheets say 10 days",
		Citation: cite.Citation{Source: cite.ExtensionSmokedKeeping, Basis: cite.Recalled},
	}
	frozenMonths = cite.Caution{
		Text:     "frozen it keeps its quality for 2 to 3 months",
		Citation: cite.Citation{Source: cite.MSUEPreservingFoodSafely1997, Where: "item 01600816", Basis: cite.Read},
	}
	listeriaWeek = cite.Caution{
		Text:     "Listeria grows in the refrigerator: a table for the trade limits ready-to-eat fish to seven days, even just above freezing",
		Citation: cite.Citation{Source: cite.FDAHazardsGuide2020, Where: "Appendix 4, table A-2, as quoted in a secondary note", Basis: cite.Read},
	}
	atRisk = cite.Caution{
		Text:     "who is pregnant, old or of weak immunity does not eat refrigerated smoked fish uncooked",
		Citation: cite.Citation{Source: cite.FederalAdviceAtRisk, Where: "refrigerated smoked fish", Basis: cite.Recalled},
	}
)
