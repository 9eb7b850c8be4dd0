package conformance

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield/coldchain"
)

var coldchainExempt = map[string]string{"Allowance.Citations": sources}

func coldchainGrid(r *results) {
	r.sweep("Hazards", coldchain.Hazards)
	r.sweep("HistamineFigures", coldchain.HistamineFigures)
	r.sweep("LandingRules", coldchain.LandingRules)
	r.sweep("Limits", coldchain.Limits, kinds(coldchain.KitchenTwoHours))
	r.sweep("Hazard.Rule", coldchain.Hazard.Rule, every(coldchain.Hazards()))
	r.sweep("Step.Text", coldchain.Step.Text, kinds(coldchain.Step(4)), these(units.US, units.Metric))
	r.sweep("FindLimit", coldchain.FindLimit, these(coldchain.Listeria, coldchain.Salmonella, coldchain.StaphylococcusAureus), degrees(120, 400, 23))
	for hours := time.Duration(1); hours <= 12; hours++ {
		for c := int64(-10); c <= 50; c += 20 {
			r.sweep("CheckLanding", coldchain.CheckLanding, these(coldchain.Landing{
				Gutted: units.State(hours * 30 * time.Minute), Iced: units.State(hours * time.Hour), Medium: tenths(c), Warmest: tenths(150 + c), ForCanning: c == 10,
			}))
		}
	}
	for seed := int64(1); seed <= 36; seed++ {
		terms := coldchain.Terms{MaxGap: time.Hour, Reading: coldchain.Reading(1 + seed%3), Product: coldchain.Product(seed % 2)}
		exposed(r, scrawl(r, 10+7*seed, seed, -20, 80+7*seed, 20*time.Minute), terms)
	}
}

func exposed(r *results, record series.Series[units.Temperature], terms coldchain.Terms) {
	r.sweep("Audit", coldchain.Audit, these(record), these(terms))
	running, err := coldchain.Watch(terms)
	r.add("Watch", err, nil, terms)
	for _, reading := range record.Readings() {
		running, err = running.Next(reading)
	}
	report, fault := running.Report()
	r.add("Running.Next", err, one(report.Span), record, terms)
	r.add("Running.Report", fault, one(report), record, terms)
	last, _ := record.Last()
	stays := series.Stretch{From: last.At, To: last.At + 2*time.Hour}
	_, fault = running.Stays(coldchain.Stay{When: stays, In: coldchain.InRefrigerator, Air: units.Fahrenheit(38)})
	r.add("Running.Stays", fault, nil, record, terms)
	r.add("Running.AtThisRate", nil, one(running.AtThisRate()), record, terms)
}
