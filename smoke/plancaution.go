package smoke

import (
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units/cite"
)

// cautions are what must be shown beside a plan, those of its own faults first; inTime says that the core is at 160 °F soon enough.
func (p Plan) cautions(film moistair.Film, inTime bool) []cite.Caution {
	var all []cite.Caution
	if !p.Fits {
		all = append(all, notThrough)
	}
	if !inTime {
		all = append(all, slowWarming)
	}
	if p.OverDried {
		all = append(all, overDried, pellicleCost)
	}
	all = append(append(all, p.Core.Cautions()...), film.Cautions()...)
	return append(all, finishInOven, moistAtSmoke, coldAtOnce, dryingOfTrout, glazeIsSugar)
}

var (
	notThrough = cite.Caution{
		ID: "smoke.not-through", Deciding: true,
		Text: "By the model the slowest fillet is not through its hold when the cooking ends. Plan a hotter or longer stage, or the oven within 2 h.", Citation: finishInOven.Citation,
	}
	slowWarming = cite.Caution{
		ID: "smoke.slow-warming", Deciding: true,
		Text:     "By the model the slowest fillet warms too slowly: the core should be at 160 °F (71.1 °C) within 6 to 8 h.",
		Citation: cite.Citation{Source: cite.PNW238, Where: "paraphrase", Basis: cite.Read},
	}
	overDried = cite.Caution{
		ID:   "smoke.over-dried",
		Text: "The surface may have dried too far by the time of the smoke, which must find it moist or tacky.", Citation: moistAtSmoke.Citation,
	}
	dryingOfTrout = cite.Caution{
		ID:       "smoke.drying-of-trout",
		Text:     "The loss after the surface has dried rests on unsalted trout in air of 35 to 65 °C, over its whole range. No rate of salted fish was read, which dries more slowly: weigh the fish.",
		Citation: cite.Citation{Source: cite.YaparErdol, Where: "abstract", Basis: cite.Read},
	}
	glazeIsSugar = cite.Caution{
		ID:       "smoke.glaze-is-sugar",
		Text:     "Honey or syrup basted on adds sugar, not salt: the water phase salt stays as it was.",
		Citation: cite.Citation{Where: "glaze brushed on a dried surface", Basis: cite.Computed},
	}
	finishInOven = cite.Caution{
		ID:       "smoke.finish-in-oven",
		Text:     "A smoker that does not hold 200 to 225 °F (93 to 107 °C) does not finish fish. Finish it in an oven, within 2 h of taking it from the smoker.",
		Citation: cite.Citation{Source: cite.WSUSmokingCuring, Where: "home smoking method; also Wisconsin Sea Grant", Basis: cite.Read},
	}
)
