package brine

import "example.org/lakelarder/internal/word"

// Method is how a recipe salts the fish. The zero Method is not stated.
type Method uint8

// The methods.
const (
	DrySalted Method = iota + 1
	WetBrined
)

var methods = word.List[Method]{What: "method of salting", Words: []string{"dry salted", "wet brined"}}

// ParseMethod reads "dry salted" or "wet brined", in capitals or not; anything else is a units.UnknownError.
func ParseMethod(s string) (Method, error) { return methods.Parse(s) }

// String is the method in words: "dry salted".
func (m Method) String() string { return methods.Of(m) }

// MarshalText is String as bytes, empty when the method is not set; an unknown one is a units.UnknownError.
func (m Method) MarshalText() ([]byte, error) { return methods.Marshal(m) }

// UnmarshalText is ParseMethod, and the empty text is a method that is not set.
func (m *Method) UnmarshalText(text []byte) error { return methods.Unmarshal(text, m) }

// Smoking is how fish is smoked, as far as a rule says so. The zero Smoking is not stated, and a rule with it holds
// for both.
type Smoking uint8

// Hot-smoked fish is cooked in the smoke, cold-smoked fish stays raw.
const (
	HotSmoked Smoking = iota + 1
	ColdSmoked
)

var smokings = word.List[Smoking]{What: "smoking", Words: []string{"hot-smoked", "cold-smoked"}}

// ParseSmoking reads "hot-smoked" or "cold-smoked", in capitals or not; anything else is a units.UnknownError.
func ParseSmoking(s string) (Smoking, error) { return smokings.Parse(s) }

// String is the smoking in words: "hot-smoked".
func (s Smoking) String() string { return smokings.Of(s) }

// MarshalText is String as bytes, empty when the smoking is not set; an unknown one is a units.UnknownError.
func (s Smoking) MarshalText() ([]byte, error) { return smokings.Marshal(s) }

// UnmarshalText is ParseSmoking, and the empty text is a smoking that is not set.
func (s *Smoking) UnmarshalText(text []byte) error { return smokings.Unmarshal(text, s) }

// Pack is how smoked fish is packed, as far as a rule says so. The zero Pack is not stated.
type Pack uint8

// The packs. A film that breathes is an air pack; a vacuum, a modified atmosphere, oil, a sealed jar or a deep
// container pressed free of air is low in oxygen, where Clostridium botulinum grows. Source: FDA guide, p. 248.
const (
	AirPack Pack = iota + 1
	LowOxygenPack
)

var packs = word.List[Pack]{
	What: "pack", Words: []string{"air pack", "low-oxygen pack"},
	Also: map[string]Pack{
		"air": AirPack, "vacuum": LowOxygenPack, "vacuum pack": LowOxygenPack, "modified atmosphere": LowOxygenPack,
		"controlled atmosphere": LowOxygenPack, "in oil": LowOxygenPack, "sealed jar": LowOxygenPack,
		"deep container": LowOxygenPack,
	},
}

// ParsePack reads "air pack" or "low-oxygen pack", in capitals or not, and what the second comes as: "vacuum",
// "modified atmosphere", "in oil", "sealed jar", "deep container". Anything else is a units.UnknownError.
func ParsePack(s string) (Pack, error) { return packs.Parse(s) }

// String is the pack in words: "air pack".
func (p Pack) String() string { return packs.Of(p) }

// MarshalText is String as bytes, empty when the pack is not set; an unknown one is a units.UnknownError.
func (p Pack) MarshalText() ([]byte, error) { return packs.Marshal(p) }

// UnmarshalText is ParsePack, and the empty text is a pack that is not set.
func (p *Pack) UnmarshalText(text []byte) error { return packs.Unmarshal(text, p) }

// Faces is how many sides of a piece the salt comes in through. The zero Faces is not stated.
type Faces uint8

// A fillet on its skin takes salt through one face: skin and the fat under it let almost none through. A skinless
// piece in brine takes it through two.
const (
	OneFace Faces = iota + 1
	TwoFaces
)

var faces = word.List[Faces]{What: "faces", Words: []string{"one face", "two faces"}}

// ParseFaces reads "one face" or "two faces", in capitals or not; anything else is a units.UnknownError.
func ParseFaces(s string) (Faces, error) { return faces.Parse(s) }

// String is the faces in words: "one face".
func (f Faces) String() string { return faces.Of(f) }

// MarshalText is String as bytes, empty when the faces are not set; an unknown one is a units.UnknownError.
func (f Faces) MarshalText() ([]byte, error) { return faces.Marshal(f) }

// UnmarshalText is ParseFaces, and the empty text is faces that are not set.
func (f *Faces) UnmarshalText(text []byte) error { return faces.Unmarshal(text, f) }

// Fatness chooses the column of the dry-salting table. Salmon and lake trout are fat fish. The zero Fatness is not
// stated.
type Fatness uint8

// The two columns.
const (
	FatFish Fatness = iota + 1
	LeanFish
)

var fatnesses = word.List[Fatness]{What: "fatness", Words: []string{"fat fish", "lean fish"}}

// ParseFatness reads "fat fish" or "lean fish", in capitals or not; anything else is a units.UnknownError.
func ParseFatness(s string) (Fatness, error) { return fatnesses.Parse(s) }

// String is the fatness in words: "fat fish".
func (f Fatness) String() string { return fatnesses.Of(f) }

// MarshalText is String as bytes, empty when the fatness is not set; an unknown one is a units.UnknownError.
func (f Fatness) MarshalText() ([]byte, error) { return fatnesses.Marshal(f) }

// UnmarshalText is ParseFatness, and the empty text is a fatness that is not set.
func (f *Fatness) UnmarshalText(text []byte) error { return fatnesses.Unmarshal(text, f) }
