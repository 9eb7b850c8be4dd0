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
	Note     string
}

// SmokingLosses returns the losses of weight that sources print for smoking salmon and trout, in the order
// of the table. They are other people's fish and kilns: weigh your own. The slice is the caller's own.
func SmokingLosses() []SmokingLoss { return append([]SmokingLoss(nil), smokingTable[:]...) }
