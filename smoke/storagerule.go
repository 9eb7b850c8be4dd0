package smoke

import (
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// StorageRuleID names a published storage rule. The zero StorageRuleID is not stated.
type StorageRuleID uint8

// The published rules, in the order of StorageRules: a temperature in °F, or a life in days.
const (
	Store36 StorageRuleID = iota + 1
	Store38
	Store40
	Store5C
	Life10Vacuum
	Life10
	Life14
	Life14PNW
	Life14Chart
	Life21
	Life28
)

var storageRuleIDs = word.List[StorageRuleID]{What: "storage rule", Words: []string{
	"STORE-36", "STORE-38", "STORE-40", "STORE-5", "LIFE-10-VACUUM", "LIFE-10", "LIFE-14", "LIFE-14-PNW", "LIFE-14-CHART", "LIFE-21", "LIFE-28",
}}

// ParseStorageRuleID reads a name that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseStorageRuleID(s string) (StorageRuleID, error) { return storageRuleIDs.Parse(s) }

// String is the name of the rule: "STORE-36".
func (id StorageRuleID) String() string { return storageRuleIDs.Of(id) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (id StorageRuleID) MarshalText() ([]byte, error) { return storageRuleIDs.Marshal(id) }

// UnmarshalText is ParseStorageRuleID, and the empty text is one that is not set.
func (id *StorageRuleID) UnmarshalText(text []byte) error { return storageRuleIDs.Unmarshal(text, id) }

// StorageRule is one published limit on how cold smoked fish is kept, or how long, or both. Pack is not stated where a
// rule names none. AtMost, in the source's own scale, is not set and Days zero where the rule does not say. Home tells home
// guidance from what licensed processors go by.
type StorageRule struct {
	ID       StorageRuleID
	Pack     Pack
	AtMost   units.Temperature
	Printed  units.Figure // AtMost as it is printed, in both scales
	Days     int
	Home     bool
	Fish     string
	Place    string
	Citation cite.Citation
}

// StorageRules returns the published limits, coldest first and then shortest. The slice is the caller's own.
func StorageRules() []StorageRule { return append([]StorageRule(nil), storageRules[:]...) }

// FindStorageRule returns the published rule with this name. One that is not stated is a units.UnsetError, any other
// unknown one a units.UnknownError.
func FindStorageRule(id StorageRuleID) (StorageRule, error) {
	if err := storageRuleIDs.Check(id); err != nil {
		return StorageRule{}, err
	}
	return storageRules[id-1], nil
}
