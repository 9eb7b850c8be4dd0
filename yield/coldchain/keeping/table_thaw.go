package keeping

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// thawRow is one printed demand: at most a temperature, and how long the fish may be above 41 °F.
type thawRow struct {
	what     string
	atMost   units.Temperature
	allowed  time.Duration
	citation cite.Citation
}

// The rows of thawRows.
const (
	thawRefrigerator = iota
	thawWater
	thawRaw
	thawReady
	thawPack
	thawSmoking
)

var thawCode = chain.ReadIn(cite.FDAFoodCode, "3-501.13, as adopted in Tennessee")

var thawRows = [...]thawRow{
	thawRefrigerator: {"refrigerator", units.Fahrenheit(41), 0, thawCode},
	thawWater:        {"running water", units.Fahrenheit(70), 0, thawCode},
	thawRaw:          {"raw fish above 41 °F", units.Temperature{}, thawLongest, thawCode},
	thawReady:        {"ready-to-eat fish above 41 °F", units.Temperature{}, 0, thawCode},
	thawPack: {
		"sealed pack opened before", units.Temperature{}, 0,
		cite.Citation{
			Source: cite.FDAFoodCode,
			Where:  "3-501.13(E), its first limb as adopted in Wisconsin",
			Basis:  cite.Recalled,
		},
	},
	thawSmoking: {
		"fish for smoking, inside", units.Fahrenheit(38), 0, chain.ReadIn(cite.MichiganRegulation569, "R 285.569.4(3)"),
	},
}
