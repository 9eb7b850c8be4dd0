package process

import "example.org/lakelarder/units/cite"

// Fish in pint jars: blue, mackerel, salmon, steelhead, trout, and other fatty fish except tuna. The
// smaller jars have no rows of their own; a note gives them the time of the pint.
var (
	fishPint = cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Fish in Pint Jars, p. 5-10", Basis: cite.Read}
	fishNote = cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Fish in Pint Jars, p. 5-10, note: half-pint and 12-ounce jars take the time of the pint", Basis: cite.Read}
)

var fishTable = []row{
	printed(Fish, RawPack, Pint, Dial, 100, []int{11, 12, 13, 14}, fishPint),
	printed(Fish, RawPack, Pint, Weighted, 100, []int{10, 15}, fishPint),
	printed(Fish, RawPack, TwelveOunce, Dial, 100, []int{11, 12, 13, 14}, fishNote),
	printed(Fish, RawPack, TwelveOunce, Weighted, 100, []int{10, 15}, fishNote),
	printed(Fish, RawPack, HalfPint, Dial, 100, []int{11, 12, 13, 14}, fishNote),
	printed(Fish, RawPack, HalfPint, Weighted, 100, []int{10, 15}, fishNote),
}
