package season

import "example.org/lakelarder/units/cite"

// cautions are what must be shown beside a plan.
func (p Plan) cautions() []cite.Caution {
	y := p.Year
	all := []cite.Caution{
		{Text: "Daily, possession and annual limits are what was put in, and change by water and by year: the local rules decide, and what they count as possessed or preserved. Read them each season.", Citation: y.Rule.Shape.Citation()},
		{Text: "A fish eaten in part is counted whole until it is eaten up. Keep a record of fish and jars for the warden."},
		{Text: "The plan begins with an empty shelf and a cap not yet used: fish still held or caught before it count against the limits too. Take them off the limits put in."},
	}
	if y.Rule.Shape == Unpreserved {
		all = append(all, cite.Caution{Text: "What counts as preserved under a rule of this shape is from memory: read the definition before relying on it.", Citation: y.Rule.Shape.Citation()})
	}
	if y.Rule.Shape == ProcessedQuota {
		all = append(all, cite.Caution{Text: "A rule of this shape is known here from a news report alone: the law in force was not read.", Citation: y.Rule.Shape.Citation()})
	}
	if y.Fresh.Time < 2*Week {
		all = append(all, cite.Caution{Text: "Fresh fish must be eaten or preserved within its keeping time in the week of the catch; the plan counts in weeks and cannot see that.", Citation: y.Fresh.Citation})
	}
	all = append(all, cite.Caution{Text: "Nothing is planned past the keeping time of preserved fish, which holds for fish stored as its source says and no longer.", Citation: y.Keeps.Citation})
	if y.Fresh.Citation.Unverified() || y.Keeps.Citation.Unverified() {
		all = append(all, cite.Caution{Text: "A keeping time is from memory or from practice: check the print before relying on it."})
	}
	if y.Fishing == Possible {
		all = append(all, cite.Caution{Text: "The plan reckons with the best catch that may be hoped for, not with the expected one."})
	}
	if !p.Feasible() {
		all = append(all, cite.Caution{Text: "The year cannot be held under these limits and trips: eat less, fish on other weeks, or buy the rest. More fish at once is not the way."})
	}
	return all
}
