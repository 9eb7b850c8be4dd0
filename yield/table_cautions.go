package yield

import "example.org/lakelarder/units/cite"

// What must be known of a row of the tables.
var (
	whichRow = cite.Caution{
		ID:   "yield.which-row",
		Text: "Copies of the table disagree whether the factor stands in the row of whole or of dressed fish.",
	}
	uncited = cite.Caution{
		ID:   "yield.uncited-constant",
		Text: "This is a constant in an analysis, without a citation. It probably means the skin-on fillet.",
	}
	notDefined = cite.Caution{ID: "yield.dressed-not-defined", Text: "The source does not say what dressed means."}
	skinState  = cite.Caution{ID: "yield.skin-not-stated", Text: "The source does not say whether the skin is on."}
	immature   = cite.Caution{
		ID:   "yield.immature",
		Text: "These fish were harvested before full maturity. Ripe lake-run hens carry far more roe.",
	}
	twoStates = cite.Caution{
		ID:   "yield.studies-apart",
		Text: "Two studies of the same species lie about ten points apart. Technique and definition decide.",
	}
	noSalmonid = cite.Caution{
		ID: "yield.no-salmonid", Text: "This is not a salmonid. It is the only measured loss by bleeding that was found.",
	}
	lowTrust = cite.Caution{ID: "yield.low-confidence", Text: "This figure is remembered with low confidence."}
	recalled = cite.Caution{
		ID: "yield.from-memory", Text: "This figure is from memory. Check the print before relying on it.",
	}
	bothSkins = cite.Caution{
		ID: "yield.one-factor-two-columns", Text: "The same factor is printed for the skin-on and the skin-off column.",
	}
	assumed     = cite.Caution{ID: "yield.assumed-factor", Text: "The source marks the factor as assumed."}
	twoPikes    = cite.Caution{ID: "yield.two-pikes", Text: "Northern pike and pike-perch are not told apart. The factor is small, so the share is high."}
	muchSkin    = cite.Caution{ID: "yield.much-skin", Text: "By difference the skin is 11.33 % of the fish, which is much."}
	headFalls   = cite.Caution{ID: "yield.head-falls", Text: "The share of the head falls with the weight of the fish."}
	independent = cite.Caution{
		ID: "yield.independent-means", Text: "Gutted and viscera are independent means and add up to 100.18 %.",
	}
	dressedHere = cite.Caution{
		ID: "yield.dressed-defined", Text: "Dressed means scaled and gutted, usually with head, tail and fins off.",
	}
	implied  = cite.Caution{ID: "yield.implied", Text: "This share is implied by two printed edible shares and is not printed itself."}
	fewTrout = cite.Caution{
		ID:   "yield.unequal-fish",
		Text: "The row rests on 29 fish of very different weight, with a standard deviation of 192 g in 332 g.",
	}
	refuse = cite.Caution{
		ID:   "yield.refuse-disagrees",
		Text: "This is from the refuse field of 53 %, which disagrees with the weights of the same data set.",
	}
	fromLive = cite.Caution{ID: "yield.from-live", Text: "It counts from the live fish. What starving and bleeding take is in it."}
)

// What must be known of a loss in smoking.
var (
	mediumCure  = cite.Caution{ID: "yield.medium-cure", Text: "This holds for most smokers of the United Kingdom and a medium cure."}
	ofEntering  = cite.Caution{ID: "yield.of-entering-weight", Text: "The share is of the weight that enters the kiln."}
	impliedLoss = cite.Caution{
		ID: "yield.implied-loss", Text: "This is what the loss in smoking leaves of the loss of both, and is not printed itself.",
	}
	noKiln = cite.Caution{ID: "yield.no-kiln", Text: "This is by liquid smoke and steam, not in a kiln."}
)

// What must be known of a planning default.
var (
	ripeHen = cite.Caution{
		ID:   "yield.ripe-hen",
		Text: "A ripe hen keeps less, 75 to 82 %. Her belly may hold a quarter of her weight.",
	}
	ripeHenJudged = cite.Caution{
		ID: "yield.ripe-hen-judged", Text: "This is judged from the largest published share of belly contents, 25 %.",
	}
	notMeasured = cite.Caution{
		ID: "yield.planning-default",
		Text: "This is a planning default for lake-run salmon, judged and not measured. " +
			"Weigh your own fish and use that.",
	}
)

// noNote is that of a row which needs none.
var noNote = cite.Caution{}

// oceanMean is the caution of a mean weight of fish of the ocean.
func oceanMean(from cite.Citation) cite.Caution {
	return cite.Caution{
		ID: "yield.ocean-mean", Text: "This is a mean of fish of the ocean. Fish of a lake differ: weigh your own.", Citation: from,
	}
}
