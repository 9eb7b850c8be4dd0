package process

import "example.org/lakelarder/units/cite"

// Smoked fish: salmon, rockfish and flatfish (sole, cod, flounder) and other fish. Half-pints have no row of their own; a remark
// lets them take the time of the pint, at some cost in quality.
var (
	smokedPint = cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, p. 5-14", Basis: cite.Read}
	smokedHalf = cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, pp. 5-13 and 5-14: half-pints take the time of the pint", Basis: cite.Read}
)

var smokedTable = []row{
	printed(SmokedFish, AsSmoked, Pint, Dial, 110, []int{11, 12, 13, 14}, smokedPint),
	printed(SmokedFish, AsSmoked, Pint, Weighted, 110, []int{10, 15}, smokedPint),
	printed(SmokedFish, AsSmoked, HalfPint, Dial, 110, []int{11, 12, 13, 14}, smokedHalf),
	printed(SmokedFish, AsSmoked, HalfPint, Weighted, 110, []int{10, 15}, smokedHalf),
}
