package keeping

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// StoreLimit is a published temperature of a storage: at most AtMost (below it where Under is set) and, where AtLeast
// is set, at least that.
type StoreLimit struct {
	Storage         Storage
	For             string
	AtLeast, AtMost units.Temperature
	Under           bool
	Citation        cite.Citation
}

// StoreLimits returns the published temperatures of a storage, the coldest first; none for a Storage that is not set or
// not known. The slice is the caller's own.
func StoreLimits(storage Storage) []StoreLimit {
	var all []StoreLimit
	for _, l := range storeTable {
		if l.Storage == storage {
			all = append(all, l)
		}
	}
	return all
}

// StoreLine is one limit held against a storage. TooWarm and TooCold are how far it is off, zero where it is not; a
// storage exactly at a limit that asks for below it is off by nothing, and Met is false.
type StoreLine struct {
	Limit            StoreLimit
	Met              bool
	TooWarm, TooCold units.TemperatureChange
}

// StoreCost is what the warmth costs by a published table: the time that it allows at the limit for any food, and at
// the temperature found. Zero is that the table states none there.
type StoreCost struct {
	Concern  Concern
	What     string
	AtLimit  time.Duration
	Here     time.Duration
	Citation cite.Citation
}

// StoreReport is a storage held against every published temperature, and what its warmth costs.
type StoreReport struct {
	Storage  Storage
	At       units.Temperature
	Lines    []StoreLine
	Costs    []StoreCost
	Cautions []cite.Caution
}

// believed is the range of temperatures that a storage is believed to be in; not set for no known one.
func (s Storage) believed() (low, high units.Temperature) {
	switch s {
	case InRefrigerator:
		return units.Celsius(-5), units.Celsius(25)
	case InFreezer:
		return units.Celsius(-60), units.Celsius(10)
	case InCupboard:
		return units.Celsius(-30), units.Celsius(60)
	}
	return units.Temperature{}, units.Temperature{}
}

// CheckStore holds the temperature of a storage against the published ones, the coldest first. For a refrigerator above
// 40 °F it says by how much less time table A-2 allows, for a freezer above 0 °F how much shorter the storage lives
// are. At is the warmest found in it: -5 to 25 °C for a refrigerator, -60 to 10 °C for a freezer, -30 to 60 °C for a
// cupboard; otherwise, and for no known Storage, a units.RangeError.
func CheckStore(storage Storage, at units.Temperature) (StoreReport, error) {
	low, high := storage.believed()
	if !low.IsSet() {
		return StoreReport{}, units.RangeError{What: "storage", Got: storage.String(), Low: InRefrigerator.String(), High: InCupboard.String()}
	}
	if err := units.CheckTemperature("temperature of the "+storage.String(), at, low, high); err != nil {
		return StoreReport{}, err
	}
	j := StoreReport{Storage: storage, At: at}
	for _, l := range StoreLimits(storage) {
		line := StoreLine{Limit: l, Met: true}
		if at.Above(l.AtMost) {
			line.TooWarm, _ = at.Sub(l.AtMost) // both are set
		}
		if at.Below(l.AtLeast) {
			line.TooCold, _ = l.AtLeast.Sub(at)
		}
		line.Met = line.TooWarm == 0 && line.TooCold == 0 && !(l.Under && at == l.AtMost)
		j.Lines = append(j.Lines, line)
	}
	switch storage {
	case InRefrigerator:
		j.Costs = warmRefrigerator(at)
	case InFreezer:
		j.Costs = warmFreezer(at)
	}
	j.Cautions = j.cautions()
	return j, nil
}

// warmRefrigerator is every hazard whose time is shorter here than at the limit.
func warmRefrigerator(at units.Temperature) []StoreCost {
	var costs []StoreCost
	for _, hazard := range coldchain.Hazards() {
		here, err := coldchain.FindLimit(hazard, at)
		if err != nil || !at.Above(refrigeratorAt) {
			continue // not in the table, which begins where the hazard does
		}
		cost := StoreCost{Concern: Safety, What: hazard.String(), Here: here.Allowed, Citation: here.Citation}
		if limit, err := coldchain.FindLimit(hazard, refrigeratorAt); err == nil {
			cost.AtLimit = limit.Allowed
		}
		if cost.AtLimit == 0 || cost.Here < cost.AtLimit {
			costs = append(costs, cost)
		}
	}
	return costs
}

// warmFreezer is every storage life that covers the limit.
func warmFreezer(at units.Temperature) []StoreCost {
	var costs []StoreCost
	for _, life := range frozenLives {
		limit, err := life.At(freezerAt)
		if err != nil || !at.Above(freezerAt) {
			continue
		}
		cost := StoreCost{Concern: Quality, What: life.Name, AtLimit: limit, Citation: life.Citation}
		if here, err := life.At(at); err == nil {
			cost.Here = here
		}
		costs = append(costs, cost)
	}
	return costs
}

func (j StoreReport) cautions() []cite.Caution {
	all := []cite.Caution{storeThermometer}
	switch {
	case j.Storage == InRefrigerator && j.At.Above(refrigeratorAt):
		all = append(all, warmShelf, vacuumAt38)
	case j.Storage == InRefrigerator && j.At.Above(units.Fahrenheit(38)):
		all = append(all, vacuumAt38)
	case j.Storage == InFreezer && j.At.Above(fishThaws):
		all = append(all, thawedStore)
	case j.Storage == InCupboard && j.At.Above(hottestShelf):
		all = append(all, hotShelf)
	case j.Storage == InCupboard && !j.At.Above(freezingPoint):
		all = append(all, jarFrozen)
	}
	return all
}

var (
	storeThermometer = cite.Caution{
		Text:     "read a thermometer in the warmest place, after a night shut; the dial of the appliance says nothing",
		Citation: cite.Citation{Where: "reading a refrigerator or freezer", Basis: cite.Practice},
	}
	warmShelf = cite.Caution{
		Text:     "no published keeping time of the refrigerator holds above 40 °F (4.4 °C): make it colder, and count the hours of what is in it by Exposure",
		Citation: federalFrozen,
	}
	vacuumAt38 = cite.Caution{
		Text:     "above 38 °F (3.3 °C) the time to botulinum toxin in a sealed pack falls sharply: open the pack, or freeze it",
		Citation: chain.ReadIn(cite.MSUEThawing, "as summarised in a trade magazine"),
	}
	thawedStore = cite.Caution{Text: "no fish stays frozen above 28 °F (-2.2 °C): what thaws counts as raw fish, by Exposure", Citation: kitchenRule}
	hotShelf    = cite.Caution{
		Text:     "jars are never kept above 95 °F (35 °C): what little survived the process may grow there, and spoil them",
		Citation: chain.ReadIn(cite.USDAGuide1Rev1994, "Storing"),
	}
)
