package keeping

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// StoreLine is one limit held against a storage: NotMet off the General one, Differs off one for certain food. TooWarm
// and TooCold are how far it is off, zero where it is not; a storage exactly at a limit that asks for below it is off
// by nothing, and not Met.
type StoreLine struct {
	Limit            StoreLimit
	Verdict          verdict.Verdict `wire:"always"`
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

// StoreReport is a storage held against every published temperature, and what its warmth costs. NotMet is off the limit
// for whatever is kept there, Differs only off one for certain food, which the finding names.
type StoreReport struct {
	verdict.Report
	Storage Storage
	At      units.Temperature
	Lines   []StoreLine
	Costs   []StoreCost
}

// MarshalJSON writes the report as an app shows it.
func (r StoreReport) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *StoreReport) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// mostLimits is room for the limits of any storage.
const mostLimits = 5

// believed is the range of temperatures that a known storage is believed to be in.
func (s Storage) believed() (low, high units.Temperature) {
	switch s {
	case InRefrigerator:
		return units.Celsius(-5), units.Celsius(25)
	case InFreezer:
		return units.Celsius(-60), units.Celsius(10)
	}
	return units.Celsius(-30), units.Celsius(60)
}

// CheckStore holds the temperature of a storage against the published ones, the coldest first. For a refrigerator above
// 40 °F it says by how much less time table A-2 allows, for a freezer above 0 °F how much shorter the storage lives
// are. At is the warmest found in it: -5 to 25 °C for a refrigerator, -60 to 10 °C for a freezer, -30 to 60 °C for a
// cupboard; otherwise a units.RangeError. A Storage that is not set is a units.UnsetError, an unknown one a
// units.UnknownError.
func CheckStore(storage Storage, at units.Temperature) (StoreReport, error) {
	if err := storageNames.Check(storage); err != nil {
		return StoreReport{}, err
	}
	low, high := storage.believed()
	if err := units.CheckTemperature("temperature of the "+storage.String(), at, low, high); err != nil {
		return StoreReport{}, err
	}
	r := StoreReport{Storage: storage, At: at}
	r.Lines = make([]StoreLine, 0, mostLimits)
	var findings []verdict.Finding
	for i := range storeTable {
		if storeTable[i].Storage != storage {
			continue
		}
		line, kind := storeTable[i].against(at)
		r.Lines = append(r.Lines, line)
		if kind != 0 && findings == nil {
			findings = make([]verdict.Finding, 0, mostLimits)
		}
		if kind != 0 {
			findings = append(findings, line.finding(at, kind))
		}
	}
	switch storage {
	case InRefrigerator:
		r.Costs = warmRefrigerator(at)
	case InFreezer:
		r.Costs = warmFreezer(at)
	}
	r.Report = verdict.Of(findings, r.cautionsOf())
	return r, nil
}

// exposureBands are the bands of table A-2, each hazard's from its coldest on.
var exposureBands = coldchain.Limits(coldchain.TableA2)

// bandAt is the band of a hazard that a temperature falls in; none is outside the table, which begins where the hazard
// does.
func bandAt(hazard coldchain.Hazard, t units.Temperature) (coldchain.Limit, bool) {
	for _, band := range exposureBands {
		if band.Hazard == hazard && (t.Above(band.Over) || band.OrAt && t.Equal(band.Over)) && !t.Above(band.UpTo) {
			return band, true
		}
	}
	return coldchain.Limit{}, false
}

// warmRefrigerator is every hazard whose time is shorter here than at the limit.
func warmRefrigerator(at units.Temperature) []StoreCost {
	if !at.Above(refrigeratorAt) {
		return nil
	}
	var costs []StoreCost
	hazards := coldchain.Hazards()
	for _, hazard := range hazards {
		here, ok := bandAt(hazard, at)
		if !ok {
			continue
		}
		limit, _ := bandAt(hazard, refrigeratorAt) // the zero Limit allows no time: the table states none there
		if limit.Allowed != 0 && here.Allowed >= limit.Allowed {
			continue
		}
		if costs == nil {
			costs = make([]StoreCost, 0, len(hazards))
		}
		costs = append(costs, StoreCost{
			Concern: Safety, What: hazard.String(), AtLimit: limit.Allowed, Here: here.Allowed, Citation: here.Citation,
		})
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

func (r *StoreReport) cautionsOf() []cite.Caution {
	all := make([]cite.Caution, 2, 4)
	all[0], all[1] = storeThermometer, thermometerChecked
	switch {
	case r.Storage == InRefrigerator && r.At.Above(refrigeratorAt):
		all = append(all, warmShelf, vacuumAt38)
	case r.Storage == InRefrigerator && r.At.AtLeast(units.Fahrenheit(38)):
		all = append(all, vacuumAt38)
	case r.Storage == InFreezer && r.At.Above(fishThaws):
		all = append(all, thawedStore)
	case r.Storage == InCupboard && r.At.Above(hottestShelf):
		all = append(all, hotShelf)
	case r.Storage == InCupboard && !r.At.Above(freezingPoint):
		all = append(all, jarFrozen)
	}
	return all
}

var (
	storeThermometer = cite.Caution{
		ID:       "keeping.store-thermometer",
		Text:     "Read a thermometer in the warmest place, after a night shut; the dial of the appliance says nothing.",
		Citation: cite.Citation{Where: "reading a refrigerator or freezer", Basis: cite.Practice},
	}
	thermometerChecked = cite.Caution{
		ID: "keeping.thermometer-checked",
		Text: "Check the thermometer in ice slurry, which is 32 °F (0 °C), or where it is used near boiling in boiling water, " +
			"corrected for altitude.",
		Citation: chain.ReadIn(cite.FDAHazardsGuide2020, "ch. 13, p. 265"),
	}
	warmShelf = cite.Caution{
		ID: "keeping.warm-refrigerator", Deciding: true,
		Text: "No published keeping time of the refrigerator holds above 40 °F (4.4 °C): make it colder. " +
			"The hours of what is in it count against the limits of exposure.",
		Citation: federalFrozen,
	}
	vacuumAt38 = cite.Caution{
		ID: "keeping.vacuum-at-38", Deciding: true,
		Text: "Where cold is the only barrier against botulinum toxin, as in a sealed pack, it is below 38 °F (3.3 °C): " +
			"open the pack, or freeze it.",
		Citation: chain.ReadIn(cite.FDAHazardsGuide2020, "ch. 13, pp. 246-247"),
	}
	thawedStore = cite.Caution{
		ID: "keeping.thawed-in-the-store", Deciding: true,
		Text: "No fish stays frozen above 28 °F (-2.2 °C): what thaws counts as raw fish, " +
			"and its hours against the limits of exposure.",
		Citation: kitchenRule,
	}
	hotShelf = cite.Caution{
		ID: "keeping.hot-shelf", Deciding: true,
		Text: "Jars are never kept above 95 °F (35 °C): what little survived the process may grow there, " +
			"and spoil them.",
		Citation: chain.ReadIn(cite.USDAGuide1Rev1994, "Storing"),
	}
)
