package process

import "example.org/lakelarder/units/cite"

// Fish in quart jars: as the pints, and halibut. The process holds only with its own come-up.
var fishQuart = cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Fish in Quart Jars, p. 5-12", Basis: cite.Read}

var quartTable = []row{
	printed(Fish, RawPack, Quart, Dial, 160, []int{11, 12, 13, 14}, fishQuart),
	printed(Fish, RawPack, Quart, Weighted, 160, []int{10, 15}, fishQuart),
}
