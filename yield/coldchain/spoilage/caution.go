package spoilage

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// cautionsOf are what must be known of the answer.
func (a Age) cautionsOf() []cite.Caution {
	all := append(make([]cite.Caution, 0, mostCautions), notSafety, warmestPart)
	of := func(c cite.Caution) cite.Caution {
		c.Citation = a.Citation
		return c
	}
	if a.Unknown > 0 {
		all = append(all, olderThanThis)
	}
	if a.Outside {
		all = append(all, of(outsideTheLaw))
	}
	if a.Law == FreshFish && !a.Lowest.Above(units.Celsius(spoilageMinimum)) {
		all = append(all, of(frozenCountsNothing))
	}
	if a.Citation.Unverified() {
		all = append(all, of(lawFromMemory))
	}
	return all
}

// mostCautions is room for those of an Age and of what it leaves of a life.
const mostCautions = 9

var (
	notSafety = cite.Caution{
		ID: "spoilage.not-safety", Deciding: true,
		Text: "This is smell and taste, not safety: fish can be dangerous before it smells. " +
			"Hold the record against the exposure limits as well.",
	}
	warmestPart = cite.Caution{
		ID:   "spoilage.warmest-part",
		Text: "The record is to be of the warmest part inside the fish, not of the air or the ice around it.",
	}
	olderThanThis = cite.Caution{
		ID: "spoilage.gaps", Deciding: true,
		Text: "Time between readings that are too far apart is not counted: the fish is older than this.",
	}
	outsideTheLaw = cite.Caution{
		ID:   "spoilage.outside-the-law",
		Text: "The record leaves -3 to 25 °C (26.6 to 77 °F), in which the law is trusted.",
	}
	frozenCountsNothing = cite.Caution{
		ID: "spoilage.frozen", Deciding: true,
		Text: "At and below -10 °C (14 °F) the law counts nothing: frozen fish ages by other rules, " +
			"and thawed fish is not fresh fish.",
	}
	lawFromMemory = cite.Caution{
		ID: "spoilage.law-from-memory",
		Text: "The law is from memory. At 10 °C (50 °F) packed cod is remembered to spoil 4.7 times as fast as on ice, " +
			"where the law of fresh fish says 4.0.",
	}
	lifeUsedUp = cite.Caution{
		ID: "spoilage.life-used-up", Deciding: true,
		Text: "The shortest published life is used up: do not keep this fish.",
	}
	lifeFromMemory = cite.Caution{
		ID:   "spoilage.life-from-memory",
		Text: "The life on ice is from memory: check the document before relying on it.",
	}
	guttingNotStated = cite.Caution{
		ID:   "spoilage.gutting-not-stated",
		Text: "The source does not say whether the fish was gutted; fish not gutted spoils sooner.",
	}
)
