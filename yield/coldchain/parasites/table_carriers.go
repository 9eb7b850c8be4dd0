package parasites

import "example.org/lakelarder/units/cite"

var (
	carriersNamed  = cite.Citation{Source: cite.MinnesotaParasites, Where: "as quoted second-hand", Basis: cite.Read}
	carriersLakes  = cite.Citation{Source: cite.GLFCParasiteGuide, Where: "tapeworm section", Basis: cite.Read}
	carriersSalmon = cite.Citation{Source: cite.CDCTapeworm2017, Where: "press summary", Basis: cite.Read}
)

const (
	broadTapeworm   = "fish tapeworm"
	pacificTapeworm = "Diphyllobothrium nihonkaiense"
	alaska          = "Alaska, reported 2017"
)

var carrierTable = [...]Carrier{
	{"pike", broadTapeworm, "", "", carriersNamed},
	{"walleye", broadTapeworm, "", "", carriersNamed},
	{"sauger", broadTapeworm, "", "", carriersNamed},
	{"burbot", broadTapeworm, "", "", carriersNamed},
	{"yellow perch", broadTapeworm, "", "", carriersNamed},
	{"Pacific salmon", pacificTapeworm, alaska, "wild fish", carriersSalmon},
	{"rainbow trout", pacificTapeworm, alaska, "wild fish", carriersSalmon},
	{"", "Diphyllobothrium ditremum", "Superior, Huron, Ontario", "several fish families", carriersLakes},
	{"", "Diphyllobothrium laruei", "Superior, Huron, Erie, Ontario", "several fish families", carriersLakes},
	{"", "Diphyllobothrium latum", "Superior", "several fish families", carriersLakes},
	{"", "Diphyllobothrium oblongatum", "Michigan, Superior", "several fish families", carriersLakes},
}
