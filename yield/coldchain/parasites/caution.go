package parasites

import "example.org/lakelarder/units/cite"

// cautionsOf are what must be known of the answer to a record or a plan.
func cautionsOf(record bool) []cite.Caution {
	all := make([]cite.Caution, 0, len(always)+2)
	if record {
		return append(append(all, coreRecord), always[:]...)
	}
	all = append(append(all, warmestFreezer), always[:]...)
	return append(all, thickFish)
}

var (
	coreRecord = cite.Caution{
		ID: "parasites.core-record", Deciding: true,
		Text: "The record must be of the core of the thickest fish. Where a rule counts from loading, here only the core's " +
			"own time counts, the stricter reading.",
		Citation: parasiteA,
	}
	warmestFreezer = cite.Caution{
		ID: "parasites.warmest-freezer", Deciding: true,
		Text:     "The temperature must be the warmest of the freezer, door and defrosting included, by a thermometer in it.",
		Citation: parasiteA,
	}
	dropouts = cite.Caution{
		ID: "parasites.dropouts", Deciding: true,
		Text: "Readings of a broken or loose probe were left out: a gap longer than the one trusted breaks the hold.",
	}
	thickFish = cite.Caution{
		ID:       "parasites.thick-fish",
		Text:     "For fish thicker than 6 in (15.2 cm) the guide doubts its own rules: time from loading is not relied on.",
		Citation: parasiteThick,
	}
)

// always stand beside every answer.
var always = [...]cite.Caution{
	{
		ID: "parasites.not-bacteria", Deciding: true,
		Text: "Freezing kills parasites, not bacteria, and undoes no spoilage: thawed fish is as perishable as fresh.",
	},
	{
		ID:       "parasites.tapeworm-figures",
		Text:     "0 °F for 24 or 48 h and 14 °F for 24 h are printed against tapeworm: not to be used for fish eaten raw.",
		Citation: tapewormState,
	},
	{
		ID: "parasites.longer-decides",
		Text: "Rules of the EU and Codex count 24 h at -20 °C where the Food Code counts 168 h from loading. " +
			"The longer decides here, the others are named.",
		Citation: parasiteEU,
	},
	{
		ID:       "parasites.not-flukes",
		Text:     "The rules of the EU are for parasites other than flukes.",
		Citation: parasiteEU,
	},
	{
		ID:       "parasites.no-tolerance",
		Text:     "Some inspectors allow 2 °F on -20 °C and -35 °C; nothing is allowed here.",
		Citation: parasiteAllowed,
	},
	{
		ID:   "parasites.no-rule",
		Text: "Salting, brining, cold smoking and drying are no rule of any of these sources.",
	},
	{
		ID: "parasites.exempt",
		Text: "Exempt from freezing are farmed fish fed only on pellets, molluscs, the tunas named there and washed roe: " +
			"no wild fish of a lake.",
		Citation: parasiteExempt,
	},
	{
		ID:   "parasites.local-codes",
		Text: "Local codes and the advice of the extension service hold where they are stricter.",
	},
}
