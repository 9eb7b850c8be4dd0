package canner

import (
	"time"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

var usualCaution = cite.Citation{Where: "usual caution", Basis: cite.Practice}

// What no record shows.
var (
	notThePacking = cite.Caution{ID: "canner.not-the-packing", Deciding: true, Citation: usualCaution,
		Text: "A record shows pressure or temperature, never how the jars were packed, whether the lids sealed or the fish was sound."}
	boilBeforeTasting = cite.Caution{ID: "canner.boil-before-tasting", Deciding: true, Citation: guide1("For Safety's Sake, p. iii"),
		Text: "Food that may not have been canned exactly as published is not tasted before it was boiled as the guide says."}
	pureSteam = cite.Caution{ID: "canner.pure-steam", Citation: cite.Citation{Source: cite.IAPWSR797, Where: "region 4", Basis: cite.Computed},
		Text: "The steam temperature required is that of pure steam at the schedule's pressure in this air. The thermometer's own error is in it only where it is stated."}
	airLeftIn = cite.Caution{ID: "canner.air-left-in", Deciding: true,
		Text: "A record of pressures does not show air left in the canner, which makes the load colder than the gauge says. Venting in full keeps it out."}
	notSeen = cite.Caution{ID: "canner.schedule-not-seen", Deciding: true, Text: "Part of this schedule was not seen in print: check it."}
)

// What readings far apart hide.
var gapHidesSag = cite.Caution{ID: "canner.gap-hides-sag", Deciding: true,
	Citation: cite.Citation{Where: "fall from the schedule's pressure in 20 min and rise to it in 3, the shortest usual times", Basis: cite.Computed},
	Text:     "Readings as far apart as is believed here can hide a sag of a pound or more, and any sag restarts the clock. Record more often."}

// hidesSag reports whether a sag that matters can lie between two readings: the pressure falls as in the shortest
// published cooling, and rises as in the shortest usual heating.
func hidesSag(schedule, maxGap int64) bool {
	const fallAndRise = int64((leastCooling + leastRise) / time.Second)
	return schedule/fallAndRise*(maxGap/int64(time.Second)) >= int64(mattersFrom)
}

const (
	leastRise   = 3 * time.Minute
	mattersFrom = 1 * units.PSI
)

// What goes with a gauge.
var (
	gaugeSource = guide1("Pressure canners, p. 1-20")

	testYearly = cite.Caution{ID: "canner.test-yearly", Text: "A dial gauge is tested every year before use.", Citation: gaugeSource}
	olderLimit = cite.Caution{ID: "canner.off-by-a-pound", Text: "Older advice replaces a dial gauge that is off by 1 psi or more.",
		Citation: cite.Citation{Source: cite.PublicGaugeTestingPage, Where: "limit of the error", Basis: cite.Read}}
	notSubtracted = cite.Caution{ID: "canner.nothing-subtracted", Citation: gaugeSource,
		Text: "The gauge reads low. Nothing is subtracted: the true pressure is then above the schedule's, which is safe and costs quality."}
	newCanner = cite.Caution{ID: "canner.above-15", Text: "The true pressure may pass 15 psi, which is not recommended in a new canner.",
		Citation: guide1("Equipment and methods not recommended, p. 1-10")}
	rhythm = cite.Caution{ID: "canner.rhythm", Deciding: true, Citation: cite.Citation{Source: cite.USDAGuide1Rev1994, Where: "Recommended canners, part 3", Basis: cite.Read},
		Text: "A weighted gauge speaks by its rhythm: it jiggles two or three times a minute, or rocks slowly all the time, as its maker says. " +
			"The clock starts when it does."}
)

// What goes with a load.
var (
	uprightOnRack = cite.Caution{ID: "canner.upright-on-rack", Citation: usualCaution,
		Text: "Jars stand upright on the rack, and steam must be able to pass between them. Try the load with empty jars."}
	smallLoad = cite.Caution{ID: "canner.small-load", Citation: cite.Citation{Source: cite.IowaState20240102, Where: "small loads", Basis: cite.Read},
		Text: "USDA sets no least number of jars for a load. With few jars, jars of water may fill the room."}
	rackBetween = cite.Caution{ID: "canner.rack-between", Text: "A rack goes between the two layers.", Citation: rackSource}
	notInThree  = cite.Caution{ID: "canner.not-in-three", Text: "Three layers are not tested.", Citation: threeLayers}
	smokedLoad  = cite.Caution{ID: "canner.smoked-load", Deciding: true, Citation: smokedCanner,
		Text: "Smoked fish: only in canners of 16 to 22 quarts, with at least 4 quarts of cool water."}
)

// cautionsOf are what must be shown beside a verdict: what no record shows, and what this one does not.
func cautionsOf[T Record](c *course[T]) []cite.Caution {
	all := make([]cite.Caution, 0, 6)
	all = append(all, notThePacking, boilBeforeTasting)
	if isSteam[T]() {
		all = append(all, pureSteam)
	} else {
		air := airLeftIn
		air.Citation = c.run.Schedule.VentCitation
		all = append(all, air)
	}
	if hidesSag(int64(c.run.Schedule.Pressure), int64(c.maxGap)) {
		all = append(all, gapHidesSag)
	}
	if c.run.Gauge.ReadsHigh < 0 && c.run.Schedule.Gauge == process.Dial {
		all = append(all, notSubtracted)
	}
	if c.run.Schedule.Unverified() {
		unseen := notSeen
		unseen.Citation = c.run.Schedule.Citation
		all = append(all, unseen)
	}
	return all
}
