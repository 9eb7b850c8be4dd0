package season

import "example.org/lakelarder/units/cite"

// What must be shown beside a plan, in whole or where it holds.
var (
	limitsChange = cite.Caution{
		ID: "season.limits-change", Deciding: true,
		Text: "Daily, possession and annual limits are what was put in, and change by water and by year. " +
			"Read the local rules each season: they also decide what counts as possessed or preserved.",
	}
	countedWhole = cite.Caution{
		ID: "season.counted-whole",
		Text: "A fish eaten in part is counted whole until it is eaten up. " +
			"Keep a record of fish and jars for the warden.",
	}
	emptyShelf = cite.Caution{
		ID: "season.empty-shelf", Deciding: true,
		Text: "The plan begins with an empty shelf and a cap not yet used. Fish still held or caught before it " +
			"count against the limits too: put them in as what is there at the start.",
	}
	thrownOut = cite.Caution{
		ID: "season.start-thrown-out", Deciding: true,
		Text: "Some of what was there at the start passes its keeping time before it is eaten. " +
			"The plan throws it out and counts it no longer.",
	}
	shapeRecalled = cite.Caution{
		ID: "season.shape-from-memory", Deciding: true,
		Text: "What counts as preserved under a rule of this shape is from memory. " +
			"Read the definition before relying on it.",
	}
	shapeReported = cite.Caution{
		ID: "season.shape-from-report", Deciding: true,
		Text: "A rule of this shape is known here only from a news report. The law in force was not read.",
	}
	withinTheWeek = cite.Caution{
		ID: "season.within-the-week",
		Text: "Fresh fish must be eaten or preserved within its keeping time in the week of the catch. " +
			"The plan counts in weeks and cannot see that.",
	}
	keepsAsStored = cite.Caution{
		ID: "season.keeps-as-stored",
		Text: "Nothing is planned past the keeping time of preserved fish. " +
			"That holds for fish stored as its source says and no longer.",
	}
	keepingUnverified = cite.Caution{
		ID:   "season.keeping-unverified",
		Text: "A keeping time is from memory or from practice. Check the print before relying on it.",
	}
	bestCatch = cite.Caution{
		ID:   "season.best-catch",
		Text: "The plan reckons with the best catch that may be hoped for, not with the expected one.",
	}
	notProven = cite.Caution{
		ID: "season.not-proven",
		Text: "Fish is preserved after two weeks or later, and not every choice was tried. " +
			"Another choice of fish to keep or to begin might let more be eaten.",
	}
	startNotProven = cite.Caution{
		ID: "season.start-not-proven",
		Text: "What was there at the start is in part eaten, or keeps for another time than the fish to come. " +
			"Another choice of fish to keep or to begin might let more be eaten.",
	}
	lawfulSpared = cite.Caution{
		ID: "season.lawful-fish-spared",
		Text: "Some trips may lawfully keep more fish than the plan does. " +
			"Those would not be eaten in time and would be thrown away.",
	}
	cannotBeHeld = cite.Caution{
		ID: "season.cannot-be-held", Deciding: true,
		Text: "The year cannot be held under these limits and trips. Eat less, fish on other weeks, or buy the rest. " +
			"More fish at once is not the way.",
	}
)

// cautions are what must be shown beside a plan, the deciding ones first.
func (p Plan) cautions() []cite.Caution {
	y := p.Year
	all := make([]cite.Caution, 0, 12)
	deciding := 0
	say := func(c cite.Caution, from cite.Citation) {
		c.Citation = from
		all = append(all, c)
		if c.Deciding {
			copy(all[deciding+1:], all[deciding:])
			all[deciding] = c
			deciding++
		}
	}
	shape, none := y.Rule.Shape.Citation(), cite.Citation{}
	if !p.Feasible() {
		say(cannotBeHeld, none)
	}
	say(limitsChange, shape)
	say(countedWhole, none)
	if len(y.Start.Holdings) == 0 && y.Start.Used == 0 {
		say(emptyShelf, none)
	}
	if p.Thrown > 0 {
		say(thrownOut, none)
	}
	switch y.Rule.Shape {
	case Unpreserved:
		say(shapeRecalled, shape)
	case ProcessedQuota:
		say(shapeReported, shape)
	}
	if y.Fresh.Time < 2*Week {
		say(withinTheWeek, y.Fresh.Citation)
	}
	say(keepsAsStored, y.Keeps.Citation)
	if y.Fresh.Citation.Unverified() || y.Keeps.Citation.Unverified() {
		say(keepingUnverified, none)
	}
	if y.Fishing == Possible {
		say(bestCatch, none)
	}
	if !p.Feasible() && p.Spared > 0 {
		say(lawfulSpared, none)
	}
	switch {
	case p.Proven:
	case y.Lag == 1 || !y.even():
		say(startNotProven, none)
	default:
		say(notProven, none)
	}
	return all
}
