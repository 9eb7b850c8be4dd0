package coldchain

import "example.org/lakelarder/internal/word"

// Hazard is a pathogen of the FDA's table A-2, by its growth or its toxin. The zero Hazard is not set.
type Hazard uint8

// The hazards of table A-2, in its order.
const (
	BacillusCereus Hazard = iota + 1
	Campylobacter
	BotulinumA // type A and proteolytic B and F
	BotulinumE // type E and non-proteolytic B and F: the one that grows in a refrigerator
	Perfringens
	EscherichiaColi
	Listeria
	Salmonella
	Shigella
	StaphylococcusAureus
	VibrioCholerae
	VibrioParahaemolyticus
	VibrioVulnificus
	Yersinia
)

var hazardNames = word.List[Hazard]{What: "hazard", Words: []string{
	"Bacillus cereus", "Campylobacter jejuni", "Clostridium botulinum type A and proteolytic B, F",
	"Clostridium botulinum type E and non-proteolytic B, F", "Clostridium perfringens", "Escherichia coli",
	"Listeria monocytogenes",
	"Salmonella", "Shigella", "Staphylococcus aureus", "Vibrio cholerae", "Vibrio parahaemolyticus", "Vibrio vulnificus",
	"Yersinia enterocolitica",
}}

// Hazards returns every hazard of table A-2 in its order. The slice is the caller's own.
func Hazards() []Hazard {
	all := make([]Hazard, 0, Yersinia)
	for h := BacillusCereus; h <= Yersinia; h++ {
		all = append(all, h)
	}
	return all
}

// ParseHazard reads the name that String writes, in capitals or not; anything else is a
// units.UnknownError that lists the names.
func ParseHazard(s string) (Hazard, error) {
	return hazardNames.Parse(s)
}

// String is the name that ParseHazard reads; "not stated" when it is not set.
func (h Hazard) String() string { return hazardNames.Of(h) }

// MarshalText is String as bytes, empty when the hazard is not set; an unknown one is an error.
func (h Hazard) MarshalText() ([]byte, error) { return hazardNames.Marshal(h) }

// UnmarshalText is ParseHazard, and the empty text is a hazard that is not set.
func (h *Hazard) UnmarshalText(text []byte) error { return hazardNames.Unmarshal(text, h) }
