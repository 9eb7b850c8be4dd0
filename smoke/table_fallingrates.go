package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// fallingRates: air in °C, hours from 71.87 % to 25 % moisture.
var fallingRates = [...]FallingRate{trout(35, 35), trout(45, 28), trout(55, 14), trout(65, 11)}

func trout(celsius float64, hours time.Duration) FallingRate {
	return FallingRate{
		Air: units.Celsius(celsius), Initial: 7_187 * units.Percent / 100, Final: 25 * units.Percent, Time: hours * time.Hour,
		Citation: cite.Citation{Source: cite.YaparErdol, Where: "abstract", Basis: cite.Read},
	}
}
