package canner

import (
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units/cite"
)

// LayerLimit is what keeps another layer of jars out. The zero LayerLimit is not stated.
type LayerLimit uint8

// The reasons, in the order in which they are looked at.
const (
	ByRule    LayerLimit = iota + 1 // quarts stand in one layer, smaller jars in two at most
	ByMaker                         // the canner's manual allows no more
	ByDivider                       // no rack to put between
	ByHeight                        // no room under the lid
)

var layerLimits = word.List[LayerLimit]{
	What:  "limit of layers",
	Words: []string{"the published rule", "the maker's manual", "no divider", "the height under the lid"},
}

// ParseLayerLimit reads the words that String writes, in capitals or not; anything else is a units.UnknownError.
func ParseLayerLimit(s string) (LayerLimit, error) { return layerLimits.Parse(s) }

// String is the reason in words.
func (l LayerLimit) String() string { return layerLimits.Of(l) }

// MarshalText is String as bytes, empty when it is not set; an unknown one is a units.UnknownError.
func (l LayerLimit) MarshalText() ([]byte, error) { return layerLimits.Marshal(l) }

// UnmarshalText is ParseLayerLimit, and the empty text is one that is not set.
func (l *LayerLimit) UnmarshalText(text []byte) error { return layerLimits.Unmarshal(text, l) }

// mostLayers is tested; three are not.
const mostLayers = 2

// Quarts in one layer even in large canners and pints in two are in the guide, on the page of fourQuarts.
var (
	rackSource  = cite.Citation{Source: cite.AskExtension889422, Where: "two layers", Basis: cite.Read}
	threeLayers = cite.Citation{Source: cite.CanningGuideAuthorsPage, Where: "three layers", Basis: cite.Read}
)

// layers returns how many layers of the jar the vessel takes, zero when not even one, and what keeps another one out.
func (v Vessel) layers(jar JarSize) (int, LayerLimit) {
	most, by, maker := mostLayers, ByRule, v.SmallerLayers
	if jar.Jar == process.Quart {
		most, maker = 1, v.QuartLayers
	}
	if maker != 0 {
		most, by = maker, ByMaker
	}
	if most > 1 && v.Divider == 0 {
		most, by = 1, ByDivider
	}
	top := v.Rack + jar.Height
	for n := 1; n <= most; n++ {
		if top > v.Height {
			return n - 1, ByHeight
		}
		top += v.Divider + jar.Height
	}
	return most, by
}
