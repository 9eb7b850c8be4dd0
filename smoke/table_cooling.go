package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// coolingRules are the printed steps; where both scales are printed a step starts at the warmer figure and ends at the
// colder. The default is the first.
var coolingRules = [...]CoolingRule{
	{Cool2And4, [2]CoolingStep{{units.Celsius(60), units.Celsius(21), 2 * time.Hour, false}, {units.Celsius(21), units.Celsius(4), 4 * time.Hour, false}},
		"smoked fish", "US FDA report", readIn(cite.FDAColdSmoked2001, "text based on the AFDO code")},
	{CoolFrance, [2]CoolingStep{{units.Celsius(63), units.Celsius(10), 2 * time.Hour, false}},
		"cooked food", "France", readIn(cite.FranceCooling2012, "cooling rule, as quoted")},
	{CoolFoodCode, [2]CoolingStep{{units.Fahrenheit(135), units.Celsius(21), 2 * time.Hour, false}, {units.Fahrenheit(135), units.Celsius(5), 6 * time.Hour, true}},
		"cooked food", "US", readIn(cite.FDAFoodCode, "cooling of cooked food")},
	// Also remembered with 135 °F at its start, from the fourth edition.
	{CoolFDA, [2]CoolingStep{{units.Fahrenheit(140), units.Celsius(21), 2 * time.Hour, false}, {units.Fahrenheit(70), units.Celsius(4.4), 4 * time.Hour, false}},
		"cooked fish", "US FDA", cite.Citation{Source: cite.FDAHazardsGuideUndated, Where: "ch. 12, older text", Basis: cite.Recalled}},
	{Cool3And12, [2]CoolingStep{{units.Temperature{}, units.Fahrenheit(50), 3 * time.Hour, false}, {units.Temperature{}, units.Celsius(3.3), 12 * time.Hour, true}},
		"hot-smoked fish", "New York; 21 CFR 172.177", cite.Citation{Source: cite.NewYork1NYCRR262, Where: "262.5; also 21 CFR 172.177(d)", Basis: cite.Recalled}},
	{Cool5And12, [2]CoolingStep{{units.Temperature{}, units.Fahrenheit(50), 5 * time.Hour, false}, {units.Temperature{}, units.Celsius(3.3), 12 * time.Hour, true}},
		"hot-smoked fish", "AFDO model code", cite.Citation{Source: cite.AFDOModelCode1991, Basis: cite.Recalled}},
}
