package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// coolingRules are the printed steps. The default is the first.
var coolingRules = [...]CoolingRule{
	{Cool2And4, [2]CoolingStep{{From: inC(60), To: inC(21), Within: 2 * time.Hour}, {From: inC(21), To: inC(4), Within: 4 * time.Hour}},
		"smoked fish", "US FDA report", readIn(cite.FDAColdSmoked2001, "text based on the AFDO code")},
	{CoolFrance, [2]CoolingStep{{From: inC(63), To: inC(10), FromAlso: inF(145), ToAlso: inF(50), Within: 2 * time.Hour}},
		"cooked food", "France", readIn(cite.FranceCooling2012, "cooling rule, as quoted")},
	{CoolFoodCode, [2]CoolingStep{inFahrenheit(135, 57, 70, 21, 2), inFahrenheit(135, 57, 41, 5, 6).inAll()},
		"cooked food", "US", readIn(cite.FDAFoodCode, "cooling of cooked food")},
	// An older text is remembered with 140 °F at its start.
	{CoolFDA, [2]CoolingStep{inFahrenheit(135, 57.2, 70, 21.1, 2), inFahrenheit(70, 21.1, 40, 4.4, 4)},
		"cooked fish", "US FDA; Ontario", readIn(cite.FDAHazardsGuide2020, "ch. 12, control strategy 3, p. 230")},
	{Cool3And12, [2]CoolingStep{fromTheHeat(50, 10, 3), fromTheHeat(38, 3.3, 12).inAll()},
		"hot-smoked fish", "New York; 21 CFR 172.177", cite.Citation{Source: cite.NewYork1NYCRR262, Where: "262.5; also 21 CFR 172.177(d)", Basis: cite.Recalled}},
	{Cool5And12, [2]CoolingStep{fromTheHeat(50, 10, 5), fromTheHeat(38, 3.3, 12).inAll()},
		"hot-smoked fish", "AFDO model code", cite.Citation{Source: cite.AFDOModelCode1991, Basis: cite.Recalled}},
}

// inFahrenheit is a step of a source in Fahrenheit, with the Celsius that is printed beside it.
func inFahrenheit(fromF, fromC, toF, toC float64, hours time.Duration) CoolingStep {
	return CoolingStep{From: inF(fromF), FromAlso: inC(fromC), To: inF(toF), ToAlso: inC(toC), Within: hours * time.Hour}
}

// fromTheHeat is a step whose clock runs from the end of the heating.
func fromTheHeat(toF, toC float64, hours time.Duration) CoolingStep {
	return CoolingStep{From: units.Temperature{}, To: inF(toF), ToAlso: inC(toC), Within: hours * time.Hour}
}

func (s CoolingStep) inAll() CoolingStep {
	s.InAll = true
	return s
}
