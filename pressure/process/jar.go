package process

import (
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
)

// Jar is a size of mason-type jar by its nominal volume. The sizes without a process for fish are here
// so that a request for one can be refused by name. The zero Jar is not set.
type Jar uint8

// The sizes made (USDA Complete Guide, Guide 1, Jars and lids).
const (
	HalfPint Jar = iota + 1
	TwelveOunce
	Pint
	PintAndHalf // no process is published for fish
	Quart
	HalfGallon // no process is published for fish
)

var jars = word.List[Jar]{
	What:  "jar",
	Words: []string{"half-pint", "12 oz", "pint", "1½ pint", "quart", "half-gallon"},
	Also: map[string]Jar{
		"half pint": HalfPint, "1/2 pint": HalfPint, "1/2-pint": HalfPint, "½ pint": HalfPint, "8 oz": HalfPint,
		"12-oz": TwelveOunce, "12-ounce": TwelveOunce, "12 ounce": TwelveOunce,
		"1-1/2 pint": PintAndHalf, "1 1/2 pint": PintAndHalf,
		"half gallon": HalfGallon,
	},
}

var jarVolumes = [...]units.Volume{
	HalfPint:    units.HalfPint,
	TwelveOunce: 12 * units.FluidOunce,
	Pint:        units.Pint,
	PintAndHalf: units.Pint + units.HalfPint,
	Quart:       units.Quart,
	HalfGallon:  2 * units.Quart,
}

// ParseJar reads "half-pint", "12 oz", "pint", "1½ pint", "quart" or "half-gallon" and the spellings
// "1/2 pint", "12-ounce", "1-1/2 pint"; anything else is a units.ParseError. A volume in millilitres is
// no jar size: the tables are for these jars.
func ParseJar(s string) (Jar, error) {
	return jars.Parse(s)
}

// Volume is the nominal volume of the jar, exact, and zero when the jar is not set or unknown. It is the
// name of the size, not what fits below the headspace.
func (j Jar) Volume() units.Volume {
	if int(j) < len(jarVolumes) {
		return jarVolumes[j]
	}
	return 0
}

// String is the word that ParseJar reads; "not stated" when it is not set.
func (j Jar) String() string { return jars.Of(j) }

// MarshalText is String as bytes, empty when the jar is not set; an unknown one is an error.
func (j Jar) MarshalText() ([]byte, error) { return jars.Marshal(j) }

// UnmarshalText is ParseJar, and the empty text is a jar that is not set.
func (j *Jar) UnmarshalText(text []byte) error { return jars.Unmarshal(text, j) }
