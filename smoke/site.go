package smoke

import "example.org/lakelarder/internal/word"

// Site is where a probe sits. The zero Site is not stated.
type Site uint8

// The sites. Only the first is what the rules ask for.
const (
	InThickest Site = iota + 1 // the middle of the thickest part of the biggest fish
	NearBone
	NearRack
	InTail // or another thin part
)

var sites = word.List[Site]{What: "site of the probe", Words: []string{"thickest part", "near bone", "near the rack", "thin tail"}}

// ParseSite reads "thickest part", "near bone", "near the rack" or "thin tail", in capitals or not; anything else is a
// units.UnknownError.
func ParseSite(s string) (Site, error) { return sites.Parse(s) }

// String is the site in words: "near bone".
func (s Site) String() string { return sites.Of(s) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (s Site) MarshalText() ([]byte, error) { return sites.Marshal(s) }

// UnmarshalText is ParseSite, and the empty text is one that is not set.
func (s *Site) UnmarshalText(text []byte) error { return sites.Unmarshal(text, s) }
