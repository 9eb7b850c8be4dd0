package process

import "example.org/lakelarder/units/cite"

// Tuna, precooked or raw: one printed row for half-pints or pints.
var tuna = cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Tuna, pp. 5-14 and 5-15", Basis: cite.Read}

var tunaTable = []row{
	printed(Tuna, Precooked, HalfPint, Dial, 100, []int{11, 12, 13, 14}, tuna),
	printed(Tuna, Precooked, HalfPint, Weighted, 100, []int{10, 15}, tuna),
	printed(Tuna, Precooked, Pint, Dial, 100, []int{11, 12, 13, 14}, tuna),
	printed(Tuna, Precooked, Pint, Weighted, 100, []int{10, 15}, tuna),
	printed(Tuna, RawPack, HalfPint, Dial, 100, []int{11, 12, 13, 14}, tuna),
	printed(Tuna, RawPack, HalfPint, Weighted, 100, []int{10, 15}, tuna),
	printed(Tuna, RawPack, Pint, Dial, 100, []int{11, 12, 13, 14}, tuna),
	printed(Tuna, RawPack, Pint, Weighted, 100, []int{10, 15}, tuna),
}
