package process

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// The rule reads 11 psi to 2,000 ft and 1 psi more for each further 2,000 ft, and states no end. Its next band
// after the official ones is 8,001-10,000 ft: 15 psi.
var (
	extension     = setting{band: head{8001, 10_000}.band(), pressure: 15 * units.PSI}
	extensionRule = cite.Citation{
		Source: cite.MinnesotaCanningGuides2024,
		Where:  "its rule, 1 psi more for each 2,000 ft above 2,000 ft, carried on to 10,000 ft",
		Basis:  cite.Computed,
	}
)
