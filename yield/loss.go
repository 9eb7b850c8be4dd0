package yield

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// SmokingLoss is one published loss of weight in salting, drying or smoking: the share of what came to the
// step that is lost. Low and High are equal where one figure is printed; below zero is a gain.
type SmokingLoss struct {
	Product  string
	Step     string
	Low      units.Ratio
	High     units.Ratio
	Citation cite.Citation
	Cautions []cite.Caution
}

// SmokingLosses returns the losses of weight that sources print for smoking salmon and trout, in the order
// of the table. They are other people's fish and kilns: weigh your own. The slices are the caller's own.
func SmokingLosses() []SmokingLoss {
	all := make([]SmokingLoss, len(smokingTable))
	for i, r := range smokingTable {
		all[i] = SmokingLoss{
			Product: r.product, Step: r.step, Low: r.low, High: r.high, Citation: r.citation,
			Cautions: rowCautions(r.note, r.citation),
		}
	}
	return all
}

// lossRow is one printed row.
type lossRow struct {
	product, step string
	low, high     units.Ratio
	citation      cite.Citation
	note          cite.Caution
}
