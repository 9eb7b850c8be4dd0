package lethality

import "example.org/lakelarder/internal/word"

// Shape is one of the textbook bodies in which heat runs in one direction. The zero Shape is not stated.
type Shape uint8

// The shapes. Lengths are the half thickness of the slab and the radius of the others, never volume over area, never
// the diameter.
const (
	Slab Shape = iota + 1
	InfiniteCylinder
	Sphere
)

var shapes = word.List[Shape]{What: "shape of a body", Words: []string{"slab", "cylinder", "sphere"}}

// ParseShape reads the word that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseShape(s string) (Shape, error) { return shapes.Parse(s) }

// String is the shape in one word: "slab".
func (s Shape) String() string { return shapes.Of(s) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (s Shape) MarshalText() ([]byte, error) { return shapes.Marshal(s) }

// UnmarshalText is ParseShape, and the empty text is one that is not set.
func (s *Shape) UnmarshalText(text []byte) error { return shapes.Unmarshal(text, s) }
