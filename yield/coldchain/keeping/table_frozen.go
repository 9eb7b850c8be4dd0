package keeping

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// frozenRow is one printed row: months at temperatures in degrees Celsius, warmest first. Over says that the coldest is
// printed as "over".
type frozenRow struct {
	name     string
	celsius  [3]float64
	months   [3]int // zero: not printed
	over     bool
	citation cite.Citation
}

var (
	iir1986 = cite.Citation{Source: cite.IIRFrozenFoods1986, Basis: cite.Recalled}
	iir1972 = cite.Citation{Source: cite.IIRFrozenFoods1972, Basis: cite.Recalled}
)

var frozenRows = [...]frozenRow{
	{"fatty fish, glazed (1986)", [3]float64{-12, -18, -24}, [3]int{3, 5, 9}, true, iir1986},
	{"lean fish (1986)", [3]float64{-12, -18, -24}, [3]int{4, 9, 12}, true, iir1986},
	{"fatty fish (1972)", [3]float64{-18, -25, -30}, [3]int{4, 8, 12}, false, iir1972},
	{"lean fish (1972)", [3]float64{-18, -25, -30}, [3]int{8, 18, 24}, false, iir1972},
	{"flat fish (1972)", [3]float64{-18, -25, -30}, [3]int{10, 24, 24}, true, iir1972},
}

var frozenLives = func() []FrozenLife {
	all := make([]FrozenLife, 0, len(frozenRows))
	for _, row := range frozenRows {
		life := FrozenLife{Name: row.name, Citation: row.citation}
		for i, c := range row.celsius {
			life.Points = append(life.Points, LifePoint{
				At: units.Celsius(c), Life: time.Duration(row.months[i]) * chain.Month,
				Over: row.over && i == len(row.celsius)-1,
			})
		}
		all = append(all, life)
	}
	return all
}()
