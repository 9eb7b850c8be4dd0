package coldchain

import "example.org/lakelarder/internal/word"

// Spared is why a limit does not decide about a record, though it is held against it and shown. The zero Spared is that
// it decides.
type Spared uint8

// The reasons why a limit does not decide.
const (
	HeatUndoesIt Spared = iota + 1
	NotInFreshwater
)

var sparings = word.List[Spared]{What: "reason", Words: []string{"the heat to come undoes it", "not in freshwater fish"}}

// ParseSpared reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseSpared(s string) (Spared, error) { return sparings.Parse(s) }

// String is the reason in words: "the heat to come undoes it"; "not stated" when it is not set.
func (s Spared) String() string { return sparings.Of(s) }

// MarshalText is String as bytes, empty when the reason is not set; an unknown one is a units.UnknownError.
func (s Spared) MarshalText() ([]byte, error) { return sparings.Marshal(s) }

// UnmarshalText is ParseSpared, and the empty text is one that is not set.
func (s *Spared) UnmarshalText(text []byte) error { return sparings.Unmarshal(text, s) }

// heatStable are the hazards that no cooking and no canning undoes: toxins that stay, or spores that survive.
func heatStable(h Hazard) bool {
	switch h {
	case BacillusCereus, BotulinumA, BotulinumE, Perfringens, StaphylococcusAureus:
		return true
	}
	return false
}

// relaxed reports whether heat still to come is relied on: by its use, unless its verdict is known and no pass. Fish that
// was cooked, or of which that is not known, is only canned afterwards.
func (t Terms) relaxed() bool {
	if t.Later.Given && !t.Later.Value.Passes() {
		return false
	}
	switch t.Use {
	case HotSmoked, CookedThrough:
		return t.Product == RawFish
	case Canned:
		return true
	}
	return false
}

// spared is why a rule, for table A-2 one hazard, does not decide, zero where it does. What was asked for by name decides.
func (t Terms) spared(rule Rule, hazard Hazard) Spared {
	switch rule {
	case TableA2:
		if len(t.Hazards) > 0 {
			return 0
		}
		switch hazard {
		case VibrioCholerae, VibrioParahaemolyticus, VibrioVulnificus:
			if t.Water == Freshwater {
				return NotInFreshwater
			}
		}
		if t.relaxed() && !heatStable(hazard) && (hazard != Listeria || t.Use != HotSmoked) {
			return HeatUndoesIt
		}
	case RawReadyToEat, CookedReadyToEat:
		if len(t.Rules) == 0 && t.relaxed() {
			return HeatUndoesIt
		}
	}
	return 0
}
